// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/loose_ends.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <iterator>

#include "core/holds/standing.hpp"
#include "core/job/doubtful.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("LooseEnd", text); }

QString technician() { return tr("a technician of the crew"); }
QString inspector() { return tr("an authorised inspector who had no hand in it"); }

LooseEnd endOf(const InterfaceState &item, const QString &rule, const QString &sentence, const QString &clearedBy)
{
    return {rule, item.listed.id.text(), sentence.arg(item.listed.name), clearedBy};
}

void addItem(LooseEnds &ends, const JobState &job, const InterfaceState &item)
{
    if (isWithoutDetails(item))
        ends.push_back(endOf(item, QStringLiteral("loose.details"), tr("%1 was undone and was on no list. Its details are to follow."), tr("a technician of the crew, or an inspector")));
    if (item.toLookUp)
        ends.push_back(endOf(item, QStringLiteral("loose.revision"), tr("The maintenance data of %1 was revised. What it asks for is to be looked up."), tr("the lead, or an inspector, by correcting its row of the list")));
    for (const ConditionStated &stated : item.conditions) {
        if (isUnsettling(stated.condition))
            ends.push_back({QStringLiteral("loose.condition"), item.listed.id.text(), tr("%1. %2").arg(item.listed.name, inWordsOf(stated)), technician()});
    }
    if (item.stopped && item.stopped->seenBy.empty())
        ends.push_back({QStringLiteral("loose.stopped"), item.listed.id.text(), tr("Somebody stopped in the middle of %1: %2").arg(item.listed.name, item.stopped->word), tr("a technician of the crew, by taking it up")});
    if (isUndoingInQuestion(item))
        ends.push_back(endOf(item, QStringLiteral("loose.undoing"), tr("%1 was said to be undone again (entry %2), and that was struck: what is in it nobody knows. Undo it and restore it; or somebody with authority to overrule strikes that entry as never so.").arg(QStringLiteral("%1"), QString::number(item.left.undoing->seq)), technician()));
    switch (stageOf(item)) {
    case Stage::Connected:
        if (waitsForAgreement(item)) {
            if (item.left.undoing)
                ends.push_back(endOf(item, QStringLiteral("loose.not-applicable"), tr("%1 is said to be not applicable, and was said to be undone before that was struck; an inspector who had no hand in it has to agree."), inspector()));
            else
                ends.push_back(endOf(item, QStringLiteral("loose.not-applicable"), tr("%1 is critical and said to be not applicable; a second person has to agree."), tr("somebody of the job other than who said so")));
            return;
        }
        if (isNotApplicable(item) || isConfirmedUndisturbed(item))
            return;
        if (item.left.undoing) {
            ends.push_back(endOf(item, QStringLiteral("loose.untouched"), tr("%1 was said to be undone, which was struck (entry %2). Disconnect it; or have an inspector who had no hand in it confirm it undisturbed.").arg(QStringLiteral("%1"), QString::number(item.left.undoing->seq)), inspector()));
            return;
        }
        ends.push_back(endOf(item, QStringLiteral("loose.untouched"), tr("%1 is on the list and was never disconnected. Disconnect it; or confirm it undisturbed; or say why it is not applicable."), tr("a technician; or an inspector")));
        return;
    case Stage::Disconnected:
        if (item.stillAttached)
            ends.push_back({QStringLiteral("loose.attached"), item.listed.id.text(), tr("%1 was found still attached: %2").arg(item.listed.name, item.stillAttached->what), technician()});
        ends.push_back(endOf(item, QStringLiteral("loose.disconnected"), tr("%1 is disconnected."), technician()));
        return;
    case Stage::Reconnected:
        for (const auto &[requirement, sentence] : stillToShow(item))
            ends.push_back(endOf(item, QStringLiteral("loose.") + requirement->name, tr("%1 is joined, not secured. ") + sentence, technician()));
        return;
    case Stage::Secured:
        if (!item.twinsVerified && asksForTwinCheck(job, item))
            ends.push_back(endOf(item, QStringLiteral("loose.twins"), tr("%1 and its look-alikes have not been verified as a pair."), tr("somebody of the job who joined none of them")));
        ends.push_back(endOf(item, QStringLiteral("loose.inspection"),
                             item.acceptances.empty() ? tr("%1 waits for its inspection.") : tr("%1 waits for its second inspection, by another person."), inspector()));
        return;
    case Stage::Inspected: return;
    }
}

