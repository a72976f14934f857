// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/actions.hpp"

#include <algorithm>

#include "app/desktop/parts/words.hpp"
#include "app/desktop/seeds.hpp"
#include "core/acts/act.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

const std::vector<ActionLine> &actions()
{
    static const std::vector<ActionLine> all = {
        {"interface.disconnected"_L1, Over::Items, "disconnect", "D", &seeds::disconnect, {"tag"_L1}, Brings::Nothing},
        {"interface.reconnected"_L1, Over::Items, "reconnect", "R", &seeds::reconnect,
         {"tag_recovered"_L1, "blanks_removed"_L1, "aircraft_half"_L1, "unit_half"_L1, "seal_part"_L1, "seal_batch"_L1}, Brings::Nothing},
        {"torque.applied"_L1, Over::Items, "torque", "T", &seeds::torque, {"fastener"_L1, "value"_L1}, Brings::Nothing},
        {"bonding.measured"_L1, Over::Items, "bonding", "B", &seeds::bonding, {"value"_L1}, Brings::Nothing},
        {"safetying.applied"_L1, Over::Items, "safety", "S", &seeds::safety, {"method"_L1}, Brings::Nothing},
        {"torque.taken_over"_L1, Over::Item, "take-over", "", &seeds::takeOverTorque, {}, Brings::Nothing},
        {"inspection.accepted"_L1, Over::Item, "accept", "A", &seeds::accept, {}, Brings::Nothing},
        {"inspection.rejected"_L1, Over::Item, "reject", "X", &seeds::reject, {}, Brings::Nothing},
        {"interface.disturbed"_L1, Over::Item, "disturbed", "U", &seeds::disturb, {}, Brings::Nothing},
        {"interface.found_open"_L1, Over::Item, "found-open", "O", &seeds::foundOpen, {}, Brings::Nothing},
        {"photo.attached"_L1, Over::Item, "photo", "P", &seeds::photo, {}, Brings::File},
        {"finding.raised"_L1, Over::Job, "finding", "F", &seeds::raiseFinding, {}, Brings::Nothing},
        {"finding.closed"_L1, Over::Subject, "finding-closed", "", &seeds::closeFinding, {}, Brings::Nothing},
        {"handover.given"_L1, Over::Job, "handover", "", &seeds::handOver, {}, Brings::Nothing},
        {"handover.accepted"_L1, Over::Job, "handover-accepted", "", &seeds::acceptHandover, {}, Brings::Nothing},
        {"entry.struck"_L1, Over::Subject, "strike", "", &seeds::strike, {}, Brings::Nothing},
        {"job.closed"_L1, Over::Job, "close-job", "", &seeds::closeJob, {}, Brings::Nothing},
    };
    return all;
}

const ActionLine &actionFor(QLatin1String kind)
{
    const auto &all = actions();
    const auto at = std::find_if(all.begin(), all.end(), [&](const ActionLine &line) { return line.kind == kind; });
    Q_ASSERT(at != all.end());
    return *at;
}

QString actionText(const ActionLine &action, const core::Kinds &kinds, const core::JobState &job, const std::vector<core::InterfaceId> &items)
{
    QString own;
    for (const core::InterfaceId &id : items) {
        const core::InterfaceState *item = job.item(id);
        const core::Kind *kind = item ? kinds.find(item->listed.kind) : nullptr;
        const QString verb = !kind ? QString()
                             : action.kind == "interface.disconnected"_L1 ? kind->verbs.off
                             : action.kind == "interface.reconnected"_L1 ? kind->verbs.on
                                                                         : QString();
        if (verb.isEmpty() || (!own.isEmpty() && own != verb))
            return verbOf(*core::findAct(QString(action.kind)));
        own = verb;
    }
    if (own.isEmpty())
        return verbOf(*core::findAct(QString(action.kind)));
    own[0] = own[0].toUpper();
    return own;
}

namespace {

/// A value of the right form where nothing likelier is known.
core::json::Value anyValue(const core::Field &field, const Situation &s)
{
    switch (field.type) {
    case core::FieldType::Integer: return 1;
    case core::FieldType::Flag: return true;
    case core::FieldType::Date: return u"2000-01-01"_s;
    case core::FieldType::Moment: return core::Instant::fromMilliseconds(0).text();
    case core::FieldType::Decimal: return u"1"_s;
    case core::FieldType::Unit: return core::units().front().symbol;
    case core::FieldType::Choice: return QString(field.choices.front());
    case core::FieldType::Person: return s.reg.people.empty() ? u"-"_s : s.reg.people.begin()->first.text();
    case core::FieldType::Tool: return s.reg.tools.empty() ? u"-"_s : s.reg.tools.begin()->first.text();
    case core::FieldType::Digest:
    case core::FieldType::PublicKey: return core::Digest().hex();
    case core::FieldType::Texts:
    case core::FieldType::People:
    case core::FieldType::Interfaces:
    case core::FieldType::Records: return core::json::Array();
    case core::FieldType::Text:
    case core::FieldType::Interface: return u"-"_s;
    }
    Q_UNREACHABLE();
}

} // namespace

core::json::Object probeOf(QLatin1String kind, const Seed &seed, const Situation &situation)
{
    core::json::Object body = seed.body;
    for (const auto &[name, value] : seed.probe.members())
        body.set(name, value);
    for (const core::Field &field : core::findAct(QString(kind))->fields) {
        const QString name(field.name);
        if (field.needed == core::Needed::Always && !body.contains(name))
            body.set(name, anyValue(field, situation));
    }
    return body;
}

} // namespace desktop
