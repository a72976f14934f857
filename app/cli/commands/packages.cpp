// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/known.hpp"
#include "app/cli/tell.hpp"
#include "app/package/import_package.hpp"
#include "core/reports/timeline.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<Answer> import(const Arguments &arguments, const Context &context)
{
    const auto kinds = resources::loadKinds();
    const auto known = knownIn(arguments);
    if (!kinds || !known)
        return core::failure(kinds ? known.error() : kinds.error());
    auto store = db::Store::open(arguments.text(u"store"_s), db::Access::ReadWrite);
    if (!store)
        return core::failure(store.error());
    const auto imported = package::importPackage(**store, arguments.text(u"package"_s), *known, *kinds, context.clock());
    if (!imported)
        return core::failure(imported.error());
    QStringList lines{tr("Imported as package %1, to be looked at and never worked on: work order %2, %3, %4.").arg(imported->number).arg(imported->about.workOrder, imported->about.aircraft, imported->about.title),
                      imported->isOwnRoot ? tr("It hangs from this store's own root.") : tr("It hangs from another root than this store: %1").arg(imported->root.hex())};
    core::json::Array relations;
    for (const package::Relation &relation : imported->relations) {
        lines << package::inWords(relation);
        relations.emplace_back(core::json::Object{{u"sentence"_s, package::inWords(relation)}, {u"fork"_s, relation.kinship == package::Kinship::Fork}, {u"first_difference"_s, relation.firstDifference}});
    }
    return Answer{Exit::Good, lines.join(u'\n'),
                  {{u"number"_s, imported->number}, {u"work_order"_s, imported->about.workOrder}, {u"root_fingerprint"_s, imported->root.hex()}, {u"own_root"_s, imported->isOwnRoot}, {u"relations"_s, std::move(relations)}}};
}

core::Result<Answer> list(const Arguments &arguments, const Context &)
{
    auto store = db::Store::open(arguments.text(u"store"_s), db::Access::ReadOnly);
    if (!store)
        return core::failure(store.error());
    const auto packages = (*store)->packages().list();
    if (!packages)
        return core::failure(packages.error());
    std::vector<std::vector<QString>> rows{{tr("No."), tr("Work order"), tr("State"), tr("Last entry"), tr("Root fingerprint"), tr("Imported"), tr("Title")}};
    core::json::Array json;
    for (const db::KeptPackage &package : *packages) {
        constexpr qsizetype enough = 16;
        rows.push_back({QString::number(package.number), package.workOrder, package.isClosed ? tr("closed") : tr("NOT CLOSED"), QString::number(package.head.seq), package.root.hex().first(enough), core::momentText(package.takenAt), package.title});
        json.emplace_back(core::json::Object{{u"number"_s, package.number}, {u"work_order"_s, package.workOrder}, {u"aircraft"_s, package.aircraft}, {u"title"_s, package.title}, {u"closed"_s, package.isClosed}, {u"ledger"_s, package.ledger.text()},
                                             {u"seq"_s, package.head.seq}, {u"head"_s, package.head.hash.hex()}, {u"root_fingerprint"_s, package.root.hex()}, {u"at"_s, package.takenAt.text()}, {u"bytes"_s, package.size}});
    }
    return Answer{Exit::Good, packages->empty() ? tr("No package was imported.") : columns(rows), {{u"packages"_s, std::move(json)}}};
}

core::Result<Answer> take(const Arguments &arguments, const Context &)
{
    bool isNumber = false;
    const qint64 number = arguments.text(u"number"_s).toLongLong(&isNumber);
    if (!isNumber)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no number of an imported package.").arg(arguments.text(u"number"_s)));
    auto store = db::Store::open(arguments.text(u"store"_s), db::Access::ReadOnly);
    if (!store)
        return core::failure(store.error());
    const QString path = arguments.text(u"file"_s);
    if (const auto taken = package::takeOut(**store, number, path); !taken)
        return core::failure(taken.error());
    return Answer{Exit::Good, tr("Wrote %1, byte for byte as it came.").arg(path), {{u"file"_s, path}}};
}

} // namespace

Command packageImportCommand()
{
    return {"package-import"_L1,
            QT_TRANSLATE_NOOP("Cli", "Verify a record package of another store and keep it in this one, read-only, apart from its own jobs."),
            {storeOption(), position("package"_L1, "PACKAGE", QT_TRANSLATE_NOOP("Cli", "The record package.")), rootOption(), headOption()},
            Fonts::Needed,
            &import};
}

Command packageListCommand()
{
    return {"package-list"_L1, QT_TRANSLATE_NOOP("Cli", "List the record packages that were imported."), {storeOption()}, Fonts::NotNeeded, &list};
}

Command packageTakeCommand()
{
    return {"package-take"_L1,
            QT_TRANSLATE_NOOP("Cli", "Write an imported record package to a file, byte for byte as it came."),
            {storeOption(), position("number"_L1, "NUMBER", QT_TRANSLATE_NOOP("Cli", "Its number, from package-list.")), position("file"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "The file to write."))},
            Fonts::NotNeeded,
            &take};
}

} // namespace cli
