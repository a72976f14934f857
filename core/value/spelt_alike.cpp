// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/spelt_alike.hpp"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace core {

qsizetype spellingDistance(QStringView a, QStringView b)
{
    // Three rows of the table: of the character before the last, of the last, and of this one.
    const auto width = static_cast<std::size_t>(b.size()) + 1;
    std::vector<qsizetype> beforeLast(width);
    std::vector<qsizetype> last(width);
    std::vector<qsizetype> row(width);
    for (std::size_t j = 0; j < width; ++j)
        row[j] = static_cast<qsizetype>(j);
    for (qsizetype i = 1; i <= a.size(); ++i) {
        std::swap(beforeLast, last);
        std::swap(last, row);
        row[0] = i;
        for (qsizetype j = 1; j <= b.size(); ++j) {
            const auto at = static_cast<std::size_t>(j);
            const qsizetype exchanged = last[at - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
            row[at] = std::min({last[at] + 1, row[at - 1] + 1, exchanged});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[at] = std::min(row[at], beforeLast[at - 2] + 1);
        }
    }
    return row.back();
}

std::vector<QString> speltAlike(const QString &typed, const std::vector<QString> &known)
{
    constexpr std::size_t most = 5;
    constexpr qsizetype longWord = 6;
    const QString plain = typed.toCaseFolded();
    const qsizetype limit = plain.size() < longWord ? 1 : 2;
    std::vector<std::pair<qsizetype, QString>> near;
    for (const QString &one : known) {
        if (one == typed || std::abs(one.size() - typed.size()) > limit)
            continue;
        if (const qsizetype distance = spellingDistance(plain, one.toCaseFolded()); distance <= limit)
            near.emplace_back(distance, one);
    }
    std::sort(near.begin(), near.end());
    std::vector<QString> alike;
    for (const auto &one : near) {
        if (alike.size() < most)
            alike.push_back(one.second);
    }
    return alike;
}

} // namespace core
