// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/label_flow.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/desktop/flows/ask_paper.hpp"
#include "app/labels/labels.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct LabelFlow {
    Q_DECLARE_TR_FUNCTIONS(LabelFlow)
};

const labels::LabelSize *askSize(Ask &ask, const QString &title)
{
    QStringList words;
    for (const labels::LabelSize &size : labels::labelSizes())
        words << LabelFlow::tr("%1 × %2 mm").arg(size.width).arg(size.height);
    const auto chosen = ask.oneOf(title, LabelFlow::tr("Size of a label"), words);
    return chosen ? &labels::labelSizes()[static_cast<std::size_t>(words.indexOf(*chosen))] : nullptr;
}

std::vector<core::Label> labelsOf(const core::JobState &job, const std::vector<core::InterfaceId> &items)
{
    std::vector<core::Label> wanted = core::labelsOf(job);
    const auto isUnwanted = [&](const core::Label &label) { return std::none_of(items.begin(), items.end(), [&](const core::InterfaceId &id) { return id.text() == label.id; }); };
    if (!items.empty())
        wanted.erase(std::remove_if(wanted.begin(), wanted.end(), isUnwanted), wanted.end());
    return wanted;
}

/// Nothing is asked where there is nothing to choose.
std::optional<std::vector<core::InterfaceId>> askWhich(const std::vector<core::InterfaceId> &chosen, Ask &ask, const QString &title)
{
    if (chosen.empty())
        return chosen;
    const QString all = LabelFlow::tr("All interfaces of the job");
    const auto which = ask.oneOf(title, LabelFlow::tr("Labels for"), {all, LabelFlow::tr("What is chosen: %1").arg(chosen.size())});
    if (!which)
        return std::nullopt;
    return *which == all ? std::vector<core::InterfaceId>() : chosen;
}

} // namespace

void exportLabels(const core::JobState &job, const std::vector<core::InterfaceId> &items, Ask &ask)
{
    const QString title = LabelFlow::tr("Export tag labels");
    const auto which = askWhich(items, ask, title);
    const auto *size = which ? askSize(ask, title) : nullptr;
    const auto paper = size ? askPaper(ask, title) : std::nullopt;
    const auto path = paper ? ask.fileToSave(title, job.facts.workOrder + QStringLiteral("-labels.pdf"), LabelFlow::tr("PDF (*.pdf)")) : std::nullopt;
    if (!path)
        return;
    if (const auto written = labels::writeLabels(labelsOf(job, *which), *path, *size, *paper))
        ask.tell(LabelFlow::tr("The labels were exported"), LabelFlow::tr("%1\nLabels: %2, sheets: %3. Print at 100 %, not fitted to the page.").arg(*path).arg(written->labels).arg(written->sheets));
    else
        ask.tell(LabelFlow::tr("The labels were not exported"), core::errorInWords(written.error()));
}

} // namespace desktop
