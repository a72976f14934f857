// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/untouched.hpp"

#include "core/rules/independence.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString anybody() { return inWords(QT_TRANSLATE_NOOP("Rule", "a member of the crew or an inspector")); }

} // namespace

std::optional<Refusal> wasNeverUndone(const Case &c)
{
    if (!c.item)
        return std::nullopt;
    if (c.item->removal)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was undone in this job (entry %2), so it is restored and inspected.")).arg(c.itemName()).arg(c.item->removal->mark.seq), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
    if (c.item->stopped)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 stopped in the middle of %2 (entry %3): %4 So it was touched.")).arg(c.reg.nameOf(c.item->stopped->mark.by), c.itemName()).arg(c.item->stopped->mark.seq).arg(c.item->stopped->word),
                       inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
    return std::nullopt;
}

std::optional<Refusal> isNotSaidYet(const Case &c)
{
    if (!c.item || c.item->removal)
        return std::nullopt;
    const bool isAboutApplying = c.draft.kind == u"interface.not_applicable";
    const std::optional<Mark> said = isAboutApplying ? (c.item->notApplicable ? std::optional(c.item->notApplicable->mark) : std::nullopt) : c.item->undisturbed;
    if (!said)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 said this of %2 in entry %3, and it stands.")).arg(c.reg.nameOf(said->by), c.itemName()).arg(said->seq), {});
}

std::optional<Refusal> criticalByInspector(const Case &c)
{
    return c.item && c.item->listed.critical ? inspectorIsAuthorised(c) : std::nullopt;
}

std::optional<Refusal> struckUndoingByInspector(const Case &c)
{
    if (!c.item || c.item->removal || !c.item->left.undoing || mayInspect(c, *c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was said to be undone (entry %2), and that was struck. An inspector who had no hand in it looks that nothing was touched.")).arg(c.itemName()).arg(c.item->left.undoing->seq), inWords(QT_TRANSLATE_NOOP("Rule", "an authorised inspector who had no hand in it")));
}

std::optional<Refusal> thereIsSomethingToAgreeTo(const Case &c)
{
    if (!c.item || (c.item->notApplicable && !c.item->notApplicable->agreed))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody waits for an agreement that %1 is not applicable.")).arg(c.itemName()), anybody());
}

std::optional<Refusal> agreedByAnother(const Case &c)
{
    if (!c.item || !c.item->notApplicable || c.item->notApplicable->mark.by != c.draft.author)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 said that %2 is not applicable; a second person agrees to it.")).arg(c.authorName(), c.itemName()), anybody());
}

const Rule untouchedStage{"untouched.never-undone"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was undone is not made untouched by a word."), &wasNeverUndone};
const Rule untouchedOnce{"untouched.once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A second signature would hide which one counts."), &isNotSaidYet};
const Rule undisturbedInspector{"untouched.inspector"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A critical interface is looked at by somebody who knows what to look for."), &criticalByInspector};
std::optional<Refusal> undoingIsNotInQuestion(const Case &c)
{
    if (!c.item || !isUndoingInQuestion(*c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 was said to be undone again (entry %2), and that was struck: what is in it nobody knows. Undo it and restore it; or somebody with authority to overrule strikes that entry as never so.")).arg(c.itemName()).arg(c.item->left.undoing->seq), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew; or a person with authority to overrule")));
}

const Rule undoingClear{"untouched.in-question"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Eyes outside a joint do not see a blank in it."), &undoingIsNotInQuestion};
const Rule untouchedStruck{"untouched.struck"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever undid something could say that they did not."), &struckUndoingByInspector};
const Rule notApplicableStated{"notapplicable.stated"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An agreement belongs to what was said."), &thereIsSomethingToAgreeTo};
const Rule notApplicableSecond{"notapplicable.second-person"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One person's mistake must not take a critical interface off the list."), &agreedByAnother};

} // namespace core::rules
