// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/signings_layout.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QFontMetricsF>

#include <algorithm>

namespace picture {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Picture", text); }

struct Measures {
    explicit Measures(const QFont &font) : metrics(font), lane(metrics.height() * 2), foot(metrics.height() * 2.5), head(metrics.height() * 1.5) {}
    QFontMetricsF metrics;
    double lane;
    double foot;
    double head;
};

double nameWidth(const core::Signings &signings, const QFontMetricsF &metrics)
{
    double width = 0;
    for (const core::SigningLane &lane : signings.lanes)
        width = std::max(width, metrics.horizontalAdvance(lane.name));
    return width + metrics.averageCharWidth() * 2;
}

QString hourText(core::Instant at) { return QDateTime::fromMSecsSinceEpoch(at.milliseconds(), Qt::UTC).toString(QStringLiteral("d MMM HH:mm")); }

/// Sorts its marks by their entries, so that a walk by keyboard goes through the job as it was signed.
void sortMarks(SigningLayout &layout)
{
    std::sort(layout.marks.begin(), layout.marks.end(), [](const PlacedMark &a, const PlacedMark &b) { return a.seq < b.seq; });
}

} // namespace

double signingsHeight(const core::Signings &signings, const QFont &font)
{
    const Measures measures(font);
    return measures.head + measures.foot + measures.lane * static_cast<double>(std::max<std::size_t>(1, signings.lanes.size()));
}

SigningLayout laySignings(const core::Signings &signings, const QRectF &area, const QFont &font)
{
    const Measures measures(font);
    SigningLayout layout{measures.metrics.height() * 0.7, font, {}, {}, {}, {}, {}};
    if (signings.shifts.empty())
        return layout;
    const double names = nameWidth(signings, measures.metrics);
    layout.plot = QRectF(area.left() + names, area.top() + measures.head, std::max(1.0, area.width() - names - layout.markSize), measures.lane * static_cast<double>(signings.lanes.size()));
    const qint64 from = signings.shifts.front().from.milliseconds();
    const qint64 span = std::max<qint64>(1, signings.shifts.back().until.milliseconds() - from);
    const auto x = [&](core::Instant at) { return layout.plot.left() + layout.plot.width() * static_cast<double>(at.milliseconds() - from) / static_cast<double>(span); };
    double freeFrom = area.left();
    for (std::size_t shift = 0; shift < signings.shifts.size(); ++shift) {
        const double at = x(signings.shifts[shift].from);
        layout.shiftLines.push_back(at);
        const QString text = tr("Shift %1").arg(shift + 1);
        const double width = measures.metrics.horizontalAdvance(text);
        const double left = std::min(at, area.right() - width);
        if (left < freeFrom)
            continue; // two handovers close by: the lines stay
        layout.texts.push_back({QRectF(left, area.top(), width, measures.metrics.height()), text, true});
        freeFrom = left + width + measures.metrics.averageCharWidth();
    }
    for (std::size_t lane = 0; lane < signings.lanes.size(); ++lane) {
        const double y = layout.plot.top() + measures.lane * (static_cast<double>(lane) + 0.5);
        layout.laneLines.push_back(y);
        layout.texts.push_back({QRectF(area.left(), y - measures.metrics.height() / 2, names, measures.metrics.height()), signings.lanes[lane].name, false});
        for (const core::SigningMark &mark : signings.lanes[lane].marks)
            layout.marks.push_back({mark.seq, QPointF(x(mark.at), y), mark.as, mark.counts, mark.inBurst});
    }
    sortMarks(layout);
    const double below = layout.plot.bottom() + measures.metrics.height() * 0.6;
    const QString first = hourText(signings.shifts.front().from);
    const QString last = hourText(signings.shifts.back().until);
    layout.texts.push_back({QRectF(layout.plot.left(), below, measures.metrics.horizontalAdvance(first), measures.metrics.height()), first, true});
    const double width = measures.metrics.horizontalAdvance(last + tr(" UTC"));
    layout.texts.push_back({QRectF(area.right() - width, below, width, measures.metrics.height()), last + tr(" UTC"), true});
    return layout;
}

} // namespace picture
