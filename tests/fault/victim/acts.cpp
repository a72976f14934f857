// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/victim/acts.hpp"

#include <QFile>

#include <cstdlib>

#include <dlfcn.h>
#include <unistd.h>

#include "tests/fault/support/crew.hpp"

namespace victim {

namespace {

using core::Error;

/// From here on faults count. Without the shim nobody hears it.
void arm()
{
    using Arm = void (*)();
    if (const auto begin = reinterpret_cast<Arm>(dlsym(RTLD_DEFAULT, "fault_arm")))
        begin();
}

void sayNo(const char *what, const Error &error)
{
    say(QStringLiteral("said %1 %2").arg(QLatin1String(what), QString(error.message).replace(u'\n', u' ')));
}

template <class T>
bool isWell(const char *what, const core::Result<T> &done)
{
    if (!done)
        sayNo(what, done.error());
    return done.has_value();
}

std::optional<core::LedgerId> findJob(db::Store &store)
{
    const auto ledgers = store.ledgers();
    if (!isWell("job", ledgers))
        return std::nullopt;
    for (const db::StoredLedger &ledger : *ledgers)
        if (ledger.role == db::LedgerRole::Job)
            return ledger.id();
    return std::nullopt;
}

bool signOne(session::Session &session, const core::LedgerId &job, int number)
{
    const auto entries = crew::listOne(session, job, number);
    if (!entries)
        sayNo("sign", entries.error().error);
    else
        say(QStringLiteral("acked ") + entries->front().hash.hex());
    if (const auto &trouble = session.store().checkpointTrouble())
        sayNo("trouble", *trouble);
    return entries.has_value();
}

/// Signs on, whatever happened to the entry before.
void signMany(session::Session &session, const core::LedgerId &job, int first, int last, const QString &ballast)
{
    for (int number = first; number <= last; ++number)
        if (!signOne(session, job, number) && !ballast.isEmpty() && QFile::remove(ballast))
            say(QStringLiteral("room"));
}

int close(db::Store &store)
{
    if (!isWell("close", store.close()))
        return 1;
    say(QStringLiteral("closed"));
    return 0;
}

} // namespace

void say(const QString &line)
{
    const QByteArray bytes = line.toUtf8() + '\n';
    if (::write(STDOUT_FILENO, bytes.constData(), static_cast<std::size_t>(bytes.size())) != bytes.size())
        std::abort();
}

int append(const QString &path, int count, const QString &ballast)
{
    if (qEnvironmentVariable("FAULT_CALLS") != QStringLiteral("memory"))
        arm();
    auto store = db::Store::open(path, db::Access::ReadWrite);
    if (!isWell("open", store))
        return 1;
    session::Session session(**store, crew::clock(), core::leastCost);
    if (!isWell("refresh", session.refresh()))
        return 1;
    const auto job = findJob(**store);
    if (!job)
        return 1;
    signMany(session, *job, 0, 0, ballast);
    arm(); // memory: opening is another matter, and one entry is there to be lost
    signMany(session, *job, 1, count, ballast);
    return close(**store);
}

int life(const QString &path, int count)
{
    arm();
    auto store = db::Store::create(path);
    if (!isWell("create", store))
        return 1;
    session::Session session(**store, crew::clock(), core::leastCost);
    QString trouble = crew::enrol(session);
    if (trouble.isEmpty())
        trouble = crew::beginJob(session);
    if (!trouble.isEmpty()) {
        sayNo("people", {core::ErrorCode::Io, trouble});
        return 1;
    }
    const auto job = findJob(**store);
    if (!job)
        return 1;
    say(QStringLiteral("ready"));
    signMany(session, *job, 1, count, {});
    const auto photo = (*store)->attachments().put(QByteArray(50'000, 'p'), QStringLiteral("image/jpeg"));
    if (isWell("attach", photo))
        say(QStringLiteral("attached ") + photo->hex());
    isWell("checkpoint", (*store)->checkpoint());
    if (isWell("backup", (*store)->backUp(path + QStringLiteral(".backup"), db::Overwrite::No, crew::now())))
        say(QStringLiteral("copied"));
    signMany(session, *job, count + 1, count + 3, {});
    return close(**store);
}

} // namespace victim
