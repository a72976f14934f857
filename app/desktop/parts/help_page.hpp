// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

class QDialog;
class QWidget;

namespace desktop {

/// A place in the manual.
struct HelpPlace {
    QString page;
    QString section{}; ///< as manual::sectionName has it; empty: the page from its top
};

/// Names the page of the manual that tells of what is done in that dialog, and its section where it has one of its own. The main window opens it
/// when F1 is pressed there.
void tellHelpPage(QDialog &dialog, QLatin1String page, QLatin1String section = {});

/// The page that was named for that window; empty where none was, as for a question of yes or no.
QString helpPageOf(const QWidget &window);
/// And the section there; empty where none was.
QString helpSectionOf(const QWidget &window);

} // namespace desktop
