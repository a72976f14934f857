// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/photos.hpp"

#include <algorithm>

#include "core/job/photo_marks.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

const Photo *photoOf(const Case &c)
{
    const auto digest = Digest::parse(c.text(u"sha256"));
    if (!digest || !c.item)
        return nullptr;
    const auto at = std::find_if(c.item->photos.begin(), c.item->photos.end(), [&](const Photo &photo) { return photo.digest == *digest; });
    return at == c.item->photos.end() ? nullptr : &*at;
}

QString marker() { return inWords(QT_TRANSLATE_NOOP("Rule", "whoever marks the photo")); }

} // namespace

std::optional<Refusal> photoIsOnTheItem(const Case &c)
{
    if (!c.item || photoOf(c))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has no such photo. Attach it first, then mark it.")).arg(c.itemName()), marker());
}

std::optional<Refusal> marksCanBeTold(const Case &c)
{
    std::vector<PhotoMark> on = photoOf(c) ? photoOf(c)->marks : std::vector<PhotoMark>();
    const std::vector<PhotoMark> more = photoMarksIn(c.draft.body, {0, c.draft.author, c.draft.at});
    if (more.empty())
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "There is no mark to sign. Place one on the photo.")), marker());
    for (const PhotoMark &mark : more) {
        const QString number = QString::number(mark.number);
        if (mark.across > wholePicture || mark.down > wholePicture)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Mark %1 lies beside the photo: both its places are 0 to 1000 thousandths.")).arg(number), marker());
        const bool isTaken = std::any_of(on.begin(), on.end(), [&](const PhotoMark &one) { return one.number == mark.number; });
        if (mark.number == 0 || isTaken)
            return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The number %1 cannot be used, or stands on the photo already. The next one is %2.")).arg(number, QString::number(nextMarkNumber(on))), marker());
        on.push_back(mark);
    }
    return std::nullopt;
}

std::optional<Refusal> copyIsAnotherFile(const Case &c)
{
    const QString of = c.text(u"copy_of");
    if (of.isEmpty() || of != c.text(u"sha256"))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The photo is said to be a copy of itself. Name the file that it was made from, or say nothing where it is the file itself.")),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever attaches the photo")));
}

const Rule photoThere{"photo.there"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A mark on a picture that nobody attached points at nothing."), &photoIsOnTheItem};
const Rule photoCopy{"photo.copy"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever compares the copy with its original has to know which file that is."), &copyIsAnotherFile};
const Rule photoMarks{"photo.marks"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Two marks of one number send two people to two places."), &marksCanBeTold};

} // namespace core::rules