void addTemporaries(LooseEnds &ends, const JobState &job, const Register &reg)
{
    for (const TemporaryItem &item : job.temporaries) {
        if (item.removed)
            continue;
        const QString owner = isLockout(item.sort) ? reg.nameOf(item.owner) : technician();
        ends.push_back({QStringLiteral("loose.temporary"), item.id.text(), tr("%1 (%2) is still applied.").arg(item.id.text(), item.name), owner});
    }
}

void addHolds(LooseEnds &ends, const JobState &job)
{
    for (const HoldPoint &hold : job.holds) {
        const HoldStanding standing = standingOf(job, hold);
        if (standing.state == HoldState::Passed || !isStillAsked(job, hold))
            continue;
        const QString why = standing.state == HoldState::Void ? tr("The hold point %1 (%2) has to be passed again. %3").arg(hold.id.text(), hold.title, standing.undermined)
                                                              : tr("The hold point %1 (%2) has not been passed. %3").arg(hold.id.text(), hold.title, standing.firstMissing());
        ends.push_back({QStringLiteral("loose.hold"), hold.id.text(), why.trimmed(), tr("somebody with authority to %1").arg(hold.authority)});
    }
}

void addUnit(LooseEnds &ends, const JobState &job)
{
    if (!job.unit.off && job.unitOffStruck)
        ends.push_back({QStringLiteral("loose.unit"), job.facts.outgoingSerial, tr("The unit was said to be off (entry %1), and that was struck. Say it anew; or somebody with authority to overrule strikes that entry as never so.").arg(job.unitOffStruck->seq), technician()});
    if (job.unit.off && !job.unit.up)
        ends.push_back({QStringLiteral("loose.unit"), serialToPutUp(job), tr("The outgoing unit is off, and no unit was positioned in its place: %1 is to go up.").arg(serialToPutUp(job)), technician()});
}

void addAccessories(LooseEnds &ends, const JobState &job)
{
    for (const Accessory &accessory : job.accessories) {
        if (!isPlaced(job, accessory) && job.reversed)
            ends.push_back({QStringLiteral("loose.accessory"), accessory.id.text(), tr("%1 (%2, serial number %3) has not been said to be on the outgoing unit again, which goes back up.").arg(accessory.name, accessory.part, accessory.serial), technician()});
        else if (!isPlaced(job, accessory))
            ends.push_back({QStringLiteral("loose.accessory"), accessory.id.text(), tr("%1 (%2, serial number %3) has neither moved to the incoming unit nor was declared to leave with the outgoing one.").arg(accessory.name, accessory.part, accessory.serial), technician()});
    }
}

void addTests(LooseEnds &ends, const JobState &job)
{
    for (const JobTest *test : lastTests(job)) {
        const auto voided = whyVoid(job, *test);
        if (test->hasPassed && !voided)
            continue;
        const QString why = test->hasPassed ? tr("The %1 of %2 (%3) is void and has to be made again. %4").arg(test->what, test->name, test->id.text(), *voided)
                                            : tr("The %1 of %2 (%3) has failed and has to be made again.").arg(test->what, test->name, test->id.text());
        ends.push_back({QStringLiteral("loose.test"), test->id.text(), why, technician()});
    }
}

