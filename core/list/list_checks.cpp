// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/list_checks.hpp"

#include <QCoreApplication>
#include <QSet>
#include <QStringList>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/rules/hardware.hpp"
#include "core/rules/listed_limits.hpp"
#include "core/rules/listing.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("InterfaceList", text); }

using Members = std::vector<QLatin1String>;

/// The rules that admit an `interface.listed` entry, asked here of part of a body, so that each fault finds its column.
struct RowRule {
    Members members;
    std::optional<Refusal> (*refuse)(const Case &);
    QString column;
};

const std::vector<RowRule> &rowRules()
{
    static const std::vector<RowRule> all = {
        {{"zone"_L1}, &rules::zoneExists, u"zone"_s},
        {{"torque_min"_L1, "torque_max"_L1, "torque_unit"_L1}, &rules::torqueBandIsSound, u"torque_max"_s},
        {{"torque_fasteners"_L1}, &rules::torqueBandIsSound, u"torque_fasteners"_s},
        {{"bonding_max"_L1, "bonding_unit"_L1}, &rules::torqueBandIsSound, u"bonding_max"_s},
        {{"torque_passes"_L1}, &rules::passesAreSound, u"torque_passes"_s},
        {{"torque_fasteners"_L1, "torque_order"_L1}, &rules::orderIsSound, u"torque_order"_s},
        {{"torque_turn_min"_L1, "torque_turn_max"_L1}, &rules::turnAndDragAreSound, u"torque_turn_max"_s},
        {{"torque_prevailing_min"_L1}, &rules::turnAndDragAreSound, u"torque_prevailing_min"_s},
        {{"torque_prevailing_min"_L1, "torque_prevailing_max"_L1}, &rules::turnAndDragAreSound, u"torque_prevailing_max"_s},
        {{"bonding_readings"_L1}, &rules::bondingReadingsAreSound, u"bonding_readings"_s},
        {{"leak_class"_L1, "leak_rate"_L1}, &rules::leakClassIsSound, u"leak_class"_s},
        {{"leak_rate"_L1}, &rules::leakRateIsSound, u"leak_rate"_s},
        {{"leak_rate"_L1, "leak_drops_per_ml"_L1}, &rules::dropSizeIsSound, u"leak_drops_per_ml"_s},
        {{"hardware"_L1}, &rules::listedHardwareIsSound, u"hardware"_s},
        {{"inspections"_L1}, &rules::inspectionsAreOneOrTwo, u"inspections"_s},
    };
    return all;
}

json::Object partOf(const json::Object &body, const Members &members)
{
    json::Object part;
    for (const QLatin1String name : members) {
        if (const json::Value *value = body.find(QString(name)))
            part.set(name, *value);
    }
    return part;
}

void askRules(const ListedRow &row, const ListContext &context, ListFaults &faults)
{
    // None of these rules asks who lists or when.
    static const auto anybody = PersonId::parse(u"anybody");
    static const Register noRegister;
    for (const RowRule &rule : rowRules()) {
        const json::Object part = partOf(row.body, rule.members);
        if (part.isEmpty())
            continue;
        const Draft draft{*anybody, Instant::fromMilliseconds(0), u"interface.listed"_s, row.id.text(), part};
        if (const auto refusal = rule.refuse({context.job, noRegister, draft, nullptr}))
            faults.add(row.row, rule.column, refusal->sentence);
    }
}

/// The column that specifies a requirement: the field named after it, else the requirements themselves.
QString columnOf(QLatin1String requirement)
{
    for (const Field &field : findAct(u"interface.listed")->fields) {
        if (field.name == requirement || QString(field.name).startsWith(requirement + u'_'))
            return field.name;
    }
    return u"requirements"_s;
}

QString knownRequirements()
{
    QStringList names;
    for (const Requirement &requirement : requirements())
        names << requirement.name;
    return names.join(u", "_s);
}

void checkRequirements(const ListedRow &row, Cells cells, ListFaults &faults)
{
    const auto &names = row.listing.requirements;
    for (auto name = names.begin(); name != names.end(); ++name) {
        const Requirement *requirement = findRequirement(*name);
        if (!requirement)
            faults.add(row.row, u"requirements"_s, tr("There is no requirement \"%1\". Expected: none, or some of %2, separated by |.").arg(*name, knownRequirements()));
        else if (std::find(names.begin(), name, *name) != name)
            faults.add(row.row, u"requirements"_s, tr("The requirement \"%1\" stands twice.").arg(*name));
        else if (const auto why = cells == Cells::Read ? requirement->unmet(row.listing) : std::nullopt)
            faults.add(row.row, columnOf(requirement->name), *why);
    }
}

void checkKind(const ListedRow &row, const ListContext &context, ListFaults &faults)
{
    const Kind *known = context.kinds.find(row.listing.kind);
    if (row.listing.kind.isEmpty() || (known && known->sort == KindSort::Interface))
        return;
    QStringList ids;
    for (const Kind &kind : context.kinds.all()) {
        if (kind.sort == KindSort::Interface)
            ids << kind.id;
    }
    faults.add(row.row, u"kind"_s, tr("There is no kind \"%1\". Expected: one of %2.").arg(row.listing.kind, ids.join(u", "_s)));
}

