// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <map>
#include <random>
#include <vector>

#include "tests/fault/crash_vfs/recording.hpp"

namespace crash {

/// The files as somebody finds them after the power came back, by name.
using Files = std::map<QByteArray, QByteArray>;

/// What the disk holds for certain, and what it was only told. Names are kept in order, as journalling file systems do;
/// contents in no order at all.
class Disk {
public:
    void take(const Event &event);
    /// How many writes and truncations are not certain.
    std::size_t uncertain() const;
    std::size_t uncertainNames() const { return m_names.size(); }

    /// What becomes of one uncertain write.
    enum class Fate : char {
        Kept,
        Dropped,
        Torn,    ///< some of its sectors are there, others are as before
        Damaged, ///< some of its sectors hold anything at all
    };
    /// The files when each uncertain write had its fate, and of the uncertain names the first `names` were kept.
    /// Bytes that were not written are never touched (powersafe overwrite, as SQLite takes for granted).
    Files after(const std::vector<Fate> &fates, std::size_t names, std::mt19937_64 &chance) const;

private:
    struct Change {
        int file;
        Event event;
    };
    struct NameChange {
        QByteArray name;
        int file; ///< 0: the name goes
    };
    std::map<int, QByteArray> m_durable;
    std::map<QByteArray, int> m_durableNames;
    std::vector<Change> m_changes; ///< in the order in which they were asked for
    std::vector<NameChange> m_names;
};

} // namespace crash
