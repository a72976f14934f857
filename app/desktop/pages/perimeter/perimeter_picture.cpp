// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/perimeter/perimeter_picture.hpp"

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

#include "app/desktop/parts/stage_glyph.hpp"

namespace desktop {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(PerimeterPicture)
};

/// Below it the shape of a coupling is a blot.
constexpr double leastShape = 6;

QString wordsOf(const picture::PerimeterItem &item) { return item.isMount ? Words::tr("%1, mount").arg(item.word) : item.word; }

/// What lies on top where many couplings come together in one dot: what is open, before what only waits for somebody.
int urgency(core::Stage stage)
{
    switch (stage) {
    case core::Stage::Inspected: return 0;
    case core::Stage::Connected: return 1;
    case core::Stage::Secured: return 2;
    case core::Stage::Reconnected: return 3;
    case core::Stage::Disconnected: return 4;
    }
    Q_UNREACHABLE();
}

int urgency(const picture::PerimeterItem &item) { return item.stage ? urgency(*item.stage) : urgency(core::Stage::Reconnected); }

class PerimeterPainter {
public:
    PerimeterPainter(QPainter &painter, const picture::Perimeter &perimeter, const picture::PerimeterLayout &layout, const PerimeterLook &look)
        : m_painter(painter), m_perimeter(perimeter), m_layout(layout), m_look(look), m_isLegible(isLegible(look.font, look.scale, look.leastLetters))
    {
        m_bold = look.font;
        m_bold.setBold(true);
    }

    void boundary()
    {
        m_painter.setPen(QPen(m_look.palette.color(QPalette::Mid), hair(1.5)));
        m_painter.setBrush(m_look.palette.color(QPalette::Base));
        m_painter.drawPolygon(m_layout.boundary);
        for (const picture::PlacedSide &side : m_layout.sides) {
            end(side.line.p1());
            end(side.line.p2());
        }
    }

    /// Names of zones are read from afar: they never get smaller than the window's own letters.
    void zoneNames()
    {
        const double grown = std::max(1.0, 1 / m_look.scale);
        const double in = 6 * (grown - 1); // couplings are never drawn smaller than a dot
        const QFontMetricsF metrics(m_bold);
        m_painter.setFont(m_bold);
        m_painter.setPen(quietColour(m_look.shade));
        for (const picture::PlacedSide &side : m_layout.sides) {
            const double length = side.line.length() / grown;
            if (side.name.isEmpty() || length < metrics.height())
                continue;
            const QString &name = m_perimeter[side.zone].name;
            const bool isFlat = side.edge == picture::Edge::Top || side.edge == picture::Edge::Bottom;
            const double most = isFlat ? length : m_layout.boundary.boundingRect().width() / grown / 3;
            const QString shown = metrics.elidedText(name, Qt::ElideRight, most);
            QRectF room(0, 0, metrics.horizontalAdvance(shown) + 1, metrics.height());
            m_painter.save();
            switch (side.edge) {
            case picture::Edge::Top:
                m_painter.translate(side.name.center().x(), side.name.top() + in);
                room.moveLeft(-room.width() / 2);
                break;
            case picture::Edge::Bottom:
                m_painter.translate(side.name.center().x(), side.name.bottom() - in);
                room.moveBottomLeft({-room.width() / 2, 0});
                break;
            case picture::Edge::Left:
                m_painter.translate(side.name.left() + in, side.name.center().y());
                room.moveTop(-room.height() / 2);
                break;
            case picture::Edge::Right:
                m_painter.translate(side.name.right() - in, side.name.center().y());
                room.moveTopRight({0, -room.height() / 2});
                break;
            }
            m_painter.scale(grown, grown);
            m_painter.drawText(room, static_cast<int>(Qt::AlignCenter | Qt::TextDontClip), shown);
            m_painter.restore();
        }
    }

    void coupling(std::size_t at, bool isChosen)
    {
        const picture::PlacedCoupling &placed = m_layout.couplings[at];
        const picture::PerimeterItem &item = m_perimeter[placed.zone].items[placed.item];
        if (m_isLegible) {
            m_painter.setPen(QPen(isChosen ? m_look.palette.color(QPalette::Highlight) : item.isLoose ? quietColour(m_look.shade) : m_look.palette.color(QPalette::Mid), hair(isChosen ? 2 : item.isLoose ? 1 : 0.6)));
            m_painter.drawLine(placed.leader);
        }
        if (isChosen)
            frame(placed);
        if (placed.glyph.width() * m_look.scale < leastShape)
            dot(placed, item);
        else if (item.isTemporary())
            paintAppliedMark(m_painter, placed.glyph, colourOf(item));
        else
            glyph(placed, item);
        if (m_isLegible)
            label(placed, item, isChosen);
    }

private:
    /// A line never gets thinner than a pixel or so, however small the drawing.
    double hair(double width) const { return std::max(width, width / m_look.scale); }

