// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/rule_table.hpp"

#include <QTest>

namespace story {

using namespace Qt::StringLiterals;

namespace {

struct Topic {
    QLatin1String name; ///< tst_NAME
    std::vector<QLatin1String> rules;
};

const std::vector<Topic> &topics()
{
    static const std::vector<Topic> all = {
        {"blanks"_L1,
         {"balance.blanks"_L1, "blanks.missed"_L1, "blanks.search"_L1, "blanks.running"_L1, "blanks.rectified"_L1, "unit.openings"_L1}},
        {"break_points"_L1,
         {"break.under-way"_L1, "break.seen"_L1, "break.there"_L1, "break.over"_L1}},
        {"conditions"_L1,
         {"condition.stage"_L1, "condition.once"_L1, "condition.explained"_L1, "condition.finding"_L1, "condition.stands"_L1, "condition.worker"_L1,
          "condition.repaired"_L1, "condition.final"_L1, "condition.settled"_L1}},
        {"hardware"_L1,
         {"listing.hardware"_L1, "hardware.counted"_L1, "hardware.lines"_L1, "hardware.reused"_L1, "hardware.removed"_L1, "hardware.required"_L1,
          "hardware.new"_L1, "hardware.batch"_L1}},
        {"hold_points"_L1,
         {"hold.gate"_L1, "hold.conditions"_L1, "hold.statements"_L1, "hold.authority"_L1, "hold.once"_L1, "hold.known"_L1, "hold.independent"_L1, "hold.in-time"_L1, "hold.sound"_L1, "hold.less"_L1, "strike.hold"_L1}},
        {"job_tests"_L1,
         {"test.new"_L1, "test.covers"_L1, "test.values"_L1, "test.reopens"_L1}},
        {"links"_L1,
         {"link.named"_L1, "link.once"_L1, "strike.link"_L1, "link.closed-together"_L1, "link.elsewhere"_L1, "send.state"_L1, "send.tied"_L1, "send.to"_L1,
          "taken-on.sent"_L1, "taken-on.same"_L1, "taken-on.tag"_L1, "strike.sent"_L1}},
        {"measuring"_L1,
         {"torque.pass"_L1, "torque.order"_L1, "torque.drag"_L1, "torque.nut"_L1, "wrench.adapter"_L1, "wrench.setting"_L1, "torque.turn"_L1,
          "listing.passes"_L1, "listing.order"_L1, "listing.turn-and-drag"_L1, "torque.drag-kept"_L1, "bonding.after-torque"_L1, "listing.bonding-readings"_L1,
          "listing.leak"_L1, "bonding.readings"_L1, "bonding.lead-zero"_L1, "lift.limits"_L1, "lift.points"_L1, "lift.day"_L1, "lift.weight"_L1,
          "weight.once"_L1, "weight.as-lifted"_L1, "servicing.band"_L1, "weight.balance"_L1, "leak.asked-for"_L1, "leak.told"_L1, "leak.after-torque"_L1,
          "leak.limit"_L1}},
        {"photos"_L1,
         {"photo.there"_L1, "photo.marks"_L1, "photo.copy"_L1, "finding.photo"_L1}},
        {"reinspection"_L1,
         {"reinspection.allowed"_L1, "reinspection.own-work"_L1, "reinspection.nobody-else"_L1, "reinspection.approver"_L1, "reinspection.pause"_L1}},
        {"revision"_L1,
         {"revision.another"_L1, "revision.interfaces"_L1, "revision.looked-up"_L1, "relist.by"_L1, "relist.kind"_L1, "relist.joined"_L1, "relist.less"_L1, "relist.accept"_L1, "revision.none"_L1, "time.entries"_L1}},
        {"strikes"_L1,
         {"strike.warning"_L1, "strike.less"_L1, "strike.back"_L1, "strike.never-was"_L1, "strike.reversal"_L1, "strike.lockout"_L1, "strike.undone"_L1, "strike.handover"_L1, "untouched.struck"_L1, "untouched.in-question"_L1, "removal.counted"_L1}},
        {"tags"_L1,
         {"tags.block"_L1, "tags.from-block"_L1, "tags.out"_L1, "tags.hanging"_L1, "tags.counted"_L1, "tag.hung"_L1, "tag.other"_L1, "strike.tags"_L1}},
        {"temporary"_L1,
         {"temporary.new"_L1, "temporary.applied"_L1, "lockout.own"_L1, "lockout.to"_L1, "unit.counted"_L1, "unit.there"_L1, "unit.carried"_L1, "walkround.off"_L1, "walkround.free"_L1, "walkround.attached"_L1,
          "walkround.second-person"_L1, "unit.serial"_L1, "unit.order"_L1, "unit.free"_L1, "unit.shipping-blanks"_L1, "accessory.new"_L1, "accessory.open"_L1,
          "accessory.serial"_L1, "accessory.free"_L1, "accessory.replacement"_L1, "job.reversed-once"_L1}},
        {"tools"_L1,
         {"tool.marked"_L1, "tool.in"_L1, "tool.out"_L1, "tool.kit"_L1, "tool.count"_L1, "tool.missed"_L1, "strike.tool"_L1}},
        {"twins"_L1,
         {"listing.halves"_L1, "twins.asked-for"_L1, "twins.joined"_L1, "twins.read"_L1, "twins.another-person"_L1, "twins.verified"_L1}},
        {"unlisted"_L1,
         {"detail.asked"_L1, "detail.gate"_L1, "detail.circle"_L1, "detail.known"_L1, "listing.depends-on"_L1, "strike.listing"_L1}},
        {"untouched"_L1,
         {"untouched.never-undone"_L1, "untouched.once"_L1, "untouched.inspector"_L1, "notapplicable.stated"_L1, "notapplicable.second-person"_L1}},
    };
    return all;
}

} // namespace

void RuleTable::columns()
{
    QTest::addColumn<QString>("before");
    QTest::addColumn<QString>("act");
    QTest::addColumn<QString>("refusedBy");
}

void RuleTable::row(const char *name, const Words &before, const Words &act, const char *refusedBy) { QTest::newRow(name) << before.text << act.text << QString::fromLatin1(refusedBy); }

void RuleTable::ask(const core::json::Object &facts)
{
    QFETCH(QString, before);
    QFETCH(QString, act);
    QFETCH(QString, refusedBy);
    Story story(before, facts);
    QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + u": "_s + story.refusedBy()));
    tell(story, act, refusedBy);
}

