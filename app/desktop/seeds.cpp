// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/seeds.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/desktop/seed_help.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/hardware_of.hpp"
#include "core/job/leak_reading.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/photo_marks.hpp"
#include "core/job/reached.hpp"
#include "core/job/torque_plan.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"

namespace desktop::seeds {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;

/// The first tool in calibration whose usable range holds the value; so a torque wrench is not offered for ohms.
std::optional<core::ToolId> toolFor(const Situation &s, const core::Quantity &value)
{
    for (const auto &[id, tool] : s.reg.tools) {
        if (!tool.withdrawn && tool.rangeMin && tool.rangeMax && value >= *tool.rangeMin && value <= *tool.rangeMax
            && core::calibrationOn(tool, s.now.utcDate()))
            return id;
    }
    return std::nullopt;
}

void setReading(Seed &seed, const Situation &s, const core::Quantity &likely)
{
    seed.body.set(u"unit"_s, likely.unit());
    if (const auto tool = toolFor(s, likely))
        seed.body.set(u"tool"_s, tool->text());
    seed.probe.set(u"value"_s, likely.value().text());
}

/// The parts stand there; their numbers are counted in the hand, and so are typed.
void setHardwareOff(Seed &seed, const core::InterfaceState &item)
{
    core::json::Array parts;
    core::json::Array likely;
    for (const core::HardwareRemoved &line : core::likelyRemoved(item.listed)) {
        parts.emplace_back(Object{{u"part"_s, line.part}});
        likely.emplace_back(Object{{u"part"_s, line.part}, {u"quantity"_s, line.quantity}});
    }
    if (parts.empty())
        return;
    seed.body.set(u"hardware_removed"_s, std::move(parts));
    seed.probe.set(u"hardware_removed"_s, std::move(likely));
}

void setHardwareOn(Seed &seed, const core::InterfaceState &item)
{
    core::json::Array parts;
    core::json::Array likely;
    for (const core::HardwareUse &one : core::likelyUse(item)) {
        parts.emplace_back(Object{{u"part"_s, one.part}});
        likely.emplace_back(Object{{u"part"_s, one.part}, {u"reused"_s, one.reused}, {u"renewed"_s, one.renewed}, {u"scrapped"_s, one.scrapped}, {u"batch"_s, text("batch")}});
    }
    if (parts.empty())
        return;
    seed.body.set(u"hardware"_s, std::move(parts));
    seed.probe.set(u"hardware"_s, std::move(likely));
}

/// One pass at a time: what comes next in it; all of the first where another's half done work is begun again.
std::vector<core::TorqueStep> torqueStepsFor(const core::InterfaceState &item, const Situation &s)
{
    const auto &spec = item.listed.torque;
    if (!spec)
        return {{1, 1}}; // so that the rules say why not
    const bool again = s.person && core::isHalfDoneByAnother(item, *s.person);
    std::vector<core::TorqueStep> steps = again ? core::torqueSteps(*spec) : core::torqueStepsLeft(item);
    if (steps.empty())
        return {core::torqueSteps(*spec).front()};
    std::erase_if(steps, [pass = steps.front().pass](const core::TorqueStep &step) { return step.pass != pass; });
    return steps;
}

/// A torque as the list gives it, in the unit in which it does.
core::Quantity ofBand(const core::Rational &torque, const core::TorqueSpec &spec)
{
    const core::Unit &unit = *core::findUnit(spec.min.unit());
    return *core::Quantity::parse(core::inUnit(torque, unit).text(6), unit.symbol);
}

/// A tool that is set shows one of its marks; so does the reading with which the rules are asked.
void probeAsSet(Seed &seed, const core::TorqueSpec &spec, const Situation &s, const core::json::Object &likely)
{
    const auto id = core::ToolId::parse(seed.body.text(u"tool"));
    const core::Tool *tool = id ? s.reg.tool(*id) : nullptr;
    if (!tool || tool->torqueType != core::TorqueToolType::Setting)
        return;
    const core::TorquePlan plan = core::torquePlan(spec, s.job.facts, tool, s.now.utcDate(), likely);
    const auto setting = plan.scale ? core::measure::settingFor(plan.band, plan.lever, *plan.scale) : tl::unexpected<QString>(QString());
    if (!setting)
        return;
    seed.body.set(u"unit"_s, setting->set.unit());
    seed.probe.set(u"value"_s, setting->set.value().text());
}

Seed torqueSeed(const core::InterfaceState &item, const core::TorqueStep &step, const Situation &s)
{
    Seed seed{item.listed.id.text(), {{u"fastener"_s, step.fastener}}, {}, QCoreApplication::translate("Seed", "fastener %1").arg(step.fastener)};
    const auto &spec = item.listed.torque;
    if (!spec)
        return seed;
    const bool isInPasses = core::passesOf(*spec) > 1;
    if (isInPasses)
        seed.body.set(u"pass"_s, step.pass);
    core::json::Object likely = seed.body;
    if (spec->prevailing != core::Prevailing::None) {
        const QString drag = spec->prevailingMin ? spec->prevailingMin->text() : u"0 "_s + spec->min.unit();
        seed.probe.set(u"prevailing"_s, drag);
        seed.probe.set(u"nut"_s, u"new"_s);
        likely.set(u"prevailing"_s, drag);
    }
    if (spec->turn && step.pass == core::passesOf(*spec))
        seed.probe.set(u"turn"_s, spec->turn->least.text() + u" °"_s);
    const core::TorquePlan plan = core::torquePlan(*spec, s.job.facts, nullptr, s.now.utcDate(), likely);
    setReading(seed, s, ofBand((plan.band.least + plan.band.most) / 2, *spec));
    probeAsSet(seed, *spec, s, likely);
    return seed;
}

} // namespace

