// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/scan/scanned.hpp"

#include <QCoreApplication>

#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct Scan {
    Q_DECLARE_TR_FUNCTIONS(Scan)
};

/// Whatever was scanned may be long.
QString quoted(const QString &text)
{
    constexpr qsizetype most = 60;
    return text.size() > most ? text.first(most) + QStringLiteral(" …") : text;
}

/// Whether its job is here is for the store to say; more than one of that work order are not told apart by a label.
ScanAnswer notOfThisJob(const QString &text, const core::LabelText &label, const core::JobState *job, const core::Result<std::vector<core::LedgerId>> &jobs)
{
    const QString item = quoted(label.item.text());
    const QString workOrder = quoted(label.workOrder);
    const QString whose = Scan::tr("The label names %1 of %2.").arg(item, workOrder);
    const QString whatIsOpen = job ? Scan::tr("The open job is %1.").arg(job->facts.workOrder) : Scan::tr("No job is open.");
    if (jobs && jobs->size() == 1)
        return {{}, {}, {}, OtherJob{jobs->front(), text, Scan::tr("%1 %2").arg(whose, whatIsOpen), Scan::tr("Open %1 and show %2").arg(workOrder, item)}};
    const QString title = job ? Scan::tr("The label is of another job") : Scan::tr("Open the job of the label first");
    if (!jobs)
        return {{}, title, Scan::tr("%1 %2 Whether this store has that job cannot be said: %3").arg(whose, whatIsOpen, core::errorInWords(jobs.error()))};
    if (jobs->empty())
        return {{}, title, Scan::tr("%1 %2 No job of this store has that work order. Open the store that has it, or look whether the label hangs in the right place.").arg(whose, whatIsOpen)};
    return {{}, title, Scan::tr("%1 %2 Several jobs of this store have that work order. Open the one that is meant, and scan again.").arg(whose, whatIsOpen)};
}

ScanAnswer nothing(const QString &text, const core::JobState *job)
{
    const QString title = Scan::tr("What was scanned is not known here");
    if (!job)
        return {{}, title, Scan::tr("\"%1\" is no label of an interface. Labels are scanned while their job is open.").arg(quoted(text))};
    return {{}, title, Scan::tr("\"%1\" is no label, tag or interface of %2. To scan it into a field, choose the field first.").arg(quoted(text), job->facts.workOrder)};
}

} // namespace

ScanAnswer answerToScan(const QString &text, const core::JobState *job, const JobsOf &jobsOf, Shown shown, ScannerKeys::Focus focus)
{
    const core::Scanned scanned = job ? core::meantBy(*job, text) : core::Scanned{core::ScanMeans::OtherJob, {}, core::readLabelText(text)};
    const bool isLabel = scanned.label.has_value();
    if (isLabel && scanned.means == core::ScanMeans::OtherJob)
        return notOfThisJob(text, *scanned.label, job, jobsOf(scanned.label->workOrder));
    if (isLabel && scanned.means == core::ScanMeans::UnknownItem)
        return {{}, Scan::tr("The interface is not on the list"), Scan::tr("The label is of %1 of this job, whose list has no such interface (any more). Look at the list, or print the labels anew.").arg(quoted(scanned.label->item.text()))};
    if (scanned.item && (isLabel || shown == Shown::Job))
        return {scanned.item};
    return focus == ScannerKeys::Focus::OnText ? ScanAnswer() : nothing(text, job);
}

} // namespace desktop
