// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/rulebook.hpp"

#include <algorithm>
#include <functional>
#include <map>

#include "core/rules/accessories.hpp"
#include "core/rules/balance.hpp"
#include "core/rules/blanks.hpp"
#include "core/rules/break_points.hpp"
#include "core/rules/closure.hpp"
#include "core/rules/conditions.hpp"
#include "core/rules/corrections.hpp"
#include "core/rules/figures.hpp"
#include "core/rules/findings.hpp"
#include "core/rules/follow_ups.hpp"
#include "core/rules/handovers.hpp"
#include "core/rules/hardware.hpp"
#include "core/rules/holds.hpp"
#include "core/rules/independence.hpp"
#include "core/rules/leaks.hpp"
#include "core/rules/links.hpp"
#include "core/rules/listed_limits.hpp"
#include "core/rules/listing.hpp"
#include "core/rules/measuring.hpp"
#include "core/rules/order.hpp"
#include "core/rules/people.hpp"
#include "core/rules/photos.hpp"
#include "core/rules/register_rules.hpp"
#include "core/rules/reinspection.hpp"
#include "core/rules/revision.hpp"
#include "core/rules/sequence.hpp"
#include "core/rules/strike_effects.hpp"
#include "core/rules/tags.hpp"
#include "core/rules/temporary.hpp"
#include "core/rules/tests.hpp"
#include "core/rules/tightening.hpp"
#include "core/rules/tools.hpp"
#include "core/rules/twins.hpp"
#include "core/rules/unit.hpp"
#include "core/rules/unlisted.hpp"
#include "core/rules/untouched.hpp"
#include "core/rules/walk_round.hpp"

