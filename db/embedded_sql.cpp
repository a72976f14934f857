// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/embedded_sql.hpp"

#include <QDir>
#include <QFile>

// A static library's resources are dropped by the linker unless somebody asks for them. Must stand outside any namespace.
static void readySql()
{
    Q_INIT_RESOURCE(sql);
}

namespace db {

QByteArray embeddedSql(const QString &path)
{
    readySql();
    QFile file(QStringLiteral(":/db/") + path);
    const bool isOpen = file.open(QIODevice::ReadOnly);
    Q_ASSERT(isOpen);
    return file.readAll();
}

QStringList embeddedMigrations()
{
    readySql();
    QStringList paths;
    for (const QString &name : QDir(QStringLiteral(":/db/migrations")).entryList(QDir::Files, QDir::Name))
        paths.append(QStringLiteral("migrations/") + name);
    return paths;
}

} // namespace db
