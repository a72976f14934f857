// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/ask.hpp"

/// Answers by itself, and keeps what was told.
class ScriptedAsk : public desktop::Ask {
public:
    std::optional<QString> fileToOpen(const QString &, const QString &) override { return openPath; }
    std::optional<QString> fileToSave(const QString &, const QString &, const QString &) override { return savePath; }
    bool confirm(const QString &, const QString &, const QString &) override { return true; }
    void tell(const QString &title, const QString &message) override { told << title + QStringLiteral(": ") + message; }
    std::optional<QString> oneOf(const QString &, const QString &, const QStringList &choices) override { return choices.front(); }

    std::optional<QString> openPath;
    std::optional<QString> savePath;
    QStringList told;
};
