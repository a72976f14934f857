// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QSet>
#include <QTest>

#include "core/acts/act.hpp"
#include "core/rules/form.hpp"
#include "core/value/digest.hpp"

using namespace Qt::StringLiterals;
using core::FieldType;
using core::json::Array;
using core::json::Object;
using core::json::Value;

namespace {

/// Every type that a field can have, from the first to the last.
const std::vector<FieldType> &allTypes()
{
    static const std::vector<FieldType> all = [] {
        std::vector<FieldType> types;
        for (FieldType type = FieldType::Text;; type = static_cast<FieldType>(static_cast<int>(type) + 1)) {
            types.push_back(type);
            if (type == FieldType::Records)
                return types;
        }
    }();
    return all;
}

core::Field fieldOf(FieldType type)
{
    core::Field field = core::field("of"_L1, type, core::Needed::Always, "Of");
    if (type == FieldType::Choice)
        field.choices = {"sound"_L1, "worn"_L1};
    return field;
}

} // namespace

/// What may stand in a field, by its type: the nearest value that may not stands beside each that may.
class TestForm : public QObject {
    Q_OBJECT

private slots:
    void values_data()
    {
        QTest::addColumn<FieldType>("type");
        QTest::addColumn<Value>("value");
        QTest::addColumn<bool>("fits");
        const auto row = [](const char *name, FieldType type, const Value &value, bool fits) { QTest::newRow(name) << type << value << fits; };
        const QString digest = core::Digest::of("abc").hex();
        row("text", FieldType::Text, u"as found"_s, true);
        row("text: blanks", FieldType::Text, u" \t"_s, false);
        row("text: of characters that nobody sees", FieldType::Text, u"\u200b"_s, false);
        row("text: a word joiner and a soft hyphen", FieldType::Text, u"\u2060\u00ad"_s, false);
        row("text: a filler", FieldType::Text, u"\u00a0\u3164"_s, false);
        row("text: an accent alone", FieldType::Text, u"\u0301"_s, false);
        row("text: a full stop", FieldType::Text, u"."_s, true);
        row("text: another script", FieldType::Text, u"проверено"_s, true);
        row("text: a joiner of a script that has it", FieldType::Text, u"می\u200cشود"_s, true);
        row("text: the same joiner in Latin letters", FieldType::Text, u"dis\u200cconnected"_s, false);
        row("text: a joiner alone", FieldType::Text, u"\u200d"_s, false);
        row("text: a grapheme joiner", FieldType::Text, u"K\u034f1"_s, false);
        row("text: the selector of a letter's variant", FieldType::Text, u"K\ufe0f1"_s, false);
        row("text: a warning sign with the selector of its drawing", FieldType::Text, u"\u26a0\ufe0f hot"_s, true);
        row("text: a selector beyond the first plane", FieldType::Text, u"K\U000e0100"_s, false);
        row("text: two lines", FieldType::Text, u"one\ntwo"_s, true);
        row("text: turned round", FieldType::Text, u"left\u202etfel"_s, false);
        row("text: a soft hyphen inside", FieldType::Text, u"dis\u00adconnected"_s, false);
        row("text: a bell", FieldType::Text, u"a\u0007"_s, false);
        row("text: as long as may be", FieldType::Text, QString(10000, u'x'), true);
        row("text: one longer", FieldType::Text, QString(10001, u'x'), false);
        row("person: full width", FieldType::Person, u"Ａna"_s, false);
        row("person: composed", FieldType::Person, u"Ren\u00e9"_s, true);
        row("person: the same decomposed", FieldType::Person, u"Rene\u0301"_s, false);
        row("person: a filler alone", FieldType::Person, u"\u3164"_s, false);
        row("person: a joiner that nobody sees", FieldType::Person, u"A\u200dna"_s, false);
        row("person: a joiner of a script that has it", FieldType::Person, u"می\u200cشود"_s, false);
        row("person: without it", FieldType::Person, u"میشود"_s, true);
        row("interface: a grapheme joiner", FieldType::Interface, u"K1\u034f"_s, false);
        row("interface: a selector of a variant", FieldType::Interface, u"\u26a0\ufe0f"_s, false);
        row("text: a number", FieldType::Text, 7, false);
        row("integer: nought", FieldType::Integer, 0, true);
        row("integer: below nought", FieldType::Integer, -1, false);
        row("integer: typed as a text", FieldType::Integer, u"7"_s, false);
        row("flag", FieldType::Flag, false, true);
        row("flag: yes", FieldType::Flag, u"yes"_s, false);
        row("date", FieldType::Date, u"2024-02-29"_s, true);
        row("date: 29 February of no leap year", FieldType::Date, u"2026-02-29"_s, false);
        row("date: with a time", FieldType::Date, u"2026-03-02T06:00"_s, false);
        row("date: a number", FieldType::Date, 20260302, false);
        row("moment", FieldType::Moment, u"2026-03-02T08:14:31.120Z"_s, true);
        row("moment: in local time", FieldType::Moment, u"2026-03-02T08:14:31.120+01:00"_s, false);
        row("moment: a number", FieldType::Moment, 1772439271, false);
        row("decimal", FieldType::Decimal, u"12.50"_s, true);
        row("decimal: comma", FieldType::Decimal, u"12,50"_s, false);
        row("decimal: a number", FieldType::Decimal, 12, false);
        row("unit", FieldType::Unit, u"N·m"_s, true);
        row("unit: another spelling", FieldType::Unit, u"Nm"_s, false); // read in lists; in a record each unit has one spelling
        row("unit: ambiguous", FieldType::Unit, u"in-lb"_s, false);
        row("unit: a number", FieldType::Unit, 1, false);
        row("choice", FieldType::Choice, u"worn"_s, true);
        row("choice: none of them", FieldType::Choice, u"Worn"_s, false);
        row("choice: its number", FieldType::Choice, 1, false);
        row("person", FieldType::Person, u"Ana"_s, true);
        row("person: a blank before", FieldType::Person, u" Ana"_s, false);
        row("person: a number", FieldType::Person, 7, false);
        row("interface", FieldType::Interface, u"E12"_s, true);
        row("interface: nothing", FieldType::Interface, QString(), false);
        row("tool", FieldType::Tool, u"TW1"_s, true);
        row("tool: a line break in it", FieldType::Tool, u"T\nW1"_s, false);
        row("digest", FieldType::Digest, digest, true);
        row("digest: capitals", FieldType::Digest, digest.toUpper(), false);
        row("digest: a number", FieldType::Digest, 7, false);
        row("public key", FieldType::PublicKey, digest, true);
        row("public key: too short", FieldType::PublicKey, digest.chopped(1), false);
        row("public key: a number", FieldType::PublicKey, 7, false);
        row("texts", FieldType::Texts, Array{u"torque"_s, u"seal"_s}, true);
        row("texts: none", FieldType::Texts, Array{}, true);
        row("texts: one of them blank", FieldType::Texts, Array{u"torque"_s, u" "_s}, false);
        row("texts: no list", FieldType::Texts, u"torque"_s, false);
        row("texts: as many as may be", FieldType::Texts, Array(20000, u"torque"_s), true);
        row("texts: one more", FieldType::Texts, Array(20001, u"torque"_s), false);
        row("people", FieldType::People, Array{u"Ana"_s, u"Ben"_s}, true);
        row("people: one of them nobody", FieldType::People, Array{u"Ana"_s, QString()}, false);
        row("interfaces", FieldType::Interfaces, Array{u"E12"_s}, true);
        row("interfaces: a number", FieldType::Interfaces, Array{12}, false);
        row("records", FieldType::Records, Array{Object{{u"name"_s, u"left"_s}}}, true);
        row("interfaces: as many as may be", FieldType::Interfaces, Array(20000, u"E12"_s), true);
        row("interfaces: one more", FieldType::Interfaces, Array(20001, u"E12"_s), false);
        row("records: one more than may be", FieldType::Records, Array(20001, Object{{u"name"_s, u"left"_s}}), false);
        row("records: a text among them", FieldType::Records, Array{Object{{u"name"_s, u"left"_s}}, u"right"_s}, false);
    }
    void values()
    {
        QFETCH(FieldType, type);
        QFETCH(Value, value);
        QFETCH(bool, fits);
        const auto why = core::whyNotOfType(fieldOf(type), value);
        QCOMPARE(!why, fits);
        if (why)
            QVERIFY2(why->startsWith(u"\"Of\" (of) "_s) && !why->contains(u"%1"_s), qPrintable(*why));
    }