namespace core {

namespace {

using namespace rules;

template <class AnyRule>
struct Page {
    const char *kind;
    std::vector<const AnyRule *> rules;
};

using JobPages = std::vector<Page<Rule>>;
using RegisterPages = std::vector<Page<RegisterRule>>;

/// Asked of every entry of a job that is open.
const std::vector<const Rule *> &always()
{
    static const std::vector<const Rule *> rules = {&open, &notClosed, &clock, &enrolled, &signsWithKey, &peopleKnown, &holdGate, &linkSeen, &closedTogether, &notElsewhere};
    return rules;
}

const JobPages &jobPages()
{
    static const JobPages pages = {
        {"interface.listed", {&takesPart, &interfaceNew, &relistLess, &zoneKnown, &requirementsSound, &specsWhole, &torqueSpecSound, &passesSound, &orderSound, &turnAndDragSound, &bondingReadingsSound, &leakLimitSound, &accessKnown, &dependsKnown, &inspectionCount, &twinHalves, &hardwareListed}},
        {"interface.disconnected", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &disconnectedOnce, &accessOff, &unitCarried, &tagUnique, &tagsFromBlock, &countedAgain, &hardwareCounted}},
        {"interface.found_open", {&onTheList, &takesPart, &disconnectedOnce, &countedAgain, &tagUnique, &tagsFromBlock, &findingNew, &hardwareCounted}},
        {"interface.reconnected", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &reconnectedWhenOff, &unitThere, &conditionFinal, &inspectedBeforeCover, &tagRecovered, &blanks, &blanksSearch, &mate, &sealNew, &hardwareLines, &hardwareReused, &hardwareRemoved, &hardwareRequired, &hardwareNew, &hardwareBatch}},
        {"interface.disturbed", {&onTheList, &takesPart, &measuredWhenJoined}},
        {"interface.unlisted", {&ofTheCrew, &mayWork, &lateEntry, &interfaceNew, &countedAgain, &zoneKnown, &tagUnique, &tagsFromBlock}},
        {"interface.detailed", {&onTheList, &takesPart, &detailAsked, &detailGate, &relistLess, &zoneKnown, &requirementsSound, &specsWhole, &torqueSpecSound, &passesSound, &orderSound, &turnAndDragSound, &bondingReadingsSound, &leakLimitSound, &accessKnown, &detailCircle, &dependsKnown, &inspectionCount, &twinHalves, &hardwareListed}},
        {"interface.relisted", {&onTheList, &relistBy, &detailKnown, &relistKind, &relistJoined, &relistLess, &zoneKnown, &requirementsSound, &specsWhole, &torqueSpecSound, &passesSound, &orderSound, &turnAndDragSound, &bondingReadingsSound, &leakLimitSound, &accessKnown, &detailCircle, &dependsKnown, &inspectionCount, &twinHalves, &hardwareListed}},
        {"interface.undisturbed", {&onTheList, &takesPart, &untouchedStage, &untouchedOnce, &undisturbedInspector, &untouchedStruck}},
        {"interface.not_applicable", {&onTheList, &takesPart, &untouchedStage, &untouchedOnce}},
        {"interface.not_applicable_agreed", {&onTheList, &takesPart, &notApplicableStated, &notApplicableSecond, &untouchedStruck}},
        {"condition.stated", {&onTheList, &takesPart, &conditionStage, &conditionOnce, &conditionExplained, &conditionFinding, &findingNew}},
        {"condition.cleared", {&onTheList, &takesPart, &conditionStands, &conditionWorker, &conditionRepaired}},
        {"work.stopped", {&onTheList, &ofTheCrew, &mayWork, &breakSeen, &breakUnderWay}},
        {"work.resumed", {&onTheList, &ofTheCrew, &mayWork, &breakThere}},
        {"photo.attached", {&onTheList, &takesPart, &findingOfPhoto, &photoCopy}},
        {"photo.marked", {&onTheList, &takesPart, &photoThere, &photoMarks}},
        {"torque.applied", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &measuredWhenJoined, &disturbedBeforeMoreWork, &torqueAsked, &fastener, &torquePass, &torqueTakenOver, &fastenerOnce, &torqueOrder, &torqueDrag, &torqueDragKept, &torqueNut, &wrenchAdapter, &wrenchSetting, &torqueBand, &torqueTurn, &toolCalibrated, &toolRange}},
        {"torque.taken_over", {&onTheList, &ofTheCrew, &mayWork, &breakSeen, &measuredWhenJoined, &takeOver}},
        {"bonding.measured", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &measuredWhenJoined, &disturbedBeforeMoreWork, &bondedAfterTorque, &bondingLimit, &bondingTwice, &bondingZero, &toolCalibrated, &toolRange}},
        {"leak.checked", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &measuredWhenJoined, &disturbedBeforeMoreWork, &leakAsked, &leakTold, &leakAfterTorque, &leakLimit}},
        {"safetying.applied", {&onTheList, &ofTheCrew, &mayWork, &lateEntry, &breakSeen, &measuredWhenJoined, &disturbedBeforeMoreWork, &safetyingAsked, &safetiedAfterTorque}},
        {"temporary.applied", {&ofTheCrew, &mayWork, &lateEntry, &temporaryNew}},
        {"temporary.removed", {&ofTheCrew, &mayWork, &lateEntry, &temporaryApplied, &lockoutOwn}},
        {"temporary.handed_over", {&ofTheCrew, &temporaryApplied, &lockoutTo}},
        {"unit.removed", {&ofTheCrew, &mayWork, &unitOrder, &unitSerial, &unitFree, &unitOpenings}},
        {"unit.received", {&takesPart, &unitOrder, &unitSerial, &unitCounted}},
        {"unit.positioned", {&ofTheCrew, &mayWork, &unitOrder, &unitSerial, &unitBlanks}},
        {"test.recorded", {&ofTheCrew, &mayWork, &blanksFound, &testNew, &testCovers, &testValues, &testReopens}},
        {"accessory.listed", {&takesPart, &accessoryNew}},
        {"accessory.moved", {&ofTheCrew, &mayWork, &accessoryOpen, &accessorySerial, &accessoryFree}},
        {"accessory.left", {&ofTheCrew, &mayWork, &accessoryOpen, &accessorySerial, &accessoryReplacement}},
        {"job.reversed", {&leads, &reversedOnce}},
        {"job.revised", {&leads, &revisionAnother, &revisionItems, &revisionSaid}},
        {"time.doubted", {&takesPart, &timesThere}},
        {"tags.issued", {&leads, &tagsBlock}},
        {"tags.returned", {&leads, &tagsOut, &tagsHanging, &tagsCounted}},
        {"tag.lost", {&onTheList, &tagHung, &tagUnique, &tagsFromBlock, &inspectAuthorised, &ownWork}},
        {"tag.exchanged", {&onTheList, &tagHung, &tagOther, &inspectAuthorised, &ownWork}},
        {"blank.missing", {&onTheList, &takesPart, &blanksMissed, &findingNew}},
        {"tool.issued", {&takesPart, &toolMarked, &toolIn}},
        {"tool.returned", {&takesPart, &toolOut, &toolKit}},
        {"tool.counted", {&takesPart, &toolCount}},
        {"tool.missing", {&takesPart, &toolOut, &toolMissed, &findingNew}},
        {"hold.set", {&leads, &holdSound, &holdInTime, &holdLess}},
        {"hold.passed", {&holdKnown, &holdOnce, &holdAuthority, &holdIndependent, &holdConditions, &holdStatements}},
        {"walkround.free", {&onTheList, &takesPart, &walkOff, &walkFree, &walkAnother}},
        {"walkround.attached", {&onTheList, &takesPart, &walkOff}},
        {"interface.freed", {&onTheList, &ofTheCrew, &mayWork, &breakSeen, &walkOff, &walkAttached}},
        {"twins.verified", {&onTheList, &takesPart, &twinsAsked, &twinsJoined, &twinsRead, &twinsAnother}},
        {"inspection.repeated", {&onTheList, &reinspectionAllowed, &reinspectionOwn, &secured, &notInDoubt, &detailKnown, &undoingClear, &revisionLookedUp, &conditionSettled, &breakOver, &twinsVerified, &inspectedOnce, &inspectAuthorised, &secondPerson, &relistAccept, &reinspectionAlone, &reinspectionApprover, &reinspectionPause}},
        {"inspection.accepted", {&onTheList, &secured, &detailKnown, &undoingClear, &revisionLookedUp, &conditionSettled, &breakOver, &twinsVerified, &notInDoubt, &inspectedOnce, &inspectAuthorised, &ownWork, &ownGroup, &secondPerson, &relistAccept}},
        {"inspection.rejected", {&onTheList, &somethingToInspect, &inspectAuthorised}},
        {"lift.planned", {&ofTheCrew, &mayWork, &liftPoints, &liftDay, &liftWeight, &liftSafe}},
        {"servicing.recorded", {&ofTheCrew, &mayWork, &servicingBand}},
        {"weight.recorded", {&takesPart, &weightSound, &weightOnce, &weightAsLifted}},
        {"finding.raised", {&takesPart, &findingNew, &findingItem}},
        {"finding.closed", {&findingOpen, &findingCloser, &findingDeferral, &blanksRectified}},
        {"followup.set", {&takesPart, &findingItem, &followUpDue}},
        {"followup.done", {&takesPart, &followUpOpen}},
        {"handover.given", {&leads, &handoverOnce, &handoverTo, &handoverList}},
        {"handover.accepted", {&handoverPending, &handoverBy}},
        {"handover.refused", {&handoverPending, &handoverBy}},
        {"job.linked", {&leads, &linkOnce, &linkNamed}},
        {"interface.sent", {&onTheList, &ofTheCrew, &mayWork, &sendable, &sendTied, &sendTo}},
        {"interface.taken_on", {&ofTheCrew, &mayWork, &interfaceNew, &zoneKnown, &leakLimitSound, &takenOnSent, &takenOnSame, &takenOnTag}},
        {"entry.struck", {&strikeExists, &strikeable, &strikeBy, &strikeWarning, &strikeListing, &strikeLess, &strikeHold, &strikeBack, &strikeUndone, &strikeHandover, &strikeNeverWas, &strikeReversal, &strikeLockout, &strikeTags, &strikeTool, &strikeLink, &strikeSent}},
        {"job.closed", {&mayRelease, &closureSomething, &closureNothingLoose, &closureLimited}},
    };
    return pages;
}

