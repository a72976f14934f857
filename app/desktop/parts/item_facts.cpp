// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/item_facts.hpp"

#include <QCoreApplication>

#include "app/desktop/parts/words.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace desktop {

namespace {

struct ItemFacts {
    Q_DECLARE_TR_FUNCTIONS(ItemFacts)
};

QString toolInWords(const core::ToolId &id, const core::Register &reg)
{
    const core::Tool *tool = reg.tool(id);
    if (!tool)
        return id.text();
    const QString due = tool->calibrations.empty() ? ItemFacts::tr("not calibrated") : ItemFacts::tr("due %1").arg(tool->calibrations.back().due.toString(Qt::ISODate));
    return ItemFacts::tr("%1 %2, %3").arg(id.text(), tool->name, due);
}

void addRemoval(std::vector<Fact> &facts, const core::Removal &removal, const core::JobState &job, const core::Register &reg)
{
    QStringList parts;
    if (!removal.tag.isEmpty())
        parts << ItemFacts::tr("tag %1").arg(removal.tag);
    parts << (removal.unitBlanksFitted > 0 ? ItemFacts::tr("blanks fitted: %1 to the aircraft's end, %2 to the unit's").arg(removal.blanksFitted).arg(removal.unitBlanksFitted) : ItemFacts::tr("blanks fitted: %1").arg(removal.blanksFitted));
    for (const core::MissingBlanks &missing : removal.blanksMissing)
        parts << ItemFacts::tr("BLANK MISSING: %1, finding %2").arg(missing.count).arg(missing.finding.text());
    if (!removal.asFound.isEmpty())
        parts << ItemFacts::tr("as found: %1").arg(choiceMidSentence(removal.asFound));
    if (!removal.hardware.empty())
        parts << ItemFacts::tr("came off: %1").arg(hardwareInWords(removal.hardware));
    facts.push_back({removal.foundOpen ? ItemFacts::tr("Found open") : ItemFacts::tr("Disconnected"), parts.join(QStringLiteral(" · ")), markInWords(removal.mark, job, reg)});
}

void addRestoration(std::vector<Fact> &facts, const core::Restoration &restoration, const core::JobState &job, const core::Register &reg)
{
    QStringList parts;
    if (!restoration.tagRecovered.isEmpty())
        parts << ItemFacts::tr("tag %1 recovered").arg(restoration.tagRecovered);
    parts << ItemFacts::tr("blanks removed: %1").arg(restoration.blanksRemoved);
    if (!restoration.sealBatch.isEmpty())
        parts << ItemFacts::tr("seal %1, batch %2").arg(restoration.sealPart, restoration.sealBatch);
    if (!restoration.aircraftHalf.isEmpty())
        parts << ItemFacts::tr("%1 to %2", "two halves").arg(restoration.aircraftHalf, restoration.unitHalf);
    if (!restoration.hardware.empty())
        parts << hardwareInWords(restoration.hardware);
    facts.push_back({ItemFacts::tr("Reconnected"), parts.join(QStringLiteral(" · ")), markInWords(restoration.mark, job, reg)});
}

/// The reading, what it was on the way to the fastener, and the tool.
QString readingInWords(const core::TorqueReading &reading, const core::InterfaceState &item, const core::Register &reg)
{
    QStringList parts{reading.value.text()};
    if (reading.lever && item.listed.torque) {
        const core::Unit &unit = *core::findUnit(item.listed.torque->min.unit());
        if (const auto arrived = core::measure::torqueAtFastener(reading.value, reading.lever))
            parts.front() = ItemFacts::tr("%1 on the wrench, %2 at the fastener").arg(parts.front(), core::measure::shownIn(*arrived, unit, 2));
    }
    if (reading.setting)
        parts << ItemFacts::tr("set to %1").arg(reading.setting->text());
    if (reading.drag)
        parts << ItemFacts::tr("drag %1").arg(reading.drag->text());
    parts << toolInWords(reading.tool, reg);
    return parts.join(QStringLiteral(" · "));
}

QString leakInWords(const core::LeakReading &leak)
{
    QStringList parts;
    if (!leak.leakClass.isEmpty())
        parts << leak.leakClass;
    if (leak.size)
        parts << ItemFacts::tr("%1 across").arg(leak.size->text());
    if (leak.flow == core::measure::Flow::DripsOrPools)
        parts << ItemFacts::tr("drips or pools");
    if (leak.minutes)
        parts << ItemFacts::tr("%1 min after wiping dry").arg(*leak.minutes);
    if (leak.rate)
        parts << leak.rate->text();
    if (leak.dropsPerMillilitre)
        parts << ItemFacts::tr("%1 drops to the millilitre").arg(leak.dropsPerMillilitre->text());
    if (!leak.how.isEmpty())
        parts << leak.how;
    return parts.join(QStringLiteral(" · "));
}

QString bondReadingInWords(const core::BondingReading &bond, const core::Register &reg)
{
    QStringList parts{bond.second ? ItemFacts::tr("%1 and %2").arg(bond.value.text(), bond.second->text()) : bond.value.text()};
    if (bond.leadZero)
        parts << ItemFacts::tr("leads together %1").arg(bond.leadZero->text());
    parts << toolInWords(bond.tool, reg);
    return parts.join(QStringLiteral(" · "));
}

QString leakLimitInWords(const core::LeakLimit &limit)
{
    QStringList parts;
    if (!limit.worstClass.isEmpty())
        parts << limit.worstClass;
    if (limit.rate)
        parts << limit.rate->text();
    if (limit.dropsPerMillilitre)
        parts << ItemFacts::tr("%1 drops to the millilitre").arg(limit.dropsPerMillilitre->text());
    return parts.join(QStringLiteral(" · "));
}

QString bondingInWords(const core::Listing &listed)
{
    const QString limit = listed.bondingComparison == core::measure::Comparison::LessThan ? ItemFacts::tr("less than %1").arg(listed.bondingMax->text())
                                                                                : ItemFacts::tr("at most %1").arg(listed.bondingMax->text());
    return listed.bondingReadings > 1 ? ItemFacts::tr("%1, two readings").arg(limit) : limit;
}

/// What a tightening takes beside its band; empty where it takes nothing.
QString tighteningInWords(const core::TorqueSpec &spec)
{
    QStringList parts;
    if (!spec.passes.empty()) {
        QStringList percents;
        for (const core::Decimal &percent : spec.passes)
            percents << percent.text();
        parts << ItemFacts::tr("passes %1 %").arg(percents.join(QStringLiteral(", ")));
    }
    if (!spec.order.empty()) {
        QStringList order;
        for (const qint64 fastener : spec.order)
            order << QString::number(fastener);
        parts << ItemFacts::tr("order %1").arg(order.join(u'–'));
    }
    if (spec.prevailing == core::Prevailing::Added)
        parts << ItemFacts::tr("drag is added");
    if (spec.prevailing == core::Prevailing::Included)
        parts << ItemFacts::tr("drag is included");
    if (spec.prevailingMin)
        parts << ItemFacts::tr("drag of a used nut at least %1").arg(spec.prevailingMin->text());
    if (spec.turn)
        parts << ItemFacts::tr("then turned %1° to %2°").arg(spec.turn->least.text(), spec.turn->most.text());
    if (!spec.condition.isEmpty())
        parts << choiceMidSentence(spec.condition);
    if (!spec.thread.isEmpty())
        parts << spec.thread;
    return parts.join(QStringLiteral(" · "));
}

/// What the next pair of hands has to know before anything else.
void addStates(std::vector<Fact> &facts, const core::InterfaceState &item, const core::JobState &job, const core::Register &reg)
{
    if (item.stopped) {
        QStringList parts{item.stopped->word};
        if (item.stopped->fastener)
            parts << ItemFacts::tr("next: fastener %1").arg(*item.stopped->fastener);
        if (item.stopped->pass)
            parts << ItemFacts::tr("pass %1").arg(*item.stopped->pass);
        facts.push_back({ItemFacts::tr("STOPPED HERE"), parts.join(QStringLiteral(" · ")), markInWords(item.stopped->mark, job, reg)});
    }
    if (item.stillAttached || item.walkedRound)
        facts.push_back({ItemFacts::tr("Walk-round"), walkRoundInWords(item), markInWords(item.stillAttached ? item.stillAttached->mark : *item.walkedRound, job, reg)});
    for (const core::ConditionStated &stated : item.conditions)
        facts.push_back({ItemFacts::tr("Condition"), core::inWordsOf(stated), markInWords(stated.mark, job, reg)});
    if (core::isWithoutDetails(item))
        facts.push_back({ItemFacts::tr("On no list"), ItemFacts::tr("details to follow"), markInWords(item.unlisted->mark, job, reg)});
    if (item.toLookUp)
        facts.push_back({ItemFacts::tr("Maintenance data revised"), ItemFacts::tr("what it asks for is to be looked up"), markInWords(*item.toLookUp, job, reg)});
    if (item.notApplicable)
        facts.push_back({ItemFacts::tr("Not applicable"), item.notApplicable->reason,
                         item.notApplicable->agreed ? ItemFacts::tr("%1; agreed by %2").arg(markInWords(item.notApplicable->mark, job, reg), markInWords(*item.notApplicable->agreed, job, reg)) : markInWords(item.notApplicable->mark, job, reg)});
    if (core::isConfirmedUndisturbed(item))
        facts.push_back({ItemFacts::tr("Undisturbed"), {}, markInWords(*item.undisturbed, job, reg)});
}

} // namespace

