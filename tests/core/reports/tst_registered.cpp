// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QSet>
#include <QtTest>

#include "core/acts/act.hpp"
#include "core/reports/report_rows.hpp"
#include "core/reports/signatures.hpp"
#include "tests/core/reports/column.hpp"
#include "tests/core/reports/scene.hpp"
#include "tests/core/reports/unasked.hpp"

using namespace core;
using namespace Qt::StringLiterals;

/// People, tools and signatures as the register knew them when each entry was signed.
class RegisteredTest : public QObject {
    Q_OBJECT

private slots:
    void registerIsReadAsPinned();
    void peopleAsTheRegisterKnowsThem();
    void toolsAsTheRegisterKnowsThem();
    void signaturesAsAuthorisationsStood();
    void signaturesAskTheRegisterOfTheirEntry();
    void signaturesSayWhatTheyMean();
};

void RegisteredTest::registerIsReadAsPinned()
{
    // The scene calibrates TW1 anew before its first reading, so every reading stands under the new certificate; the register as
    // the first entry pinned it knows the old one alone.
    const JobRecord record = scene::closedRecord(5);
    const ToolId wrench = *ToolId::parse(u"TW1");
    QCOMPARE(record.registerAt(1).tool(wrench)->calibrations.size(), 1U);
    QCOMPARE(record.reg().tool(wrench)->calibrations.size(), 2U);
    QCOMPARE(column(record, u"tools", "certificate"_L1), (QStringList{u"CC-1002"_s, u"CC-1188"_s}));
    QVERIFY(column(record, u"torque", "calibration_due"_L1).contains(u"2027-02-28"_s));
    QVERIFY(column(record, u"inspections", "authorisation"_L1).contains(u"cho-inspect (QM-4/cho)"_s));
}

void RegisteredTest::peopleAsTheRegisterKnowsThem()
{
    Unasked ledgers;
    const auto person = [](const QString &name) { return json::Object{{u"name"_s, name}, {u"public_key"_s, Digest::of(name.toUtf8()).hex()}}; };
    ledgers.onRegister(u"register.founded"_s, u"olga"_s, person(u"Olga"_s));
    for (const QString &name : {u"Ana"_s, u"Ben"_s, u"Cho"_s, u"Eva"_s})
        ledgers.onRegister(u"person.enrolled"_s, name.toLower(), person(name));
    const auto grant = [&](const QString &who, json::Object body) {
        body.set(u"person"_s, who);
        body.set(u"authority"_s, u"inspect"_s);
        body.set(u"from"_s, u"2026-01-01"_s);
        ledgers.onRegister(u"authorisation.granted"_s, who + u"-1"_s, body);
    };
    grant(u"ana"_s, {});
    grant(u"ben"_s, {{u"kinds"_s, json::arrayOf({u"duct"_s, u"clamp"_s})}, {u"until"_s, u"2026-12-31"_s}});
    grant(u"cho"_s, {{u"aircraft_types"_s, json::arrayOf({u"TF-2"_s})}});
    ledgers.onRegister(u"authorisation.withdrawn"_s, u"cho-1"_s, {});
    for (const QString &who : {u"ana"_s, u"ben"_s, u"cho"_s, u"eva"_s, u"olga"_s, u"zed"_s})
        ledgers.say(who, u"photo.attached"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"handover.given"_s, {}, {{u"to"_s, u" ben"_s}}); // names nobody
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"people", "id"_L1), (QStringList{u"ana"_s, u"ben"_s, u"cho"_s, u"eva"_s, u"olga"_s})); // zed is not enrolled
    QCOMPARE(column(record, u"people", "authority"_L1), (QStringList{u"inspect"_s, u"inspect"_s, u"inspect"_s, u"none"_s, u"root"_s}));
    QCOMPARE(column(record, u"people", "scope"_L1), (QStringList{u"all kinds; all aircraft types"_s, u"duct, clamp; all aircraft types"_s, u"all kinds; TF-2"_s, QString(), u"looks after the register"_s}));
    QCOMPARE(column(record, u"people", "until"_L1), (QStringList{u"no end"_s, u"2026-12-31"_s, u"withdrawn 2026-03-02 06:00:00 UTC"_s, QString(), QString()}));
    QCOMPARE(column(record, u"entries", "signed_by"_L1).at(5), u"zed"_s);
}

