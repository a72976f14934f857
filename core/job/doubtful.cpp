// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/doubtful.hpp"

#include <QCoreApplication>

namespace core {

namespace {

void look(std::vector<DoubtfulReading> &all, const ToolId &id, const Mark &mark, const Register &reg)
{
    const Tool *tool = reg.tool(id);
    const Doubt *doubt = tool ? doubtOn(*tool, mark.at.utcDate()) : nullptr;
    if (doubt)
        all.push_back({id, mark.seq, doubt->found});
}

} // namespace

std::vector<DoubtfulReading> doubtfulReadings(const InterfaceState &item, const Register &reg)
{
    std::vector<DoubtfulReading> all;
    for (const TorqueReading &reading : item.torque)
        look(all, reading.tool, reading.mark, reg);
    if (item.bonding)
        look(all, item.bonding->tool, item.bonding->mark, reg);
    return all;
}

std::optional<QString> whyInDoubt(const InterfaceState &item, const Register &reg)
{
    const auto all = doubtfulReadings(item, reg);
    if (all.empty())
        return std::nullopt;
    return QCoreApplication::translate("LooseEnd", "Measured in entry %1 with %2, which was found out of tolerance later: %3 Mark the item disturbed, and measure it again with another tool.")
        .arg(all.front().seq)
        .arg(all.front().tool.text(), all.front().found);
}

} // namespace core
