// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "app/cli/audit_files.hpp"
#include "app/cli/opened.hpp"
#include "app/labels/labels.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<const labels::LabelSize *> sizeIn(const Arguments &arguments)
{
    const auto named = arguments.textIfGiven(u"size"_s);
    if (!named)
        return &labels::labelSizes().front();
    if (const labels::LabelSize *size = labels::findLabelSize(*named))
        return size;
    QStringList names;
    for (const labels::LabelSize &size : labels::labelSizes())
        names << QString(size.name);
    return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no size of label. There are, in millimetres: %2.").arg(*named, names.join(u", "_s)));
}

/// All of the job's labels, or those of the named interfaces, in the order in which they were named.
core::Result<std::vector<core::Label>> labelsIn(const Arguments &arguments, const core::JobState &job)
{
    std::vector<core::Label> all = core::labelsOf(job);
    if (!arguments.has(u"item"_s))
        return all;
    std::vector<core::Label> wanted;
    for (const QString &id : arguments.texts(u"item"_s)) {
        const auto at = std::find_if(all.begin(), all.end(), [&](const core::Label &label) { return label.id == id; });
        if (at == all.end())
            return core::failure(core::ErrorCode::BadInput, tr("The job has no interface \"%1\".").arg(id));
        wanted.push_back(*at);
    }
    return wanted;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto size = sizeIn(arguments);
    if (!size)
        return core::failure(size.error());
    const auto paper = paperIn(arguments);
    if (!paper)
        return core::failure(paper.error());
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto wanted = labelsIn(arguments, *opened->session->state());
    if (!wanted)
        return core::failure(wanted.error());
    const QString path = arguments.text(u"to"_s);
    const auto written = labels::writeLabels(*wanted, path, **size, *paper);
    if (!written)
        return core::failure(written.error());
    return Answer{Exit::Good, tr("Wrote %1\nLabels: %2, sheets: %3. Print at 100 %, not fitted to the page.").arg(path).arg(written->labels).arg(written->sheets),
                  {{u"file"_s, path}, {u"labels"_s, written->labels}, {u"sheets"_s, written->sheets}, {u"size"_s, QString((*size)->name)}}};
}

} // namespace

Command labelsCommand()
{
    return {"labels"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write sheets of tag labels, each with a code that a scanner reads, for the interfaces of a job."),
            {storeOption(), value("to"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "The PDF to write."), Given::Always), jobOption(),
             value("size"_L1, "SIZE", QT_TRANSLATE_NOOP("Cli", "Width and height of a label in millimetres: 70x37, 50x25 or 105x74; 70x37 when left out.")), paperOption(),
             values("item"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "Only the label of this interface; again for another."))},
            Fonts::Needed,
            &run};
}

} // namespace cli
