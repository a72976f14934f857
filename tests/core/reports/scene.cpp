// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/core/reports/scene.hpp"

#include "core/acts/act.hpp"
#include "core/job/admit.hpp"
#include "core/job/draft_help.hpp"
#include "core/job/loose_ends.hpp"
#include "core/ledger/canonical.hpp"
#include "core/requirements/catalogue.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::arrayOf;
using core::json::Object;
using core::json::Value;

namespace scene {

namespace {

core::LedgerId ledger(const QString &text) { return *core::LedgerId::parse(text); }
core::PersonId person(const QString &id) { return *core::PersonId::parse(id); }

void stopIfRefused(const core::Refusals &refusals, const core::Draft &draft)
{
    if (!refusals.empty())
        qFatal("%s on %s: %s %s", qPrintable(draft.kind), qPrintable(draft.subject.value_or(QString())), qPrintable(refusals.front().rule),
               qPrintable(refusals.front().sentence));
}

core::Entry entryOf(const core::Draft &draft, const core::LedgerId &id, const core::Head &seen, const core::Register &reg, std::optional<core::Head> pin)
{
    const core::Person *signer = reg.person(draft.author);
    const core::Statement said{id, seen.seq + 1, draft.at, draft.author, signer ? signer->key.fingerprint() : core::Digest(),
                               core::findAct(draft.kind)->meaning, draft.kind, draft.subject, draft.body, pin, seen.hash};
    const QByteArray bytes = core::canonicalBytes(said);
    return {said, bytes, core::Digest::of(bytes), QByteArray(64, '\0')};
}

Object duct(int i)
{
    return {{u"name"_s, u"Bleed duct, station %1"_s.arg(i)}, {u"kind"_s, u"duct"_s}, {u"requirements"_s, arrayOf({u"blanks"_s, u"seal"_s, u"torque"_s, u"leak"_s})},
            {u"torque_fasteners"_s, 4}, {u"torque_min"_s, u"22.0"_s}, {u"torque_max"_s, u"26.5"_s}, {u"torque_unit"_s, u"N·m"_s},
            {u"seal_part"_s, u"SL-2204"_s}, {u"leak_rate"_s, u"5 mL/min"_s}, {u"reference"_s, u"task 36-11, page %1"_s.arg(400 + i)}};
}

Object connector(int i)
{
    return {{u"name"_s, u"Harness connector, loom %1"_s.arg(i)}, {u"kind"_s, u"harness_connector"_s}, {u"requirements"_s, arrayOf({u"mate"_s})},
            {u"aircraft_half"_s, u"P%1"_s.arg(100 + i)}, {u"unit_half"_s, u"J%1"_s.arg(100 + i)}};
}

Object lead(int i)
{
    return {{u"name"_s, u"Bonding lead %1"_s.arg(i)}, {u"kind"_s, u"bonding_lead"_s}, {u"requirements"_s, arrayOf({u"bonding"_s})},
            {u"bonding_max"_s, u"2.5"_s}, {u"bonding_unit"_s, u"mΩ"_s}};
}

Object mount(int i)
{
    return {{u"name"_s, u"Mount %1"_s.arg(i)}, {u"kind"_s, u"mount"_s}, {u"requirements"_s, arrayOf({u"torque"_s, u"safetying"_s})},
            {u"torque_fasteners"_s, 2}, {u"torque_min"_s, u"80"_s}, {u"torque_max"_s, u"90"_s}, {u"torque_unit"_s, u"N·m"_s},
            {u"safetying"_s, u"lockwire"_s}, {u"critical"_s, true}, {u"inspections"_s, 2}};
}

Object panel(int i)
{
    return {{u"name"_s, u"Access panel %1"_s.arg(i)}, {u"kind"_s, u"access_panel"_s}, {u"requirements"_s, arrayOf({u"hardware"_s})},
            {u"hardware"_s, Array{Object{{u"part"_s, u"FS-1406"_s}, {u"quantity"_s, 6}}, Object{{u"part"_s, u"GK-2210"_s}, {u"quantity"_s, 1}, {u"new"_s, true}}}}};
}

Object liftPlan(const QString &unit, const QString &weight)
{
    return {{u"unit"_s, unit}, {u"unit_weight"_s, weight}, {u"rigging_weight"_s, u"40 kg"_s},
            {u"hoist"_s, u"HO-1"_s}, {u"hoist_limit"_s, u"1000 kg"_s}, {u"hoist_due"_s, u"2026-06-30"_s},
            {u"sling"_s, u"SL-3"_s}, {u"sling_limit"_s, u"300 kg"_s}, {u"sling_due"_s, u"2026-05-31"_s}, {u"points"_s, 2}, {u"legs"_s, 1},
            {u"angle_from_horizontal"_s, u"90 °"_s}, {u"span"_s, u"1200 mm"_s}, {u"centre"_s, u"400 mm"_s}, {u"reference"_s, u"task 71-00, step 14"_s}};
}

} // namespace

Scene::Scene() : m_now(*core::Instant::parseLedger(u"2026-03-02T06:10:00.000Z"))
{
    const auto key = [](const QString &id) { return core::Digest::of(id.toUtf8()).hex(); };
    sayOnRegister(u"register.founded"_s, u"olga"_s, {{u"name"_s, u"Olga Brandt"_s}, {u"public_key"_s, key(u"olga"_s)}, {u"organisation"_s, u"Hangar 3, Nordfeld"_s}});
    const std::pair<QString, QString> people[] = {{u"ana"_s, u"Ana Ruiz"_s}, {u"ben"_s, u"Ben Ortiz"_s}, {u"lee"_s, u"Lee Park"_s}, {u"mia"_s, u"Mia Sand"_s},
                                                  {u"cho"_s, u"Cho Min"_s}, {u"eva"_s, u"Eva Lund"_s}, {u"rae"_s, u"Rae Holt"_s}};
    for (const auto &[id, name] : people)
        sayOnRegister(u"person.enrolled"_s, id, {{u"name"_s, name}, {u"public_key"_s, key(id)}, {u"identity"_s, u"identity card seen"_s}});
    const std::pair<QString, QString> grants[] = {{u"ana"_s, u"work"_s}, {u"ben"_s, u"work"_s}, {u"lee"_s, u"work"_s}, {u"lee"_s, u"lead"_s}, {u"mia"_s, u"work"_s},
                                                  {u"mia"_s, u"lead"_s}, {u"cho"_s, u"inspect"_s}, {u"eva"_s, u"inspect"_s}, {u"rae"_s, u"release"_s}};
    for (const auto &[who, what] : grants)
        sayOnRegister(u"authorisation.granted"_s, who + u'-' + what,
                      {{u"person"_s, who}, {u"authority"_s, what}, {u"aircraft_types"_s, arrayOf({u"TF-2"_s})}, {u"from"_s, u"2026-01-01"_s},
                       {u"until"_s, u"2026-12-31"_s}, {u"reference"_s, u"QM-4/%1"_s.arg(who)}});
    sayOnRegister(u"tool.registered"_s, u"TW1"_s, {{u"name"_s, u"Torque wrench"_s}, {u"range_min"_s, u"20"_s}, {u"range_max"_s, u"100"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"indicating"_s}});
    sayOnRegister(u"tool.calibrated"_s, u"TW1"_s, {{u"on"_s, u"2025-09-01"_s}, {u"due"_s, u"2026-08-31"_s}, {u"certificate"_s, u"CC-1001"_s}});
    sayOnRegister(u"tool.registered"_s, u"BM1"_s, {{u"name"_s, u"Bonding meter"_s}, {u"range_min"_s, u"0.1"_s}, {u"range_max"_s, u"100"_s}, {u"unit"_s, u"mΩ"_s}});
    sayOnRegister(u"tool.calibrated"_s, u"BM1"_s, {{u"on"_s, u"2025-11-10"_s}, {u"due"_s, u"2026-11-09"_s}, {u"certificate"_s, u"CC-1002"_s}});
}

void Scene::sayOnRegister(const QString &kind, const QString &subject, const Object &body)
{
    m_now = core::Instant::fromMilliseconds(m_now.milliseconds() + 1000);
    const core::Draft draft{person(u"olga"_s), m_now, kind, subject, body};
    stopIfRefused(core::admit(m_register, draft), draft);
    m_registerEntries.push_back(entryOf(draft, ledger(u"3e1c7c1e-5b52-4c1b-9d5b-0d6a3c1f0001"_s), m_register.head, m_register, std::nullopt));
    core::fold(m_register, m_registerEntries.back().said, m_registerEntries.back().hash);
}

void Scene::say(const QString &author, const QString &kind, const QString &subject, const Object &body)
{
    m_now = core::Instant::fromMilliseconds(m_now.milliseconds() + 47'250);
    const core::Draft draft{person(author), m_now, kind, subject.isEmpty() ? std::nullopt : std::optional(subject), body};
    stopIfRefused(core::admit(m_fold.state(), m_register, draft), draft);
    m_entries.push_back(entryOf(draft, ledger(u"9a7e2f60-1d1c-4f0e-8f1e-77aa01020304"_s), m_fold.head(), m_register, m_register.head));
    m_fold.take(m_entries.back().said, m_entries.back().hash);
}

void Scene::open(int interfaces)
{
    const auto zone = [](const QString &name, const QString &who) { return Value(Object{{u"name"_s, name}, {u"technician"_s, who}}); };
    say(u"lee"_s, u"job.opened"_s, {},
        {{u"title"_s, u"Engine change, left side, after a hot start"_s}, {u"work_order"_s, u"WO-2026-0117"_s}, {u"aircraft"_s, u"Freighter 7"_s},
         {u"aircraft_type"_s, u"TF-2"_s}, {u"maintenance_data"_s, u"Maintenance manual 71-00-01"_s}, {u"revision"_s, u"14"_s}, {u"unit"_s, u"Left engine"_s},
         {u"outgoing_serial"_s, u"E-0413"_s}, {u"incoming_serial"_s, u"E-0577"_s}, {u"lead"_s, u"lee"_s}, {u"crew"_s, arrayOf({u"lee"_s, u"ana"_s, u"ben"_s})},
         {u"zones"_s, Array{zone(u"Inboard"_s, u"ana"_s), zone(u"Outboard"_s, u"ben"_s)}}});
    Object (*const kinds[])(int) = {&duct, &connector, &lead, &mount, &panel};
    for (int i = 0; i < interfaces; ++i) {
        Object body = kinds[i % 5](i + 1);
        body.set(u"zone"_s, (i / 5) % 2 == 0 ? u"Inboard"_s : u"Outboard"_s);
        say(u"lee"_s, u"interface.listed"_s, u"E%1"_s.arg(i + 1, 3, 10, QLatin1Char('0')), body);
    }
}

void Scene::undo(const core::InterfaceState &item, int number)
{
    const QString blanks = item.listed.kind == u"duct" ? u"2"_s : u"0"_s;
    Object body{{u"tag"_s, core::nextTag(job())}, {u"blanks_fitted"_s, blanks.toInt()}, {u"as_found"_s, number % 7 == 3 ? u"worn"_s : u"sound"_s}};
    if (!item.listed.hardware.empty())
        body.set(u"hardware_removed"_s, Array{Object{{u"part"_s, u"FS-1406"_s}, {u"quantity"_s, 6}}, Object{{u"part"_s, u"GK-2210"_s}, {u"quantity"_s, 1}}});
    say(number % 2 == 0 ? u"ana"_s : u"ben"_s, u"interface.disconnected"_s, item.listed.id.text(), body);
}

void Scene::restore(const core::InterfaceState &listed)
{
    const core::InterfaceId id = listed.listed.id;
    const auto item = [&] { return *job().item(id); };
    const core::Listing asked = listed.listed;
    Object body{{u"blanks_removed"_s, item().removal->blanksFitted}};
    if (!item().removal->tag.isEmpty())
        body.set(u"tag_recovered"_s, item().removal->tag);
    if (core::asksFor(asked, u"mate")) {
        body.set(u"aircraft_half"_s, asked.aircraftHalf);
        body.set(u"unit_half"_s, asked.unitHalf);
    }
    if (core::asksFor(asked, u"seal")) {
        body.set(u"seal_part"_s, asked.sealPart);
        body.set(u"seal_batch"_s, u"B-7719"_s);
    }
    if (!asked.hardware.empty())
        body.set(u"hardware"_s, Array{Object{{u"part"_s, u"FS-1406"_s}, {u"reused"_s, 5}, {u"renewed"_s, 1}, {u"scrapped"_s, 1}, {u"batch"_s, u"B-310"_s}},
                                      Object{{u"part"_s, u"GK-2210"_s}, {u"renewed"_s, 1}, {u"scrapped"_s, 1}, {u"batch"_s, u"B-311"_s}}});
    say(u"ben"_s, u"interface.reconnected"_s, id.text(), body);
    for (qint64 fastener = 1; asked.torque && fastener <= asked.torque->fasteners; ++fastener)
        say(u"ben"_s, u"torque.applied"_s, id.text(),
            {{u"fastener"_s, Value(fastener)}, {u"value"_s, asked.torque->max.value().text()}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW1"_s}});
    if (core::asksFor(asked, u"bonding"))
        say(u"ben"_s, u"bonding.measured"_s, id.text(), {{u"value"_s, u"0.84"_s}, {u"unit"_s, u"mΩ"_s}, {u"tool"_s, u"BM1"_s}, {u"lead_zero"_s, u"0.02 mΩ"_s}, {u"helpers"_s, arrayOf({u"ana"_s})}});
    if (core::asksFor(asked, u"leak"))
        say(u"ben"_s, u"leak.checked"_s, id.text(), {{u"how"_s, u"Watched for five minutes at idle pressure."_s}, {u"drops"_s, u"6 drops/min"_s}, {u"drops_per_ml"_s, u"12"_s}});
    if (core::asksFor(asked, u"safetying"))
        say(u"ben"_s, u"safetying.applied"_s, id.text(), {{u"method"_s, asked.safetying}});
}

void Scene::inspect(const core::InterfaceState &item)
{
    const QString id = item.listed.id.text();
    const bool isTwice = item.listed.inspections > 1;
    say(u"cho"_s, u"inspection.accepted"_s, id, {});
    if (isTwice)
        say(u"eva"_s, u"inspection.accepted"_s, id, {{u"remarks"_s, u"Second look, gap gauge all round."_s}});
}

/// A lift that was struck, both as they were made, oil and weights.
void Scene::figures()
{
    say(u"ana"_s, u"lift.planned"_s, {}, liftPlan(u"outgoing"_s, u"330 kg"_s));
    say(u"ana"_s, u"entry.struck"_s, {}, {{u"entry"_s, Value(m_fold.head().seq)}, {u"reason"_s, u"Weighed without its exhaust."_s}});
    say(u"ana"_s, u"lift.planned"_s, {}, liftPlan(u"outgoing"_s, u"360 kg"_s));
    say(u"ana"_s, u"lift.planned"_s, {}, liftPlan(u"incoming"_s, u"366 kg"_s));
    say(u"ben"_s, u"servicing.recorded"_s, {},
        {{u"system"_s, u"Engine oil"_s}, {u"fluid"_s, u"Turbine oil"_s}, {u"batch"_s, u"TO-77"_s}, {u"quantity"_s, u"9.2 L"_s}, {u"least"_s, u"9.0 L"_s}, {u"most"_s, u"9.5 L"_s},
         {u"reference"_s, u"task 12-13"_s}});
    say(u"ben"_s, u"weight.recorded"_s, {},
        {{u"outgoing_weight"_s, u"360 kg"_s}, {u"outgoing_arm"_s, u"6.5 m"_s}, {u"incoming_weight"_s, u"366 kg"_s}, {u"incoming_arm"_s, u"6.5 m"_s},
         {u"aircraft_weight"_s, u"12000 kg"_s}, {u"aircraft_centre"_s, u"7 m"_s}, {u"reference"_s, u"task 08-10"_s}, {u"remarks"_s, u"Weighed on the day."_s}});
}

/// A block of tags and a kit, out and back.
void Scene::countedOutAndIn()
{
    say(u"mia"_s, u"tags.issued"_s, {}, {{u"first"_s, 901}, {u"last"_s, 910}});
    say(u"mia"_s, u"tags.returned"_s, {}, {{u"first"_s, 901}, {u"last"_s, 910}, {u"counted"_s, 10}});
    say(u"ben"_s, u"tool.issued"_s, u"KT-3"_s, {{u"sort"_s, u"kit"_s}, {u"name"_s, u"Sockets"_s}, {u"pieces"_s, 24}, {u"holder"_s, u"ana"_s}});
    say(u"ben"_s, u"tool.returned"_s, u"KT-3"_s, {{u"pieces"_s, 24}});
}

void Scene::work()
{
    const core::Series<core::InterfaceState> items = job().items;
    for (std::size_t i = 0; i < items.size(); ++i) {
        undo(items[i], static_cast<int>(i));
        if (i == 2) {
            say(u"ana"_s, u"entry.struck"_s, {}, {{u"entry"_s, Value(m_fold.head().seq)}, {u"reason"_s, u"Logged on the wrong lead: the tag hangs on its neighbour."_s}});
            undo(items[i], static_cast<int>(i));
        }
    }
    say(u"ben"_s, u"finding.raised"_s, u"F1"_s, {{u"description"_s, u"Cushion of the neighbouring clamp swollen with oil."_s}, {u"interface"_s, items[0].listed.id.text()}});
    say(u"lee"_s, u"handover.given"_s, {},
        {{u"to"_s, u"mia"_s}, {u"crew"_s, arrayOf({u"ana"_s, u"ben"_s})}, {u"open"_s, core::openAtHandover(job())}, {u"remarks"_s, u"Hoist stays on the unit overnight."_s}});
    say(u"mia"_s, u"handover.accepted"_s, {}, {{u"given"_s, Value(m_fold.head().seq)}});
    sayOnRegister(u"tool.calibrated"_s, u"TW1"_s, {{u"on"_s, u"2026-03-01"_s}, {u"due"_s, u"2027-02-28"_s}, {u"certificate"_s, u"CC-1188"_s}});
    say(u"ana"_s, u"condition.stated"_s, items[0].listed.id.text(), {{u"condition"_s, u"temporary"_s}, {u"reason"_s, u"Coupling tried on to see whether the flange clears."_s}});
    say(u"ben"_s, u"condition.cleared"_s, items[0].listed.id.text(), {{u"condition"_s, u"temporary"_s}, {u"how"_s, u"Coupling taken off again."_s}});
    for (const core::InterfaceState &item : items)
        restore(item);
    say(u"eva"_s, u"inspection.rejected"_s, items[0].listed.id.text(), {{u"reason"_s, u"Coupling not seated at the lower flange."_s}, {u"back_to"_s, u"disconnected"_s}});
    restore(*job().item(items[0].listed.id));
    for (const core::InterfaceState &item : items)
        inspect(item);
    figures();
    countedOutAndIn();
    say(u"cho"_s, u"finding.closed"_s, u"F1"_s, {{u"disposition"_s, u"rectified"_s}, {u"authority"_s, u"task 36-11, step 9"_s}, {u"remarks"_s, u"Clamp renewed."_s}});
    gates();
}

/// A gate that is passed, what was applied for the job, the incoming unit, and a run.
void Scene::gates()
{
    say(u"mia"_s, u"hold.set"_s, u"last"_s,
        {{u"title"_s, u"Last look"_s}, {u"authority"_s, u"work"_s}, {u"conditions"_s, Array{Object{{u"what"_s, u"interfaces"_s}, {u"stage"_s, u"inspected"_s}}}},
         {u"gates"_s, Array{Object{{u"act"_s, u"job.closed"_s}}}}, {u"statements"_s, arrayOf({u"Nothing lies loose in the bay."_s})}});
    say(u"ana"_s, u"temporary.applied"_s, u"T1"_s, {{u"sort"_s, u"isolation"_s}, {u"name"_s, u"Fuel valve shut and locked"_s}, {u"tag"_s, u"L-4"_s}});
    say(u"mia"_s, u"temporary.removed"_s, u"T1"_s, {{u"reason"_s, u"Ana has left; the bay was searched."_s}});
    say(u"cho"_s, u"unit.received"_s, {}, {{u"serial"_s, u"E-0577"_s}, {u"certificate"_s, u"RC-1"_s}, {u"shipping_blanks"_s, Value(12)}, {u"configuration"_s, u"same state"_s}});
    say(u"ben"_s, u"test.recorded"_s, u"R1"_s,
        {{u"what"_s, u"ground run"_s}, {u"name"_s, u"engine"_s}, {u"result"_s, u"passed"_s}, {u"reference"_s, u"task 71-00"_s},
         {u"values"_s, Array{Object{{u"name"_s, u"Vibration"_s}, {u"read"_s, u"0.4 mm"_s}, {u"most"_s, u"0.9 mm"_s}}}}});
    say(u"mia"_s, u"followup.set"_s, {}, {{u"what"_s, u"Look at the clamps of the bleed duct."_s}, {u"due"_s, u"2026-04-01"_s}, {u"interface"_s, job().items[0].listed.id.text()}, {u"reference"_s, u"task 36-11"_s}});
    say(u"ana"_s, u"hold.passed"_s, u"last"_s, {{u"confirmed"_s, arrayOf({u"Nothing lies loose in the bay."_s})}});
}

void Scene::close()
{
    say(u"rae"_s, u"job.closed"_s, {}, {{u"statement"_s, u"The work recorded here was carried out as the maintenance data asks."_s}});
}

core::JobRecord Scene::record() const
{
    const auto kinds = resources::loadKinds();
    if (!kinds)
        qFatal("%s", qPrintable(kinds.error().message));
    return core::JobRecord(m_entries, m_registerEntries, *kinds);
}

core::JobRecord openRecord(int interfaces)
{
    Scene scene;
    scene.open(interfaces);
    scene.work();
    return scene.record();
}

core::JobRecord closedRecord(int interfaces)
{
    Scene scene;
    scene.open(interfaces);
    scene.work();
    scene.close();
    return scene.record();
}

} // namespace scene
