// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/help_page.hpp"

#include <QDialog>
#include <QVariant>

namespace desktop {

namespace {

constexpr const char *property = "helpPage";

} // namespace

void tellHelpPage(QDialog &dialog, QLatin1String page) { dialog.setProperty(property, QString(page)); }

QString helpPageOf(const QWidget &window) { return window.property(property).toString(); }

} // namespace desktop
