// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculations/calculation.hpp"

#include <algorithm>

namespace core {

const std::vector<Calculation> &calculations()
{
    static const std::vector<Calculation> all = [] {
        std::vector<Calculation> list;
        for (auto *rows : {&torqueCalculations, &tighteningCalculations, &bondingCalculations, &leakCalculations, &figureCalculations, &unitCalculations}) {
            for (Calculation &calculation : rows())
                list.push_back(std::move(calculation));
        }
        return list;
    }();
    return all;
}

const Calculation *findCalculation(QStringView name)
{
    const auto &all = calculations();
    const auto at = std::find_if(all.begin(), all.end(), [name](const Calculation &one) { return one.name == name; });
    return at == all.end() ? nullptr : &*at;
}

} // namespace core
