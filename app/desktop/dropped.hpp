// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/scan/scanned.hpp"

class QMimeData;

namespace desktop {

/// What may be dropped on the window.
enum class Dropped { Nothing, Photos, List, StoreOrPackage };

/// Photos count only while a job is shown: elsewhere there is nothing that they could belong to. Every other single file is taken for a store or a
/// record package, and whoever opens it says so when it is neither.
Dropped whatIsDropped(const QMimeData &data, Shown shown);

} // namespace desktop
