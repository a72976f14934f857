// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QLatin1String>
#include <QStringView>

#include <vector>

#include "app/record/typeface.hpp"

namespace labels {

/// One size of label. All lengths in millimetres.
struct LabelSize {
    QLatin1String name; ///< `70x37`, width first
    double width;
    double height;
    double rim;             ///< left free on all sides: printers do not reach the edge of the paper, and cuts go astray
    record::Face largestId; ///< the id is set in this face, or in a smaller one where it is long
    record::Face words;     ///< all else
};

/// The first is the one that is taken when none is named.
const std::vector<LabelSize> &labelSizes();

/// By its name, in any case; nullptr for none of ours.
const LabelSize *findLabelSize(QStringView name);

} // namespace labels
