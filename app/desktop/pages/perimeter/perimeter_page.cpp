// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QStackedWidget>
#include <QVBoxLayout>

#include "app/desktop/pages/perimeter/perimeter_legend.hpp"
#include "app/desktop/pages/perimeter/perimeter_print.hpp"
#include "app/desktop/pages/perimeter/perimeter_view.hpp"
#include "app/desktop/parts/closure_words.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/picture/perimeter_of.hpp"
#include "core/job/loose_ends.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

PerimeterPage::PerimeterPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    m_view = new PerimeterView(this);
    m_view->setObjectName(u"boundary"_s);
    m_stack = new QStackedWidget(this);
    m_stack->addWidget(m_view);
    m_stack->addWidget(makeEmpty());
    auto *column = new QVBoxLayout(this);
    column->addWidget(makeHead());
    column->addWidget(m_stack, 1);
    m_legend = new PerimeterLegend(this);
    column->addWidget(m_legend);
    column->addWidget(makeFoot());
    setFocusProxy(m_view);
    connect(m_view, &PerimeterView::currentChanged, this, &PerimeterPage::followView);
    connect(m_view, &PerimeterView::opened, this, &PerimeterPage::open);
    connect(&selection(), &Selection::changed, this, &PerimeterPage::followSelection);
    follow(&PerimeterPage::refresh);
    connect(&feed(), &JobFeed::jobChanged, m_view, &PerimeterView::fit);
    refresh();
    followSelection();
}

QWidget *PerimeterPage::makeHead()
{
    auto *head = new QWidget(this);
    auto *row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    auto *words = new QVBoxLayout;
    m_title = makeLabel({}, "title", head);
    m_title->setObjectName(u"closure"_s);
    m_hoist = makeLabel({}, "quiet", head);
    m_hoist->setObjectName(u"hoist"_s);
    words->addWidget(m_title);
    words->addWidget(m_hoist);
    row->addLayout(words, 1);
    const auto add = [&](const QString &text, const QString &name, const QString &says, auto act) {
        QPushButton *button = makeButton(text, "", head);
        button->setObjectName(name);
        button->setAccessibleName(says);
        button->setToolTip(says);
        button->setMinimumSize(touchHeight(fontMetrics()), touchHeight(fontMetrics()));
        row->addWidget(button);
        connect(button, &QPushButton::clicked, m_view, act);
    };
    add(u"−"_s, u"reduce"_s, tr("Smaller (-)"), &PerimeterView::reduce);
    add(u"+"_s, u"enlarge"_s, tr("Larger (+)"), &PerimeterView::enlarge);
    add(tr("All of it"), u"fit"_s, tr("Show all of it (0)"), &PerimeterView::fit);
    m_print = makeButton(tr("P&rint …"), "", head);
    m_print->setObjectName(u"print"_s);
    m_print->setToolTip(tr("Print all of it on one page"));
    m_print->setMinimumHeight(touchHeight(fontMetrics()));
    row->addWidget(m_print);
    connect(m_print, &QPushButton::clicked, this, &PerimeterPage::printAsked);
    return head;
}

QWidget *PerimeterPage::makeEmpty()
{
    auto *empty = new QWidget(this);
    auto *column = new QVBoxLayout(empty);
    QLabel *title = makeLabel(tr("There is nothing to draw yet"), "title", empty);
    QLabel *words = makeLabel(tr("The boundary is drawn from the list of interfaces, and the list is empty. Import it as a CSV file; nobody has to draw anything."), "", empty);
    words->setMaximumWidth(fontMetrics().averageCharWidth() * 60);
    words->setAlignment(Qt::AlignHCenter);
    QPushButton *import = makeButton(tr("&Import the list …"), "main", empty);
    import->setObjectName(u"import"_s);
    import->setMinimumHeight(touchHeight(fontMetrics()));
    column->addStretch();
    for (QWidget *widget : std::initializer_list<QWidget *>{title, words, import})
        column->addWidget(widget, 0, Qt::AlignHCenter);
    column->addStretch();
    connect(import, &QPushButton::clicked, this, &Page::importWanted);
    return empty;
}

