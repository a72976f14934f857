// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <algorithm>

#include "core/register/register.hpp"

namespace core {

namespace {

QDate dateOf(const json::Object &body, QStringView name) { return QDate::fromString(body.text(name), Qt::ISODate); }

std::optional<QDate> optionalDateOf(const json::Object &body, QStringView name)
{
    const QDate date = dateOf(body, name);
    return date.isValid() ? std::optional(date) : std::nullopt;
}

void enrol(Register &reg, const Statement &said)
{
    const auto id = PersonId::parse(said.subject.value_or(QString()));
    const auto key = PublicKey::parse(said.body.text(u"public_key"));
    if (id && key)
        reg.people.insert({*id, Person{*id, said.body.text(u"name"), *key, said.at, {}}});
}

void found(Register &reg, const Statement &said)
{
    enrol(reg, said);
    reg.root = PersonId::parse(said.subject.value_or(QString()));
    reg.organisation = said.body.text(u"organisation");
    reg.ledger = said.ledger;
}

void doubtKey(Person &person, const Statement &said)
{
    if (const auto since = Instant::parseLedger(said.body.text(u"since")))
        person.keyDoubts.push_back({*since, said.at, said.body.text(u"reason")});
}

void stopKey(Register &reg, const Statement &said)
{
    const auto id = PersonId::parse(said.subject.value_or(QString()));
    if (!id || !reg.people.contains(*id))
        return;
    doubtKey(reg.people.at(*id), said);
    reg.people.at(*id).keyStopped = said.at;
}

void replaceKey(Register &reg, const Statement &said)
{
    const auto id = PersonId::parse(said.subject.value_or(QString()));
    const auto key = PublicKey::parse(said.body.text(u"public_key"));
    if (!id || !key || !reg.people.contains(*id))
        return;
    Person &person = reg.people.at(*id);
    person.formerKeys.push_back(person.key);
    person.key = *key;
    person.keyStopped.reset();
    doubtKey(person, said);
}

void grant(Register &reg, const Statement &said)
{
    const auto id = AuthorisationId::parse(said.subject.value_or(QString()));
    const auto person = PersonId::parse(said.body.text(u"person"));
    const auto authority = parseAuthority(said.body.text(u"authority"));
    if (!id || !person || !authority)
        return;
    reg.authorisations.insert({*id, Authorisation{*id, *person, *authority, said.body.texts(u"kinds"),
                                                  said.body.texts(u"aircraft_types"), dateOf(said.body, u"from"),
                                                  optionalDateOf(said.body, u"until"), std::nullopt,
                                                  said.body.text(u"reference")}});
}

void withdrawAuthorisation(Register &reg, const Statement &said)
{
    const auto id = AuthorisationId::parse(said.subject.value_or(QString()));
    if (id && reg.authorisations.contains(*id))
        reg.authorisations.at(*id).withdrawn = said.at;
}

void registerTool(Register &reg, const Statement &said)
{
    const auto id = ToolId::parse(said.subject.value_or(QString()));
    if (!id)
        return;
    const QString unit = said.body.text(u"unit");
    Tool tool{*id, said.body.text(u"name"), Quantity::parse(said.body.text(u"range_min"), unit), Quantity::parse(said.body.text(u"range_max"), unit), {}, std::nullopt};
    tool.graduation = Quantity::parse(said.body.text(u"graduation"), unit);
    tool.deviation = Decimal::parse(said.body.text(u"deviation"));
    tool.deviationSource = said.body.text(u"deviation_source");
    tool.torqueType = parseTorqueToolType(said.body.text(u"torque_type"));
    if (const auto length = Quantity::read(said.body.text(u"length"), Dimension::Length))
        tool.length = *length;
    reg.tools.insert({*id, std::move(tool)});
}

void calibrate(Register &reg, const Statement &said)
{
    const auto id = ToolId::parse(said.subject.value_or(QString()));
    if (!id || !reg.tools.contains(*id))
        return;
    auto &all = reg.tools.at(*id).calibrations;
    all.push_back({dateOf(said.body, u"on"), dateOf(said.body, u"due"), said.body.text(u"certificate"), Decimal::parse(said.body.text(u"deviation"))});
    std::stable_sort(all.begin(), all.end(), [](const Calibration &a, const Calibration &b) { return a.on < b.on; });
}

void withdrawTool(Register &reg, const Statement &said)
{
    const auto id = ToolId::parse(said.subject.value_or(QString()));
    if (id && reg.tools.contains(*id))
        reg.tools.at(*id).withdrawn = said.at;
}

void doubtTool(Register &reg, const Statement &said)
{
    const auto id = ToolId::parse(said.subject.value_or(QString()));
    if (id && reg.tools.contains(*id))
        reg.tools.at(*id).doubts.push_back({dateOf(said.body, u"after"), said.at, said.body.text(u"found"), said.body.text(u"certificate")});
}

struct Fold {
    QLatin1String kind;
    void (*take)(Register &, const Statement &);
};

constexpr Fold folds[] = {
    {QLatin1String("register.founded"), &found},
    {QLatin1String("person.enrolled"), &enrol},
    {QLatin1String("key.replaced"), &replaceKey},
    {QLatin1String("key.stopped"), &stopKey},
    {QLatin1String("authorisation.granted"), &grant},
    {QLatin1String("authorisation.withdrawn"), &withdrawAuthorisation},
    {QLatin1String("tool.registered"), &registerTool},
    {QLatin1String("tool.calibrated"), &calibrate},
    {QLatin1String("tool.withdrawn"), &withdrawTool},
    {QLatin1String("tool.doubted"), &doubtTool},
};

} // namespace

void fold(Register &reg, const Statement &said, const Digest &hash)
{
    for (const Fold &one : folds) {
        if (one.kind == said.kind)
            one.take(reg, said);
    }
    if (said.seq == 1)
        reg.fingerprint = hash;
    reg.head = {said.seq, hash};
    reg.lastAt = said.at;
}

} // namespace core
