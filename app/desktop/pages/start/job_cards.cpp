// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/start/job_cards.hpp"

#include <QCoreApplication>
#include <QPainter>

#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/reports/left_in_words.hpp"

namespace desktop {

namespace {

struct JobCards {
    Q_DECLARE_TR_FUNCTIONS(JobCards)
};

QString cell(const QModelIndex &index, int at) { return index.data(RowModel::CellsRole).toStringList().value(at); }

QFont scaled(QFont font, double factor, QFont::Weight weight)
{
    font.setPointSizeF(font.pointSizeF() * factor);
    font.setWeight(weight);
    return font;
}

void paintStages(QPainter &painter, const QStyleOptionViewItem &option, const QModelIndex &index, QPoint at)
{
    const int side = option.fontMetrics.height() * 5 / 4;
    const int gap = option.fontMetrics.averageCharWidth();
    for (int stage = 0; stage < 5; ++stage) {
        const QString count = cell(index, JobCardDelegate::FirstStage + stage);
        if (count == u"0")
            continue;
        const auto which = static_cast<core::Stage>(stage);
        const QColor colour = stageColour(which, shadeAround(option.widget));
        const QString text = JobCards::tr("%1 %2").arg(count, core::stageWord(which).toLower());
        paintStageGlyph(painter, QRectF(at.x(), at.y(), side, side), which, colour);
        painter.setPen(colour);
        painter.drawText(QRect(at.x() + side + gap / 2, at.y(), option.rect.width(), side), Qt::AlignVCenter | Qt::AlignLeft, text);
        at.rx() += side + gap * 3 + option.fontMetrics.horizontalAdvance(text);
    }
}

} // namespace

std::vector<Row> jobCards(const std::vector<session::JobRow> &jobs)
{
    std::vector<Row> open, closed;
    for (const session::JobRow &job : jobs) {
        const core::JobSummary &summary = job.summary;
        QStringList cells{summary.title, JobCards::tr("%1 · %2 · %3 · last entry %4").arg(summary.workOrder, summary.aircraft, summary.unit, momentInWords(core::Instant::fromMilliseconds(summary.lastAtMilliseconds))),
                          summary.isClosed ? JobCards::tr("closed") : JobCards::tr("open"), QString::number(summary.looseEnds)};
        QStringList said{summary.title, summary.isClosed ? JobCards::tr("closed") : core::looseEndsInWords(summary.looseEnds)};
        for (std::size_t stage = 0; stage < summary.byStage.size(); ++stage) {
            const QString count = QString::number(summary.byStage[stage]);
            cells << count;
            if (summary.byStage[stage] > 0)
                said << JobCards::tr("%1 %2").arg(count, core::stageWord(static_cast<core::Stage>(stage)).toLower());
        }
        Row row{job.ledger.text(), cells};
        row.said = (said << cells[JobCardDelegate::Facts]).join(QStringLiteral(", "));
        (summary.isClosed ? closed : open).push_back(std::move(row));
    }
    open.insert(open.end(), closed.begin(), closed.end());
    return open;
}

void JobCardDelegate::paint(QPainter *painter, const QStyleOptionViewItem &option, const QModelIndex &index) const
{
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    const int gap = option.fontMetrics.height();
    const bool isChosen = option.state & QStyle::State_Selected;
    const QRectF card = QRectF(option.rect).adjusted(1, 1, -1, -gap / 2.0);
    const QPalette palette = paletteFor(shadeAround(option.widget));
    painter->setBrush(palette.base());
    painter->setPen(QPen(palette.color(isChosen ? QPalette::Highlight : QPalette::Mid), isChosen ? 2.5 : 1));
    painter->drawRoundedRect(card, gap / 4.0, gap / 4.0);

    const QRect inner = card.toRect().adjusted(gap, gap / 2, -gap, -gap / 2);
    const int countWidth = option.fontMetrics.averageCharWidth() * 16;
    QRect words = inner.adjusted(0, 0, -countWidth, 0);
    painter->setPen(palette.color(QPalette::Text));
    painter->setFont(scaled(option.font, 1.3, QFont::DemiBold));
    const int titleHeight = painter->fontMetrics().height();
    painter->drawText(words, Qt::AlignLeft | Qt::AlignTop, painter->fontMetrics().elidedText(cell(index, Title), Qt::ElideRight, words.width()));
    painter->setFont(option.font);
    painter->setPen(quietColour(shadeAround(option.widget)));
    words.setTop(words.top() + titleHeight);
    painter->drawText(words, Qt::AlignLeft | Qt::AlignTop, option.fontMetrics.elidedText(cell(index, Facts), Qt::ElideRight, words.width()));
    paintStages(*painter, option, index, {inner.left(), words.top() + option.fontMetrics.height() + gap / 3});

    const QRect count(inner.right() - countWidth, inner.top(), countWidth, inner.height());
    const bool isClosed = cell(index, State) == JobCards::tr("closed");
    const bool isLoose = !isClosed && cell(index, LooseEnds) != u"0";
    painter->setPen(isLoose ? alarmColour(shadeAround(option.widget)) : stageColour(core::Stage::Inspected, shadeAround(option.widget)));
    painter->setFont(scaled(option.font, isClosed ? 1.3 : 2.0, QFont::DemiBold));
    const int figure = painter->fontMetrics().height();
    painter->drawText(count, Qt::AlignRight | Qt::AlignTop, isClosed ? JobCards::tr("Closed") : cell(index, LooseEnds));
    painter->setFont(option.font);
    if (!isClosed)
        painter->drawText(count.adjusted(0, figure, 0, 0), Qt::AlignRight | Qt::AlignTop, cell(index, LooseEnds) == u"1" ? JobCards::tr("loose end") : JobCards::tr("loose ends"));
    painter->restore();
}

QSize JobCardDelegate::sizeHint(const QStyleOptionViewItem &option, const QModelIndex &) const
{
    return {option.fontMetrics.averageCharWidth() * 60, option.fontMetrics.height() * 6};
}

} // namespace desktop
