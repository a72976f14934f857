// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/opened.hpp"

#include <QCoreApplication>

#include <cstdio>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

QString listOf(const std::vector<session::JobRow> &rows)
{
    QString list;
    for (const session::JobRow &row : rows)
        list += u"\n  %1  %2  %3"_s.arg(row.ledger.text(), row.summary.workOrder, row.summary.title);
    return list;
}

/// What a person must know about their own key, beside whatever the command answers.
void tellPerson(const QString &sentence, const logging::Log &log)
{
    log.warning(u"key.tried", {{u"text"_s, sentence}});
    std::fprintf(stderr, "%s\n", qUtf8Printable(sentence));
}

} // namespace

core::Result<Opened> openStore(const Arguments &arguments, const Context &context, db::Access access)
{
    auto store = db::Store::open(arguments.text(u"store"_s), access);
    if (!store)
        return core::failure(store.error());
    auto session = std::make_unique<session::Session>(**store, context.clock);
    session->setTell([&log = context.log](const QString &sentence) { tellPerson(sentence, log); });
    if (const auto read = session->refresh(); !read)
        return core::failure(read.error());
    return Opened{*std::move(store), std::move(session)};
}

core::Result<Opened> openJob(const Arguments &arguments, const Context &context, db::Access access, IfDamaged ifDamaged)
{
    auto opened = openStore(arguments, context, access);
    if (!opened)
        return opened;
    if (const auto job = openNamedJob(*opened->session, arguments.textIfGiven(u"job"_s)); !job)
        return core::failure(job.error());
    const auto damage = opened->session->trouble();
    if (damage && ifDamaged == IfDamaged::Refuse)
        return core::failure(*damage);
    return opened;
}

core::Result<void> openNamedJob(session::Session &session, const std::optional<QString> &named)
{
    const auto rows = session.jobs();
    if (!rows)
        return core::failure(rows.error());
    std::vector<session::JobRow> meant;
    for (const session::JobRow &row : *rows) {
        if (!named || row.ledger.text() == *named || row.summary.workOrder == *named)
            meant.push_back(row);
    }
    if (meant.size() == 1)
        return session.openJob(meant.front().ledger);
    if (rows->empty())
        return core::failure(core::ErrorCode::BadInput, tr("This store has no job yet."));
    if (meant.empty())
        return core::failure(core::ErrorCode::BadInput, tr("No job is called \"%1\". There are:").arg(*named) + listOf(*rows));
    return core::failure(core::ErrorCode::BadInput, tr("Several jobs could be meant. Name one with --job and its ledger:") + listOf(meant));
}

core::Result<core::PersonId> personIn(const Arguments &arguments, const QString &option)
{
    const QString text = arguments.text(option);
    const auto id = core::PersonId::parse(text);
    if (!id)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" cannot be a person's id.").arg(text));
    return *id;
}

} // namespace cli
