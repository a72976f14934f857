// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <set>

#include "app/manual/html.hpp"
#include "app/manual/pages.hpp"
#include "app/manual/sections.hpp"
#include "core/rules/rulebook.hpp"

using namespace Qt::StringLiterals;

class TstManual : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void everyPageThatIsCarriedIsInTheContents();
    void everyPageHasATitleOfItsOwn();
    void linksLeadToPages();
    void everyRuleSaysWhyItExists();
    void linksOfPages_data();
    void linksOfPages();
    void headingsNameSections_data();
    void headingsNameSections();
    void wordsFindPages_data();
    void wordsFindPages();
    void htmlLeadsFromFileToFile();
    void htmlHasAnAnchorForEachSection();
    void htmlKeepsWhatIsMeantAsText();
    void aFolderThatCannotBeMadeIsSaid();

private:
    std::vector<manual::Page> m_pages;
};

void TstManual::initTestCase()
{
    auto pages = manual::loadPages();
    QVERIFY2(pages, pages ? "" : qPrintable(pages.error().message));
    m_pages = *std::move(pages);
}

void TstManual::everyPageThatIsCarriedIsInTheContents()
{
    for (const QString &file : QDir(u":/manual"_s).entryList({u"*.md"_s}))
        QVERIFY2(manual::findPage(m_pages, QStringView(file).chopped(3)), qPrintable(file));
}

void TstManual::everyPageHasATitleOfItsOwn()
{
    std::set<QString> titles;
    for (const manual::Page &page : m_pages) {
        QVERIFY2(!page.title.isEmpty(), qPrintable(page.name));
        QVERIFY2(titles.insert(page.title).second, qPrintable(page.title));
        QVERIFY2(!page.text.contains(u"SPDX"), qPrintable(page.name));
    }
}

void TstManual::linksLeadToPages()
{
    static const QRegularExpression links(u"\\]\\(([^)]+)\\)"_s);
    for (const manual::Page &page : m_pages) {
        for (auto at = links.globalMatch(page.text); at.hasNext();) {
            const QString link = at.next().captured(1);
            const auto name = manual::pageOfLink(link);
            QVERIFY2(name ? manual::findPage(m_pages, *name) != nullptr : link.startsWith(u"https://"), qPrintable(page.name + u": "_s + link));
            const QString section = name ? manual::sectionOfLink(link) : QString();
            QVERIFY2(section.isEmpty() || manual::sectionsOf(*manual::findPage(m_pages, *name)).contains(section), qPrintable(page.name + u": "_s + link));
        }
    }
}

void TstManual::everyRuleSaysWhyItExists()
{
    const manual::Page *rules = manual::findPage(m_pages, u"rules");
    QVERIFY(rules);
    const auto isTold = [&](QLatin1String name, const char *why) { return rules->text.contains(u"- `"_s + name + u"`: "_s) && *why != '\0'; };
    for (const core::Rule *rule : core::allRules())
        QVERIFY2(isTold(rule->name, rule->why), rule->name.data());
    for (const core::RegisterRule *rule : core::allRegisterRules())
        QVERIFY2(isTold(rule->name, rule->why), rule->name.data());
}

void TstManual::linksOfPages_data()
{
    QTest::addColumn<QString>("link");
    QTest::addColumn<QString>("page");
    QTest::addColumn<QString>("section");
    QTest::newRow("a page") << u"record.md"_s << u"record"_s << QString();
    QTest::newRow("a place of a page") << u"record.md#photos"_s << u"record"_s << u"photos"_s;
    QTest::newRow("an address") << u"https://www.rfc-editor.org/rfc/rfc8493"_s << QString() << QString();
    QTest::newRow("an address of such a file") << u"https://example.org/record.md"_s << QString() << QString();
    QTest::newRow("a file above") << u"../record.md"_s << QString() << QString();
    QTest::newRow("another file") << u"record.pdf"_s << QString() << QString();
}

void TstManual::linksOfPages()
{
    QFETCH(QString, link);
    QTEST(manual::pageOfLink(link).value_or(QString()), "page");
    QTEST(manual::sectionOfLink(link), "section");
}

