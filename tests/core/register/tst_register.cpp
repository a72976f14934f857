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
    static Object person(const QString &key) { return {{u"name"_s, u"Zoe"_s}, {u"public_key"_s, core::Digest::of(key.toUtf8()).hex()}, {u"identity"_s, u"pass"_s}}; }
    static Object grant(const QString &who, const QString &until)
    {
        return {{u"person"_s, who}, {u"authority"_s, u"inspect"_s}, {u"from"_s, u"2026-02-01"_s}, {u"until"_s, until}, {u"reference"_s, u"QM-5"_s}};
    }
    static Object range(const QString &min, const QString &max, const QString &unit)
    {
        return {{u"name"_s, u"Wrench"_s}, {u"range_min"_s, min}, {u"range_max"_s, max}, {u"unit"_s, unit}};
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
        row("a tool", u"Root"_s, "tool.registered", u"TW9"_s, range(u"1"_s, u"5"_s, u"N·m"_s), "");
        row("a tool that measures nothing", u"Root"_s, "tool.registered", u"HOIST"_s, {{u"name"_s, u"Hoist"_s}}, "");
        row("a tool's number twice", u"Root"_s, "tool.registered", u"TW1"_s, range(u"1"_s, u"5"_s, u"N·m"_s), "tool.new");
        row("a range upside down", u"Root"_s, "tool.registered", u"TW9"_s, range(u"5"_s, u"1"_s, u"N·m"_s), "tool.range-sound");
        row("half a range", u"Root"_s, "tool.registered", u"TW9"_s, {{u"name"_s, u"W"_s}, {u"range_min"_s, u"1"_s}}, "tool.range-sound");
        row("calibrated", u"Root"_s, "tool.calibrated", u"TW2"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), "");
        row("due before it was made", u"Root"_s, "tool.calibrated", u"TW2"_s, calibration(u"2026-03-01"_s, u"2026-02-28"_s), "register.dates");
        row("a withdrawn tool calibrated", u"Root"_s, "tool.calibrated", u"TW3"_s, calibration(u"2026-03-01"_s, u"2027-02-28"_s), "tool.in-use");
        row("a tool withdrawn", u"Root"_s, "tool.withdrawn", u"TW1"_s, reason, "");
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

    void anOldKeyStaysKnown()
    {
        core::Register reg = story::register_();
        const core::PublicKey before = reg.person(*core::PersonId::parse(u"Ana"))->key;
        core::fold(reg, story::statementOf(draft(u"Root"_s, u"key.replaced"_s, u"Ana"_s, {{u"public_key"_s, core::Digest::of("new").hex()}, {u"reason"_s, u"lost"_s}}), reg.head.seq + 1), {});
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
    }
};

QTEST_GUILESS_MAIN(TestRegister)
#include "tst_register.moc"
