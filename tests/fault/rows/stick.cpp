// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/rows/rows.hpp"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include "app/record/safe_file.hpp"
#include "tests/fault/rows/judge.hpp"
#include "tests/fault/rows/mounted.hpp"
#include "tests/fault/rows/scratch.hpp"

namespace rows {

namespace {

using namespace Qt::StringLiterals;

constexpr int entriesToSign = 5;

/// A whole life, the backup beside the store among it, and something exported.
judge::Verdict oneLife(const QString &folder, bool isActed)
{
    const QString path = folder + u"/a.remate"_s;
    const auto told = rounds::run({u"life"_s, path, QString::number(entriesToSign)}, folder, {.calls = {}, .isStick = isActed});
    auto verdict = judge::judge(path, told, {.isThere = false, .before = 5, .expected = entriesToSign + 3, .fault = {.calls = {}}});
    if (verdict.isReported || !told.isCopied)
        verdict.failure += u" not everything went: "_s + told.said.join(u"; "_s);
    const auto exported = record::writeSafely(folder + u"/record.zip"_s, [](QIODevice &file) -> core::Result<void> {
        const QByteArray bytes(200'000, 'r');
        if (file.write(bytes) != bytes.size())
            return core::failure(core::ErrorCode::Io, u"not written"_s);
        return {};
    });
    if (!exported)
        verdict.failure += u" nothing could be exported: "_s + exported.error().message;
    return verdict;
}

Row life(const QString &tool, const QString &folder, bool isActed)
{
    Row row{.tool = tool};
    judge::count(row, oneLife(folder, isActed), tool);
    row.hurt = row.rounds; // the file system itself is the fault
    return row;
}

} // namespace

std::vector<Row> stick(const Extent &)
{
    const QTemporaryDir folder(scratch::pattern());
    const QString acted = u"stick without links and rights, acted out"_s;
    Row actedRow = rounds::mayUseShim() ? life(acted, folder.path(), true) : Row{.tool = acted, .notRun = u"not under sanitizers"_s};
    const Mounted real = Mounted::stick();
    Row realRow = real.isThere() ? life(u"stick, a real file system ("_s + real.kind() + u')', real.path(), false)
                                 : Row{.tool = u"stick, a real file system"_s, .notRun = real.whyNot()};
    return {std::move(actedRow), std::move(realRow)};
}

} // namespace rows