std::vector<Fact> recordedAbout(const core::InterfaceState &item, const core::JobState &job, const core::Register &reg)
{
    std::vector<Fact> facts;
    addStates(facts, item, job, reg);
    if (item.removal)
        addRemoval(facts, *item.removal, job, reg);
    if (item.restoration)
        addRestoration(facts, *item.restoration, job, reg);
    const bool isInPasses = item.listed.torque && core::passesOf(*item.listed.torque) > 1;
    for (const core::TorqueReading &reading : item.torque)
        facts.push_back({isInPasses ? ItemFacts::tr("Torque, fastener %1, pass %2").arg(reading.fastener).arg(reading.pass) : ItemFacts::tr("Torque, fastener %1").arg(reading.fastener), readingInWords(reading, item, reg), markInWords(reading.mark, job, reg)});
    if (item.bonding)
        facts.push_back({ItemFacts::tr("Bonding resistance"), bondReadingInWords(*item.bonding, reg), markInWords(item.bonding->mark, job, reg)});
    if (item.safetying)
        facts.push_back({ItemFacts::tr("Safetied"), item.safetying->method, markInWords(item.safetying->mark, job, reg)});
    if (item.leak)
        facts.push_back({ItemFacts::tr("Leak check"), leakInWords(*item.leak), markInWords(item.leak->mark, job, reg)});
    if (item.disturbed)
        facts.push_back({ItemFacts::tr("Disturbed"), {}, markInWords(*item.disturbed, job, reg)});
    if (item.rejection)
        facts.push_back({ItemFacts::tr("Rejected"), item.rejection->reason, markInWords(item.rejection->mark, job, reg)});
    if (item.twinsVerified)
        facts.push_back({ItemFacts::tr("Twins verified"), {}, markInWords(*item.twinsVerified, job, reg)});
    for (const core::Mark &mark : item.acceptances) {
        const core::Reinspection *own = core::reinspectionBehind(item, mark);
        facts.push_back({own ? ItemFacts::tr("OWN WORK inspected again") : ItemFacts::tr("Inspected and accepted"),
                         own ? ItemFacts::tr("%1 Allowed by %2.").arg(own->cause, reg.nameOf(own->approver)) : QString(), markInWords(mark, job, reg)});
    }
    return facts;
}

