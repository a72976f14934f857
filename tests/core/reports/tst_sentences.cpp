// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QtTest>

#include "core/acts/act.hpp"
#include "core/reports/timeline.hpp"
#include "tests/core/reports/column.hpp"
#include "tests/core/reports/scene.hpp"

using namespace core;
using namespace Qt::StringLiterals;

namespace {

Statement statement(const QString &kind, const QString &subject, const json::Object &body)
{
    return {*LedgerId::parse(u"job"), 1, Instant::fromMilliseconds(0), *PersonId::parse(u"ana"), {}, u"performed"_s, kind,
            subject.isEmpty() ? std::nullopt : std::optional(subject), body, std::nullopt, {}};
}

Register twoPeople()
{
    scene::Scene scene;
    return scene.reg();
}

} // namespace

/// What was said, in one sentence and at one moment, for people to read.
class SentencesTest : public QObject {
    Q_OBJECT

private slots:
    void sentences_data();
    void sentences();
    void everyActHasASentence();
    void kindsHaveTheirOwnWords();
    void momentsNameTheirZone();
    void timesInDoubtEverywhere();
};

void SentencesTest::sentences_data()
{
    QTest::addColumn<QString>("kind");
    QTest::addColumn<QString>("subject");
    QTest::addColumn<json::Object>("body");
    QTest::addColumn<QString>("sentence");
    QTest::addRow("texts and numbers") << u"interface.disconnected"_s << u"E12"_s
                                       << json::Object{{u"tag"_s, u"17"_s}, {u"blanks_fitted"_s, 2}, {u"as_found"_s, u"sound"_s}}
                                       << u"Disconnected E12. Tag: 17; Blanks fitted to the aircraft's end: 2; As found: sound."_s;
    QTest::addRow("unit and tool") << u"torque.applied"_s << u"E12"_s
                                   << json::Object{{u"fastener"_s, 3}, {u"value"_s, u"23.50"_s}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW1"_s}}
                                   << u"Torqued E12. Fastener: 3; Reading: 23.50 N·m; Tool: TW1 (Torque wrench)."_s;
    QTest::addRow("people by name") << u"safetying.applied"_s << u"E12"_s
                                    << json::Object{{u"method"_s, u"lockwire"_s}, {u"helpers"_s, json::arrayOf({u"ben"_s, u"zoe"_s})}}
                                    << u"Safetied E12. Method: lockwire; Helped, supervised or taught by: Ben Ortiz, zoe."_s;
    QTest::addRow("one unit for two") << u"interface.listed"_s << u"E1"_s
                                      << json::Object{{u"name"_s, u"Clamp"_s}, {u"torque_min"_s, u"3"_s}, {u"torque_max"_s, u"4"_s}, {u"torque_unit"_s, u"N·m"_s}, {u"critical"_s, true}}
                                      << u"Listed E1. Name: Clamp; Torque, least: 3 N·m; Torque, most: 4 N·m; Critical: yes."_s;
    QTest::addRow("no body") << u"inspection.accepted"_s << u"E12"_s << json::Object() << u"Inspected and accepted E12."_s;
    QTest::addRow("records") << u"handover.given"_s << QString()
                             << json::Object{{u"to"_s, u"mia"_s}, {u"open"_s, json::Array{json::Value(json::Object{{u"interface"_s, u"E1"_s}, {u"stage"_s, u"disconnected"_s}})}}}
                             << u"Handed over. To the incoming lead: Mia Sand; Open and half done: E1 (disconnected)."_s;
    QTest::addRow("nothing open") << u"handover.given"_s << QString() << json::Object{{u"to"_s, u"mia"_s}, {u"open"_s, json::Array()}}
                                  << u"Handed over. To the incoming lead: Mia Sand; Open and half done: none."_s;
    QTest::addRow("half done at a handover") << u"handover.given"_s << QString()
                                             << json::Object{{u"open"_s, json::Array{json::Object{{u"interface"_s, u"E1"_s}, {u"stage"_s, u"reconnected"_s}, {u"missing"_s, json::arrayOf({u"torque"_s, u"safetying"_s})}},
                                                                                     json::Object{{u"interface"_s, u"E2"_s}, {u"stage"_s, u"reconnected"_s}, {u"missing"_s, json::Array()}}, json::Object()}}}
                                             << u"Handed over. Open and half done: E1 (reconnected; missing: torque, safetying), E2 (reconnected), ."_s;
    QTest::addRow("not critical") << u"interface.listed"_s << u"E1"_s << json::Object{{u"kind"_s, u"duct"_s}, {u"critical"_s, false}, {u"access"_s, json::arrayOf({u"P1"_s, u"P2"_s})}}
                                  << u"Listed E1. Kind: duct; Critical: no; Off before this one: P1, P2."_s;
    QTest::addRow("a reading without its unit") << u"torque.applied"_s << u"E12"_s << json::Object{{u"value"_s, u"23.5"_s}} << u"Torqued E12. Reading: 23.5 ."_s;
    QTest::addRow("tool of nobody") << u"bonding.measured"_s << u"E12"_s << json::Object{{u"tool"_s, u"TW9"_s}} << u"Bonding measured E12. Tool: TW9."_s;
    QTest::addRow("tool under no name") << u"bonding.measured"_s << u"E12"_s << json::Object{{u"tool"_s, u" "_s}} << u"Bonding measured E12. Tool:  ."_s;
    QTest::addRow("done earlier") << u"safetying.applied"_s << u"E12"_s << json::Object{{u"done_at"_s, u"2026-03-02T08:14:31.120Z"_s}}
                                  << u"Safetied E12. Done at, if earlier: 2026-03-02 08:14:31 UTC."_s;
    QTest::addRow("done when, one cannot tell") << u"safetying.applied"_s << u"E12"_s << json::Object{{u"done_at"_s, u"yesterday"_s}} << u"Safetied E12. Done at, if earlier: yesterday."_s;
    QTest::addRow("a digest by its beginning") << u"photo.attached"_s << u"E12"_s << json::Object{{u"sha256"_s, Digest::of("abc").hex()}} << u"Photo attached E12. Digest: ba7816bf8f01cfea…."_s;
    QTest::addRow("about a person") << u"key.replaced"_s << u"ben"_s << json::Object{{u"reason"_s, u"lost"_s}} << u"Key replaced Ben Ortiz. Reason: lost."_s;
    QTest::addRow("a person under no name") << u"handover.given"_s << QString() << json::Object{{u"to"_s, u" mia"_s}} << u"Handed over. To the incoming lead:  mia."_s;
    QTest::addRow("nothing where something belongs") << u"entry.struck"_s << QString() << json::Object{{u"entry"_s, 7}, {u"reason"_s, json::Value()}} << u"Struck an entry. Entry number: 7; Reason: ."_s;
    QTest::addRow("full stop once") << u"finding.raised"_s << u"F1"_s << json::Object{{u"description"_s, u"Chafed."_s}}
                                    << u"Finding raised F1. What was found: Chafed."_s;
    QTest::addRow("kind of a later version") << u"interface.polished"_s << u"E12"_s << json::Object()
                                             << u"An entry of a kind that this version does not know: interface.polished."_s;
}

void SentencesTest::sentences()
{
    QFETCH(QString, kind);
    QFETCH(QString, subject);
    QFETCH(json::Object, body);
    QFETCH(QString, sentence);
    QCOMPARE(describe(statement(kind, subject, body), twoPeople()), sentence);
}

void SentencesTest::everyActHasASentence()
{
    for (const Act &act : acts()) {
        const QString sentence = describe(statement(act.kind, {}, {}), Register());
        QVERIFY2(sentence.startsWith(QLatin1String(act.done)), qPrintable(sentence));
        QVERIFY(sentence.endsWith(u'.'));
    }
}

void SentencesTest::kindsHaveTheirOwnWords()
{
    const JobRecord record = scene::openRecord(5);
    const Kind *mount = record.kinds().find(u"mount");
    QCOMPARE(describe(statement(u"interface.disconnected"_s, u"M1"_s, {}), Register(), mount), u"Released M1."_s);
    QCOMPARE(describe(statement(u"interface.reconnected"_s, u"M1"_s, {}), Register(), mount), u"Fitted M1."_s);
    QCOMPARE(describe(statement(u"interface.disturbed"_s, u"M1"_s, {}), Register(), mount), u"Disturbed M1."_s);
    QCOMPARE(describe(statement(u"interface.listed"_s, u"M1"_s, {{u"name"_s, u"mount"_s}, {u"kind"_s, u"mount"_s}}), Register(), mount), u"Listed M1. Name: mount; Kind: Mount."_s);
    QCOMPARE(describe(statement(u"interface.listed"_s, u"D1"_s, {{u"kind"_s, u"duct"_s}}), Register(), mount), u"Listed D1. Kind: duct."_s);
}

void SentencesTest::momentsNameTheirZone()
{
    QCOMPARE(momentText(*Instant::parseLedger(u"2026-03-02T08:14:31.120Z")), u"2026-03-02 08:14:31 UTC"_s);
}

/// A time that was called in doubt says so wherever it is shown; what programs read stays in the ledger's form.
void SentencesTest::timesInDoubtEverywhere()
{
    scene::Scene scene;
    scene.open(5);
    scene.work();
    const qint64 last = static_cast<qint64>(scene.record().entries().size());
    const JobRecord before = scene.record();
    scene.say(u"lee"_s, u"time.doubted"_s, {}, {{u"first"_s, 1}, {u"last"_s, json::Value(last)}, {u"reason"_s, u"The clock had stopped."_s}});
    const JobRecord record = scene.record();
    const QString doubt = u", in doubt (entry %1)"_s.arg(last + 1);
    const std::pair<QStringView, QLatin1String> shown[] = {{u"tests", "at"_L1}, {u"interfaces", "undone"_L1}, {u"interfaces", "restored"_L1}, {u"interfaces", "inspected"_L1}, {u"torque", "at"_L1},
                                                            {u"inspections", "at"_L1}, {u"hold_points", "at"_L1}, {u"seals", "at"_L1}, {u"signatures", "first"_L1}, {u"life", "at"_L1}, {u"findings", "raised"_L1},
                                                            {u"temporary_items", "applied"_L1}, {u"handovers", "given"_L1}};
    for (const auto &[report, name] : shown) {
        QVERIFY2(!column(record, report, name).isEmpty(), qPrintable(report.toString()));
        for (const QString &cell : column(record, report, name))
            QVERIFY2(cell.isEmpty() || cell.endsWith(doubt), qPrintable(report.toString() + u": "_s + cell));
        QVERIFY(column(before, report, name).filter(u"in doubt"_s).isEmpty());
    }
    for (const QString &cell : column(record, u"interfaces", "undone_at"_L1))
        QVERIFY2(cell.isEmpty() || Instant::parseLedger(cell), qPrintable(cell));
}

QTEST_GUILESS_MAIN(SentencesTest)
#include "tst_sentences.moc"
