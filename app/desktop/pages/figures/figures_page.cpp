// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/figures/figures_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/pages/figures/figure_card.hpp"
#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/reports/figures.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

QString keyOf(const core::JobFigure &figure) { return QString::number(figure.mark.seq); }

QString capitalised(QString text)
{
    if (!text.isEmpty())
        text[0] = text[0].toUpper();
    return text;
}

} // namespace

FiguresPage::FiguresPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *left = new QWidget(this);
    auto *column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    m_rows = new RowTable({{tr("What"), 14}, {tr("Of"), 15}, {tr("Result"), 0}, {tr("Reference"), 18}, {tr("Signed"), 19}}, tr("Lifts, fluids, weight"),
                          tr("No lift is planned, nothing is filled in and no weight recorded in this job. Each is worked out as it is entered, and stands here with its working."), left);
    m_rows->setObjectName(u"figures"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"lift.planned"_L1, "servicing.recorded"_L1, "weight.recorded"_L1}, left);
    column->addWidget(makeLabel(tr("Lifts, fluids, weight"), "title", left));
    column->addWidget(m_rows, 1);
    column->addWidget(m_actions);
    m_card = new FigureCard(tools.feed, this);
    m_card->setObjectName(u"figure"_s);

    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(left);
    splitter->addWidget(m_card);
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    splitter->setSizes({560, 440}); // in proportion
    auto *layout = new QHBoxLayout(this);
    layout->addWidget(splitter);

    setFocusProxy(&m_rows->view());
    connect(m_rows, &RowTable::chosenChanged, this, &FiguresPage::showChosen);
    follow(&FiguresPage::refresh);
    refresh();
}

const core::JobFigure *FiguresPage::figureOf(const QString &key) const
{
    if (!feed().state())
        return nullptr;
    const auto &figures = feed().state()->figures;
    const auto at = std::find_if(figures.begin(), figures.end(), [&](const core::JobFigure &figure) { return keyOf(figure) == key; });
    return at == figures.end() ? nullptr : &*at;
}

void FiguresPage::refresh()
{
    std::vector<Row> rows;
    for (const core::JobFigure &figure : feed().state() ? feed().state()->figures : std::vector<core::JobFigure>()) {
        const core::Act *act = core::findAct(figure.kind);
        rows.push_back({keyOf(figure),
                        {act ? doneOf(*act) : figure.kind, capitalised(core::figureAbout(figure)), capitalised(core::figureResult(figure)), figure.body.text(u"reference"),
                         markInWords(figure.mark, *feed().state(), feed().reg())}});
    }
    m_rows->take(rows);
    // What was signed last is what people want to see.
    const QString newest = rows.empty() ? QString() : rows.back().key;
    if (newest != m_newest)
        m_rows->choose(newest);
    m_newest = newest;
    showChosen();
}

void FiguresPage::showChosen()
{
    m_card->show(figureOf(m_rows->chosen()));
    m_actions->show({});
}

} // namespace desktop
