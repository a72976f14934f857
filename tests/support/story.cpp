// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/story.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/admit.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/linked.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/photo_marks.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/list/interface_list.hpp"
#include "core/measure/torque_wrench.hpp"
#include "core/requirements/torque.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;

namespace story {

using core::json::Object;
using core::json::Value;

namespace {

struct Verb {
    QLatin1String word;
    QLatin1String kind;
};

constexpr Verb verbs[] = {
    {"lists"_L1, "interface.listed"_L1},       {"disconnects"_L1, "interface.disconnected"_L1}, {"finds-open"_L1, "interface.found_open"_L1},
    {"reconnects"_L1, "interface.reconnected"_L1}, {"disturbs"_L1, "interface.disturbed"_L1},   {"photographs"_L1, "photo.attached"_L1},
    {"marks"_L1, "photo.marked"_L1},
    {"torques"_L1, "torque.applied"_L1},       {"takes-over"_L1, "torque.taken_over"_L1},       {"measures"_L1, "bonding.measured"_L1},
    {"safeties"_L1, "safetying.applied"_L1},   {"accepts"_L1, "inspection.accepted"_L1},        {"rejects"_L1, "inspection.rejected"_L1},
    {"raises"_L1, "finding.raised"_L1},        {"clears"_L1, "finding.closed"_L1},              {"hands-over"_L1, "handover.given"_L1},
    {"takes-shift"_L1, "handover.accepted"_L1}, {"strikes"_L1, "entry.struck"_L1},               {"closes"_L1, "job.closed"_L1},
    {"opens"_L1, "job.opened"_L1},             {"checks"_L1, "leak.checked"_L1},
    {"applies"_L1, "temporary.applied"_L1},    {"removes"_L1, "temporary.removed"_L1},          {"gives"_L1, "temporary.handed_over"_L1},
    {"sets"_L1, "hold.set"_L1},                {"passes"_L1, "hold.passed"_L1},                 {"confirms-free"_L1, "walkround.free"_L1},
    {"takes-off"_L1, "unit.removed"_L1},       {"receives"_L1, "unit.received"_L1},              {"positions"_L1, "unit.positioned"_L1},
    {"refuses-shift"_L1, "handover.refused"_L1}, {"follows-up"_L1, "followup.set"_L1},           {"finishes"_L1, "followup.done"_L1},
    {"lists-accessory"_L1, "accessory.listed"_L1}, {"moves"_L1, "accessory.moved"_L1},             {"leaves"_L1, "accessory.left"_L1},
    {"gives-up"_L1, "job.reversed"_L1},
    {"tests"_L1, "test.recorded"_L1},
    {"finds-attached"_L1, "walkround.attached"_L1}, {"frees"_L1, "interface.freed"_L1},
    {"issues-tags"_L1, "tags.issued"_L1},      {"returns-tags"_L1, "tags.returned"_L1},         {"replaces-tag"_L1, "tag.lost"_L1},
    {"issues"_L1, "tool.issued"_L1},           {"returns"_L1, "tool.returned"_L1},              {"counts"_L1, "tool.counted"_L1},
    {"misses"_L1, "tool.missing"_L1},          {"misses-blank"_L1, "blank.missing"_L1},         {"exchanges-tag"_L1, "tag.exchanged"_L1},
    {"revises"_L1, "job.revised"_L1},          {"relists"_L1, "interface.relisted"_L1},         {"doubts"_L1, "time.doubted"_L1},
    {"states"_L1, "condition.stated"_L1},      {"settles"_L1, "condition.cleared"_L1},          {"stops"_L1, "work.stopped"_L1},
    {"resumes"_L1, "work.resumed"_L1},         {"logs"_L1, "interface.unlisted"_L1},            {"details"_L1, "interface.detailed"_L1},
    {"finds-undisturbed"_L1, "interface.undisturbed"_L1}, {"finds-inapplicable"_L1, "interface.not_applicable"_L1}, {"agrees"_L1, "interface.not_applicable_agreed"_L1},
    {"verifies"_L1, "twins.verified"_L1},      {"repeats"_L1, "inspection.repeated"_L1},
    {"links"_L1, "job.linked"_L1},             {"sends"_L1, "interface.sent"_L1},               {"takes-on"_L1, "interface.taken_on"_L1},
    {"plans"_L1, "lift.planned"_L1},           {"services"_L1, "servicing.recorded"_L1},        {"weighs"_L1, "weight.recorded"_L1},
};

QLatin1String kindOf(const QString &verb)
{
    for (const Verb &one : verbs) {
        if (one.word == verb)
            return one.kind;
    }
    qFatal("No such verb in a story: %s", qPrintable(verb));
}

/// Objects are written as JSON, without blanks; `_` stays what it is.
Value recordsOf(const QString &json)
{
    const auto read = core::json::parseObject(QByteArray("{\"records\":" + json.toUtf8() + '}'));
    if (!read)
        qFatal("No records in a story: %s", qPrintable(json));
    return *read->find(u"records");
}

Value valueOf(core::FieldType type, const QString &text)
{
    QStringList parts = text.split(u',', Qt::SkipEmptyParts);
    switch (type) {
    case core::FieldType::Integer: return text.toLongLong();
    case core::FieldType::Flag: return text == u"yes";
    case core::FieldType::Texts:
    case core::FieldType::Statements:
    case core::FieldType::People:
    case core::FieldType::Interfaces: return core::json::arrayOf({parts.begin(), parts.end()});
    default: return text;
    }
}

void setMember(Object &body, const core::Act &act, const QString &name, const QString &written)
{
    const QString text = QString(written).replace(u'_', u' ');
    for (const core::Field &field : act.fields) {
        if (field.name == name)
            return body.set(name, field.type == core::FieldType::Records ? recordsOf(written) : valueOf(field.type, text));
    }
    body.set(name, text);
}

/// What was counted as it came off: as listed.
Value hardwareOff(const std::vector<core::HardwareLine> &listed)
{
    core::json::Array lines;
    for (const core::HardwareLine &line : listed)
        lines.emplace_back(Object{{u"part"_s, line.part}, {u"quantity"_s, line.quantity}});
    return lines;
}

/// What may be used again is, as far as it came off; the rest is renewed.
Value hardwareOn(const core::InterfaceState &item)
{
    core::json::Array lines;
    for (const core::HardwareBalance &one : core::hardwareBalance(item.listed.hardware, item.removal->hardware, {})) {
        const qint64 reused = one.mustBeNew ? 0 : std::min(one.removed, one.required);
        Object line{{u"part"_s, one.part}, {u"reused"_s, reused}, {u"renewed"_s, one.required - reused}, {u"scrapped"_s, one.removed - reused}};
        if (one.required > reused)
            line.set(u"batch"_s, u"batch-9"_s);
        lines.emplace_back(std::move(line));
    }
    return lines;
}

Object disconnection(const core::JobState &job, const core::InterfaceState *item)
{
    Object body{{u"tag"_s, core::nextTag(job)}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}};
    if (item && !item->listed.hardware.empty())
        body.set(u"hardware_removed"_s, hardwareOff(item->listed.hardware));
    return body;
}

/// The block that is out.
Object tagsBack(const core::JobState &job)
{
    for (const core::TagBlock &block : job.tags.blocks) {
        if (!block.returned)
            return {{u"first"_s, block.first}, {u"last"_s, block.last}, {u"counted"_s, block.size() - core::lostOf(job.tags, block)}};
    }
    return {{u"first"_s, 1}, {u"last"_s, 20}, {u"counted"_s, 20}};
}

Object toolsCounted(const core::JobState &job)
{
    std::vector<QString> markings;
    for (const core::JobTool *tool : job.tools.out())
        markings.push_back(tool->marking.text());
    return {{u"tools"_s, core::json::arrayOf(markings)}};
}

Object reconnection(const core::JobState &job, const core::InterfaceState &item)
{
    Object body{{u"blanks_removed"_s, core::blanksToComeOut(job, item, core::End::Aircraft)}};
    if (const qint64 onUnit = core::blanksToComeOut(job, item, core::End::Unit); onUnit > 0)
        body.set(u"unit_blanks_removed"_s, onUnit);
    if (item.removal && !item.removal->tag.isEmpty())
        body.set(u"tag_recovered"_s, item.removal->tag);
    if (!item.listed.sealPart.isEmpty()) {
        body.set(u"seal_part"_s, item.listed.sealPart);
        body.set(u"seal_batch"_s, u"batch-5"_s);
    }
    if (item.removal && (!item.listed.hardware.empty() || !item.removal->hardware.empty()))
        body.set(u"hardware"_s, hardwareOn(item));
    if (!item.listed.aircraftHalf.isEmpty()) {
        body.set(u"aircraft_half"_s, item.listed.aircraftHalf);
        body.set(u"unit_half"_s, item.listed.unitHalf);
    }
    return body;
}

/// Both halves of each twin, as the list has them.
Object asListed(const core::JobState &job, const core::InterfaceState &item)
{
    std::vector<QString> aircraft;
    std::vector<QString> unit;
    for (const core::HalfPair &pair : core::listedPairs(job, item)) {
        aircraft.push_back(pair.first);
        unit.push_back(pair.second);
    }
    return {{u"aircraft_halves"_s, core::json::arrayOf(aircraft)}, {u"unit_halves"_s, core::json::arrayOf(unit)}};
}

/// The row as it is, and a reason.
Object relisting(const core::InterfaceState &item)
{
    Object body = core::bodyOf(item.listed);
    body.set(u"why"_s, u"AMM 71-00, revision 13"_s);
    return body;
}

/// What a careful technician would fill in.
Object careful(const QLatin1String kind, const core::JobState &job, const core::InterfaceState *item)
{
    if (kind == "interface.disconnected"_L1)
        return disconnection(job, item);
    if (kind == "interface.found_open"_L1)
        return {{u"tag"_s, core::nextTag(job)}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"loose"_s}, {u"finding"_s, core::nextFinding(job)}, {u"evidence"_s, u"hanging free"_s}};
    if (kind == "interface.reconnected"_L1 && item)
        return reconnection(job, *item);
    if (kind == "interface.listed"_L1)
        return {{u"name"_s, u"Item"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"left"_s}};
    if (kind == "interface.disturbed"_L1)
        return {{u"reason"_s, u"loosened for access"_s}};
    if (kind == "photo.attached"_L1)
        return {{u"sha256"_s, core::Digest::of("picture").hex()}, {u"media_type"_s, u"image/png"_s}, {u"moment"_s, u"before"_s}};
    if (kind == "photo.marked"_L1)
        return {{u"sha256"_s, core::Digest::of("picture").hex()},
                {u"marks"_s, core::json::Array{Object{{u"number"_s, core::nextMarkNumber(item && !item->photos.empty() ? item->photos.back().marks : std::vector<core::PhotoMark>())}, {u"across"_s, 500}, {u"down"_s, 250}, {u"what"_s, u"chafe mark"_s}}}}};
    if (kind == "torque.applied"_L1 && item && item->listed.torque)
        return {{u"value"_s, item->listed.torque->min.value().text()}, {u"unit"_s, item->listed.torque->min.unit()}, {u"tool"_s, u"TW1"_s}};
    if (kind == "torque.applied"_L1)
        return {{u"fastener"_s, 1}, {u"value"_s, u"20"_s}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW1"_s}};
    if (kind == "torque.taken_over"_L1 && item)
        return {{u"fasteners"_s, static_cast<qint64>(item->torque.size())}, {u"how_checked"_s, u"marks seen, both"_s}};
    if (kind == "bonding.measured"_L1)
        return {{u"value"_s, u"1.5"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}, {u"lead_zero"_s, u"0.02 mΩ"_s}};
    if (kind == "leak.checked"_L1)
        return item && item->listed.leak && item->listed.leak->rate ? Object{{u"how"_s, u"engine run, 30 min watched"_s}, {u"rate"_s, u"0 mL/min"_s}} : Object{{u"how"_s, u"engine run, 30 min watched"_s}};
    if (kind == "lift.planned"_L1)
        return {{u"unit"_s, u"outgoing"_s}, {u"unit_weight"_s, u"500 kg"_s}, {u"rigging_weight"_s, u"40 kg"_s}, {u"hoist"_s, u"H-1"_s}, {u"hoist_limit"_s, u"1000 kg"_s},
                {u"hoist_due"_s, u"2026-12-31"_s}, {u"sling"_s, u"S-1"_s}, {u"sling_limit"_s, u"600 kg"_s}, {u"sling_due"_s, u"2026-12-31"_s}, {u"points"_s, 1}, {u"legs"_s, 2},
                {u"angle_from_horizontal"_s, u"60 °"_s}, {u"reference"_s, u"AMM 71-00"_s}};
    if (kind == "servicing.recorded"_L1)
        return {{u"system"_s, u"engine oil"_s}, {u"fluid"_s, u"oil"_s}, {u"quantity"_s, u"9 L"_s}, {u"least"_s, u"8 L"_s}, {u"most"_s, u"10 L"_s}, {u"reference"_s, u"AMM 12-10"_s}};
    if (kind == "weight.recorded"_L1)
        return {{u"outgoing_weight"_s, u"612.0 lb"_s}, {u"outgoing_arm"_s, u"120.0 in"_s}, {u"incoming_weight"_s, u"618.5 lb"_s}, {u"incoming_arm"_s, u"120.0 in"_s},
                {u"aircraft_weight"_s, u"41250 lb"_s}, {u"aircraft_moment"_s, u"5000000 lb·in"_s}, {u"reference"_s, u"AMM 08-00"_s}};
    if (kind == "safetying.applied"_L1)
        return {{u"method"_s, u"lockwire"_s}};
    if (kind == "inspection.rejected"_L1)
        return {{u"reason"_s, u"lockwire loose"_s}, {u"back_to"_s, u"reconnected"_s}};
    if (kind == "finding.raised"_L1)
        return {{u"description"_s, u"chafed hose"_s}};
    if (kind == "finding.closed"_L1)
        return {{u"disposition"_s, u"rectified"_s}, {u"authority"_s, u"AMM 71-00"_s}};
    if (kind == "temporary.applied"_L1)
        return {{u"sort"_s, u"isolation"_s}, {u"name"_s, u"fuel valve shut and locked"_s}};
    if (kind == "test.recorded"_L1)
        return {{u"what"_s, u"ground run"_s}, {u"name"_s, u"engine"_s}, {u"result"_s, u"passed"_s}, {u"reference"_s, u"AMM 71-00"_s}};
    if (kind == "tags.issued"_L1)
        return {{u"first"_s, 1}, {u"last"_s, 20}};
    if (kind == "tags.returned"_L1)
        return tagsBack(job);
    if (kind == "tag.lost"_L1)
        return {{u"why"_s, u"not on the line, bay and intake looked through"_s}, {u"tag"_s, core::nextTag(job)}};
    if (kind == "tag.exchanged"_L1)
        return {{u"reason"_s, u"both lines followed by hand"_s}};
    if (kind == "blank.missing"_L1)
        return {{u"end"_s, u"aircraft"_s}, {u"count"_s, 1}, {u"finding"_s, core::nextFinding(job)}, {u"description"_s, u"not on the line any more"_s}};
    if (kind == "job.revised"_L1)
        return {{u"revision"_s, u"13"_s}, {u"changed"_s, u"torque of the ducts"_s}};
    if (kind == "time.doubted"_L1)
        return {{u"first"_s, 1}, {u"last"_s, 2}, {u"reason"_s, u"the clock was set by hand"_s}};
    if (kind == "interface.relisted"_L1 && item)
        return relisting(*item);
    if (kind == "tool.issued"_L1)
        return {{u"sort"_s, u"hand tool"_s}, {u"name"_s, u"ratchet, 1/4 in"_s}};
    if (kind == "tool.counted"_L1)
        return toolsCounted(job);
    if (kind == "tool.missing"_L1)
        return {{u"finding"_s, core::nextFinding(job)}, {u"description"_s, u"last seen on the left platform"_s}};
    if (kind == "unit.removed"_L1)
        return {{u"serial"_s, job.facts.outgoingSerial}, {u"openings_blanked"_s, 4}, {u"tag"_s, u"U-17"_s}};
    if (kind == "unit.received"_L1)
        return {{u"serial"_s, job.facts.incomingSerial}, {u"certificate"_s, u"CRS-9"_s}, {u"shipping_blanks"_s, 6}, {u"configuration"_s, u"same as the outgoing unit"_s}};
    if (kind == "unit.positioned"_L1)
        return {{u"serial"_s, job.reversed ? job.facts.outgoingSerial : job.facts.incomingSerial},
                {u"shipping_blanks_removed"_s, core::blanksOfTheUnitToPutUp(job)}};
    if (kind == "condition.stated"_L1)
        return {{u"reason"_s, u"parts not delivered"_s}};
    if (kind == "condition.cleared"_L1)
        return {{u"how"_s, u"taken out and counted"_s}};
    if (kind == "work.stopped"_L1)
        return {{u"word"_s, u"two of four bolts in."_s}};
    if (kind == "interface.unlisted"_L1)
        return {{u"name"_s, u"Clamp behind the duct"_s}, {u"zone"_s, u"left"_s}};
    if (kind == "interface.detailed"_L1)
        return {{u"name"_s, u"Clamp behind the duct"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"left"_s}};
    if (kind == "interface.undisturbed"_L1)
        return {{u"seen"_s, u"seal paint whole on every nut"_s}};
    if (kind == "interface.not_applicable"_L1)
        return {{u"reason"_s, u"not fitted to this unit"_s}};
    if (kind == "twins.verified"_L1 && item)
        return asListed(job, *item);
    if (kind == "inspection.repeated"_L1)
        return {{u"cause"_s, u"the inspector on duty fell ill"_s}, {u"approver"_s, u"Ove"_s}};
    if (kind == "walkround.attached"_L1)
        return {{u"what"_s, u"one bolt behind the duct."_s}};
    if (kind == "interface.freed"_L1)
        return {{u"what"_s, u"the bolt behind the duct"_s}};
    if (kind == "hold.set"_L1)
        return {{u"title"_s, u"Everything free"_s}, {u"authority"_s, u"lead"_s}};
    if (kind == "handover.given"_L1)
        return {{u"to"_s, u"Lee"_s}, {u"crew"_s, core::json::arrayOf({u"Lee"_s, u"Max"_s})}, {u"open"_s, core::openAtHandover(job)}};
    if (kind == "handover.accepted"_L1)
        return {{u"given"_s, job.pendingHandover() ? job.pendingHandover()->given.seq : 0}};
    if (kind == "handover.refused"_L1)
        return {{u"given"_s, job.pendingHandover() ? job.pendingHandover()->given.seq : 0}, {u"reason"_s, u"the tags do not agree"_s}};
    if (kind == "followup.set"_L1)
        return {{u"reference"_s, u"AMM 71-00"_s}};
    if (kind == "followup.done"_L1)
        return {{u"how"_s, u"torqued again"_s}};
    if (kind == "accessory.listed"_L1)
        return {{u"name"_s, u"starter-generator"_s}, {u"part"_s, u"SG-200"_s}, {u"serial"_s, u"S-1"_s}};
    if (kind == "accessory.moved"_L1)
        return {{u"serial"_s, u"S-1"_s}};
    if (kind == "accessory.left"_L1)
        return {{u"serial"_s, u"S-1"_s}, {u"reason"_s, u"time expired"_s}};
    if (kind == "job.reversed"_L1)
        return {{u"reason"_s, u"the incoming unit is of another state"_s}};
    if (kind == "entry.struck"_L1)
        return {{u"reason"_s, u"wrong item"_s}};
    if (kind == "job.closed"_L1)
        return {{u"statement"_s, u"Complete"_s}};
    return {};
}

/// The draft for each fastener of the pass that is due, in its order; with the least torque of that pass unless the sentence says one.
std::vector<core::Draft> everyFastener(const core::Draft &draft, const core::InterfaceState &item)
{
    const core::TorqueSpec &spec = *item.listed.torque;
    const auto left = core::torqueStepsLeft(item);
    const bool again = left.empty() || core::isHalfDoneByAnother(item, draft.author);
    const qint64 pass = draft.body.integer(u"pass").value_or(again ? 1 : left.front().pass);
    std::vector<core::Draft> all;
    for (const core::TorqueStep &step : core::torqueSteps(spec)) {
        if (step.pass != pass)
            continue;
        all.push_back(draft);
        all.back().body.set(u"fastener"_s, step.fastener);
        if (spec.passes.empty())
            continue;
        all.back().body.set(u"pass"_s, step.pass);
        const core::Unit &unit = *core::findUnit(spec.min.unit());
        if (draft.body.text(u"value") == spec.min.value().text()) // nobody said another
            all.back().body.set(u"value"_s, core::inUnit(core::measure::ofPass(core::measure::torqueBand(spec.min, spec.max), spec.passes[static_cast<std::size_t>(pass - 1)]).least, unit).text(6));
    }
    return all;
}

} // namespace

