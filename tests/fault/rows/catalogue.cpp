// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/catalogue.hpp"

#include <QTemporaryDir>

#include "tests/fault/rows/rows.hpp"
#include "tests/fault/rows/scratch.hpp"
#include "tests/fault/rows/sweep.hpp"
#include "tests/fault/support/crew.hpp"

namespace catalogue {

namespace {

std::vector<Row> failed(const QString &why) { return {Row{.tool = QStringLiteral("the store to begin with"), .failures = {why}}}; }

void add(std::vector<Row> &all, std::vector<Row> more)
{
    for (Row &row : more)
        all.push_back(std::move(row));
}

} // namespace

std::vector<Row> run(const Extent &extent, const QString &only)
{
    const QTemporaryDir folder(scratch::pattern());
    const sweep::Ready ready{folder.filePath(QStringLiteral("ready.remate")), 5};
    if (const QString trouble = crew::makeStore(ready.path); !trouble.isEmpty())
        return failed(trouble);
    const auto isWanted = [&](const char *words) { return only.isEmpty() || QString::fromLatin1(words).contains(only) || only.contains(QLatin1String(words)); };
    std::vector<Row> all = sweep::all(ready, extent, only);
    if (isWanted("power loss"))
        add(all, rows::powerLoss(ready.path, extent));
    if (isWanted("full disk"))
        add(all, rows::fullDisk(ready.path, extent));
    if (isWanted("copied"))
        add(all, {rows::copiedWithoutSideFile(ready.path, extent)});
    if (isWanted("clock"))
        add(all, {rows::clockSetBack(ready.path, extent)});
    if (isWanted("stick"))
        add(all, rows::stick(extent));
    for (Row &row : all)
        demandProof(row);
    return all;
}

} // namespace catalogue
