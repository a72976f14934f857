// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/schema_check.hpp"

#include <QCoreApplication>

#include <map>

#include "db/embedded_sql.hpp"
#include "db/migrator.hpp"
#include "db/sqlite/connection.hpp"

namespace db {

namespace {

using core::Result;
using core::failure;

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

/// Type and name of everything that a schema holds, and the text that makes it.
using Schema = std::map<std::pair<QString, QString>, QString>;

Result<Schema> schemaOf(Connection &connection)
{
    Schema schema;
    auto read = connection.query("SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL").each([&](Statement &row) {
        schema.emplace(std::pair(row.text(0), row.text(1)), row.text(2));
        return Walk::On;
    });
    if (!read)
        return failure(read.error());
    return schema;
}

Result<Schema> schemaAsMade()
{
    auto connection = Connection::inMemory();
    if (!connection)
        return failure(connection.error());
    if (auto made = migrate(**connection); !made)
        return failure(made.error());
    return schemaOf(**connection);
}

/// What is computed from the ledgers and made anew when its version changes: whatever its text, it may be there.
Result<Schema> derivedSchema()
{
    auto connection = Connection::inMemory();
    if (!connection)
        return failure(connection.error());
    for (const char *script : {"derived/summaries.sql", "derived/where_used.sql"}) {
        if (auto made = (*connection)->runScript(embeddedSql(QString::fromLatin1(script))); !made)
            return failure(made.error());
    }
    return schemaOf(**connection);
}

/// SQLite's own, such as the statistics that somebody may have had it take.
bool isOfSqlite(const QString &name) { return name.startsWith(QLatin1String("sqlite_")); }

} // namespace

Result<std::vector<QString>> schemaDifferences(Connection &connection)
{
    const auto made = schemaAsMade();
    if (!made)
        return failure(made.error());
    const auto derived = derivedSchema();
    if (!derived)
        return failure(derived.error());
    const auto found = schemaOf(connection);
    if (!found)
        return failure(found.error());
    std::vector<QString> differences;
    for (const auto &[object, text] : *made) {
        const auto at = found->find(object);
        if (at == found->end())
            differences.push_back(tr("The store's %1 %2 is gone: entries could be changed without a word.").arg(object.first, object.second));
        else if (at->second != text)
            differences.push_back(tr("The store's %1 %2 is not the one that was made with it.").arg(object.first, object.second));
    }
    for (const auto &[object, text] : *found) {
        // Also an index: SQLite answers from it instead of the table, and what stands there may be something else.
        if (made->find(object) == made->end() && derived->find(object) == derived->end() && !isOfSqlite(object.second))
            differences.push_back(tr("The store has something that this version knows nothing of: %1 %2.").arg(object.first, object.second));
    }
    return differences;
}

} // namespace db