const std::vector<const Rule *> &openingRules()
{
    static const std::vector<const Rule *> rules = {&notYetOpen, &enrolled, &signsWithKey, &peopleKnown, &mayOpen, &zonesNamed, &leakClasses};
    return rules;
}

const RegisterPages &registerPages()
{
    static const RegisterPages pages = {
        {"register.founded", {&notFounded, &founder}},
        {"person.enrolled", {&founded, &registerClock, &administers, &keyStands, &personNew, &keyNew}},
        {"key.replaced", {&founded, &registerClock, &administers, &keyStands, &personKnown, &keyNew, &keyDoubtPast}},
        {"key.stopped", {&founded, &registerClock, &administers, &keyStands, &personKnown, &keyStoppedOnce, &keyNotOwn, &keyDoubtPast}},
        {"authorisation.granted", {&founded, &registerClock, &administers, &keyStands, &authorisationNew, &granteeKnown, &dates}},
        {"authorisation.withdrawn", {&founded, &registerClock, &administers, &keyStands, &authorisationOpen}},
        {"tool.registered", {&founded, &registerClock, &administers, &keyStands, &toolNew, &toolRangeSound, &toolFiguresSound, &torqueToolTold}},
        {"tool.calibrated", {&founded, &registerClock, &administers, &keyStands, &toolKnown, &dates, &toolFiguresSound}},
        {"tool.doubted", {&founded, &registerClock, &administers, &keyStands, &toolKnown, &doubtPast}},
        {"tool.withdrawn", {&founded, &registerClock, &administers, &keyStands, &toolKnown}},
    };
    return pages;
}

