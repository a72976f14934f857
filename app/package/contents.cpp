// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/contents.hpp"

#include <QCoreApplication>
#include <QDate>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>

#include "app/language/in_record_words.hpp"
#include "core/ledger/canonical.hpp"
#include "core/reports/report.hpp"
#include "core/rules/version.hpp"

namespace package {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

QString textOf(record::PageSize paper) { return paper == record::PageSize::A4 ? u"a4"_s : u"letter"_s; }

std::optional<QString> valueOf(const std::vector<core::bag::Label> &labels, QStringView name)
{
    const auto at = std::find_if(labels.begin(), labels.end(), [&](const core::bag::Label &label) { return label.first == name; });
    return at == labels.end() ? std::nullopt : std::optional(at->second);
}

core::Result<QByteArray> resource(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("%1 is not part of this program: install it again.").arg(path));
    return file.readAll();
}

} // namespace

std::optional<QString> folderOf(const core::LedgerId &job)
{
    static const QRegularExpression plain(u"\\A[0-9A-Za-z-]{1,64}\\z"_s);
    if (!plain.match(job.text()).hasMatch())
        return std::nullopt;
    return u"remate-"_s + job.text();
}

QString endingOf(QByteArrayView firstBytes)
{
    if (firstBytes.startsWith("\xff\xd8\xff"))
        return u"jpg"_s;
    if (firstBytes.startsWith("\x89PNG\r\n\x1a\n"))
        return u"png"_s;
    return firstBytes.startsWith("%PDF-") ? u"pdf"_s : u"bin"_s;
}

QString attachmentPath(const core::Digest &digest, QByteArrayView firstBytes) { return names::attachments + digest.hex() + u'.' + endingOf(firstBytes); }

std::optional<core::Digest> attachmentNamedBy(QByteArrayView entryBytes)
{
    if (!entryBytes.contains("\"sha256\":"))
        return std::nullopt;
    const auto said = core::parseStatement(entryBytes);
    return said ? core::Digest::parse(said->body.text(u"sha256")) : std::nullopt;
}

bool Reach::take(const core::Statement &said, const core::LedgerId &job)
{
    bool isFurther = false;
    if (said.reg && said.reg->seq > reg) {
        reg = said.reg->seq;
        isFurther = true;
    }
    for (const core::LinkedHead &one : said.linked) {
        qint64 &upTo = linked[one.ledger];
        if (one.ledger == job || one.head.seq <= upTo)
            continue;
        upTo = one.head.seq;
        isFurther = true;
    }
    linked.erase(job);
    return isFurther;
}

Labels labelsHere(record::PageSize paper)
{
    return {QStringLiteral(REMATE_VERSION), u"layout %1, Qt %2, %3"_s.arg(QString::number(record::layoutNumber), QString::fromLatin1(qVersion()), record::typefaceName()), paper};
}

std::vector<core::bag::Label> labelsOf(const core::JobRecord &job, const Labels &labels, qint64 payloadBytes, qint64 payloadFiles)
{
    const core::JobFacts &facts = job.job().facts;
    const core::Entry &last = job.entries().back();
    return {
        {u"Source-Organization"_s, job.reg().organisation},
        {u"External-Identifier"_s, facts.workOrder},
        {u"External-Description"_s, facts.title},
        {u"Bagging-Date"_s, last.said.at.text().first(10)},
        {u"Payload-Oxum"_s, u"%1.%2"_s.arg(payloadBytes).arg(payloadFiles)},
        {u"Remate-Format"_s, QString::number(formatNumber)},
        {u"Remate-Version"_s, labels.version},
        {u"Remate-Rules"_s, QString::number(core::rulesVersion)},
        {u"Remate-Typeset"_s, labels.typeset},
        {u"Remate-Paper"_s, textOf(labels.paper)},
        {u"Remate-Ledger"_s, last.said.ledger.text()},
        {u"Remate-Head"_s, u"%1 %2"_s.arg(last.said.seq).arg(last.hash.hex())},
        {u"Remate-Root"_s, job.reg().fingerprint.hex()},
        {u"Remate-Closed"_s, job.isClosed() ? u"yes"_s : u"no"_s},
    };
}

std::optional<Labels> labelsIn(const std::vector<core::bag::Label> &labels)
{
    const auto version = valueOf(labels, u"Remate-Version");
    const auto typeset = valueOf(labels, u"Remate-Typeset");
    const auto paper = valueOf(labels, u"Remate-Paper");
    const auto format = valueOf(labels, u"Remate-Format");
    if (!version || !typeset || format != QString::number(formatNumber) || (paper != u"a4" && paper != u"letter"))
        return std::nullopt;
    return Labels{*version, *typeset, paper == u"a4" ? record::PageSize::A4 : record::PageSize::Letter};
}

core::Result<QByteArray> instructions() { return resource(u":/package/VERIFY.txt"_s); }
core::Result<QByteArray> script() { return resource(u":/package/verify.py"_s); }

core::Result<QByteArray> pdfOf(const core::JobRecord &job, record::PageSize paper, const record::FetchAttachment &fetch, const record::Progress &progress)
{
    return record::recordPdf(job, {.pageSize = paper, .whenOpen = record::WhenOpen::MarkAsDraft, .progress = progress, .attachment = fetch});
}

QByteArray csvOf(const core::JobRecord &job)
{
    const language::InRecordWords english;
    return core::reportCsv(*core::findReport(u"interfaces"), job);
}

} // namespace package