std::vector<Seed> disconnect(const Situation &s)
{
    const std::vector<QString> tags = core::nextTags(s.job, s.items.size());
    std::size_t next = 0;
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        seed.body = {{u"tag"_s, tags[next++]}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}};
        setHardwareOff(seed, item);
    });
}

std::vector<Seed> foundOpen(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &, Seed &seed) {
        seed.body = {{u"tag"_s, core::nextTag(s.job)}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}, {u"finding"_s, core::nextFinding(s.job)}};
        seed.probe = {{u"evidence"_s, text("seen")}};
    });
}

std::vector<Seed> reconnect(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        const core::Listing &listed = item.listed;
        if (item.removal && !item.removal->tag.isEmpty())
            seed.probe.set(u"tag_recovered"_s, item.removal->tag); // the tag in the hand is read, and tells where the hand is
        // Blanks that were fitted are counted in the hand, so their number is typed.
        const qint64 fitted = core::blanksToComeOut(s.job, item, core::End::Aircraft);
        (fitted == 0 ? seed.body : seed.probe).set(u"blanks_removed"_s, fitted);
        if (const qint64 onUnit = core::blanksToComeOut(s.job, item, core::End::Unit); onUnit > 0)
            seed.probe.set(u"unit_blanks_removed"_s, onUnit);
        if (core::asksFor(listed, "mate"_L1)) {
            seed.probe.set(u"aircraft_half"_s, listed.aircraftHalf);
            seed.probe.set(u"unit_half"_s, listed.unitHalf);
        }
        if (core::asksFor(listed, "seal"_L1)) {
            seed.body.set(u"seal_part"_s, listed.sealPart);
            seed.probe.set(u"seal_batch"_s, text("batch"));
        }
        setHardwareOn(seed, item);
    });
}

std::vector<Seed> torque(const Situation &s)
{
    std::vector<Seed> all;
    for (const core::InterfaceId &id : s.items) {
        const core::InterfaceState *item = s.job.item(id);
        if (!item)
            continue;
        for (const core::TorqueStep &step : torqueStepsFor(*item, s))
            all.push_back(torqueSeed(*item, step, s));
    }
    return all;
}

std::vector<Seed> takeOverTorque(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        seed.body = {{u"fasteners"_s, static_cast<qint64>(item.torque.size())}};
        seed.probe = {{u"how_checked"_s, text("checked")}};
    });
}

std::vector<Seed> bonding(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        if (item.listed.bondingMax)
            setReading(seed, s, *item.listed.bondingMax);
        seed.inUnitOfReading = {"second_reading"_L1, "lead_zero"_L1}; // the same meter shows them
        if (item.listed.bondingMax)
            seed.probe.set(u"lead_zero"_s, u"0 "_s + item.listed.bondingMax->unit());
        if (item.listed.bondingMax && item.listed.bondingReadings > 1)
            seed.probe.set(u"second_reading"_s, item.listed.bondingMax->text());
    });
}

