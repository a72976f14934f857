// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPrinter>

#include "app/desktop/ask.hpp"

/// Answers by itself, and keeps what was told.
class ScriptedAsk : public desktop::Ask {
public:
    std::optional<QString> fileToOpen(const QString &, const QString &) override { return openPath; }
    std::optional<QString> folderToOpen(const QString &) override { return folderPath; }
    std::optional<QString> fileToSave(const QString &, const QString &, const QString &) override { return savePath; }
    bool confirm(const QString &question, const QString &, const QString &) override
    {
        asked << question;
        return confirms;
    }
    void tell(const QString &title, const QString &message) override { told << title + QStringLiteral(": ") + message; }
    std::optional<QString> oneOf(const QString &, const QString &, const QStringList &choices) override { return choices.front(); }
    /// Prints into `printPath`.
    std::unique_ptr<QPrinter> printer(const QString &) override
    {
        if (!printPath)
            return nullptr;
        auto printer = std::make_unique<QPrinter>();
        printer->setOutputFormat(QPrinter::PdfFormat);
        printer->setOutputFileName(*printPath);
        return printer;
    }

    std::optional<QString> openPath;
    std::optional<QString> folderPath;
    std::optional<QString> savePath;
    std::optional<QString> printPath;
    bool confirms = true;
    QStringList asked; ///< to confirm
    QStringList told;
};
