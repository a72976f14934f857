// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/tightening.hpp"
#include "core/list/interface_list.hpp"

#include <QtTest>

#include <rapidcheck.h>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/requirements/catalogue.hpp"
#include "resources/resources.hpp"

using namespace core;
using namespace Qt::StringLiterals;

namespace {

const Kinds &kinds()
{
    static const Kinds all = resources::loadKinds().value();
    return all;
}

JobState jobWithZones()
{
    JobState job;
    job.facts.zones = {{u"Left"_s, std::nullopt}, {u"Right"_s, std::nullopt}};
    job.facts.leakScheme = {u"Four classes"_s, {{u"stain"_s, std::nullopt, std::nullopt}, {u"seep"_s, std::nullopt, std::nullopt}}, std::nullopt, {}};
    return job;
}

/// A job that lists these already.
JobState jobListing(const std::vector<ListedRow> &rows)
{
    JobState job = jobWithZones();
    for (const ListedRow &row : rows) {
        const Statement said{*LedgerId::parse(u"job"), 1, Instant::fromMilliseconds(0), *PersonId::parse(u"ana"), {}, u"recorded"_s,
                             u"interface.listed"_s, row.id.text(), row.body, std::nullopt, {}};
        findAct(u"interface.listed")->take(job, said);
    }
    return job;
}

InterfaceList read(const QString &file, const JobState &job = jobWithZones())
{
    return readInterfaceList(file.toUtf8(), {u"list.csv"_s, kinds(), job});
}

/// All errors, one a line: `3:4 expected words`, or the ids of the rows when there is none.
QString outcome(const InterfaceList &list)
{
    QStringList lines;
    if (list) {
        for (const ListedRow &row : *list)
            lines << row.id.text();
        return u"read: "_s + lines.join(u' ');
    }
    for (const Error &error : list.error())
        lines << u"%1:%2 %3"_s.arg(error.where.row.value_or(0)).arg(error.where.column.value_or(0)).arg(error.message);
    return lines.join(u'\n');
}

/// `2:4` for each error.
QString places(const InterfaceList &list)
{
    QStringList lines;
    if (list)
        return u"none"_s;
    for (const Error &error : list.error())
        lines << u"%1:%2"_s.arg(error.where.row.value_or(0)).arg(error.where.column.value_or(0));
    return lines.join(u' ');
}

const QString usualHeader = u"id,name,kind,zone,requirements,torque_fasteners,torque_min,torque_max,torque_unit,bonding_max,bonding_unit,seal_part,"
                           "safetying,aircraft_half,unit_half,critical,inspections,independence_group,twin_group,access,reference,note\r\n"_s;
const QString fullHeader = usualHeader.chopped(2) + u",torque_prevailing,torque_prevailing_min,torque_prevailing_max,torque_condition,torque_passes,torque_order,torque_turn_min,torque_turn_max,thread,"
                                                     "bonding_comparison,bonding_readings,leak_class,leak_rate,leak_drops_per_ml,hardware,depends_on\r\n"_s;

} // namespace

class InterfaceListTest : public QObject {
    Q_OBJECT

private slots:
    void everyColumnIsRead();
    void columnsInAnyOrder();
    void kindFillsInRequirements();
    void rowsFollowWhatTheyWaitFor();
    void rowsOfBlanksArePassedOver();
    void whatIsTaken_data();
    void whatIsTaken();
    void whatIsRefused_data();
    void whatIsRefused();
    void whatTheJobHasAlready();
    void allErrorsAtOnce();
    void exportNamesEveryColumn();
    void bodyIsTheInverseOfListing();
    void exportReadsBackTheSame();
    void previewShowsWhatIsTaken();
};

