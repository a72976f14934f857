// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/people.hpp"

namespace session {

namespace {

/// The moment is set when the draft is signed; until then it says nothing.
core::Instant unset() { return core::Instant::fromMilliseconds(0); }

void setUnlessEmpty(core::json::Object &body, const QString &name, const std::vector<QString> &texts)
{
    if (!texts.empty())
        body.set(name, core::json::arrayOf(texts));
}

} // namespace

core::Draft grantDraft(const core::PersonId &author, const Grant &grant)
{
    core::json::Object body{{QStringLiteral("person"), grant.person.text()},
                            {QStringLiteral("authority"), core::authorityText(grant.authority)},
                            {QStringLiteral("from"), grant.from.toString(Qt::ISODate)},
                            {QStringLiteral("reference"), grant.reference}};
    setUnlessEmpty(body, QStringLiteral("kinds"), grant.kinds);
    setUnlessEmpty(body, QStringLiteral("aircraft_types"), grant.aircraftTypes);
    if (grant.until)
        body.set(QStringLiteral("until"), grant.until->toString(Qt::ISODate));
    return {author, unset(), QStringLiteral("authorisation.granted"), grant.id.text(), std::move(body)};
}

core::Draft withdrawGrantDraft(const core::PersonId &author, const core::AuthorisationId &id, const QString &reason)
{
    return {author, unset(), QStringLiteral("authorisation.withdrawn"), id.text(), {{QStringLiteral("reason"), reason}}};
}

core::Draft toolDraft(const core::PersonId &author, const core::Tool &tool)
{
    core::json::Object body{{QStringLiteral("name"), tool.name}};
    if (tool.rangeMin && tool.rangeMax) {
        body.set(QStringLiteral("range_min"), tool.rangeMin->value().text());
        body.set(QStringLiteral("range_max"), tool.rangeMax->value().text());
        body.set(QStringLiteral("unit"), tool.rangeMin->unit());
    }
    if (tool.graduation)
        body.set(QStringLiteral("graduation"), tool.graduation->value().text());
    if (tool.deviation)
        body.set(QStringLiteral("deviation"), tool.deviation->text());
    if (!tool.deviationSource.isEmpty())
        body.set(QStringLiteral("deviation_source"), tool.deviationSource);
    if (tool.length)
        body.set(QStringLiteral("length"), tool.length->text());
    if (tool.torqueType)
        body.set(QStringLiteral("torque_type"), core::torqueToolTypeText(*tool.torqueType));
    return {author, unset(), QStringLiteral("tool.registered"), tool.id.text(), std::move(body)};
}

core::Draft doubtDraft(const core::PersonId &author, const core::ToolId &id, QDate after, const QString &found, const QString &certificate)
{
    return {author, unset(), QStringLiteral("tool.doubted"), id.text(),
            {{QStringLiteral("after"), after.toString(Qt::ISODate)}, {QStringLiteral("found"), found}, {QStringLiteral("certificate"), certificate}}};
}

core::Draft calibrationDraft(const core::PersonId &author, const core::ToolId &id, const core::Calibration &calibration)
{
    core::json::Object body{{QStringLiteral("on"), calibration.on.toString(Qt::ISODate)},
                            {QStringLiteral("due"), calibration.due.toString(Qt::ISODate)},
                            {QStringLiteral("certificate"), calibration.certificate}};
    if (calibration.deviation)
        body.set(QStringLiteral("deviation"), calibration.deviation->text());
    return {author, unset(), QStringLiteral("tool.calibrated"), id.text(), std::move(body)};
}

core::Draft withdrawToolDraft(const core::PersonId &author, const core::ToolId &id, const QString &reason)
{
    return {author, unset(), QStringLiteral("tool.withdrawn"), id.text(), {{QStringLiteral("reason"), reason}}};
}

core::Draft stopKeyDraft(const core::PersonId &author, const core::PersonId &person, const core::Instant &doubtSince, const QString &reason)
{
    return {author, unset(), QStringLiteral("key.stopped"), person.text(),
            {{QStringLiteral("since"), doubtSince.text()}, {QStringLiteral("reason"), reason}}};
}

core::AuthorisationId nextAuthorisation(const core::Register &reg)
{
    std::size_t number = reg.authorisations.size() + 1;
    auto id = core::AuthorisationId::parse(QStringLiteral("A%1").arg(number));
    while (reg.authorisations.contains(*id))
        id = core::AuthorisationId::parse(QStringLiteral("A%1").arg(++number));
    return *id;
}

} // namespace session
