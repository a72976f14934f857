// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/tags.hpp"

#include <algorithm>

namespace core {

std::optional<qint64> tagNumber(const QString &tag)
{
    bool isNumber = false;
    const qint64 number = tag.toLongLong(&isNumber);
    return isNumber && number >= 1 && QString::number(number) == tag ? std::optional(number) : std::nullopt;
}

const TagBlock *blockOf(const TagControl &tags, const QString &tag)
{
    const auto number = tagNumber(tag);
    const auto at = std::find_if(tags.blocks.begin(), tags.blocks.end(), [&](const TagBlock &block) { return number && block.has(*number); });
    return at == tags.blocks.end() ? nullptr : &*at;
}

qint64 lostOf(const TagControl &tags, const TagBlock &block)
{
    return std::count_if(tags.lost.begin(), tags.lost.end(), [&](const LostTag &lost) {
        const auto number = tagNumber(lost.tag);
        return number && block.has(*number);
    });
}

QString blockText(const TagBlock &block) { return QStringLiteral("%1 – %2").arg(block.first).arg(block.last); }

} // namespace core
