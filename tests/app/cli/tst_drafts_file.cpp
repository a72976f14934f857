// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/cli/drafts_file.hpp"

using namespace Qt::StringLiterals;

class TstDraftsFile : public QObject {
    Q_OBJECT

private slots:
    void readsDrafts();
    void tellsEveryFault();
    void refuses_data();
    void refuses();
};

void TstDraftsFile::readsDrafts()
{
    const auto lines = cli::readDrafts("{\"author\":\"ana\",\"kind\":\"job.closed\",\"body\":{\"statement\":\"Done\"}}\n\n"
                                       "{\"author\":\"ben\",\"kind\":\"inspection.accepted\",\"subject\":\"E1\"}\r\n"
                                       "{\"author\":\"ben\",\"kind\":\"entry.struck\",\"subject\":null}",
                                       u"drafts"_s);
    QVERIFY(lines);
    QCOMPARE(lines->size(), 3u);
    QCOMPARE((*lines)[0].draft.body.text(u"statement"), u"Done"_s);
    QVERIFY(!(*lines)[0].draft.subject);
    QCOMPARE((*lines)[1].row, 3);
    QCOMPARE((*lines)[1].draft.subject, std::optional(u"E1"_s));
    QVERIFY(!(*lines)[2].draft.subject);
}

void TstDraftsFile::tellsEveryFault()
{
    const auto lines = cli::readDrafts("nonsense\n{\"author\":\"ana\",\"kind\":\"job.closed\"}\n{}\n", u"drafts"_s);
    QVERIFY(!lines);
    QCOMPARE(lines.error().size(), 2u);
    QCOMPARE(lines.error()[0].where, (core::Where{u"drafts"_s, 1, std::nullopt}));
    QCOMPARE(lines.error()[1].where, (core::Where{u"drafts"_s, 3, std::nullopt}));
}

void TstDraftsFile::refuses_data()
{
    QTest::addColumn<QByteArray>("line");
    QTest::addRow("no author") << QByteArray(R"({"kind":"job.closed"})");
    QTest::addRow("an author that cannot be one") << QByteArray(R"({"author":" ana","kind":"job.closed"})");
    QTest::addRow("no kind") << QByteArray(R"({"author":"ana"})");
    QTest::addRow("a subject that is no text") << QByteArray(R"({"author":"ana","kind":"job.closed","subject":7})");
    QTest::addRow("a body that is no object") << QByteArray(R"({"author":"ana","kind":"job.closed","body":"x"})");
    QTest::addRow("a moment of its own") << QByteArray(R"({"author":"ana","kind":"job.closed","at":"2026-03-02T08:00:00.000Z"})");
    QTest::addRow("a fraction") << QByteArray(R"({"author":"ana","kind":"job.closed","body":{"value":1.5}})");
}

void TstDraftsFile::refuses()
{
    QFETCH(QByteArray, line);
    const auto lines = cli::readDrafts(line, u"drafts"_s);
    QVERIFY(!lines);
    QCOMPARE(lines.error().front().code, core::ErrorCode::BadInput);
}

QTEST_GUILESS_MAIN(TstDraftsFile)
#include "tst_drafts_file.moc"