void addTags(LooseEnds &ends, const JobState &job)
{
    for (const TagBlock &block : job.tags.blocks) {
        if (!block.returned)
            ends.push_back({QStringLiteral("loose.tags"), blockText(block), tr("The tags %1 have not been returned.").arg(blockText(block)), tr("the lead")});
    }
}

void addTools(LooseEnds &ends, const JobState &job)
{
    for (const JobTool *tool : job.tools.out()) {
        const QString name = tool->name.isEmpty() ? tool->marking.text() : tr("%1 (%2)").arg(tool->marking.text(), tool->name);
        ends.push_back({QStringLiteral("loose.tool"), tool->marking.text(), tr("The tool %1 has not come back.").arg(name), tr("whoever has it")});
    }
}

void addFindings(LooseEnds &ends, const JobState &job)
{
    for (const Finding &finding : job.findings) {
        if (!finding.closed)
            ends.push_back({QStringLiteral("loose.finding"), finding.id.text(), tr("Finding %1 is open: %2").arg(finding.id.text(), finding.description), inspector()});
    }
}

QString leadOf(const JobState &job, const Register &reg) { return job.lead ? reg.nameOf(*job.lead) : tr("the lead"); }

/// A link is answered by the other job, and every job that it is linked with is linked with this one too.
void addLink(LooseEnds &ends, const JobState &job, const Register &reg, const Link &link)
{
    const auto add = [&](const char *rule, const QString &sentence, const QString &clearedBy) { ends.push_back({QString::fromLatin1(rule), link.workOrder, sentence, clearedBy}); };
    const JobState *other = seenJob(job, link.ledger);
    if (!other)
        return add("loose.link", tr("The linked job %1 cannot be seen from here. Keep both in one store.").arg(link.workOrder), tr("whoever keeps the stores"));
    if (!isLinkedWith(*other, *job.ledger)) {
        if (other->closed)
            return add("loose.link", tr("%1 was closed without naming this job. Strike the link.").arg(jobInWords(*other)), leadOf(job, reg));
        return add("loose.link", tr("%1 does not name this job yet.").arg(jobInWords(*other)), leadOf(*other, reg));
    }
    for (const Link &further : other->links) {
        if (further.ledger != *job.ledger && !isLinkedWith(job, further.ledger))
            add("loose.link", tr("%1 is linked with %2, which this job does not name. Link it, so that all parts close together.").arg(jobInWords(*other), further.workOrder), leadOf(job, reg));
    }
}

/// Whoever linked the jobs late may have let somebody accept what they had worked on in the other one.
void addHandsFromBefore(LooseEnds &ends, const JobState &job, const Register &reg, const InterfaceState &item)
{
    for (const Mark &acceptance : item.acceptances) {
        for (const Link &link : job.links) {
            const JobState *other = acceptance.seq < link.mark.seq ? seenJob(job, link.ledger) : nullptr;
            const InterfaceState *like = other ? other->item(item.listed.id) : nullptr;
            if (like && like->actors.contains(acceptance.by))
                ends.push_back({QStringLiteral("loose.link-hands"), item.listed.id.text(), tr("%1 was inspected by %2, who had a hand in it or its like in %3. It is inspected again, by somebody else.").arg(item.listed.name, reg.nameOf(acceptance.by), jobInWords(*other)), inspector()});
        }
    }
}

void addLinks(LooseEnds &ends, const JobState &job, const Register &reg)
{
    if (job.links.empty())
        return;
    for (const Link &link : job.links)
        addLink(ends, job, reg, link);
    for (const InterfaceState &item : job.items) {
        if (!isElsewhere(item))
            addHandsFromBefore(ends, job, reg, item);
        else if (!whereTakenOn(job, item))
            ends.push_back({QStringLiteral("loose.sent"), item.listed.id.text(), tr("%1 was sent to %2, which has not taken it on yet.").arg(item.listed.name, jobInWords(job, item.sent->to)), tr("a technician of that job")});
    }
}

