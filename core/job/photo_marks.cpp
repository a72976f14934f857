// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/photo_marks.hpp"

#include <algorithm>

namespace core {

using namespace Qt::StringLiterals;

std::vector<PhotoMark> photoMarksIn(const json::Object &body, const Mark &entry)
{
    std::vector<PhotoMark> marks;
    const json::Value *lines = body.find(u"marks");
    for (const json::Value &value : lines && lines->array() ? *lines->array() : json::Array()) {
        const json::Object *line = value.object();
        const auto number = line ? line->integer(u"number") : std::nullopt;
        const auto across = line ? line->integer(u"across") : std::nullopt;
        const auto down = line ? line->integer(u"down") : std::nullopt;
        if (number && across && down)
            marks.push_back({entry, *number, *across, *down, line->text(u"what")});
    }
    return marks;
}

json::Array linesOf(const std::vector<PhotoMark> &marks)
{
    json::Array lines;
    for (const PhotoMark &mark : marks)
        lines.push_back(json::Object{{u"number"_s, mark.number}, {u"across"_s, mark.across}, {u"down"_s, mark.down}, {u"what"_s, mark.what}});
    return lines;
}

qint64 nextMarkNumber(const std::vector<PhotoMark> &marks)
{
    const auto highest = std::max_element(marks.begin(), marks.end(), [](const PhotoMark &a, const PhotoMark &b) { return a.number < b.number; });
    return highest == marks.end() ? 1 : highest->number + 1;
}

std::vector<PhotoMark> numberedBeside(std::vector<PhotoMark> standing, std::vector<PhotoMark> drafts)
{
    for (PhotoMark &draft : drafts) {
        if (std::any_of(standing.begin(), standing.end(), [&](const PhotoMark &one) { return one.number == draft.number; }))
            draft.number = nextMarkNumber(standing);
        standing.push_back(draft);
    }
    return drafts;
}

} // namespace core