void InterfaceListTest::everyColumnIsRead()
{
    const QString file = fullHeader + u"E1,First,duct,Left,none,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,,\r\n"
                                      "E2,\"Duct, aft\",duct,Left,torque|seal|bonding|safetying|mate,4,20,25.0,Nm,2.5,mΩ,S-1,lockwire,P1,J1,yes,2,pair,tw,E1,task 1,\"a\nb\","
                                      "added,8 lbf.in,30 lbf·in,dry,30|60|100,cross,60 deg,75 °,7/16-20,less than,2,seep,2.5 mL/min,20.0,BOLT-6 x 4|SEAL-28 × 1 new,E1\r\n"
                                      "E3,Other,duct,Left,none,,,,,,,,,,,no,,,tw,,,,,,,,,,,,,,,,,,,\r\n"_s;
    const InterfaceList list = read(file);
    QVERIFY2(list, qPrintable(outcome(list)));
    const Listing &listing = (*list)[1].listing;
    QCOMPARE(listing.name, u"Duct, aft"_s);
    QCOMPARE(listing.torque->fasteners, 4);
    QCOMPARE(listing.torque->min.text(), u"20 N·m"_s);
    QCOMPARE(listing.torque->prevailing, Prevailing::Added);
    QCOMPARE(listing.torque->prevailingMin->text(), u"8 lbf·in"_s);
    QCOMPARE(listing.torque->passes.size(), 3U);
    QCOMPARE(listing.torque->order, (std::vector<qint64>{1, 3, 2, 4}));
    QCOMPARE(listing.torque->turn->most.text(), u"75"_s);
    QCOMPARE(listing.torque->thread, u"7/16-20"_s);
    QCOMPARE(listing.bondingComparison, measure::Comparison::LessThan);
    QCOMPARE(listing.leak->rate->text(), u"2.5 mL/min"_s);
    QCOMPARE(listing.leak->dropsPerMillilitre->text(), u"20.0"_s);
    QCOMPARE(listing.torque->max.text(), u"25.0 N·m"_s);
    QCOMPARE(listing.bondingMax->text(), u"2.5 mΩ"_s);
    QCOMPARE(listing.access, std::vector{*InterfaceId::parse(u"E1")});
    QCOMPARE(listing.dependsOn, std::vector{*InterfaceId::parse(u"E1")});
    QVERIFY(listing.critical);
    QCOMPARE(listing.inspections, 2);
    QCOMPARE(listing.note, u"a\nb"_s);
    QCOMPARE(listing.hardware, (std::vector<HardwareLine>{{u"BOLT-6"_s, 4, false}, {u"SEAL-28"_s, 1, true}}));
    QCOMPARE((*list)[1].row, 3);
    // Every member an entry can hold has stood in this row.
    for (const Field &field : findAct(u"interface.listed")->fields)
        QVERIFY2((*list)[1].body.contains(QString(field.name)), field.name.data());
}

void InterfaceListTest::columnsInAnyOrder()
{
    const InterfaceList list = read(u"Zone;ID;Torque max;Torque min;Torque fasteners;torque unit;Name;Kind;Requirements\n"
                                    "Right;C7;12.5;10;2;lbf·in;Clamp, upper;clamp;torque\n"_s);
    QVERIFY2(list, qPrintable(outcome(list)));
    QCOMPARE((*list)[0].listing.torque->min.text(), u"10 lbf·in"_s);
}

void InterfaceListTest::kindFillsInRequirements()
{
    const InterfaceList list = read(u"id,name,kind,zone,requirements\nP1,Panel,access_panel,Left,\nD1,Drain,drain,Left,\nD2,Drain,drain,Left,none\n"_s);
    QVERIFY2(list, qPrintable(outcome(list)));
    QCOMPARE((*list)[0].listing.requirements, std::vector<QString>());
    QCOMPARE((*list)[1].listing.requirements, std::vector{u"blanks"_s});
    QCOMPARE((*list)[2].listing.requirements, std::vector<QString>());
}

void InterfaceListTest::rowsFollowWhatTheyWaitFor()
{
    const InterfaceList list = read(u"id,name,kind,zone,access\nA,a,drain,Left,C|D\nB,b,drain,Left,\nC,c,drain,Left,D\nD,d,drain,Left,\n"_s);
    QCOMPARE(outcome(list), u"read: B D C A"_s);
}

