// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/measure/report.hpp"

#include <QJsonArray>
#include <QStringList>

#include <cmath>

namespace bench {

namespace {

using namespace Qt::StringLiterals;

/// Three digits that say something.
QString shortly(double value)
{
    const int digits = value == 0 ? 0 : std::max(0, 2 - static_cast<int>(std::floor(std::log10(std::abs(value)))));
    return QString::number(value, 'f', std::min(digits, 6));
}

QString goalText(const Figure &figure)
{
    if (!figure.goal)
        return u"–"_s;
    return (figure.goal->side == Goal::Side::AtMost ? u"≤ %1"_s : u"≥ %1"_s).arg(figure.goal->value);
}

QString verdict(const Figure &figure)
{
    const auto meets = meetsGoal(figure);
    if (!meets)
        return u"–"_s;
    if (!isReleaseBuild())
        return u"not a Release build"_s;
    return *meets ? u"yes"_s : u"no"_s;
}

QJsonObject jsonOf(const Figure &figure)
{
    const Spread spread = spreadOf(figure);
    QJsonObject object{{u"name"_s, figure.name},
                       {u"unit"_s, figure.unit},
                       {u"program"_s, medianOfProgram(figure)},
                       {u"value"_s, spread.median},
                       {u"least"_s, spread.least},
                       {u"most"_s, spread.most}};
    if (const auto bare = medianOfBare(figure)) {
        object.insert(u"bare"_s, *bare);
        object.insert(u"bare_is"_s, figure.bareIs);
    }
    if (figure.goal) {
        object.insert(figure.goal->side == Goal::Side::AtMost ? u"at_most"_s : u"at_least"_s, figure.goal->value);
        if (isReleaseBuild())
            object.insert(u"met"_s, *meetsGoal(figure));
    }
    QJsonArray repetitions;
    for (const Repetition &one : figure.repetitions)
        repetitions.append(QJsonArray{one.program, one.bare ? QJsonValue(*one.bare) : QJsonValue()});
    object.insert(u"repetitions"_s, repetitions);
    return object;
}

} // namespace

QString headOf(const Machine &machine)
{
    QStringList lines{u"%1, %2 build"_s.arg(machine.date, machine.build),
                      u"%1, %2 cores, %3 MiB; %4; %5"_s.arg(machine.processor).arg(machine.cores).arg(machine.memoryMiB).arg(machine.system, machine.fileSystem),
                      machine.libraries};
    if (!isReleaseBuild())
        lines << u"This is no Release build: its figures say nothing about the goals."_s;
    return lines.join(u'\n') + u'\n';
}

QString tableHead()
{
    return u"| row | figure | program | bare | value (least–most) | goal | met | load |\n"
           "|---|---|---|---|---|---|---|---|\n"_s;
}

QString tableOf(const RowReport &report)
{
    QString lines;
    for (const Figure &figure : report.figures) {
        const Spread spread = spreadOf(figure);
        const auto bare = medianOfBare(figure);
        lines += u"| %1 | %2 | %3 %4 | %5 | %6 (%7–%8) | %9 |"_s
                     .arg(report.row, figure.name, shortly(medianOfProgram(figure)), figure.unit,
                          bare ? u"%1 (%2)"_s.arg(shortly(*bare), figure.bareIs) : u"–"_s, shortly(spread.median), shortly(spread.least),
                          shortly(spread.most), goalText(figure));
        lines += u" %1 | %2 → %3 |\n"_s.arg(verdict(figure)).arg(report.loadBefore).arg(report.loadAfter);
    }
    return lines;
}

QJsonObject jsonOf(const Machine &machine, const std::vector<RowReport> &reports)
{
    QJsonArray rows;
    for (const RowReport &report : reports) {
        QJsonArray figures;
        for (const Figure &figure : report.figures)
            figures.append(jsonOf(figure));
        rows.append(QJsonObject{{u"row"_s, report.row}, {u"load_before"_s, report.loadBefore}, {u"load_after"_s, report.loadAfter}, {u"figures"_s, figures}});
    }
    return {{u"date"_s, machine.date},
            {u"build"_s, machine.build},
            {u"processor"_s, machine.processor},
            {u"cores"_s, machine.cores},
            {u"memory_mib"_s, machine.memoryMiB},
            {u"system"_s, machine.system},
            {u"file_system"_s, machine.fileSystem},
            {u"libraries"_s, machine.libraries},
            {u"rows"_s, rows}};
}

} // namespace bench