QWidget *PerimeterPage::makeFoot()
{
    auto *foot = new QWidget(this);
    auto *row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    m_stage = new StageMark(foot);
    m_current = makeLabel({}, "", foot);
    m_current->setObjectName(u"current"_s);
    m_current->setMinimumHeight(fontMetrics().height() * 2);
    m_open = makeButton(tr("&Open"), "main", foot);
    m_open->setObjectName(u"open"_s);
    m_open->setToolTip(tr("Lead to it, where it can be signed (Return)"));
    m_open->setMinimumHeight(touchHeight(fontMetrics()));
    row->addWidget(m_stage);
    row->addWidget(m_current, 1);
    row->addWidget(m_open);
    connect(m_open, &QPushButton::clicked, this, &PerimeterPage::open);
    return foot;
}

void PerimeterPage::chooseRow(const QString &key)
{
    if (const auto id = core::InterfaceId::parse(key))
        selection().choose({*id});
}

void PerimeterPage::refresh()
{
    const auto &job = feed().state();
    const bool isEmpty = !job || job->items.empty();
    m_view->show(isEmpty ? picture::Perimeter() : picture::perimeterOf(*job, feed().looseEnds()));
    m_stack->setCurrentIndex(isEmpty ? 1 : 0);
    m_legend->setVisible(!isEmpty);
    if (!isEmpty)
        m_legend->show(m_view->perimeter());
    m_title->setText(closureInWords(feed()));
    m_hoist->setText(job ? picture::hoistInWords(*job) : QString());
    m_hoist->setVisible(!m_hoist->text().isEmpty());
    m_print->setEnabled(!isEmpty);
    tellCurrent();
}

void PerimeterPage::printAsked()
{
    const auto printer = tools().ask.printer(tr("Print the perimeter"));
    if (!printer)
        return;
    if (const auto printed = printPerimeter(m_view->perimeter(), *feed().state(), {m_title->text(), m_hoist->text()}, *printer); !printed)
        tools().ask.tell(tr("The perimeter was not printed"), core::errorInWords(printed.error()));
}

void PerimeterPage::followView()
{
    const QScopedValueRollback following(m_isFollowing, true);
    const picture::PerimeterItem *item = m_view->current();
    const auto id = item && !item->isTemporary() ? core::InterfaceId::parse(item->id) : std::nullopt;
    selection().choose(id ? std::vector{*id} : std::vector<core::InterfaceId>());
    tellCurrent();
}

void PerimeterPage::followSelection()
{
    if (m_isFollowing)
        return;
    std::vector<QString> ids;
    for (const core::InterfaceId &id : selection().items())
        ids.push_back(id.text());
    m_view->choose(ids);
    tellCurrent();
}

void PerimeterPage::tellCurrent()
{
    const picture::PerimeterItem *item = m_view->current();
    m_open->setEnabled(item);
    m_stage->setVisible(item && item->stage);
    if (!item) {
        m_current->setText(m_stack->currentIndex() == 1 ? QString() : tr("Arrow keys walk along the boundary, Page Down goes on to the next zone, Return opens."));
        return;
    }
    if (item->stage) {
        m_stage->setStage(*item->stage);
        m_stage->setText(item->word);
    }
    QStringList words{tr("%1 %2, %3.").arg(item->id, item->name, m_view->currentZone()->name)};
    if (item->isMount)
        words << tr("A mount.");
    for (const core::LooseEnd &end : feed().looseEnds()) {
        if (end.subject == item->id && core::isAboutInterface(end) == item->stage.has_value()) // a temporary item has no stage
            words << end.sentence;
    }
    m_current->setText(words.join(u' '));
}

void PerimeterPage::open()
{
    const picture::PerimeterItem *item = m_view->current();
    if (!item)
        return;
    if (item->isTemporary())
        emit pageWanted(u"temporaries"_s, item->id);
    else
        emit pageWanted(u"list"_s);
}

} // namespace desktop