std::vector<Seed> leak(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        seed.probe = {{u"how"_s, text("watched")}};
        if (item.listed.leak && !item.listed.leak->worstClass.isEmpty())
            core::setDryLeak(seed.probe, s.job.facts.leakScheme);
        if (item.listed.leak && item.listed.leak->rate)
            seed.probe.set(u"rate"_s, u"0 "_s + item.listed.leak->rate->unit());
    });
}

std::vector<Seed> lift(const Situation &)
{
    // More than any weight record gives a unit, on far stronger gear, to ask whether a lift may be planned at all.
    return {{{}, {}, {{u"unit_weight"_s, u"1000000 kg"_s}, {u"rigging_weight"_s, u"1 kg"_s}, {u"hoist_limit"_s, u"100000000 kg"_s}, {u"sling_limit"_s, u"100000000 kg"_s},
                      {u"hoist_due"_s, u"9999-12-31"_s}, {u"sling_due"_s, u"9999-12-31"_s}, {u"points"_s, 2}, {u"legs"_s, 1}, {u"angle_from_horizontal"_s, u"90 °"_s},
                      {u"span"_s, u"2 m"_s}, {u"centre"_s, u"1 m"_s}}}};
}

std::vector<Seed> servicing(const Situation &) { return {{{}, {}, {{u"quantity"_s, u"1 L"_s}, {u"least"_s, u"1 L"_s}, {u"most"_s, u"1 L"_s}}}}; }

std::vector<Seed> weight(const Situation &)
{
    return {{{}, {}, {{u"outgoing_weight"_s, u"1 kg"_s}, {u"incoming_weight"_s, u"1 kg"_s}, {u"aircraft_weight"_s, u"100 kg"_s}, {u"aircraft_centre"_s, u"1 m"_s}}}};
}

std::vector<Seed> safety(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        if (!item.listed.safetying.isEmpty())
            seed.body = {{u"method"_s, item.listed.safetying}};
    });
}

std::vector<Seed> applyTemporary(const Situation &s) { return {{core::nextTemporary(s.job), {}, {{u"sort"_s, u"isolation"_s}, {u"name"_s, text("what")}}}}; }

std::vector<Seed> removeTemporary(const Situation &s)
{
    const auto id = core::TemporaryId::parse(s.subject.value_or(QString()));
    const core::TemporaryItem *item = id ? s.job.temporary(*id) : nullptr;
    Seed seed{s.subject, {}, {}};
    // What is somebody else's lockout asks for a reason; the rules say whose word it takes.
    if (item && core::isLockout(item->sort) && s.person && *s.person != item->owner)
        seed.probe.set(u"reason"_s, text("reason"));
    return {seed};
}

std::vector<Seed> handOverTemporary(const Situation &s)
{
    Seed seed{s.subject, {}, {}};
    const auto other = std::find_if(s.job.crew.begin(), s.job.crew.end(), [&](const core::PersonId &one) { return one != s.person; });
    if (other != s.job.crew.end())
        seed.probe.set(u"to"_s, other->text());
    return {seed};
}

// A plate is read, not taken over: the serial number is typed.
std::vector<Seed> unitRemoved(const Situation &s) { return {{{}, {}, {{u"serial"_s, s.job.facts.outgoingSerial}, {u"tag"_s, text("tag")}, {u"openings_blanked"_s, core::blanksOnTheUnit(s.job)}}}}; }
std::vector<Seed> unitReceived(const Situation &s) { return {{{}, {}, {{u"serial"_s, s.job.facts.incomingSerial}, {u"certificate"_s, text("certificate")}, {u"configuration"_s, text("same")}}}}; }
std::vector<Seed> unitPositioned(const Situation &s) { return {{{}, {}, {{u"serial"_s, core::serialToPutUp(s.job)}, {u"shipping_blanks_removed"_s, core::blanksOfTheUnitToPutUp(s.job)}}}}; }

std::vector<Seed> listAccessory(const Situation &s) { return {{core::nextAccessory(s.job), {}, {{u"name"_s, text("name")}, {u"part"_s, text("part")}, {u"serial"_s, text("serial")}}}}; }

