// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <map>
#include <set>
#include <vector>

#include "app/record/record.hpp"
#include "app/record/typeface.hpp"
#include "core/ledger/entry.hpp"
#include "core/package/bag.hpp"
#include "core/reports/job_record.hpp"

/// The record package: a BagIt bag in a ZIP file. resources/manual/package.md describes it for whoever writes a verifier.
namespace package {

namespace names {
constexpr QLatin1String declaration("bagit.txt");
constexpr QLatin1String info("bag-info.txt");
constexpr QLatin1String manifest("manifest-sha256.txt");
constexpr QLatin1String tagManifest("tagmanifest-sha256.txt");
constexpr QLatin1String job("data/job");           ///< of the two files of a ledger, without their endings
constexpr QLatin1String reg("data/register");
constexpr QLatin1String linked("data/linked/");     ///< then the ledger's name
constexpr QLatin1String entries(".entries.jsonl");
constexpr QLatin1String signatures(".signatures.jsonl");
constexpr QLatin1String attachments("data/attachments/");
constexpr QLatin1String pdf("data/record.pdf");
constexpr QLatin1String csv("data/interfaces.csv");
constexpr QLatin1String instructions("data/VERIFY.txt");
constexpr QLatin1String script("data/verify.py");
} // namespace names

/// The number of this format. A reader refuses a higher one.
constexpr int formatNumber = 1;

/// The longest line of entries: none that the program admits comes near it.
constexpr qsizetype longestLine = 8 * 1024 * 1024;

/// The bag's folder: `remate-` and the job's ledger. Nothing when the ledger's name is no name for a folder.
std::optional<QString> folderOf(const core::LedgerId &job);

/// What an attachment's file is called after: told by its first bytes, so that one file has one name. `jpg`, `png`, `pdf`, else `bin`.
QString endingOf(QByteArrayView firstBytes);
/// data/attachments/<sha256>.<ending>
QString attachmentPath(const core::Digest &digest, QByteArrayView firstBytes);

/// The digests of attachments that an entry names. Told by its bytes: those that cannot name one are not parsed.
std::optional<core::Digest> attachmentNamedBy(QByteArrayView entryBytes);

/// How far other ledgers are in a package: each up to the last entry that somebody pins, of those that the job rests on, directly or through another.
struct Reach {
    qint64 reg = 0;
    std::map<core::LedgerId, qint64> linked{};
    /// Takes what an entry pins. Returns whether that reached further.
    bool take(const core::Statement &said, const core::LedgerId &job);
};

/// What a bag says about itself; all of it follows from the entries but for the version and what it was set with.
struct Labels {
    QString version; ///< of the program that exported it
    QString typeset; ///< what laid its pages out: the same gives the same bytes
    record::PageSize paper = record::PageSize::A4;
};
/// This program's own.
Labels labelsHere(record::PageSize paper);

/// The labels of bag-info.txt.
std::vector<core::bag::Label> labelsOf(const core::JobRecord &job, const Labels &labels, qint64 payloadBytes, qint64 payloadFiles);
/// Reads back what cannot be told from the entries. Nothing when a label is missing or the format is another one.
std::optional<Labels> labelsIn(const std::vector<core::bag::Label> &labels);

/// VERIFY.txt and verify.py as this version of the program writes them.
core::Result<QByteArray> instructions();
core::Result<QByteArray> script();

/// record.pdf of the job.
core::Result<QByteArray> pdfOf(const core::JobRecord &job, record::PageSize paper, const record::FetchAttachment &fetch, const record::Progress &progress = {});
/// interfaces.csv of the job.
QByteArray csvOf(const core::JobRecord &job);

} // namespace package
