// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QStringList>

#include "app/demo/scenario.hpp"
#include "core/value/json.hpp"

/// What remate-cli said.
struct Said {
    int exit = -1; ///< -1 when it did not end by itself
    QByteArray out;
    QByteArray err;

    /// The standard output as one JSON object; empty when it is none.
    core::json::Object json() const;
    /// The same of the standard error.
    core::json::Object errorJson() const;
};

/// Where the real program lies.
QString programPath();

/// Runs it.
Said remateCli(const QStringList &arguments, const QByteArray &input = {});

/// Has the program make a demo store at `path`, with a file beside it with everybody's PIN, `path`.pins. Why not, when it went wrong.
QString makeDemo(const QString &path, const QStringList &options = {});
/// The same store in less time: its keys are wrapped at the least cost, so each command that signs with one takes less as well.
QString makeQuickDemo(const QString &path, demo::Until until = demo::Until::SecondShift);
QString pinsOf(const QString &path);

/// Writes a file; false when it could not be.
bool writeFile(const QString &path, const QByteArray &bytes);
