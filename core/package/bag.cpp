// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/package/bag.hpp"

#include <QCoreApplication>
#include <QStringDecoder>

#include <algorithm>
#include <optional>

namespace core::bag {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

QByteArray encoded(const QString &path)
{
    return path.toUtf8().replace('%', "%25").replace('\n', "%0A").replace('\r', "%0D");
}

QString decoded(QString path)
{
    return path.replace(QStringLiteral("%0A"), QStringLiteral("\n")).replace(QStringLiteral("%0D"), QStringLiteral("\r")).replace(QStringLiteral("%25"), QStringLiteral("%"));
}

tl::unexpected<Error> wrongLine(const QString &file, qint64 row, const QString &what)
{
    return failure(ErrorCode::BadInput, what, {file, row, std::nullopt});
}

std::optional<QString> textOf(QByteArrayView utf8)
{
    QStringDecoder decode(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless | QStringDecoder::Flag::ConvertInitialBom);
    QString text = decode(utf8);
    return decode.hasError() ? std::nullopt : std::optional(std::move(text));
}

/// Hands each line to `take` with its row. Every line has its end, LF.
template <class Take>
Result<void> eachLine(QByteArrayView text, const QString &file, Take take)
{
    for (qint64 row = 1; !text.isEmpty(); ++row) {
        const qsizetype end = text.indexOf('\n');
        if (end < 0)
            return wrongLine(file, row, tr("The last line has no end: the file was cut off."));
        const auto line = textOf(text.first(end));
        if (!line)
            return wrongLine(file, row, tr("The line is not UTF-8."));
        if (Result<void> taken = take(*line, row); !taken)
            return taken;
        text = text.sliced(end + 1);
    }
    return {};
}

Result<Listed> listedIn(const QString &line, const QString &file, qint64 row)
{
    constexpr qsizetype digestLength = 64;
    const auto digest = Digest::parse(QStringView(line).left(digestLength));
    if (!digest)
        return wrongLine(file, row, tr("The line does not begin with a SHA-256 digest in lower-case hex."));
    if (!QStringView(line).sliced(digestLength).startsWith(u"  "))
        return wrongLine(file, row, tr("Two blanks stand between digest and path."));
    const QString path = decoded(line.sliced(digestLength + 2));
    if (!isSafePath(path) || encoded(path) != line.sliced(digestLength + 2).toUtf8())
        return wrongLine(file, row, tr("\"%1\" is no path inside a bag.").arg(path));
    return Listed{path, *digest};
}

QString inOneLine(const QString &text)
{
    QString line = text.simplified();
    std::replace_if(line.begin(), line.end(), [](QChar c) { return c.category() == QChar::Other_Control; }, u' ');
    return line;
}

} // namespace

QByteArray declaration() { return "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"; }

QByteArray manifest(std::vector<Listed> files)
{
    std::sort(files.begin(), files.end(), [](const Listed &a, const Listed &b) { return a.path < b.path; });
    QByteArray text;
    for (const Listed &file : files)
        text += file.digest.hex().toLatin1() + "  " + encoded(file.path) + '\n';
    return text;
}

Result<std::vector<Listed>> parseManifest(QByteArrayView text, const QString &file)
{
    std::vector<Listed> files;
    const auto read = eachLine(text, file, [&](const QString &line, qint64 row) -> Result<void> {
        auto listed = listedIn(line, file, row);
        if (!listed)
            return failure(listed.error());
        if (!files.empty() && !(files.back().path < listed->path))
            return wrongLine(file, row, tr("The paths are not in order, or one stands there twice."));
        files.push_back(*std::move(listed));
        return {};
    });
    if (!read)
        return failure(read.error());
    return files;
}

QByteArray info(const std::vector<Label> &labels)
{
    QByteArray text;
    for (const auto &[label, value] : labels)
        text += label.toUtf8() + ": " + inOneLine(value).toUtf8() + '\n';
    return text;
}

Result<std::vector<Label>> parseInfo(QByteArrayView text, const QString &file)
{
    std::vector<Label> labels;
    const auto read = eachLine(text, file, [&](const QString &line, qint64 row) -> Result<void> {
        const qsizetype colon = line.indexOf(u": ");
        if (colon < 1 || line.front().isSpace())
            return wrongLine(file, row, tr("A line is a label, a colon, a blank and a value."));
        const QString label = line.first(colon);
        if (std::any_of(labels.begin(), labels.end(), [&](const Label &one) { return one.first.compare(label, Qt::CaseInsensitive) == 0; }))
            return wrongLine(file, row, tr("The label %1 stands there twice.").arg(label));
        labels.emplace_back(label, line.sliced(colon + 2));
        return {};
    });
    if (!read)
        return failure(read.error());
    return labels;
}

bool isSafePath(QStringView path)
{
    if (path.isEmpty() || path.startsWith(u'~'))
        return false;
    const bool isPlain = std::none_of(path.begin(), path.end(), [](QChar c) { return c == u'\\' || c == u':' || c.category() == QChar::Other_Control; });
    const auto parts = path.split(u'/');
    return isPlain && std::none_of(parts.begin(), parts.end(), [](QStringView part) { return part.isEmpty() || part == u"." || part == u".."; });
}

} // namespace core::bag