void checkIds(const std::vector<ListedRow> &rows, const ListContext &context, ListFaults &faults)
{
    QHash<InterfaceId, qint64> rowOf;
    for (const ListedRow &row : rows) {
        if (context.job.item(row.id))
            faults.add(row.row, u"id"_s, tr("The job lists \"%1\" already.").arg(row.id.text()));
        else if (rowOf.contains(row.id))
            faults.add(row.row, u"id"_s, tr("The id \"%1\" stands already on row %2. Expected: each id once.").arg(row.id.text()).arg(rowOf.value(row.id)));
        else
            rowOf.insert(row.id, row.row);
    }
}

void checkAccess(const std::vector<ListedRow> &rows, const ListContext &context, ListFaults &faults)
{
    QSet<InterfaceId> known;
    for (const ListedRow &row : rows)
        known.insert(row.id);
    for (const ListedRow &row : rows) {
        for (const InterfaceId &other : row.listing.access) {
            if (!known.contains(other) && !context.job.item(other))
                faults.add(row.row, u"access"_s, tr("\"%1\" must be off before this one, but neither the list nor the job has it.").arg(other.text()));
        }
        for (const InterfaceId &other : row.listing.dependsOn) {
            if (!known.contains(other) && !context.job.item(other))
                faults.add(row.row, u"depends_on"_s, tr("This one depends on \"%1\", but neither the list nor the job has it.").arg(other.text()));
        }
    }
}

/// Follows access from one waiting row until an id comes round again: `E1, E2, E1`. Among rows that wait for each other
/// there is always a next.
QStringList circleFrom(const ListedRow &start, const QHash<InterfaceId, const ListedRow *> &waiting)
{
    QStringList path;
    const ListedRow *at = &start;
    while (!path.contains(at->id.text())) {
        path << at->id.text();
        const std::vector<InterfaceId> access = namedFirst(at->listing);
        at = waiting.value(*std::find_if(access.begin(), access.end(), [&](const InterfaceId &id) { return waiting.contains(id); }));
    }
    path << at->id.text();
    return path.mid(path.indexOf(at->id.text()));
}

void checkCircles(const std::vector<ListedRow> &rows, ListFaults &faults)
{
    const auto stuck = inOrderOfAccess(rows).waiting;
    QHash<InterfaceId, const ListedRow *> waiting;
    for (const ListedRow &row : stuck)
        waiting.insert(row.id, &row);
    QSet<QString> told;
    for (const ListedRow &row : stuck) {
        const QStringList circle = circleFrom(row, waiting);
        if (told.contains(circle.first()))
            continue;
        for (const QString &id : circle)
            told.insert(id);
        const ListedRow *first = waiting.value(*InterfaceId::parse(circle.first()));
        faults.add(first->row, u"access"_s, tr("Each of these must be off before the one in front of it, or depends on it, in a circle: %1.").arg(circle.join(u", "_s)));
    }
}

void checkTwins(const std::vector<ListedRow> &rows, const ListContext &context, ListFaults &faults)
{
    QHash<QString, int> sizes;
    for (const InterfaceState &item : context.job.items)
        ++sizes[item.listed.twinGroup];
    for (const ListedRow &row : rows)
        ++sizes[row.listing.twinGroup];
    for (const ListedRow &row : rows) {
        if (!row.listing.twinGroup.isEmpty() && sizes.value(row.listing.twinGroup) < 2)
            faults.add(row.row, u"twin_group"_s, tr("The twin group \"%1\" has this interface alone. Expected: two look-alikes or more.").arg(row.listing.twinGroup));
    }
}

/// Two interfaces whose halves are told apart by one designation could be crossed without anybody being able to tell.
void checkHalves(const std::vector<ListedRow> &rows, QString Listing::*half, const QString &column, ListFaults &faults)
{
    QHash<QString, QString> ownerOf;
    for (const ListedRow &row : rows) {
        const QString designation = row.listing.*half;
        if (designation.isEmpty() || !asksFor(row.listing, u"mate"))
            continue;
        if (ownerOf.contains(designation))
            faults.add(row.row, column, tr("\"%1\" is the half of %2 already. Expected: a designation of its own for each half, so that a swap can be seen.").arg(designation, ownerOf.value(designation)));
        else
            ownerOf.insert(designation, row.id.text());
    }
}

} // namespace

void ListFaults::add(qint64 row, const QString &column, const QString &message)
{
    const auto at = m_columns.constFind(column);
    m_errors.push_back({ErrorCode::BadInput, message, {m_file, row, at == m_columns.constEnd() ? std::nullopt : std::optional(*at)}});
}

std::vector<Error> ListFaults::sorted() &&
{
    std::stable_sort(m_errors.begin(), m_errors.end(), [](const Error &a, const Error &b) {
        return std::pair(a.where.row, a.where.column) < std::pair(b.where.row, b.where.column);
    });
    return std::move(m_errors);
}

void checkRow(const ListedRow &row, Cells cells, const ListContext &context, ListFaults &faults)
{
    checkKind(row, context, faults);
    askRules(row, context, faults);
    checkRequirements(row, cells, faults);
    if (cells != Cells::Read)
        return;
    for (const rules::MissingPart &part : rules::missingParts(row.body))
        faults.add(row.row, part.member, part.sentence);
}

void checkTogether(const std::vector<ListedRow> &rows, const ListContext &context, ListFaults &faults)
{
    checkIds(rows, context, faults);
    checkAccess(rows, context, faults);
    checkCircles(rows, faults);
    checkTwins(rows, context, faults);
    checkHalves(rows, &Listing::aircraftHalf, u"aircraft_half"_s, faults);
    checkHalves(rows, &Listing::unitHalf, u"unit_half"_s, faults);
}

} // namespace core
