// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/battery.hpp"

#include <QFile>

#include <array>
#include <csignal>
#include <cstring>

#include <sys/resource.h>
#include <unistd.h>

#include "app/package/contents.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;

#ifdef TAMPER_WITHOUT_MEMORY // a sanitizer slows things down and keeps memory of its own
constexpr unsigned longestWait = 90; // seconds
#else
constexpr unsigned longestWait = 10; // seconds
constexpr long mostMemory = 500 * 1024; // KiB
#endif
constexpr qint64 shortForm = 10; // one in so many
constexpr quint32 seed = 20260302;

/// What is altered now, for the last words of a run that crashes or waits.
std::array<char, 256> underWay{};

void note(const QString &name)
{
    const QByteArray text = name.toUtf8().left(static_cast<qsizetype>(underWay.size()) - 2) + '\n';
    std::memcpy(underWay.data(), text.constData(), static_cast<std::size_t>(text.size()) + 1);
}

extern "C" void lastWords(int signal)
{
    const char *what = signal == SIGALRM ? "MISSED: no answer in time: " : "MISSED: crashed: ";
    (void)!write(STDERR_FILENO, what, std::strlen(what));
    (void)!write(STDERR_FILENO, underWay.data(), std::strlen(underWay.data()));
    _exit(3);
}

/// An independent reader of ZIP files: names and digests of all files, one line; what it objects to, otherwise.
constexpr const char *otherReader = R"(
import hashlib, sys, zipfile
for line in sys.stdin:
    try:
        with zipfile.ZipFile(line.rstrip('\n')) as file:
            print(sorted((one.filename, one.is_dir(), hashlib.sha256(file.read(one)).hexdigest()) for one in file.infolist()))
    except Exception as error:
        print('refused:', repr(error).replace('\n', ' '))
    sys.stdout.flush()
)";

void writeFile(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) || file.write(bytes) != bytes.size())
        qFatal("no room for an altered package");
}

QStringList rulesOf(const session::VerifyReport &report)
{
    QStringList rules;
    for (const core::Fault &fault : report.faults) {
        if (!rules.contains(fault.rule))
            rules << fault.rule;
    }
    return rules;
}

bool isSigned(const QString &path) { return path.endsWith(package::names::entries) || path.endsWith(package::names::signatures) || path.startsWith(package::names::attachments); }

} // namespace

Battery::Battery(const ClosedJob &job, Extent extent) : m_job(job), m_extent(extent), m_bag(Bag::of(job.package)), m_random(seed)
{
    m_bag.setLabel(u"Remate-Typeset"_s, u"typefaces that are not here"_s);
    m_bag.repairDigests();
    m_zip = m_bag.zip();
    const Ledgers ledgers = Ledgers::of(m_bag);
    m_head = ledgers.entries.at(jobLedger()).back().hash;
    m_root = ledgers.entries.at(registerLedger()).front().hash;
    for (int signal : {SIGALRM, SIGSEGV, SIGABRT, SIGBUS, SIGFPE, SIGILL}) {
        if (signal == SIGALRM || std::signal(signal, SIG_DFL) == SIG_DFL) // a sanitizer has handlers of its own, and says more
            std::signal(signal, &lastWords);
    }
    m_otherReader = std::make_unique<QProcess>();
    m_otherReader->setProcessChannelMode(QProcess::ForwardedErrorChannel);
    m_otherReader->start(u"python3"_s, {u"-c"_s, QString::fromLatin1(otherReader)});
    const QString path = m_folder.filePath(u"original.zip"_s);
    writeFile(path, m_zip);
    m_others = readByOthers(path);
    if (!m_others.startsWith('['))
        qFatal("python3 does not read the package: %s", m_others.constData());
}

Battery::~Battery()
{
    m_otherReader->closeWriteChannel();
    m_otherReader->waitForFinished();
}

void Battery::begin(const QString &name, Elsewhere elsewhere, const QString &remark)
{
    m_classes.push_back({.name = name, .elsewhere = elsewhere, .remark = remark});
}

void Battery::beginPages(const QString &name)
{
    begin(name);
    now().isOfPages = true;
    const auto verdict = package::verifyPackage(m_job.package, {.rootFingerprint = m_root, .entries = {m_head}}, m_job.kinds);
    now().control = !verdict ? verdict.error().message : (rulesOf(verdict->report) + QStringList(verdict->report.reservations.begin(), verdict->report.reservations.end())).join(u' ');
}