    QColor colourOf(const picture::PerimeterItem &item) const
    {
        if (!item.isLoose)
            return quietColour(m_look.shade);
        return item.stage ? stageColour(*item.stage, m_look.shade) : cautionColour(m_look.shade);
    }

    /// Where a zone ends: a short stroke across the corner.
    void end(const QPointF &corner)
    {
        const double half = hair(3);
        m_painter.fillRect(QRectF(corner.x() - half, corner.y() - half, 2 * half, 2 * half), m_look.palette.color(QPalette::Mid));
    }

    void dot(const picture::PlacedCoupling &placed, const picture::PerimeterItem &item)
    {
        const double least = urgency(item) > urgency(core::Stage::Connected) ? 5 : item.isLoose ? 3 : 2;
        const double side = std::max(placed.glyph.width(), least / m_look.scale);
        const QPointF centre = placed.glyph.center();
        m_painter.fillRect(QRectF(centre.x() - side / 2, centre.y() - side / 2, side, side), colourOf(item));
    }

    void glyph(const picture::PlacedCoupling &placed, const picture::PerimeterItem &item)
    {
        const QPointF centre = placed.glyph.center();
        const double side = placed.glyph.width();
        const bool isFlat = placed.edge == picture::Edge::Top || placed.edge == picture::Edge::Bottom;
        m_painter.save();
        m_painter.translate(centre);
        // The glyph lies; at the top and the bottom it stands.
        m_painter.rotate(isFlat ? 90 : 0);
        const QRectF square(-side / 2, -side / 2, side, side);
        m_painter.fillRect(square.adjusted(side * 0.06, side * 0.12, -side * 0.06, -side * 0.12), m_look.palette.color(QPalette::Base));
        paintStageGlyph(m_painter, square, *item.stage, colourOf(item));
        m_painter.restore();
        if (item.isMount)
            foot(placed, colourOf(item));
    }

    /// On the unit's side, its point at the coupling.
    void foot(const picture::PlacedCoupling &placed, const QColor &colour)
    {
        const double side = placed.glyph.width();
        // In the order of the edges: top, right, bottom, left.
        static constexpr double turns[] = {0, 90, 180, 270};
        m_painter.save();
        m_painter.translate(placed.glyph.center());
        m_painter.rotate(turns[static_cast<std::size_t>(placed.edge)]);
        paintMountMark(m_painter, QRectF(-side / 2, side / 2, side, side / 2), colour);
        m_painter.restore();
    }

    void frame(const picture::PlacedCoupling &placed)
    {
        const double side = std::max(placed.glyph.width() * 1.25, 14 / m_look.scale);
        const QPointF centre = placed.glyph.center();
        m_painter.setPen(QPen(m_look.palette.color(QPalette::Highlight), hair(2.5)));
        m_painter.setBrush(m_look.palette.color(QPalette::Base));
        m_painter.drawRect(QRectF(centre.x() - side / 2, centre.y() - side / 2, side, side));
    }

    void label(const picture::PlacedCoupling &placed, const picture::PerimeterItem &item, bool isChosen)
    {
        if (isChosen)
            m_painter.fillRect(placed.label, m_look.palette.color(QPalette::Highlight));
        const QColor onMark = m_look.palette.color(QPalette::HighlightedText);
        const QColor ink = isChosen ? onMark : item.isLoose ? m_look.palette.color(QPalette::WindowText) : quietColour(m_look.shade);
        const double gap = QFontMetricsF(m_look.font).averageCharWidth();
        QRectF room = placed.label.adjusted(gap / 2, 0, -gap / 2, 0);
        const auto write = [&](const QString &text, const QFont &font, const QColor &colour) {
            const QFontMetricsF metrics(font);
            if (room.width() < metrics.averageCharWidth() * 2)
                return;
            const QString shown = metrics.elidedText(text, Qt::ElideRight, room.width());
            m_painter.setFont(font);
            m_painter.setPen(colour);
            m_painter.drawText(room, static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip), shown);
            room.setLeft(room.left() + metrics.horizontalAdvance(shown) + gap);
        };
        if (placed.edge == picture::Edge::Left)
            room.setLeft(std::max(room.left(), room.right() - widthOf(item, gap)));
        write(item.id, item.isLoose ? m_bold : m_look.font, ink);
        if (m_look.detail != Detail::Numbers)
            write(wordsOf(item), m_look.font, isChosen ? onMark : colourOf(item));
        if (m_look.detail == Detail::Names)
            write(item.name, m_look.font, ink);
    }

    /// Left of the boundary the words end at their leader, so that it is told where they begin.
    double widthOf(const picture::PerimeterItem &item, double gap) const
    {
        const QFontMetricsF plain(m_look.font);
        double width = QFontMetricsF(item.isLoose ? m_bold : m_look.font).horizontalAdvance(item.id) + 1;
        width += m_look.detail == Detail::Numbers ? 0 : gap + plain.horizontalAdvance(wordsOf(item));
        return width + (m_look.detail == Detail::Names ? gap + plain.horizontalAdvance(item.name) : 0);
    }

    QPainter &m_painter;
    const picture::Perimeter &m_perimeter;
    const picture::PerimeterLayout &m_layout;
    const PerimeterLook &m_look;
    bool m_isLegible;
    QFont m_bold;
};

} // namespace

