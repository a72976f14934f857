// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/where_used.hpp"

#include <map>

#include "core/ledger/canonical.hpp"

namespace session {

using namespace Qt::StringLiterals;

const std::vector<QLatin1String> &wantedSorts()
{
    static const std::vector<QLatin1String> all = {"person"_L1, "tool"_L1, "part"_L1, "batch"_L1, "serial"_L1, "certificate"_L1};
    return all;
}

core::Result<std::vector<UseOf>> whereUsed(Session &session, const db::Wanted &wanted)
{
    const auto jobs = session.jobs();
    if (!jobs)
        return core::failure(jobs.error());
    std::map<QString, QString> workOrders;
    for (const JobRow &row : *jobs)
        workOrders.emplace(row.ledger.text(), row.summary.workOrder);
    std::vector<UseOf> uses;
    std::optional<core::Error> trouble;
    const auto done = session.store().whereUsed().forEach(wanted, [&](const core::LedgerId &ledger, const db::StoredEntryView &entry) {
        auto said = core::parseStatement(entry.bytes);
        if (!said) {
            trouble = said.error();
            return db::Walk::Stop;
        }
        const auto at = workOrders.find(ledger.text());
        uses.push_back({at == workOrders.end() ? std::nullopt : std::optional(at->second), *std::move(said)});
        return db::Walk::On;
    });
    if (!done || trouble)
        return core::failure(trouble ? *trouble : done.error());
    return uses;
}

} // namespace session
