// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

// Tags that are issued in numbered blocks, counted out and counted in: common practice.

/// From 1, not of absurd length, and of numbers that no block had and no interface carried.
std::optional<Refusal> blockIsNew(const Case &c);
/// Where any block was issued, a tag that is hung is of one that is out.
std::optional<Refusal> tagIsOfABlock(const Case &c);
/// The block is out.
std::optional<Refusal> blockIsOut(const Case &c);
/// None of the block hangs on an open interface.
std::optional<Refusal> noneOfTheBlockHangs(const Case &c);
/// As many as were issued, less those that were lost.
std::optional<Refusal> blockIsCountedWhole(const Case &c);
/// The interface is open and carries a tag.
std::optional<Refusal> tagHangs(const Case &c);
/// The other interface of an exchange is open and carries a tag, and the author had no hand in it.
std::optional<Refusal> otherTagHangs(const Case &c);
/// An issue that was used, by a tag or a return, is not struck.
std::optional<Refusal> struckBlockIsUnused(const Case &c);

extern const Rule tagsBlock, tagsFromBlock, tagsOut, tagsHanging, tagsCounted, tagHung, tagOther, strikeTags;

} // namespace core::rules
