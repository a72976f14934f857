// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/demo/cast.hpp"

#include <QCoreApplication>

#include "app/demo/table.hpp"

namespace demo {

namespace {

using namespace Qt::StringLiterals;

core::Result<CastMember> memberOf(const TableRow &row)
{
    const auto id = core::PersonId::parse(row.text(u"id"_s));
    std::vector<core::Authority> authorities;
    bool known = id.has_value();
    for (const QString &word : row.words(u"authorities"_s)) {
        const auto authority = core::parseAuthority(word);
        known = known && authority;
        if (authority)
            authorities.push_back(*authority);
    }
    if (!known) {
        return core::failure(core::ErrorCode::BadInput, QCoreApplication::translate("Demo", "A person of the demo has no id or an unknown authority."),
                             {u"people.csv"_s, row.row, std::nullopt});
    }
    return CastMember{*id, row.text(u"name"_s), row.text(u"role"_s), row.text(u"pin"_s), std::move(authorities), row.text(u"identity"_s)};
}

} // namespace

core::Result<std::vector<CastMember>> cast()
{
    const auto rows = scenarioTable(u"people.csv"_s);
    if (!rows)
        return core::failure(rows.error());
    std::vector<CastMember> members;
    for (const TableRow &row : *rows) {
        auto member = memberOf(row);
        if (!member)
            return core::failure(member.error());
        members.push_back(*std::move(member));
    }
    return members;
}

} // namespace demo
