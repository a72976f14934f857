// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>

#include <vector>

namespace crash {

/// One thing that SQLite asked of the disk, or that the program told a person.
struct Event {
    enum class What {
        Begin,       ///< a file with a name of its own is there; `bytes` is what it holds, durably
        Create,      ///< an empty file gets a name
        Write,       ///< `bytes` at `at`
        Truncate,    ///< to the size `at`
        Sync,        ///< all of the file is on the disk
        SyncFolder,  ///< all names are on the disk
        Remove,      ///< the name goes
        Acknowledge, ///< an entry was called recorded
    };
    What what;
    int file = 0; ///< a number for each file, also when two had the same name one after the other
    qint64 at = 0;
    QByteArray bytes{};
    QByteArray name{}; ///< after the folder: `a.remate-wal`
};

/// How far the database is told to trust the disk.
enum class Trust {
    AsProgrammed, ///< whatever the program under test sets
    Normal,       ///< PRAGMA synchronous = NORMAL, whatever it sets
    Off,          ///< PRAGMA synchronous = OFF
};

/// While it lives, it is the file layer that SQLite uses by default, and everything that is written to files in one folder is
/// noted down beside being done. One at a time.
class Recording {
public:
    Recording(const QByteArray &folder, Trust trust);
    ~Recording();
    Recording(const Recording &) = delete;
    Recording &operator=(const Recording &) = delete;

    void acknowledge();
    const std::vector<Event> &events() const { return m_events; }
    void take(Event event) { m_events.push_back(std::move(event)); }
    bool isOurs(const char *path) const;
    /// The number of the file of that name now, made known when it was not.
    int fileOf(const char *path, bool isNew);
    QByteArray nameOf(const char *path) const;
    Trust trust() const { return m_trust; }

private:
    QByteArray m_folder;
    Trust m_trust;
    std::vector<Event> m_events;
    std::vector<QByteArray> m_names; ///< by number; empty once the file lost its name
};

} // namespace crash
