// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QString>

class QDialog;
class QWidget;

namespace desktop {

/// Names the page of the manual that tells of what is done in that dialog. The main window opens it when F1 is pressed there.
void tellHelpPage(QDialog &dialog, QLatin1String page);

/// The page that was named for that window; empty where none was, as for a question of yes or no.
QString helpPageOf(const QWidget &window);

} // namespace desktop
