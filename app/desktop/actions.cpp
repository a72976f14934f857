// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/actions.hpp"

#include <algorithm>

#include "app/desktop/parts/words.hpp"
#include "app/desktop/seeds.hpp"
#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/kinds/verb_words.hpp"
#include "core/requirements/catalogue.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

bool always(const core::InterfaceState &) { return true; }
bool asksForTorque(const core::InterfaceState &item) { return core::asksFor(item.listed, "torque"_L1); }
bool asksForBonding(const core::InterfaceState &item) { return core::asksFor(item.listed, "bonding"_L1); }
bool asksForSafetying(const core::InterfaceState &item) { return core::asksFor(item.listed, "safetying"_L1); }
bool asksForLeakCheck(const core::InterfaceState &item) { return core::asksFor(item.listed, "leak"_L1); }
bool isOff(const core::InterfaceState &item) { return core::stageOf(item) == core::Stage::Disconnected; }
bool wasFoundAttached(const core::InterfaceState &item) { return item.stillAttached.has_value(); }
bool wasNeverUndone(const core::InterfaceState &item) { return !item.removal; }
bool waitsForAgreement(const core::InterfaceState &item) { return item.notApplicable && !item.notApplicable->agreed; }
bool isHalfDone(const core::InterfaceState &item) { return core::stageOf(item) != core::Stage::Inspected; }
bool wasStopped(const core::InterfaceState &item) { return item.stopped.has_value(); }
bool isUnsettled(const core::InterfaceState &item) { return core::unsettled(item) != nullptr; }
bool isWithoutDetails(const core::InterfaceState &item) { return core::isWithoutDetails(item); }
bool hasTwins(const core::InterfaceState &item) { return !item.listed.twinGroup.isEmpty() && item.restoration; }
bool isSecured(const core::InterfaceState &item) { return core::stageOf(item) == core::Stage::Secured; }
bool couldGo(const core::InterfaceState &item) { return !item.restoration && !item.sent; }
bool hasTorque(const core::InterfaceState &item) { return !item.torque.empty(); }

} // namespace

