// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/manual/pages.hpp"

class QMenuBar;

namespace desktop {

/// The keys as the menus and the acts have them now.
manual::Page shortcutsPage(const QMenuBar &menus);

} // namespace desktop
