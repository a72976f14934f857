// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <optional>
#include <vector>

#include "core/ledger/entry.hpp"
#include "core/reports/job_record.hpp"
#include "core/value/json.hpp"

/// Two ledgers that no rule was asked about: one from elsewhere may hold anything, and its reports say what is there.
class Unasked {
public:
    void onRegister(const QString &kind, const QString &subject, const core::json::Object &body);
    /// An entry of the job under the register as it stands, or as its entry `pin` left it.
    void say(const QString &author, const QString &kind, const QString &subject, const core::json::Object &body, std::optional<qint64> pin = {});
    void sayWithoutPin(const QString &author, const QString &kind, const QString &subject, const core::json::Object &body);
    core::JobRecord record() const;

private:
    std::vector<core::Entry> m_register;
    std::vector<core::Entry> m_job;
};
