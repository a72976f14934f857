// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <utility>
#include <vector>

#include "core/tables/catalogue.hpp"

// Outside any namespace: the macro declares a function of the resource compiler.
static void initResources()
{
    Q_INIT_RESOURCE(remate);
}

namespace resources {

namespace {

core::Result<core::Kind> loadKind(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io,
                             QCoreApplication::translate("Kinds", "A kind of interface cannot be read. Install the program again."),
                             {path, std::nullopt, std::nullopt});
    return core::parseKind(file.readAll(), path);
}

core::Result<core::LookUpTable> loadTable(const core::TableForm &form)
{
    const QString path = QStringLiteral(":/tables/%1.csv").arg(QLatin1String(form.id));
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, QCoreApplication::translate("Tables", "A look-up table cannot be read. Install the program again."),
                             {path, std::nullopt, std::nullopt});
    return core::parseTable(form, file.readAll(), path);
}

} // namespace

void readyResources() { initResources(); }

core::Result<core::Kinds> loadKinds()
{
    readyResources();
    std::vector<core::Kind> kinds;
    const QDir folder(QStringLiteral(":/kinds"));
    for (const QString &name : folder.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
        auto kind = loadKind(folder.filePath(name));
        if (!kind)
            return core::failure(kind.error());
        kinds.push_back(*std::move(kind));
    }
    return core::Kinds::of(std::move(kinds));
}

core::Result<core::LookUpTables> loadTables()
{
    readyResources();
    std::vector<core::LookUpTable> tables;
    for (const core::TableForm &form : core::tableForms()) {
        auto table = loadTable(form);
        if (!table)
            return core::failure(table.error());
        tables.push_back(*std::move(table));
    }
    return core::LookUpTables::of(std::move(tables));
}

core::Result<std::vector<core::NamedHold>> loadHoldPoints()
{
    readyResources();
    const QString path = QStringLiteral(":/hold_points.json");
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, QCoreApplication::translate("Hold", "The standard hold points cannot be read. Install the program again."), {path, std::nullopt, std::nullopt});
    return core::parseHoldSet(file.readAll(), path);
}

} // namespace resources