Story::Story(const QString &text, const core::json::Object &facts) : m_register(register_()), m_now(opening())
{
    std::vector<core::Draft> drafts = openingDrafts();
    for (const auto &[name, value] : facts.members())
        drafts.front().body.set(name, value);
    m_folds[QString()];
    for (const core::Draft &draft : drafts) {
        if (!take(draft, draft.kind, {}))
            qFatal("The world of the stories is refused: %s (%s)", qPrintable(m_refusals.front().sentence), qPrintable(refusedBy()));
    }
    tell(text);
}

void Story::begin(const QString &job)
{
    if (m_folds.contains(job))
        return;
    m_folds[job];
    for (core::Draft draft : openingDrafts(job)) {
        draft.at = m_now;
        if (!take(draft, draft.kind, job))
            qFatal("Another job of the stories is refused: %s (%s)", qPrintable(m_refusals.front().sentence), qPrintable(refusedBy()));
    }
}

/// The name of a job that a value says.
static QString jobNamed(const QString &value) { return value == u"here" ? QString() : value; }

const core::JobState &Story::job(const QString &name)
{
    begin(name);
    showOthers(name, {*core::PersonId::parse(u"-"), m_now, {}, {}, {}});
    return m_folds.at(name).state();
}

/// What a job sees when a draft of it is judged: those that it is linked with, and the one that the draft names.
void Story::showOthers(const QString &job, const core::Draft &draft)
{
    core::JobFold &fold = m_folds.at(job);
    for (const core::LedgerId &ledger : core::ledgersPinnedBy(fold.state(), draft.kind, draft.body)) {
        for (const auto &[name, other] : m_folds) {
            if (ledgerOf(name) == ledger)
                fold.see(ledger, other.head(), std::make_shared<const core::JobState>(other.state()));
        }
    }
}

