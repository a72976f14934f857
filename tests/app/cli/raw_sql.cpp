// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/cli/raw_sql.hpp"

#include <sqlite3.h>

#include <memory>

using namespace Qt::StringLiterals;

namespace {

struct Close {
    void operator()(sqlite3 *database) const { sqlite3_close(database); }
};
using Database = std::unique_ptr<sqlite3, Close>;

Database openRaw(const QString &path)
{
    sqlite3 *database = nullptr;
    sqlite3_open_v2(path.toUtf8().constData(), &database, SQLITE_OPEN_READWRITE, nullptr);
    return Database(database);
}

QString lastError(const Database &database) { return QString::fromUtf8(sqlite3_errmsg(database.get())); }

struct Triggers {
    QByteArray drops;
    QByteArray makes; ///< to put them back, so that nothing but the change itself is to be seen
};

QString dropTriggers(const Database &database, Triggers &triggers)
{
    const auto collect = [](void *into, int, char **cells, char **) {
        static_cast<Triggers *>(into)->drops += QByteArray("DROP TRIGGER ") + cells[0] + ';';
        static_cast<Triggers *>(into)->makes += QByteArray(cells[1]) + ';';
        return 0;
    };
    const bool listed = sqlite3_exec(database.get(), "SELECT name, sql FROM sqlite_schema WHERE type = 'trigger'", collect, &triggers, nullptr) == SQLITE_OK;
    return listed && sqlite3_exec(database.get(), triggers.drops.constData(), nullptr, nullptr, nullptr) == SQLITE_OK ? QString() : lastError(database);
}

QString runBound(const Database &database, QByteArrayView &rest, const std::vector<QByteArray> &bytes)
{
    sqlite3_stmt *statement = nullptr;
    const char *tail = nullptr;
    if (sqlite3_prepare_v2(database.get(), rest.data(), static_cast<int>(rest.size()), &statement, &tail) != SQLITE_OK)
        return lastError(database);
    rest = QByteArrayView(tail, rest.data() + rest.size());
    if (!statement)
        return {};
    const int places = sqlite3_bind_parameter_count(statement);
    for (int place = 1; place <= places && place <= static_cast<int>(bytes.size()); ++place) {
        const QByteArray &value = bytes[static_cast<std::size_t>(place - 1)];
        sqlite3_bind_blob(statement, place, value.constData(), static_cast<int>(value.size()), SQLITE_TRANSIENT);
    }
    const int result = sqlite3_step(statement);
    sqlite3_finalize(statement);
    return result == SQLITE_DONE || result == SQLITE_ROW ? QString() : lastError(database);
}

} // namespace

QString tamper(const QString &store, const QString &statements, const std::vector<QByteArray> &bytes)
{
    const Database database = openRaw(store);
    Triggers triggers;
    if (const QString trouble = dropTriggers(database, triggers); !trouble.isEmpty())
        return trouble;
    const QByteArray utf8 = statements.toUtf8();
    QByteArrayView rest(utf8);
    while (!rest.isEmpty()) {
        if (const QString trouble = runBound(database, rest, bytes); !trouble.isEmpty())
            return trouble;
    }
    if (sqlite3_changes(database.get()) == 0)
        return u"nothing was changed"_s;
    return sqlite3_exec(database.get(), triggers.makes.constData(), nullptr, nullptr, nullptr) == SQLITE_OK ? QString() : lastError(database);
}

QString runRaw(const QString &store, const QString &statements)
{
    const Database database = openRaw(store);
    return sqlite3_exec(database.get(), statements.toUtf8().constData(), nullptr, nullptr, nullptr) == SQLITE_OK ? QString() : lastError(database);
}

QByteArray rawValue(const QString &store, const QString &query)
{
    const Database database = openRaw(store);
    sqlite3_stmt *statement = nullptr;
    QByteArray value;
    if (sqlite3_prepare_v2(database.get(), query.toUtf8().constData(), -1, &statement, nullptr) == SQLITE_OK && sqlite3_step(statement) == SQLITE_ROW)
        value = QByteArray(static_cast<const char *>(sqlite3_column_blob(statement, 0)), sqlite3_column_bytes(statement, 0));
    sqlite3_finalize(statement);
    return value;
}
