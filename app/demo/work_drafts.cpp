// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/work_drafts.hpp"

#include <QCoreApplication>

#include <set>

#include "app/demo/readings.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/hardware_of.hpp"
#include "core/job/leak_reading.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;

void setUnlessEmpty(Object &body, const QString &name, const QString &text)
{
    if (!text.isEmpty())
        body.set(name, text);
}

void addHelpersAndWords(Object &body, const Step &step)
{
    if (!step.helpers.empty())
        body.set(u"helpers"_s, core::json::arrayOf(step.helpers));
    setUnlessEmpty(body, u"remarks"_s, step.words);
}

/// One batch a part, as a store gives them out.
QString batchOf(const core::JobState &job, const QString &sealPart)
{
    std::set<QString> parts;
    for (const core::InterfaceState &item : job.items)
        parts.insert(item.listed.sealPart);
    return u"B-%1"_s.arg(4100 + 7 * std::distance(parts.begin(), parts.find(sealPart)));
}

/// All of it came off.
core::json::Array hardwareOff(const core::Listing &listed)
{
    core::json::Array lines;
    for (const core::HardwareRemoved &line : core::likelyRemoved(listed))
        lines.emplace_back(Object{{u"part"_s, line.part}, {u"quantity"_s, line.quantity}});
    return lines;
}

/// What is renewed is of one batch a part.
core::json::Array hardwareOn(const core::InterfaceState &item)
{
    core::json::Array lines;
    for (const core::HardwareUse &one : core::likelyUse(item)) {
        Object line{{u"part"_s, one.part}, {u"reused"_s, one.reused}, {u"renewed"_s, one.renewed}, {u"scrapped"_s, one.scrapped}};
        if (one.renewed > 0)
            line.set(u"batch"_s, u"B-"_s + one.part.section(u'-', 1));
        lines.emplace_back(std::move(line));
    }
    return lines;
}

Object joinBody(const core::JobState &job, const core::InterfaceState &item)
{
    const core::Listing &listed = item.listed;
    Object body{{u"blanks_removed"_s, core::blanksToComeOut(job, item, core::End::Aircraft)}};
    if (const qint64 onUnit = core::blanksToComeOut(job, item, core::End::Unit); onUnit > 0)
        body.set(u"unit_blanks_removed"_s, onUnit);
    setUnlessEmpty(body, u"tag_recovered"_s, item.removal ? item.removal->tag : QString());
    if (core::asksFor(listed, u"mate")) {
        body.set(u"aircraft_half"_s, listed.aircraftHalf);
        body.set(u"unit_half"_s, listed.unitHalf);
    }
    if (core::asksFor(listed, u"seal")) {
        body.set(u"seal_part"_s, listed.sealPart);
        body.set(u"seal_batch"_s, batchOf(job, listed.sealPart));
    }
    if (!listed.hardware.empty())
        body.set(u"hardware"_s, hardwareOn(item));
    return body;
}

Reader readerOf(const Play &play) { return {play.session.reg(), play.state().facts, play.day}; }

Drafts torqueOn(const Play &play, const Step &step, const core::InterfaceState &item, const std::vector<core::TorqueStep> &steps)
{
    const auto adapter = core::Quantity::read(step.choice, core::Dimension::Length);
    std::vector<core::Draft> drafts;
    for (const core::TorqueStep &one : steps) {
        auto body = torqueReading(*item.listed.torque, one, adapter ? std::optional(*adapter) : std::nullopt, readerOf(play));
        if (!body)
            return core::failure(body.error());
        if (!step.helpers.empty())
            body->set(u"helpers"_s, core::json::arrayOf(step.helpers));
        drafts.push_back(draft(step.who, u"torque.applied"_s, item.listed.id.text(), *std::move(body)));
    }
    return drafts;
}