bool Battery::isTurn() { return now().made++ % (m_extent == Extent::Short ? shortForm : 1) == 0; }

quint8 Battery::anotherByte(char than)
{
    constexpr qint64 others = 255;
    return static_cast<quint8>(static_cast<quint8>(than) + 1 + number(others));
}

session::Known Battery::known() const
{
    session::Known known;
    if (m_classes.back().elsewhere == Elsewhere::Root)
        known.rootFingerprint = m_root;
    if (m_classes.back().elsewhere == Elsewhere::Head)
        known.entries = {m_head};
    return known;
}

void Battery::count(const QStringList &rules)
{
    ++now().told;
    for (const QString &rule : rules)
        ++now().rules[rule];
}

void Battery::miss(const QString &name, const QString &why) { now().missed << u"%1 (number %2): %3"_s.arg(name).arg(now().made).arg(why); }

void Battery::lookAtMemory(const QString &name)
{
#ifndef TAMPER_WITHOUT_MEMORY
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    if (!m_isOverMemory && usage.ru_maxrss > mostMemory) {
        m_isOverMemory = true; // the peak never falls, so only the first can be told
        miss(name, u"it took %1 MB of memory"_s.arg(usage.ru_maxrss / 1024));
    }
#else
    Q_UNUSED(name)
#endif
}

QByteArray Battery::readByOthers(const QString &path)
{
    m_otherReader->write(path.toUtf8() + '\n');
    while (!m_otherReader->canReadLine()) {
        if (!m_otherReader->waitForReadyRead())
            qFatal("python3 gives no answer");
    }
    return m_otherReader->readLine();
}

/// Whether all that was signed is as it was.
bool Battery::isSameInside(const QByteArray &zip)
{
    const QString path = m_folder.filePath(u"inside.zip"_s);
    writeFile(path, zip);
    const Bag inside = Bag::of(path);
    return std::all_of(m_bag.files.begin(), m_bag.files.end(), [&](const Bag::File &file) {
        const auto same = [&](const Bag::File &one) { return one.path == file.path && one.bytes == file.bytes; };
        return !isSigned(file.path) || std::any_of(inside.files.begin(), inside.files.end(), same);
    });
}

void Battery::judge(const QString &name, const QByteArray &zip)
{
    const QString path = m_folder.filePath(u"altered.zip"_s);
    writeFile(path, zip);
    note(now().name + u": "_s + name);
    alarm(longestWait);
    const auto verdict = package::verifyPackage(path, {}, m_job.kinds);
    alarm(0);
    lookAtMemory(name);
    if (!verdict) {
        count({u"(refused: %1)"_s.arg(static_cast<int>(verdict.error().code))});
        return;
    }
    if (const QStringList rules = rulesOf(verdict->report); !rules.isEmpty()) {
        count(rules);
        return;
    }
    if (readByOthers(path) == m_others) {
        ++now().withoutMeaning;
        return;
    }
    if (!now().isOfPages && !verdict->report.reservations.empty() && isSameInside(zip)) {
        ++now().notCompared;
        return;
    }
    if (now().elsewhere != Elsewhere::Nothing) {
        const auto asked = package::verifyPackage(path, known(), m_job.kinds);
        if (asked && !rulesOf(asked->report).isEmpty()) {
            ++now().knownElsewhere;
            return;
        }
    }
    miss(name, u"nothing was said"_s);
}

void Battery::package(const QString &name, const Make &make)
{
    if (!isTurn())
        return;
    const QByteArray zip = make();
    const core::Digest digest = core::Digest::of(zip);
    if (zip == m_zip || m_seen.contains(digest))
        return;
    m_seen.insert(digest);
    ++now().tried;
    judge(name, zip);
}

void Battery::bag(const QString &name, const std::function<void(Bag &)> &alter)
{
    package(name, [&] {
        Bag altered = m_bag;
        alter(altered);
        return altered.zip();
    });
}

void Battery::control(const QByteArray &zip)
{
    const QString path = m_folder.filePath(u"control.zip"_s);
    writeFile(path, zip);
    const auto verdict = package::verifyPackage(path, {.rootFingerprint = m_root, .entries = {m_head}}, m_job.kinds);
    if (!verdict)
        now().control = verdict.error().message;
    else if (const QStringList rules = rulesOf(verdict->report); !rules.isEmpty())
        now().control = rules.join(u' ');
    else if (verdict->report.reservations.size() != 1)
        now().control = u"%1 reservations"_s.arg(verdict->report.reservations.size());
}

} // namespace battery
