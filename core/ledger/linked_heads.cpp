// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/linked_heads.hpp"

namespace core {

using namespace Qt::StringLiterals;

json::Array linkedHeadsValue(const std::vector<LinkedHead> &linked)
{
    json::Array heads;
    for (const LinkedHead &one : linked)
        heads.emplace_back(json::Object{{u"ledger"_s, one.ledger.text()}, {u"seq"_s, one.head.seq}, {u"hash"_s, one.head.hash.hex()}});
    return heads;
}

std::optional<LinkedHead> readLinkedHead(const json::Value &value)
{
    const json::Object *one = value.object();
    const auto ledger = one ? LedgerId::parse(one->text(u"ledger")) : std::nullopt;
    const auto hash = one ? Digest::parse(one->text(u"hash")) : std::nullopt;
    const auto seq = one ? one->integer(u"seq") : std::nullopt;
    if (!ledger || !hash || !seq || one->members().size() != 3)
        return std::nullopt;
    return LinkedHead{*ledger, {*seq, *hash}};
}

std::optional<std::vector<LinkedHead>> readLinkedHeads(const json::Value &value)
{
    if (!value.array())
        return std::nullopt;
    std::vector<LinkedHead> linked;
    for (const json::Value &one : *value.array()) {
        const auto head = readLinkedHead(one);
        if (!head)
            return std::nullopt;
        linked.push_back(*head);
    }
    return linked;
}

} // namespace core
