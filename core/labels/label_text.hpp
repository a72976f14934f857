// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

#include "core/value/id.hpp"

namespace core {

/// What the code on a label names: one interface of one job.
struct LabelText {
    QString workOrder;
    InterfaceId item;
    bool operator==(const LabelText &) const = default;
};

/// `remate:WO-2207-14/E12`: a URI of two segments, the work order and the interface's id. In each, whatever RFC 3986 section 2.3 does not
/// call unreserved is percent-encoded as UTF-8, so that a slash in a work order does not cut it in two.
QString writeLabelText(const LabelText &label);

/// The other way round. Nothing for a text that is no label's: another scheme, another number of segments, an empty one, a character that
/// had to be encoded, an encoding that is cut off or no UTF-8, or an id that can name nothing. Scheme and hexadecimal digits may stand in
/// either case (RFC 3986 sections 3.1 and 2.1): a scanner may have Caps Lock on.
std::optional<LabelText> readLabelText(const QString &text);

} // namespace core
