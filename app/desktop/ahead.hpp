// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <future>

#include "app/desktop/store_place.hpp"

// What takes milliseconds of the program's start and needs no window, in a thread of its own while the window is made.

namespace desktop {

/// Reads which fonts this computer has. The toolkit does so before it measures its first letter: wait for this before that, or both do.
std::future<void> readFontsAhead();

/// Opens a store as openPlace() does, and sums up its jobs. From `get()` on it belongs to the thread that got it. Not valid() where the path is a
/// record package's.
std::future<core::Result<StorePlace>> openAhead(const QString &path, const SessionMaker &maker);

} // namespace desktop
