// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "resources/resources.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <utility>
#include <vector>

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

} // namespace resources
