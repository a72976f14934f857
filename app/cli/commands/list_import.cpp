// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFile>

#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"
#include "app/cli/tell.hpp"
#include "app/session/rehearsal.hpp"
#include "core/list/interface_list.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

Answer faultsIn(const std::vector<core::Error> &faults)
{
    QStringList lines;
    core::json::Array json;
    for (const core::Error &fault : faults) {
        lines << core::errorInWords(fault);
        json.emplace_back(errorJson(fault));
    }
    lines << tr("Nothing was imported. Faults: %1").arg(faults.size());
    return {Exit::No, {}, {{u"imported"_s, 0}, {u"faults"_s, std::move(json)}}, lines.join(u'\n')};
}

QString previewText(const core::ListPreview &preview)
{
    std::vector<std::vector<QString>> rows{preview.columns};
    rows.insert(rows.end(), preview.rows.begin(), preview.rows.end());
    return columns(rows) + u'\n' + preview.summary;
}

std::vector<core::Draft> draftsOf(const std::vector<core::ListedRow> &rows, const core::PersonId &author)
{
    std::vector<core::Draft> drafts;
    for (const core::ListedRow &row : rows)
        drafts.push_back({author, core::Instant::fromMilliseconds(0), u"interface.listed"_s, row.id.text(), row.body});
    return drafts;
}

core::Result<Answer> rehearse(const session::Session &session, const std::vector<core::Draft> &drafts, const QString &preview)
{
    session::Rehearsal rehearsal(session);
    for (const core::Draft &draft : drafts) {
        if (const auto refusals = rehearsal.take(draft); !refusals.empty())
            return Answer{Exit::No, {}, {{u"imported"_s, 0}, {u"refused"_s, refusalsJson(refusals)}}, refusalsText(refusals)};
    }
    return Answer{Exit::Good, preview + u'\n' + tr("All of it would be taken."), {{u"imported"_s, 0}, {u"would_import"_s, static_cast<qint64>(drafts.size())}}};
}

core::Result<Answer> sign(session::Session &session, const std::vector<core::Draft> &drafts, const Arguments &arguments, const QString &preview)
{
    const auto secrets = Secrets::of(arguments);
    const auto secret = secrets ? secrets->of(drafts.front().author) : core::failure(secrets.error());
    if (!secret)
        return core::failure(secret.error());
    const auto entries = session.sign(*session.job(), drafts, session::Signer{drafts.front().author, *secret});
    if (!entries)
        return notSigned(entries.error());
    Answer answer = signedAnswer(*entries, preview + u'\n' + tr("Imported."));
    answer.json.set(u"imported"_s, static_cast<qint64>(entries->size()));
    return answer;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto author = personIn(arguments, u"by"_s);
    if (!author)
        return core::failure(author.error());
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    QFile file(arguments.text(u"file"_s));
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("%1 cannot be read: %2").arg(file.fileName(), file.errorString()));
    const bool dryRun = arguments.has(u"dry-run"_s);
    auto opened = openJob(arguments, context, dryRun ? db::Access::ReadOnly : db::Access::ReadWrite);
    if (!opened)
        return core::failure(opened.error());
    const auto list = core::readInterfaceList(file.readAll(), {file.fileName(), *kinds, *opened->session->state()});
    if (!list)
        return faultsIn(list.error());
    const auto drafts = draftsOf(*list, *author);
    if (drafts.empty())
        return core::failure(core::ErrorCode::BadInput, tr("%1 lists no interface.").arg(file.fileName()));
    const QString preview = previewText(core::previewOf(*list, *kinds));
    return dryRun ? rehearse(*opened->session, drafts, preview) : sign(*opened->session, drafts, arguments, preview);
}

} // namespace

Command listImportCommand()
{
    return {"list-import"_L1,
            QT_TRANSLATE_NOOP("Cli", "Import an interface list (CSV): all of it, or none of it with every fault told."),
            {storeOption(), position("file"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "The list.")), jobOption(),
             value("by"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Who signs the list."), Given::Always), pinFileOption(),
             flag("dry-run"_L1, QT_TRANSLATE_NOOP("Cli", "Show and check the list; sign nothing."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
