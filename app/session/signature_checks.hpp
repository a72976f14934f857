// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <deque>
#include <future>
#include <vector>

#include "core/ledger/verify.hpp"

namespace session {

/// Checks signatures on all cores while their entries are read and their rules replayed: the signatures take ten times as
/// long as all the rest. When the others cannot keep up, the caller's own thread checks too.
class SignatureChecks {
public:
    void add(core::SignatureClaim &&claim);
    /// Waits for what is under way. The faults of all claims, in no order.
    std::vector<core::Fault> finish();

private:
    using Claims = std::vector<core::SignatureClaim>;
    using Faults = std::vector<core::Fault>;
    void collect(const Faults &faults);
    void collectWhatIsDone();

    Claims m_filling;
    std::deque<std::future<Faults>> m_underWay;
    Faults m_faults;
};

} // namespace session
