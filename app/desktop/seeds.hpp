// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "app/desktop/deeds.hpp"

/// What each action starts from: sensible values that a person only confirms, and nothing prefilled that must be counted
/// or read at the aircraft.
namespace desktop::seeds {

std::vector<Seed> disconnect(const Situation &s);
std::vector<Seed> foundOpen(const Situation &s);
std::vector<Seed> reconnect(const Situation &s);
std::vector<Seed> torque(const Situation &s);
std::vector<Seed> takeOverTorque(const Situation &s);
std::vector<Seed> bonding(const Situation &s);
std::vector<Seed> leak(const Situation &s);
std::vector<Seed> lift(const Situation &s);
std::vector<Seed> servicing(const Situation &s);
std::vector<Seed> weight(const Situation &s);
std::vector<Seed> safety(const Situation &s);
std::vector<Seed> applyTemporary(const Situation &s);
std::vector<Seed> removeTemporary(const Situation &s);
std::vector<Seed> handOverTemporary(const Situation &s);
std::vector<Seed> unitRemoved(const Situation &s);
std::vector<Seed> unitReceived(const Situation &s);
std::vector<Seed> unitPositioned(const Situation &s);
std::vector<Seed> listAccessory(const Situation &s);
std::vector<Seed> placeAccessory(const Situation &s);
std::vector<Seed> reverse(const Situation &s);
std::vector<Seed> recordTest(const Situation &s);
std::vector<Seed> issueTags(const Situation &s);
std::vector<Seed> returnTags(const Situation &s);
std::vector<Seed> replaceTag(const Situation &s);
std::vector<Seed> issueTool(const Situation &s);
std::vector<Seed> returnTool(const Situation &s);
std::vector<Seed> countTools(const Situation &s);
std::vector<Seed> missTool(const Situation &s);
std::vector<Seed> passHold(const Situation &s);
std::vector<Seed> confirmFree(const Situation &s);
std::vector<Seed> stillAttached(const Situation &s);
std::vector<Seed> freed(const Situation &s);
std::vector<Seed> stop(const Situation &s);
std::vector<Seed> resume(const Situation &s);
std::vector<Seed> stateCondition(const Situation &s);
std::vector<Seed> clearCondition(const Situation &s);
std::vector<Seed> logUnlisted(const Situation &s);
std::vector<Seed> giveDetails(const Situation &s);
std::vector<Seed> revise(const Situation &s);
std::vector<Seed> relist(const Situation &s);
std::vector<Seed> doubtTimes(const Situation &s);
std::vector<Seed> exchangeTags(const Situation &s);
std::vector<Seed> missBlank(const Situation &s);
std::vector<Seed> undisturbed(const Situation &s);
std::vector<Seed> notApplicable(const Situation &s);
std::vector<Seed> agreeNotApplicable(const Situation &s);
std::vector<Seed> verifyTwins(const Situation &s);
std::vector<Seed> inspectAgain(const Situation &s);
std::vector<Seed> accept(const Situation &s);
std::vector<Seed> reject(const Situation &s);
std::vector<Seed> disturb(const Situation &s);
std::vector<Seed> photo(const Situation &s);
/// About the photo whose digest is the subject.
std::vector<Seed> markPhoto(const Situation &s);
std::vector<Seed> raiseFinding(const Situation &s);
std::vector<Seed> closeFinding(const Situation &s);
std::vector<Seed> handOver(const Situation &s);
std::vector<Seed> acceptHandover(const Situation &s);
std::vector<Seed> refuseHandover(const Situation &s);
std::vector<Seed> setFollowUp(const Situation &s);
std::vector<Seed> followUpDone(const Situation &s);
std::vector<Seed> strike(const Situation &s);
std::vector<Seed> closeJob(const Situation &s);
std::vector<Seed> link(const Situation &s);
std::vector<Seed> send(const Situation &s);
std::vector<Seed> takeOn(const Situation &s);

} // namespace desktop::seeds
