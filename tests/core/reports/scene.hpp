// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/job/fold.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"
#include "core/reports/job_record.hpp"

namespace scene {

/// A job for the tests of reports and record: every entry admitted by the rules, chained by real hashes, signed by nobody.
/// Ana Ruiz and Ben Ortiz work, Lee Park leads, Mia Sand takes the second shift, Cho Min and Eva Lund inspect, Rae Holt
/// releases, Olga Brandt is root. TW1 was calibrated anew in the middle of the job. Every figure is made up.
class Scene {
public:
    Scene();

    /// A draft becomes the next entry of the job; a refusal ends the program with its sentence, since the scene is wrong.
    void say(const QString &author, const QString &kind, const QString &subject, const core::json::Object &body);
    void sayOnRegister(const QString &kind, const QString &subject, const core::json::Object &body);

    /// Opens the job and lists so many interfaces: duct, harness connector, bonding lead, mount, access panel by turns, in
    /// two zones.
    void open(int interfaces);
    /// Undoes all, restores all, has all inspected. On the way: a struck entry, a rejection, a finding, a handover, two lifts of which
    /// one was planned anew, oil filled in, the weight change.
    void work();
    void close();

    const core::JobState &job() const { return m_fold.state(); }
    const core::Register &reg() const { return m_register; }
    core::JobRecord record() const;

private:
    void undo(const core::InterfaceState &item, int number);
    void restore(const core::InterfaceState &item);
    void inspect(const core::InterfaceState &item);
    void figures();
    void gates();
    void countedOutAndIn();

    core::Instant m_now;
    core::Register m_register;
    std::vector<core::Entry> m_registerEntries;
    core::JobFold m_fold;
    std::vector<core::Entry> m_entries;
};

/// Opened, worked and closed.
core::JobRecord closedRecord(int interfaces);
/// Opened and worked, not closed.
core::JobRecord openRecord(int interfaces);

} // namespace scene
