// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/leak_reading.hpp"

#include "core/acts/act.hpp"

namespace core {

namespace {

std::optional<QString> classIn(const QString &text) { return text.isEmpty() || text == dryLeak() ? std::nullopt : std::optional(text); }

} // namespace

QString dryLeak() { return QStringLiteral("dry"); }

measure::LeakScheme leakSchemeOf(const JobFacts &facts)
{
    measure::LeakScheme scheme{facts.leakScheme, {}, std::nullopt, {}};
    for (const QString &name : facts.leakClasses)
        scheme.classes.push_back({name, std::nullopt, std::nullopt});
    return scheme;
}

measure::Measured<bool> isLeakClassWithin(const QString &seen, const QString &worst, const JobFacts &facts)
{
    return measure::isWithin(classIn(seen), classIn(worst), leakSchemeOf(facts));
}

std::optional<Quantity> leakRateIn(const json::Object &body)
{
    const auto rate = quantityIn(body, u"rate", Dimension::VolumeRate);
    return rate ? rate : quantityIn(body, u"drops", Dimension::DropRate);
}

} // namespace core
