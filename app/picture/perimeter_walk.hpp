// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>

#include "app/picture/perimeter_layout.hpp"

namespace picture {

enum class Step { Left, Right, Up, Down, NextSide, PreviousSide, First, Last };

/// Where a step leads from a coupling, both counted as in the layout. Along an edge and round its corners a step goes to the neighbour as it is seen,
/// inwards to the nearest of the edge that lies across; a side is a zone that has items. Nothing where no item lies that way.
std::optional<std::size_t> stepFrom(const PerimeterLayout &layout, std::size_t from, Step step);

} // namespace picture
