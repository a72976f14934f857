// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/desktop/flows/new_key.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/session/carry.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    auto *found = in.findChild<Widget *>(QString::fromLatin1(name));
    if (!found)
        qFatal("no widget %s", name);
    return found;
}

void say(const desktop::SignSheet &sheet, const char *who, const QString &secret)
{
    named<QWidget>(sheet, "person")->findChild<QLineEdit *>()->setText(QString::fromLatin1(who));
    named<QLineEdit>(sheet, "secret")->setText(secret);
}

QString problem(const desktop::SignSheet &sheet) { return named<QLabel>(sheet, "problem")->text(); }

} // namespace

/// A person at a computer where their key is not: told before the PIN opens nothing, and helped on from where they are.
class TestStation : public QObject {
    Q_OBJECT

private slots:
    void signerWhoseKeyIsElsewhere();
    void codeIsShownOnce();
};

void TestStation::signerWhoseKeyIsElsewhere()
{
    Bench bench;
    QCOMPARE(bench.trouble(), QString());
    auto home = bench.another();
    auto store = *db::Store::open(bench.path(), db::Access::ReadWrite);
    session::Session away(*store, bench.clock(), {core::leastCost, [](const QString &) { return core::SecondKey::ofStation(QByteArray(core::SecondKey::size, 'x')); }});
    QVERIFY(away.refresh());
    QWidget window;
    ScriptedAsk ask;
    desktop::JobFeed feed;
    desktop::Signing signing(away, feed, bench.kinds(), ask, &window);

    signing.beginRegister("tool.withdrawn"_L1, {{u"TW1"_s, {{u"reason"_s, u"Worn"_s}}, {}}}, "threats"_L1);
    auto *sheet = window.findChild<desktop::SignSheet *>();
    QVERIFY(sheet);
    say(*sheet, "ana", Bench::pinOf(u"ana"_s));
    QVERIFY2(problem(*sheet).contains(u"not at this station"), qPrintable(problem(*sheet)));
    QVERIFY(!named<QPushButton>(*sheet, "sign")->isEnabled());
    QVERIFY(!named<QPushButton>(*sheet, "takeKey")->isHidden());

    const auto offer = session::offerTransfer(*home, {*core::PersonId::parse(u"ana"), Bench::pinOf(u"ana"_s)});
    QVERIFY(offer);
    named<QPushButton>(*sheet, "takeKey")->click();
    auto *over = sheet->findChild<desktop::SignSheet *>();
    QVERIFY(over);
    say(*over, "ana", Bench::pinOf(u"ana"_s));
    QVERIFY(!named<QPushButton>(*over, "sign")->isEnabled());
    named<QLineEdit>(*over, "code")->setText(u"ABCD-EFGH-IJKL-MNOP-QRST-UVWX-YZ23-4567"_s);
    named<QPushButton>(*over, "sign")->click();
    QVERIFY2(problem(*over).contains(u"No transfer with this code is open"), qPrintable(problem(*over)));
    named<QLineEdit>(*over, "code")->setText(offer->code);
    named<QLineEdit>(*over, "secret")->setText(Bench::pinOf(u"ana"_s));
    named<QPushButton>(*over, "sign")->click();

    QVERIFY(named<QPushButton>(*sheet, "takeKey")->isHidden());
    QCOMPARE(problem(*sheet), QString());
    named<QLineEdit>(*sheet, "secret")->setText(Bench::pinOf(u"ana"_s));
    QVERIFY(named<QPushButton>(*sheet, "sign")->isEnabled());
    named<QPushButton>(*sheet, "sign")->click();
    QVERIFY(away.reg().tool(*core::ToolId::parse(u"TW1"))->withdrawn);
}

void TestStation::codeIsShownOnce()
{
    Bench bench;
    auto home = bench.another();
    QWidget window;
    ScriptedAsk ask;
    desktop::JobFeed feed;
    desktop::Signing signing(*home, feed, bench.kinds(), ask, &window);
    signing.carryKey();
    auto *sheet = window.findChild<desktop::SignSheet *>();
    QVERIFY(sheet);
    say(*sheet, "ben", u"not his PIN"_s);
    named<QPushButton>(*sheet, "sign")->click();
    QCoreApplication::processEvents();
    QCOMPARE(ask.told, QStringList());
    named<QLineEdit>(*sheet, "secret")->setText(Bench::pinOf(u"ben"_s));
    named<QPushButton>(*sheet, "sign")->click();
    QTRY_COMPARE(ask.told.size(), 1);
    const QString code = ask.told.front().section(u'\n', 0, 0).section(u' ', -1);
    auto store = *db::Store::open(bench.path(), db::Access::ReadWrite);
    session::Session away(*store, bench.clock(), {core::leastCost, [](const QString &) { return core::SecondKey::ofStation(QByteArray(core::SecondKey::size, 'x')); }});
    QVERIFY(away.refresh());
    QCOMPARE(*session::takeTransfer(away, code, Bench::pinOf(u"ben"_s)), *core::PersonId::parse(u"ben"));
}

QTEST_MAIN(TestStation)
#include "tst_station.moc"
