// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>

#include <vector>

#include "app/desktop/pages/page.hpp"

namespace desktop {

/// One page of the job window, in one line.
struct PageLine {
    QLatin1String name;
    const char *title; ///< marked for translation in context "Page", with its mnemonic
    const char *says;  ///< what one finds there; the same context
    QLatin1String icon; ///< its file in resources/icons, without ending
    const char *shortcut;
    Page *(*make)(const PageTools &, QWidget *parent);
    /// How many things wait there; 0 shows nothing.
    qsizetype (*waiting)(const PageTools &);
    QLatin1String manual; ///< the page of the manual that tells of it
};

const std::vector<PageLine> &pages();

} // namespace desktop
