// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QtGlobal>

#include <functional>

namespace package {

/// Told how much of it all is done; false stops.
using Going = std::function<bool(qint64 done, qint64 all)>;

} // namespace package
