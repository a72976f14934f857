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
        {"interface.disconnected"_L1, Over::Items, "D", &seeds::disconnect, {"tag"_L1, "hardware_removed"_L1}, Brings::Nothing, &always},
        {"interface.reconnected"_L1, Over::Items, "R", &seeds::reconnect,
         {"tag_recovered"_L1, "blanks_removed"_L1, "aircraft_half"_L1, "unit_half"_L1, "seal_part"_L1, "seal_batch"_L1, "hardware"_L1}, Brings::Nothing, &always},
        {"torque.applied"_L1, Over::Items, "T", &seeds::torque, {"fastener"_L1, "value"_L1, "prevailing"_L1, "turn"_L1}, Brings::Nothing, &asksForTorque},
        {"bonding.measured"_L1, Over::Items, "B", &seeds::bonding, {"value"_L1, "second_reading"_L1}, Brings::Nothing, &asksForBonding},
        {"safetying.applied"_L1, Over::Items, "S", &seeds::safety, {"method"_L1}, Brings::Nothing, &asksForSafetying},
        {"leak.checked"_L1, Over::Items, "L", &seeds::leak, {"size"_L1, "flow"_L1, "class"_L1, "rate"_L1}, Brings::Nothing, &asksForLeakCheck},
        {"torque.taken_over"_L1, Over::Item, "", &seeds::takeOverTorque, {}, Brings::Nothing, &hasTorque},
        {"walkround.free"_L1, Over::Item, "", &seeds::confirmFree, {}, Brings::Nothing, &isOff, Signs::WhoLooked},
        {"walkround.attached"_L1, Over::Item, "", &seeds::stillAttached, {}, Brings::Nothing, &isOff},
        {"interface.freed"_L1, Over::Item, "", &seeds::freed, {}, Brings::Nothing, &wasFoundAttached},
        {"work.stopped"_L1, Over::Item, "", &seeds::stop, {}, Brings::Nothing, &isHalfDone},
        {"work.resumed"_L1, Over::Item, "", &seeds::resume, {}, Brings::Nothing, &wasStopped},
        {"condition.stated"_L1, Over::Item, "", &seeds::stateCondition, {}, Brings::Nothing, &always},
        {"condition.cleared"_L1, Over::Item, "", &seeds::clearCondition, {}, Brings::Nothing, &isUnsettled},
        {"interface.unlisted"_L1, Over::Job, "N", &seeds::logUnlisted, {}, Brings::Nothing, &always},
        {"interface.detailed"_L1, Over::Item, "", &seeds::giveDetails, {}, Brings::Nothing, &isWithoutDetails},
        {"interface.relisted"_L1, Over::Item, "", &seeds::relist, {}, Brings::Nothing, &always},
        {"interface.undisturbed"_L1, Over::Item, "", &seeds::undisturbed, {}, Brings::Nothing, &wasNeverUndone},
        {"interface.not_applicable"_L1, Over::Item, "", &seeds::notApplicable, {}, Brings::Nothing, &wasNeverUndone},
        {"interface.not_applicable_agreed"_L1, Over::Item, "", &seeds::agreeNotApplicable, {}, Brings::Nothing, &waitsForAgreement},
        {"twins.verified"_L1, Over::Item, "", &seeds::verifyTwins, {}, Brings::Nothing, &hasTwins},
        {"temporary.applied"_L1, Over::Job, "", &seeds::applyTemporary, {}, Brings::Nothing, &always},
        {"temporary.removed"_L1, Over::Subject, "", &seeds::removeTemporary, {}, Brings::Nothing, &always},
        {"temporary.handed_over"_L1, Over::Subject, "", &seeds::handOverTemporary, {}, Brings::Nothing, &always},
        {"unit.removed"_L1, Over::Job, "", &seeds::unitRemoved, {}, Brings::Nothing, &always},
        {"unit.received"_L1, Over::Job, "", &seeds::unitReceived, {}, Brings::Nothing, &always},
        {"unit.positioned"_L1, Over::Job, "", &seeds::unitPositioned, {}, Brings::Nothing, &always},
        {"accessory.listed"_L1, Over::Job, "", &seeds::listAccessory, {}, Brings::Nothing, &always},
        {"accessory.moved"_L1, Over::Subject, "", &seeds::placeAccessory, {}, Brings::Nothing, &always},
        {"accessory.left"_L1, Over::Subject, "", &seeds::placeAccessory, {}, Brings::Nothing, &always},
        {"job.reversed"_L1, Over::Job, "", &seeds::reverse, {}, Brings::Nothing, &always},
        {"test.recorded"_L1, Over::Job, "", &seeds::recordTest, {}, Brings::Nothing, &always},
        {"tags.issued"_L1, Over::Job, "", &seeds::issueTags, {}, Brings::Nothing, &always},
        {"tags.returned"_L1, Over::Subject, "", &seeds::returnTags, {}, Brings::Nothing, &always},
        {"tag.lost"_L1, Over::Item, "", &seeds::replaceTag, {}, Brings::Nothing, &isOff},
        {"tag.exchanged"_L1, Over::Item, "", &seeds::exchangeTags, {}, Brings::Nothing, &isOff},
        {"blank.missing"_L1, Over::Item, "", &seeds::missBlank, {}, Brings::Nothing, &isOff},
        {"tool.issued"_L1, Over::Job, "", &seeds::issueTool, {}, Brings::Nothing, &always},
        {"tool.returned"_L1, Over::Subject, "", &seeds::returnTool, {}, Brings::Nothing, &always},
        {"tool.counted"_L1, Over::Job, "", &seeds::countTools, {}, Brings::Nothing, &always},
        {"tool.missing"_L1, Over::Subject, "", &seeds::missTool, {}, Brings::Nothing, &always},
        {"hold.passed"_L1, Over::Subject, "", &seeds::passHold, {}, Brings::Nothing, &always},
        {"inspection.accepted"_L1, Over::Item, "A", &seeds::accept, {}, Brings::Nothing, &always},
        {"inspection.repeated"_L1, Over::Item, "", &seeds::inspectAgain, {}, Brings::Nothing, &isSecured},
        {"inspection.rejected"_L1, Over::Item, "X", &seeds::reject, {}, Brings::Nothing, &always},
        {"interface.disturbed"_L1, Over::Item, "U", &seeds::disturb, {}, Brings::Nothing, &always},
        {"interface.found_open"_L1, Over::Item, "O", &seeds::foundOpen, {}, Brings::Nothing, &always},
        {"photo.attached"_L1, Over::Item, "P", &seeds::photo, {}, Brings::File, &always},
        {"photo.marked"_L1, Over::Subject, "", &seeds::markPhoto, {}, Brings::Nothing, &always},
        {"finding.raised"_L1, Over::Job, "F", &seeds::raiseFinding, {}, Brings::Nothing, &always},
        {"finding.closed"_L1, Over::Subject, "", &seeds::closeFinding, {}, Brings::Nothing, &always},
        {"lift.planned"_L1, Over::Job, "", &seeds::lift, {}, Brings::Nothing, &always},
        {"servicing.recorded"_L1, Over::Job, "", &seeds::servicing, {}, Brings::Nothing, &always},
        {"weight.recorded"_L1, Over::Job, "", &seeds::weight, {}, Brings::Nothing, &always},
        {"handover.given"_L1, Over::Job, "", &seeds::handOver, {}, Brings::Nothing, &always},
        {"handover.accepted"_L1, Over::Job, "", &seeds::acceptHandover, {}, Brings::Nothing, &always},
        {"handover.refused"_L1, Over::Job, "", &seeds::refuseHandover, {}, Brings::Nothing, &always},
        {"followup.set"_L1, Over::Job, "", &seeds::setFollowUp, {}, Brings::Nothing, &always},
        {"job.revised"_L1, Over::Job, "", &seeds::revise, {}, Brings::Nothing, &always},
        {"time.doubted"_L1, Over::Subject, "", &seeds::doubtTimes, {}, Brings::Nothing, &always},
        {"followup.done"_L1, Over::Subject, "", &seeds::followUpDone, {}, Brings::Nothing, &always},
        {"interface.sent"_L1, Over::Item, "", &seeds::send, {}, Brings::Nothing, &couldGo},
        {"interface.taken_on"_L1, Over::Subject, "", &seeds::takeOn, {}, Brings::Nothing, &always},
        {"job.linked"_L1, Over::Job, "", &seeds::link, {}, Brings::Nothing, &always},
        {"entry.struck"_L1, Over::Subject, "", &seeds::strike, {}, Brings::Nothing, &always},
        {"job.closed"_L1, Over::Job, "", &seeds::closeJob, {}, Brings::Nothing, &always},
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