void RegisteredTest::toolsAsTheRegisterKnowsThem()
{
    Unasked ledgers;
    ledgers.onRegister(u"tool.registered"_s, u"TW1"_s, {{u"name"_s, u"Wrench"_s}, {u"range_min"_s, u"5"_s}, {u"range_max"_s, u"50"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"indicating"_s}});
    ledgers.onRegister(u"tool.registered"_s, u"JK1"_s, {{u"name"_s, u"Jack"_s}});
    ledgers.onRegister(u"tool.registered"_s, u"HF1"_s, {{u"name"_s, u"Half a range"_s}, {u"range_min"_s, u"5"_s}, {u"unit"_s, u"N·m"_s}});
    for (const QString &tool : {u"TW1"_s, u"JK1"_s, u"HF1"_s, u"TW9"_s, u" "_s, u"TW1"_s})
        ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, {{u"tool"_s, tool}});
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, {{u"tool"_s, u"TW1"_s}}, 0); // pinned before any tool was known
    ledgers.sayWithoutPin(u"ana"_s, u"torque.applied"_s, u"E1"_s, {{u"tool"_s, u"TW1"_s}});
    ledgers.say(u"ana"_s, u"torque.applied"_s, u"E1"_s, {{u"tool"_s, u"TW1"_s}}, 99); // pinned beyond the register's end
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"tools", "tool"_L1), (QStringList{u"HF1"_s, u"JK1"_s, u"TW1"_s}));
    QCOMPARE(column(record, u"tools", "range"_L1), (QStringList{QString(), QString(), u"5 to 50 N·m"_s}));
    QCOMPARE(column(record, u"tools", "calibrated"_L1), (QStringList{u"none that covers 2026-03-02"_s, u"none that covers 2026-03-02"_s, u"none that covers 2026-03-02"_s}));
    QCOMPARE(column(record, u"torque", "calibration_due"_L1).count(u"not in calibration"_s), 9);
}

