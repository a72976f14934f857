// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

/// Blanks over the two ends of what stands open: counted apart, and looked for before the way to a missing one is closed. Common practice.
class TestBlanks : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;

        const QString both = u"Ana disconnects D1 blanks_fitted=2 unit_blanks_fitted=1"_s;
        row("all that were fitted", both, "Ben reconnects D1", "");
        row("one left in the aircraft's end", both, "Ben reconnects D1 blanks_removed=1", "balance.blanks");
        row("one too many from the aircraft's end", both, "Ben reconnects D1 blanks_removed=3", "balance.blanks");
        row("one left in the unit's end", both, "Ben reconnects D1 unit_blanks_removed=0", "balance.blanks");
        row("the unit's end not counted", both, "Ben reconnects D1 unit_blanks_removed=", "balance.blanks");
        row("as many, from the wrong ends", both, "Ben reconnects D1 blanks_removed=1 unit_blanks_removed=2", "balance.blanks");
        row("none fitted, none removed", u"Ana disconnects D1"_s, "Ben reconnects D1", "");
        row("none fitted, one removed from the unit's end", u"Ana disconnects D1"_s, "Ben reconnects D1 unit_blanks_removed=1", "balance.blanks");

        const QString allOff = both + u"; Ana disconnects C1; Ana disconnects B1; Ana disconnects F1 unit_blanks_fitted=2; Ana disconnects F2; Ana disconnects M1; Ana disconnects M2; Ana disconnects A1; Ana disconnects D2; Ana disconnects K1"_s;
        row("the unit leaves with every blank", allOff, "Ana takes-off openings_blanked=3", "");
        row("the unit leaves, more openings blanked than were logged", allOff, "Ana takes-off openings_blanked=9", "");
        row("the unit leaves, one blank fewer than were logged", allOff, "Ana takes-off openings_blanked=2", "unit.openings");
        const QString changed = allOff + u"; Ana takes-off; Ana receives; Ben positions"_s;
        row("joined to the incoming unit, whose ends were cleared before", changed, "Ben reconnects D1 blanks_removed=2 unit_blanks_removed=", "");
        row("joined to the incoming unit, a blank of the other one removed", changed, "Ben reconnects D1 blanks_removed=2 unit_blanks_removed=1", "balance.blanks");
        row("undone once more since, and blanked again", changed + u"; Ben reconnects D1; Ben disconnects D1 unit_blanks_fitted=1"_s, "Ben reconnects D1 unit_blanks_removed=0", "balance.blanks");

        row("a blank missing", both, "Ben misses-blank D1", "");
        row("both missing", both, "Ben misses-blank D1 count=2", "");
        row("more than were fitted", both, "Ben misses-blank D1 count=3", "blanks.missed");
        row("none missing", both, "Ben misses-blank D1 count=0", "blanks.missed");
        row("more than were fitted to the unit's end", both, "Ben misses-blank D1 end=unit count=2", "blanks.missed");
        row("one missing twice", both + u"; Ben misses-blank D1 end=unit"_s, "Ben misses-blank D1 end=unit", "blanks.missed");
        row("missing from what is joined", both + u"; Ben reconnects D1"_s, "Ben misses-blank D1", "blanks.missed");
        row("missing from what was never undone", {}, "Ben misses-blank K1", "blanks.missed");
        row("missing from what is not listed", {}, "Ben misses-blank Z9", "sequence.listed");
        row("missing, under a number that is taken", both + u"; Ben raises F1"_s, "Ben misses-blank D1 finding=F1", "finding.number");
        row("missing, by a stranger", both, "Out misses-blank D1", "crew.takes-part");

        const QString gone = both + u"; Ben misses-blank D1"_s;
        row("joined before it is known where it is", gone, "Ben reconnects D1", "blanks.search");
        row("joined when it is", gone + u"; Cho clears F1"_s, "Ben reconnects D1", "");
        row("joined when it is, and counted as if it were there", gone + u"; Cho clears F1"_s, "Ben reconnects D1 blanks_removed=2", "balance.blanks");
        row("joined while it is looked for", gone, "Ben reconnects D1 blanks_removed=1", "blanks.search");
        row("a search that was put off", gone, "Cho clears F1 disposition=deferred limit=2026-03-09", "blanks.rectified");
        row("a blank within limits", gone, "Cho clears F1 disposition=within_limits", "blanks.rectified");
        row("found", gone, "Cho clears F1", "");
        row("a run while it is looked for", gone + u"; Ana disconnects K1; Ana reconnects K1"_s, "Ana tests R1 covers=K1", "blanks.running");
        row("a run once it is found", gone + u"; Ana disconnects K1; Ana reconnects K1; Cho clears F1"_s, "Ana tests R1 covers=K1", "");
        row("the loss struck, since it lay in the pocket", gone + u"; Ove strikes entry=13"_s, "Ben reconnects D1 blanks_removed=2", "");
    }
    void eachRule() { m_table.ask(); }

    /// A missing blank is a finding on its interface, which keeps the job open.
    void aMissingBlankIsAFinding()
    {
        const Story story(u"Ana disconnects D1 blanks_fitted=1; Ben misses-blank D1"_s);
        QCOMPARE(story.job().findings.front().item->text(), u"D1"_s);
        QVERIFY(story.looseEnds().contains(u"loose.finding F1"_s));
        QCOMPARE(core::blanksThere(*story.item(u"D1"_s).removal, core::End::Aircraft), 0);
    }

    /// A new disconnection starts a count of its own.
    void eachDisconnectionIsCountedAnew()
    {
        Story story(u"Ana disconnects D1 blanks_fitted=1; Ben misses-blank D1; Cho clears F1; Ben reconnects D1; Ben disconnects D1 blanks_fitted=1; Ben reconnects D1 blanks_removed=0"_s);
        QCOMPARE(story.refusedBy(), u"balance.blanks"_s);
        story.tell(u"Ben reconnects D1"_s);
        QCOMPARE(story.refusedBy(), QString());
    }

    /// Runs last.
    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"blanks"_L1};
};

QTEST_GUILESS_MAIN(TestBlanks)
#include "tst_blanks.moc"
