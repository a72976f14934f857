// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/scan/scanned.hpp"

#include <QCoreApplication>

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

ScanAnswer notOfThisJob(const core::LabelText &label, const core::JobState *job)
{
    const QString whose = Scan::tr("It is of %1 of %2.").arg(quoted(label.item.text()), quoted(label.workOrder));
    if (!job)
        return {{}, Scan::tr("Open the job of the label first"), Scan::tr("%1 Open that job, then scan again.").arg(whose)};
    return {{}, Scan::tr("The label is of another job"), Scan::tr("%1 The open job is %2. Open the other one and scan again, or look whether the label hangs in the right place.").arg(whose, job->facts.workOrder)};
}

ScanAnswer nothing(const QString &text, const core::JobState *job)
{
    const QString title = Scan::tr("What was scanned is not known here");
    if (!job)
        return {{}, title, Scan::tr("\"%1\" is no label of an interface. Labels are scanned while their job is open.").arg(quoted(text))};
    return {{}, title, Scan::tr("\"%1\" is no label, tag or interface of %2. To scan it into a field, choose the field first.").arg(quoted(text), job->facts.workOrder)};
}

} // namespace

ScanAnswer answerToScan(const QString &text, const core::JobState *job, Shown shown, ScannerKeys::Focus focus)
{
    const core::Scanned scanned = job ? core::meantBy(*job, text) : core::Scanned{core::ScanMeans::OtherJob, {}, core::readLabelText(text)};
    const bool isLabel = scanned.label.has_value();
    if (isLabel && scanned.means == core::ScanMeans::OtherJob)
        return notOfThisJob(*scanned.label, job);
    if (isLabel && scanned.means == core::ScanMeans::UnknownItem)
        return {{}, Scan::tr("The interface is not on the list"), Scan::tr("The label is of %1 of this job, whose list has no such interface (any more). Look at the list, or print the labels anew.").arg(quoted(scanned.label->item.text()))};
    if (scanned.item && (isLabel || shown == Shown::Job))
        return {scanned.item};
    return focus == ScannerKeys::Focus::OnText ? ScanAnswer() : nothing(text, job);
}

} // namespace desktop