Drafts secureDrafts(const Play &play, const Step &step, const core::InterfaceState &item)
{
    const QString id = item.listed.id.text();
    auto drafts = torqueOn(play, step, item, core::asksFor(item.listed, u"torque") ? core::torqueStepsLeft(item) : std::vector<core::TorqueStep>());
    if (!drafts)
        return drafts;
    if (core::asksFor(item.listed, u"bonding") && item.listed.bondingMax) {
        auto body = bondingReading(item.listed, item.listedBy.seq, readerOf(play));
        if (!body)
            return core::failure(body.error());
        drafts->push_back(draft(step.who, u"bonding.measured"_s, id, *std::move(body)));
    }
    if (core::asksFor(item.listed, u"safetying"))
        drafts->push_back(draft(step.who, u"safetying.applied"_s, id, {{u"method"_s, item.listed.safetying}}));
    return drafts;
}

/// Drafts of each item that the step names, one after the other.
template <class DraftsOfItem>
Drafts forEachItem(const Play &play, const Step &step, DraftsOfItem draftsOfItem)
{
    std::vector<core::Draft> all;
    for (const QString &id : step.what) {
        const auto item = itemOf(play, id);
        if (!item)
            return core::failure(item.error());
        Drafts drafts = draftsOfItem(**item);
        if (!drafts)
            return drafts;
        std::move(drafts->begin(), drafts->end(), std::back_inserter(all));
    }
    return all;
}

} // namespace

core::Result<const core::InterfaceState *> itemOf(const Play &play, const QString &id)
{
    const auto name = core::InterfaceId::parse(id);
    const core::InterfaceState *item = name ? play.state().item(*name) : nullptr;
    if (!item)
        return core::failure(core::ErrorCode::NotFound, QCoreApplication::translate("Demo", "The list has no interface %1.").arg(id));
    return item;
}

Drafts undoDrafts(const Play &play, const Step &step)
{
    const std::vector<QString> tags = core::nextTags(play.state(), step.what.size());
    std::size_t next = 0;
    return forEachItem(play, step, [&](const core::InterfaceState &item) -> Drafts {
        Object body{{u"tag"_s, tags[next++]},
                    {u"blanks_fitted"_s, core::asksFor(item.listed, u"blanks") ? 1 : 0},
                    {u"as_found"_s, step.choice.isEmpty() ? u"sound"_s : step.choice}};
        if (core::asksFor(item.listed, u"blanks"))
            body.set(u"unit_blanks_fitted"_s, 1);
        if (!item.listed.hardware.empty())
            body.set(u"hardware_removed"_s, hardwareOff(item.listed));
        addHelpersAndWords(body, step);
        return std::vector{draft(step.who, u"interface.disconnected"_s, item.listed.id.text(), std::move(body))};
    });
}

Drafts joinDrafts(const Play &play, const Step &step)
{
    return forEachItem(play, step, [&](const core::InterfaceState &item) -> Drafts {
        Object body = joinBody(play.state(), item);
        addHelpersAndWords(body, step);
        return std::vector{draft(step.who, u"interface.reconnected"_s, item.listed.id.text(), std::move(body))};
    });
}

Drafts secureDrafts(const Play &play, const Step &step)
{
    return forEachItem(play, step, [&](const core::InterfaceState &item) { return secureDrafts(play, step, item); });
}

Drafts leakDrafts(const Play &play, const Step &step)
{
    return forEachItem(play, step, [&](const core::InterfaceState &item) -> Drafts {
        Object body{{u"how"_s, step.words}};
        const auto &limit = item.listed.leak;
        if (limit && !limit->worstClass.isEmpty())
            core::setDryLeak(body, play.state().facts.leakScheme);
        if (limit && limit->rate)
            body.set(u"rate"_s, u"0 "_s + limit->rate->unit());
        return std::vector{draft(step.who, u"leak.checked"_s, item.listed.id.text(), std::move(body))};
    });
}

Drafts torqueDrafts(const Play &play, const Step &step)
{
    std::vector<core::TorqueStep> steps;
    for (const QString &number : step.choice.split(u' ', Qt::SkipEmptyParts))
        steps.push_back({1, number.toLongLong()});
    return forEachItem(play, step, [&](const core::InterfaceState &item) { return torqueOn(play, step, item, steps); });
}

} // namespace demo
