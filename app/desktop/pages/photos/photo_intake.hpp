// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include "app/desktop/ask.hpp"
#include "app/photos/watched_folder.hpp"

class QLabel;
class QMimeData;
class QPushButton;

namespace desktop {

class WaitingPhotos;

/// Where photos come in: by file, drop, paste, and from a watched folder. They wait here by name; whoever owns it attaches the first of them.
class PhotoIntake : public QWidget {
    Q_OBJECT

public:
    explicit PhotoIntake(Ask &ask, QWidget *parent = nullptr);

    /// Those that wait.
    WaitingPhotos &waiting() { return *m_waiting; }
    /// Whether a photo waits, or may come into a folder that is watched.
    bool isAnythingExpected() const;
    /// Has what was dropped or pasted wait; a single photo is wanted to be attached at once.
    void offer(const QMimeData &offered);
    void paste();

signals:
    /// The first one that waits.
    void attachWanted();
    /// Another is the first.
    void changed();

private:
    QWidget *makeSources();
    void addFile();
    void attachLast();
    void watchOrStop();
    void showWatched();

    Ask &m_ask;
    WaitingPhotos *m_waiting;
    QLabel *m_watched;
    QPushButton *m_watch;
    photos::WatchedFolder m_folder;
};

} // namespace desktop