void RuleTable::tell(Story &story, const QString &act, const QString &refusedBy)
{
    story.tell(act);
    QVERIFY2(story.refusedBy() == refusedBy, qPrintable(u"refused by \"%1\", not by \"%2\"; %3"_s.arg(story.refusedBy(), refusedBy, story.refusals().empty() ? QString() : story.refusals().front().sentence)));
    for (const core::Refusal &refusal : story.refusals()) {
        QVERIFY2(!refusal.sentence.isEmpty() && !refusal.sentence.contains(u"%1"_s) && !refusal.sentence.contains(u"%2"_s), qPrintable(refusal.sentence));
        m_seen.insert(refusal.rule);
    }
}

void RuleTable::everyRuleWasSeen() const
{
    const QSet<QString> rules = rulesShown(m_topic);
    QVERIFY(!rules.isEmpty());
    for (const QString &rule : rules)
        QVERIFY2(m_seen.contains(rule), qPrintable(rule));
}

QSet<QString> rulesShown(QLatin1String topic)
{
    QSet<QString> names;
    for (const Topic &one : topics()) {
        if (one.name != topic)
            continue;
        for (const QLatin1String rule : one.rules)
            names.insert(rule);
    }
    return names;
}

QSet<QString> rulesShown()
{
    QSet<QString> names;
    for (const Topic &one : topics())
        names.unite(rulesShown(one.name));
    return names;
}

} // namespace story
