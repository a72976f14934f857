// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/register/register.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Register", text); }

struct AuthorityRow {
    Authority authority;
    QLatin1String text;
};

constexpr AuthorityRow authorityRows[] = {
    {Authority::Administer, QLatin1String("administer")}, {Authority::Work, QLatin1String("work")},
    {Authority::Lead, QLatin1String("lead")},             {Authority::Inspect, QLatin1String("inspect")},
    {Authority::Overrule, QLatin1String("overrule")},     {Authority::Release, QLatin1String("release")},
};

bool covers(const std::vector<QString> &scope, const std::optional<QString> &wanted)
{
    return scope.empty() || !wanted || std::find(scope.begin(), scope.end(), *wanted) != scope.end();
}

bool coversMoment(const Authorisation &given, Instant at)
{
    const QDate day = at.utcDate();
    return given.from <= day && (!given.until || day <= *given.until) && (!given.withdrawn || at < *given.withdrawn);
}

bool covers(const Authorisation &given, const Need &need)
{
    return given.authority == need.authority && covers(given.kinds, need.kind) && covers(given.aircraftTypes, need.aircraftType);
}

} // namespace

QString authorityText(Authority authority)
{
    for (const AuthorityRow &row : authorityRows) {
        if (row.authority == authority)
            return row.text;
    }
    Q_UNREACHABLE();
}

std::optional<Authority> parseAuthority(QStringView text)
{
    for (const AuthorityRow &row : authorityRows) {
        if (row.text == text)
            return row.authority;
    }
    return std::nullopt;
}

const std::vector<Authority> &allAuthorities()
{
    static const std::vector<Authority> all = [] {
        std::vector<Authority> list;
        for (const AuthorityRow &row : authorityRows)
            list.push_back(row.authority);
        return list;
    }();
    return all;
}

const Person *Register::person(const PersonId &id) const
{
    const auto at = people.find(id);
    return at == people.end() ? nullptr : &at->second;
}

const Tool *Register::tool(const ToolId &id) const
{
    const auto at = tools.find(id);
    return at == tools.end() ? nullptr : &at->second;
}

QString Register::nameOf(const PersonId &id) const
{
    const Person *known = person(id);
    return known ? known->name : id.text();
}

const Authorisation *authorisationFor(const Register &reg, const PersonId &person, const Need &need)
{
    for (const auto &[id, given] : reg.authorisations) {
        if (given.person == person && covers(given, need) && coversMoment(given, need.at))
            return &given;
    }
    return nullptr;
}

bool mayAdminister(const Register &reg, const PersonId &person, Instant at)
{
    return reg.root == person || authorisationFor(reg, person, {.authority = Authority::Administer, .at = at});
}

QString whyNotAuthorised(const Register &reg, const PersonId &person, const Need &need)
{
    const QString name = reg.nameOf(person);
    const Authorisation *nearest = nullptr;
    bool otherScope = false;
    for (const auto &[id, given] : reg.authorisations) {
        if (given.person != person || given.authority != need.authority)
            continue;
        if (covers(given, need))
            nearest = &given;
        else
            otherScope = true;
    }
    const QString what = authorityText(need.authority);
    if (nearest && nearest->withdrawn)
        return tr("%1's authorisation to %2 was withdrawn on %3.").arg(name, what, nearest->withdrawn->utcDate().toString(Qt::ISODate));
    if (nearest && need.at.utcDate() < nearest->from)
        return tr("%1's authorisation to %2 begins on %3.").arg(name, what, nearest->from.toString(Qt::ISODate));
    if (nearest && nearest->until)
        return tr("%1's authorisation to %2 ran out on %3.").arg(name, what, nearest->until->toString(Qt::ISODate));
    if (otherScope)
        return tr("%1's authorisation to %2 does not cover this kind of interface or this aircraft type.").arg(name, what);
    return tr("%1 holds no authorisation to %2.").arg(name, what);
}

QString torqueToolTypeText(TorqueToolType type)
{
    switch (type) {
    case TorqueToolType::Indicating: return QStringLiteral("indicating");
    case TorqueToolType::Setting: return QStringLiteral("setting");
    }
    Q_UNREACHABLE();
}

std::optional<TorqueToolType> parseTorqueToolType(QStringView text)
{
    for (const TorqueToolType type : {TorqueToolType::Indicating, TorqueToolType::Setting}) {
        if (text == torqueToolTypeText(type))
            return type;
    }
    return std::nullopt;
}

const Doubt *doubtOn(const Tool &tool, QDate day)
{
    for (const Doubt &doubt : tool.doubts) {
        if (day > doubt.after && day <= doubt.at.utcDate())
            return &doubt;
    }
    return nullptr;
}

const Doubt *openDoubt(const Tool &tool)
{
    if (tool.doubts.empty())
        return nullptr;
    const Doubt &last = tool.doubts.back();
    for (const Calibration &calibration : tool.calibrations) {
        if (calibration.on >= last.at.utcDate())
            return nullptr;
    }
    return &last;
}

std::optional<Decimal> deviationOn(const Tool &tool, QDate day)
{
    const Calibration *calibration = calibrationOn(tool, day);
    return calibration && calibration->deviation ? calibration->deviation : tool.deviation;
}

const KeyDoubt *keyDoubtAt(const Person &person, const Instant &at)
{
    const auto covers = [&](const KeyDoubt &doubt) { return doubt.since <= at && at <= doubt.until; };
    const auto found = std::find_if(person.keyDoubts.begin(), person.keyDoubts.end(), covers);
    return found == person.keyDoubts.end() ? nullptr : &*found;
}

const Calibration *calibrationOn(const Tool &tool, QDate day)
{
    // The newest that had been made by that day governs: a later, shorter interval replaces an earlier, longer one.
    for (auto at = tool.calibrations.rbegin(); at != tool.calibrations.rend(); ++at) {
        if (at->on <= day)
            return day <= at->due ? &*at : nullptr;
    }
    return nullptr;
}

} // namespace core
