// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/lift_layout.hpp"

#include <QCoreApplication>
#include <QFontInfo>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace picture {

namespace {

using namespace Qt::StringLiterals;
using core::Rational;
using core::measure::LiftCheck;

constexpr double steepestWithoutBeam = 75;
constexpr double radian = 0.017453292519943295;
constexpr int mostLegsDrawn = 4;

QString tr(const char *text) { return QCoreApplication::translate("LiftPicture", text); }

Strain strainOf(const Rational &margin)
{
    if (margin < 0)
        return Strain::Over;
    return margin < core::measure::leastMarginPercent ? Strain::Little : Strain::Fine;
}

QString ofLimit(const Rational &load, const core::Quantity &limit)
{
    return tr(QT_TRANSLATE_NOOP("LiftPicture", "%1 of %2")).arg(core::measure::loadText(load, limit), limit.text());
}

QString marginLine(const Rational &margin)
{
    if (margin < 0)
        return tr(QT_TRANSLATE_NOOP("LiftPicture", "%1 over")).arg(core::measure::marginText(-margin));
    return tr(QT_TRANSLATE_NOOP("LiftPicture", "margin %1")).arg(core::measure::marginText(margin));
}

enum class Weight { Normal, Bold };

/// A line of a block, before it has a place.
struct Line {
    QString text;
    Weight weight = Weight::Normal;
    Tone tone = Tone::Plain;
    Strain strain = Strain::Fine; ///< with a mark before it where it is not Fine
};

using Lines = std::vector<Line>;

void addStrain(Lines &lines, const Rational &margin)
{
    const Strain strain = strainOf(margin);
    const Tone tone = strain == Strain::Over ? Tone::Alarm : strain == Strain::Little ? Tone::Caution : Tone::Plain;
    lines.push_back({marginLine(margin), Weight::Normal, tone});
    if (strain == Strain::Over)
        lines.push_back({tr(QT_TRANSLATE_NOOP("LiftPicture", "over its limit")), Weight::Bold, tone, strain});
    if (strain == Strain::Little)
        lines.push_back({tr(QT_TRANSLATE_NOOP("LiftPicture", "little margin")), Weight::Bold, tone, strain});
}

Lines hoistLines(const Lift &lift, const LiftCheck &check)
{
    Lines lines{{tr(QT_TRANSLATE_NOOP("LiftPicture", "Hoist %1")).arg(lift.hoist), Weight::Bold}};
    if (!check.hoist)
        return lines;
    lines.push_back({ofLimit(check.hoist->load, lift.plan.hoistLimit)});
    addStrain(lines, check.hoist->margin);
    return lines;
}

QString slopeText(const core::measure::LegSlope &slope)
{
    if (const auto *leg = std::get_if<core::measure::LegLengths>(&slope))
        return tr(QT_TRANSLATE_NOOP("LiftPicture", "leg %1, %2 high")).arg(leg->length.text(), leg->height.text());
    return tr(QT_TRANSLATE_NOOP("LiftPicture", "%1° from level")).arg(std::get<core::measure::AngleFromHorizontal>(slope).degrees.text());
}

QString legsText(const core::measure::LiftPlan &plan)
{
    if (plan.legsPerPoint == 1)
        return tr(QT_TRANSLATE_NOOP("LiftPicture", "1 leg a point"));
    const QString legs = QString::number(plan.legsPerPoint);
    const qint64 carrying = core::measure::carryingLegs(plan);
    if (carrying == plan.legsPerPoint)
        return tr(QT_TRANSLATE_NOOP("LiftPicture", "%1 legs a point")).arg(legs);
    return tr(QT_TRANSLATE_NOOP("LiftPicture", "%1 legs a point, %2 carrying")).arg(legs, QString::number(carrying));
}

Lines riggingLines(const Lift &lift)
{
    return {{tr(QT_TRANSLATE_NOOP("LiftPicture", "Sling %1")).arg(lift.sling), Weight::Bold},
            {legsText(lift.plan)},
            {slopeText(lift.plan.slope)},
            {tr(QT_TRANSLATE_NOOP("LiftPicture", "rigging %1")).arg(lift.plan.riggingWeight.text())}};
}

Lines pointLines(const Lift &lift, const LiftCheck &check, std::size_t index)
{
    const char *const name = !lift.plan.points ? QT_TRANSLATE_NOOP("LiftPicture", "Lifting point") : index == 0 ? QT_TRANSLATE_NOOP("LiftPicture", "Left point") : QT_TRANSLATE_NOOP("LiftPicture", "Right point");
    Lines lines{{tr(name), Weight::Bold}};
    if (index >= check.points.size())
        return lines;
    const core::measure::PointLoad &point = check.points[index];
    const char *const leg = core::measure::carryingLegs(lift.plan) == 1 ? QT_TRANSLATE_NOOP("LiftPicture", "leg %1") : QT_TRANSLATE_NOOP("LiftPicture", "each leg %1");
    lines.push_back({tr(QT_TRANSLATE_NOOP("LiftPicture", "carries %1")).arg(core::measure::loadText(point.share, lift.plan.unitWeight))});
    lines.push_back({tr(leg).arg(core::measure::loadText(point.legTension, lift.plan.slingLimit))});
    lines.push_back({tr(QT_TRANSLATE_NOOP("LiftPicture", "limit %1")).arg(lift.plan.slingLimit.text()), Weight::Normal, Tone::Quiet});
    addStrain(lines, point.margin);
    return lines;
}

/// Where the centre of gravity lies, as a part of the span from the left; inside it, whatever was entered.
double partFromLeft(const core::measure::TwoPoints &points)
{
    const double span = points.span.coherent().approximate();
    return span > 0 ? std::clamp(points.centreFromLeft.coherent().approximate() / span, 0.0, 1.0) : 0.5;
}

/// All words and shapes of one picture at one size of text.
class Drawing {
public:
    Drawing(const Lift &lift, const LiftCheck &check, const QRectF &area, const QFont &font, int pixels);
    /// Whether every text found room, and the drawing is large enough to be read.
    bool fits() const { return m_fits; }
    LiftLayout take() { return std::move(m_made); }

private:
    void layWords();
    void layShapes(const QRectF &room);
    void layTwo(const QRectF &room, double unitTop, double highest);
    void layBeam(const QRectF &room, double unitTop, double highest);
    void layOne(const QRectF &room, double unitTop, double highest);
    void layDistances(double y);
    void layStrains();
    void addLegs(const QPointF &from, const QPointF &to, std::size_t point);