std::vector<Seed> placeAccessory(const Situation &s)
{
    const auto id = core::AccessoryId::parse(s.subject.value_or(QString()));
    const core::Accessory *accessory = id ? s.job.accessory(*id) : nullptr;
    return {{s.subject, {}, {{u"serial"_s, accessory ? accessory->serial : QString()}, {u"reason"_s, text("reason")}}}};
}

std::vector<Seed> reverse(const Situation &) { return {{{}, {}, {{u"reason"_s, text("reason")}}}}; }

std::vector<Seed> recordTest(const Situation &s)
{
    Seed seed{core::nextTest(s.job), {}, {{u"what"_s, u"ground run"_s}, {u"name"_s, text("unit")}, {u"result"_s, u"passed"_s}, {u"reference"_s, text("task")}}};
    // Whether a test may be recorded at all is asked of one that covers what is restored.
    std::vector<QString> restored;
    for (const core::InterfaceState &item : s.job.items) {
        if (core::restoredWith(item))
            restored.push_back(item.listed.id.text());
    }
    seed.probe.set(u"covers"_s, core::json::arrayOf(restored));
    return {seed};
}

std::vector<Seed> issueTags(const Situation &s)
{
    qint64 first = 1;
    for (const core::TagBlock &block : s.job.tags.blocks)
        first = std::max(first, block.last + 1);
    // To ask the rules, one that nothing has; the numbers are read off the tags, and so are typed.
    while (s.job.tagAt.contains(QString::number(first)))
        ++first;
    return {{{}, {}, {{u"first"_s, first}, {u"last"_s, first}}}};
}

std::vector<Seed> returnTags(const Situation &s)
{
    Seed seed;
    for (const core::TagBlock &block : s.job.tags.blocks) {
        if (core::blockText(block) != s.subject)
            continue;
        seed.body = {{u"first"_s, block.first}, {u"last"_s, block.last}};
        seed.probe = {{u"counted"_s, block.size() - core::lostOf(s.job.tags, block)}};
    }
    return {seed};
}

std::vector<Seed> replaceTag(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &, Seed &seed) {
        seed.body = {{u"tag"_s, core::nextTag(s.job)}};
        seed.probe = {{u"why"_s, text("why")}};
    });
}

std::vector<Seed> issueTool(const Situation &s)
{
    // To ask the rules, a marking that no tool has; the sheet asks for the one on the tool.
    QString marking = u"?"_s;
    while (s.job.tools.last(*core::ToolId::parse(marking)) || s.reg.tool(*core::ToolId::parse(marking)))
        marking += u'?';
    Seed seed{marking, {}, {{u"sort"_s, u"hand tool"_s}, {u"name"_s, text("what")}}};
    if (s.person) // most people fetch their own
        seed.body.set(u"holder"_s, s.person->text());
    return {seed};
}

std::vector<Seed> returnTool(const Situation &s)
{
    const auto marking = core::ToolId::parse(s.subject.value_or(QString()));
    const core::JobTool *tool = marking ? s.job.tools.last(*marking) : nullptr;
    Seed seed{s.subject, {}, {}};
    if (tool && tool->sort == core::JobToolSort::Kit)
        seed.probe.set(u"pieces"_s, tool->pieces);
    return {seed};
}

std::vector<Seed> countTools(const Situation &s)
{
    Seed seed;
    for (const core::JobTool *tool : s.job.tools.out())
        seed.statements.push_back(tool->marking.text());
    // Where none is out, that is what was counted.
    (seed.statements.empty() ? seed.body : seed.probe).set(u"tools"_s, core::json::arrayOf(seed.statements));
    return {seed};
}

std::vector<Seed> missTool(const Situation &s) { return {{s.subject, {{u"finding"_s, core::nextFinding(s.job)}}, {{u"description"_s, text("seen")}}}}; }

std::vector<Seed> passHold(const Situation &s)
{
    const auto id = core::HoldId::parse(s.subject.value_or(QString()));
    const core::HoldPoint *hold = id ? s.job.hold(*id) : nullptr;
    Seed seed{s.subject, {}, {}};
    if (hold && !hold->statements.empty()) {
        seed.statements = hold->statements;
        seed.probe.set(u"confirmed"_s, core::json::arrayOf(hold->statements));
    }
    return {seed};
}

std::vector<Seed> accept(const Situation &s) { return forEachItem(s, [](const core::InterfaceState &, Seed &) {}); }

