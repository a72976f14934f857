// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>
#include <QSet>

#include <memory>
#include <optional>
#include <vector>

#include "core/job/state.hpp"
#include "core/ledger/entry.hpp"
#include "core/register/register.hpp"
#include "core/rules/refusal.hpp"

namespace desktop {

/// What is not as it was.
struct Touched {
    QSet<core::InterfaceId> items;
    bool list = false;   ///< interfaces came or went
    bool reg = false;    ///< people, authorisations, tools
    bool others = false; ///< anything else of the job: findings, handovers, facts, closure
    bool person = false; ///< who may sign now
};

/// One job as it stands now, for the screens. It holds the folded state and tells what changed; it decides nothing and reads
/// nothing itself. Null state while no job is open.
class JobFeed : public QObject {
    Q_OBJECT

public:
    explicit JobFeed(QObject *parent = nullptr) : QObject(parent) {}

    const std::shared_ptr<const core::JobState> &state() const { return m_state; }
    const core::Register &reg() const { return m_register; }
    /// Everything that was said, in order; statement n has sequence number n+1.
    const core::Series<core::Statement> &said() const { return m_said; }
    const core::LooseEnds &looseEnds() const { return m_looseEnds; }
    /// Of that interface.
    core::LooseEnds looseEndsOf(const core::InterfaceId &item) const;

    /// Takes the newest state. Tells jobChanged() when it is of another job, else changed() when anything differs.
    void take(std::shared_ptr<const core::JobState> state, const core::Series<core::Statement> &said, const core::Register &reg);

    /// Somebody else may sign now, or nobody: what is offered and what is refused is asked again.
    void tellPersonChanged();

signals:
    void jobChanged();
    void changed(const desktop::Touched &touched);

private:
    std::shared_ptr<const core::JobState> m_state;
    core::Register m_register;
    core::Series<core::Statement> m_said;
    core::LooseEnds m_looseEnds;
};

/// What differs between two states of one job.
Touched difference(const core::JobState &before, const core::JobState &after);

} // namespace desktop
