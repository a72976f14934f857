// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/tags.hpp"

#include <algorithm>

#include "core/job/linked.hpp"
#include "core/rules/people.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

/// A block of more tags than this is a slip of the finger. Common practice.
constexpr qint64 longestBlock = 1000;

QString lead() { return inWords(QT_TRANSLATE_NOOP("Rule", "the lead")); }
QString technician() { return inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")); }

/// The block that the draft names by its ends, or nullptr.
const TagBlock *named(const Case &c)
{
    const auto first = c.draft.body.integer(u"first");
    const auto last = c.draft.body.integer(u"last");
    const auto &blocks = c.job.tags.blocks;
    const auto at = std::find_if(blocks.begin(), blocks.end(), [&](const TagBlock &one) { return one.first == first && one.last == last; });
    return at == blocks.end() ? nullptr : &*at;
}

QString blocksOut(const Case &c)
{
    QStringList texts;
    for (const TagBlock &block : c.job.tags.blocks) {
        if (!block.returned)
            texts << blockText(block);
    }
    return texts.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Rule", "none")) : texts.join(u", "_s);
}

/// A number of the block that is or was on an interface, and that interface.
std::optional<std::pair<QString, InterfaceId>> usedOf(const JobState &job, const TagBlock &block)
{
    for (auto at = job.tagAt.constKeyValueBegin(); at != job.tagAt.constKeyValueEnd(); ++at) {
        const auto number = tagNumber(at->first);
        if (number && block.has(*number))
            return std::pair(at->first, at->second);
    }
    return std::nullopt;
}

/// How many of the block were lost in linked jobs, from items that were given over with their tags.
qint64 lostElsewhere(const JobState &job, const TagBlock &block)
{
    qint64 lost = 0;
    for (const InterfaceState &item : job.items) {
        const auto there = whereTakenOn(job, item);
        const std::vector<LostTag> none;
        for (const LostTag &one : there ? there->job->tags.lost : none) {
            const auto number = one.item == item.listed.id && item.removal && one.tag == item.removal->tag ? tagNumber(one.tag) : std::nullopt;
            lost += number && block.has(*number) ? 1 : 0;
        }
    }
    return lost;
}

} // namespace

std::optional<Refusal> blockIsNew(const Case &c)
{
    const qint64 first = c.draft.body.integer(u"first").value_or(0);
    const qint64 last = c.draft.body.integer(u"last").value_or(0);
    if (first < 1 || last < first || last - first >= longestBlock)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A block of tags runs from a first number, 1 or more, to a last that is not before it, and has at most %1 tags; not from %2 to %3.")).arg(longestBlock).arg(first).arg(last), lead());
    const TagBlock block{first, last, {0, c.draft.author, c.draft.at}, std::nullopt};
    for (const TagBlock &other : c.job.tags.blocks) {
        if (other.has(first) || other.has(last) || block.has(other.first))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The block %1 was issued in entry %2; a number is issued once.")).arg(blockText(other)).arg(other.issued.seq), lead());
    }
    if (const auto used = usedOf(c.job, block))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 was hung on %2 already; a number is used once. Issue a block without it.")).arg(used->first, used->second.text()), lead());
    return std::nullopt;
}

std::optional<Refusal> tagIsOfABlock(const Case &c)
{
    if (c.job.tags.blocks.empty())
        return std::nullopt;
    const QString tag = c.text(u"tag");
    if (tag.isEmpty())
        return std::nullopt; // whether one has to hang is for the form
    const TagBlock *block = blockOf(c.job.tags, tag);
    if (block && !block->returned)
        return std::nullopt;
    if (block)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 is of the block %2, which was returned in entry %3. Blocks that are out: %4.")).arg(tag, blockText(*block)).arg(block->returned->seq).arg(blocksOut(c)), technician());
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 is of no block that was issued to this job. Blocks that are out: %2.")).arg(tag, blocksOut(c)), inWords(QT_TRANSLATE_NOOP("Rule", "a technician, with a tag of this job; or the lead, by issuing more")));
}

std::optional<Refusal> blockIsOut(const Case &c)
{
    const TagBlock *block = named(c);
    if (block && !block->returned)
        return std::nullopt;
    if (block)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The block %1 was returned in entry %2.")).arg(blockText(*block)).arg(block->returned->seq), lead());
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "No block from %1 to %2 was issued to this job. Blocks that are out: %3.")).arg(c.draft.body.integer(u"first").value_or(0)).arg(c.draft.body.integer(u"last").value_or(0)).arg(blocksOut(c)), lead());
}

