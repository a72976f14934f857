// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/figures/figure_card.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/desktop/pages/figures/lift_view.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/picture/lift_of.hpp"
#include "core/job/figures.hpp"
#include "core/job/working_of.hpp"
#include "core/reports/figures.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

void embolden(QLabel &label)
{
    QFont bold = label.font();
    bold.setBold(true);
    label.setFont(bold);
}

} // namespace

FigureCard::FigureCard(JobFeed &feed, QWidget *parent) : QScrollArea(parent), m_feed(feed)
{
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setAccessibleName(tr("How the figure was worked out"));
    auto *inner = new QWidget(this);
    auto *column = new QVBoxLayout(inner);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap, gap / 2, gap, gap);
    column->setSpacing(gap / 2);
    m_title = makeLabel({}, "heading", inner);
    m_about = makeLabel({}, "quiet", inner);
    m_answer = makeLabel({}, "", inner);
    m_answer->setObjectName(u"answer"_s);
    embolden(*m_answer);
    m_lift = new LiftView(inner);
    m_lift->setObjectName(u"lift"_s);
    m_cautions = makeLabel({}, "caution", inner);
    m_cautions->setObjectName(u"cautions"_s);
    m_below = new QVBoxLayout;
    m_below->setSpacing(gap / 2);
    m_governs = makeLabel(core::measure::dataGoverns(), "quiet", inner);
    for (QWidget *widget : std::initializer_list<QWidget *>{m_title, m_about, m_answer, m_lift, m_cautions})
        column->addWidget(widget);
    column->addLayout(m_below);
    column->addStretch();
    column->addWidget(m_governs);
    setWidget(inner);
    setMinimumWidth(fontMetrics().averageCharWidth() * 56);
    show(nullptr);
}

QLabel *FigureCard::add(const QString &text, const char *role)
{
    QLabel *label = makeLabel(text, role, widget());
    m_below->addWidget(label);
    return label;
}

void FigureCard::addStep(const core::measure::WorkingStep &step)
{
    auto *row = new QHBoxLayout;
    auto *how = new QVBoxLayout;
    how->setSpacing(0);
    how->addWidget(makeLabel(step.what, "", widget()));
    QStringList parts{step.formula, step.numbers};
    parts.removeAll(QString());
    // Numbers that are an equation of their own, "a = 60°", are no further side of the formula's.
    if (!parts.isEmpty())
        how->addWidget(makeLabel(parts.join(step.numbers.contains(u" = "_s) ? u", "_s : u" = "_s), "quiet", widget()));
    QLabel *result = makeLabel(step.result, "", widget());
    embolden(*result);
    result->setWordWrap(false);
    row->addLayout(how, 1);
    row->addWidget(result, 0, Qt::AlignRight | Qt::AlignBottom);
    m_below->addLayout(row);
}

void FigureCard::addWorking(const core::measure::Working &working)
{
    add(tr("Worked out"), "heading");
    for (const core::measure::WorkingStep &step : working.steps)
        addStep(step);
    for (const QString &note : working.notes)
        add(note, "quiet");
    if (!working.sources.isEmpty())
        add(tr("Sources: %1").arg(working.sources.join(u"; "_s)), "quiet");
}

void FigureCard::addWeightRecord(const core::JobFigure &figure)
{
    const auto swap = figure.kind == u"weight.recorded" ? core::swapIn(figure.body) : std::nullopt;
    const auto lines = swap ? core::measure::weightRecordEntry(*swap) : core::measure::Measured<QStringList>(QStringList());
    if (!lines || lines->isEmpty())
        return;
    add(tr("For the weight record"), "heading");
    add(lines->join(u'\n'), "")->setObjectName(u"weightRecord"_s);
}

void FigureCard::show(const core::JobFigure *figure)
{
    clearLayout(m_below);
    const auto lift = figure ? picture::liftOf(*figure) : std::nullopt;
    m_lift->show(lift);
    const core::Act *act = figure ? core::findAct(figure->kind) : nullptr;
    const QStringList cautions = act ? act->cautions() : QStringList();
    m_cautions->setText(cautionsText(cautions));
    m_cautions->setVisible(!cautions.isEmpty());
    for (QLabel *label : {m_title, m_about, m_answer, m_governs})
        label->setVisible(figure);
    verticalScrollBar()->setValue(0);
    if (!figure)
        return;
    const QString about = core::figureAbout(*figure);
    m_title->setText(act ? tr("%1: %2").arg(doneOf(*act), about) : about);
    m_about->setText(tr("%1. Reference: %2").arg(markInWords(figure->mark, *m_feed.state(), m_feed.reg()), figure->body.text(u"reference")));
    if (const QString remarks = figure->body.text(u"remarks"); !remarks.isEmpty())
        add(remarks, "");
    const auto working = core::workingOf(*m_feed.state(), m_feed.reg(), {figure->mark.by, figure->mark.at, figure->kind, std::nullopt, figure->body});
    m_answer->setText(working ? working->answer : QString());
    m_answer->setVisible(working.has_value());
    addWeightRecord(*figure);
    if (working)
        addWorking(*working);
}

} // namespace desktop