/// Who signed, and what they held in force on that day, as the entries pinned it.
void RegisteredTest::signaturesAsAuthorisationsStood()
{
    Unasked ledgers; // every entry is of 2026-03-02, 06:00 UTC
    const auto person = [](const QString &name) { return json::Object{{u"name"_s, name}, {u"public_key"_s, Digest::of(name.toUtf8()).hex()}}; };
    ledgers.onRegister(u"register.founded"_s, u"olga"_s, person(u"Olga"_s));
    for (const QString &name : {u"Ana"_s, u"Ben"_s, u"Cho"_s})
        ledgers.onRegister(u"person.enrolled"_s, name.toLower(), person(name));
    const auto grant = [&](const QString &id, const QString &who, const QString &first, const QString &last) {
        ledgers.onRegister(u"authorisation.granted"_s, id, {{u"person"_s, who}, {u"authority"_s, u"work"_s}, {u"from"_s, first}, {u"until"_s, last}, {u"reference"_s, u"QM "_s + id}});
    };
    grant(u"A1"_s, u"ana"_s, u"2026-01-01"_s, u"2026-03-02"_s); // its last day
    grant(u"A2"_s, u"ana"_s, u"2026-01-01"_s, u"2026-03-01"_s); // over the day before
    grant(u"A3"_s, u"ana"_s, u"2026-03-02"_s, u"2026-12-31"_s); // its first day
    grant(u"A4"_s, u"ana"_s, u"2026-03-03"_s, u"2026-12-31"_s); // begins the day after
    grant(u"B1"_s, u"ben"_s, u"2026-01-01"_s, u"2026-12-31"_s);
    ledgers.onRegister(u"authorisation.withdrawn"_s, u"B1"_s, {});
    ledgers.say(u"ben"_s, u"interface.polished"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.polished"_s, u"E1"_s, {});
    ledgers.say(u"ana"_s, u"interface.polished"_s, u"E2"_s, {});
    ledgers.say(u"cho"_s, u"interface.polished"_s, u"E2"_s, {});
    ledgers.say(u"olga"_s, u"interface.polished"_s, u"E2"_s, {});
    const JobRecord record = ledgers.record();
    QCOMPARE(column(record, u"signatures", "person"_L1), (QStringList{u"Ben (ben)"_s, u"Ana (ana)"_s, u"Cho (cho)"_s, u"Olga (olga)"_s}));
    QCOMPARE(column(record, u"signatures", "authorisations"_L1),
             (QStringList{u"NONE IN FORCE"_s, u"work: A1 (QM A1)\nwork: A3 (QM A3)"_s, u"NONE IN FORCE"_s, u"root of the register"_s}));
    QCOMPARE(column(record, u"signatures", "signatures"_L1), (QStringList{u"1"_s, u"2"_s, u"1"_s, u"1"_s}));
    QStringList names;
    for (const PersonSigned &one : byName(signatures(record)))
        names << one.name;
    QCOMPARE(names, (QStringList{u"Ana"_s, u"Ben"_s, u"Cho"_s, u"Olga"_s}));
}

/// Before B1 was granted, and after: the entry's own register counts, not that of today.
void RegisteredTest::signaturesAskTheRegisterOfTheirEntry()
{
    Unasked ledgers;
    const json::Object olga{{u"name"_s, u"Olga"_s}, {u"public_key"_s, Digest::of("olga").hex()}};
    ledgers.onRegister(u"register.founded"_s, u"olga"_s, olga);
    ledgers.onRegister(u"person.enrolled"_s, u"ben"_s, {{u"name"_s, u"Ben"_s}, {u"public_key"_s, Digest::of("ben").hex()}});
    ledgers.onRegister(u"authorisation.granted"_s, u"B1"_s, {{u"person"_s, u"ben"_s}, {u"authority"_s, u"work"_s}, {u"from"_s, u"2026-01-01"_s}, {u"reference"_s, u"QM B1"_s}});
    ledgers.say(u"ben"_s, u"interface.polished"_s, u"E1"_s, {}, 2);
    QCOMPARE(column(ledgers.record(), u"signatures", "authorisations"_L1), QStringList{u"NONE IN FORCE"_s});
    ledgers.say(u"ben"_s, u"interface.polished"_s, u"E1"_s, {}, 3);
    QCOMPARE(column(ledgers.record(), u"signatures", "authorisations"_L1), QStringList{u"work: B1 (QM B1)"_s});
}

/// Beside every signature stands what it means, in words.
void RegisteredTest::signaturesSayWhatTheyMean()
{
    const JobRecord record = scene::closedRecord(5);
    QVERIFY(column(record, u"interfaces", "undone"_L1).front().startsWith(u"Ana Ruiz, performed 2026-03-02 "));
    QVERIFY(column(record, u"interfaces", "inspected"_L1).front().startsWith(u"Cho Min, inspected 2026-03-02 "));
    QCOMPARE(column(record, u"interfaces", "inspected"_L1).at(3).count(u"inspected 2026"_s), 2); // a mount, by two
    for (const QStringView report : {QStringView(u"torque"), QStringView(u"bonding"), QStringView(u"leaks"), QStringView(u"seals")}) {
        QVERIFY(!column(record, report, "meaning"_L1).isEmpty());
        for (const QString &meaning : column(record, report, "meaning"_L1))
            QCOMPARE(meaning, u"performed"_s);
    }
    // Every meaning that an act has, has a word of its own here.
    QSet<QString> words;
    QSet<QString> meanings;
    for (const Act &act : acts()) {
        meanings.insert(act.meaning);
        words.insert(reporting::meaningWord(QString(act.meaning)));
        QVERIFY(!reporting::meaningWord(QString(act.meaning)).isEmpty());
    }
    QCOMPARE(words.size(), meanings.size());
    QCOMPARE(reporting::meaningWord(u"blessed"), u"blessed"_s);
}

QTEST_GUILESS_MAIN(RegisteredTest)
#include "tst_registered.moc"