template <class AnyRule>
void addOnce(std::vector<const AnyRule *> &all, const std::vector<const AnyRule *> &more)
{
    for (const AnyRule *rule : more) {
        if (std::find(all.begin(), all.end(), rule) == all.end())
            all.push_back(rule);
    }
}

using JobIndex = std::map<QString, std::vector<const Rule *>, std::less<>>;

JobIndex indexOfJobPages()
{
    JobIndex index;
    index.emplace(QStringLiteral("job.opened"), openingRules());
    for (const auto &page : jobPages()) {
        std::vector<const Rule *> rules = always();
        addOnce(rules, page.rules);
        index.insert_or_assign(QString::fromLatin1(page.kind), rules);
    }
    return index;
}

} // namespace

const std::vector<const Rule *> &rulesFor(QStringView kind)
{
    static const auto index = indexOfJobPages();
    static const std::vector<const Rule *> none;
    const auto at = index.find(kind);
    return at == index.end() ? none : at->second;
}

const std::vector<const RegisterRule *> &registerRulesFor(QStringView kind)
{
    static const std::vector<const RegisterRule *> none;
    for (const auto &page : registerPages()) {
        if (kind == QLatin1String(page.kind))
            return page.rules;
    }
    return none;
}

std::vector<const Rule *> allRules()
{
    std::vector<const Rule *> all = openingRules();
    addOnce(all, always());
    for (const auto &page : jobPages())
        addOnce(all, page.rules);
    return all;
}

std::vector<const RegisterRule *> allRegisterRules()
{
    std::vector<const RegisterRule *> all;
    for (const auto &page : registerPages())
        addOnce(all, page.rules);
    return all;
}

} // namespace core
