// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/begun/begun_forms.hpp"

using namespace Qt::StringLiterals;
using core::json::arrayOf;
using core::json::Object;

namespace {

const desktop::FormName aForm{u"store"_s, u"job"_s, u"finding.raised"_s, {u"D1"_s}};
core::Instant moment(const char *text) { return *core::Instant::parse(QString::fromLatin1(text)); }

} // namespace

/// The files in which forms are kept that nobody signed yet.
class TestBegunForms : public QObject {
    Q_OBJECT

private slots:
    void init() { m_folder = std::make_unique<QTemporaryDir>(); }
    void whatIsKeptIsFound();
    void onlyTheUserMayReadIt();
    void whatCannotBeReadIsSetAside_data();
    void whatCannotBeReadIsSetAside();
    void oldOnesGo_data();
    void oldOnesGo();
    void aFolderThatCannotBeWrittenIsTold();

private:
    QString folder() const { return m_folder->filePath(u"begun"_s); }
    qsizetype files() const { return QDir(folder()).entryList({u"*.json"_s}, QDir::Files).size(); }
    std::unique_ptr<QTemporaryDir> m_folder;
};

void TestBegunForms::whatIsKeptIsFound()
{
    const desktop::BegunForms forms(folder());
    QVERIFY(forms.find(aForm) && !*forms.find(aForm));
    const Object typed{{u"text"_s, u"Chafed \"here\"\nµ"_s}, {u"flag"_s, true}, {u"people"_s, arrayOf({u"ana"_s})}};
    QVERIFY(forms.keep(aForm, {moment("2026-03-02T08:14:31Z"), typed}));
    QVERIFY(forms.keep(aForm, {moment("2026-03-02T08:14:32Z"), typed})); // in its place
    QCOMPARE(files(), 1);
    const auto found = forms.find(aForm);
    QVERIFY(found && *found);
    QCOMPARE((*found)->at, moment("2026-03-02T08:14:32Z"));
    QCOMPARE((*found)->typed, typed);
    for (const desktop::FormName &other : {desktop::FormName{u"other"_s, u"job"_s, u"finding.raised"_s, {u"D1"_s}}, desktop::FormName{u"store"_s, u"other"_s, u"finding.raised"_s, {u"D1"_s}},
                                           desktop::FormName{u"store"_s, u"job"_s, u"work.stopped"_s, {u"D1"_s}}, desktop::FormName{u"store"_s, u"job"_s, u"finding.raised"_s, {u"D1"_s, u"D2"_s}}}) {
        const auto none = forms.find(other);
        QVERIFY(none && !*none);
    }
    QVERIFY(forms.drop(aForm));
    QVERIFY(forms.drop(aForm)); // there is nothing, which is as wanted
    QCOMPARE(files(), 0);
}

void TestBegunForms::onlyTheUserMayReadIt()
{
    const desktop::BegunForms forms(folder());
    QVERIFY(forms.keep(aForm, {moment("2026-03-02T08:14:31Z"), {{u"a"_s, u"b"_s}}}));
    const QFile::Permissions others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther | QFile::WriteOther | QFile::ExeOther;
    QCOMPARE(QFile::permissions(forms.pathOf(aForm)) & (others | QFile::ExeOwner), QFile::Permissions());
    QCOMPARE(QFile::permissions(folder()) & others, QFile::Permissions());
}

void TestBegunForms::whatCannotBeReadIsSetAside_data()
{
    QTest::addColumn<QByteArray>("bytes");
    QTest::addRow("empty") << QByteArray();
    QTest::addRow("cut off") << QByteArray(R"({"at":"2026-03-02T08:14:31.000Z","form")");
    QTest::addRow("no JSON") << QByteArray(300, '\xff');
    QTest::addRow("an array") << QByteArray("[1,2]");
    QTest::addRow("another version") << QByteArray(R"({"at":"2026-03-02T08:14:31.000Z","form":{"act":"finding.raised","job":"job","store":"store","subjects":["D1"]},"typed":{},"version":2})");
    QTest::addRow("another form") << QByteArray(R"({"at":"2026-03-02T08:14:31.000Z","form":{"act":"finding.raised","job":"job","store":"store","subjects":["D2"]},"typed":{},"version":1})");
    QTest::addRow("no moment") << QByteArray(R"({"at":"today","form":{"act":"finding.raised","job":"job","store":"store","subjects":["D1"]},"typed":{},"version":1})");
    QTest::addRow("far too large") << QByteArray(5 * 1024 * 1024, ' ');
}

void TestBegunForms::whatCannotBeReadIsSetAside()
{
    QFETCH(QByteArray, bytes);
    const desktop::BegunForms forms(folder());
    QVERIFY(forms.keep(aForm, {moment("2026-03-02T08:14:31Z"), {}}));
    QFile file(forms.pathOf(aForm));
    QVERIFY(file.open(QIODevice::WriteOnly | QIODevice::Truncate) && file.write(bytes) == bytes.size());
    file.close();
    const auto told = forms.find(aForm);
    QVERIFY(!told);
    QCOMPARE(told.error().code, core::ErrorCode::Damaged);
    const QString aside = forms.pathOf(aForm) + u".damaged"_s;
    QVERIFY2(told.error().message.contains(aside) && told.error().message.contains(u"anew"), qPrintable(told.error().message));
    QCOMPARE(QFileInfo(aside).size(), bytes.size());
    const auto again = forms.find(aForm); // told once
    QVERIFY(again && !*again);
}

void TestBegunForms::oldOnesGo_data()
{
    QTest::addColumn<int>("days");
    QTest::addColumn<int>("left");
    QTest::addRow("typed a day short of 30 days ago") << 29 << 2;
    QTest::addRow("typed 31 days ago") << 31 << 0;
}

void TestBegunForms::oldOnesGo()
{
    QFETCH(int, days);
    QFETCH(int, left);
    const desktop::BegunForms forms(folder());
    const desktop::FormName other{u"store"_s, u"job"_s, u"work.stopped"_s, {u"D1"_s}};
    const QDateTime now(QDate(2026, 3, 31), QTime(12, 0), Qt::UTC);
    for (const desktop::FormName &form : {aForm, other}) {
        QVERIFY(forms.keep(form, {moment("2026-03-02T08:14:31Z"), {}}));
        QFile file(forms.pathOf(form));
        QVERIFY(file.open(QIODevice::ReadWrite) && file.setFileTime(now.addDays(-days), QFile::FileModificationTime));
    }
    QVERIFY(QFile::rename(forms.pathOf(other), forms.pathOf(other) + u".damaged"_s));
    forms.dropOld(core::Instant::fromMilliseconds(now.toMSecsSinceEpoch()));
    QCOMPARE(QDir(folder()).entryList(QDir::Files).size(), left);
}

void TestBegunForms::aFolderThatCannotBeWrittenIsTold()
{
    QFile file(folder()); // a file is where the folder should be
    QVERIFY(file.open(QIODevice::WriteOnly));
    const auto kept = desktop::BegunForms(folder()).keep(aForm, {moment("2026-03-02T08:14:31Z"), {}});
    QVERIFY(!kept);
    QCOMPARE(kept.error().code, core::ErrorCode::Io);
    QVERIFY2(kept.error().message.contains(folder()), qPrintable(kept.error().message));
}

QTEST_GUILESS_MAIN(TestBegunForms)
#include "tst_begun_forms.moc"
