// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/figures.hpp"

#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/job/figures.hpp"
#include "core/measure/servicing.hpp"
#include "core/reports/report_rows.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace reporting;

QString in(const Rational &coherent, const Quantity &like, int places = 2) { return measure::shownIn(coherent, *findUnit(like.unit()), places); }

/// With its sign, since it is a difference.
QString signedText(const Rational &change, const QString &text)
{
    if (change <= 0)
        return text;
    return text.startsWith(u'≈') ? u"≈ +"_s + text.mid(2) : u'+' + text;
}

QString nothingToTell() { return inWords(QT_TRANSLATE_NOOP("Report", "cannot be worked out from what was entered")); }

QString unitAbout(const json::Object &body)
{
    if (body.text(u"unit") == u"outgoing")
        return inWords(QT_TRANSLATE_NOOP("Report", "outgoing unit"));
    return body.text(u"unit") == u"incoming" ? inWords(QT_TRANSLATE_NOOP("Report", "incoming unit")) : body.text(u"unit");
}

// Lifts.

std::optional<Rational> leastLegMargin(const measure::LiftCheck &check)
{
    const auto least = std::min_element(check.points.begin(), check.points.end(), [](const measure::PointLoad &a, const measure::PointLoad &b) { return a.margin < b.margin; });
    return least == check.points.end() ? std::nullopt : std::optional(least->margin);
}

QString liftResult(const JobFigure &figure)
{
    const auto plan = liftIn(figure.body, figure.mark.at.utcDate());
    if (!plan)
        return nothingToTell();
    const measure::LiftCheck check = measure::checkLift(*plan);
    if (!check.isAllowed())
        return inWords(QT_TRANSLATE_NOOP("Report", "Do not lift. %1")).arg(check.refusals.join(u' '));
    return inWords(QT_TRANSLATE_NOOP("Report", "margin of the hoist %1, of a leg %2")).arg(measure::marginText(check.hoist->margin), measure::marginText(*leastLegMargin(check)));
}

/// One for each point, the left one first: `154.3 kg / 126.25 kg`.
QString ofPoints(const measure::LiftCheck &check, const Quantity &like, Rational measure::PointLoad::*part)
{
    QStringList parts;
    for (const measure::PointLoad &point : check.points)
        parts << measure::loadText(point.*part, like);
    return parts.join(u" / "_s);
}

std::vector<QString> liftCells(const json::Object &body, const std::optional<measure::LiftPlan> &plan)
{
    const measure::LiftCheck check = plan ? measure::checkLift(*plan) : measure::LiftCheck();
    const auto legMargin = leastLegMargin(check);
    return {body.text(u"unit_weight"),
            body.text(u"rigging_weight"),
            body.text(u"hoist"),
            body.text(u"hoist_due"),
            check.hoist ? measure::loadText(check.hoist->load, plan->hoistLimit) : QString(),
            body.text(u"hoist_limit"),
            check.hoist ? measure::marginText(check.hoist->margin) : QString(),
            body.text(u"sling"),
            body.text(u"sling_due"),
            QString::number(body.integer(u"legs").value_or(0)),
            body.text(u"angle_from_horizontal"),
            plan ? ofPoints(check, plan->unitWeight, &measure::PointLoad::share) : QString(),
            plan ? ofPoints(check, plan->slingLimit, &measure::PointLoad::legTension) : QString(),
            body.text(u"sling_limit"),
            legMargin ? measure::marginText(*legMargin) : QString()};
}

// Servicing.

QString bandText(const json::Object &body) { return inWords(QT_TRANSLATE_NOOP("Report", "%1 to %2")).arg(body.text(u"least"), body.text(u"most")); }

QString levelText(const json::Object &body)
{
    const auto figure = servicingIn(body);
    const auto checked = figure ? measure::servicing(figure->quantity, figure->least, figure->most) : measure::Measured<measure::Servicing>(tl::unexpected<QString>(nothingToTell()));
    if (!checked)
        return checked.error();
    switch (checked->level) {
    case measure::Level::TooLittle: return inWords(QT_TRANSLATE_NOOP("Report", "too little"));
    case measure::Level::Within: return inWords(QT_TRANSLATE_NOOP("Report", "within"));
    case measure::Level::TooMuch: return inWords(QT_TRANSLATE_NOOP("Report", "too much"));
    }
    Q_UNREACHABLE();
}

QString servicingResult(const JobFigure &figure)
{
    return inWords(QT_TRANSLATE_NOOP("Report", "%1, %2 (%3)")).arg(figure.body.text(u"quantity"), levelText(figure.body), bandText(figure.body));
}

