// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/label_size.hpp"

#include <algorithm>

namespace labels {

using namespace Qt::StringLiterals;

const std::vector<LabelSize> &labelSizes()
{
    using record::Face;
    static const std::vector<LabelSize> all = {
        {"70x37"_L1, 70, 37, 5, Face::Title, Face::Text},
        {"50x25"_L1, 50, 25, 2, Face::Heading, Face::Cell},
        {"105x74"_L1, 105, 74, 6, Face::Title, Face::Heading},
    };
    return all;
}

const LabelSize *findLabelSize(QStringView name)
{
    const auto &all = labelSizes();
    const auto at = std::find_if(all.begin(), all.end(), [&](const LabelSize &size) { return name.compare(size.name, Qt::CaseInsensitive) == 0; });
    return at == all.end() ? nullptr : &*at;
}

} // namespace labels
