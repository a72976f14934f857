// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/unlisted.hpp"

#include "core/job/state.hpp"

namespace core {

bool isWithoutDetails(const InterfaceState &item) { return item.unlisted && !item.unlisted->detailed; }

bool isSettled(const InterfaceState &item) { return !isWithoutDetails(item) && !item.toLookUp && !unsettled(item); }

} // namespace core
