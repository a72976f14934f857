// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/layering/source_text.hpp"

#include <QRegularExpression>

namespace layering {

namespace {

/// Walks the text once and keeps line breaks, so that positions stay lines.
class Reader {
public:
    explicit Reader(const QString &text) : m_text(text) {}

    SourceText read()
    {
        while (m_at < m_text.size())
            step();
        return m_result;
    }

private:
    void step()
    {
        if (looksAt("//"))
            blankUpTo(endOf("\n", 0));
        else if (looksAt("/*"))
            blankUpTo(endOf("*/", 2));
        else if (looksAt("#") && startsLine() && readInclude())
            return;
        else if (looksAt("R\"") && !followsName())
            readRaw();
        else if (looksAt("\""))
            readLiteral(u'"');
        else if (looksAt("'") && !followsName()) // 1'000 is a number
            readLiteral(u'\'');
        else
            keep();
    }

    bool looksAt(const char *what) const { return QStringView(m_text).sliced(m_at).startsWith(QLatin1String(what)); }

    bool followsName() const { return m_at > 0 && (m_text[m_at - 1].isLetterOrNumber() || m_text[m_at - 1] == u'_'); }

    /// Comments before it do not count: the compiler sees a directive after them too.
    bool startsLine() const
    {
        return QStringView(m_result.code).sliced(m_result.code.lastIndexOf(u'\n') + 1).trimmed().isEmpty();
    }

    qsizetype endOf(const char *mark, qsizetype length) const
    {
        const qsizetype found = m_text.indexOf(QLatin1String(mark), m_at + length);
        return found < 0 ? m_text.size() : found + length;
    }

    void keep()
    {
        m_result.code += m_text[m_at];
        ++m_at;
    }

    void blankUpTo(qsizetype end)
    {
        for (; m_at < end; ++m_at)
            m_result.code += m_text[m_at] == u'\n' ? u'\n' : u' ';
    }

    bool readInclude()
    {
        static const QRegularExpression form(R"x(^#[ \t]*include[ \t]*(?:"([^"\n]+)"|<([^>\n]+)>))x");
        const auto match = form.match(m_text.mid(m_at, endOf("\n", 0) - m_at));
        if (!match.hasMatch())
            return false;
        const bool quoted = match.hasCaptured(1);
        m_result.includes.append({lineAt(m_text, m_at), match.captured(quoted ? 1 : 2), quoted});
        blankUpTo(m_at + match.capturedLength());
        return true;
    }

    void readRaw()
    {
        const qsizetype open = m_text.indexOf(u'(', m_at);
        const QString close = u')' + m_text.mid(m_at + 2, open - m_at - 2) + u'"';
        const qsizetype found = m_text.indexOf(close, open);
        const qsizetype end = found < 0 ? m_text.size() : found;
        m_result.literals.append({lineAt(m_text, m_at), m_text.mid(open + 1, end - open - 1)});
        blankUpTo(qMin(end + close.size(), m_text.size()));
    }

    void readLiteral(QChar quote)
    {
        qsizetype end = m_at + 1;
        while (end < m_text.size() && m_text[end] != quote && m_text[end] != u'\n')
            end += m_text[end] == u'\\' ? 2 : 1;
        end = qMin(end, m_text.size());
        if (quote == u'"')
            m_result.literals.append({lineAt(m_text, m_at), m_text.mid(m_at + 1, end - m_at - 1)});
        blankUpTo(qMin(end + 1, m_text.size()));
    }

    const QString &m_text;
    qsizetype m_at = 0;
    SourceText m_result;
};

} // namespace

SourceText takeApart(const QString &text) { return Reader(text).read(); }

int lineAt(const QString &text, qsizetype position) { return int(QStringView(text).first(position).count(u'\n')) + 1; }

} // namespace layering