void InterfaceListTest::rowsOfBlanksArePassedOver()
{
    QCOMPARE(outcome(read(u"id;name;kind;zone\r\n;;;\r\nE1;Drain;drain;Left\r\n\r\n ; ;;\r\n"_s)), u"read: E1"_s);
}

void InterfaceListTest::whatIsTaken_data()
{
    QTest::addColumn<QString>("row");
    QTest::addRow("the least") << u"E1,a,drain,Left,,,,,,,,,,,,,,,,,,"_s;
    QTest::addRow("equal torques") << u"E1,a,clamp,Left,,4,20,20.0,N·m,,,,,,,,,,,,,"_s;
    QTest::addRow("two inspections") << u"E1,a,drain,Left,,,,,,,,,,,,,2,,,,,"_s;
    QTest::addRow("blanks around") << u" E1 , a , drain , Left , none ,,,,,,,,,,,yes , 1,,,,,"_s;
    QTest::addRow("the same halves where no mate check is asked for") << u"E1,a,drain,Left,none,,,,,,,,,P1,J1,,,,,,,\r\nE2,b,drain,Left,none,,,,,,,,,P1,J1,,,,,,,"_s;
    QTest::addRow("mates with halves of their own") << u"E1,a,drain,Left,mate,,,,,,,,,P1,J1,,,,,,,\r\nE2,b,drain,Left,mate,,,,,,,,,P2,J2,,,,,,,"_s;
    QTest::addRow("a whole torque that is not asked for") << u"E1,a,drain,Left,none,4,20,25,N·m,,,,,,,,,,,,,"_s;
    QTest::addRow("two hundred fasteners") << u"E1,a,clamp,Left,torque,200,20,25,N·m,,,,,,,,,,,,,"_s;
    QTest::addRow("twins") << u"E1,a,drain,Left,,,,,,,,,,,,,,,tw,,,\r\nE2,b,drain,Left,,,,,,,,,,,,,,,tw,,,"_s;
    QTest::addRow("id that a spreadsheet would run, guarded") << u"'-E1,a,drain,Left,,,,,,,,,,,,,,,,,,"_s;
}

void InterfaceListTest::whatIsTaken()
{
    QFETCH(QString, row);
    const InterfaceList list = read(usualHeader + row);
    QVERIFY2(list, qPrintable(outcome(list)));
}

