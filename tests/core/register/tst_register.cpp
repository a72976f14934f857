// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/references.hpp"
#include "core/job/admit.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

class TestRegister : public QObject {
    Q_OBJECT

    static core::Draft draft(const QString &author, const QString &kind, const QString &subject, const Object &body)
    {
        return {*core::PersonId::parse(author), story::opening(), kind, subject, body};
    }
    static QString refusedBy(const core::Register &reg, const core::Draft &draft)
    {
        QStringList names;
        for (const core::Refusal &refusal : core::admit(reg, draft))
            names << refusal.rule;
        return names.join(u' ');
    }
    static void take(core::Register &reg, const core::Draft &draft) { core::fold(reg, story::statementOf(draft, reg.head.seq + 1), core::Digest::of("next")); }
    static Object person(const QString &key) { return {{u"name"_s, u"Zoe"_s}, {u"public_key"_s, core::Digest::of(key.toUtf8()).hex()}, {u"identity"_s, u"pass"_s}}; }
    static Object grant(const QString &who, const QString &until)
    {
        return {{u"person"_s, who}, {u"authority"_s, u"inspect"_s}, {u"from"_s, u"2026-02-01"_s}, {u"until"_s, until}, {u"reference"_s, u"QM-5"_s}};
    }
    static Object range(const QString &min, const QString &max, const QString &unit)
    {
        return {{u"name"_s, u"Wrench"_s}, {u"range_min"_s, min}, {u"range_max"_s, max}, {u"unit"_s, unit}, {u"torque_type"_s, u"indicating"_s}};
    }
    static Object calibration(const QString &on, const QString &due) { return {{u"on"_s, on}, {u"due"_s, due}, {u"certificate"_s, u"CC-9"_s}}; }

private slots:
    void eachRule_data()
    {
        QTest::addColumn<QString>("author");
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("subject");
        QTest::addColumn<Object>("body");
        QTest::addColumn<QString>("refusedBy");
        const auto row = [](const char *name, const QString &author, const char *kind, const QString &subject, const Object &body, const char *by) {
            QTest::newRow(name) << author << QString::fromLatin1(kind) << subject << body << QString::fromLatin1(by);
        };
        const Object reason{{u"reason"_s, u"left"_s}};
        row("enrolled by the root", u"Root"_s, "person.enrolled", u"Zoe"_s, person(u"zoe"_s), "");
        row("enrolled by a technician", u"Ana"_s, "person.enrolled", u"Zoe"_s, person(u"zoe"_s), "register.administrator");
        row("an id given twice", u"Root"_s, "person.enrolled", u"Ana"_s, person(u"zoe"_s), "person.new");
        row("somebody else's key", u"Root"_s, "person.enrolled", u"Zoe"_s, person(u"Ana"_s), "key.new");
        row("founded twice", u"Root"_s, "register.founded", u"Root"_s, {{u"name"_s, u"R"_s}, {u"public_key"_s, core::Digest::of("r").hex()}, {u"organisation"_s, u"O"_s}}, "register.founded-once");
        row("granted", u"Root"_s, "authorisation.granted", u"G-1"_s, grant(u"Ana"_s, u"2026-12-31"_s), "");
        row("granted for one day", u"Root"_s, "authorisation.granted", u"G-1"_s, grant(u"Ana"_s, u"2026-02-01"_s), "");
        row("ends before it begins", u"Root"_s, "authorisation.granted", u"G-1"_s, grant(u"Ana"_s, u"2026-01-31"_s), "register.dates");
        row("granted to nobody", u"Root"_s, "authorisation.granted", u"G-1"_s, grant(u"Zed"_s, u"2026-12-31"_s), "authorisation.person");
        row("a number given twice", u"Root"_s, "authorisation.granted", u"Ana-work"_s, grant(u"Ana"_s, u"2026-12-31"_s), "authorisation.new");
        row("withdrawn", u"Root"_s, "authorisation.withdrawn", u"Ana-work"_s, reason, "");
        row("withdrawn twice", u"Root"_s, "authorisation.withdrawn", u"Wes-inspect"_s, reason, "authorisation.stands");
        row("a new key", u"Root"_s, "key.replaced", u"Ana"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}}, "");
        row("a key of nobody", u"Root"_s, "key.replaced", u"Zed"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}}, "person.enrolled");
        row("the key that it has", u"Root"_s, "key.replaced", u"Ana"_s, {{u"public_key"_s, core::Digest::of("Ana").hex()}, {u"reason"_s, u"lost"_s}}, "key.new");
        const auto stopped = [](const QString &since) { return Object{{u"since"_s, since}, {u"reason"_s, u"PIN seen"_s}}; };
        row("a key stopped", u"Root"_s, "key.stopped", u"Ana"_s, stopped(u"2026-01-02T08:00:00.000Z"_s), "");
        row("a key stopped by a technician", u"Ben"_s, "key.stopped", u"Ana"_s, stopped(u"2026-01-02T08:00:00.000Z"_s), "register.administrator");
        row("in doubt since tomorrow", u"Root"_s, "key.stopped", u"Ana"_s, stopped(u"2999-01-01T08:00:00.000Z"_s), "key.doubt");
        row("a key of nobody stopped", u"Root"_s, "key.stopped", u"Zed"_s, stopped(u"2026-01-02T08:00:00.000Z"_s), "person.enrolled");
        row("one's own key stopped", u"Root"_s, "key.stopped", u"Root"_s, stopped(u"2026-01-02T08:00:00.000Z"_s), "key.not-own");
        row("one's own key replaced", u"Root"_s, "key.replaced", u"Root"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"seen"_s}, {u"since"_s, u"2026-01-02T08:00:00.000Z"_s}}, "");
        row("replaced, in doubt since tomorrow", u"Root"_s, "key.replaced", u"Ana"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"seen"_s}, {u"since"_s, u"2999-01-01T08:00:00.000Z"_s}}, "key.doubt");
        row("a tool", u"Root"_s, "tool.registered", u"TW9"_s, range(u"1"_s, u"5"_s, u"N·m"_s), "");
        row("a tool that measures nothing", u"Root"_s, "tool.registered", u"HOIST"_s, {{u"name"_s, u"Hoist"_s}}, "");
        row("a tool's number twice", u"Root"_s, "tool.registered", u"TW1"_s, range(u"1"_s, u"5"_s, u"N·m"_s), "tool.new");
        row("a range upside down", u"Root"_s, "tool.registered", u"TW9"_s, range(u"5"_s, u"1"_s, u"N·m"_s), "tool.range-sound");
        row("half a range", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"range_min"_s, u"1"_s}}, "tool.range-sound");
        row("calibrated", u"Root"_s, "tool.calibrated", u"TW2"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), "");
        row("due before it was made", u"Root"_s, "tool.calibrated", u"TW2"_s, calibration(u"2026-03-01"_s, u"2026-02-28"_s), "register.dates");
        row("a withdrawn tool calibrated", u"Root"_s, "tool.calibrated", u"TW3"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), "tool.in-use");
        const auto doubt = [](const QString &after) { return Object{{u"after"_s, after}, {u"found"_s, u"Reads 6 % low."_s}, {u"certificate"_s, u"CC-10"_s}}; };
        row("a tool found out of tolerance", u"Root"_s, "tool.doubted", u"TW1"_s, doubt(u"2026-01-02"_s), "");
        row("found out, and right until today", u"Root"_s, "tool.doubted", u"TW1"_s, doubt(u"2999-01-01"_s), "tool.doubt");
        row("a withdrawn tool found out", u"Root"_s, "tool.doubted", u"TW3"_s, doubt(u"2026-01-02"_s), "tool.in-use");
        row("a tool withdrawn", u"Root"_s, "tool.withdrawn", u"TW1"_s, reason, "");
        row("a tool withdrawn twice", u"Root"_s, "tool.withdrawn", u"TW3"_s, reason, "tool.in-use");
        row("a tool that there is not, withdrawn", u"Root"_s, "tool.withdrawn", u"TW9"_s, reason, "tool.in-use");
        row("a range of one value", u"Root"_s, "tool.registered", u"TW9"_s, range(u"5"_s, u"5"_s, u"N·m"_s), "");
        row("a range from nought", u"Root"_s, "tool.registered", u"TW9"_s, range(u"0"_s, u"5"_s, u"N·m"_s), "");
        row("a range from below nought", u"Root"_s, "tool.registered", u"TW9"_s, range(u"-1"_s, u"5"_s, u"N·m"_s), "tool.range-sound");
        row("an upper end alone", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"range_max"_s, u"5"_s}}, "tool.range-sound");
        row("a unit alone", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"setting"_s}, {u"graduation"_s, u"1"_s}}, "tool.range-sound");
        row("no upper end", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"range_min"_s, u"1"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"indicating"_s}}, "tool.range-sound");
        const auto wrench = [&](const QString &name, const QString &value) {
            Object body = range(u"1"_s, u"5"_s, u"N·m"_s);
            body.set(name, value);
            return body;
        };
        row("a wrench with its graduation", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"graduation"_s, u"0.1"_s), "");
        row("a graduation of nought", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"graduation"_s, u"0"_s), "tool.figures-sound");
        row("a graduation without a unit", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"graduation"_s, u"1"_s}}, "tool.figures-sound");
        row("a wrench with its deviation", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"deviation"_s, u"4"_s), "");
        row("a deviation of all", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"deviation"_s, u"100"_s), "tool.figures-sound");
        row("a deviation of nought", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"deviation"_s, u"0"_s), "tool.figures-sound");
        row("a certificate that says nought", u"Root"_s, "tool.calibrated", u"TW1"_s, {{u"on"_s, u"2026-03-01"_s}, {u"due"_s, u"2027-02-28"_s}, {u"certificate"_s, u"CC-9"_s}, {u"deviation"_s, u"0"_s}}, "tool.figures-sound");
        row("a deviation below nought", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"deviation"_s, u"-1"_s), "tool.figures-sound");
        row("a wrench with its length", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"length"_s, u"10 in"_s), "");
        row("a wrench of no length", u"Root"_s, "tool.registered", u"TW9"_s, wrench(u"length"_s, u"0 in"_s), "tool.figures-sound");
        // ISO 6789 divides hand torque tools into those that indicate (type I) and those that are set (type II).
        const auto typed = [&](const QString &type) {
            Object body = range(u"1"_s, u"5"_s, u"N·m"_s);
            body.remove(u"torque_type"_s);
            if (!type.isEmpty())
                body.set(u"torque_type"_s, type);
            return body;
        };
        Object marked = typed(u"setting"_s);
        marked.set(u"graduation"_s, u"0.1"_s);
        row("a torque tool of no type", u"Root"_s, "tool.registered", u"TW9"_s, typed({}), "tool.torque-type");
        row("a torque tool that indicates", u"Root"_s, "tool.registered", u"TW9"_s, typed(u"indicating"_s), "");
        row("a torque tool that is set, without marks", u"Root"_s, "tool.registered", u"TW9"_s, typed(u"setting"_s), "tool.torque-type");
        row("a torque tool that is set, with its marks", u"Root"_s, "tool.registered", u"TW9"_s, marked, "");
        row("a meter that measures ohms", u"Root"_s, "tool.registered", u"BM9"_s, {{u"name"_s, u"Meter"_s}, {u"range_min"_s, u"1"_s}, {u"range_max"_s, u"5"_s}, {u"unit"_s, u"mΩ"_s}}, "");
        row("a meter that says that it is set", u"Root"_s, "tool.registered", u"BM9"_s, {{u"name"_s, u"Meter"_s}, {u"range_min"_s, u"1"_s}, {u"range_max"_s, u"5"_s}, {u"unit"_s, u"mΩ"_s}, {u"torque_type"_s, u"indicating"_s}}, "tool.torque-type");
        row("granted without an end", u"Root"_s, "authorisation.granted", u"G-1"_s,
            {{u"person"_s, u"Ana"_s}, {u"authority"_s, u"inspect"_s}, {u"from"_s, u"2026-02-01"_s}, {u"reference"_s, u"QM-5"_s}}, "");
        row("withdrawn, never granted", u"Root"_s, "authorisation.withdrawn", u"G-9"_s, reason, "authorisation.stands");
        row("by who is not enrolled", u"Zed"_s, "tool.withdrawn", u"TW1"_s, reason, "register.administrator");
    }
    void eachRule()
    {
        QFETCH(QString, author);
        QFETCH(QString, kind);
        QFETCH(QString, subject);
        QFETCH(Object, body);
        QFETCH(QString, refusedBy);
        QCOMPARE(TestRegister::refusedBy(story::register_(), draft(author, kind, subject, body)), refusedBy);
    }

    void nothingBeforeTheRoot()
    {
        const core::Register empty;
        QVERIFY(refusedBy(empty, draft(u"Root"_s, u"person.enrolled"_s, u"Zoe"_s, person(u"zoe"_s))).startsWith(u"register.founded"));
        const Object founding{{u"name"_s, u"R"_s}, {u"public_key"_s, core::Digest::of("r").hex()}, {u"organisation"_s, u"O"_s}};
        QCOMPARE(refusedBy(empty, draft(u"Root"_s, u"register.founded"_s, u"Root"_s, founding)), QString());
        QCOMPARE(refusedBy(empty, draft(u"Root"_s, u"register.founded"_s, u"Zoe"_s, founding)), u"register.founder"_s);
    }

    void theClockDoesNotRunBack()
    {
        core::Draft late = draft(u"Root"_s, u"authorisation.withdrawn"_s, u"Ana-work"_s, {{u"reason"_s, u"left"_s}});
        late.at = core::Instant::fromMilliseconds(story::opening().milliseconds() - 1);
        QCOMPARE(refusedBy(story::register_(), late), u"ledger.clock"_s);
    }

    void aCalibrationHoldsToItsLastDay_data()
    {
        QTest::addColumn<QDate>("day");
        QTest::addColumn<bool>("holds");
        QTest::newRow("the day it was made") << QDate(2026, 1, 2) << true;
        QTest::newRow("the day before") << QDate(2026, 1, 1) << false;
        QTest::newRow("the last day") << QDate(2026, 2, 28) << true;
        QTest::newRow("the day after") << QDate(2026, 3, 1) << false;
    }
    void aCalibrationHoldsToItsLastDay()
    {
        QFETCH(QDate, day);
        QFETCH(bool, holds);
        const core::Register reg = story::register_();
        QCOMPARE(core::calibrationOn(*reg.tool(*core::ToolId::parse(u"TW2")), day) != nullptr, holds);
    }

    void theNewestCalibrationGoverns()
    {
        const core::Tool tool{*core::ToolId::parse(u"T"), u"T"_s, {}, {}, {{QDate(2026, 1, 1), QDate(2026, 12, 31), u"A"_s}, {QDate(2026, 3, 1), QDate(2026, 3, 31), u"B"_s}}, {}};
        QCOMPARE(core::calibrationOn(tool, QDate(2026, 2, 1))->certificate, u"A"_s);
        QCOMPARE(core::calibrationOn(tool, QDate(2026, 3, 15))->certificate, u"B"_s);
        QVERIFY(!core::calibrationOn(tool, QDate(2026, 4, 1)));
    }

    /// Others than the root look after the register while they are granted that, and no longer.
    void whoAdministers_data()
    {
        QTest::addColumn<QString>("from");
        QTest::addColumn<QString>("until");
        QTest::addColumn<bool>("withdrawn");
        QTest::addColumn<QString>("refusedBy");
        QTest::newRow("granted") << u"2026-03-01"_s << QString() << false << QString();
        QTest::newRow("granted from today") << u"2026-03-02"_s << u"2026-03-02"_s << false << QString();
        QTest::newRow("granted from tomorrow") << u"2026-03-03"_s << QString() << false << u"register.administrator"_s;
        QTest::newRow("ran out yesterday") << u"2026-02-01"_s << u"2026-03-01"_s << false << u"register.administrator"_s;
        QTest::newRow("withdrawn") << u"2026-03-01"_s << QString() << true << u"register.administrator"_s;
    }
    void whoAdministers()
    {
        QFETCH(QString, from);
        QFETCH(QString, until);
        QFETCH(bool, withdrawn);
        QFETCH(QString, refusedBy);
        core::Register reg = story::register_();
        Object body{{u"person"_s, u"Ana"_s}, {u"authority"_s, u"administer"_s}, {u"from"_s, from}, {u"reference"_s, u"QM-5"_s}};
        if (!until.isEmpty())
            body.set(u"until"_s, until);
        take(reg, draft(u"Root"_s, u"authorisation.granted"_s, u"G-1"_s, body));
        if (withdrawn)
            take(reg, draft(u"Root"_s, u"authorisation.withdrawn"_s, u"G-1"_s, {{u"reason"_s, u"left"_s}}));
        QCOMPARE(TestRegister::refusedBy(reg, draft(u"Ana"_s, u"person.enrolled"_s, u"Zoe"_s, person(u"zoe"_s))), refusedBy);
    }

    /// Each reason has its own sentence, so that the reader knows whom to see.
    void whyNotAuthorised_data()
    {
        QTest::addColumn<QString>("who");
        QTest::addColumn<core::Authority>("authority");
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("at");
        QTest::addColumn<QString>("sentence");
        const QString today = u"2026-03-02T06:00:00.000Z"_s;
        QTest::newRow("withdrawn") << u"Wes"_s << core::Authority::Inspect << u"duct"_s << today << u"Wes's authorisation to inspect was withdrawn on 2026-03-02."_s;
        QTest::newRow("not yet") << u"Cho"_s << core::Authority::Inspect << u"duct"_s << u"2025-12-31T23:59:59.999Z"_s << u"Cho's authorisation to inspect begins on 2026-01-01."_s;
        QTest::newRow("no longer") << u"Ida"_s << core::Authority::Inspect << u"duct"_s << today << u"Ida's authorisation to inspect ran out on 2026-02-28."_s;
        QTest::newRow("for another kind") << u"Tim"_s << core::Authority::Inspect << u"clamp"_s << today << u"Tim's authorisation to inspect does not cover this kind of interface or this aircraft type."_s;
        QTest::newRow("for another act") << u"Cho"_s << core::Authority::Release << u"duct"_s << today << u"Cho holds no authorisation to release."_s;
        QTest::newRow("nobody's") << u"Zed"_s << core::Authority::Work << u"duct"_s << today << u"Zed holds no authorisation to work."_s;
    }
    void whyNotAuthorised()
    {
        QFETCH(QString, who);
        QFETCH(core::Authority, authority);
        QFETCH(QString, kind);
        QFETCH(QString, at);
        QFETCH(QString, sentence);
        const core::Register reg = story::register_();
        const core::PersonId id = *core::PersonId::parse(who);
        const core::Need need{.authority = authority, .kind = kind, .aircraftType = u"TF-2"_s, .at = *core::Instant::parseLedger(at)};
        QVERIFY(!core::authorisationFor(reg, id, need));
        QCOMPARE(core::whyNotAuthorised(reg, id, need), sentence);
    }

    /// A register from elsewhere may hold anything. What does not fit changes nothing but the place of its head.
    void whatDoesNotFitChangesNothing_data()
    {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("subject");
        QTest::addColumn<Object>("body");
        QTest::addColumn<bool>("fits");
        const auto row = [](const char *name, const char *kind, const QString &subject, const Object &body, bool fits) {
            QTest::newRow(name) << QString::fromLatin1(kind) << subject << body << fits;
        };
        const Object newKey{{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}};
        const Object noKey{{u"name"_s, u"Zoe"_s}, {u"public_key"_s, u"lost"_s}};
        const Object toAna{{u"person"_s, u"Ana"_s}, {u"authority"_s, u"inspect"_s}, {u"from"_s, u"2026-02-01"_s}};
        row("enrolled", "person.enrolled", u"Zoe"_s, person(u"zoe"_s), true);
        row("enrolled under no name", "person.enrolled", {}, person(u"zoe"_s), false);
        row("enrolled without a key", "person.enrolled", u"Zoe"_s, noKey, false);
        row("a new key", "key.replaced", u"Ana"_s, newKey, true);
        row("a new key of nobody", "key.replaced", u"Zed"_s, newKey, false);
        row("a new key under no name", "key.replaced", {}, newKey, false);
        row("a new key that is none", "key.replaced", u"Ana"_s, noKey, false);
        const Object since{{u"since"_s, u"2026-01-02T08:00:00.000Z"_s}, {u"reason"_s, u"seen"_s}};
        row("a key stopped", "key.stopped", u"Ana"_s, since, true);
        row("a key of nobody stopped", "key.stopped", u"Zed"_s, since, false);
        row("a key stopped under no name", "key.stopped", {}, since, false);
        row("granted", "authorisation.granted", u"G-1"_s, toAna, true);
        row("granted without a number", "authorisation.granted", {}, toAna, false);
        row("granted to nobody", "authorisation.granted", u"G-1"_s, {{u"authority"_s, u"inspect"_s}}, false);
        row("granted, but what", "authorisation.granted", u"G-1"_s, {{u"person"_s, u"Ana"_s}, {u"authority"_s, u"fly"_s}}, false);
        row("withdrawn", "authorisation.withdrawn", u"Ana-work"_s, {}, true);
        row("withdrawn, never granted", "authorisation.withdrawn", u"G-9"_s, {}, false);
        row("withdrawn without a number", "authorisation.withdrawn", {}, {}, false);
        row("a tool", "tool.registered", u"TW9"_s, {}, true);
        row("a tool without a number", "tool.registered", {}, {}, false);
        row("calibrated", "tool.calibrated", u"TW1"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), true);
        row("calibrated, not registered", "tool.calibrated", u"TW9"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), false);
        row("calibrated without a number", "tool.calibrated", {}, calibration(u"2026-03-01"_s, u"2027-02-28"_s), false);
        row("a tool withdrawn", "tool.withdrawn", u"TW1"_s, {}, true);
        row("a tool withdrawn, not registered", "tool.withdrawn", u"TW9"_s, {}, false);
        row("a tool withdrawn without a number", "tool.withdrawn", {}, {}, false);
        row("a kind of a later version", "tool.lent", u"TW1"_s, {}, false);
    }
    void whatDoesNotFitChangesNothing()
    {
        QFETCH(QString, kind);
        QFETCH(QString, subject);
        QFETCH(Object, body);
        QFETCH(bool, fits);
        const core::Register before = story::register_();
        core::Register after = before;
        core::Draft entry = draft(u"Root"_s, kind, subject, body);
        if (subject.isEmpty())
            entry.subject.reset();
        take(after, entry);
        QCOMPARE(after.head.seq, before.head.seq + 1);
        after.head = before.head;
        QCOMPARE(after == before, !fits);
    }

    /// The key that Ana had may have fallen into other hands, so nobody takes it again, herself included.
    void aFormerKeyIsNobodysAgain()
    {
        core::Register reg = story::register_();
        const Object newKey{{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}};
        const Object oldKey{{u"public_key"_s, core::Digest::of("Ana").hex()}, {u"reason"_s, u"found again"_s}};
        take(reg, draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, newKey));
        QCOMPARE(refusedBy(reg, draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, oldKey)), u"key.new"_s);
        QCOMPARE(refusedBy(reg, draft(u"Root"_s, u"person.enrolled"_s, u"Zoe"_s, person(u"Ana"_s))), u"key.new"_s);
        QCOMPARE(refusedBy(reg, draft(u"Root"_s, u"person.enrolled"_s, u"Zoe"_s, person(u"zoe"_s))), QString());
    }

    void everyAuthorityHasItsText()
    {
        for (const core::Authority authority : core::allAuthorities())
            QCOMPARE(core::parseAuthority(core::authorityText(authority)), std::optional(authority));
        QVERIFY(!core::parseAuthority(u"fly"));
    }

    /// A stopped key signs nothing, on the register and on a job; with its successor its owner signs again. What was signed between the
    /// suspicion and the stop is in doubt, to the millisecond, and nothing else.
    void aStoppedKey()
    {
        core::Register reg = story::register_();
        const auto ana = *core::PersonId::parse(u"Ana");
        const auto at = [](const char *text) { return *core::Instant::parseLedger(QString::fromLatin1(text)); };
        core::Draft stop = draft(u"Root"_s, u"key.stopped"_s, u"Ana"_s, {{u"since"_s, u"2026-03-01T10:00:00.000Z"_s}, {u"reason"_s, u"seen"_s}});
        stop.at = at("2026-03-02T10:00:00.000Z");
        take(reg, stop);
        QCOMPARE(refusedBy(reg, stop), u"key.stopped-once"_s);
        QCOMPARE(reg.person(ana)->keyStopped, std::optional(stop.at));
        const auto isInDoubt = [&](const char *text) { return core::keyDoubtAt(*reg.person(ana), at(text)) != nullptr; };
        QVERIFY(!isInDoubt("2026-03-01T09:59:59.999Z"));
        QVERIFY(isInDoubt("2026-03-01T10:00:00.000Z"));
        QVERIFY(isInDoubt("2026-03-02T10:00:00.000Z"));
        QVERIFY(!isInDoubt("2026-03-02T10:00:00.001Z"));

        core::Draft replace = draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"seen"_s}});
        replace.at = stop.at;
        QCOMPARE(refusedBy(reg, replace), QString());
        take(reg, replace);
        QVERIFY(!reg.person(ana)->keyStopped);
        QCOMPARE(reg.person(ana)->keyDoubts.size(), 1u);
        QVERIFY(isInDoubt("2026-03-01T10:00:00.000Z"));
    }

    void aStoppedAdministratorSignsNothing()
    {
        core::Register reg = story::register_();
        core::Draft enrol = draft(u"Root"_s, u"person.enrolled"_s, u"Zoe"_s, person(u"zoe"_s));
        QCOMPARE(refusedBy(reg, enrol), QString());
        reg.people.at(*core::PersonId::parse(u"Root")).keyStopped = enrol.at;
        QCOMPARE(refusedBy(reg, enrol), u"key.stands"_s);
    }

    void anOldKeyStaysKnown()
    {
        core::Register reg = story::register_();
        const core::PublicKey before = reg.person(*core::PersonId::parse(u"Ana"))->key;
        take(reg, draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}}));
        const core::Person &ana = *reg.person(*core::PersonId::parse(u"Ana"));
        QCOMPARE(ana.formerKeys, std::vector{before});
        QVERIFY(ana.key != before);
    }

    void whatAnEntryRefersTo()
    {
        story::Story story(u"Ana disconnects D1 helpers=Dee; Ben reconnects D1 seal_batch=B-77"_s);
        const auto references = core::referencesOf(story.fold().said().back());
        QCOMPARE(references, (std::vector<core::Reference>{{u"person"_s, u"Ben"_s}, {u"part"_s, u"S-100"_s}, {u"batch"_s, u"B-77"_s}}));
        story.tell(u"Ben torques D1"_s);
        QVERIFY(core::referencesOf(story.fold().said().back()).back() == (core::Reference{u"tool"_s, u"TW1"_s}));
        const core::Draft replaced = draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, {{u"reason"_s, u"lost"_s}});
        QCOMPARE(core::referencesOf(story::statementOf(replaced, 1)), (std::vector<core::Reference>{{u"person"_s, u"Root"_s}, {u"person"_s, u"Ana"_s}}));
        const core::Draft founded = draft(u"Root"_s, u"register.founded"_s, u"Root"_s, {});
        QCOMPARE(core::referencesOf(story::statementOf(founded, 1)), (std::vector<core::Reference>{{u"person"_s, u"Root"_s}}));
    }
};

QTEST_GUILESS_MAIN(TestRegister)
#include "tst_register.moc"
