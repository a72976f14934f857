// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;

namespace story {

using core::json::Object;
using core::json::Value;

namespace {

core::PersonId person(const QString &id) { return *core::PersonId::parse(id); }

/// A public key that belongs to a name; nothing is signed with it here.
QString keyOf(const QString &id) { return core::Digest::of(id.toUtf8()).hex(); }

class Registrar {
public:
    core::Register reg;

    void say(const QString &kind, const QString &subject, const Object &body)
    {
        const core::Draft draft{person(u"Root"_s), opening(), kind, subject, body};
        core::fold(reg, statementOf(draft, reg.head.seq + 1), core::Digest::of(QByteArray::number(reg.head.seq)));
    }
    void enrol(const QString &id) { say(u"person.enrolled"_s, id, {{u"name"_s, id}, {u"public_key"_s, keyOf(id)}, {u"identity"_s, u"pass"_s}}); }
    void grant(const QString &who, const QString &authority, const std::vector<QString> &kinds = {}, const QString &until = {})
    {
        Object body{{u"person"_s, who}, {u"authority"_s, authority}, {u"aircraft_types"_s, core::json::arrayOf({u"TF-2"_s})}, {u"from"_s, u"2026-01-01"_s}, {u"reference"_s, u"QM-4"_s}};
        if (!kinds.empty())
            body.set(u"kinds"_s, core::json::arrayOf(kinds));
        if (!until.isEmpty())
            body.set(u"until"_s, until);
        say(u"authorisation.granted"_s, who + u'-' + authority, body);
    }
    void tool(const QString &id, const QString &min, const QString &max, const QString &unit, const QString &due, const Object &more = {})
    {
        Object body{{u"name"_s, id}, {u"range_min"_s, min}, {u"range_max"_s, max}, {u"unit"_s, unit}};
        for (const auto &[name, value] : more.members())
            body.set(name, value);
        say(u"tool.registered"_s, id, body);
        say(u"tool.calibrated"_s, id, {{u"on"_s, u"2026-01-02"_s}, {u"due"_s, due}, {u"certificate"_s, u"CC-"_s + id}});
    }
};

core::Draft listing(const QString &id, const QString &kind, const Object &more)
{
    Object body = more;
    body.set(u"name"_s, kind + u' ' + id);
    body.set(u"kind"_s, kind);
    if (!body.contains(u"zone"))
        body.set(u"zone"_s, u"left"_s);
    return {person(u"Ana"_s), opening(), u"interface.listed"_s, id, body};
}

Object asking(const std::vector<QString> &requirements, const Object &more = {})
{
    Object body = more;
    body.set(u"requirements"_s, core::json::arrayOf(requirements));
    return body;
}

void setTorque(Object &body, int fasteners, const QString &min, const QString &max)
{
    body.set(u"torque_fasteners"_s, fasteners);
    body.set(u"torque_min"_s, min);
    body.set(u"torque_max"_s, max);
    body.set(u"torque_unit"_s, u"N·m"_s);
}

core::Draft duct()
{
    Object body = asking({u"torque"_s, u"seal"_s, u"blanks"_s, u"safetying"_s}, {{u"seal_part"_s, u"S-100"_s}, {u"safetying"_s, u"lockwire"_s}});
    setTorque(body, 2, u"20"_s, u"25"_s);
    return listing(u"D1"_s, u"duct"_s, body);
}

core::Draft fuelLine(const QString &id)
{
    Object body = asking({u"torque"_s}, {{u"critical"_s, true}, {u"twin_group"_s, u"feed lines"_s}});
    setTorque(body, 1, u"30"_s, u"35"_s);
    return listing(id, u"fuel line"_s, body);
}

core::Draft mount(const QString &id)
{
    Object body = asking({u"torque"_s}, {{u"critical"_s, true}, {u"independence_group"_s, u"mounts"_s}, {u"inspections"_s, 2}});
    setTorque(body, 1, u"80"_s, u"90"_s);
    return listing(id, u"mount"_s, body);
}

core::Draft opened()
{
    const auto zone = [](const QString &name, const QString &who) { return Value(Object{{u"name"_s, name}, {u"technician"_s, who}}); };
    return {person(u"Ana"_s), opening(), u"job.opened"_s, std::nullopt,
            {{u"title"_s, u"Engine change, left"_s}, {u"work_order"_s, u"WO-1"_s}, {u"aircraft"_s, u"Freighter 7"_s},
             {u"aircraft_type"_s, u"TF-2"_s}, {u"maintenance_data"_s, u"AMM 71-00"_s}, {u"revision"_s, u"12"_s},
             {u"unit"_s, u"Engine"_s}, {u"outgoing_serial"_s, u"E-100"_s}, {u"incoming_serial"_s, u"E-200"_s}, {u"lead"_s, u"Ana"_s},
             {u"crew"_s, core::json::arrayOf({u"Ana"_s, u"Ben"_s, u"Dee"_s})},
             {u"zones"_s, core::json::Array{zone(u"left"_s, u"Ana"_s), zone(u"right"_s, u"Ben"_s)}}}};
}

} // namespace

core::Instant opening() { return *core::Instant::parseLedger(u"2026-03-02T06:00:00.000Z"); }

core::Register register_()
{
    Registrar r;
    r.say(u"register.founded"_s, u"Root"_s, {{u"name"_s, u"Root"_s}, {u"public_key"_s, keyOf(u"Root"_s)}, {u"organisation"_s, u"Line station"_s}});
    for (const QString &id : {u"Ana"_s, u"Ben"_s, u"Dee"_s, u"Lee"_s, u"Max"_s, u"Cho"_s, u"Eva"_s, u"Uma"_s, u"Tim"_s, u"Ida"_s, u"Wes"_s, u"Rae"_s, u"Out"_s, u"Ove"_s})
        r.enrol(id);
    for (const QString &id : {u"Ana"_s, u"Ben"_s, u"Dee"_s, u"Lee"_s, u"Max"_s, u"Out"_s, u"Cho"_s})
        r.grant(id, u"work"_s);
    for (const QString &id : {u"Ana"_s, u"Lee"_s})
        r.grant(id, u"lead"_s);
    for (const QString &id : {u"Cho"_s, u"Eva"_s, u"Uma"_s, u"Ben"_s, u"Wes"_s})
        r.grant(id, u"inspect"_s);
    r.grant(u"Tim"_s, u"inspect"_s, {u"duct"_s});
    r.grant(u"Ida"_s, u"inspect"_s, {}, u"2026-02-28"_s);
    r.grant(u"Rae"_s, u"release"_s);
    r.grant(u"Ove"_s, u"overrule"_s);
    r.say(u"authorisation.withdrawn"_s, u"Wes-inspect"_s, {{u"reason"_s, u"left"_s}});
    r.tool(u"TW1"_s, u"5"_s, u"100"_s, u"N·m"_s, u"2026-12-31"_s);
    r.tool(u"TW2"_s, u"5"_s, u"100"_s, u"N·m"_s, u"2026-02-28"_s);
    r.tool(u"TW3"_s, u"5"_s, u"100"_s, u"N·m"_s, u"2026-12-31"_s);
    r.tool(u"TW4"_s, u"5"_s, u"20"_s, u"N·m"_s, u"2026-12-31"_s);
    r.tool(u"TW5"_s, u"50"_s, u"900"_s, u"lbf·in"_s, u"2026-12-31"_s);
    r.tool(u"TW6"_s, u"40"_s, u"250"_s, u"lbf·in"_s, u"2026-12-31"_s, {{u"graduation"_s, u"1"_s}, {u"deviation"_s, u"4"_s}, {u"length"_s, u"10 in"_s}});
    r.tool(u"TW7"_s, u"40"_s, u"250"_s, u"lbf·in"_s, u"2026-12-31"_s, {{u"graduation"_s, u"50"_s}, {u"length"_s, u"10 in"_s}});
    r.tool(u"TC1"_s, u"40"_s, u"250"_s, u"lbf·in"_s, u"2026-12-31"_s, {{u"graduation"_s, u"1"_s}, {u"length"_s, u"10 in"_s}, {u"torque_type"_s, u"setting"_s}});
    r.tool(u"BM1"_s, u"0.1"_s, u"100"_s, u"mΩ"_s, u"2026-12-31"_s);
    r.say(u"tool.registered"_s, u"JK1"_s, {{u"name"_s, u"JK1"_s}});
    r.say(u"tool.registered"_s, u"GA1"_s, {{u"name"_s, u"GA1"_s}});
    r.say(u"tool.calibrated"_s, u"GA1"_s, {{u"on"_s, u"2026-01-02"_s}, {u"due"_s, u"2026-12-31"_s}, {u"certificate"_s, u"CC-GA1"_s}});
    r.say(u"tool.withdrawn"_s, u"TW3"_s, {{u"reason"_s, u"dropped"_s}});
    return r.reg;
}

std::vector<core::Draft> openingDrafts()
{
    return {opened(),
            duct(),
            listing(u"C1"_s, u"harness connector"_s, asking({u"mate"_s}, {{u"aircraft_half"_s, u"P1"_s}, {u"unit_half"_s, u"J1"_s}})),
            listing(u"B1"_s, u"bonding lead"_s, asking({u"bonding"_s}, {{u"bonding_max"_s, u"2.5"_s}, {u"bonding_unit"_s, u"mΩ"_s}})),
            fuelLine(u"F1"_s),
            fuelLine(u"F2"_s),
            mount(u"M1"_s),
            mount(u"M2"_s),
            listing(u"A1"_s, u"access panel"_s, {}),
            listing(u"D2"_s, u"drain"_s, {{u"access"_s, core::json::arrayOf({u"A1"_s})}}),
            listing(u"K1"_s, u"clamp"_s, {{u"zone"_s, u"right"_s}})};
}

std::vector<core::Draft> openingDrafts(const QString &name)
{
    std::vector<core::Draft> drafts = openingDrafts();
    Object &facts = drafts.front().body;
    facts.set(u"work_order"_s, u"WO-"_s + name);
    if (name != u"shop") {
        facts.set(u"title"_s, u"Engine change, right"_s);
        facts.set(u"crew"_s, core::json::arrayOf({u"Ana"_s, u"Ben"_s, u"Dee"_s, u"Cho"_s}));
        return drafts;
    }
    facts.set(u"title"_s, u"Build-up of the incoming engine"_s);
    facts.set(u"lead"_s, u"Lee"_s);
    facts.set(u"crew"_s, core::json::arrayOf({u"Lee"_s, u"Max"_s, u"Dee"_s, u"Cho"_s}));
    facts.set(u"zones"_s, core::json::Array{Value(Object{{u"name"_s, u"stand"_s}})});
    drafts.front().author = person(u"Lee"_s);
    core::Draft own = listing(u"S1"_s, u"clamp"_s, {{u"zone"_s, u"stand"_s}});
    own.author = person(u"Lee"_s);
    return {drafts.front(), own};
}

core::LedgerId ledgerOf(const QString &name)
{
    return name.isEmpty() ? *core::LedgerId::parse(u"b6f0d2f4-0000-4000-8000-000000000001") : *core::LedgerId::parse(u"ledger-of-"_s + name);
}

core::Statement statementOf(const core::Draft &draft, qint64 seq, const QString &job)
{
    return {ledgerOf(job), seq, draft.at, draft.author, {}, {}, draft.kind, draft.subject, draft.body, std::nullopt, {}};
}

} // namespace story
