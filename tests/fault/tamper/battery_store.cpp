// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>

#include <unistd.h>

#include "tests/fault/tamper/battery.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;

constexpr unsigned longestWait = 10; // seconds

/// The rules that tell of a store; `store.opening` where it does not even open.
core::Result<QStringList> rulesOfStore(const QString &path, const session::Known &known)
{
    alarm(longestWait);
    auto store = db::Store::open(path, db::Access::ReadOnly);
    if (!store)
        return alarm(0), QStringList{u"(does not open)"_s};
    const auto report = session::verifyStore(**store, known);
    const auto closed = (*store)->close();
    alarm(0);
    if (!report)
        return QStringList{u"(cannot be read)"_s};
    QStringList rules;
    for (const core::Fault &fault : report->faults) {
        if (!rules.contains(fault.rule))
            rules << fault.rule;
    }
    return rules;
}

} // namespace

QString Battery::freshStore()
{
    const QString path = m_folder.filePath(u"altered.remate"_s);
    for (const QString &ending : {u""_s, u"-wal"_s, u"-shm"_s})
        QFile::remove(path + ending);
    if (!QFile::copy(m_job.store, path))
        qFatal("no room for an altered store");
    return path;
}

void Battery::store(const QString &name, const std::function<QString(const QString &)> &alter)
{
    if (!isTurn())
        return;
    const QString path = freshStore();
    if (const QString trouble = alter(path); !trouble.isEmpty()) {
        miss(name, u"it could not be made: "_s + trouble);
        return;
    }
    ++now().tried;
    const auto rules = rulesOfStore(path, {});
    if (!rules->isEmpty())
        count(*rules);
    else if (now().elsewhere != Elsewhere::Nothing && !rulesOfStore(path, known())->isEmpty())
        ++now().knownElsewhere;
    else
        miss(name, u"nothing was said"_s);
    lookAtMemory(name);
}

void Battery::storeControl()
{
    now().control = rulesOfStore(freshStore(), {.rootFingerprint = m_root, .entries = {m_head}})->join(u' ');
}

void Battery::beside(const QString &name, const std::function<QString(const QString &)> &alter, const std::function<QString(const QString &)> &ask)
{
    if (!isTurn())
        return;
    const QString path = freshStore();
    QString trouble = alter(path);
    if (trouble.isEmpty())
        trouble = rulesOfStore(path, {})->join(u' ');
    if (trouble.isEmpty())
        trouble = ask(path);
    ++now().tried;
    if (trouble.isEmpty())
        ++now().withoutMeaning;
    else
        miss(name, trouble);
}

} // namespace battery