std::optional<Refusal> noneOfTheBlockHangs(const Case &c)
{
    const TagBlock *block = named(c);
    if (!block || block->returned)
        return std::nullopt;
    for (const InterfaceState &one : c.job.items) {
        const InterfaceState &item = asItIsNow(c.job, one);
        // One that was hung instead, in the job that took the item on, is of no block of this one whatever its number.
        if (isElsewhere(one) && (!one.removal || !item.removal || item.removal->tag != one.removal->tag))
            continue;
        const auto number = item.removal && !item.restoration ? tagNumber(item.removal->tag) : std::nullopt;
        if (number && block->has(*number))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 of the block %2 still hangs on %3 (%4), which is open.")).arg(item.removal->tag, blockText(*block), item.listed.id.text(), item.listed.name), technician());
    }
    return std::nullopt;
}

std::optional<Refusal> blockIsCountedWhole(const Case &c)
{
    const TagBlock *block = named(c);
    if (!block || block->returned)
        return std::nullopt;
    const qint64 counted = c.draft.body.integer(u"counted").value_or(0);
    const qint64 lost = lostOf(c.job.tags, *block) + lostElsewhere(c.job, *block);
    if (counted == block->size() - lost)
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The block %1 has %2 tags, %3 of them lost; %4 are in the hand instead of %5. Find the difference: a tag may hang on something that nobody logged.")).arg(blockText(*block)).arg(block->size()).arg(lost).arg(counted).arg(block->size() - lost), lead());
}

std::optional<Refusal> tagHangs(const Case &c)
{
    if (!c.item || carriesTag(*c.item))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not open with a tag on it.")).arg(c.itemName()), {});
}

std::optional<Refusal> otherTagHangs(const Case &c)
{
    const auto id = InterfaceId::parse(c.text(u"other"));
    const InterfaceState *other = id ? c.job.item(*id) : nullptr;
    if (!c.item || !id)
        return std::nullopt;
    if (!other || other == c.item || !carriesTag(*other))
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" is no other interface that is open with a tag on it.")).arg(id->text()), inWords(QT_TRANSLATE_NOOP("Rule", "whoever exchanges the tags")));
    for (const InterfaceState *one : {c.item, other}) {
        if (one->stillAttached)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 (%2) was found still attached: which of the two is open is what the tags have to say. It is freed first.")).arg(one->listed.id.text(), one->listed.name), inWords(QT_TRANSLATE_NOOP("Rule", "a technician of the crew")));
    }
    const auto hand = handOf(c.job, *other, c.draft.author);
    if (!hand && mayInspect(c, *other))
        return std::nullopt;
    if (!hand)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is not authorised to inspect %2 (%3), and the tags of both are exchanged.")).arg(c.authorName(), other->listed.id.text(), other->listed.name), inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector")));
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in %2; the tags are exchanged by somebody who had none in either.")).arg(c.authorName(), itemInWords(*hand)), inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector")));
}

std::optional<Refusal> struckBlockIsUnused(const Case &c)
{
    const qint64 seq = c.draft.body.integer(u"entry").value_or(0);
    for (const TagBlock &block : c.job.tags.blocks) {
        if (block.issued.seq != seq)
            continue;
        if (block.returned)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The block %1 was issued and returned (entry %2); strike the return first, if it was a mistake.")).arg(blockText(block)).arg(block.returned->seq), lead());
        if (const auto used = usedOf(c.job, block))
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Tag %1 of the block %2 was hung on %3, so the block was issued. Return it when it is done with.")).arg(used->first, blockText(block), used->second.text()), lead());
    }
    return std::nullopt;
}

const Rule tagsBlock{"tags.block"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two tags of one number point at two places."), &blockIsNew};
const Rule tagsFromBlock{"tags.from-block"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what was counted out can be counted in."), &tagIsOfABlock};
const Rule tagsOut{"tags.out"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A block comes back as it went out."), &blockIsOut};
const Rule tagsHanging{"tags.hanging"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A block that is complete has no tag on an aircraft."), &noneOfTheBlockHangs};
const Rule tagsCounted{"tags.counted"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A tag that is missing marks a joint, or lies in an engine."), &blockIsCountedWhole};
const Rule tagHung{"tag.hung"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only what hung can be lost."), &tagHangs};
const Rule tagOther{"tag.other"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two tags that hang crosswise point at two wrong places."), &otherTagHangs};
const Rule strikeTags{"strike.tags"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Striking an issue must not make its tags disappear."), &struckBlockIsUnused};

} // namespace core::rules
