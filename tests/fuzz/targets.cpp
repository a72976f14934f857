// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fuzz/targets.hpp"

#include <QFile>
#include <QTemporaryDir>

#include "app/cli/drafts_file.hpp"
#include "app/package/package_evidence.hpp"
#include "app/package/zip_writer.hpp"
#include "app/session/verify_store.hpp"
#include "core/job/fold.hpp"
#include "core/ledger/canonical.hpp"
#include "core/list/interface_list.hpp"
#include "core/package/bag.hpp"
#include "core/package/signature_line.hpp"
#include "resources/resources.hpp"

namespace fuzz {

namespace {

using namespace Qt::StringLiterals;

void must(bool holds, const char *what)
{
    if (!holds)
        qFatal("%s", what);
}

const core::Kinds &kinds()
{
    static const core::Kinds loaded = [] {
        resources::readyResources();
        auto read = resources::loadKinds();
        if (!read)
            qFatal("no kinds");
        return *std::move(read);
    }();
    return loaded;
}

/// Opens a package file and, where it opens, verifies what it holds.
void verify(const QString &path)
{
    const auto package = package::PackageEvidence::open(path);
    if (package)
        (void)session::verify(**package, {});
}

/// The bytes are a whole file.
void package(const QByteArray &bytes)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"fuzzed.zip"_s);
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("no room for the package");
    file.close();
    verify(path);
}

/// The bytes are the files of a bag, each ended by a zero byte; they are packed as they must be, so that what is within is reached.
void bag(const QByteArray &bytes)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"fuzzed.zip"_s);
    auto zip = ::package::ZipWriter::create(path);
    must(zip.has_value(), "no package was begun");
    const QList<QByteArray> parts = bytes.split('\0');
    constexpr const char *names[] = {"data/register.entries.jsonl", "data/register.signatures.jsonl", "data/job.entries.jsonl", "data/job.signatures.jsonl", "bag-info.txt", "manifest-sha256.txt", "tagmanifest-sha256.txt"};
    for (std::size_t i = 0; i < std::size(names); ++i)
        must(zip->addBytes(u"remate-x/"_s + QLatin1String(names[i]), parts.value(static_cast<qsizetype>(i)), ::package::Packing::Stored).has_value(), "a file was not added");
    must(zip->finish({}).has_value(), "the package was not written");
    verify(path);
}

/// What is read has one spelling.
void lines(const QByteArray &bytes)
{
    if (const auto said = core::parseStatement(bytes))
        must(core::canonicalBytes(*said) == bytes, "an entry has two spellings");
    if (const auto line = core::parseSignatureLine(bytes))
        must(core::signatureLine(*line) == bytes, "a signature line has two spellings");
    if (auto listed = core::bag::parseManifest(bytes, u"manifest"_s))
        must(core::bag::manifest(*std::move(listed)) == bytes, "a manifest has two spellings");
    (void)core::bag::parseInfo(bytes, u"bag-info.txt"_s);
}

/// Every fault names its file.
void list(const QByteArray &bytes)
{
    const core::JobState job;
    const auto read = core::readInterfaceList(bytes, {u"list.csv"_s, kinds(), job});
    if (read)
        return;
    must(!read.error().empty(), "refused without a reason");
    for (const core::Error &fault : read.error())
        must(!fault.message.isEmpty() && fault.where.file == u"list.csv", "a fault does not say where");
}

void drafts(const QByteArray &bytes)
{
    const auto read = cli::readDrafts(bytes, u"drafts.jsonl"_s);
    must(read.has_value() || !read.error().empty(), "refused without a reason");
}

} // namespace

const std::vector<Target> &targets()
{
    static const std::vector<Target> all{{"package", &package}, {"bag", &bag}, {"lines", &lines}, {"list", &list}, {"drafts", &drafts}};
    return all;
}

} // namespace fuzz
