// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <vector>

#include "core/job/fold.hpp"
#include "core/register/register.hpp"

namespace story {

/// The moment at which the job of the stories is opened.
core::Instant opening();

/// People: Ana leads and works; Ben and Dee are of the crew; Lee leads the second shift, with Max in the crew; Cho, Eva and
/// Uma inspect; Tim inspects ducts alone; Ida's inspection ran out on 2026-02-28; Wes's was withdrawn before the job; Rae
/// releases; Ove may overrule inspectors; Out works but is of no crew. Root administers.
/// Tools: TW1 torque wrench 5–100 N·m and BM1 bonding meter 0.1–100 mΩ, in calibration; TW2 out of calibration since
/// 2026-02-28; TW3 withdrawn; TW4 5–20 N·m; TW5 in lbf·in; TW6 40–250 lbf·in by 1,
/// 10 in long, off by 4 % at most; TW7 the same by 50, of unknown deviation; GA1 in calibration, without a usable range; JK1 a jack, neither.
core::Register register_();

/// The entries that open the job and list its interfaces, in order, one draft each:
/// D1 duct, two fasteners 20–25 N·m, seal S-100, safetied with lockwire; C1 harness connector P1/J1; B1 bonding lead, at most
/// 2.5 mΩ; F1 and F2 look-alike fuel lines, a twin group, critical; M1 and M2 mounts, critical, group mounts, two inspections;
/// A1 access panel; D2 drain behind A1; K1 clamp that asks for nothing but inspection.
std::vector<core::Draft> openingDrafts();

/// The same for another job in the same store. "shop" builds the incoming engine up: Lee leads it, with Max, Dee and Cho in the crew, and its
/// list has the clamp S1 alone. Any other name is the change of the other engine: its list is that of the first job, and Cho is of the crew.
std::vector<core::Draft> openingDrafts(const QString &name);

/// The ledger of the job of the stories; with a name, that of another one.
core::LedgerId ledgerOf(const QString &name = {});

/// A statement of a draft, with made-up chain members: for folds, which look at none of them.
core::Statement statementOf(const core::Draft &draft, qint64 seq, const QString &job = {});

} // namespace story
