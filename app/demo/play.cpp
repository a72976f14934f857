// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/play.hpp"

#include <QCoreApplication>

namespace demo {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Demo", text); }

core::Error inFull(const session::NotSigned &no)
{
    core::Error error = no.error;
    for (const auto &[index, refusals] : no.refusals) {
        for (const core::Refusal &refusal : refusals)
            error.message += QStringLiteral("\n  %1, %2: %3").arg(refusal.rule, refusal.subject, refusal.sentence);
    }
    return error;
}

} // namespace

core::Result<void> turnTo(Play &play, const QString &job)
{
    if (play.named == job)
        return {};
    play.named = job;
    const auto at = play.jobs.find(job);
    play.job = at == play.jobs.end() ? std::nullopt : std::optional(at->second);
    return play.job ? play.session.openJob(*play.job) : core::Result<void>();
}

core::Result<void> say(Play &play, const core::LedgerId &ledger, const std::vector<core::Draft> &drafts)
{
    Q_ASSERT(!drafts.empty());
    const auto key = play.keys.find(drafts.front().author);
    if (key == play.keys.end())
        return core::failure(core::ErrorCode::NotFound, tr("The demo has nobody called %1.").arg(drafts.front().author.text()));
    const auto entries = play.session.sign(ledger, drafts, key->second);
    return entries ? core::Result<void>() : core::failure(inFull(entries.error()));
}

core::Result<void> say(Play &play, const std::vector<core::Draft> &drafts)
{
    if (!play.job)
        return core::failure(core::ErrorCode::BadInput, tr("The story says something before its job is opened."));
    return say(play, *play.job, drafts);
}

core::Draft draft(const QString &who, const QString &kind, const std::optional<QString> &subject, core::json::Object body)
{
    const auto author = core::PersonId::parse(who);
    Q_ASSERT(author); // the story was checked against the cast
    return {*author, core::Instant::fromMilliseconds(0), kind, subject, std::move(body)};
}

} // namespace demo
