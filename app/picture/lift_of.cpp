// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/lift_of.hpp"

#include "core/job/figures.hpp"
#include "core/reports/figures.hpp"

namespace picture {

std::optional<Lift> liftOf(const core::JobFigure &figure)
{
    const auto plan = figure.kind == u"lift.planned" ? core::liftIn(figure.body, figure.mark.at.utcDate()) : std::nullopt;
    if (!plan)
        return std::nullopt;
    QString unit = core::figureAbout(figure);
    if (!unit.isEmpty())
        unit[0] = unit[0].toUpper();
    return Lift{*plan, unit, figure.body.text(u"hoist"), figure.body.text(u"sling")};
}

} // namespace picture
