// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/import_package.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QTemporaryDir>

#include "app/package/package_evidence.hpp"
#include "app/record/safe_file.hpp"
#include "app/session/verdict_words.hpp"

namespace package {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

/// The digests of a ledger's entries, in order.
core::Result<std::vector<core::Digest>> hashesOf(session::Evidence &evidence, const core::LedgerId &ledger)
{
    std::vector<core::Digest> hashes;
    const auto read = evidence.forEach(ledger, 0, [&](const db::StoredEntryView &row) {
        hashes.push_back(core::Digest::of(row.bytes.toByteArray()));
        return db::Walk::On;
    });
    if (!read)
        return core::failure(read.error());
    return hashes;
}

/// How this one stands to the other; nothing when they are the same up to the same entry.
std::optional<Relation> relationOf(const std::vector<core::Digest> &mine, const std::vector<core::Digest> &other, std::optional<qint64> number)
{
    const auto [differs, otherDiffers] = std::mismatch(mine.begin(), mine.end(), other.begin(), other.end());
    if (differs == mine.end() && otherDiffers == other.end())
        return std::nullopt;
    if (differs == mine.end())
        return Relation{Kinship::Older, number};
    if (otherDiffers == other.end())
        return Relation{Kinship::Newer, number};
    return Relation{Kinship::Fork, number, differs - mine.begin() + 1};
}

core::Result<core::Digest> digestOf(QFile &file)
{
    core::DigestStream digest;
    constexpr qint64 piece = 1 << 20;
    while (!file.atEnd()) {
        const QByteArray bytes = file.read(piece);
        if (bytes.isEmpty())
            return core::failure(core::ErrorCode::Io, tr("The file cannot be read (%1).").arg(file.errorString()));
        digest.add(bytes);
    }
    file.seek(0);
    return digest.soFar();
}

tl::unexpected<core::Error> thereAlready(std::optional<qint64> number)
{
    return core::failure(core::ErrorCode::BadInput, number ? tr("The store has this job up to the same entry already: imported package %1. Nothing was imported.").arg(*number)
                                                           : tr("The store holds this job itself, up to the same entry. Nothing was imported."));
}

core::Result<std::vector<Relation>> relationsTo(db::Store &store, const std::vector<core::Digest> &mine, const core::LedgerId &job)
{
    std::vector<Relation> relations;
    const auto compare = [&](session::Evidence &evidence, std::optional<qint64> number) -> core::Result<void> {
        const auto other = hashesOf(evidence, job);
        if (!other)
            return core::failure(other.error());
        if (other->empty())
            return {};
        const auto relation = relationOf(mine, *other, number);
        if (!relation)
            return thereAlready(number);
        relations.push_back(*relation);
        return {};
    };
    session::StoreEvidence own(store);
    if (const auto compared = compare(own, std::nullopt); !compared)
        return core::failure(compared.error());
    const auto kept = store.packages().list();
    if (!kept)
        return core::failure(kept.error());
    for (const db::KeptPackage &package : *kept) {
        if (package.ledger != job)
            continue;
        const QTemporaryDir scratch;
        const QString file = scratch.filePath(u"package.zip"_s);
        if (const auto taken = takeOut(store, package.number, file); !taken)
            return core::failure(taken.error());
        const auto evidence = PackageEvidence::open(file);
        if (!evidence)
            return core::failure(evidence.error());
        if (const auto compared = compare(**evidence, package.number); !compared)
            return core::failure(compared.error());
    }
    return relations;
}

} // namespace

QString inWords(const Relation &relation)
{
    const QString other = relation.number ? tr("imported package %1").arg(*relation.number) : tr("this store's own job");
    switch (relation.kinship) {
    case Kinship::Older:
        return tr("It is an earlier state of %1.").arg(other);
    case Kinship::Newer:
        return tr("It is a later state of %1.").arg(other);
    case Kinship::Fork:
        return tr("FORK: from entry %1 on it says something else than %2. One of the two is not what was worked on: find out which, before anybody relies on either.").arg(relation.firstDifference).arg(other);
    }
    Q_UNREACHABLE();
}

core::Result<Imported> importPackage(db::Store &store, const QString &path, const session::Known &known, const core::Kinds &kinds, const core::Instant &now, const Going &going)
{
    const auto verdict = verifyPackage(path, known, kinds, going);
    if (!verdict)
        return core::failure(verdict.error());
    if (!verdict->report.faults.empty() || !verdict->about.ledger || !verdict->report.rootFingerprint)
        return core::failure(core::ErrorCode::Refused, tr("The package does not hold, and was not imported. %1").arg(session::verdictSentence(verdict->report)));
    const auto package = PackageEvidence::open(path, going);
    if (!package)
        return core::failure(package.error());
    const auto mine = hashesOf(**package, *verdict->about.ledger);
    if (!mine)
        return core::failure(mine.error());
    auto relations = relationsTo(store, *mine, *verdict->about.ledger);
    if (!relations)
        return core::failure(relations.error());
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("The file cannot be read (%1).").arg(file.errorString()), {path, std::nullopt, std::nullopt});
    const auto digest = digestOf(file);
    if (!digest)
        return core::failure(digest.error());
    const About &about = verdict->about;
    const auto number = store.packages().put(file, {0, *digest, file.size(), *about.ledger, about.head, *verdict->report.rootFingerprint, about.workOrder, about.aircraft, about.title, about.isClosed, now});
    if (!number)
        return core::failure(number.error());
    const auto ownLedger = store.registerLedger();
    std::optional<core::Digest> ownRoot;
    if (ownLedger && *ownLedger) {
        (void)store.forEach(**ownLedger, 0, [&](const db::StoredEntryView &row) {
            ownRoot = core::Digest::of(row.bytes.toByteArray());
            return db::Walk::Stop;
        });
    }
    return Imported{*number, about, *verdict->report.rootFingerprint, ownRoot == verdict->report.rootFingerprint, *std::move(relations)};
}

core::Result<void> takeOut(db::Store &store, qint64 number, const QString &path)
{
    return record::writeSafely(path, [&](QIODevice &device) { return store.packages().writeTo(device, number); });
}

} // namespace package
