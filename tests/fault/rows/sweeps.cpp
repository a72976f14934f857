// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/sweep.hpp"

#include <cerrno>

namespace sweep {

namespace {

using namespace Qt::StringLiterals;

rounds::Fault fails(const QString &calls, int error) { return {.calls = calls, .error = error}; }
rounds::Fault sticks(const QString &calls, int error) { return {.calls = calls, .error = error, .isSticky = true}; }
rounds::Fault kills(const QString &calls) { return {.calls = calls, .does = u"kill"_s}; }
rounds::Fault tears() { return {.calls = u"write"_s, .does = u"torn"_s}; }
/// The call fails, and the process is killed before it writes anything else.
rounds::Fault failsLast(const QString &calls, int error) { return {.calls = calls, .does = u"last"_s, .error = error}; }

rounds::Fault nothing() { return {.calls = {}}; }

constexpr long few = 8;
constexpr long some = 16;

const std::vector<Sweep> &sweeps()
{
    static const std::vector<Sweep> all = {
        {u"control: no fault, appending"_s, Script::Append, nothing(), few},
        {u"control: no fault, whole life"_s, Script::Life, nothing(), few},
        {u"kill -9 at a write, appending"_s, Script::Append, kills(u"write"_s), some},
        {u"kill -9 at a write, whole life"_s, Script::Life, kills(u"write"_s), some},
        {u"kill -9 at a sync, appending"_s, Script::Append, kills(u"sync"_s), few},
        {u"kill -9 at a sync, whole life"_s, Script::Life, kills(u"sync"_s), few},
        {u"kill -9 at a truncate, whole life"_s, Script::Life, kills(u"truncate"_s), few},
        {u"kill -9 at an open, whole life"_s, Script::Life, kills(u"open"_s), few},
        {u"kill -9 at a removal, whole life"_s, Script::Life, kills(u"unlink"_s), few},
        {u"kill -9 at a renaming, whole life"_s, Script::Life, kills(u"rename"_s), few},
        {u"torn write, then kill, appending"_s, Script::Append, tears(), some},
        {u"torn write, then kill, whole life"_s, Script::Life, tears(), some},
        {u"write fails once, EIO, appending"_s, Script::Append, fails(u"write"_s, EIO), some},
        {u"write fails once, EIO, whole life"_s, Script::Life, fails(u"write"_s, EIO), some},
        {u"write fails once, ENOSPC, appending"_s, Script::Append, fails(u"write"_s, ENOSPC), few},
        {u"write fails once, ENOSPC, whole life"_s, Script::Life, fails(u"write"_s, ENOSPC), few},
        {u"writes fail from then on, ENOSPC, appending"_s, Script::Append, sticks(u"write"_s, ENOSPC), some},
        {u"writes fail from then on, ENOSPC, whole life"_s, Script::Life, sticks(u"write"_s, ENOSPC), few},
        {u"sync fails once, EIO, appending"_s, Script::Append, fails(u"sync"_s, EIO), some},
        {u"sync fails once, EIO, whole life"_s, Script::Life, fails(u"sync"_s, EIO), some},
        {u"sync fails once, ENOSPC, appending"_s, Script::Append, fails(u"sync"_s, ENOSPC), few},
        {u"syncs fail from then on, EIO, appending"_s, Script::Append, sticks(u"sync"_s, EIO), few},
        {u"sync fails, EIO, then kill, appending"_s, Script::Append, failsLast(u"sync"_s, EIO), some},
        {u"write fails, EIO, then kill, appending"_s, Script::Append, failsLast(u"write"_s, EIO), few},
        {u"read fails once, EIO, appending"_s, Script::Append, fails(u"read"_s, EIO), some},
        {u"read fails once, EIO, whole life"_s, Script::Life, fails(u"read"_s, EIO), some},
        {u"truncate fails once, EIO, appending"_s, Script::Append, fails(u"truncate"_s, EIO), few},
        {u"truncate fails once, EIO, whole life"_s, Script::Life, fails(u"truncate"_s, EIO), few},
        {u"open fails once, EMFILE, appending"_s, Script::Append, fails(u"open"_s, EMFILE), few},
        {u"open fails once, EMFILE, whole life"_s, Script::Life, fails(u"open"_s, EMFILE), some},
        {u"open fails once, ENOSPC, whole life"_s, Script::Life, fails(u"open"_s, ENOSPC), few},
        {u"open fails once, EIO, whole life"_s, Script::Life, fails(u"open"_s, EIO), few},
        {u"mapping fails once, ENOMEM, appending"_s, Script::Append, fails(u"map"_s, ENOMEM), few},
        {u"mapping fails once, ENOMEM, whole life"_s, Script::Life, fails(u"map"_s, ENOMEM), few},
        {u"lock fails once, ENOLCK, appending"_s, Script::Append, fails(u"lock"_s, ENOLCK), few},
        {u"lock fails once, ENOLCK, whole life"_s, Script::Life, fails(u"lock"_s, ENOLCK), few},
        {u"looking at a file fails once, EIO, appending"_s, Script::Append, fails(u"stat"_s, EIO), few},
        {u"looking at a file fails once, EIO, whole life"_s, Script::Life, fails(u"stat"_s, EIO), few},
        {u"renaming fails once, EIO, whole life"_s, Script::Life, fails(u"rename"_s, EIO), few},
        {u"removal fails once, EIO, whole life"_s, Script::Life, fails(u"unlink"_s, EIO), few},
        {u"closing fails once, EIO, whole life"_s, Script::Life, fails(u"close"_s, EIO), few},
        {u"memory fails once, signing"_s, Script::Append, fails(u"memory"_s, ENOMEM), 24},
        {u"memory fails from then on, signing"_s, Script::Append, sticks(u"memory"_s, ENOMEM), few},
        {u"setting rights fails once, EIO, whole life"_s, Script::Life, fails(u"chmod"_s, EIO), few},
    };
    return all;
}

} // namespace

std::vector<Row> all(const Ready &ready, const Extent &extent, const QString &only)
{
    std::vector<Row> rows;
    for (const Sweep &sweep : sweeps()) {
        const bool isControl = sweep.fault.calls.isEmpty();
        if (!sweep.tool.contains(only))
            continue;
        if (!rounds::mayUseShim())
            rows.push_back({.tool = sweep.tool, .notRun = u"not under sanitizers"_s});
        else
            rows.push_back(isControl ? control(ready, sweep, extent.isFull ? 20 : 3) : run(ready, sweep, extent));
    }
    return rows;
}

} // namespace sweep
