// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/one_page.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Sheet", text); }

} // namespace

OnePage sheetOf(SheetSort sort, const JobState &job, const Register &reg, Instant printed)
{
    return sort == SheetSort::Wall ? wallSheet(job, reg, printed) : handoverSheet(job, reg, printed);
}

std::vector<SheetLine> linesOf(const SheetPart &part, qsizetype most)
{
    std::vector<SheetLine> lines;
    const bool isOneLine = part.setting == SheetSetting::LineAHeading;
    const auto shown = static_cast<std::size_t>(std::clamp(most, qsizetype{0}, static_cast<qsizetype>(part.things.size())));
    for (std::size_t i = 0; i < shown; ++i) {
        const SheetThing &thing = part.things[i];
        const bool isUnderTheSame = i > 0 && part.things[i - 1].under == thing.under;
        const bool isAlike = isUnderTheSame && part.things[i - 1].state == thing.state;
        const QString begun = isOneLine ? tr("%1: %2").arg(thing.state, thing.what) : thing.what;
        if (isAlike)
            lines.back().what += u"; "_s + thing.what;
        else if (isUnderTheSame && isOneLine)
            lines.back().what += u'\n' + begun;
        else
            lines.push_back({thing.under, isOneLine ? QString() : thing.state, begun});
    }
    return lines;
}

QString leftOutInWords(const SheetPart &part, qsizetype most)
{
    const qsizetype left = static_cast<qsizetype>(part.things.size()) - most;
    return left > 0 ? tr("and %1 more; see the program").arg(left) : QString();
}

QString shortened(const QString &text, qsizetype most)
{
    const QString cut = tr(" … (goes on; see the program)");
    return text.size() <= most ? text : text.left(most - cut.size()).trimmed() + cut;
}

} // namespace core