void TstManual::headingsNameSections_data()
{
    QTest::addColumn<QString>("markdown");
    QTest::addColumn<QString>("names");
    QTest::newRow("one word") << u"# A page\n\n## Torque\n"_s << u"torque"_s;
    QTest::newRow("several words") << u"# A page\n\n## Lift, servicing, weight\n"_s << u"lift-servicing-weight"_s;
    QTest::newRow("an apostrophe") << u"# A page\n\n## Inspecting one's own work again\n"_s << u"inspecting-ones-own-work-again"_s;
    QTest::newRow("code") << u"# A page\n\n## What `--root` is for\n"_s << u"what-root-is-for"_s;
    QTest::newRow("two, one under the other") << u"# A page\n\n## Tags\n\nText.\n\n### Lost\n"_s << u"tags lost"_s;
    QTest::newRow("the title alone") << u"# Striking an entry\n\nText.\n"_s << QString();
    QTest::newRow("a line of code that looks like one") << u"# A page\n\n    ## Tags\n"_s << QString();
}

void TstManual::headingsNameSections()
{
    QFETCH(QString, markdown);
    QTEST(manual::sectionsOf({u"page"_s, u"A page"_s, markdown}).join(u' '), "names");
}

void TstManual::wordsFindPages_data()
{
    QTest::addColumn<QString>("words");
    QTest::addColumn<QString>("names");
    QTest::newRow("in a title first") << u"duct"_s << u"duct other"_s;
    QTest::newRow("more often first") << u"clamp"_s << u"other duct"_s;
    QTest::newRow("whatever the case") << u"CLAMP"_s << u"other duct"_s;
    QTest::newRow("all of the words") << u"clamp seal"_s << u"duct"_s;
    QTest::newRow("one word that nobody wrote") << u"clamp wing"_s << QString();
    QTest::newRow("no word") << u"  "_s << u"other duct"_s;
}

void TstManual::wordsFindPages()
{
    QFETCH(QString, words);
    const std::vector<manual::Page> pages{{u"other"_s, u"Other"_s, u"# Other\nClamp, clamp, clamp: duct duct duct."_s}, {u"duct"_s, u"The duct"_s, u"# The duct\nA clamp and a seal."_s}};
    QStringList names;
    for (const manual::Page *page : manual::pagesWith(pages, words))
        names << page->name;
    QTEST(names.join(u' '), "names");
}

void TstManual::htmlLeadsFromFileToFile()
{
    const QTemporaryDir folder;
    const QString inner = folder.filePath(u"made/when missing"_s);
    QVERIFY(manual::writeHtml(m_pages, inner));
    QCOMPARE(QDir(inner).entryList({u"*.html"_s}).size(), static_cast<qsizetype>(m_pages.size()));
    static const QRegularExpression links(u"href=\"([^\"]+)\""_s);
    for (const QString &name : QDir(inner).entryList({u"*.html"_s})) {
        QFile file(QDir(inner).filePath(name));
        QVERIFY(file.open(QIODevice::ReadOnly));
        const QString html = QString::fromUtf8(file.readAll());
        for (auto at = links.globalMatch(html); at.hasNext();) {
            const QString link = at.next().captured(1);
            QVERIFY2(link.startsWith(u"https://") || QFile::exists(QDir(inner).filePath(link.section(u'#', 0, 0))), qPrintable(name + u": "_s + link));
        }
    }
}

void TstManual::htmlHasAnAnchorForEachSection()
{
    const QString html = QString::fromUtf8(manual::htmlOf({u"page"_s, u"A page"_s, u"# A page\n\n## Lift, servicing\n\nText.\n"_s}));
    QCOMPARE(html.count(u"<a name="), 1);
    QVERIFY2(html.contains(u"<h2><a name=\"lift-servicing\"></a>Lift, servicing</h2>"), qPrintable(html));
}

void TstManual::htmlKeepsWhatIsMeantAsText()
{
    const QString html = QString::fromUtf8(manual::htmlOf({u"page"_s, u"Less < more & \"so\""_s, u"# Less\n\n| a | b |\n| --- | --- |\n| `x < y` | [on](other.md) |\n"_s}));
    QVERIFY(html.contains(u"<title>Less &lt; more &amp; &quot;so&quot;</title>"));
    QVERIFY(html.contains(u"x &lt; y"));
    QVERIFY(html.contains(u"href=\"other.html\""));
    QVERIFY(html.contains(u"<table"));
}

void TstManual::aFolderThatCannotBeMadeIsSaid()
{
    const QTemporaryDir folder;
    QFile file(folder.filePath(u"a file"_s));
    QVERIFY(file.open(QIODevice::WriteOnly));
    const auto written = manual::writeHtml(m_pages, folder.filePath(u"a file/in it"_s));
    QVERIFY(!written);
    QVERIFY(written.error().message.contains(u"a file/in it"));
}

QTEST_MAIN(TstManual)
#include "tst_manual.moc"