/// Linked jobs close together: each waits until the others are closed or have no loose end of their own. Theirs are looked at with this job
/// as it is, and without what waits for it in turn.
void addWaits(LooseEnds &ends, const JobState &job, const Register &reg)
{
    for (const JobState *other : linkedBothWays(job)) {
        const LooseEnds theirs = ownLooseEnds(asItSees(job, *other), reg);
        if (!theirs.empty())
            ends.push_back({QStringLiteral("loose.linked"), other->facts.workOrder, tr("%1 closes together with this job and has loose ends: %2. The first: %3").arg(jobInWords(*other), QString::number(theirs.size()), theirs.front().sentence), theirs.front().clearedBy});
    }
}

/// In no language of a screen, so that a list signed under one is found current under another.
QString inLedger(const ConditionStated &stated)
{
    QStringList parts{conditionText(stated.condition)};
    for (const QString *part : {&stated.fasteners, &stated.toComeOut, &stated.reason}) {
        if (!part->isEmpty())
            parts << *part;
    }
    return parts.join(QStringLiteral("; "));
}

/// Conditions, a break point and missing details, each only where there is one: a list signed before there were any stays what it was.
void addWhatNextShiftReads(json::Object &record, const InterfaceState &item)
{
    std::vector<QString> conditions;
    for (const ConditionStated &stated : item.conditions)
        conditions.push_back(inLedger(stated));
    if (!conditions.empty())
        record.set(QStringLiteral("conditions"), json::arrayOf(conditions));
    if (item.stillAttached)
        record.set(QStringLiteral("attached"), item.stillAttached->what);
    if (item.stopped)
        record.set(QStringLiteral("stopped"), item.stopped->word);
    if (isWithoutDetails(item))
        record.set(QStringLiteral("details"), QStringLiteral("to follow"));
    if (item.toLookUp)
        record.set(QStringLiteral("revision"), QStringLiteral("to look up"));
}

} // namespace

LooseEnds ownLooseEnds(const JobState &job, const Register &reg)
{
    LooseEnds ends;
    if (job.closed)
        return ends;
    for (const InterfaceState &item : job.items) {
        if (isElsewhere(item))
            continue; // that it was taken on is asked below, and all else where it is
        addItem(ends, job, item);
        if (const auto why = whyInDoubt(item, reg))
            ends.push_back({QStringLiteral("loose.in-doubt"), item.listed.id.text(), tr("%1: %2").arg(item.listed.name, *why), technician()});
    }
    addTemporaries(ends, job, reg);
    addTags(ends, job);
    addTools(ends, job);
    addHolds(ends, job);
    addUnit(ends, job);
    addAccessories(ends, job);
    addTests(ends, job);
    addFindings(ends, job);
    if (const Handover *pending = job.pendingHandover())
        ends.push_back({QStringLiteral("loose.handover"), pending->to.text(), tr("The handover to %1 has not been accepted.").arg(reg.nameOf(pending->to)), reg.nameOf(pending->to)});
    addLinks(ends, job, reg);
    return ends;
}

LooseEnds looseEnds(const JobState &job, const Register &reg)
{
    LooseEnds ends = ownLooseEnds(job, reg);
    if (!job.closed)
        addWaits(ends, job, reg);
    return ends;
}

bool isAboutInterface(const LooseEnd &end)
{
    constexpr QLatin1String others[] = {"loose.temporary"_L1, "loose.hold"_L1, "loose.unit"_L1, "loose.accessory"_L1, "loose.test"_L1, "loose.tags"_L1,
                                        "loose.tool"_L1, "loose.finding"_L1, "loose.handover"_L1, "loose.link"_L1, "loose.linked"_L1};
    return std::find(std::begin(others), std::end(others), end.rule) == std::end(others);
}

