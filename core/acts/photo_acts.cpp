// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/act.hpp"

#include <algorithm>

#include "core/job/photo_marks.hpp"

namespace core {

using namespace Qt::StringLiterals;

namespace {

bool addMarks(std::vector<Photo> &photos, const Digest &digest, const std::vector<PhotoMark> &marks)
{
    bool isThere = false;
    for (Photo &photo : photos) {
        if (photo.digest != digest)
            continue;
        photo.marks.insert(photo.marks.end(), marks.begin(), marks.end());
        isThere = true;
    }
    return isThere;
}

bool markPhoto(JobState &job, const Statement &said)
{
    const auto digest = Digest::parse(said.body.text(u"sha256"));
    InterfaceState *item = itemOf(job, said);
    if (!digest || !item)
        return false;
    const std::vector<PhotoMark> marks = photoMarksIn(said.body, markOf(said));
    if (!addMarks(item->photos, *digest, marks))
        return false;
    // A finding has the photo as well, where it is of one.
    for (Finding &finding : job.findings) {
        if (!finding.item || *finding.item == item->listed.id)
            addMarks(finding.photos, *digest, marks);
    }
    return true;
}

} // namespace

std::vector<Act> photoActs()
{
    const auto always = Needed::Always;
    return {
        {"photo.marked"_L1, LedgerSort::Job, "recorded"_L1, SubjectSort::Interface, QT_TRANSLATE_NOOP("Act", "Mark a photo"), QT_TRANSLATE_NOOP("Act", "Photo marked"),
         {field("sha256"_L1, FieldType::Digest, always, QT_TRANSLATE_NOOP("Field", "Digest")),
          records("marks"_L1, always, QT_TRANSLATE_NOOP("Field", "Marks"),
                  {field("number"_L1, FieldType::Integer, always, QT_TRANSLATE_NOOP("Field", "Mark")),
                   field("across"_L1, FieldType::Integer, always, QT_TRANSLATE_NOOP("Field", "Across, ‰")),
                   field("down"_L1, FieldType::Integer, always, QT_TRANSLATE_NOOP("Field", "Down, ‰")),
                   field("what"_L1, FieldType::Text, always, QT_TRANSLATE_NOOP("Field", "What to look at"))})},
         &markPhoto, &noCautions, {}},
    };
}

} // namespace core