    /// Lines of named columns: what is needed is there, in its type, and nothing else is.
    void columns_data()
    {
        QTest::addColumn<Value>("value");
        QTest::addColumn<bool>("fits");
        const auto row = [](const char *name, const Value &value, bool fits) { QTest::newRow(name) << value << fits; };
        row("no line", Array{}, true);
        row("what is needed", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}}}, true);
        row("all there is", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}, {u"new"_s, true}}}, true);
        row("a needed one left out", Array{Object{{u"part"_s, u"BOLT-6"_s}}}, false);
        row("the second line lacks it", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}}, Object{{u"part"_s, u"BOLT-7"_s}}}, false);
        row("a needed one blank", Array{Object{{u"part"_s, u" "_s}, {u"quantity"_s, 4}}}, false);
        row("a number as a text", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, u"4"_s}}}, false);
        row("a flag as a text", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}, {u"new"_s, u"yes"_s}}}, false);
        row("what no column is", Array{Object{{u"part"_s, u"BOLT-6"_s}, {u"quantity"_s, 4}, {u"colour"_s, u"red"_s}}}, false);
        row("a text for a line", Array{u"BOLT-6"_s}, false);
    }
    void columns()
    {
        QFETCH(Value, value);
        QFETCH(bool, fits);
        using core::Needed;
        const core::Field hardware = core::records("hardware"_L1, Needed::Always, "Hardware",
                                                   {core::field("part"_L1, FieldType::Text, Needed::Always, "Part"), core::field("quantity"_L1, FieldType::Integer, Needed::Always, "Number"),
                                                    core::field("new"_L1, FieldType::Flag, Needed::IfKnown, "Must be new")});
        const auto why = core::whyNotOfType(hardware, value);
        QCOMPARE(!why, fits);
        if (why)
            QCOMPARE(*why, u"\"Hardware\" (hardware) must be lines of Part (part), Number (quantity), if known Must be new (new)."_s);
    }

    /// null fits no type, and each type says in words of its own what it takes.
    void everyTypeSaysWhatItTakes()
    {
        QSet<QString> sentences;
        for (const FieldType type : allTypes()) {
            const auto why = core::whyNotOfType(fieldOf(type), Value());
            QVERIFY(why);
            sentences.insert(*why);
        }
        QCOMPARE(sentences.size(), static_cast<qsizetype>(allTypes().size()));
        QVERIFY(core::whyNotOfType(fieldOf(FieldType::Choice), Value())->endsWith(u"one of: sound, worn."));
    }

    /// Half a surrogate pair has no UTF-8, so what is signed would not be what was typed.
    void wholeCharacters_data()
    {
        QTest::addColumn<QString>("reason");
        QTest::addColumn<bool>("fits");
        QTest::newRow("beyond the basic plane") << u"clamp \U0001F529 worn"_s << true;
        QTest::newRow("its first half") << QString(u"clamp "_s + QChar(0xd83d)) << false;
        QTest::newRow("its second half first") << QString(QString(QChar(0xdd29)) + QChar(0xd83d)) << false;
    }
    void wholeCharacters()
    {
        QFETCH(QString, reason);
        QFETCH(bool, fits);
        core::Draft draft{*core::PersonId::parse(u"Ana"), core::Instant::fromMilliseconds(0), u"entry.struck"_s, std::nullopt, Object{{u"entry"_s, 3}, {u"reason"_s, reason}}};
        QCOMPARE(core::refusalsOfForm(draft).empty(), fits);
        QCOMPARE(core::PersonId::parse(reason).has_value(), fits);
    }

    void subjects_data()
    {
        QTest::addColumn<QString>("kind");
        QTest::addColumn<QString>("subject"); // null: none
        QTest::addColumn<bool>("fits");
        QTest::newRow("of an interface") << u"interface.disturbed"_s << u"E12"_s << true;
        QTest::newRow("of an interface, left out") << u"interface.disturbed"_s << QString() << false;
        QTest::newRow("of an interface, blank") << u"interface.disturbed"_s << u" "_s << false;
        QTest::newRow("of an interface, 129 characters") << u"interface.disturbed"_s << QString(129, u'E') << false;
        QTest::newRow("of the whole job") << u"entry.struck"_s << QString() << true;
        QTest::newRow("of the whole job, named") << u"entry.struck"_s << u"E12"_s << false;
    }
    void subjects()
    {
        QFETCH(QString, kind);
        QFETCH(QString, subject);
        QFETCH(bool, fits);
        const Object body = kind == u"entry.struck" ? Object{{u"entry"_s, 7}, {u"reason"_s, u"wrong item"_s}} : Object{{u"reason"_s, u"loosened"_s}};
        const core::Draft draft{*core::PersonId::parse(u"Ana"), core::Instant::fromMilliseconds(0), kind, subject.isNull() ? std::nullopt : std::optional(subject), body};
        const core::Refusals refusals = core::refusalsOfForm(draft);
        QCOMPARE(refusals.empty(), fits);
        if (!fits) {
            QCOMPARE(refusals.size(), 1U);
            QCOMPARE(refusals.front().rule, u"form.subject"_s);
            QVERIFY(!refusals.front().sentence.isEmpty() && !refusals.front().clearedBy.isEmpty());
        }
    }

    void everyMeaningIsSaidInWords()
    {
        QSet<QString> sentences;
        for (const QString &meaning : {u"performed"_s, u"inspected"_s, u"recorded"_s, u"released"_s, u"confirmed"_s, u"passed"_s, u"seen"_s, u"reinspected"_s})
            sentences.insert(core::meaningInWords(meaning));
        QCOMPARE(sentences.size(), 8);
        for (const core::Act &act : core::acts())
            QVERIFY2(sentences.contains(core::meaningInWords(QString(act.meaning))), act.kind.data());
    }
};

QTEST_GUILESS_MAIN(TestForm)
#include "tst_form.moc"