std::vector<Fact> listedAbout(const core::InterfaceState &item, const core::Kinds &kinds)
{
    const core::Listing &listed = item.listed;
    std::vector<Fact> facts;
    const auto add = [&](const QString &title, const QString &value) {
        if (!value.isEmpty())
            facts.push_back({title, value, {}});
    };
    add(ItemFacts::tr("Kind"), kinds.nameOf(listed.kind));
    add(ItemFacts::tr("Zone"), listed.zone);
    if (listed.torque) {
        add(ItemFacts::tr("Torque"), ItemFacts::tr("%1 to %2, fasteners: %3").arg(listed.torque->min.value().text(), listed.torque->max.text()).arg(listed.torque->fasteners));
        add(ItemFacts::tr("Tightening"), tighteningInWords(*listed.torque));
    }
    if (listed.bondingMax)
        add(ItemFacts::tr("Bonding"), bondingInWords(listed));
    if (listed.leak)
        add(ItemFacts::tr("Leak, at most"), leakLimitInWords(*listed.leak));
    add(ItemFacts::tr("New seal"), listed.sealPart);
    add(ItemFacts::tr("Hardware"), hardwareInWords(listed.hardware));
    add(ItemFacts::tr("Safetying"), listed.safetying);
    if (!listed.aircraftHalf.isEmpty() || !listed.unitHalf.isEmpty())
        add(ItemFacts::tr("Halves"), ItemFacts::tr("%1 to %2", "two halves").arg(listed.aircraftHalf, listed.unitHalf));
    if (listed.inspections > 1)
        add(ItemFacts::tr("Inspections"), ItemFacts::tr("%1, by different persons").arg(listed.inspections));
    add(ItemFacts::tr("Look-alikes"), listed.twinGroup);
    QStringList inFront;
    for (const core::InterfaceId &id : listed.access)
        inFront << id.text();
    add(ItemFacts::tr("Off before it"), inFront.join(QStringLiteral(", ")));
    QStringList dependsOn;
    for (const core::InterfaceId &id : listed.dependsOn)
        dependsOn << id.text();
    add(ItemFacts::tr("Depends on"), dependsOn.join(QStringLiteral(", ")));
    add(ItemFacts::tr("Reference"), listed.reference);
    add(ItemFacts::tr("Note"), listed.note);
    return facts;
}

std::vector<Shown> requirementsOf(const core::InterfaceState &item)
{
    std::vector<Shown> all;
    for (const core::Requirement &requirement : core::requirements()) {
        if (!core::asksFor(item.listed, requirement.name))
            continue;
        const auto missing = item.restoration ? requirement.missing(item) : std::optional(ItemFacts::tr("Asked for once it is joined again."));
        all.push_back({QCoreApplication::translate("Requirement", requirement.title), !missing, missing.value_or(QString())});
    }
    return all;
}

} // namespace desktop
