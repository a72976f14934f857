// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/help_page.hpp"

#include <QDialog>
#include <QVariant>

namespace desktop {

namespace {

constexpr const char *pageProperty = "helpPage";
constexpr const char *sectionProperty = "helpSection";

} // namespace

void tellHelpPage(QDialog &dialog, QLatin1String page, QLatin1String section)
{
    dialog.setProperty(pageProperty, QString(page));
    dialog.setProperty(sectionProperty, QString(section));
}

QString helpPageOf(const QWidget &window) { return window.property(pageProperty).toString(); }
QString helpSectionOf(const QWidget &window) { return window.property(sectionProperty).toString(); }

} // namespace desktop
