// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/turn_queue.hpp"

#include <QCoreApplication>
#include <QFile>

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <climits>
#include <ctime>
#include <thread>
#include <utility>

#include <fcntl.h>
#include <linux/futex.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#include "db/byte_lock.hpp"

namespace db {

using core::ErrorCode;
using core::failure;
using core::Result;
using std::chrono::duration_cast;
using std::chrono::milliseconds;
using std::chrono::steady_clock;
using namespace std::chrono_literals;

/// What the file holds. Tickets wrap around; only differences count.
struct TurnQueue::Board {
    alignas(64) std::uint32_t next;    ///< the next ticket to be given out
    alignas(64) std::uint32_t serving; ///< the ticket whose turn it is
};

namespace {

constexpr qint64 boardSize = 4096;
constexpr qint64 membersByte = 0;    ///< shared by all who have the file open
constexpr qint64 firstTicketByte = boardSize;
/// How long to look on before asking whether the program whose turn it is still lives.
constexpr milliseconds lookEvery{50};
/// How long one turn may last before the next one goes on all the same: its program may be stopped or asleep. When it is
/// really writing, SQLite's lock makes the next one wait.
constexpr milliseconds longestTurn{2000};
/// More than could ever wait: the file was damaged.
constexpr std::int32_t mostWaiting = 100'000;

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

using Number = std::atomic_ref<std::uint32_t>;
static_assert(Number::is_always_lock_free, "shared between programs, so it must not need a lock of one of them");

qint64 byteOf(std::uint32_t ticket) { return firstTicketByte + qint64{ticket}; }

std::int32_t distance(std::uint32_t from, std::uint32_t to) { return static_cast<std::int32_t>(to - from); }

/// Waiters sleep on `serving`, each under one of 32 bits, so that a new turn wakes hardly anybody but whose turn it is.
std::uint32_t bitOf(std::uint32_t ticket) { return 1u << (ticket % 32); }

void sleepWhile(std::uint32_t &number, std::uint32_t value, milliseconds most, std::uint32_t bit)
{
    // FUTEX_WAIT_BITSET takes a moment of the monotonic clock, not a duration.
    timespec until{};
    clock_gettime(CLOCK_MONOTONIC, &until);
    const qint64 nanoseconds = until.tv_nsec + qint64{most.count()} * 1'000'000;
    until.tv_sec += nanoseconds / 1'000'000'000;
    until.tv_nsec = nanoseconds % 1'000'000'000;
    syscall(SYS_futex, &number, FUTEX_WAIT_BITSET, value, &until, nullptr, bit); // woken, late or never slept: look again
}

void wake(std::uint32_t &number, std::uint32_t bit)
{
    syscall(SYS_futex, &number, FUTEX_WAKE_BITSET, INT_MAX, nullptr, nullptr, bit);
}

bool isStillThere(int file, const QByteArray &name)
{
    struct stat opened {};
    struct stat named {};
    return fstat(file, &opened) == 0 && stat(name.constData(), &named) == 0 && opened.st_ino == named.st_ino &&
           opened.st_dev == named.st_dev;
}

/// Room is taken by writing. A file that is only said to be long enough kills whoever writes to it through memory on a full disk.
bool wipe(int file)
{
    const std::array<char, boardSize> nothing{};
    const ssize_t written = pwrite(file, nothing.data(), nothing.size(), 0);
    if (written >= 0 && written < boardSize)
        errno = ENOSPC;
    return written == boardSize;
}

/// Joins those who use the file. Whoever is alone wipes it, so that what a crash left behind does not stay.
bool join(int file)
{
    if (lockByteAlone(file, membersByte) && !wipe(file))
        return false;
    if (!lockByteShared(file, membersByte))
        return false;
    struct stat now {};
    return fstat(file, &now) == 0 && now.st_size >= boardSize;
}

} // namespace

Result<std::unique_ptr<TurnQueue>> TurnQueue::open(const QString &storePath)
{
    const QString path = storePath + QStringLiteral("-queue");
    const QByteArray name = QFile::encodeName(path);
    int systemError = 0;
    // Another program may be wiping the file or taking it away at this very moment; both last microseconds.
    for (int attempt = 0; attempt < 1000; ++attempt) {
        const int file = ::open(name.constData(), O_RDWR | O_CREAT | O_CLOEXEC | O_NOFOLLOW, 0600);
        if (file < 0) {
            systemError = errno;
            break;
        }
        // For the umask that takes the owner's own rights; fails harmlessly for a file of another user.
        (void)fchmod(file, 0600);
        if (join(file) && isStillThere(file, name)) {
            void *memory = mmap(nullptr, boardSize, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0);
            if (memory != MAP_FAILED)
                return std::unique_ptr<TurnQueue>(new TurnQueue(path, file, static_cast<Board *>(memory)));
        }
        systemError = errno;
        ::close(file);
        if (systemError == ENOSPC || systemError == EDQUOT)
            return failure(ErrorCode::NoSpace, tr("The disk is full, so nothing could be recorded in the store. Make room and open it again."));
        std::this_thread::sleep_for(milliseconds{1});
    }
    return failure(ErrorCode::Io, tr("The file %1 could not be used (system %2). It orders the programs that write to the store. "
                                     "Check that you may write to the folder and that the disk has room.")
                                      .arg(path, QString::number(systemError)));
}

TurnQueue::~TurnQueue()
{
    munmap(m_board, boardSize);
    const QByteArray name = QFile::encodeName(m_path);
    if (lockByteAlone(m_file, membersByte) && isStillThere(m_file, name))
        (void)unlink(name.constData()); // if it stays, the next one to open the store uses it again
    ::close(m_file);
}

void TurnQueue::takeTicket()
{
    for (;;) {
        m_ticket = Number(m_board->next).fetch_add(1);
        lockByteAlone(m_file, byteOf(m_ticket)); // when the system has no lock to give, we may be passed over
        if (distance(m_ticket, Number(m_board->serving)) <= 0)
            return;
        unlockByte(m_file, byteOf(m_ticket)); // passed over before our lock was seen: take another one
    }
}

bool TurnQueue::isHeld(std::uint32_t ticket) const { return isByteLockedElsewhere(m_file, byteOf(ticket)); }

void TurnQueue::passOver(std::uint32_t ticket)
{
    if (Number(m_board->serving).compare_exchange_strong(ticket, ticket + 1))
        wake(m_board->serving, bitOf(ticket + 1));
}

TurnQueue::Outcome TurnQueue::wait(milliseconds patience)
{
    auto looked = steady_clock::now();
    const auto deadline = looked + patience;
    auto turnBegan = looked;
    takeTicket();
    for (std::uint32_t lastSeen = Number(m_board->serving);;) {
        std::uint32_t serving = Number(m_board->serving);
        const auto ahead = distance(serving, m_ticket);
        if (ahead <= 0)
            return Outcome::OurTurn;
        if (ahead > mostWaiting)
            Number(m_board->serving).compare_exchange_strong(serving, m_ticket);
        if (serving != lastSeen)
            turnBegan = looked;
        lastSeen = serving;
        if (looked >= deadline) {
            unlockByte(m_file, byteOf(m_ticket)); // whoever is behind us passes over us
            return Outcome::GaveUp;
        }
        sleepWhile(m_board->serving, serving, std::min(lookEvery, duration_cast<milliseconds>(deadline - looked) + 1ms), bitOf(m_ticket));
        looked = steady_clock::now();
        if (Number(m_board->serving) == serving)
            passOverWhoIsGone(serving, looked - turnBegan >= longestTurn);
    }
}

void TurnQueue::passOverWhoIsGone(std::uint32_t serving, bool evenIfThere)
{
    if (!evenIfThere && isHeld(serving))
        return;
    passOver(serving);
    // Several may have gone at once, and nobody should wait for one after another.
    while (distance(++serving, m_ticket) > 0 && !isHeld(serving))
        passOver(serving);
}

void TurnQueue::leave()
{
    unlockByte(m_file, byteOf(m_ticket));
    std::uint32_t ours = m_ticket;
    const bool isOurs = Number(m_board->serving).compare_exchange_strong(ours, m_ticket + 1);
    if (isOurs && Number(m_board->next) != m_ticket + 1)
        wake(m_board->serving, bitOf(m_ticket + 1));
}

} // namespace db
