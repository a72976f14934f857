// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

class QWidget;

namespace desktop {

/// Tells assistive tools that a widget that draws itself is a picture; of itself they only know that something is there. Before the
/// widget is shown.
void tellPicture(QWidget &widget);

} // namespace desktop