    const QFont &fontOf(Weight weight) const { return weight == Weight::Bold ? m_bold : m_normal; }
    double widthOf(const Line &line) const;
    double widthOf(const Lines &lines) const;
    double heightOf(const Lines &lines) const { return static_cast<double>(lines.size()) * m_line; }
    void place(const Line &line, double x, double y, double room);
    /// The block with its middle, left or right edge as near to `x` as its room allows.
    void placeBlock(const Lines &lines, const QRectF &room, double x, Qt::AlignmentFlag edge);
    double degrees() const;
    Strain strainAt(std::size_t point) const { return point < m_check.points.size() ? strainOf(m_check.points[point].margin) : Strain::Fine; }

    const Lift &m_lift;
    const LiftCheck &m_check;
    QRectF m_area;
    QFont m_normal;
    QFont m_bold;
    double m_em;
    double m_line; ///< height of a line of text
    bool m_fits = true;
    LiftLayout m_made;
};

Drawing::Drawing(const Lift &lift, const LiftCheck &check, const QRectF &area, const QFont &font, int pixels)
    : m_lift(lift), m_check(check), m_normal(font), m_bold(font), m_em(pixels)
{
    m_normal.setPixelSize(pixels);
    m_bold.setPixelSize(pixels);
    m_bold.setBold(true);
    m_line = std::max(QFontMetricsF(m_normal).height(), QFontMetricsF(m_bold).height());
    m_made.em = m_em;
    // A picture as wide as a wall is no easier to read.
    const double pad = 0.6 * m_em;
    const QSizeF size(std::min(area.width() - 2 * pad, 64 * m_em), std::min(area.height() - 2 * pad, 48 * m_em));
    m_area = QRectF(area.center().x() - size.width() / 2, area.center().y() - size.height() / 2, size.width(), size.height());
    layWords();
}

double Drawing::widthOf(const Line &line) const
{
    const double sign = line.strain == Strain::Fine ? 0 : 1.3 * m_em;
    return sign + QFontMetricsF(fontOf(line.weight)).horizontalAdvance(line.text);
}

double Drawing::widthOf(const Lines &lines) const
{
    double width = 0;
    for (const Line &line : lines)
        width = std::max(width, widthOf(line));
    return width;
}

void Drawing::place(const Line &line, double x, double y, double room)
{
    const QFontMetricsF metrics(fontOf(line.weight));
    double left = x;
    if (line.strain != Strain::Fine) {
        m_made.marks.push_back({QRectF(left, y + (m_line - m_em) / 2, m_em, m_em), line.strain});
        left += 1.3 * m_em;
    }
    const QString text = metrics.horizontalAdvance(line.text) <= room - (left - x) + 0.01 ? line.text : metrics.elidedText(line.text, Qt::ElideRight, room - (left - x));
    m_made.texts.push_back({QRectF(left, y, metrics.horizontalAdvance(text), m_line), text, fontOf(line.weight), line.tone});
}

void Drawing::placeBlock(const Lines &lines, const QRectF &room, double x, Qt::AlignmentFlag edge)
{
    const double width = std::min(widthOf(lines), room.width());
    const double wanted = edge == Qt::AlignRight ? x - width : edge == Qt::AlignLeft ? x : x - width / 2;
    const double left = std::clamp(wanted, room.left(), std::max(room.left(), room.right() - width));
    double y = room.top();
    for (const Line &line : lines) {
        // A name in bold may be of any length; it alone may be cut.
        const bool isName = line.weight == Weight::Bold && line.strain == Strain::Fine;
        m_fits = m_fits && (isName || widthOf(line) <= room.width() + 0.01);
        place(line, left, y, room.width());
        y += m_line;
    }
}

double Drawing::degrees() const
{
    if (const auto *leg = std::get_if<core::measure::LegLengths>(&m_lift.plan.slope)) {
        const double sine = leg->height.coherent().approximate() / std::max(leg->length.coherent().approximate(), 1e-9);
        return std::clamp(std::asin(std::clamp(sine, 0.0, 1.0)) / radian, 5.0, 90.0);
    }
    return std::clamp(std::get<core::measure::AngleFromHorizontal>(m_lift.plan.slope).degrees.approximate(), 5.0, 90.0);
}

void Drawing::layWords()
{
    const double gap = 0.6 * m_em;
    const double middle = m_area.center().x();
    const double aside = 1.5 * m_em + gap; // from the middle, past the hoist
    double top = m_area.top();
    double bottom = m_area.bottom();

    if (!m_check.isAllowed()) {
        const Line no{tr(QT_TRANSLATE_NOOP("LiftPicture", "Do not lift")), Weight::Bold, Tone::Alarm, Strain::Over};
        placeBlock({no}, QRectF(m_area.left(), top, m_area.width(), m_line), middle, Qt::AlignHCenter);
        top += m_line + gap;
    }
    const Lines hoist = hoistLines(m_lift, m_check);
    const Lines rigging = riggingLines(m_lift);
    const double band = std::max(heightOf(hoist), heightOf(rigging));
    placeBlock(hoist, QRectF(m_area.left(), top, middle - aside - m_area.left(), band), middle - aside, Qt::AlignRight);
    placeBlock(rigging, QRectF(middle + aside, top, m_area.right() - middle - aside, band), middle + aside, Qt::AlignLeft);
    m_made.hoist = QRectF(middle - 1.5 * m_em, top, 3 * m_em, 1.7 * m_em);
    top += band;

    std::vector<Lines> blocks;
    for (std::size_t i = 0; i < (m_lift.plan.points ? 2U : 1U); ++i)
        blocks.push_back(pointLines(m_lift, m_check, i));
    double blockHeight = 0;
    for (const Lines &block : blocks)
        blockHeight = std::max(blockHeight, heightOf(block));
    const double blockTop = bottom - blockHeight;
    bottom = blockTop - gap / 2;

    const double distancesTop = m_lift.plan.points ? bottom - 2 * m_line - 0.9 * m_em : bottom;
    const double unitTop = distancesTop - m_line;
    const Line unit{tr(QT_TRANSLATE_NOOP("LiftPicture", "%1, %2")).arg(m_lift.unit, m_lift.plan.unitWeight.text()), Weight::Bold};

    const QRectF room(m_area.left(), top, m_area.width(), unitTop - 0.3 * m_em - top);
    m_fits = m_fits && room.height() >= 5.6 * m_em;
    layShapes(room);

    placeBlock({unit}, QRectF(m_area.left(), unitTop, m_area.width(), m_line), m_made.unit.center().x(), Qt::AlignHCenter);
    if (m_lift.plan.points) {
        layDistances(distancesTop);
        placeBlock(blocks[0], QRectF(m_area.left(), blockTop, middle - gap - m_area.left(), blockHeight), m_made.points[0].x(), Qt::AlignHCenter);
        placeBlock(blocks[1], QRectF(middle + gap, blockTop, m_area.right() - middle - gap, blockHeight), m_made.points[1].x(), Qt::AlignHCenter);
    } else {
        placeBlock(blocks[0], QRectF(m_area.left(), blockTop, m_area.width(), blockHeight), m_made.points[0].x(), Qt::AlignHCenter);
    }
    layStrains();
}

void Drawing::layShapes(const QRectF &room)
{
    const double unitHeight = std::clamp(0.32 * room.height(), 2 * m_em, 10 * m_em);
    const double unitTop = room.bottom() - unitHeight;
    const double highest = std::max(unitTop - room.top() - 1.2 * m_em, m_em);
    if (!m_lift.plan.points)
        layOne(room, unitTop, highest);
    else if (degrees() > steepestWithoutBeam)
        layBeam(room, unitTop, highest);
    else
        layTwo(room, unitTop, highest);
    const double overhang = 1.4 * m_em;
    double left = m_made.points.front().x();
    double right = m_made.points.back().x();
    for (const Leg &leg : m_made.legs) {
        left = std::min(left, leg.line.x2());
        right = std::max(right, leg.line.x2());
    }
    const double lacking = std::max(0.0, 7 * m_em - (right - left)) / 2;
    m_made.unit = QRectF(QPointF(left - std::max(overhang, lacking), unitTop), QPointF(right + std::max(overhang, lacking), room.bottom()));
    const double centreX = m_lift.plan.points ? room.center().x() : m_made.points.front().x();
    m_made.centre = QPointF(centreX, unitTop + unitHeight / 2);
    m_made.rope = QLineF(QPointF(room.center().x(), m_made.hoist.bottom()), m_made.hook);
}

void Drawing::addLegs(const QPointF &from, const QPointF &to, std::size_t point)
{
    const auto count = static_cast<int>(std::clamp<qint64>(m_lift.plan.legsPerPoint, 1, mostLegsDrawn));
    const QLineF middle(from, to);
    const QPointF across = middle.length() > 0 ? QPointF(-middle.dy(), middle.dx()) / middle.length() * 0.32 * m_em : QPointF();
    for (int i = 0; i < count; ++i)
        m_made.legs.push_back({middle.translated(across * (i - (count - 1) / 2.0)), strainAt(point)});
}

void Drawing::layTwo(const QRectF &room, double unitTop, double highest)
{
    const double slope = std::tan(degrees() * radian);
    const double part = partFromLeft(*m_lift.plan.points);
    const double longer = std::max(part, 1 - part);
    const double reach = std::min(room.width() / 2 - 1.6 * m_em, highest / slope);
    const double span = reach / longer;
    const double middle = room.center().x();
    m_made.hook = QPointF(middle, unitTop - reach * slope);
    m_made.points = {QPointF(middle - part * span, unitTop), QPointF(middle + (1 - part) * span, unitTop)};
    for (std::size_t i = 0; i < 2; ++i)
        addLegs(m_made.hook, m_made.points[i], i);
    const bool isLeftFlatter = part > 0.5;
    m_made.arc = AngleArc{m_made.points[isLeftFlatter ? 0 : 1], 1.8 * m_em, isLeftFlatter ? 0 : 180 - degrees(), degrees()};
}

void Drawing::layBeam(const QRectF &room, double unitTop, double highest)
{
    const double part = partFromLeft(*m_lift.plan.points);
    const double longer = std::max(part, 1 - part);
    const double drop = 0.58 * highest;
    const double inward = degrees() >= 90 ? 0 : drop / std::tan(degrees() * radian);
    const double span = std::min(room.width() / 2 - 1.6 * m_em, std::max(1.3 * highest, 5 * m_em)) / longer;
    const double middle = room.center().x();
    const double beamY = unitTop - drop;
    m_made.hook = QPointF(middle, unitTop - highest);
    m_made.points = {QPointF(middle - part * span, unitTop), QPointF(middle + (1 - part) * span, unitTop)};
    const QLineF beam(m_made.points[0].x() + inward, beamY, m_made.points[1].x() - inward, beamY);
    m_made.rigging = {beam, QLineF(m_made.hook, beam.p1()), QLineF(m_made.hook, beam.p2())};
    addLegs(beam.p1(), m_made.points[0], 0);
    addLegs(beam.p2(), m_made.points[1], 1);
    m_made.arc = AngleArc{m_made.points[1], 1.8 * m_em, 180 - degrees(), degrees()};
}

void Drawing::layOne(const QRectF &room, double unitTop, double highest)
{
    const double slope = degrees() >= 90 ? 1e9 : std::tan(degrees() * radian);
    const double middle = room.center().x();
    const qint64 count = std::clamp<qint64>(m_lift.plan.legsPerPoint, 1, mostLegsDrawn);
    if (count == 1) {
        const double aside = std::min(highest / slope, room.width() / 2 - 4.2 * m_em);
        m_made.hook = QPointF(middle, unitTop - std::min(highest, aside * slope));
        if (degrees() >= 90)
            m_made.hook = QPointF(middle, unitTop - highest);
        m_made.points = {QPointF(middle + aside, unitTop)};
        addLegs(m_made.hook, m_made.points[0], 0);
        m_made.arc = AngleArc{m_made.points[0], 1.8 * m_em, 180 - degrees(), degrees()};
        return;
    }
    // The legs spread from a link to both ends of the fitting; the outer ones lie at the angle.
    const double link = 0.5 * m_em;
    const double aside = std::min(highest / slope, room.width() / 2 - 1.6 * m_em - link);
    const double height = degrees() >= 90 ? highest : aside * slope;
    m_made.hook = QPointF(middle, unitTop - height);
    m_made.points = {QPointF(middle, unitTop)};
    m_made.rigging = {QLineF(middle - link, m_made.hook.y(), middle + link, m_made.hook.y()), QLineF(middle - link - aside, unitTop, middle + link + aside, unitTop)};
    for (qint64 i = 0; i < count; ++i) {
        const double part = 2.0 * static_cast<double>(i) / static_cast<double>(count - 1) - 1;
        m_made.legs.push_back({QLineF(middle + part * link, m_made.hook.y(), middle + part * (link + aside), unitTop), strainAt(0)});
    }
    m_made.arc = AngleArc{m_made.rigging.back().p2(), 1.8 * m_em, 180 - degrees(), degrees()};
}

void Drawing::layDistances(double y)
{
    const core::measure::TwoPoints &points = *m_lift.plan.points;
    const double middle = m_area.center().x();
    const double gap = 0.6 * m_em;
    m_made.distances = DistanceLine{y + 0.45 * m_em, m_made.points[0].x(), middle, m_made.points[1].x()};
    const double textTop = y + 0.9 * m_em;
    const Line left{points.centreFromLeft.text()};
    const Line right{core::measure::shownIn(points.span.coherent() - points.centreFromLeft.coherent(), *core::findUnit(points.span.unit()), 2)};
    const Line whole{tr(QT_TRANSLATE_NOOP("LiftPicture", "%1 between the points")).arg(points.span.text()), Weight::Normal, Tone::Quiet};
    placeBlock({left}, QRectF(m_area.left(), textTop, middle - gap - m_area.left(), m_line), (m_made.points[0].x() + middle) / 2, Qt::AlignHCenter);
    placeBlock({right}, QRectF(middle + gap, textTop, m_area.right() - middle - gap, m_line), (m_made.points[1].x() + middle) / 2, Qt::AlignHCenter);
    placeBlock({whole}, QRectF(m_area.left(), textTop + m_line, m_area.width(), m_line), middle, Qt::AlignHCenter);
}

/// Marks on what is strained: in the hoist, and on the legs.
void Drawing::layStrains()
{
    const double side = 1.1 * m_em;
    const auto markAt = [&](const QPointF &at, Strain strain) {
        if (strain != Strain::Fine)
            m_made.marks.push_back({QRectF(at.x() - side / 2, at.y() - side / 2, side, side), strain});
    };
    if (m_check.hoist)
        markAt(m_made.hoist.center(), strainOf(m_check.hoist->margin));
    const std::size_t perPoint = m_made.legs.size() / m_made.points.size();
    for (std::size_t point = 0; point < m_made.points.size(); ++point) {
        const Leg &outer = m_made.legs[point * perPoint + (point == 0 ? 0 : perPoint - 1)];
        markAt(outer.line.pointAt(0.55), outer.strain);
    }
}

} // namespace

LiftLayout layLift(const Lift &lift, const QRectF &area, const QFont &font)
{
    const LiftCheck check = core::measure::checkLift(lift.plan);
    const int wanted = std::max(1, QFontInfo(font).pixelSize());
    const int least = std::max(1, wanted / 2);
    for (int pixels = wanted; pixels > least; --pixels) {
        Drawing drawing(lift, check, area, font, pixels);
        if (drawing.fits())
            return drawing.take();
    }
    return Drawing(lift, check, area, font, least).take();
}

} // namespace picture
