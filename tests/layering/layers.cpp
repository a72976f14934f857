// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/layering/layers.hpp"

#include "tests/layering/source_text.hpp"

#include <QDir>
#include <QLibraryInfo>
#include <QRegularExpression>

#include <optional>

namespace layering {

namespace {

QSet<QString> setOf(const char *words)
{
    const QStringList list = QString::fromLatin1(words).split(u' ');
    return QSet<QString>(list.begin(), list.end());
}

/// The C++20 library headers, [tab:headers.cpp] and [tab:headers.cpp.c] of ISO/IEC 14882:2020.
const QSet<QString> &standardHeaders()
{
    static const QSet<QString> names = setOf(
        "algorithm any array atomic barrier bit bitset charconv chrono codecvt compare complex concepts "
        "condition_variable coroutine deque exception execution filesystem format forward_list fstream functional "
        "future initializer_list iomanip ios iosfwd iostream istream iterator latch limits list locale map memory "
        "memory_resource mutex new numbers numeric optional ostream queue random ranges ratio regex "
        "scoped_allocator semaphore set shared_mutex source_location span sstream stack stdexcept stop_token "
        "streambuf string string_view strstream syncstream system_error thread tuple type_traits typeindex "
        "typeinfo unordered_map unordered_set utility valarray variant vector version cassert cctype cerrno cfenv "
        "cfloat cinttypes climits clocale cmath csetjmp csignal cstdarg cstddef cstdint cstdio cstdlib cstring "
        "ctime cuchar cwchar cwctype");
    return names;
}

/// Standard and Qt Core headers that reach out of a value into the world, or share state: not for core.
const QSet<QString> &worldlyHeaders()
{
    static const QSet<QString> names = setOf(
        "QtCore QObject QFile QFileInfo QDir QDirIterator QSaveFile QTemporaryFile QTemporaryDir QSettings "
        "QStandardPaths QProcess QThread QThreadPool QTimer QElapsedTimer QFileSystemWatcher QLockFile QEventLoop "
        "QAbstractItemModel QAbstractListModel QAbstractTableModel QResource filesystem fstream iostream thread "
        "future mutex ctime random");
    return names;
}

bool isSqlite(const QString &header)
{
    return header.startsWith("sqlite3") || header.startsWith("SQLiteCpp/") || header.startsWith("QSql")
           || header.startsWith("QtSql");
}

/// The system's own calls: locks, modes, durable renames.
bool isSystem(const QString &header)
{
    static const QSet<QString> names = {"unistd.h", "fcntl.h", "errno.h", "stdio.h", "pwd.h", "signal.h"};
    return names.contains(header) || header.startsWith("sys/") || header.startsWith("linux/");
}

QString lastPart(const QString &header) { return header.section(u'/', -1); }

bool isOf(const QSet<QString> &headers, const char *module, const QString &header)
{
    return headers.contains(header)
           || (header.startsWith(QLatin1String(module) + u'/') && headers.contains(lastPart(header)));
}

bool isQtCore(const QString &header, const World &world) { return isOf(world.qtCoreHeaders, "QtCore", header); }

bool isWidget(const QString &header, const World &world)
{
    return header == "QtWidgets" || header == "QtWidgets/QtWidgets"
           || isOf(world.qtWidgetsHeaders, "QtWidgets", header);
}

bool within(const QString &path, const char *folder) { return path.startsWith(QLatin1String(folder) + u'/'); }

using Reason = std::optional<QString>;

Reason refuseSystemInCore(const QString &header, const World &world)
{
    if (worldlyHeaders().contains(lastPart(header)))
        return QString("core holds values and pure functions: no objects, files, clocks or threads");
    if (standardHeaders().contains(header) || isQtCore(header, world) || header == "sodium.h" || header == "openssl/evp.h"
        || header == "simdjson.h" || header == "tl/expected.hpp" || header.startsWith("boost/multiprecision/"))
        return {};
    return QString("core may include Qt Core, sodium.h, openssl/evp.h, simdjson.h, tl/expected.hpp, boost/multiprecision and the standard library alone");
}

Reason refuseSystemInDb(const QString &path, const QString &header, const World &world)
{
    if (isSqlite(header))
        return within(path, "db/sqlite") ? Reason() : Reason("only db/sqlite may include SQLite");
    if (standardHeaders().contains(header) || isQtCore(header, world) || isSystem(header) || header == "sodium.h"
        || header == "tl/expected.hpp")
        return {};
    return QString("db may include Qt Core, sodium.h, the standard library, the system, and SQLite "
                   "in db/sqlite");
}

Reason refuseSystemInApp(const QString &path, const QString &header, const World &world)
{
    if (isSqlite(header))
        return QString("app reaches the store through db, never through SQLite");
    if (isWidget(header, world) && !within(path, "app/desktop"))
        return QString("widgets belong to app/desktop");
    if (header.startsWith("spdlog/") && !within(path, "app/logging"))
        return QString("the log is written through app/logging");
    if (header.startsWith("CLI/") && !within(path, "app/cli"))
        return QString("the command line belongs to app/cli");
    return {};
}

Reason refuseSystem(const QString &path, const QString &header, const World &world)
{
    if (header == "tl/expected.hpp" && path != "core/value/result.hpp")
        return QString("include core/value/result.hpp, which makes ignoring a Result an error");
    if (within(path, "core"))
        return refuseSystemInCore(header, world);
    if (within(path, "db"))
        return refuseSystemInDb(path, header, world);
    if (within(path, "app"))
        return refuseSystemInApp(path, header, world);
    return {};
}

Reason refuseOwn(const QString &path, const QString &header, const World &world)
{
    if (header.endsWith(".moc"))
        return {};
    if (!world.existsInSources(header))
        return QString("no such file; include by path from the root of the sources");
    if (within(path, "core") && !within(header, "core"))
        return QString("core may include core alone");
    if (within(path, "db") && !within(header, "db") && !within(header, "core"))
        return QString("db may include db and core alone");
    if (within(path, "app") && within(header, "db/sqlite"))
        return QString("app reaches the store through db, never through db/sqlite");
    if (within(path, "app") && within(header, "tests"))
        return QString("the program does not depend on its tests");
    if (within(header, "app/desktop") && within(path, "app") && !within(path, "app/desktop"))
        return QString("nothing but app/desktop may include app/desktop");
    if (within(header, "app/cli") && within(path, "app") && !within(path, "app/cli"))
        return QString("nothing but app/cli may include app/cli");
    return {};
}

QString fault(const QString &path, int line, const QString &sentence)
{
    return QString("%1:%2: %3").arg(path).arg(line).arg(sentence);
}

} // namespace

QSet<QString> installedHeaders(const QString &module)
{
    const QDir folder(QLibraryInfo::path(QLibraryInfo::HeadersPath) + u'/' + module);
    const QStringList names = folder.entryList(QDir::Files);
    return {names.begin(), names.end()};
}

QStringList includeFaults(const QString &path, const QString &text, const World &world)
{
    QStringList faults;
    for (const Include &include : takeApart(text).includes) {
        const Reason reason =
            include.quoted ? refuseOwn(path, include.name, world) : refuseSystem(path, include.name, world);
        if (reason)
            faults += fault(path, include.line, QString("includes %1: %2").arg(include.name, *reason));
    }
    return faults;
}

QStringList codeFaults(const QString &path, const QString &text)
{
    // Anchored at the start of a literal, so that "Select a person from the list" is not taken for a query.
    static const QRegularExpression sql(
        R"(^\s*(SELECT\s.*\sFROM\s|INSERT\s+(OR\s+\w+\s+)?INTO\s|UPDATE\s+\w+\s+SET\s|DELETE\s+FROM\s|PRAGMA\s+\w|CREATE\s+(TABLE|INDEX|TRIGGER|VIEW)\s|DROP\s+(TABLE|TRIGGER|INDEX)\s|BEGIN\s+IMMEDIATE|VACUUM\b))",
        QRegularExpression::DotMatchesEverythingOption);
    static const QRegularExpression queryInLowerCase(
        R"(^\s*(select\s+(\*|[a-z_]+(\s*,\s*[a-z_]+)*)\s+from\s+[a-z_]+(\s+(where|order|limit)\s|\s*;?\s*$)|insert\s+into\s+\w+\s*\(|delete\s+from\s+\w+\s+where\s|pragma\s+\w))");
    static const QRegularExpression worldInCore(
        R"(\bQ_OBJECT\b|\bQ_GADGET\b|\bcurrentDateTime(Utc)?\s*\(|\bcurrentMSecsSinceEpoch\s*\(|\bsystem_clock\b|\bsteady_clock\b|\bqApp\b|\bqgetenv\b|\bqEnvironmentVariable\b|\bthread_local\b)");

    const SourceText source = takeApart(text);
    QStringList faults;
    if (within(path, "core") || within(path, "app")) {
        for (const Literal &literal : source.literals)
            if (sql.match(literal.text).hasMatch() || queryInLowerCase.match(literal.text).hasMatch())
                faults += fault(path, literal.line, "SQL lives in db alone");
    }
    if (within(path, "core")) {
        for (auto found = worldInCore.globalMatch(source.code); found.hasNext();) {
            const auto match = found.next();
            faults += fault(path, lineAt(source.code, match.capturedStart()),
                            QString("%1: core has no clock, object or environment").arg(match.captured().trimmed()));
        }
    }
    return faults;
}

QStringList formFaults(const QString &path, const QString &text)
{
    static const QRegularExpression sayNothing(R"((^|/|_)(utils?|helpers?|managers?|misc|common|stuff)(_|/|\.|$))");
    static const QRegularExpression folderWide(
        R"(\bfile\s*\(\s*GLOB|^\s*(include_directories|link_directories|link_libraries|add_definitions|add_compile_options)\s*\()",
        QRegularExpression::MultilineOption);

    QStringList faults;
    if (sayNothing.match(path).hasMatch())
        faults += fault(path, 1, "the name does not say which idea of the trade the file holds");

    const QStringList head = text.split(u'\n').mid(0, 4);
    const bool marked = !head.filter("SPDX-FileCopyrightText: The Remate authors").isEmpty()
                        && !head.filter("SPDX-License-Identifier: Apache-2.0").isEmpty();
    if (!marked)
        faults += fault(path, 1, "the two SPDX lines are missing on top");

    if (path.endsWith("CMakeLists.txt") || path.endsWith(".cmake")) {
        const auto match = folderWide.match(text);
        if (match.hasMatch())
            faults += fault(path, lineAt(text, match.capturedEnd()), "list the files, and set things on targets");
    }
    return faults;
}

} // namespace layering
