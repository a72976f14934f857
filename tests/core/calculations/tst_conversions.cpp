// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QProcess>
#include <QRandomGenerator>
#include <QTest>

#include "core/measure/conversion.hpp"
#include "tests/core/calculations/calculating.hpp"

using namespace Qt::StringLiterals;

namespace {

/// Our units in the words of GNU units. Angles and drops have one unit each, with nothing to convert to.
struct Named {
    const char *ours;
    const char *theirs;
};

constexpr Named names[] = {
    {"N·m", "N m"},     {"lbf·in", "lbf in"}, {"lbf·ft", "lbf ft"},  {"kgf·m", "kgf m"},    {"mΩ", "milliohm"},  {"Ω", "ohm"},     {"mV", "millivolt"},
    {"V", "volt"},      {"kg", "kg"},         {"lb", "lb"},          {"mm", "mm"},          {"m", "m"},          {"in", "in"},     {"ft", "ft"},
    {"kg·m", "kg m"},   {"kg·mm", "kg mm"},   {"lb·in", "lb in"},    {"L", "liter"},        {"mL", "ml"},        {"US qt", "quart"}, {"US gal", "gallon"},
    {"L/min", "liter/min"}, {"mL/min", "ml/min"},
};

QString theirsOf(const core::Unit &unit)
{
    for (const Named &one : names) {
        if (unit.symbol == QString::fromUtf8(one.ours))
            return QString::fromUtf8(one.theirs);
    }
    return {};
}

struct Asked {
    core::Quantity quantity;
    const core::Unit *to;
};

/// A value of up to ten digits, of any size from a millionth to a million.
QString anyValue(QRandomGenerator &random)
{
    const qint64 digits = 1 + static_cast<qint64>(random.bounded(quint64{9'999'999'999}));
    const int places = random.bounded(11);
    QString text = QString::number(digits);
    if (places == 0)
        return text;
    text = text.rightJustified(places + 1, u'0');
    return text.insert(text.size() - places, u'.');
}

std::vector<Asked> questions(int count)
{
    QRandomGenerator random(20260302);
    std::vector<Asked> all;
    while (static_cast<int>(all.size()) < count) {
        const auto &units = core::units();
        const core::Unit &from = units[random.bounded(static_cast<quint32>(units.size()))];
        const std::vector<const core::Unit *> others = core::unitsOf(from.dimension);
        const core::Unit *to = others[random.bounded(static_cast<quint32>(others.size()))];
        if (to->symbol != from.symbol)
            all.push_back({*core::Quantity::parse(anyValue(random), from.symbol), to});
    }
    return all;
}

/// The answers of GNU units, to 15 digits, all in one run.
QStringList answersOf(const std::vector<Asked> &questions)
{
    QByteArray input;
    for (const Asked &one : questions)
        input += (u"%1 %2\n%3\n"_s.arg(one.quantity.value().text(), theirsOf(*core::findUnit(one.quantity.unit())), theirsOf(*one.to))).toUtf8();
    QProcess units;
    units.start(u"units"_s, {u"--quiet"_s, u"--one-line"_s, u"--strict"_s, u"--terse"_s, u"--output-format"_s, u"%.15g"_s});
    if (!units.waitForStarted())
        return {};
    units.write(input);
    units.closeWriteChannel();
    return units.waitForFinished(60'000) && units.exitCode() == 0 ? QString::fromUtf8(units.readAllStandardOutput()).split(u'\n', Qt::SkipEmptyParts) : QStringList();
}

} // namespace

/// Every conversion against another program, GNU units, with its own tables of definitions.
class TstConversions : public QObject {
    Q_OBJECT

private slots:
    void everyUnitHasItsName()
    {
        for (const core::Unit &unit : core::units()) {
            if (core::unitsOf(unit.dimension).size() > 1)
                QVERIFY2(!theirsOf(unit).isEmpty(), qPrintable(unit.symbol));
        }
    }

    void agreesWithGnuUnits()
    {
        constexpr int count = 4000;
        const std::vector<Asked> asked = questions(count);
        const QStringList answers = answersOf(asked);
        QVERIFY2(answers.size() == count, "GNU units did not answer. Install the package \"units\": packaging/machine.sh does.");
        for (int i = 0; i < count; ++i) {
            const Asked &one = asked[static_cast<std::size_t>(i)];
            const double ours = core::inUnit(one.quantity.coherent(), *one.to).approximate();
            const double theirs = answers[i].toDouble();
            QVERIFY2(theirs != 0 && std::abs(ours - theirs) <= 1e-14 * std::abs(theirs),
                     qPrintable(u"%1 in %2: %3 here, %4 there"_s.arg(one.quantity.text(), one.to->symbol, QString::number(ours, 'g', 17), answers[i])));
        }
    }

    /// The whole calculation, as it is typed and shown, says the same number.
    void showsWhatItWorkedOut()
    {
        for (const Asked &one : questions(300)) {
            const auto result = calculating::work(u"convert"_s, u"quantity=%1; unit=%2; places=18"_s.arg(one.quantity.text(), one.to->symbol));
            QVERIFY2(result && result->verdict == core::Verdict::Answered, qPrintable(calculating::said(result)));
            QCOMPARE(result->working.steps.back().result, core::measure::shownIn(one.quantity.coherent(), *one.to, 18));
            const bool isExact = core::inUnit(one.quantity.coherent(), *one.to).isExactIn(18);
            QCOMPARE(result->working.answer.contains(u'='), isExact);
            QCOMPARE(result->working.answer.contains(u'≈'), !isExact);
        }
    }

    void thereAndBackIsTheSame()
    {
        for (const Asked &one : questions(300)) {
            const core::Rational there = core::inUnit(one.quantity.coherent(), *one.to);
            const core::Rational back = core::inUnit(there * core::Rational(one.to->factor), *core::findUnit(one.quantity.unit()));
            QVERIFY(back == core::Rational(one.quantity.value()));
        }
    }
};

QTEST_GUILESS_MAIN(TstConversions)
#include "tst_conversions.moc"
