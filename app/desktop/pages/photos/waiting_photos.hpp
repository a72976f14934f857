// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>

#include <deque>

#include "app/photos/photo_file.hpp"

class QLabel;
class QPushButton;

namespace desktop {

/// Photos that came in and of which nobody has said yet what becomes of them, one at a time by name. Nothing of them is in the store.
class WaitingPhotos : public QFrame {
    Q_OBJECT

public:
    explicit WaitingPhotos(QWidget *parent = nullptr);

    /// A file of a folder, read again once it is attached: a card may hold hundreds. False when the same photo waits already.
    bool addFile(const QString &path);
    bool add(const photos::PhotoFile &photo);
    /// The first photo, or why it cannot be read any more. It must not be empty.
    core::Result<photos::PhotoFile> first() const;
    core::Digest firstDigest() const { return m_waiting.front().digest; }
    bool isEmpty() const { return m_waiting.empty(); }
    void drop(const core::Digest &digest);
    /// The one that came last goes before all others: somebody has it in their hand.
    void bringLastToFront();
    /// Where the first would go: `SL3`; empty while no interface is chosen. `known` says that it was attached before, and where.
    void show(const QString &item, const QString &known);
    /// Something came that is no photo, or went wrong.
    void say(const QString &problem);

signals:
    void attachWanted();
    void changed();

private:
    struct Waiting {
        QString name;
        QString path; ///< empty for a photo that is in no file
        photos::PhotoFile photo;
        core::Digest digest;
    };
    bool append(Waiting waiting);

    std::deque<Waiting> m_waiting;
    QLabel *m_name;
    QLabel *m_known;
    QLabel *m_problem;
    QPushButton *m_attach;
    QPushButton *m_leave;
};

} // namespace desktop
