// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/measure/nut_drag.hpp"
#include "core/measure/tool_check.hpp"

using namespace Qt::StringLiterals;
using namespace core;
using namespace core::measure;

namespace {

Quantity quantity(const QString &text)
{
    const qsizetype blank = text.indexOf(u' ');
    return *Quantity::parse(text.left(blank), text.mid(blank + 1));
}

std::optional<Quantity> quantityOrNone(const QString &text) { return text.isEmpty() ? std::nullopt : std::optional(quantity(text)); }

} // namespace

/// What a torque tool may be off, and what a nut has to drag, at the edges of what makes sense.
class TestToolCheck : public QObject {
    Q_OBJECT

private slots:
    /// ISO 6789:2003: verified at 20, 60 and 100 % of the greatest torque; ISO 6789-1:2017 (from memory): the lowest mark for 20 %.
    void whatIsRefused_data()
    {
        QTest::addColumn<QString>("greatest");
        QTest::addColumn<QString>("lowest");
        QTest::addColumn<QString>("setting");
        QTest::addColumn<QString>("percent");
        QTest::addColumn<QString>("refusal"); // what it contains; empty: an answer
        const auto row = [](const char *name, const char *greatest, const char *lowest, const char *setting, const char *percent, const char *refusal) {
            QTest::newRow(name) << QString::fromUtf8(greatest) << QString::fromUtf8(lowest) << QString::fromUtf8(setting) << QString::fromLatin1(percent) << QString::fromUtf8(refusal);
        };
        row("within", "100 N·m", "", "50 N·m", "4", "");
        row("at 20 %", "100 N·m", "", "20 N·m", "4", "");
        row("below 20 %", "100 N·m", "", "19.9 N·m", "4", "Give the lowest mark");
        row("below 20 %, with a lower mark", "100 N·m", "10 N·m", "19.9 N·m", "4", "");
        row("below the lowest mark", "100 N·m", "10 N·m", "9.9 N·m", "4", "outside the range");
        row("at the greatest", "100 N·m", "", "100 N·m", "4", "");
        row("over the greatest", "100 N·m", "", "100.1 N·m", "4", "20 N·m to 100 N·m");
        row("a setting that is a length", "100 N·m", "", "50 mm", "4", "50 mm");
        row("a greatest torque of nothing", "0 N·m", "", "50 N·m", "4", "greatest torque of 0 N·m");
        row("a greatest torque that is a length", "100 mm", "", "50 N·m", "4", "greatest torque of 100 mm");
        row("a lowest mark of nothing", "100 N·m", "0 N·m", "50 N·m", "4", "lowest mark of 0 N·m");
        row("a lowest mark that is a length", "100 N·m", "5 mm", "50 N·m", "4", "lowest mark of 5 mm");
        row("a lowest mark over the greatest", "100 N·m", "101 N·m", "50 N·m", "4", "lowest mark of 101 N·m");
        row("a lowest mark at the greatest", "100 N·m", "100 N·m", "100 N·m", "4", "");
        row("off by nothing", "100 N·m", "", "50 N·m", "0", "No tool");
        row("off by less than nothing", "100 N·m", "", "50 N·m", "-1", "No tool");
        row("off by all", "100 N·m", "", "50 N·m", "100", "No tool");
        row("off by nearly all", "100 N·m", "", "50 N·m", "99.9", "");
    }
    void whatIsRefused()
    {
        QFETCH(QString, greatest);
        QFETCH(QString, lowest);
        QFETCH(QString, setting);
        QFETCH(QString, percent);
        QFETCH(QString, refusal);
        const auto working = toolCheckWorking(quantity(greatest), quantityOrNone(lowest), quantity(setting), *Decimal::parse(percent));
        QCOMPARE(working.has_value(), refusal.isEmpty());
        if (!working)
            QVERIFY2(working.error().contains(refusal) && !working.error().contains(u'%' + u"1"_s), qPrintable(working.error()));
    }

    /// Table 7-2 of AC 43.13-1B (9/8/98) asks for 8 lbf·in of a 7/16-20 nut.
    void drags_data()
    {
        QTest::addColumn<QString>("drag");
        QTest::addColumn<QString>("least");
        QTest::addColumn<QString>("outcome"); // `good`, `new nut`, `no answer`
        QTest::newRow("above the least") << u"9 lbf·in"_s << u"8 lbf·in"_s << u"good"_s;
        QTest::newRow("at the least") << u"8 lbf·in"_s << u"8 lbf·in"_s << u"good"_s;
        QTest::newRow("below the least") << u"7.999 lbf·in"_s << u"8 lbf·in"_s << u"new nut"_s;
        QTest::newRow("in another unit") << u"0.9 N·m"_s << u"8 lbf·in"_s << u"new nut"_s; // 7.97 lbf·in
        QTest::newRow("turns freely") << u"0 lbf·in"_s << u"8 lbf·in"_s << u"new nut"_s;
        QTest::newRow("below nothing") << u"-1 lbf·in"_s << u"8 lbf·in"_s << u"no answer"_s;
        QTest::newRow("a drag that is a length") << u"9 in"_s << u"8 lbf·in"_s << u"no answer"_s;
        QTest::newRow("a least of nothing") << u"9 lbf·in"_s << u"0 lbf·in"_s << u"no answer"_s;
        QTest::newRow("a least that is a length") << u"9 lbf·in"_s << u"8 in"_s << u"no answer"_s;
    }
    void drags()
    {
        QFETCH(QString, drag);
        QFETCH(QString, least);
        const auto found = nutDrag(quantity(drag), quantity(least));
        QTEST(!found ? u"no answer"_s : found->refused ? u"new nut"_s : u"good"_s, "outcome");
    }
};

QTEST_GUILESS_MAIN(TestToolCheck)
#include "tst_tool_check.moc"
