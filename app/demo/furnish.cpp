// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/furnish.hpp"

#include <QCoreApplication>

#include "app/demo/table.hpp"
#include "app/session/people.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;

/// How long before the story the approvals began, and how long after it they end.
constexpr int daysApprovedBefore = 200;
constexpr int daysApprovedAfter = 530;

QString tr(const char *text) { return QCoreApplication::translate("Demo", text); }

/// It is signed, so it is the same in whatever language the demo is begun.
const QString organisation = u"Tarnmoor Air Freight Maintenance (fictional)"_s;

core::Result<void> unlock(Play &play, const CastMember &member)
{
    auto key = play.session.unlock({member.id, member.pin});
    if (!key)
        return core::failure(key.error());
    play.keys.insert_or_assign(member.id, *std::move(key));
    return {};
}

core::Result<void> bringIn(Play &play, const CastMember &member, const CastMember &root)
{
    const session::NewPerson person{member.id, member.name, member.pin, member.identity};
    const bool isRoot = member.id == root.id;
    const auto entries = isRoot ? session::found(play.session, organisation, person)
                                : session::enrol(play.session, person, root.id, play.keys.at(root.id));
    if (!entries)
        return core::failure(entries.error().error);
    play.clock.pass(std::chrono::minutes(4));
    return unlock(play, member);
}

core::Result<void> authorise(Play &play, const CastMember &member, const CastMember &root)
{
    for (const core::Authority authority : member.authorities) {
        const core::AuthorisationId id = session::nextAuthorisation(play.session.reg());
        const session::Grant grant{.id = id,
                                   .person = member.id,
                                   .authority = authority,
                                   .kinds = {},
                                   .aircraftTypes = {u"Ostrel 40F"_s},
                                   .from = play.day.addDays(-daysApprovedBefore),
                                   .until = play.day.addDays(daysApprovedAfter),
                                   .reference = u"Approval letter %1/%2"_s.arg(member.id.text(), id.text())};
        if (const auto said = say(play, *play.session.reg().ledger, {session::grantDraft(root.id, grant)}); !said)
            return said;
    }
    return {};
}

core::Result<void> addTool(Play &play, const TableRow &row, const CastMember &root)
{
    const auto id = core::ToolId::parse(row.text(u"id"_s));
    const auto min = core::Quantity::parse(row.text(u"range_min"_s), row.text(u"unit"_s));
    const auto max = core::Quantity::parse(row.text(u"range_max"_s), row.text(u"unit"_s));
    if (!id || !min || !max)
        return core::failure(core::ErrorCode::BadInput, tr("A tool of the demo has no id or no range."), {u"tools.csv"_s, row.row, std::nullopt});
    core::Tool tool{*id, row.text(u"name"_s), *min, *max, {}, std::nullopt};
    tool.graduation = core::Quantity::parse(row.text(u"graduation"_s), row.text(u"unit"_s));
    tool.deviation = core::Decimal::parse(row.text(u"deviation"_s));
    tool.deviationSource = row.text(u"deviation_source"_s);
    tool.torqueType = core::parseTorqueToolType(row.text(u"torque_type"_s));
    if (const auto length = core::Quantity::read(row.text(u"length"_s), core::Dimension::Length))
        tool.length = *length;
    const core::Calibration calibration{play.day.addDays(-row.text(u"calibrated_days_before"_s).toInt()),
                                        play.day.addDays(row.text(u"due_days_after"_s).toInt()), row.text(u"certificate"_s),
                                        core::Decimal::parse(row.text(u"certified_deviation"_s))};
    return say(play, *play.session.reg().ledger, {session::toolDraft(root.id, tool), session::calibrationDraft(root.id, *id, calibration)});
}

} // namespace

core::Result<void> furnish(Play &play)
{
    const auto members = cast();
    if (!members)
        return core::failure(members.error());
    const CastMember &root = members->front();
    for (const CastMember &member : *members) {
        if (const auto in = bringIn(play, member, root); !in)
            return in;
        if (const auto authorised = authorise(play, member, root); !authorised)
            return authorised;
    }
    const auto tools = scenarioTable(u"tools.csv"_s);
    if (!tools)
        return core::failure(tools.error());
    for (const TableRow &row : *tools) {
        if (const auto added = addTool(play, row, root); !added)
            return added;
    }
    return {};
}

} // namespace demo
