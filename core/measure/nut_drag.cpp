// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/measure/nut_drag.hpp"

#include <QCoreApplication>

namespace core::measure {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Measure", text); }

tl::unexpected<QString> no(const QString &sentence) { return tl::unexpected<QString>(sentence); }

} // namespace

std::optional<QString> whyNoDragToAdd(const Quantity &drag, const Quantity &leastTorque)
{
    if (drag.value().isNegative())
        return tr(QT_TRANSLATE_NOOP("Measure", "A drag of %1 is none. Give the torque that turns the nut before it seats.")).arg(drag.text());
    if (drag < leastTorque)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "A drag of %1 is as much as the torque itself, %2: the nut or its thread is damaged, or the figure is not the drag. Look at both, and measure again.")).arg(drag.text(), leastTorque.text());
}

std::optional<QString> whyTooMuchDrag(const Quantity &drag, const Quantity &greatest)
{
    if (drag <= greatest)
        return std::nullopt;
    return tr(QT_TRANSLATE_NOOP("Measure", "The nut turns with %1, and at most %2 is allowed: it or its thread is damaged. Take it off, look at both, and follow the maintenance data.")).arg(drag.text(), greatest.text());
}

Measured<NutDrag> nutDrag(const Quantity &prevailing, const Quantity &least)
{
    if (prevailing.dimension() != Dimension::Torque || prevailing.value().isNegative())
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A drag of %1 is none. Give the torque that turns the nut before it seats.")).arg(prevailing.text()));
    if (least.dimension() != Dimension::Torque || least.coherent() <= 0)
        return no(tr(QT_TRANSLATE_NOOP("Measure", "A least drag of %1 is none. Take it from the maintenance data; the published table begins at 7/16 in.")).arg(least.text()));
    NutDrag drag{whyNotReused(prevailing, least), {}};
    drag.working.steps = {{tr(QT_TRANSLATE_NOOP("Measure", "The nut turns with")), {}, {}, prevailing.text()},
                          {tr(QT_TRANSLATE_NOOP("Measure", "Least for its size")), {}, {}, least.text()}};
    drag.working.answer = drag.refused ? *drag.refused : tr(QT_TRANSLATE_NOOP("Measure", "%1 is enough drag: at least %2 is needed.")).arg(prevailing.text(), least.text());
    drag.working.notes << tr(QT_TRANSLATE_NOOP("Measure", "Whether a nut may be used again at all, the maintenance data says. Look at it as well: clean, undamaged, and measured before it seats."));
    drag.working.sources << u"AC 43.13-1B (9/8/98) par. 7-40"_s << tr(QT_TRANSLATE_NOOP("Measure", "Least: as given"));
    return drag;
}

} // namespace core::measure