std::vector<Seed> reject(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &, Seed &seed) {
        seed.body = {{u"back_to"_s, u"reconnected"_s}};
        seed.probe = {{u"reason"_s, text("reason")}};
    });
}

std::vector<Seed> disturb(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &, Seed &seed) { seed.probe = {{u"reason"_s, text("reason")}}; });
}

std::vector<Seed> photo(const Situation &s)
{
    return forEachItem(s, [](const core::InterfaceState &item, Seed &seed) {
        seed.body = {{u"moment"_s, item.restoration ? u"after"_s : u"before"_s}};
        seed.probe = {{u"sha256"_s, core::Digest().hex()}, {u"media_type"_s, u"image/png"_s}, {u"caption"_s, text("caption")}};
        seed.asked = {"caption"_L1, "moment"_L1, "finding"_L1}; // the rest is the photo's own
    });
}

std::vector<Seed> markPhoto(const Situation &s)
{
    return forEachItem(s, [&](const core::InterfaceState &item, Seed &seed) {
        const auto digest = core::Digest::parse(s.subject.value_or(QString()));
        const auto photo = std::find_if(item.photos.begin(), item.photos.end(), [&](const core::Photo &one) { return digest && one.digest == *digest; });
        seed.body = {{u"sha256"_s, s.subject.value_or(QString())}};
        if (photo != item.photos.end())
            seed.probe = {{u"marks"_s, core::linesOf({{photo->mark, core::nextMarkNumber(photo->marks), 0, 0, u"seen"_s}})}};
    });
}

std::vector<Seed> raiseFinding(const Situation &s)
{
    Seed seed{core::nextFinding(s.job), {}, {{u"description"_s, text("seen")}}};
    if (!s.items.empty())
        seed.body.set(u"interface"_s, s.items.front().text());
    return {seed};
}

std::vector<Seed> closeFinding(const Situation &s)
{
    return {{s.subject, {{u"disposition"_s, u"rectified"_s}}, {{u"authority"_s, text("reference")}}}};
}

std::vector<Seed> handOver(const Situation &s)
{
    Seed seed{{}, {{u"open"_s, core::openAtHandover(s.job)}}, {}};
    // To ask the rules: anybody who may lead, other than the one who hands over.
    for (const auto &[id, person] : s.reg.people) {
        const bool mayLead = std::any_of(s.reg.authorisations.begin(), s.reg.authorisations.end(), [&id = id](const auto &at) {
            return at.second.person == id && at.second.authority == core::Authority::Lead && !at.second.withdrawn;
        });
        if (mayLead && id != s.job.lead)
            seed.probe.set(u"to"_s, id.text());
    }
    return {seed};
}

std::vector<Seed> acceptHandover(const Situation &s)
{
    const core::Handover *pending = s.job.pendingHandover();
    Seed seed{{}, {{u"given"_s, pending ? pending->given.seq : 0}}, {}};
    if (pending)
        seed.answers = pending->given.seq;
    return {seed};
}

std::vector<Seed> refuseHandover(const Situation &s)
{
    std::vector<Seed> seeds = acceptHandover(s);
    seeds.front().probe = {{u"reason"_s, text("reason")}};
    return seeds;
}

std::vector<Seed> setFollowUp(const Situation &s)
{
    Seed seed{{}, {}, {{u"what"_s, text("what")}, {u"due"_s, u"9999-12-31"_s}, {u"reference"_s, text("task")}}};
    if (!s.items.empty())
        seed.body.set(u"interface"_s, s.items.front().text());
    return {seed};
}

std::vector<Seed> followUpDone(const Situation &s)
{
    return {{{}, {{u"entry"_s, s.subject.value_or(QString()).toLongLong()}}, {{u"how"_s, text("how")}}}};
}

std::vector<Seed> strike(const Situation &s)
{
    return {{{}, {{u"entry"_s, s.subject.value_or(QString()).toLongLong()}}, {{u"reason"_s, text("reason")}}}};
}

std::vector<Seed> closeJob(const Situation &)
{
    return {{{}, {{u"statement"_s, u"Every interface of this job is restored and inspected, or stands as undisturbed, not applicable or given over, as the approved maintenance data asks."_s}}, {}}};
}

} // namespace desktop::seeds
