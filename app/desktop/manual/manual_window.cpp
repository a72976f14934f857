// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/manual/manual_window.hpp"

#include <QDesktopServices>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QTextBrowser>
#include <QTextFrame>
#include <QTextTable>
#include <QUrl>

#include "app/desktop/parts/labels.hpp"
#include "app/manual/sections.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

/// Tables come without lines from Markdown, and long ones cannot be read so.
void drawTables(QTextDocument &document)
{
    for (QTextFrame *frame : document.rootFrame()->childFrames()) {
        auto *table = qobject_cast<QTextTable *>(frame);
        if (!table)
            continue;
        QTextTableFormat format = table->format();
        format.setBorder(1);
        format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        format.setBorderCollapse(true);
        format.setCellPadding(4);
        table->setFormat(format);
    }
}

} // namespace

ManualWindow::ManualWindow(std::vector<manual::Page> pages, QWidget *parent) : QDialog(parent), m_pages(std::move(pages))
{
    setWindowTitle(tr("Manual"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    const int gap = fontMetrics().averageCharWidth();
    resize(gap * 170, fontMetrics().height() * 44);
    m_search = new QLineEdit(this);
    m_search->setObjectName(u"search"_s);
    m_search->setPlaceholderText(tr("Words to look for"));
    m_search->setAccessibleName(tr("Words to look for in the manual"));
    m_search->setClearButtonEnabled(true);
    m_contents = new QListWidget(this);
    m_contents->setObjectName(u"contents"_s);
    m_contents->setAccessibleName(tr("Pages"));
    m_contents->setProperty("role", "contents");
    m_contents->setWordWrap(true);
    m_contents->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_back = makeButton(tr("&Back"), "", this);
    m_back->setObjectName(u"back"_s);
    m_text = new QTextBrowser(this);
    m_text->setObjectName(u"text"_s);
    m_text->setAccessibleName(tr("Page"));
    m_text->setOpenLinks(false);

    auto *left = new QVBoxLayout;
    left->addWidget(m_search);
    left->addWidget(m_contents, 1);
    left->addWidget(m_back);
    auto *row = new QHBoxLayout(this);
    row->addLayout(left, 2);
    row->addWidget(m_text, 5);

    connect(m_search, &QLineEdit::textChanged, this, &ManualWindow::narrow);
    connect(m_search, &QLineEdit::returnPressed, this, [this] { m_contents->setFocus(Qt::OtherFocusReason); });
    connect(m_contents, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem *item) {
        if (item)
            showPage(item->data(Qt::UserRole).toString());
    });
    connect(m_text, &QTextBrowser::anchorClicked, this, [this](const QUrl &link) { follow(link.toString()); });
    connect(m_back, &QPushButton::clicked, this, &ManualWindow::back);
    connect(new QShortcut(QKeySequence::Back, this), &QShortcut::activated, this, &ManualWindow::back);
    connect(new QShortcut(QKeySequence::Find, this), &QShortcut::activated, this, [this] { m_search->setFocus(Qt::ShortcutFocusReason); });
    narrow({});
    showPage(u"index"_s);
    m_before.clear();
    m_back->setEnabled(false);
    m_text->setFocus(Qt::OtherFocusReason);
}

void ManualWindow::narrow(const QString &words)
{
    const QSignalBlocker quiet(m_contents);
    m_contents->clear();
    for (const manual::Page *page : manual::pagesWith(m_pages, words)) {
        auto *item = new QListWidgetItem(page->title, m_contents);
        item->setData(Qt::UserRole, page->name);
    }
    if (m_contents->count() == 0) {
        auto *none = new QListWidgetItem(tr("No page has all of these words."), m_contents);
        none->setFlags(Qt::NoItemFlags);
    }
    choose(m_shown);
}

void ManualWindow::choose(const QString &name)
{
    const QSignalBlocker quiet(m_contents);
    for (int row = 0; row < m_contents->count(); ++row) {
        if (m_contents->item(row)->data(Qt::UserRole).toString() == name)
            m_contents->setCurrentRow(row);
    }
}

void ManualWindow::showPage(const QString &name, const QString &section)
{
    const manual::Page *page = manual::findPage(m_pages, name);
    if (!page)
        page = &m_pages.front();
    if (page->name != m_shown) {
        if (!m_shown.isEmpty())
            m_before << m_shown;
        take(*page);
    }
    m_text->scrollToAnchor(section);
}

void ManualWindow::take(const manual::Page &page)
{
    m_shown = page.name;
    m_text->document()->setMarkdown(page.text);
    manual::anchorSections(*m_text->document());
    m_text->document()->setDocumentMargin(fontMetrics().averageCharWidth() * 3);
    drawTables(*m_text->document());
    m_text->moveCursor(QTextCursor::Start);
    choose(page.name);
    m_back->setEnabled(!m_before.isEmpty());
}

void ManualWindow::follow(const QString &link)
{
    if (const auto page = manual::pageOfLink(link))
        showPage(*page, manual::sectionOfLink(link));
    else
        QDesktopServices::openUrl(QUrl(link)); // a source that the manual names
}

void ManualWindow::back()
{
    if (m_before.isEmpty())
        return;
    const QString name = m_before.takeLast();
    take(*manual::findPage(m_pages, name));
}

} // namespace desktop
