// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

#include "core/reports/report.hpp"

/// The cells of one column of a report, by its name.
QStringList column(const core::JobRecord &record, QStringView report, QLatin1String name);
