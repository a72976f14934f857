// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPointer>
#include <QWidget>

#include "app/desktop/ask.hpp"

namespace desktop {

/// Asks in windows of their own, over `parent`.
class AskInWindows : public Ask {
public:
    void setParent(QWidget *parent) { m_parent = parent; }
    std::optional<QString> fileToOpen(const QString &title, const QString &filter) override;
    std::optional<QString> folderToOpen(const QString &title) override;
    std::optional<QString> fileToSave(const QString &title, const QString &suggestion, const QString &filter) override;
    bool confirm(const QString &question, const QString &detail, const QString &yes) override;
    void tell(const QString &title, const QString &message) override;
    std::optional<QString> oneOf(const QString &title, const QString &question, const QStringList &choices) override;
    std::unique_ptr<QPrinter> printer(const QString &title) override;

private:
    QPointer<QWidget> m_parent;
};

} // namespace desktop
