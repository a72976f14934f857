// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/flows/label_flow.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// Takes the choice that begins so, or none at all.
class Choosing : public ScriptedAsk {
public:
    std::optional<QString> oneOf(const QString &, const QString &question, const QStringList &choices) override
    {
        asked << question;
        for (const QString &choice : choices) {
            for (const QString &wanted : answers) {
                if (choice.startsWith(wanted))
                    return choice;
            }
        }
        return std::nullopt;
    }

    QStringList answers;
    QStringList asked;
};

} // namespace

/// What is asked before labels are exported, and what is told then.
class TstLabelFlow : public QObject {
    Q_OBJECT

private slots:
    void exports_data();
    void exports();
    void tellsWhatWentWrong();
};

void TstLabelFlow::exports_data()
{
    QTest::addColumn<QStringList>("items");
    QTest::addColumn<QStringList>("answers");
    QTest::addColumn<QStringList>("asked");
    QTest::addColumn<int>("labels"); ///< 0: nothing is written; -1: of all interfaces

    const QStringList plain{u"Size of a label"_s, u"Paper size"_s};
    const QStringList chosen{u"Labels for"_s, u"Size of a label"_s, u"Paper size"_s};
    QTest::addRow("nothing chosen") << QStringList() << QStringList{u"70"_s, u"A4"_s} << plain << -1;
    QTest::addRow("all, though some are chosen") << QStringList{u"D1"_s} << QStringList{u"All"_s, u"50"_s, u"Letter"_s} << chosen << -1;
    QTest::addRow("what is chosen") << QStringList{u"D1"_s, u"C1"_s} << QStringList{u"What is chosen: 2"_s, u"50"_s, u"A4"_s} << chosen << 2;
    QTest::addRow("thought better of the size") << QStringList() << QStringList{u"A4"_s} << plain.first(1) << 0;
    QTest::addRow("thought better of the paper") << QStringList() << QStringList{u"105"_s} << plain << 0;
}

void TstLabelFlow::exports()
{
    QFETCH(QStringList, items);
    QFETCH(QStringList, answers);
    QFETCH(QStringList, asked);
    QFETCH(int, labels);
    const QTemporaryDir folder;
    const Story told;
    Choosing ask;
    ask.answers = answers;
    ask.savePath = folder.filePath(u"labels.pdf"_s);
    std::vector<core::InterfaceId> ids;
    for (const QString &item : items)
        ids.push_back(*core::InterfaceId::parse(item));
    desktop::exportLabels(told.job(), ids, ask);
    QCOMPARE(ask.asked, asked);
    QCOMPARE(QFile::exists(*ask.savePath), labels != 0);
    QCOMPARE(ask.told.size(), labels == 0 ? 0 : 1);
    const qsizetype wanted = labels < 0 ? static_cast<qsizetype>(told.job().items.size()) : labels;
    QVERIFY2(labels == 0 || ask.told.front().contains(u"Labels: %1,"_s.arg(wanted)), qPrintable(ask.told.value(0)));
}

void TstLabelFlow::tellsWhatWentWrong()
{
    const Story told;
    Choosing ask;
    ask.answers = {u"70"_s, u"A4"_s};
    ask.savePath = u"/no/such/folder/labels.pdf"_s;
    desktop::exportLabels(told.job(), {}, ask);
    QCOMPARE(ask.told.size(), 1);
    QVERIFY2(ask.told.front().startsWith(u"The labels were not exported"_s), qPrintable(ask.told.front()));
}

QTEST_MAIN(TstLabelFlow)
#include "tst_label_flow.moc"
