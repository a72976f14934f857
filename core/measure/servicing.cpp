// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/servicing.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

QString bandText(const Quantity &least, const Quantity &most) { return tr(QT_TRANSLATE_NOOP("Measure", "%1 to %2")).arg(least.text(), most.text()); }

} // namespace

Measured<Servicing> servicing(const Quantity &quantity, const Quantity &least, const Quantity &most)
{
    for (const Quantity &one : {quantity, least, most}) {
        if (one.dimension() != Dimension::Volume || one.value().isNegative())
            return no(tr(QT_TRANSLATE_NOOP("Measure", "%1 is no quantity to fill in. Give a volume of 0 or more, with its unit.")).arg(one.text()));
    }
    if (least > most)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A band of %1 holds nothing. Give the least first, and then the most.")).arg(bandText(least, most)));

    Servicing result{quantity.coherent(), least.coherent(), most.coherent(), Level::Within, 0, {}};
    const Unit &unit = *findUnit(quantity.unit());
    if (result.quantity < result.least) {
        result.level = Level::TooLittle;
        result.off = result.least - result.quantity;
        result.said = tr(QT_TRANSLATE_NOOP("Measure", "Too little: %1 is %2 short of %3. Fill up as the maintenance data says, and look whether any leaks."))
                          .arg(quantity.text(), shownIn(result.off, unit), bandText(least, most));
    } else if (result.quantity > result.most) {
        result.level = Level::TooMuch;
        result.off = result.quantity - result.most;
        result.said = tr(QT_TRANSLATE_NOOP("Measure", "Too much: %1 is %2 over %3. Draw it off as the maintenance data says, and check that the right liquid was filled in."))
                          .arg(quantity.text(), shownIn(result.off, unit), bandText(least, most));
    } else {
        result.said = tr(QT_TRANSLATE_NOOP("Measure", "%1 lies within %2.")).arg(quantity.text(), bandText(least, most));
    }
    return result;
}

Measured<Working> servicingWorking(const Quantity &quantity, const Quantity &least, const Quantity &most)
{
    const auto result = servicing(quantity, least, most);
    if (!result)
        return no(result.error());
    Working working;
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Band")), {}, {}, bandText(least, most)});
    working.steps.push_back({tr(QT_TRANSLATE_NOOP("Measure", "Quantity")), {}, quantity.text(), shownIn(result->quantity, *findUnit(least.unit()))});
    working.answer = result->said;
    working.sources << tr(QT_TRANSLATE_NOOP("Measure", "Band: the maintenance data, as given; both ends belong to it (common practice)"));
    return working;
}

QStringList servicingCautions()
{
    return {
        tr(QT_TRANSLATE_NOOP("Measure", "Fuel and its vapour: bond aircraft and equipment first, no flame, spark or live circuit near, fire cover as the local rules ask.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Let the pressure off before a cap is opened, and mind hot oil. Gloves and eye protection; wipe up what is spilled.")),
        tr(QT_TRANSLATE_NOOP("Measure", "Read the liquid's name on the can and on the filler: the wrong one in the right quantity is no servicing.")),
        tr(QT_TRANSLATE_NOOP("Measure", "The approved maintenance data and the local rules decide, and people who are licensed or authorised for it judge the servicing.")),
    };
}

} // namespace core::measure