/// What a link says of the other job, and how an item comes from there.
void Story::fillIn(core::Draft &draft, const QString &job, const QStringList &words) const
{
    QString named = job.isEmpty() ? u"shop"_s : u"here"_s;
    const core::Act &act = *core::findAct(draft.kind);
    for (const core::Field &field : act.fields) {
        if (field.type != core::FieldType::Job)
            continue;
        const auto word = std::find_if(words.begin(), words.end(), [&](const QString &one) { return one.startsWith(QString(field.name) + u'='); });
        if (word != words.end())
            named = word->section(u'=', 1);
        const auto other = m_folds.find(jobNamed(named));
        draft.body.set(field.name, other == m_folds.end() ? named : ledgerOf(jobNamed(named)).text());
        if (other == m_folds.end())
            continue;
        if (draft.kind == u"job.linked")
            draft.body.set(u"work_order"_s, other->second.state().facts.workOrder);
        const auto id = core::InterfaceId::parse(draft.subject.value_or(QString()));
        const core::InterfaceState *item = id ? other->second.state().item(*id) : nullptr;
        if (draft.kind == u"interface.taken_on" && item)
            draft.body = core::takenOnAs(m_folds.at(job).state(), other->second.state(), *item);
    }
}

std::vector<core::Draft> Story::drafts(const QString &sentence)
{
    QStringList words = sentence.split(u' ', Qt::SkipEmptyParts);
    m_told = words.first().endsWith(u':') ? words.takeFirst().chopped(1) : QString();
    begin(m_told);
    for (const QString &name : {u"shop"_s, u"right"_s}) {
        if (std::any_of(words.begin(), words.end(), [&](const QString &word) { return word.endsWith(u'=' + name); }))
            begin(name);
    }
    const core::JobFold &fold = m_folds.at(m_told);
    const auto author = core::PersonId::parse(words.takeFirst());
    const QLatin1String kind = kindOf(words.takeFirst());
    const core::Act &act = *core::findAct(QString(kind));
    std::optional<QString> subject;
    if (!words.isEmpty() && !words.first().contains(u'='))
        subject = words.takeFirst();
    const auto id = core::InterfaceId::parse(subject.value_or(QString()));
    const core::InterfaceState *item = id ? fold.state().item(*id) : nullptr;
    m_now = core::Instant::fromMilliseconds(m_now.milliseconds() + 60'000);
    core::Draft draft{*author, m_now, kind, subject, careful(kind, fold.state(), item)};
    fillIn(draft, m_told, words);
    if (words.contains(u"condition=damaged"_s) && kind == "condition.stated"_L1)
        draft.body.set(u"finding"_s, core::nextFinding(fold.state()));
    if (kind == "job.revised"_L1 && std::none_of(words.begin(), words.end(), [](const QString &word) { return word.startsWith(u"interfaces="_s); }))
        draft.body.set(u"none"_s, true);
    if (words.contains(u"condition=slave_hardware"_s) && kind == "condition.stated"_L1)
        draft.body.set(u"to_come_out"_s, u"two bolts of the old mount"_s);
    for (const QString &word : words) {
        const QString name = word.section(u'=', 0, 0);
        const QString value = word.section(u'=', 1);
        if (name == u"at")
            draft.at = *core::Instant::parse(value);
        else if (value.isEmpty())
            draft.body.remove(name);
        else if (std::any_of(act.fields.begin(), act.fields.end(), [&](const core::Field &field) { return field.name == name && field.type == core::FieldType::Job; }))
            continue; // filled in above
        else
            setMember(draft.body, act, name, value);
    }
    const auto holdId = core::HoldId::parse(subject.value_or(QString()));
    const core::HoldPoint *hold = holdId ? fold.state().hold(*holdId) : nullptr;
    if (kind == "hold.passed"_L1 && hold && !hold->statements.empty() && !draft.body.contains(u"confirmed"))
        draft.body.set(u"confirmed"_s, core::json::arrayOf(hold->statements));
    if (kind != "torque.applied"_L1 || draft.body.contains(u"fastener"))
        return {draft};
    return item && item->listed.torque ? everyFastener(draft, *item) : std::vector<core::Draft>();
}

core::Refusals Story::ask(const core::Draft &draft) const
{
    return core::admit(m_folds.at(m_told).state(), m_register, draft);
}

bool Story::take(const core::Draft &draft, const QString &sentence, const QString &job)
{
    showOthers(job, draft);
    core::JobFold &fold = m_folds.at(job);
    m_refusals = core::admit(fold.state(), m_register, draft);
    if (!m_refusals.empty()) {
        m_refusedSentence = sentence;
        return false;
    }
    const qint64 seq = fold.head().seq + 1;
    fold.take(statementOf(draft, seq, job), core::Digest::of(QByteArray::number(seq)));
    m_now = draft.at;
    for (const auto &[name, other] : m_folds)
        showOthers(name, {draft.author, draft.at, {}, {}, {}});
    return true;
}

void Story::take(const std::vector<core::Draft> &drafts)
{
    for (core::Draft draft : drafts) {
        draft.at = core::Instant::fromMilliseconds(m_now.milliseconds() + 60'000);
        if (!take(draft, draft.kind, {}))
            return;
    }
}

void Story::tell(const QString &text)
{
    for (const QString &part : text.split(u';')) {
        const QString sentence = part.trimmed();
        if (sentence.isEmpty())
            continue;
        for (const core::Draft &draft : drafts(sentence)) {
            if (!take(draft, sentence, m_told))
                return;
        }
    }
}

QString Story::refusedBy() const
{
    QStringList names;
    for (const core::Refusal &refusal : m_refusals)
        names << refusal.rule;
    return names.join(u' ');
}

const core::InterfaceState &Story::item(const QString &id) const
{
    return *job().item(*core::InterfaceId::parse(id));
}

QString Story::stage(const QString &id) const
{
    const auto *listed = job().item(*core::InterfaceId::parse(id));
    return listed ? core::stageName(core::stageOf(*listed)) : QString();
}

QString Story::looseEndsOf(const QString &job) const
{
    QStringList lines;
    for (const core::LooseEnd &end : core::looseEnds(m_folds.at(job).state(), m_register))
        lines << end.rule + u' ' + end.subject;
    return lines.join(u'\n');
}

} // namespace story
