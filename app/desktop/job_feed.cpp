// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/job_feed.hpp"

#include <algorithm>
#include <iterator>

#include "core/job/loose_ends.hpp"

namespace desktop {

namespace {

/// Which linked jobs a job saw, and how far each had come.
std::vector<core::LinkedHead> sawOthers(const core::JobState &job)
{
    std::vector<core::LinkedHead> heads;
    for (const auto &[ledger, seen] : job.others.byLedger)
        heads.push_back({ledger, seen.head});
    return heads;
}

} // namespace

Touched difference(const core::JobState &before, const core::JobState &after)
{
    Touched touched;
    touched.list = before.items.size() != after.items.size();
    for (const core::InterfaceState &item : after.items) {
        const core::InterfaceState *old = before.item(item.listed.id);
        if (!old)
            touched.list = true;
        else if (!(*old == item))
            touched.items.insert(item.listed.id);
    }
    touched.others = before.lines.size() != after.lines.size() || sawOthers(before) != sawOthers(after);
    return touched;
}

core::LooseEnds JobFeed::looseEndsOf(const core::InterfaceId &item) const
{
    return core::looseEndsOf(m_looseEnds, item);
}

void JobFeed::tellPersonChanged()
{
    Touched touched;
    touched.person = true;
    if (m_state)
        emit changed(touched);
}

void JobFeed::take(std::shared_ptr<const core::JobState> state, const core::Series<core::Statement> &said, const core::Register &reg)
{
    const bool otherRegister = !(reg.head == m_register.head);
    if (state == m_state && !otherRegister)
        return;
    const auto before = std::exchange(m_state, std::move(state));
    if (otherRegister)
        m_register = reg;
    m_said = said;
    m_looseEnds = m_state ? core::looseEnds(*m_state, m_register) : core::LooseEnds();

    const bool sameJob = before && m_state && before->ledger == m_state->ledger;
    if (!sameJob) {
        emit jobChanged();
        return;
    }
    Touched touched = before == m_state ? Touched() : difference(*before, *m_state);
    touched.reg = otherRegister;
    if (touched.list || touched.reg || touched.others || !touched.items.isEmpty())
        emit changed(touched);
}

} // namespace desktop
