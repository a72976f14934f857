// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/manual/pages.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>

#include "app/manual/rules_page.hpp"
#include "resources/resources.hpp"

namespace manual {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Manual", text); }

/// Without the notes of who holds the rights, which stand in comments at the top.
QString withoutComments(QString text)
{
    static const QRegularExpression comments(u"\\A(\\s*<!--.*?-->)+\\s*"_s, QRegularExpression::DotMatchesEverythingOption);
    return text.remove(comments);
}

QString titleOf(const QString &text)
{
    return text.startsWith(u"# ") ? text.mid(2, text.indexOf(u'\n') - 2).trimmed() : QString();
}

core::Result<Page> loadPage(const QString &name)
{
    QFile file(u":/manual/"_s + name + u".md"_s);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("The manual has no page \"%1\". Install the program again.").arg(name));
    Page page{name, {}, withoutComments(QString::fromUtf8(file.readAll()))};
    page.title = titleOf(page.text);
    return page;
}

QStringList namesIn(const QString &index)
{
    static const QRegularExpression links(u"\\]\\(([a-z_]+)\\.md\\)"_s);
    QStringList names;
    for (auto at = links.globalMatch(index); at.hasNext();)
        names << at.next().captured(1);
    names.removeDuplicates();
    return names;
}

/// How often the page has the words, and in its title first; 0 where it has not every one of them.
qsizetype weight(const Page &page, const QStringList &words)
{
    constexpr qsizetype ofTitle = 1000;
    qsizetype sum = 0;
    for (const QString &word : words) {
        const qsizetype inText = page.text.count(word, Qt::CaseInsensitive);
        if (inText == 0)
            return 0;
        sum += inText + (page.title.contains(word, Qt::CaseInsensitive) ? ofTitle : 0);
    }
    return sum;
}

} // namespace

core::Result<std::vector<Page>> loadPages()
{
    resources::readyResources();
    auto index = loadPage(u"index"_s);
    if (!index)
        return core::failure(index.error());
    std::vector<Page> pages{*std::move(index)};
    for (const QString &name : namesIn(pages.front().text)) {
        if (name == u"rules") {
            pages.push_back(rulesPage());
            continue;
        }
        auto page = loadPage(name);
        if (!page)
            return core::failure(page.error());
        pages.push_back(*std::move(page));
    }
    return pages;
}

const Page *findPage(const std::vector<Page> &pages, QStringView name)
{
    const auto at = std::find_if(pages.begin(), pages.end(), [&](const Page &page) { return page.name == name; });
    return at == pages.end() ? nullptr : &*at;
}

std::optional<QString> pageOfLink(QStringView link)
{
    const QStringView file = link.left(link.indexOf(u'#'));
    const bool isPage = file.endsWith(u".md") && !file.contains(u'/') && !file.contains(u':');
    return isPage ? std::optional(file.chopped(3).toString()) : std::nullopt;
}

QString sectionOfLink(QStringView link)
{
    const qsizetype at = link.indexOf(u'#');
    return at < 0 ? QString() : link.sliced(at + 1).toString();
}

std::vector<const Page *> pagesWith(const std::vector<Page> &pages, const QString &words)
{
    const QStringList each = words.simplified().split(u' ', Qt::SkipEmptyParts);
    std::vector<std::pair<qsizetype, const Page *>> found;
    for (const Page &page : pages) {
        const qsizetype here = weight(page, each);
        if (here > 0 || each.isEmpty())
            found.emplace_back(here, &page);
    }
    std::stable_sort(found.begin(), found.end(), [](const auto &a, const auto &b) { return a.first > b.first; });
    std::vector<const Page *> ordered;
    for (const auto &[here, page] : found)
        ordered.push_back(page);
    return ordered;
}

} // namespace manual
