// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace core {

struct InterfaceState;
struct JobState;
struct Restoration;

/// True when a restoration is one of this open interface as it was undone and as it is listed: the tag that hung there, every blank of both
/// ends, every part that came off and that is asked for, the seal, its own mate. The rules have asked so when it was signed; a strike can put
/// another disconnection or another listing under it, and then it does not stand.
bool belongsTo(const JobState &job, const InterfaceState &open, const Restoration &joined);

} // namespace core
