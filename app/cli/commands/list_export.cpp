// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QSaveFile>

#include "app/cli/opened.hpp"
#include "core/list/interface_list.hpp"
#include "core/list/lessons.hpp"
#include "core/value/counted.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<void> write(const QString &path, const QByteArray &bytes)
{
    QSaveFile file(path);
    if (file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit())
        return {};
    return core::failure(core::ErrorCode::Io, tr("%1 cannot be written: %2").arg(path, file.errorString()));
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto opened = openJob(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const auto state = opened->session->state();
    const QByteArray bytes = arguments.has(u"lessons"_s) ? core::writeInterfaceList(core::listForNextJob(*state)) : core::writeInterfaceList(*state);
    const qint64 interfaces = static_cast<qint64>(state->items.size());
    const auto path = arguments.textIfGiven(u"to"_s);
    if (!path) {
        QString text = QString::fromUtf8(bytes);
        if (text.endsWith(u'\n'))
            text.chop(1); // printing ends the last line
        return Answer{Exit::Good, text, {{u"interfaces"_s, interfaces}, {u"csv"_s, QString::fromUtf8(bytes)}}};
    }
    if (const auto written = write(*path, bytes); !written)
        return core::failure(written.error());
    return Answer{Exit::Good, tr("Wrote %1 to %2.").arg(core::counted(interfaces, tr("1 interface"), tr("%1 interfaces")), *path), {{u"interfaces"_s, interfaces}, {u"file"_s, *path}}};
}

} // namespace

Command listExportCommand()
{
    return {"list-export"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write a job's interface list as CSV that list-import takes again."),
            {storeOption(), jobOption(), value("to"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "The file to write; the standard output when left out.")),
             flag("lessons"_L1, QT_TRANSLATE_NOOP("Cli", "For the next job: each note tells what this job did otherwise than its list."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
