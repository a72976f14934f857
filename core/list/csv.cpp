// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/csv.hpp"

#include <QCoreApplication>
#include <QStringDecoder>

#include <algorithm>

namespace core::csv {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Csv", text); }

constexpr QByteArrayView byteOrderMark("\xEF\xBB\xBF");

char separatorOf(QByteArrayView bytes)
{
    qsizetype commas = 0;
    qsizetype semicolons = 0;
    bool inQuotes = false;
    for (const char c : bytes) {
        if (c == '"')
            inQuotes = !inQuotes;
        else if (!inQuotes && (c == '\n' || c == '\r'))
            break;
        else if (!inQuotes && c == ',')
            ++commas;
        else if (!inQuotes && c == ';')
            ++semicolons;
    }
    return semicolons > commas ? ';' : ',';
}

/// Walks the bytes once. Separators, quotes and line ends are ASCII, so they cannot stand inside a UTF-8 sequence.
class Reader {
public:
    Reader(QByteArrayView bytes, QString fileName) : m_bytes(bytes), m_file(std::move(fileName))
    {
        m_table.separator = separatorOf(bytes);
    }

    Table read()
    {
        while (m_at < m_bytes.size())
            readRecord();
        return std::move(m_table);
    }

private:
    bool isAt(char c) const { return m_at < m_bytes.size() && m_bytes[m_at] == c; }
    bool isAtCrLf() const { return isAt('\r') && m_at + 1 < m_bytes.size() && m_bytes[m_at + 1] == '\n'; }
    bool isAtLineEnd() const { return m_at >= m_bytes.size() || isAt('\n') || isAtCrLf(); }

    void readRecord()
    {
        Record record{static_cast<qint64>(m_table.records.size()) + 1, {}};
        for (bool more = true; more;) {
            m_column = static_cast<qint64>(record.fields.size()) + 1;
            record.fields.push_back(isAt('"') ? quotedField() : plainField());
            more = isAt(m_table.separator);
            if (more)
                ++m_at;
        }
        m_at += isAtCrLf() ? 2 : 1;
        m_table.records.push_back(std::move(record));
    }

    Field plainField()
    {
        const qsizetype from = m_at;
        while (!isAtLineEnd() && !isAt(m_table.separator)) {
            if (isAt('"'))
                fault(tr("A quote stands inside a field that does not begin with one. Put the field in quotes and write the quote twice."));
            if (isAt('\r'))
                fault(tr("A carriage return stands alone. End lines with a line feed, or with both."));
            ++m_at;
        }
        return {decoded(m_bytes.sliced(from, m_at - from).toByteArray()), false};
    }

    Field quotedField()
    {
        QByteArray content;
        ++m_at;
        for (;; ++m_at) {
            if (m_at >= m_bytes.size()) {
                fault(tr("A quote opens here and never closes."));
                break;
            }
            if (!isAt('"')) {
                content += m_bytes[m_at];
                continue;
            }
            ++m_at;
            if (!isAt('"'))
                break;
            content += '"';
        }
        if (!isAtLineEnd() && !isAt(m_table.separator)) {
            fault(tr("Text follows the closing quote. Only a separator or the end of the line may."));
            while (!isAtLineEnd() && !isAt(m_table.separator))
                ++m_at;
        }
        return {decoded(content), true};
    }

    QString decoded(const QByteArray &bytes)
    {
        QStringDecoder decoder(QStringDecoder::Utf8, QStringDecoder::Flag::Stateless);
        const QString text = decoder(bytes);
        if (decoder.hasError())
            fault(tr("This is not UTF-8. Save the file as UTF-8 and try again."));
        const auto isControl = [](QChar c) { return c.category() == QChar::Other_Control && c != u'\n' && c != u'\r' && c != u'\t'; };
        if (std::any_of(text.begin(), text.end(), isControl))
            fault(tr("A control character stands in this field. Take it out."));
        return text;
    }

    /// One fault of a sort in each field is enough: the rest follows from the first.
    void fault(const QString &message)
    {
        const Error error{ErrorCode::BadInput, message, {m_file, static_cast<qint64>(m_table.records.size()) + 1, m_column}};
        if (m_table.faults.empty() || m_table.faults.back() != error)
            m_table.faults.push_back(error);
    }

    QByteArrayView m_bytes;
    QString m_file;
    Table m_table{',', {}, {}};
    qsizetype m_at = 0;
    qint64 m_column = 1;
};

bool needsQuotes(QStringView text)
{
    const auto isSpecial = [](QChar c) { return c == u',' || c == u';' || c == u'"' || c == u'\n' || c == u'\r' || c == u'\t'; };
    return std::any_of(text.begin(), text.end(), isSpecial) || (!text.isEmpty() && (text.front().isSpace() || text.back().isSpace()));
}

/// Apostrophes in front do not count, so that guarding adds one more to text that was guarded before.
bool runsAsFormula(QStringView text)
{
    const auto first = std::find_if(text.begin(), text.end(), [](QChar c) { return c != u'\''; });
    return first != text.end() && QStringView(u"=+-@\t\r").contains(*first);
}

} // namespace

bool Record::isEmpty() const
{
    return std::all_of(fields.begin(), fields.end(), [](const Field &field) { return field.text.trimmed().isEmpty(); });
}

Table read(QByteArrayView bytes, const QString &fileName)
{
    if (bytes.size() > largestFile)
        return {',', {}, {Error{ErrorCode::BadInput, tr("The file is longer than 64 MiB, which no list is."), {fileName, std::nullopt, std::nullopt}}}};
    if (bytes.startsWith(byteOrderMark))
        bytes = bytes.sliced(byteOrderMark.size());
    return Reader(bytes, fileName).read();
}

QByteArray write(const std::vector<std::vector<QString>> &records)
{
    QByteArray out;
    for (const auto &record : records) {
        for (std::size_t i = 0; i < record.size(); ++i) {
            if (i > 0)
                out += ',';
            QString text = record[i];
            out += needsQuotes(text) ? '"' + text.replace(u'"', QStringLiteral("\"\"")).toUtf8() + '"' : text.toUtf8();
        }
        out += "\r\n";
    }
    return out;
}

QString guarded(const QString &text) { return runsAsFormula(text) ? u'\'' + text : text; }

QString unguarded(const QString &text) { return text.startsWith(u'\'') && runsAsFormula(text) ? text.mid(1) : text; }

} // namespace core::csv
