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
    const auto shown = std::min(static_cast<qsizetype>(part.things.size()), most);
    for (qsizetype i = 0; i < shown; ++i) {
        const SheetThing &thing = part.things[static_cast<std::size_t>(i)];
        if (!lines.empty() && lines.back().under == thing.under && lines.back().state == thing.state)
            lines.back().what += u"; "_s + thing.what;
        else
            lines.push_back({thing.under, thing.state, thing.what});
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