QString servicingAbout(const json::Object &body)
{
    return inWords(QT_TRANSLATE_NOOP("Report", "%1, %2")).arg(body.text(u"system"), body.text(u"fluid"));
}

// Weight.

measure::Measured<measure::WeightChange> changeIn(const json::Object &body)
{
    const auto swap = swapIn(body);
    return swap ? measure::weightChange(*swap) : measure::Measured<measure::WeightChange>(tl::unexpected<QString>(nothingToTell()));
}

/// A moment in the units of the swap itself, weight by arm.
QString momentText(const Rational &coherent, const measure::UnitSwap &swap)
{
    const Unit &weight = *findUnit(swap.emptyWeight.unit());
    const Unit &arm = *findUnit(swap.incoming.arm.unit());
    return measure::shown(coherent / (Rational(weight.factor) * Rational(arm.factor)), weight.symbol + u'·' + arm.symbol, 2);
}

QString weightResult(const JobFigure &figure)
{
    const auto change = changeIn(figure.body);
    if (!change)
        return change.error();
    const measure::UnitSwap swap = *swapIn(figure.body);
    return inWords(QT_TRANSLATE_NOOP("Report", "%1, %2. %3"))
        .arg(signedText(change->weight, in(change->weight, swap.emptyWeight)), signedText(change->moment, momentText(change->moment, swap)), change->said().join(u' '));
}

std::vector<QString> weightCells(const json::Object &body)
{
    const auto atArm = [&](QStringView weight, QStringView arm) { return inWords(QT_TRANSLATE_NOOP("Report", "%1 at %2")).arg(body.text(weight), body.text(arm)); };
    std::vector<QString> cells{atArm(u"outgoing_weight", u"outgoing_arm"), atArm(u"incoming_weight", u"incoming_arm")};
    const auto change = changeIn(body);
    if (!change) {
        cells.insert(cells.end(), {QString(), QString(), QString(), QString(), change.error()});
        return cells;
    }
    const measure::UnitSwap swap = *swapIn(body);
    cells.push_back(signedText(change->weight, in(change->weight, swap.emptyWeight)));
    cells.push_back(signedText(change->moment, momentText(change->moment, swap)));
    cells.push_back(in(change->after.weight, swap.emptyWeight));
    cells.push_back(in(change->after.centre(), swap.incoming.arm, 4));
    cells.push_back(change->said().join(u' '));
    return cells;
}

// What all of them share.

struct FigureLine {
    QLatin1String kind;
    QString (*about)(const json::Object &);
    QString (*result)(const JobFigure &);
};

QString swapAbout(const json::Object &) { return inWords(QT_TRANSLATE_NOOP("Report", "incoming for outgoing unit")); }

constexpr FigureLine figureLines[] = {
    {"lift.planned"_L1, &unitAbout, &liftResult},
    {"servicing.recorded"_L1, &servicingAbout, &servicingResult},
    {"weight.recorded"_L1, &swapAbout, &weightResult},
};

const FigureLine *lineOf(const JobFigure &figure)
{
    const auto line = std::find_if(std::begin(figureLines), std::end(figureLines), [&](const FigureLine &one) { return one.kind == figure.kind; });
    return line == std::end(figureLines) ? nullptr : &*line;
}

/// A row under a heading of its own sort: a figure is of the whole job.
ReportRow figureRow(const JobRecord &record, const EntryOnItem &on, const QString &group, std::vector<QString> cells)
{
    cells.push_back(on.entry->said.body.text(u"reference"));
    cells.push_back(on.entry->said.body.text(u"remarks"));
    ReportRow row = closedRow(record, on, std::move(cells), Counts::Yes);
    row.group = group.left(1).toUpper() + group.mid(1);
    return row;
}

std::vector<ReportColumn> withReference(std::vector<ReportColumn> first)
{
    first.insert(first.end(), {{"maintenance_data"_L1, QT_TRANSLATE_NOOP("Report", "Maintenance data"), 0}, {"remarks"_L1, QT_TRANSLATE_NOOP("Report", "Remarks"), 0}});
    return withClosing(std::move(first));
}

std::vector<ReportRow> liftRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"lift.planned")) {
        const json::Object &body = on.entry->said.body;
        std::vector<QString> cells = liftCells(body, liftIn(body, on.entry->said.at.utcDate()));
        cells.insert(cells.begin(), unitAbout(body));
        rows.push_back(figureRow(record, on, unitAbout(body), std::move(cells)));
    }
    return rows;
}