const std::vector<ActionLine> &actions()
{
    static const std::vector<ActionLine> all = {
        {"interface.disconnected"_L1, Over::Items, "D", &seeds::disconnect, {"tag"_L1, "hardware_removed"_L1}, Brings::Nothing, &always, "start_technician"_L1, "undo-something"_L1},
        {"interface.reconnected"_L1, Over::Items, "R", &seeds::reconnect,
         {"tag_recovered"_L1, "blanks_removed"_L1, "aircraft_half"_L1, "unit_half"_L1, "seal_part"_L1, "seal_batch"_L1, "hardware"_L1}, Brings::Nothing, &always, "start_technician"_L1, "put-it-back"_L1},
        {"torque.applied"_L1, Over::Items, "T", &seeds::torque, {"fastener"_L1, "value"_L1, "prevailing"_L1, "turn"_L1}, Brings::Nothing, &asksForTorque, "measuring"_L1, "torque"_L1},
        {"bonding.measured"_L1, Over::Items, "B", &seeds::bonding, {"value"_L1, "second_reading"_L1}, Brings::Nothing, &asksForBonding, "measuring"_L1, "bonding"_L1},
        {"safetying.applied"_L1, Over::Items, "S", &seeds::safety, {"method"_L1}, Brings::Nothing, &asksForSafetying, "start_technician"_L1, "put-it-back"_L1},
        {"leak.checked"_L1, Over::Items, "L", &seeds::leak, {"size"_L1, "flow"_L1, "class"_L1, "rate"_L1}, Brings::Nothing, &asksForLeakCheck, "measuring"_L1, "leaks"_L1},
        {"torque.taken_over"_L1, Over::Item, "", &seeds::takeOverTorque, {}, Brings::Nothing, &hasTorque, "measuring"_L1, "torque"_L1},
        {"walkround.free"_L1, Over::Item, "", &seeds::confirmFree, {}, Brings::Nothing, &isOff, "hold_points"_L1, "the-walk-round"_L1, Signs::WhoLooked},
        {"walkround.attached"_L1, Over::Item, "", &seeds::stillAttached, {}, Brings::Nothing, &isOff, "hold_points"_L1, "the-walk-round"_L1},
        {"interface.freed"_L1, Over::Item, "", &seeds::freed, {}, Brings::Nothing, &wasFoundAttached, "hold_points"_L1, "the-walk-round"_L1},
        {"work.stopped"_L1, Over::Item, "", &seeds::stop, {}, Brings::Nothing, &isHalfDone, "conditions"_L1, "where-somebody-stopped"_L1},
        {"work.resumed"_L1, Over::Item, "", &seeds::resume, {}, Brings::Nothing, &wasStopped, "conditions"_L1, "where-somebody-stopped"_L1},
        {"condition.stated"_L1, Over::Item, "", &seeds::stateCondition, {}, Brings::Nothing, &always, "conditions"_L1, "conditions"_L1},
        {"condition.cleared"_L1, Over::Item, "", &seeds::clearCondition, {}, Brings::Nothing, &isUnsettled, "conditions"_L1, "conditions"_L1},
        {"interface.unlisted"_L1, Over::Job, "N", &seeds::logUnlisted, {}, Brings::Nothing, &always, "conditions"_L1, "undone-and-on-no-list"_L1},
        {"interface.detailed"_L1, Over::Item, "", &seeds::giveDetails, {}, Brings::Nothing, &isWithoutDetails, "conditions"_L1, "undone-and-on-no-list"_L1},
        {"interface.relisted"_L1, Over::Item, "", &seeds::relist, {}, Brings::Nothing, &always, "changes"_L1, "a-row-of-the-list-that-is-wrong"_L1},
        {"interface.undisturbed"_L1, Over::Item, "", &seeds::undisturbed, {}, Brings::Nothing, &wasNeverUndone, "conditions"_L1, "never-touched-or-not-there"_L1},
        {"interface.not_applicable"_L1, Over::Item, "", &seeds::notApplicable, {}, Brings::Nothing, &wasNeverUndone, "conditions"_L1, "never-touched-or-not-there"_L1},
        {"interface.not_applicable_agreed"_L1, Over::Item, "", &seeds::agreeNotApplicable, {}, Brings::Nothing, &waitsForAgreement, "conditions"_L1, "never-touched-or-not-there"_L1},
        {"twins.verified"_L1, Over::Item, "", &seeds::verifyTwins, {}, Brings::Nothing, &hasTwins, "conditions"_L1, "look-alikes"_L1},
        {"temporary.applied"_L1, Over::Job, "", &seeds::applyTemporary, {}, Brings::Nothing, &always, "hold_points"_L1, "what-is-applied"_L1},
        {"temporary.removed"_L1, Over::Subject, "", &seeds::removeTemporary, {}, Brings::Nothing, &always, "hold_points"_L1, "what-is-applied"_L1},
        {"temporary.handed_over"_L1, Over::Subject, "", &seeds::handOverTemporary, {}, Brings::Nothing, &always, "hold_points"_L1, "what-is-applied"_L1},
        {"unit.removed"_L1, Over::Job, "", &seeds::unitRemoved, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"unit.received"_L1, Over::Job, "", &seeds::unitReceived, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"unit.positioned"_L1, Over::Job, "", &seeds::unitPositioned, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"accessory.listed"_L1, Over::Job, "", &seeds::listAccessory, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"accessory.moved"_L1, Over::Subject, "", &seeds::placeAccessory, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"accessory.left"_L1, Over::Subject, "", &seeds::placeAccessory, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"job.reversed"_L1, Over::Job, "", &seeds::reverse, {}, Brings::Nothing, &always, "changes"_L1, "giving-the-change-up"_L1},
        {"test.recorded"_L1, Over::Job, "", &seeds::recordTest, {}, Brings::Nothing, &always, "hold_points"_L1, "the-unit-and-its-tests"_L1},
        {"tags.issued"_L1, Over::Job, "", &seeds::issueTags, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tags"_L1},
        {"tags.returned"_L1, Over::Subject, "", &seeds::returnTags, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tags"_L1},
        {"tag.lost"_L1, Over::Item, "", &seeds::replaceTag, {}, Brings::Nothing, &isOff, "parts_and_tools"_L1, "tags"_L1},
        {"tag.exchanged"_L1, Over::Item, "", &seeds::exchangeTags, {}, Brings::Nothing, &isOff, "parts_and_tools"_L1, "tags"_L1},
        {"blank.missing"_L1, Over::Item, "", &seeds::missBlank, {}, Brings::Nothing, &isOff, "parts_and_tools"_L1, "blanks"_L1},
        {"tool.issued"_L1, Over::Job, "", &seeds::issueTool, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tools"_L1},
        {"tool.returned"_L1, Over::Subject, "", &seeds::returnTool, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tools"_L1},
        {"tool.counted"_L1, Over::Job, "", &seeds::countTools, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tools"_L1},
        {"tool.missing"_L1, Over::Subject, "", &seeds::missTool, {}, Brings::Nothing, &always, "parts_and_tools"_L1, "tools"_L1},
        {"hold.passed"_L1, Over::Subject, "", &seeds::passHold, {}, Brings::Nothing, &always, "hold_points"_L1, "hold-points"_L1},
        {"inspection.accepted"_L1, Over::Item, "A", &seeds::accept, {}, Brings::Nothing, &always, "start_inspector"_L1, "the-queue"_L1},
        {"inspection.repeated"_L1, Over::Item, "", &seeds::inspectAgain, {}, Brings::Nothing, &isSecured, "conditions"_L1, "inspecting-ones-own-work-again"_L1},
        {"inspection.rejected"_L1, Over::Item, "X", &seeds::reject, {}, Brings::Nothing, &always, "start_inspector"_L1, "the-queue"_L1},
        {"interface.disturbed"_L1, Over::Item, "U", &seeds::disturb, {}, Brings::Nothing, &always, "conditions"_L1, "disturbed"_L1},
        {"interface.found_open"_L1, Over::Item, "O", &seeds::foundOpen, {}, Brings::Nothing, &always, "conditions"_L1, {}},
        {"photo.attached"_L1, Over::Item, "P", &seeds::photo, {}, Brings::File, &always, "photos"_L1, "how-photos-come-in"_L1},
        {"photo.marked"_L1, Over::Subject, "", &seeds::markPhoto, {}, Brings::Nothing, &always, "photos"_L1, "marks"_L1},
        {"finding.raised"_L1, Over::Job, "F", &seeds::raiseFinding, {}, Brings::Nothing, &always, "conditions"_L1, {}},
        {"finding.closed"_L1, Over::Subject, "", &seeds::closeFinding, {}, Brings::Nothing, &always, "conditions"_L1, {}},
        {"lift.planned"_L1, Over::Job, "", &seeds::lift, {}, Brings::Nothing, &always, "measuring"_L1, "lift-servicing-weight"_L1},
        {"servicing.recorded"_L1, Over::Job, "", &seeds::servicing, {}, Brings::Nothing, &always, "measuring"_L1, "lift-servicing-weight"_L1},
        {"weight.recorded"_L1, Over::Job, "", &seeds::weight, {}, Brings::Nothing, &always, "measuring"_L1, "lift-servicing-weight"_L1},
        {"handover.given"_L1, Over::Job, "", &seeds::handOver, {}, Brings::Nothing, &always, "hold_points"_L1, "handover-and-what-comes-next"_L1},
        {"handover.accepted"_L1, Over::Job, "", &seeds::acceptHandover, {}, Brings::Nothing, &always, "hold_points"_L1, "handover-and-what-comes-next"_L1},
        {"handover.refused"_L1, Over::Job, "", &seeds::refuseHandover, {}, Brings::Nothing, &always, "hold_points"_L1, "handover-and-what-comes-next"_L1},
        {"followup.set"_L1, Over::Job, "", &seeds::setFollowUp, {}, Brings::Nothing, &always, "hold_points"_L1, "handover-and-what-comes-next"_L1},
        {"job.revised"_L1, Over::Job, "", &seeds::revise, {}, Brings::Nothing, &always, "changes"_L1, "another-revision-of-the-maintenance-data"_L1},
        {"time.doubted"_L1, Over::Subject, "", &seeds::doubtTimes, {}, Brings::Nothing, &always, "changes"_L1, "times-that-nobody-trusts"_L1},
        {"followup.done"_L1, Over::Subject, "", &seeds::followUpDone, {}, Brings::Nothing, &always, "hold_points"_L1, "handover-and-what-comes-next"_L1},
        {"interface.sent"_L1, Over::Item, "", &seeds::send, {}, Brings::Nothing, &couldGo, "linked_jobs"_L1, "handing-items-on"_L1},
        {"interface.taken_on"_L1, Over::Subject, "", &seeds::takeOn, {}, Brings::Nothing, &always, "linked_jobs"_L1, "handing-items-on"_L1},
        {"job.linked"_L1, Over::Job, "", &seeds::link, {}, Brings::Nothing, &always, "linked_jobs"_L1, "linking"_L1},
        {"entry.struck"_L1, Over::Subject, "", &seeds::strike, {}, Brings::Nothing, &always, "strikes"_L1, {}},
        {"job.closed"_L1, Over::Job, "", &seeds::closeJob, {}, Brings::Nothing, &always, "record"_L1, {}},
    };
    return all;
}

const ActionLine &actionFor(QLatin1String kind)
{
    const auto &all = actions();
    const auto at = std::find_if(all.begin(), all.end(), [&](const ActionLine &line) { return line.kind == kind; });
    Q_ASSERT(at != all.end());
    return *at;
}

QString actionText(const ActionLine &action, const core::Kinds &kinds, const core::JobState &job, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject)
{
    if (action.kind == "temporary.removed"_L1) {
        const auto id = core::TemporaryId::parse(subject.value_or(QString()));
        const core::TemporaryItem *item = id ? job.temporary(*id) : nullptr;
        const core::Kind *kind = item ? kinds.find(core::temporaryKindId(item->sort)) : nullptr;
        if (kind) {
            const QString off = core::verbInWords(kind->verbs, &core::Verbs::off);
            return off.left(1).toUpper() + off.mid(1);
        }
    }
    QString own;
    for (const core::InterfaceId &id : items) {
        const core::InterfaceState *item = job.item(id);
        const core::Kind *kind = item ? kinds.find(item->listed.kind) : nullptr;
        const QString verb = !kind ? QString()
                             : action.kind == "interface.disconnected"_L1 ? core::verbInWords(kind->verbs, &core::Verbs::off)
                             : action.kind == "interface.reconnected"_L1 ? core::verbInWords(kind->verbs, &core::Verbs::on)
                                                                         : QString();
        if (verb.isEmpty() || (!own.isEmpty() && own != verb))
            return verbOf(*core::findAct(QString(action.kind)));
        own = verb;
    }
    if (own.isEmpty())
        return verbOf(*core::findAct(QString(action.kind)));
    own[0] = own[0].toUpper();
    return own;
}

QString iconPath(const ActionLine &action) { return u":/icons/acts/%1.svg"_s.arg(action.kind); }

bool comesIntoQuestion(const ActionLine &action, const core::JobState &job, const std::vector<core::InterfaceId> &items, bool hasSubject)
{
    if (action.kind == "inspection.repeated"_L1 && !job.facts.mayReinspect)
        return false; // an exception that most jobs do not know is not held out to anybody
    if (action.kind == "interface.sent"_L1 && job.links.empty())
        return false; // nor is sending, where there is nowhere to send to
    switch (action.over) {
    case Over::Job: return true;
    case Over::Subject: return hasSubject;
    case Over::Item:
        if (items.size() != 1)
            return false;
        break;
    case Over::Items:
        if (items.empty())
            return false;
        break;
    }
    return std::any_of(items.begin(), items.end(), [&](const core::InterfaceId &id) {
        const core::InterfaceState *item = job.item(id);
        return item && action.concerns(*item);
    });
}

std::optional<QString> nextAct(const core::InterfaceState &item)
{
    if (core::isElsewhere(item))
        return std::nullopt;
    switch (core::stageOf(item)) {
    case core::Stage::Connected: return u"interface.disconnected"_s;
    case core::Stage::Disconnected: return u"interface.reconnected"_s;
    case core::Stage::Reconnected: {
        const auto open = core::stillToShow(item);
        return open.empty() ? std::nullopt : std::optional(QString(open.front().first->shownBy));
    }
    case core::Stage::Secured: return u"inspection.accepted"_s;
    case core::Stage::Inspected: return std::nullopt;
    }
    Q_UNREACHABLE();
}

namespace {

/// A value of the right form where nothing likelier is known.
core::json::Value anyValue(const core::Field &field, const Situation &s)
{
    switch (field.type) {
    case core::FieldType::Integer: return 1;
    case core::FieldType::Flag: return true;
    case core::FieldType::Date: return u"2000-01-01"_s;
    case core::FieldType::Moment: return core::Instant::fromMilliseconds(0).text();
    case core::FieldType::Decimal: return u"1"_s;
    case core::FieldType::Unit: return core::unitsFor(field).front()->symbol;
    case core::FieldType::Quantity: return u"1 "_s + core::unitsOf(*field.dimension).front()->symbol;
    case core::FieldType::Choice: return QString(field.choices.front());
    case core::FieldType::Person: return s.reg.people.empty() ? u"-"_s : s.reg.people.begin()->first.text();
    case core::FieldType::Tool: return s.reg.tools.empty() ? u"-"_s : s.reg.tools.begin()->first.text();
    case core::FieldType::Digest:
    case core::FieldType::DigestElsewhere:
    case core::FieldType::PublicKey: return core::Digest().hex();
    case core::FieldType::Texts:
    case core::FieldType::Statements:
    case core::FieldType::People:
    case core::FieldType::Interfaces:
    case core::FieldType::Records: return core::json::Array();
    case core::FieldType::Text:
    case core::FieldType::Job:
    case core::FieldType::Interface: return u"-"_s;
    }
    Q_UNREACHABLE();
}

} // namespace

core::json::Object probeOf(QLatin1String kind, const Seed &seed, const Situation &situation)
{
    core::json::Object body = seed.body;
    for (const auto &[name, value] : seed.probe.members())
        body.set(name, value);
    for (const core::Field &field : core::findAct(QString(kind))->fields) {
        const QString name(field.name);
        if (field.needed == core::Needed::Always && !body.contains(name))
            body.set(name, anyValue(field, situation));
    }
    return body;
}

} // namespace desktop
