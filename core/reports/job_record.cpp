// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/job_record.hpp"

#include <set>

namespace core {

namespace {

/// The register at each of the sequence numbers, in one walk. A number beyond the last entry gets the register as it
/// stands; that such an entry is missing is for verify to say.
std::map<qint64, Register> registersAt(const std::set<qint64> &pinned, const std::vector<Entry> &reg)
{
    std::map<qint64, Register> registers;
    Register state;
    std::size_t next = 0;
    for (const qint64 seq : pinned) {
        for (; next < reg.size() && reg[next].said.seq <= seq; ++next)
            fold(state, reg[next].said, reg[next].hash);
        registers.insert({seq, state});
    }
    return registers;
}

} // namespace

JobRecord::JobRecord(std::vector<Entry> job, const std::vector<Entry> &reg, Kinds kinds)
    : m_entries(std::move(job)), m_kinds(std::move(kinds))
{
    std::set<qint64> pinned{0};
    for (const Entry &entry : m_entries) {
        m_fold.take(entry.said, entry.hash);
        if (entry.said.reg)
            pinned.insert(entry.said.reg->seq);
    }
    m_registers = registersAt(pinned, reg);
}

const Entry *JobRecord::entry(qint64 seq) const
{
    const bool isThere = seq >= 1 && seq <= static_cast<qint64>(m_entries.size());
    return isThere ? &m_entries[static_cast<std::size_t>(seq - 1)] : nullptr;
}

const Register &JobRecord::registerAt(qint64 seq) const
{
    const Entry *at = entry(seq);
    return m_registers.at(at && at->said.reg ? at->said.reg->seq : 0);
}

const Kind *JobRecord::kindOf(const InterfaceId &id) const
{
    const InterfaceState *item = job().item(id);
    return item ? m_kinds.find(item->listed.kind) : nullptr;
}

} // namespace core
