// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/tell.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

struct CodeRow {
    core::ErrorCode code;
    QLatin1String name;
};

/// Stable: programs that read --json test it.
constexpr CodeRow codeRows[] = {
    {core::ErrorCode::BadInput, "bad_input"_L1},       {core::ErrorCode::NotFound, "not_found"_L1},
    {core::ErrorCode::NotAStore, "not_a_store"_L1},    {core::ErrorCode::StoreNewer, "store_newer"_L1},
    {core::ErrorCode::ReadOnly, "read_only"_L1},       {core::ErrorCode::Damaged, "damaged"_L1},
    {core::ErrorCode::Locked, "locked"_L1},            {core::ErrorCode::HeadMoved, "head_moved"_L1},
    {core::ErrorCode::WrongSecret, "wrong_secret"_L1}, {core::ErrorCode::Refused, "refused"_L1},
    {core::ErrorCode::NoSpace, "no_space"_L1},         {core::ErrorCode::Io, "io"_L1},
    {core::ErrorCode::Crypto, "crypto"_L1},            {core::ErrorCode::Cancelled, "cancelled"_L1},
};

QString codeName(core::ErrorCode code)
{
    const auto at = std::find_if(std::begin(codeRows), std::end(codeRows), [code](const CodeRow &row) { return row.code == code; });
    Q_ASSERT(at != std::end(codeRows));
    return at->name;
}

} // namespace

QString columns(const std::vector<std::vector<QString>> &rows)
{
    std::vector<qsizetype> widths;
    for (const auto &row : rows) {
        widths.resize(std::max(widths.size(), row.size()), 0);
        for (std::size_t at = 0; at < row.size(); ++at)
            widths[at] = std::max(widths[at], row[at].size());
    }
    QStringList lines;
    for (const auto &row : rows) {
        QString line;
        for (std::size_t at = 0; at < row.size(); ++at)
            line += row[at].leftJustified(widths[at] + 2);
        lines << line.trimmed();
    }
    return lines.join(u'\n');
}

Object refusalJson(const core::Refusal &refusal)
{
    return {{u"rule"_s, refusal.rule}, {u"subject"_s, refusal.subject}, {u"sentence"_s, refusal.sentence}, {u"cleared_by"_s, refusal.clearedBy}};
}

Array refusalsJson(const core::Refusals &refusals)
{
    Array array;
    for (const core::Refusal &refusal : refusals)
        array.emplace_back(refusalJson(refusal));
    return array;
}

QString refusalsText(const core::Refusals &refusals)
{
    QStringList lines;
    for (const core::Refusal &refusal : refusals) {
        const QString clearedBy = refusal.clearedBy.isEmpty() ? QString() : tr(" Cleared by: %1.").arg(refusal.clearedBy);
        lines << u"  %1: %2%3"_s.arg(refusal.rule, refusal.sentence, clearedBy);
    }
    return lines.join(u'\n');
}

Object errorJson(const core::Error &error)
{
    Object object{{u"code"_s, codeName(error.code)}, {u"message"_s, error.message}};
    if (!error.where.file.isEmpty())
        object.set(u"file"_s, error.where.file);
    if (error.where.row)
        object.set(u"row"_s, *error.where.row);
    if (error.where.column)
        object.set(u"column"_s, *error.where.column);
    return object;
}

core::Result<Answer> notSigned(const session::NotSigned &no)
{
    if (no.refusals.empty())
        return core::failure(no.error);
    Array drafts;
    QStringList lines{no.error.message};
    for (const auto &[index, refusals] : no.refusals) {
        drafts.emplace_back(Object{{u"draft"_s, static_cast<qint64>(index)}, {u"refusals"_s, refusalsJson(refusals)}});
        lines << refusalsText(refusals);
    }
    return Answer{Exit::No, {}, {{u"signed"_s, false}, {u"refused"_s, std::move(drafts)}}, lines.join(u'\n')};
}

Answer signedAnswer(const std::vector<core::Entry> &entries, const QString &text)
{
    Array list;
    for (const core::Entry &entry : entries)
        list.emplace_back(Object{{u"seq"_s, entry.said.seq}, {u"kind"_s, entry.said.kind}, {u"hash"_s, entry.hash.hex()}});
    return {Exit::Good, text, {{u"signed"_s, true}, {u"ledger"_s, entries.front().said.ledger.text()}, {u"entries"_s, std::move(list)}}};
}

} // namespace cli