LooseEnds looseEndsOf(const LooseEnds &all, const InterfaceId &item)
{
    LooseEnds ends;
    std::copy_if(all.begin(), all.end(), std::back_inserter(ends), [&](const LooseEnd &end) { return end.subject == item.text() && isAboutInterface(end); });
    return ends;
}

std::set<InterfaceId> looseItems(const LooseEnds &all)
{
    std::set<InterfaceId> items;
    for (const LooseEnd &end : all) {
        if (const auto id = isAboutInterface(end) ? InterfaceId::parse(end.subject) : std::nullopt)
            items.insert(*id);
    }
    return items;
}

json::Array openAtHandover(const JobState &job)
{
    json::Array open;
    for (const InterfaceState &item : job.items) {
        if (isElsewhere(item)) {
            if (!whereTakenOn(job, item))
                open.emplace_back(json::Object{{QStringLiteral("interface"), item.listed.id.text()}, {QStringLiteral("stage"), stageName(stageOf(item))}, {QStringLiteral("sent"), item.sent->to.text()}});
            continue;
        }
        const Stage stage = stageOf(item);
        const bool isToldOf = !item.conditions.empty() || item.stopped || item.toLookUp;
        if ((stage == Stage::Connected || stage == Stage::Inspected) && !isToldOf)
            continue;
        json::Object record{{QStringLiteral("interface"), item.listed.id.text()}, {QStringLiteral("stage"), stageName(stage)}};
        std::vector<QString> missing;
        if (stage == Stage::Reconnected) {
            for (const auto &[requirement, sentence] : stillToShow(item))
                missing.push_back(requirement->name);
            record.set(QStringLiteral("missing"), json::arrayOf(missing));
            // Half done is the state that the next shift must not take for done.
            if (item.listed.torque && !item.torque.empty()) {
                const auto all = static_cast<qint64>(torqueSteps(*item.listed.torque).size());
                const auto left = static_cast<qint64>(torqueStepsLeft(item).size());
                if (left > 0) {
                    record.set(QStringLiteral("torqued"), all - left);
                    record.set(QStringLiteral("of"), all);
                }
            }
        }
        addWhatNextShiftReads(record, item);
        open.emplace_back(std::move(record));
    }
    for (const TemporaryItem &item : job.temporaries) {
        if (!item.removed)
            open.emplace_back(json::Object{{QStringLiteral("temporary"), item.id.text()}, {QStringLiteral("name"), item.name}, {QStringLiteral("owner"), item.owner.text()}});
    }
    for (const HoldPoint &hold : job.holds) {
        if (isStillAsked(job, hold) && standingOf(job, hold).state == HoldState::Void)
            open.emplace_back(json::Object{{QStringLiteral("hold_point"), hold.id.text()}, {QStringLiteral("state"), QStringLiteral("void")}});
    }
    for (const JobTest *test : lastTests(job)) {
        if (!test->hasPassed || whyVoid(job, *test))
            open.emplace_back(json::Object{{QStringLiteral("test"), test->id.text()}, {QStringLiteral("state"), test->hasPassed ? QStringLiteral("void") : QStringLiteral("failed")}});
    }
    for (const JobTool *tool : job.tools.out())
        open.emplace_back(json::Object{{QStringLiteral("tool"), tool->marking.text()}, {QStringLiteral("name"), tool->name}});
    for (const TagBlock &block : job.tags.blocks) {
        if (!block.returned)
            open.emplace_back(json::Object{{QStringLiteral("tags"), blockText(block)}});
    }
    for (const Accessory &accessory : job.accessories) {
        if (!isPlaced(job, accessory))
            open.emplace_back(json::Object{{QStringLiteral("accessory"), accessory.id.text()}, {QStringLiteral("name"), accessory.name}});
    }
    for (const Finding &finding : job.findings) {
        if (!finding.closed)
            open.emplace_back(json::Object{{QStringLiteral("finding"), finding.id.text()}, {QStringLiteral("description"), finding.description}});
    }
    return open;
}

} // namespace core
