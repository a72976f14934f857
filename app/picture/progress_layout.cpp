// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/progress_layout.hpp"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace picture {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("ProgressPicture", text); }

constexpr qint64 minute = 60 * 1000;
constexpr qint64 hour = 60 * minute;

qint64 mostUndone(const core::ProgressLine &line)
{
    return std::max_element(line.steps.begin(), line.steps.end(), [](const core::ProgressStep &a, const core::ProgressStep &b) { return a.undone < b.undone; })->undone;
}

QString hoursText(qint64 milliseconds)
{
    return milliseconds % hour == 0 ? tr("%1 h").arg(milliseconds / hour) : tr("%1 min").arg(milliseconds / minute);
}

/// From counts and moments to places.
struct Scale {
    QRectF plot;
    core::Instant from;
    qint64 lasting; ///< milliseconds, at least 1
    qint64 top;     ///< count at the upper edge, at least 1
    double x(qint64 since) const { return plot.left() + plot.width() * static_cast<double>(since) / static_cast<double>(lasting); }
    double y(qint64 undone) const { return plot.bottom() - plot.height() * static_cast<double>(undone) / static_cast<double>(top); }
};

QPolygonF pathOf(const core::ProgressLine &line, const Scale &scale)
{
    QPolygonF path;
    for (const core::ProgressStep &step : line.steps) {
        const double x = scale.x(step.at.milliseconds() - scale.from.milliseconds());
        if (!path.isEmpty())
            path << QPointF(x, path.last().y());
        path << QPointF(x, scale.y(step.undone));
    }
    return path << QPointF(scale.plot.right(), path.last().y());
}

void addAxes(ProgressLayout &layout, const Scale &scale, const QFontMetricsF &metrics)
{
    const double high = metrics.height();
    const qint64 byCount = countStep(scale.top, std::max(2, static_cast<int>(scale.plot.height() / (2 * high))));
    for (qint64 count = 0; count <= scale.top; count += byCount) {
        layout.grid.emplace_back(scale.plot.left(), scale.y(count), scale.plot.right(), scale.y(count));
        layout.texts.push_back({QRectF(scale.plot.left() - 4 * high, scale.y(count) - high / 2, 3.6 * high, high), QString::number(count), Qt::AlignRight | Qt::AlignVCenter});
    }
    const qint64 byTime = hourStep(scale.lasting, std::max(2, static_cast<int>(scale.plot.width() / (5 * high))));
    for (qint64 since = 0; since <= scale.lasting; since += byTime) {
        layout.grid.emplace_back(scale.x(since), scale.plot.bottom(), scale.x(since), scale.plot.bottom() + high * 0.3);
        layout.texts.push_back({QRectF(scale.x(since) - 3 * high, scale.plot.bottom() + high * 0.4, 6 * high, high), hoursText(since), Qt::AlignHCenter | Qt::AlignVCenter});
    }
    layout.texts.push_back({QRectF(scale.plot.left(), scale.plot.top() - 1.8 * high, scale.plot.width(), high), tr("Interfaces undone and not inspected"), Qt::AlignLeft | Qt::AlignVCenter});
    layout.texts.push_back({QRectF(scale.plot.left(), scale.plot.bottom() + 1.7 * high, scale.plot.width(), high), tr("Hours since the first entry, %1").arg(scale.from.spoken()), Qt::AlignLeft | Qt::AlignVCenter});
}

} // namespace

qint64 countStep(qint64 last, int most)
{
    for (qint64 power = 1;; power *= 10) {
        for (const qint64 times : {1, 2, 5}) {
            if (last <= times * power * most)
                return times * power;
        }
    }
}

qint64 hourStep(qint64 milliseconds, int most)
{
    for (const qint64 step : {15 * minute, 30 * minute, hour, 2 * hour, 3 * hour, 6 * hour, 12 * hour}) {
        if (milliseconds <= step * most)
            return step;
    }
    const qint64 day = 24 * hour;
    return day * countStep((milliseconds + day - 1) / day, most);
}

ProgressLayout layProgress(const core::Progress &progress, const core::ProgressLine *beside, const QRectF &area, const QFont &font)
{
    const QFontMetricsF metrics(font);
    const double high = metrics.height();
    ProgressLayout layout;
    layout.font = font;
    const core::ProgressLine *lines[] = {&progress.total, beside};
    QString names[] = {tr("whole job"), beside ? beside->name : QString()};
    double widest = 0;
    for (QString &name : names) {
        name = metrics.elidedText(name, Qt::ElideRight, area.width() / 5);
        widest = std::max(widest, metrics.horizontalAdvance(name));
    }
    widest += metrics.horizontalAdvance(u"  999"_s);
    layout.plot = area.adjusted(4 * high, 2.2 * high, -widest - high, -3 * high);
    const Scale scale{layout.plot, progress.from, std::max(progress.until.milliseconds() - progress.from.milliseconds(), qint64{1}), std::max(mostUndone(progress.total), qint64{1})};
    addAxes(layout, scale, metrics);
    double above = 0;
    for (std::size_t i = 0; i < 2; ++i) {
        if (!lines[i])
            continue;
        const QPolygonF path = pathOf(*lines[i], scale);
        // The chosen line ends at or below the whole; where both end alike, its name stands one line lower.
        double y = path.last().y() - high / 2;
        if (i > 0)
            y = std::max(y, above + high);
        above = y;
        layout.lines.push_back({path, i == 0, {QRectF(layout.plot.right() + high * 0.4, y, widest, high), tr("%1 %2").arg(lines[i]->steps.back().undone).arg(names[i]), Qt::AlignLeft | Qt::AlignVCenter}});
    }
    return layout;
}

} // namespace picture
