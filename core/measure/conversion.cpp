// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/conversion.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

/// Eighteen digits by a factor of seventeen: all places that a coherent value can have.
constexpr int allPlaces = 40;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

const Unit &coherentUnit(Dimension dimension)
{
    const std::vector<const Unit *> all = unitsOf(dimension);
    return **std::find_if(all.begin(), all.end(), [](const Unit *one) { return Rational(one->factor) == 1; });
}

WorkingStep factorStep(const Unit &unit, const Unit &coherent, const QString &letter)
{
    return {tr(QT_TRANSLATE_NOOP("Measure", "Factor %1 of %2")).arg(letter, unit.symbol), {}, {}, unit.factor.text() + u' ' + coherent.symbol};
}

} // namespace

Measured<Working> conversionWorking(const Quantity &quantity, const Unit &to, qint64 places)
{
    if (quantity.dimension() != to.dimension)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is %2, and %3 measures %4. Choose a unit of the same kind.")).arg(quantity.text(), dimensionInWords(quantity.dimension()), to.symbol, dimensionInWords(to.dimension)));
    if (places < 0 || places > mostConversionPlaces)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A result is shown with 0 to %1 decimal places, not %2.")).arg(mostConversionPlaces).arg(places));
    const Unit &from = *findUnit(quantity.unit());
    const Unit &coherent = coherentUnit(to.dimension);
    const Rational value = inUnit(quantity.coherent(), to);
    const int most = static_cast<int>(places);
    const bool isExact = value.isExactIn(most);

    Working working;
    working.steps = {factorStep(from, coherent, u"f"_s), factorStep(to, coherent, u"g"_s),
                     {tr(QT_TRANSLATE_NOOP("Measure", "In %1")).arg(coherent.symbol), u"x · f"_s, u"%1 · %2"_s.arg(quantity.value().text(), from.factor.text()), shownIn(quantity.coherent(), coherent, allPlaces)},
                     {tr(QT_TRANSLATE_NOOP("Measure", "Result in %1, y")).arg(to.symbol), u"y = x · f / g"_s, u"%1 · %2 / %3"_s.arg(quantity.value().text(), from.factor.text(), to.factor.text()), shownIn(quantity.coherent(), to, most)}};
    working.answer = (isExact ? tr(QT_TRANSLATE_NOOP("Measure", "%1 = %2")) : u"%1 %2"_s).arg(quantity.text(), shown(value, to.symbol, most));
    if (!isExact)
        working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Rounded, half away from zero, as it was written; nothing was rounded before."));
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Factors: NIST SP 811 (2008) appendix B; exact by the definitions of pound, inch, US gallon and standard gravity"));
    return working;
}

} // namespace core::measure
