// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/hardware_of.hpp"

using namespace Qt::StringLiterals;
using core::HardwareStanding;

namespace {

core::Mark mark(qint64 seq) { return {seq, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0)}; }

/// Four bolts that may be used again and one seal that may not, as a list asks for them; or no list of hardware at all.
core::InterfaceState joint(bool isListed)
{
    core::Listing listed{.id = *core::InterfaceId::parse(u"D1"), .name = u"Duct"_s, .kind = u"duct"_s, .zone = u"Left"_s, .requirements = {}, .torque = {}, .bondingMax = {}, .leak = {}, .sealPart = {}, .safetying = {},
                         .aircraftHalf = {}, .unitHalf = {}, .independenceGroup = {}, .twinGroup = {}, .access = {}, .reference = {}, .note = {}};
    if (isListed)
        listed.hardware = {{u"BOLT-6"_s, 4, false}, {u"SEAL-28"_s, 1, true}};
    return {.listed = listed, .listedBy = mark(1), .removal = {}, .restoration = {}, .torque = {}, .bonding = {}, .safetying = {}, .leak = {}, .acceptances = {}, .rejection = {}, .disturbed = {},
            .actors = {}, .torqueTakenOverBy = {}, .photos = {}, .walkedRound = {}, .stillAttached = {}};
}

QString told(const std::vector<core::HardwareUse> &used)
{
    QStringList lines;
    for (const core::HardwareUse &one : used)
        lines << u"%1 %2/%3/%4"_s.arg(one.part).arg(one.reused).arg(one.renewed).arg(one.scrapped);
    return lines.join(u", "_s);
}

} // namespace

/// Parts are neither lost nor left behind, and what may not be used again is renewed: common practice.
class TestHardwareOf : public QObject {
    Q_OBJECT

private slots:
    void standing_data();
    void standing();
    void likely_data();
    void likely();
};

void TestHardwareOf::standing_data()
{
    QTest::addColumn<bool>("isListed");
    QTest::addColumn<int>("off"); // 0: not undone
    QTest::addColumn<int>("reused");   // -1: not joined
    QTest::addColumn<int>("renewed");
    QTest::addColumn<int>("scrapped");
    QTest::addColumn<int>("is");
    QTest::addRow("not undone") << true << 0 << -1 << 0 << 0 << int(HardwareStanding::NotUndone);
    QTest::addRow("off") << true << 4 << -1 << 0 << 0 << int(HardwareStanding::Open);
    QTest::addRow("all of it used again") << true << 4 << 4 << 0 << 0 << int(HardwareStanding::Even);
    QTest::addRow("one scrapped, one renewed") << true << 4 << 3 << 1 << 1 << int(HardwareStanding::Even);
    QTest::addRow("one neither used nor scrapped") << true << 4 << 3 << 1 << 0 << int(HardwareStanding::NotEven);
    QTest::addRow("one too few on it") << true << 4 << 3 << 0 << 1 << int(HardwareStanding::NotEven);
    QTest::addRow("no list says how many") << false << 4 << 3 << 0 << 1 << int(HardwareStanding::Even);
    QTest::addRow("no list, and one lost") << false << 4 << 3 << 0 << 0 << int(HardwareStanding::NotEven);
}

void TestHardwareOf::standing()
{
    QFETCH(bool, isListed);
    QFETCH(int, off);
    QFETCH(int, reused);
    QFETCH(int, renewed);
    QFETCH(int, scrapped);
    QFETCH(int, is);
    core::InterfaceState item = joint(isListed);
    if (off > 0)
        item.removal = core::Removal{mark(2), {}, {}, 0, false, {{u"BOLT-6"_s, off}}};
    if (reused >= 0)
        item.restoration = core::Restoration{mark(3), {}, 0, {}, {}, {}, {}, {{u"BOLT-6"_s, reused, renewed, scrapped, u"L-1"_s}}};
    const auto parts = core::hardwareOf(item);
    QCOMPARE(parts.front().part, u"BOLT-6"_s);
    QCOMPARE(int(core::hardwareStanding(item, parts.front())), is);
}

void TestHardwareOf::likely_data()
{
    QTest::addColumn<bool>("isListed");
    QTest::addColumn<int>("bolts");
    QTest::addColumn<QString>("used"); // reused/renewed/scrapped
    QTest::addRow("all came off") << true << 4 << u"BOLT-6 4/0/0, SEAL-28 0/1/1"_s;
    QTest::addRow("one bolt was missing") << true << 3 << u"BOLT-6 3/1/0, SEAL-28 0/1/1"_s;
    QTest::addRow("one bolt too many") << true << 5 << u"BOLT-6 4/0/1, SEAL-28 0/1/1"_s;
    QTest::addRow("no list") << false << 4 << u"BOLT-6 4/0/0, SEAL-28 1/0/0"_s;
}

void TestHardwareOf::likely()
{
    QFETCH(bool, isListed);
    QFETCH(int, bolts);
    QFETCH(QString, used);
    core::InterfaceState item = joint(isListed);
    item.removal = core::Removal{mark(2), {}, {}, 0, false, {{u"BOLT-6"_s, bolts}, {u"SEAL-28"_s, 1}}};
    QCOMPARE(told(core::likelyUse(item)), used);
    QCOMPARE(core::likelyRemoved(item.listed).size(), isListed ? 2U : 0U);
}

QTEST_APPLESS_MAIN(TestHardwareOf)
#include "tst_hardware_of.moc"