void InterfaceListTest::whatIsRefused_data()
{
    QTest::addColumn<QString>("file");
    QTest::addColumn<QString>("where"); // row:column of each error
    QTest::addColumn<QString>("named"); // words of one of them
    const auto row = [](const char *name, const QString &text, const QString &where, const QString &named) {
        QTest::addRow("%s", name) << usualHeader + text << where << named;
    };
    QTest::addRow("empty file") << QString() << u"0:0"_s << u"empty"_s;
    QTest::addRow("header alone") << usualHeader << u"0:0"_s << u"no interface"_s;
    QTest::addRow("unknown column") << u"id,name,kind,zone,colour\nE1,a,drain,Left,red\n"_s << u"1:5"_s << u"colour"_s;
    QTest::addRow("column twice") << u"id,name,kind,zone,name\nE1,a,drain,Left,b\n"_s << u"1:5"_s << u"twice"_s;
    QTest::addRow("column missing") << u"id,name,kind\nE1,a,drain\n"_s << u"1:0"_s << u"\"zone\""_s;
    QTest::addRow("a field too few") << u"id,name,kind,zone\nE1,a,drain\n"_s << u"2:0 2:4"_s << u"3 fields"_s;
    QTest::addRow("a field too many") << u"id,name,kind,zone\nE1,a,drain,Left,b\n"_s << u"2:0"_s << u"5 fields"_s;
    QTest::addRow("a quote that never closes") << QString(u"id,name,kind,zone\nE1,\"a,drain,Left\n"_s) << u"2:2"_s << u"never closes"_s;
    const QString leakHeader = u"id,name,kind,zone,requirements,leak_class,leak_rate,leak_drops_per_ml\n"_s;
    QTest::addRow("drops finer than from any edge") << leakHeader + u"E1,a,drain,Left,leak,,1 mL/min,60.1\n"_s << u"2:8"_s << u"from no edge"_s;
    QTest::addRow("drops without a rate that they turn into") << leakHeader + u"E1,a,drain,Left,leak,stain,,20\n"_s << u"2:8"_s << u"limits none"_s;
    QTest::addRow("a leak rate below nought") << leakHeader + u"E1,a,drain,Left,leak,,-1 mL/min,20\n"_s << u"2:7"_s << u"not below 0"_s;
    QTest::addRow("a leak class that the job does not have") << leakHeader + u"E1,a,drain,Left,leak,weep,,\n"_s << u"2:6"_s << u"stain, seep"_s;
    QTest::addRow("the worst class, which limits nothing") << leakHeader + u"E1,a,drain,Left,leak,seep,,\n"_s << u"2:6"_s << u"limits nothing"_s;
    row("no id", u",a,drain,Left,,,,,,,,,,,,,,,,,,"_s, u"2:1"_s, u"id"_s);
    row("no name", u"E1,,drain,Left,,,,,,,,,,,,,,,,,,"_s, u"2:2"_s, u"empty"_s);
    row("unknown kind", u"E1,a,drains,Left,none,,,,,,,,,,,,,,,,,"_s, u"2:3"_s, u"drains"_s);
    row("unknown kind, so nothing is filled in for it", u"E1,a,drains,Left,,,,,,,,,,,,,,,,,,"_s, u"2:3"_s, u"drains"_s);
    row("no kind", u"E1,a,,Left,,,,,,,,,,,,,,,,,,"_s, u"2:3"_s, u"empty"_s);
    row("unknown zone", u"E1,a,drain,Lefft,,,,,,,,,,,,,,,,,,"_s, u"2:4"_s, u"Left, Right"_s);
    row("unknown requirement", u"E1,a,drain,Left,blank,,,,,,,,,,,,,,,,,"_s, u"2:5"_s, u"blanks"_s);
    row("requirement twice", u"E1,a,drain,Left,blanks|blanks,,,,,,,,,,,,,,,,,"_s, u"2:5"_s, u"twice"_s);
    row("torque without its specification", u"E1,a,clamp,Left,torque,,,,,,,,,,,,,,,,,"_s, u"2:6"_s, u"fasteners"_s);
    row("torque of the kind without its specification", u"E1,a,clamp,Left,,,,,,,,,,,,,,,,,,"_s, u"2:6"_s, u"fasteners"_s);
    row("bonding without its limit", u"E1,a,drain,Left,bonding,,,,,,,,,,,,,,,,,"_s, u"2:10"_s, u"resistance"_s);
    row("seal without its part", u"E1,a,drain,Left,seal,,,,,,,,,,,,,,,,,"_s, u"2:12"_s, u"part"_s);
    row("safetying without its method", u"E1,a,drain,Left,safetying,,,,,,,,,,,,,,,,,"_s, u"2:13"_s, u"method"_s);
    row("mate without its halves", u"E1,a,drain,Left,mate,,,,,,,,,,,,,,,,,"_s, u"2:5"_s, u"halves"_s);
    row("half a torque that is not asked for", u"E1,a,drain,Left,,4,20,,N·m,,,,,,,,,,,,,"_s, u"2:8"_s, u"most"_s);
    row("half a bonding limit that is not asked for", u"E1,a,drain,Left,none,,,,,2.5,,,,,,,,,,,,"_s, u"2:11"_s, u"unit"_s);
    row("ids that cannot be ids", u"E1,a,drain,Left,,,,,,,,,,,,,,,,E2\t|E\t3,,"_s, u"2:20"_s, u"ids of interfaces"_s);
    row("decimal comma", u"E1,a,clamp,Left,torque,4,\"20,5\",25,N·m,,,,,,,,,,,,,"_s, u"2:7"_s, u"decimal comma"_s);
    row("no number", u"E1,a,clamp,Left,torque,4,20 N,25,N·m,,,,,,,,,,,,,"_s, u"2:7"_s, u"12.5"_s);
    row("below zero", u"E1,a,clamp,Left,torque,4,-20,25,N·m,,,,,,,,,,,,,"_s, u"2:7"_s, u"not below 0"_s);
    row("fasteners are no whole number", u"E1,a,clamp,Left,torque,4.0,20,25,N·m,,,,,,,,,,,,,"_s, u"2:6"_s, u"whole number"_s);
    row("too many fasteners", u"E1,a,clamp,Left,torque,201,20,25,N·m,,,,,,,,,,,,,"_s, u"2:6"_s, u"200"_s);
    row("least above most", u"E1,a,clamp,Left,torque,4,25,20,N·m,,,,,,,,,,,,,"_s, u"2:8"_s, u"to a most"_s);
    row("a least of nought", u"E1,a,clamp,Left,torque,4,0,20,N·m,,,,,,,,,,,,,"_s, u"2:8"_s, u"above 0"_s);
    row("a slipped decimal", u"E1,a,clamp,Left,torque,4,20,250,N·m,,,,,,,,,,,,,"_s, u"2:8"_s, u"slipped decimal"_s);
    row("unknown unit", u"E1,a,clamp,Left,torque,4,20,25,in-lb,,,,,,,,,,,,,"_s, u"2:9"_s, u"lbf·in"_s);
    row("torque in a unit of resistance", u"E1,a,clamp,Left,torque,4,20,25,mΩ,,,,,,,,,,,,,"_s, u"2:9"_s, u"lbf·in"_s);
    row("bonding in a unit of torque", u"E1,a,drain,Left,bonding,,,,,2.5,N·m,,,,,,,,,,,"_s, u"2:11"_s, u"mΩ"_s);
    row("neither yes nor no", u"E1,a,drain,Left,,,,,,,,,,,,x,,,,,,"_s, u"2:16"_s, u"yes or no"_s);
    row("three inspections", u"E1,a,drain,Left,,,,,,,,,,,,,3,,,,,"_s, u"2:17"_s, u"once or twice"_s);
    row("twin alone", u"E1,a,drain,Left,,,,,,,,,,,,,,,tw,,,"_s, u"2:19"_s, u"alone"_s);
    row("access to nothing", u"E1,a,drain,Left,,,,,,,,,,,,,,,,E9,,"_s, u"2:20"_s, u"E9"_s);
    row("access to itself", u"E1,a,drain,Left,,,,,,,,,,,,,,,,E1,,"_s, u"2:20"_s, u"E1, E1"_s);
    row("circle", u"E1,a,drain,Left,,,,,,,,,,,,,,,,E2,,\r\nE2,b,drain,Left,,,,,,,,,,,,,,,,E3,,\r\nE3,c,drain,Left,,,,,,,,,,,,,,,,E1,,\r\nE4,d,drain,Left,,,,,,,,,,,,,,,,E1,,"_s,
        u"2:20"_s, u"E1, E2, E3, E1"_s);
    row("id twice", u"E1,a,drain,Left,,,,,,,,,,,,,,,,,,\r\nE1,b,drain,Left,,,,,,,,,,,,,,,,,,"_s, u"3:1"_s, u"row 2"_s);
    row("two circles", u"E1,a,drain,Left,,,,,,,,,,,,,,,,E2,,\r\nE2,b,drain,Left,,,,,,,,,,,,,,,,E1,,\r\nE3,c,drain,Left,,,,,,,,,,,,,,,,E4,,\r\nE4,d,drain,Left,,,,,,,,,,,,,,,,E3,,"_s,
        u"2:20 4:20"_s, u"E3, E4, E3"_s);
    row("one aircraft half for two", u"E1,a,drain,Left,mate,,,,,,,,,P1,J1,,,,,,,\r\nE2,b,drain,Left,mate,,,,,,,,,P1,J2,,,,,,,"_s, u"3:14"_s, u"E1"_s);
    row("one half for two", u"E1,a,drain,Left,mate,,,,,,,,,P1,J1,,,,,,,\r\nE2,b,drain,Left,mate,,,,,,,,,P2,J1,,,,,,,"_s, u"3:15"_s, u"E1"_s);
}

