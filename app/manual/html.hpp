// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/manual/pages.hpp"

namespace manual {

/// One page as an HTML file of its own: links to pages of the manual lead to their files. Needs a QGuiApplication.
QByteArray htmlOf(const Page &page);

/// Writes all pages into the folder, made when missing; `index.html` is where to begin. Io, NoSpace: with the file's name.
core::Result<void> writeHtml(const std::vector<Page> &pages, const QString &folder);

} // namespace manual
