// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/acts/references.hpp"
#include "core/reports/timeline.hpp"
#include "core/rules/form.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Bolts, nuts, seals and pins: nothing left over, nothing missing. The two sums are common practice.
class TestHardware : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const char *one = "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]";
        row("listed with hardware", "", one, "");
        row("one part twice", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4},{\"part\":\"BOLT-6\",\"quantity\":2}]", "listing.hardware");
        row("two parts", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4},{\"part\":\"BOLT-7\",\"quantity\":2}]", "");
        row("none of a part", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":0}]", "listing.hardware");
        row("one of a part", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":1}]", "");
        row("9999 of a part", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":9999}]", "");
        row("10000 of a part", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":10000}]", "listing.hardware");
        row("a line without a number", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\"}]", "form.value");
        row("a line without a part", "", "Ana lists X1 hardware=[{\"quantity\":4}]", "form.value");
        row("a line with what no column is", "", "Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4,\"colour\":\"red\"}]", "form.value");
        row("the balance asked for, with hardware", "", "Ana lists X1 requirements=hardware hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]", "");
        row("the balance asked for, without", "", "Ana lists X1 requirements=hardware", "listing.requirements");

        // Four bolts that may be used again and a seal that may not (seals and gaskets: common practice).
        const QByteArray on = "Ana lists X1 requirements=hardware hardware=[{\"part\":\"BOLT-6\",\"quantity\":4},{\"part\":\"SEAL-28\",\"quantity\":1,\"new\":true}]";
        row("counted as it came off", on, "Ana disconnects X1", "");
        row("nothing counted", on, "Ana disconnects X1 hardware_removed=", "hardware.counted");
        row("one part not counted", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":4}]", "hardware.counted");
        row("one part counted as none", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":4},{\"part\":\"SEAL-28\",\"quantity\":0}]", "");
        row("a part counted twice", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":3},{\"part\":\"BOLT-6\",\"quantity\":1},{\"part\":\"SEAL-28\",\"quantity\":1}]", "hardware.counted");
        row("another part among it", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":3},{\"part\":\"BOLT-7\",\"quantity\":1},{\"part\":\"SEAL-28\",\"quantity\":1}]", "");
        row("9999 came off", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":9999},{\"part\":\"SEAL-28\",\"quantity\":1}]", "");
        row("10000 came off", on, "Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":10000},{\"part\":\"SEAL-28\",\"quantity\":1}]", "hardware.counted");
        row("found open, nothing counted", on, "Eva finds-open X1", "");
        row("found open, a part counted twice", on, "Eva finds-open X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":1},{\"part\":\"BOLT-6\",\"quantity\":1}]", "hardware.counted");
        row("no hardware listed, none counted", "", "Ana disconnects K1", "");

        const QByteArray off = on + "; Ana disconnects X1";
        row("bolts reused, seal renewed", off, "Ben reconnects X1", "");
        row("no lines", off, "Ben reconnects X1 hardware=", "hardware.lines");
        row("lines of nothing", off, "Ben reconnects X1 hardware=[]", "hardware.lines");
        const QByteArray seal = ",{\"part\":\"SEAL-28\",\"renewed\":1,\"scrapped\":1,\"batch\":\"L-7\"}]";
        const auto bolts = [&](const char *line) { return QByteArray("Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",") + line + '}' + seal; };
        row("all four reused", off, bolts("\"reused\":4"), "");
        row("a bolt too few", off, bolts("\"reused\":3,\"scrapped\":1"), "hardware.required");
        row("a bolt too many", off, bolts("\"reused\":4,\"renewed\":1,\"batch\":\"L-8\""), "hardware.required");
        row("a bolt left over", off, bolts("\"reused\":3,\"renewed\":1,\"batch\":\"L-8\""), "hardware.removed");
        row("the bolt left over is scrapped", off, bolts("\"reused\":3,\"renewed\":1,\"scrapped\":1,\"batch\":\"L-8\""), "");
        row("more scrapped than came off", off, bolts("\"reused\":4,\"scrapped\":1"), "hardware.removed");
        row("one reused that never came off", off, bolts("\"reused\":5"), "hardware.reused hardware.required");
        row("all renewed", off, bolts("\"renewed\":4,\"scrapped\":4,\"batch\":\"L-8\""), "");
        row("all renewed, without a batch", off, bolts("\"renewed\":4,\"scrapped\":4"), "hardware.batch");
        row("renewed of two batches", off, bolts("\"renewed\":2,\"scrapped\":4,\"batch\":\"L-8\"},{\"part\":\"BOLT-6\",\"renewed\":2,\"batch\":\"L-9\""), "");
        row("the bolts left out", off, "Ben reconnects X1 hardware=[{\"part\":\"SEAL-28\",\"renewed\":1,\"scrapped\":1,\"batch\":\"L-7\"}]", "hardware.removed hardware.required");
        row("10000 reused", off, bolts("\"reused\":10000"), "hardware.lines hardware.reused hardware.required");
        row("a bolt of another part beside", off, bolts("\"reused\":4},{\"part\":\"BOLT-7\",\"renewed\":1,\"batch\":\"L-8\""), "hardware.required");
        row("the old seal", off, "Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":4},{\"part\":\"SEAL-28\",\"reused\":1}]", "hardware.new");

        // AC 43.13-1B par. 7-38: a cotter pin is new for each application, and so is lockwire.
        const QByteArray pin = "Ana lists X1 hardware=[{\"part\":\"COTTER-3\",\"quantity\":2,\"new\":true}]; Ana disconnects X1";
        row("cotter pins renewed", pin, "Ben reconnects X1 hardware=[{\"part\":\"COTTER-3\",\"renewed\":2,\"scrapped\":2,\"batch\":\"L-4\"}]", "");
        row("one cotter pin used again", pin, "Ben reconnects X1 hardware=[{\"part\":\"COTTER-3\",\"reused\":1,\"renewed\":1,\"scrapped\":1,\"batch\":\"L-4\"}]", "hardware.new");

        // One was missing when it was undone: three came off, four go on.
        const QByteArray three = QByteArray(one) + "; Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":3}]";
        row("three came off, the fourth is new", three, "Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":3,\"renewed\":1,\"batch\":\"L-8\"}]", "");
        row("three came off, four reused", three, "Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":4}]", "hardware.reused");
        row("three came off, three go on", three, "Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":3}]", "hardware.required");

        // What the list does not name is accounted for all the same.
        const QByteArray unlisted = "Ana disconnects K1 hardware_removed=[{\"part\":\"CLIP-2\",\"quantity\":2}]";
        row("not listed, reused", unlisted, "Ben reconnects K1 hardware=[{\"part\":\"CLIP-2\",\"reused\":2}]", "");
        row("not listed, one scrapped", unlisted, "Ben reconnects K1 hardware=[{\"part\":\"CLIP-2\",\"reused\":1,\"scrapped\":1}]", "");
        row("not listed, one left over", unlisted, "Ben reconnects K1 hardware=[{\"part\":\"CLIP-2\",\"reused\":1}]", "hardware.removed");
        row("not listed, no lines", unlisted, "Ben reconnects K1 hardware=", "hardware.lines");
        row("found open, all new", on + "; Eva finds-open X1", "Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"renewed\":4,\"batch\":\"L-8\"},{\"part\":\"SEAL-28\",\"renewed\":1,\"batch\":\"L-7\"}]", "");
        row("found open, no lines", on + "; Eva finds-open X1", "Ben reconnects X1 hardware=", "hardware.lines");
    }
    void eachRule() { m_table.ask(); }

    /// The numbers that do not come out stand in the sentence.
    void theSentenceHasTheNumbers()
    {
        Story story(u"Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]; Ana disconnects X1; Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":2,\"scrapped\":1}]"_s);
        QCOMPARE(story.refusedBy(), u"hardware.removed hardware.required"_s);
        QCOMPARE(story.refusals()[0].sentence, u"X1 (Item): 4 × BOLT-6 came off; 2 reused and 1 scrapped make 3. 1 too few: find what is left before you go on, it may lie in the bay."_s);
        QCOMPARE(story.refusals()[1].sentence, u"X1 (Item): 4 × BOLT-6 are required; 2 reused and 0 renewed make 2. 2 too few."_s);
    }

    /// removed = reused + scrapped, required = reused + renewed, for each part with all its lines together.
    void theBalanceOfAnInterface()
    {
        const std::vector<core::HardwareBalance> balance = core::hardwareBalance({{u"A"_s, 4, false}, {u"B"_s, 1, true}}, {{u"B"_s, 1}, {u"A"_s, 4}, {u"C"_s, 2}},
                                                                                  {{u"A"_s, 2, 1, 1, u"1"_s}, {u"A"_s, 0, 1, 1, u"2"_s}, {u"B"_s, 0, 1, 1, u"3"_s}});
        QCOMPARE(balance, (std::vector<core::HardwareBalance>{{u"A"_s, 4, false, 4, 2, 2, 2}, {u"B"_s, 1, true, 1, 0, 1, 1}, {u"C"_s, 0, false, 2, 0, 0, 0}}));
        QVERIFY(balance[0].isAccountedFor() && balance[0].isComplete());
        QVERIFY(balance[1].isAccountedFor() && balance[1].isComplete());
        QVERIFY(!balance[2].isAccountedFor() && balance[2].isComplete());
    }

    /// A disconnection brings back what has to be accounted for, and a struck reconnection what had been.
    void eachDisconnectionHasABalanceOfItsOwn()
    {
        Story story(u"Ana lists X1 requirements=hardware hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]; Ana disconnects X1; Ben reconnects X1"_s);
        QCOMPARE(story.stage(u"X1"_s), u"secured"_s);
        QCOMPARE(story.item(u"X1"_s).restoration->hardware, (std::vector<core::HardwareUse>{{u"BOLT-6"_s, 4, 0, 0, {}}}));
        story.tell(u"Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":3}]"_s);
        QCOMPARE(story.item(u"X1"_s).removal->hardware, (std::vector<core::HardwareRemoved>{{u"BOLT-6"_s, 3}}));
        story.tell(u"Ben reconnects X1"_s);
        QCOMPARE(story.item(u"X1"_s).restoration->hardware, (std::vector<core::HardwareUse>{{u"BOLT-6"_s, 3, 1, 0, u"batch-9"_s}}));
        story.tell(u"Ben strikes entry=%1"_s.arg(story.item(u"X1"_s).restoration->mark.seq));
        QCOMPARE(story.stage(u"X1"_s), u"disconnected"_s);
    }

    /// Sent back by the inspector, what was on comes off again: the renewed bolt too.
    void whatIsSentBackComesOffAgain()
    {
        Story story(u"Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]; Ana disconnects X1 hardware_removed=[{\"part\":\"BOLT-6\",\"quantity\":3}]; Ben reconnects X1; Cho rejects X1 back_to=disconnected"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.item(u"X1"_s).removal->hardware, (std::vector<core::HardwareRemoved>{{u"BOLT-6"_s, 4}}));
        story.tell(u"Ben reconnects X1 tag_recovered= hardware=[{\"part\":\"BOLT-6\",\"reused\":3}]"_s);
        QCOMPARE(story.refusedBy(), u"hardware.removed hardware.required"_s);
        story.tell(u"Ben reconnects X1 tag_recovered= hardware=[{\"part\":\"BOLT-6\",\"reused\":4}]"_s);
        QCOMPARE(story.refusedBy(), QString());
    }

    /// Parts and batches are found inside the lines, and a timeline tells them by the names of their columns.
    void linesAreFoundAndTold()
    {
        const core::Draft draft = Story(u"Ana lists X1 hardware=[{\"part\":\"BOLT-6\",\"quantity\":4}]; Ana disconnects X1"_s)
                                      .drafts(u"Ben reconnects X1 hardware=[{\"part\":\"BOLT-6\",\"reused\":3,\"renewed\":1,\"scrapped\":1,\"batch\":\"L-8\"}]"_s).front();
        const core::Statement said{*core::LedgerId::parse(u"L"), 9, draft.at, draft.author, {}, {}, draft.kind, draft.subject, draft.body, std::nullopt, {}};
        QStringList found;
        for (const core::Reference &reference : core::referencesOf(said))
            found << reference.sort + u' ' + reference.value;
        QCOMPARE(found.join(u", "_s), u"person Ben, part BOLT-6, batch L-8"_s);
        const QString told = core::describe(said, core::Register(), nullptr);
        QVERIFY2(told.contains(u"What became of the hardware: BOLT-6 (Reused: 3; Renewed: 1; Scrapped: 1; Batch of the new: L-8)"_s), qPrintable(told));
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"hardware"_L1};
};

QTEST_GUILESS_MAIN(TestHardware)
#include "tst_hardware.moc"
