// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCoreApplication>

#include <functional>
#include <map>

#include "core/acts/act.hpp"
#include "core/acts/reopen.hpp"

namespace core {

const std::vector<Act> &acts()
{
    static const std::vector<Act> all = [] {
        std::vector<Act> list;
        for (auto *rows : {&jobActs, &interfaceActs, &photoActs, &conditionActs, &breakPointActs, &unlistedActs, &untouchedActs, &measuringActs, &figureActs, &temporaryActs, &holdActs, &walkRoundActs, &unitActs, &testActs, &accessoryActs, &tagActs, &toolActs, &twinActs, &inspectionActs, &reinspectionActs, &revisionActs, &blankActs, &followUpActs, &findingActs, &handoverActs, &linkActs, &registerActs}) {
            for (Act &act : rows())
                list.push_back(std::move(act));
        }
        return list;
    }();
    return all;
}

const Act *findAct(QStringView kind)
{
    // Asked several times of every entry, so the name that is looked for is not copied.
    static const auto byKind = [] {
        std::map<QString, const Act *, std::less<>> index;
        for (const Act &act : acts())
            index.emplace(act.kind, &act);
        return index;
    }();
    const auto at = byKind.find(kind);
    return at == byKind.end() ? nullptr : at->second;
}

QString meaningInWords(QStringView meaning)
{
    if (meaning == u"performed")
        return QCoreApplication::translate("Meaning", "I did this work and it is complete as stated.");
    if (meaning == u"inspected")
        return QCoreApplication::translate("Meaning", "I inspected this myself and had no hand in the work.");
    if (meaning == u"confirmed")
        return QCoreApplication::translate("Meaning", "I looked at this myself, and somebody else had undone it.");
    if (meaning == u"seen")
        return QCoreApplication::translate("Meaning", "I looked at this myself, and it is as I state.");
    if (meaning == u"reinspected")
        return QCoreApplication::translate("Meaning", "I had a hand in this work, and inspected it again myself: nobody else could.");
    if (meaning == u"passed")
        return QCoreApplication::translate("Meaning", "I looked at what this hold point asks for, and it is so.");
    if (meaning == u"released")
        return QCoreApplication::translate("Meaning", "I release this job: every item is restored and inspected, or stands as undisturbed, not applicable or given over to a linked job.");
    return QCoreApplication::translate("Meaning", "I state this as a record of the job.");
}

QStringList noCautions() { return {}; }

Field field(QLatin1String name, FieldType type, Needed needed, const char *label, QLatin1String refersTo)
{
    return {name, type, needed, label, {}, refersTo};
}

Field unitField(QLatin1String name, Dimension dimension, Needed needed, const char *label)
{
    return {name, FieldType::Unit, needed, label, {}, {}, dimension};
}

Field quantity(QLatin1String name, Dimension dimension, Needed needed, const char *label)
{
    return {name, FieldType::Quantity, needed, label, {}, {}, dimension};
}

Field records(QLatin1String name, Needed needed, const char *label, std::vector<Field> columns)
{
    return {name, FieldType::Records, needed, label, {}, {}, std::nullopt, std::move(columns)};
}

Field choice(QLatin1String name, Needed needed, const char *label, std::vector<QLatin1String> choices)
{
    return {name, FieldType::Choice, needed, label, std::move(choices), {}};
}

Mark markOf(const Statement &said)
{
    return {said.seq, said.author, said.at};
}

InterfaceState *itemOf(JobState &job, const Statement &said)
{
    const auto id = InterfaceId::parse(said.subject.value_or(QString()));
    return id ? job.item(*id) : nullptr;
}

std::vector<const Unit *> unitsFor(const Field &field)
{
    if (field.dimension)
        return unitsOf(*field.dimension);
    std::vector<const Unit *> all;
    for (const Unit &unit : units())
        all.push_back(&unit);
    return all;
}

std::optional<Quantity> quantityIn(const json::Object &body, QStringView name, Dimension dimension)
{
    const auto read = Quantity::read(body.text(name), dimension);
    return read ? std::optional(*read) : std::nullopt;
}

std::vector<PersonId> peopleIn(const json::Object &body, QStringView name)
{
    std::vector<PersonId> people;
    for (const QString &text : body.texts(name)) {
        if (const auto id = PersonId::parse(text))
            people.push_back(*id);
    }
    return people;
}

std::vector<InterfaceId> interfacesIn(const json::Object &body, QStringView name)
{
    std::vector<InterfaceId> ids;
    for (const QString &text : body.texts(name)) {
        if (const auto id = InterfaceId::parse(text))
            ids.push_back(*id);
    }
    return ids;
}

void addActors(InterfaceState &item, const Statement &said)
{
    item.actors.insert(said.author);
    for (const PersonId &helper : peopleIn(said.body, u"helpers"))
        item.actors.insert(helper);
    // No rule lets work follow an acceptance, but a struck disturbance can leave it so.
    takeBackAcceptances(item);
    item.stopped.reset(); // somebody works on it again
}

} // namespace core
