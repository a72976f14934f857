// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

const std::vector<Row> &rows()
{
    static const std::vector<Row> all = {
        {"append"_L1, "signing one act (rules, canonical form, hash, signature, store, fold) against inserting the same bytes", &measureAppend},
        {"import"_L1, "signing a list in batches of 50 against inserting the same bytes in batches", &measureImport},
        {"open"_L1, "opening a store and folding its job, chain checked, against a SELECT of the same rows", &measureOpen},
        {"verify"_L1, "verifying a store against checking its signatures alone", &measureVerify},
        {"package"_L1, "exporting a job's package against writing its bytes, and verifying it against checking its signatures alone", &measurePackage},
        {"filter"_L1, "a keystroke in the list's filter, and a page further, until its rows are painted, against painting the same rows again", &measureFilter},
        {"start"_L1, "first paint and memory of the program with a store open, against an empty window", &measureStart},
        {"where-used"_L1, "all entries that name a tool, ever and between two dates, against the same join in the bare layout", &measureWhereUsed},
        {"size"_L1, "the store's file against the bare layout of the same entries", &measureSize},
        {"fairness"_L1, "8 and 20 programs appending to one store side by side", &measureFairness},
    };
    return all;
}

} // namespace bench
