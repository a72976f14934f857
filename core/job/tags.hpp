// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>
#include <vector>

#include "core/job/mark.hpp"

namespace core {

/// Numbered tags that were issued to the job together.
struct TagBlock {
    qint64 first; ///< 1 or more
    qint64 last;
    Mark issued;
    std::optional<Mark> returned;
    qint64 size() const { return last - first + 1; }
    bool has(qint64 number) const { return number >= first && number <= last; }
    bool operator==(const TagBlock &) const = default;
};

/// A tag that fell off an open interface and was replaced. Its number is never used again.
struct LostTag {
    QString tag;
    InterfaceId item;
    QString why;
    QString replacement;
    Mark mark;
    bool operator==(const LostTag &) const = default;
};

struct TagControl {
    std::vector<TagBlock> blocks; ///< in the order in which they were issued
    std::vector<LostTag> lost;
    bool operator==(const TagControl &) const = default;
};

/// The number on a tag: digits, as a block counts them, without a nought in front. Nothing for any other text.
std::optional<qint64> tagNumber(const QString &tag);
/// The block that a tag is of, or nullptr.
const TagBlock *blockOf(const TagControl &tags, const QString &tag);
/// How many of the block were lost.
qint64 lostOf(const TagControl &tags, const TagBlock &block);
/// `1 – 40`.
QString blockText(const TagBlock &block);

} // namespace core