void InterfaceListTest::whatIsRefused()
{
    QFETCH(QString, file);
    QFETCH(QString, where);
    QFETCH(QString, named);
    const InterfaceList list = read(file);
    QVERIFY(!list);
    QVERIFY2(places(list) == where, qPrintable(outcome(list)));
    QVERIFY2(outcome(list).contains(named), qPrintable(outcome(list)));
    for (const Error &error : list.error())
        QCOMPARE(error.where.file, u"list.csv"_s);
}

void InterfaceListTest::whatTheJobHasAlready()
{
    const auto first = read(u"id,name,kind,zone,twin_group\nE1,a,drain,Left,tw\nE2,b,drain,Left,tw\n"_s);
    QVERIFY2(first, qPrintable(outcome(first)));
    const JobState job = jobListing(*first);
    QCOMPARE(places(read(u"id,name,kind,zone\nE1,a,drain,Left\n"_s, job)), u"2:1"_s);
    QCOMPARE(outcome(read(u"id,name,kind,zone,twin_group,access\nE3,a,drain,Left,tw,E1\n"_s, job)), u"read: E3"_s);
}

void InterfaceListTest::allErrorsAtOnce()
{
    const QString file = usualHeader + u"E1,,drains,Lefft,blank,x,\"1,5\",,lb,,,,,,,maybe,9,,,E9,,\r\nE1,a,drain,Left,,,,,,,,,,,,,,,,,,\r\n,a,drain,Nowhere,,,,,,,,,,,,,,,,,,\r\n"_s;
    QCOMPARE(places(read(file)), u"2:2 2:3 2:4 2:5 2:6 2:7 2:9 2:16 2:17 2:20 3:1 4:1 4:4"_s);
}

