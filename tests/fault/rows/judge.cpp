// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/judge.hpp"

#include <QFile>
#include <QRegularExpression>

#include "db/store.hpp"
#include "tests/fault/support/check.hpp"

namespace judge {

namespace {

/// How the process ended, when it may not end like that.
QString badEnd(const rounds::Told &told, const rounds::Fault &fault)
{
    if (told.hangs)
        return QStringLiteral("it did not come to an end");
    if (told.otherSignal != 0)
        return QStringLiteral("it crashed with signal %1").arg(told.otherSignal);
    // For want of memory a program may end itself.
    if (told.isAborted && fault.calls != QStringLiteral("memory"))
        return QStringLiteral("it aborted");
    return {};
}

/// "Nothing was recorded" must be true. One entry may be there unclaimed only when the process died while signing it.
QString untrue(const rounds::Told &told, const check::Outcome &left, const rounds::Fault &fault)
{
    const bool isDead = told.isKilled || told.isAborted;
    const bool diedAfterSayingNo = fault.does == QStringLiteral("last") && !told.said.isEmpty();
    const int mayBeThere = isDead && !diedAfterSayingNo ? 1 : 0;
    const bool saidPerhaps = told.said.join(u' ').contains(QStringLiteral("not certain"));
    if (left.unclaimed > mayBeThere && !saidPerhaps)
        return QStringLiteral("%1 entries were recorded though the program said that they were not").arg(left.unclaimed);
    return {};
}

/// The backup is whole, or it is not there.
QString badBackup(const QString &path, const rounds::Told &told, const Expectation &expectation)
{
    const QString backup = path + QStringLiteral(".backup");
    if (!QFile::exists(backup))
        return told.isCopied ? QStringLiteral("the backup that was called made is not there") : QString();
    auto until = told.acknowledged;
    if (told.isCopied)
        until.resize(told.acknowledgedAtBackup);
    const auto left = check::store(backup, told.isCopied ? until : std::vector<core::Digest>(), expectation.before);
    return left.isGood() ? QString() : QStringLiteral("the backup: ") + left.trouble;
}

/// Every attachment that was acknowledged is there.
QString lostAttachment(const QString &path, const rounds::Told &told)
{
    if (told.attached.isEmpty())
        return {};
    const auto store = db::Store::open(path, db::Access::ReadOnly);
    for (const QString &name : told.attached)
        if (!store || !(*store)->attachments().get(core::Digest::parse(name).value_or(core::Digest())))
            return QStringLiteral("an attachment that was acknowledged is not there");
    return {};
}

/// A fault that passed may cost one signature; after that the same session goes on, unless it says that the store must be
/// opened again.
QString doesNotGoOn(const rounds::Told &told, const rounds::Fault &fault)
{
    const QStringList refused = told.said.filter(QRegularExpression(QStringLiteral("^sign ")));
    const bool passes = fault.does == QStringLiteral("fail") && !fault.isSticky && !fault.calls.isEmpty();
    if (!passes || refused.size() < 2 || refused.last().contains(QStringLiteral("open it again")))
        return {};
    return QStringLiteral("the fault passed, and it went on refusing: ") + refused.last();
}

QString firstOf(std::initializer_list<QString> troubles)
{
    for (const QString &trouble : troubles)
        if (!trouble.isEmpty())
            return trouble;
    return {};
}

QString badWords(const QStringList &said)
{
    for (const QString &line : said)
        if (!isOfUse(line.section(u' ', 1)))
            return QStringLiteral("nobody can act on: ") + line;
    return {};
}

} // namespace

Verdict judge(const QString &path, const rounds::Told &told, const Expectation &expectation)
{
    Verdict verdict{.isHurt = told.isHurt, .isReported = !told.said.isEmpty(), .acknowledged = static_cast<int>(told.acknowledged.size()),
                    .counted = told.counted, .said = told.said};
    // Killed or refused while the store was made: then there may be none, or none that opens, and nothing was promised.
    const bool wasMade = expectation.isThere || told.isReady;
    const auto left = wasMade ? check::store(path, told.acknowledged, expectation.before) : check::Outcome();
    verdict.lost = left.lost;
    verdict.failure = firstOf({badEnd(told, expectation.fault), left.trouble, untrue(told, left, expectation.fault), lostAttachment(path, told),
                               badBackup(path, told, expectation), badWords(told.said), doesNotGoOn(told, expectation.fault)});
    const bool isDead = told.isKilled || told.isAborted;
    const bool isAll = verdict.acknowledged == expectation.expected && told.isClosed;
    verdict.isHarmless = verdict.failure.isEmpty() && verdict.lost == 0 && !verdict.isReported && (isDead || isAll);
    if (verdict.failure.isEmpty() && !verdict.isReported && !verdict.isHarmless)
        verdict.failure = QStringLiteral("not everything was acknowledged, and nothing was said");
    return verdict;
}

void count(Row &row, const Verdict &verdict, const QString &fault)
{
    ++row.rounds;
    row.hurt += verdict.isHurt;
    row.acknowledged += verdict.acknowledged;
    row.lost += verdict.lost;
    row.reported += verdict.isReported;
    row.harmless += verdict.isHarmless;
    for (const QString &line : verdict.said)
        ++row.messages[QString(line).replace(QRegularExpression(QStringLiteral("/\\S*/(?=[^/\\s]*remate)")), QStringLiteral("…/"))];
    if (!verdict.failure.isEmpty())
        row.failures += QStringLiteral("%1, %2: %3").arg(row.tool, fault, verdict.failure);
}

} // namespace judge