std::vector<ReportRow> servicingRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"servicing.recorded")) {
        const json::Object &body = on.entry->said.body;
        rows.push_back(figureRow(record, on, body.text(u"system"), {body.text(u"system"), body.text(u"fluid"), body.text(u"batch"), body.text(u"quantity"), bandText(body), levelText(body)}));
    }
    return rows;
}

std::vector<ReportRow> weightRows(const JobRecord &record)
{
    std::vector<ReportRow> rows;
    for (const EntryOnItem &on : entriesOfKind(record, u"weight.recorded"))
        rows.push_back(figureRow(record, on, swapAbout(on.entry->said.body), weightCells(on.entry->said.body)));
    return rows;
}

} // namespace

QString figureAbout(const JobFigure &figure)
{
    const FigureLine *line = lineOf(figure);
    return line ? line->about(figure.body) : figure.kind;
}

QString figureResult(const JobFigure &figure)
{
    const FigureLine *line = lineOf(figure);
    return line ? line->result(figure) : QString();
}

Report liftsReport()
{
    return {"lifts"_L1, QT_TRANSLATE_NOOP("Report", "Lifts as planned"),
            withReference({{"unit"_L1, QT_TRANSLATE_NOOP("Report", "Lifted"), 0},
                           {"unit_weight"_L1, QT_TRANSLATE_NOOP("Report", "Weight of the unit"), 0},
                           {"rigging_weight"_L1, QT_TRANSLATE_NOOP("Report", "Weight of the rigging"), 0},
                           {"hoist"_L1, QT_TRANSLATE_NOOP("Report", "Hoist"), 8},
                           {"hoist_due"_L1, QT_TRANSLATE_NOOP("Report", "Hoist inspected until"), 0},
                           {"hoist_load"_L1, QT_TRANSLATE_NOOP("Report", "It carries"), 10},
                           {"hoist_limit"_L1, QT_TRANSLATE_NOOP("Report", "Limit of the hoist"), 0},
                           {"hoist_margin"_L1, QT_TRANSLATE_NOOP("Report", "Margin of the hoist"), 9},
                           {"sling"_L1, QT_TRANSLATE_NOOP("Report", "Sling"), 0},
                           {"sling_due"_L1, QT_TRANSLATE_NOOP("Report", "Sling inspected until"), 0},
                           {"legs"_L1, QT_TRANSLATE_NOOP("Report", "Legs at each point"), 0},
                           {"angle"_L1, QT_TRANSLATE_NOOP("Report", "Angle from the horizontal"), 0},
                           {"shares"_L1, QT_TRANSLATE_NOOP("Report", "At left / right point"), 0},
                           {"tensions"_L1, QT_TRANSLATE_NOOP("Report", "A leg carries, left / right"), 25},
                           {"sling_limit"_L1, QT_TRANSLATE_NOOP("Report", "Limit of a leg"), 0},
                           {"leg_margin"_L1, QT_TRANSLATE_NOOP("Report", "Least margin of a leg"), 10}}),
            &liftRows};
}

Report servicingReport()
{
    return {"servicing"_L1, QT_TRANSLATE_NOOP("Report", "Servicing"),
            withReference({{"system"_L1, QT_TRANSLATE_NOOP("Report", "System"), 0},
                           {"fluid"_L1, QT_TRANSLATE_NOOP("Report", "Fluid"), 14},
                           {"batch"_L1, QT_TRANSLATE_NOOP("Report", "Batch"), 11},
                           {"quantity"_L1, QT_TRANSLATE_NOOP("Report", "Quantity"), 12},
                           {"band"_L1, QT_TRANSLATE_NOOP("Report", "Band"), 17},
                           {"level"_L1, QT_TRANSLATE_NOOP("Report", "Level"), 9}}),
            &servicingRows};
}

Report weightReport()
{
    return {"weight"_L1, QT_TRANSLATE_NOOP("Report", "Weight and balance"),
            withReference({{"outgoing"_L1, QT_TRANSLATE_NOOP("Report", "Outgoing unit"), 13},
                           {"incoming"_L1, QT_TRANSLATE_NOOP("Report", "Incoming unit"), 13},
                           {"difference"_L1, QT_TRANSLATE_NOOP("Report", "Change of weight"), 10},
                           {"moment"_L1, QT_TRANSLATE_NOOP("Report", "Change of moment"), 13},
                           {"weight_after"_L1, QT_TRANSLATE_NOOP("Report", "Empty weight after"), 12},
                           {"centre_after"_L1, QT_TRANSLATE_NOOP("Report", "Centre of gravity after"), 0},
                           {"verdict"_L1, QT_TRANSLATE_NOOP("Report", "Whether it is negligible"), 0}}),
            &weightRows};
}

} // namespace core