picture::PerimeterMeasure perimeterMeasure(const picture::Perimeter &perimeter, const QFont &font, Detail detail, double aspect)
{
    QFont bold = font;
    bold.setBold(true);
    const QFontMetricsF metrics(font);
    qsizetype longest = 2;
    for (const picture::PerimeterZone &zone : perimeter) {
        for (const picture::PerimeterItem &item : zone.items)
            longest = std::max(longest, item.id.size());
    }
    const double number = QFontMetricsF(bold).averageCharWidth() * 1.3 * static_cast<double>(std::min<qsizetype>(longest, 14) + 1);
    const double more = detail == Detail::Numbers ? 0 : detail == Detail::Stages ? 15 : 32;
    return {{number + metrics.averageCharWidth() * more, metrics.height() * 1.1}, metrics.height() * 1.2, aspect};
}

bool isLegible(const QFont &font, double scale, double least) { return QFontInfo(font).pixelSize() * scale >= least; }

void paintMountMark(QPainter &painter, const QRectF &area, const QColor &colour)
{
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawPolygon(QPolygonF({QPointF(area.center().x(), area.top()), area.bottomRight(), area.bottomLeft()}));
}

void paintAppliedMark(QPainter &painter, const QRectF &area, const QColor &colour)
{
    const double in = area.width() * 0.14;
    painter.setPen(QPen(colour, area.width() * 0.09, Qt::DashLine));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(area.adjusted(in, in, -in, -in));
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    painter.drawEllipse(area.center(), area.width() * 0.14, area.width() * 0.14);
}

QString inWords(const picture::PerimeterItem &item) { return Words::tr("%1 %2: %3").arg(item.id, wordsOf(item), item.name); }

void paintPerimeter(QPainter &painter, const picture::Perimeter &perimeter, const picture::PerimeterLayout &layout, const PerimeterLook &look, const QRectF &visible, const std::vector<std::size_t> &chosen)
{
    painter.setRenderHint(QPainter::Antialiasing);
    PerimeterPainter drawing(painter, perimeter, layout, look);
    drawing.boundary();
    drawing.zoneNames();
    std::vector<bool> isChosen(layout.couplings.size(), false);
    for (const std::size_t i : chosen)
        isChosen[i] = true;
    const auto isSeen = [&](std::size_t i) {
        const picture::PlacedCoupling &placed = layout.couplings[i];
        const QRectF leader = QRectF(placed.leader.p1(), placed.leader.p2()).normalized().adjusted(-1, -1, 1, 1);
        return placed.label.intersects(visible) || placed.glyph.intersects(visible) || leader.intersects(visible);
    };
    std::vector<std::size_t> heavy;
    for (std::size_t i = 0; i < layout.couplings.size(); ++i) {
        const picture::PlacedCoupling &placed = layout.couplings[i];
        if (isChosen[i] || !isSeen(i))
            continue;
        if (perimeter[placed.zone].items[placed.item].isLoose)
            heavy.push_back(i);
        else
            drawing.coupling(i, false);
    }
    const auto itemAt = [&](std::size_t i) -> const picture::PerimeterItem & { return perimeter[layout.couplings[i].zone].items[layout.couplings[i].item]; };
    std::stable_sort(heavy.begin(), heavy.end(), [&](std::size_t a, std::size_t b) { return urgency(itemAt(a)) < urgency(itemAt(b)); });
    // Where all is small, what is loose lies on what is not, and what is chosen on both.
    for (const std::size_t i : heavy)
        drawing.coupling(i, false);
    for (const std::size_t i : chosen) {
        if (isSeen(i))
            drawing.coupling(i, true);
    }
}

} // namespace desktop
