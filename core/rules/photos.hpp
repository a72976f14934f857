// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/rules/case.hpp"

namespace core::rules {

/// What is marked is a photo that was attached to this interface and that still counts.
std::optional<Refusal> photoIsOnTheItem(const Case &c);

/// A copy is another file than what it was made from.
std::optional<Refusal> copyIsAnotherFile(const Case &c);

/// Marks lie on the picture, and no two marks of one photo share a number: their numbers are how people speak of them.
std::optional<Refusal> marksCanBeTold(const Case &c);

extern const Rule photoThere, photoMarks, photoCopy;

} // namespace core::rules
