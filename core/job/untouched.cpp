// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/untouched.hpp"

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

bool waitsForAgreement(const InterfaceState &item) { return item.notApplicable && !item.notApplicable->agreed && (item.listed.critical || item.left.undoing); }

bool isNotApplicable(const InterfaceState &item) { return item.notApplicable && !waitsForAgreement(item); }

bool isConfirmedUndisturbed(const InterfaceState &item) { return !item.removal && item.undisturbed; }

std::optional<qint64> letAloneWith(const InterfaceState &item)
{
    if (isNotApplicable(item))
        return item.notApplicable->agreed ? std::max(item.notApplicable->mark.seq, item.notApplicable->agreed->seq) : item.notApplicable->mark.seq;
    if (!isConfirmedUndisturbed(item) || unsettled(item) || item.toLookUp)
        return std::nullopt;
    return std::max(item.undisturbed->seq, item.settled ? item.settled->seq : 0);
}

} // namespace core
