// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/struck.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/acts/listing.hpp"
#include "core/job/state.hpp"

namespace core {

namespace {

bool isAnyOf(const QString &kind, std::initializer_list<QLatin1String> kinds)
{
    return std::any_of(kinds.begin(), kinds.end(), [&](QLatin1String one) { return kind == one; });
}

/// Whose hands the entry told of.
std::set<PersonId> handsIn(const JobState &job, const Statement &said, const Act &act)
{
    std::set<PersonId> hands;
    if (act.meaning == QLatin1String("performed")) {
        hands.insert(said.author);
        for (const PersonId &helper : peopleIn(said.body, u"helpers"))
            hands.insert(helper);
    }
    if (said.kind == u"work.stopped")
        hands.insert(said.author);
    if (said.kind == u"interface.disturbed")
        hands.insert(PersonId::parse(said.body.text(u"disturbed_by")).value_or(said.author));
    if (said.kind == u"interface.found_open" && isOfTheCrew(job, said.author))
        hands.insert(said.author);
    return hands;
}

void keepCounts(LeftByStrikes &left, const json::Object &body)
{
    left.blanks = std::max(left.blanks, body.integer(u"blanks_fitted").value_or(0));
    left.unitBlanks = std::max(left.unitBlanks, body.integer(u"unit_blanks_fitted").value_or(0));
    for (const HardwareRemoved &removed : hardwareRemovedIn(body)) {
        const auto at = std::find_if(left.hardware.begin(), left.hardware.end(), [&](const HardwareRemoved &one) { return one.part == removed.part; });
        if (at == left.hardware.end())
            left.hardware.push_back(removed);
        else
            at->quantity = std::max(at->quantity, removed.quantity);
    }
}

void keepOfInterface(JobState &job, const Statement &said, const Act &act, const InterfaceId &id)
{
    InterfaceState *item = job.item(id);
    LeftByStrikes &left = item ? item->left : job.leftWithoutItem[id];
    const std::set<PersonId> hands = handsIn(job, said, act);
    left.hands.insert(hands.begin(), hands.end());
    if (isAnyOf(said.kind, {QLatin1String("interface.reconnected"), QLatin1String("interface.disturbed")}))
        left.joiners.insert(hands.begin(), hands.end());
    if (isAnyOf(said.kind, {QLatin1String("interface.disconnected"), QLatin1String("interface.found_open"), QLatin1String("interface.unlisted")})) {
        left.undoing = markOf(said);
        keepCounts(left, said.body);
        if (item) {
            item->undisturbed.reset();
            item->notApplicable.reset();
        }
    }
    // Somebody had hands on it, though it was never logged as undone.
    if (said.kind == u"work.stopped" && item && !item->removal)
        left.undoing = markOf(said);
    if (isAnyOf(said.kind, {QLatin1String("interface.listed"), QLatin1String("interface.detailed"), QLatin1String("interface.relisted")}))
        left.listed.push_back(listingIn(id, said.body));
    if (item)
        item->actors.insert(left.hands.begin(), left.hands.end());
}

} // namespace

void keepWhatIsLeft(JobState &job, const Statement &said)
{
    if (said.kind == u"unit.received")
        job.shippingBlanksStruck = std::max(job.shippingBlanksStruck, said.body.integer(u"shipping_blanks").value_or(0));
    if (said.kind == u"unit.removed" && !job.unit.off)
        job.unitOffStruck = markOf(said);
    const Act *act = findAct(said.kind);
    const bool isAboutOne = act && (act->subject == SubjectSort::Interface || act->subject == SubjectSort::NewInterface);
    if (const auto id = isAboutOne ? InterfaceId::parse(said.subject.value_or(QString())) : std::nullopt)
        keepOfInterface(job, said, *act, *id);
}

void takeUpWhatWasLeft(JobState &job, const InterfaceId &id)
{
    const auto at = job.leftWithoutItem.find(id);
    InterfaceState *item = at == job.leftWithoutItem.end() ? nullptr : job.item(id);
    if (!item)
        return;
    item->left = std::move(at->second);
    job.leftWithoutItem.erase(at);
    item->actors.insert(item->left.hands.begin(), item->left.hands.end());
    if (item->removal)
        forgetTheUndoing(item->left);
}

void forgetTheUndoing(LeftByStrikes &left)
{
    left.undoing.reset();
    left.blanks = 0;
    left.unitBlanks = 0;
    left.hardware.clear();
    left.joiners.clear();
}

const LeftByStrikes *leftOf(const JobState &job, const InterfaceId &id)
{
    if (const InterfaceState *item = job.item(id))
        return &item->left;
    const auto at = job.leftWithoutItem.find(id);
    return at == job.leftWithoutItem.end() ? nullptr : &at->second;
}

} // namespace core
