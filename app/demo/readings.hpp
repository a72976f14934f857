// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "core/job/state.hpp"
#include "core/register/register.hpp"
#include "core/value/result.hpp"

namespace demo {

/// A reading that a technician of the story takes, as typed.
struct Reading {
    QString value;
    QString unit;
    core::ToolId tool;
};

/// A torque inside the band, another one for each fastener, with the first registered tool that reads in the band's unit, covers
/// it, and is in calibration on that day. NotFound when there is no such tool.
core::Result<Reading> torqueReading(const core::TorqueSpec &spec, qint64 fastener, const core::Register &reg, QDate day);

/// A resistance below the limit; `turn` makes readings differ from each other.
core::Result<Reading> bondingReading(const core::Quantity &most, qint64 turn, const core::Register &reg, QDate day);

} // namespace demo
