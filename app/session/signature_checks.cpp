// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/signature_checks.hpp"

#include <chrono>
#include <thread>
#include <utility>

namespace session {

namespace {

/// About 5 ms of work: long beside starting a thread, short beside somebody waiting for an answer to Cancel.
constexpr std::size_t batchSize = 128;

std::vector<core::Fault> faultsOf(const std::vector<core::SignatureClaim> &claims)
{
    std::vector<core::Fault> faults;
    for (const core::SignatureClaim &claim : claims) {
        if (auto fault = core::faultOf(claim))
            faults.push_back(*std::move(fault));
    }
    return faults;
}

} // namespace

void SignatureChecks::add(core::SignatureClaim &&claim)
{
    m_filling.push_back(std::move(claim));
    if (m_filling.size() < batchSize)
        return;
    collectWhatIsDone();
    const Claims batch = std::exchange(m_filling, {});
    if (m_underWay.size() < std::thread::hardware_concurrency())
        m_underWay.push_back(std::async(std::launch::async | std::launch::deferred, [batch] { return faultsOf(batch); }));
    else
        collect(faultsOf(batch));
}

std::vector<core::Fault> SignatureChecks::finish()
{
    collect(faultsOf(std::exchange(m_filling, {})));
    for (; !m_underWay.empty(); m_underWay.pop_front())
        collect(m_underWay.front().get());
    return std::exchange(m_faults, {});
}

void SignatureChecks::collect(const Faults &faults) { m_faults.insert(m_faults.end(), faults.begin(), faults.end()); }

void SignatureChecks::collectWhatIsDone()
{
    // A batch that was put off for want of a thread runs here, now.
    while (!m_underWay.empty() && m_underWay.front().wait_for(std::chrono::seconds(0)) != std::future_status::timeout) {
        collect(m_underWay.front().get());
        m_underWay.pop_front();
    }
}

} // namespace session
