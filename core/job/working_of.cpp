// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/working_of.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/figures.hpp"
#include "core/job/leak_reading.hpp"
#include "core/job/torque_plan.hpp"
#include "core/measure/servicing.hpp"
#include "core/rules/measuring.hpp"
#include "core/rules/tightening.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using measure::Working;
using Worked = std::optional<Working>;

/// An act's part in a calculation.
struct Asked {
    const JobState &job;
    const Register &reg;
    const Draft &draft;
    const InterfaceState *item;

    QString text(QStringView name) const { return draft.body.text(name); }
};

Worked orWhy(const measure::Measured<Working> &working)
{
    if (working)
        return *working;
    return Working{{}, working.error(), {}, {}, {}};
}

/// Two calculations as one, the answer of the second.
Working joined(Working first, const Working &second)
{
    first.steps.insert(first.steps.end(), second.steps.begin(), second.steps.end());
    first.answer = second.answer;
    first.notes += second.notes;
    for (const QString &source : second.sources) {
        if (!first.sources.contains(source))
            first.sources << source;
    }
    return first;
}

/// Why no wrench is set yet: it may not be used today, the drag that is added is still to be measured, an adapter is told by half.
std::optional<QString> whyNoSetting(const Asked &asked)
{
    const Case now{asked.job, asked.reg, asked.draft, asked.item};
    auto refusal = asked.text(u"tool").isEmpty() ? std::nullopt : rules::toolIsInCalibration(now);
    if (!refusal)
        refusal = rules::dragIsMeasured(now);
    if (!refusal && isLeverHalfTold(asked.draft.body))
        refusal = rules::adapterIsTold(now);
    return refusal ? std::optional(refusal->sentence) : std::nullopt;
}

Worked torqueAsAsked(const Asked &asked, const TorquePlan &plan)
{
    Worked setting;
    // Without a graduation a wrench may still be read: only with an adapter is the setting worth a word.
    if (plan.scale && (plan.lever || plan.scale->graduation)) {
        const auto found = measure::settingFor(plan.band, plan.lever, *plan.scale);
        setting = found ? found->working : Working{{}, found.error(), {}, {}, {}};
        if (found)
            setting->offer = measure::Offer{u"setting"_s, found->set.text()};
    }
    const auto value = Quantity::parse(asked.text(u"value"), asked.text(u"unit"));
    if (!value || value->dimension() != Dimension::Torque)
        return setting ? setting : Working{{{QCoreApplication::translate("Measure", "Torque asked for"), {}, {}, plan.band.text()}}, plan.band.text(), {}, {}, {}};
    const auto judged = measure::judgeTorque(*value, plan.lever, plan.band, plan.deviation, plan.rule);
    if (!judged)
        return Working{{}, judged.error(), {}, {}, {}};
    return setting && plan.lever ? joined(*setting, judged->working) : judged->working;
}

Worked torque(const Asked &asked)
{
    if (!asked.item || !asked.item->listed.torque)
        return std::nullopt;
    if (const auto why = whyNoSetting(asked))
        return Working{{}, *why, {}, {}, {}};
    const auto id = ToolId::parse(asked.text(u"tool"));
    const TorquePlan plan = torquePlan(*asked.item->listed.torque, asked.job.facts, id ? asked.reg.tool(*id) : nullptr, dayOfWork(asked.draft.body, asked.draft.at), asked.draft.body);
    Worked worked = torqueAsAsked(asked, plan);
    const auto steps = plan.asked.steps();
    if (worked && !worked->steps.empty())
        worked->steps.insert(worked->steps.begin(), steps.begin(), steps.end());
    return worked;
}

/// Where the class follows from what was seen.
Worked leakByClass(const Asked &asked, const LeakLimit &limit)
{
    const measure::LeakScheme &scheme = asked.job.facts.leakScheme;
    const auto look = leakLookIn(asked.draft.body);
    if (limit.worstClass.isEmpty() || !scheme.hasSizes() || !look)
        return std::nullopt;
    return orWhy(measure::leakWorking(*look, limit.worstClass, scheme));
}

Worked leakByRate(const Asked &asked, const LeakLimit &limit)
{
    const json::Object &body = asked.draft.body;
    const auto rate = leakRateIn(body);
    if (!limit.rate || !rate)
        return std::nullopt;
    Working working = *orWhy(measure::rateWorking(*rate, *limit.rate, leakDropSizeIn(body, limit)));
    if (const auto own = Decimal::parse(asked.text(u"drops_per_ml")); own && !limit.dropsPerMillilitre && !working.steps.empty())
        working.notes << QCoreApplication::translate("Measure", "%1 drops to the millilitre is the checker's own number; the list has none.").arg(own->text());
    return working;
}

Worked leak(const Asked &asked)
{
    if (!asked.item || !asked.item->listed.leak)
        return std::nullopt;
    const Worked byClass = leakByClass(asked, *asked.item->listed.leak);
    const Worked byRate = leakByRate(asked, *asked.item->listed.leak);
    if (!byClass || !byRate)
        return byClass ? byClass : byRate;
    Working both = joined(*byClass, *byRate);
    both.answer = byClass->answer + u' ' + byRate->answer;
    return both;
}

Worked bonding(const Asked &asked)
{
    const auto reading = Quantity::parse(asked.text(u"value"), asked.text(u"unit"));
    const json::Object &body = asked.draft.body;
    if (!asked.item || !asked.item->listed.bondingMax || !reading || !body.contains(u"lead_zero"))
        return std::nullopt;
    return orWhy(measure::bondingWorking({*asked.item->listed.bondingMax, asked.item->listed.bondingComparison}, *reading, quantityIn(body, u"second_reading", Dimension::Resistance),
                                         quantityIn(body, u"lead_zero", Dimension::Resistance)));
}

Worked weight(const Asked &asked)
{
    const auto swap = swapIn(asked.draft.body);
    return swap ? orWhy(measure::weightChangeWorking(*swap)) : std::nullopt;
}

Worked lift(const Asked &asked)
{
    const auto plan = liftIn(asked.draft.body, asked.draft.at.utcDate());
    return plan ? Worked(measure::liftWorking(*plan)) : std::nullopt;
}

Worked servicing(const Asked &asked)
{
    const auto figure = servicingIn(asked.draft.body);
    return figure ? orWhy(measure::servicingWorking(figure->quantity, figure->least, figure->most)) : std::nullopt;
}

struct WorkingLine {
    QLatin1String kind;
    Worked (*work)(const Asked &);
};

constexpr WorkingLine lines[] = {
    {"torque.applied"_L1, &torque},
    {"bonding.measured"_L1, &bonding},
    {"leak.checked"_L1, &leak},
    {"lift.planned"_L1, &lift},
    {"servicing.recorded"_L1, &servicing},
    {"weight.recorded"_L1, &weight},
};

} // namespace

std::optional<measure::Working> workingOf(const JobState &job, const Register &reg, const Draft &draft)
{
    const auto line = std::find_if(std::begin(lines), std::end(lines), [&](const WorkingLine &one) { return one.kind == draft.kind; });
    if (line == std::end(lines))
        return std::nullopt;
    const auto id = InterfaceId::parse(draft.subject.value_or(QString()));
    return line->work({job, reg, draft, id ? job.item(*id) : nullptr});
}

} // namespace core
