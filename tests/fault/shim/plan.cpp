// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/shim/plan.hpp"

#include <atomic>
#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <cstring>

#include <fcntl.h>
#include <sys/syscall.h>
#include <unistd.h>

namespace shim {

namespace {

constexpr const char *names[] = {"open",   "read",   "write", "sync",  "truncate", "map",   "lock",
                                 "stat",   "rename", "unlink", "chmod", "close",   "memory"};
enum class Does { Fail, Kill, Torn, Last };

struct Plan {
    const char *folder = nullptr;
    Calls calls = Calls::Write;
    long nth = 0;
    bool isSticky = false;
    Does does = Does::Fail;
    int error = EIO;
    bool isStick = false;
    int report = -1;
};

Plan plan;
std::atomic<bool> isArmed{false};
std::atomic<bool> isNextTheLast{false};
std::atomic<long> counted{0};
std::atomic<bool> ours[4096];

void tell(const char *text)
{
    if (plan.report >= 0)
        syscall(SYS_write, plan.report, text, std::strlen(text));
}

[[noreturn]] void die()
{
    for (;;)
        syscall(SYS_kill, getpid(), SIGKILL);
}

long number(const char *name)
{
    const char *text = std::getenv(name);
    return text ? std::atol(text) : 0;
}

Does whatItDoes(const char *text)
{
    if (!text || std::strcmp(text, "fail") == 0)
        return Does::Fail;
    return std::strcmp(text, "kill") == 0 ? Does::Kill : std::strcmp(text, "torn") == 0 ? Does::Torn : Does::Last;
}

__attribute__((constructor)) void readPlan()
{
    plan.folder = std::getenv("FAULT_FOLDER");
    const char *calls = std::getenv("FAULT_CALLS");
    for (std::size_t i = 0; calls && i < std::size(names); ++i)
        if (std::strcmp(calls, names[i]) == 0)
            plan.calls = static_cast<Calls>(i);
    plan.nth = number("FAULT_NTH");
    plan.isSticky = number("FAULT_STICKY") != 0;
    plan.does = whatItDoes(std::getenv("FAULT_DOES"));
    plan.error = static_cast<int>(number("FAULT_ERRNO"));
    plan.isStick = number("FAULT_STICK") != 0;
    if (const char *report = std::getenv("FAULT_REPORT"))
        plan.report = static_cast<int>(syscall(SYS_openat, AT_FDCWD, report, O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600));
    isArmed = number("FAULT_ARMED") != 0;
}

__attribute__((destructor)) void tellCount()
{
    char line[64];
    std::snprintf(line, sizeof line, "counted %ld\n", counted.load());
    tell(line);
}

/// Whether this call is the one.
bool isHit(Calls calls)
{
    if (!isArmed)
        return false;
    if (isNextTheLast && calls == Calls::Write)
        die();
    if (calls != plan.calls)
        return false;
    const long now = ++counted;
    return plan.nth > 0 && (now == plan.nth || (plan.isSticky && now > plan.nth));
}

} // namespace

bool isOurs(const char *path)
{
    return plan.folder && path && std::strncmp(path, plan.folder, std::strlen(plan.folder)) == 0;
}

bool isOurs(int file) { return file >= 0 && file < 4096 && ours[file]; }

void remember(int file, const char *path)
{
    if (file >= 0 && file < 4096)
        ours[file] = isOurs(path);
}

void forget(int file)
{
    if (file >= 0 && file < 4096)
        ours[file] = false;
}

bool hurts(Calls calls)
{
    if (!isHit(calls))
        return false;
    tell("hurt\n");
    if (plan.does == Does::Kill || plan.does == Does::Torn)
        die();
    if (plan.does == Does::Last)
        isNextTheLast = true;
    errno = plan.error;
    return true;
}

bool hurtsWrite(std::size_t size, void (*writePart)(void *call, std::size_t size), void *call)
{
    if (plan.does != Does::Torn)
        return hurts(Calls::Write);
    if (!isHit(Calls::Write))
        return false;
    tell("hurt\n");
    writePart(call, size / 2);
    die();
}

bool actsLikeStick() { return plan.isStick; }

} // namespace shim

void fault_arm() { shim::isArmed = true; }
void fault_disarm() { shim::isArmed = false; }
