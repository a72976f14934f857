// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/requirements/torque.hpp"
#include "core/value/result.hpp"

namespace demo {

/// Who reads, and on which day.
struct Reader {
    const core::Register &reg;
    const core::JobFacts &facts;
    QDate day;
};

/// The members of a torque entry for one step: a reading well inside its band, with the first registered tool in calibration that
/// reads in the band's unit and covers it, its setting, the drag of a self-locking nut where there is one. An adapter's length, in
/// line, when it is told. NotFound when there is no such tool.
core::Result<core::json::Object> torqueReading(const core::TorqueSpec &spec, const core::TorqueStep &step, const std::optional<core::Quantity> &adapter, const Reader &reader);

/// A resistance below the limit, or two; `turn` makes readings differ from each other.
core::Result<core::json::Object> bondingReading(const core::Listing &listed, qint64 turn, const Reader &reader);

} // namespace demo