void InterfaceListTest::exportNamesEveryColumn()
{
    QCOMPARE(writeInterfaceList(std::vector<Listing>()), fullHeader.toUtf8());
}

void InterfaceListTest::bodyIsTheInverseOfListing()
{
    const InterfaceList list = read(usualHeader + u"E1,a,duct,Left,torque|bonding,4,20,25.0,Nm,2.50,mΩ,S-1,lockwire,P1,J1,yes,2,pair,,,task 1,n\r\n"_s);
    QVERIFY2(list, qPrintable(outcome(list)));
    QCOMPARE(bodyOf((*list)[0].listing), (*list)[0].body);
    QCOMPARE(listingIn((*list)[0].id, bodyOf((*list)[0].listing)), (*list)[0].listing);
}

void InterfaceListTest::exportReadsBackTheSame()
{
    QVERIFY(rc::check("a list comes back as it was", [] {
        // Text out of what CSV, spreadsheets and the list's own separators make of it; never blank, since an entry holds none.
        const auto text = [] {
            static const QString alphabet = u"aB,;\"\r\n\t '=+-@|\\é€"_s;
            QString chosen = u"x"_s;
            for (const int choice : *rc::gen::arbitrary<std::vector<int>>())
                chosen.insert(std::abs(choice) % 7 == 0 ? 0 : chosen.size(), alphabet[std::abs(choice % static_cast<int>(alphabet.size()))]);
            return chosen;
        };
        const auto optionalText = [&] { return *rc::gen::arbitrary<bool>() ? text() : QString(); };
        const int count = *rc::gen::inRange(1, 12);
        std::vector<Listing> listings;
        for (int i = 0; i < count; ++i) {
            QString id = text();
            id.remove(QRegularExpression(u"[\\r\\n\\t]"_s));
            Listing listing{.id = *InterfaceId::parse(u"E%1 %2"_s.arg(i).arg(id.trimmed()).left(120).trimmed()),
                            .name = text(), .kind = u"duct"_s, .zone = u"Left"_s, .requirements = {}, .torque = {}, .bondingMax = {}, .leak = {},
                            .sealPart = text(), .safetying = text(), .aircraftHalf = u"P%1"_s.arg(i), .unitHalf = u"-J%1"_s.arg(i),
                            .critical = *rc::gen::arbitrary<bool>(), .inspections = *rc::gen::inRange(1, 3),
                            .independenceGroup = optionalText(), .twinGroup = {}, .access = {}, .reference = optionalText(), .note = optionalText()};
            if (*rc::gen::arbitrary<bool>())
                listing.torque = TorqueSpec{*rc::gen::inRange(1, 200), *Quantity::parse(u"20.50", u"N·m"), *Quantity::parse(u"25", u"N·m")};
            if (listing.torque && *rc::gen::arbitrary<bool>()) {
                listing.torque->prevailing = Prevailing::Added;
                listing.torque->prevailingMin = Quantity::parse(u"8.0", u"lbf·in");
                listing.torque->condition = u"lubricated"_s;
                listing.torque->passes = {*Decimal::parse(u"30"), *Decimal::parse(u"100")};
                listing.torque->order = measure::crossPattern(listing.torque->fasteners);
                listing.torque->turn = TurnBand{*Decimal::parse(u"60"), *Decimal::parse(u"75.0")};
                listing.torque->thread = u"7/16-20"_s;
            }
            if (*rc::gen::arbitrary<bool>())
                listing.leak = LeakLimit{{}, Quantity::parse(u"2.0", u"mL/min"), *rc::gen::arbitrary<bool>() ? Decimal::parse(u"15.0") : std::nullopt};
            if (*rc::gen::arbitrary<bool>())
                listing.bondingMax = *Quantity::parse(u"2.50", u"mΩ");
            if (listing.bondingMax && *rc::gen::arbitrary<bool>()) {
                listing.bondingComparison = measure::Comparison::LessThan;
                listing.bondingReadings = 2;
            }
            for (int part = *rc::gen::inRange(0, 3); part > 0; --part)
                listing.hardware.push_back({u"%1 %2"_s.arg(part).arg(text()).trimmed(), *rc::gen::inRange(1, 10000), *rc::gen::arbitrary<bool>()});
            for (const Requirement &requirement : requirements()) {
                if (*rc::gen::arbitrary<bool>() && !requirement.unmet(listing))
                    listing.requirements.push_back(requirement.name);
            }
            for (const Listing &earlier : listings) {
                if (*rc::gen::inRange(0, 4) == 0)
                    listing.access.push_back(earlier.id);
            }
            listings.push_back(std::move(listing));
        }
        const InterfaceList list = read(QString::fromUtf8(writeInterfaceList(listings)));
        if (!list)
            RC_FAIL(outcome(list).toStdString());
        RC_ASSERT(list->size() == listings.size());
        for (std::size_t i = 0; i < listings.size(); ++i)
            RC_ASSERT((*list)[i].listing == listings[i]);
        RC_ASSERT(writeInterfaceList(jobListing(*list)) == writeInterfaceList(listings));
    }));
}

void InterfaceListTest::previewShowsWhatIsTaken()
{
    const InterfaceList list = read(usualHeader + u"E1,Clamp,clamp,Left,torque,4,20,25,N·m,,,,,,,yes,,,,,,\r\nE2,Drain,drain,Right,,,,,,,,,,,,,,,,E1,,\r\n"_s);
    QVERIFY2(list, qPrintable(outcome(list)));
    const ListPreview preview = previewOf(*list, kinds());
    QCOMPARE(preview.rows.size(), 2U);
    QCOMPARE(preview.rows[0], (std::vector<QString>{u"2"_s, u"E1"_s, u"Clamp"_s, u"Clamp"_s, u"Left"_s, u"Torque"_s, u"4 × 20 to 25 N·m"_s, u"critical"_s, u"1"_s, QString()}));
    QCOMPARE(preview.rows[0].size(), preview.columns.size());
    QCOMPARE(preview.summary, u"2 interfaces in 2 zones, 1 of them critical"_s);
}

QTEST_GUILESS_MAIN(InterfaceListTest)
#include "tst_interface_list.moc"
