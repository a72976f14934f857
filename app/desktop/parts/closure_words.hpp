// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace desktop {

class JobFeed;

/// Whether the job may close, as every page says it: `The job is closed`, `Nothing is loose`, `12 loose ends`.
QString closureInWords(const JobFeed &feed);

} // namespace desktop
