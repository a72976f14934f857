// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <functional>
#include <memory>
#include <optional>

class QPrinter;
class QWidget;

namespace desktop {

/// Questions and messages to the person in front of the screen. The program asks through windows, a test answers by itself.
class Ask {
public:
    virtual ~Ask() = default;

    virtual std::optional<QString> fileToOpen(const QString &title, const QString &filter) = 0;
    virtual std::optional<QString> folderToOpen(const QString &title) = 0;
    virtual std::optional<QString> fileToSave(const QString &title, const QString &suggestion, const QString &filter) = 0;
    /// Yes or no to something that cannot be taken back.
    virtual bool confirm(const QString &question, const QString &detail, const QString &yes) = 0;
    /// Something went wrong, or is done: what happened and what to do next.
    virtual void tell(const QString &title, const QString &message) = 0;
    /// One of several.
    virtual std::optional<QString> oneOf(const QString &title, const QString &question, const QStringList &choices) = 0;
    /// A printer as the person set it up, or a file to print into; nothing when they thought better of it.
    virtual std::unique_ptr<QPrinter> printer(const QString &title) = 0;
};

/// Told how much is done, of how much; answers false to stop.
using Progress = std::function<bool(qint64 done, qint64 all)>;

} // namespace desktop
