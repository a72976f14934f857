// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/manual/html.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QRegularExpression>
#include <QSaveFile>
#include <QTextDocument>

#include "app/manual/sections.hpp"

namespace manual {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Manual", text); }

/// What QTextDocument writes has the typeface and colours of a screen in it; a reader's browser has its own.
QString bodyOf(const QString &html)
{
    static const QRegularExpression body(u"<body[^>]*>(.*)</body>"_s, QRegularExpression::DotMatchesEverythingOption);
    static const QRegularExpression styles(u" (style|bgcolor|width|border|cellspacing|cellpadding)=\"[^\"]*\""_s);
    static const QRegularExpression spans(u"</?span[^>]*>"_s);
    QString text = body.match(html).captured(1);
    text.remove(styles);
    text.remove(spans);
    return text;
}

QString withLinksToFiles(QString html)
{
    static const QRegularExpression links(u"href=\"([a-z_]+)\\.md"_s);
    return html.replace(links, u"href=\"\\1.html"_s);
}

/// Text stays as wide as it is read well; tables and pages are told apart in light and dark.
constexpr QLatin1String look("body{max-width:46em;margin:2em auto;padding:0 1em;font-family:sans-serif;line-height:1.5}"
                             "table{border-collapse:collapse}td,th{border:1px solid;padding:.3em .6em;vertical-align:top;text-align:left}"
                             ":root{color-scheme:light dark}");

} // namespace

QByteArray htmlOf(const Page &page)
{
    QTextDocument document;
    document.setMarkdown(page.text);
    anchorSections(document);
    const QString up = page.name == u"index" ? QString() : u"<p><a href=\"index.html\">"_s + tr("Contents") + u"</a></p>\n"_s;
    return (u"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>"_s + page.title.toHtmlEscaped() + u"</title>\n<style>"_s + look + u"</style>\n</head>\n<body>\n"_s + up
            + withLinksToFiles(bodyOf(document.toHtml())) + u"\n</body>\n</html>\n"_s)
        .toUtf8();
}

core::Result<void> writeHtml(const std::vector<Page> &pages, const QString &folder)
{
    if (!QDir().mkpath(folder))
        return core::failure(core::ErrorCode::Io, tr("The folder %1 cannot be made.").arg(folder));
    for (const Page &page : pages) {
        QSaveFile file(QDir(folder).filePath(page.name + u".html"_s));
        const QByteArray html = htmlOf(page);
        if (!file.open(QIODevice::WriteOnly) || file.write(html) != html.size() || !file.commit())
            return core::failure(core::ErrorCode::Io, tr("%1 could not be written: %2. Choose another folder.").arg(file.fileName(), file.errorString()));
    }
    return {};
}

} // namespace manual
