// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

/// Runs statements on a store as somebody would who keeps to no rules: its triggers are dropped first, and put back. `?1` … are bound to
/// the bytes. Why not, when it went wrong; also when the last statement changed nothing, so that no test tampers with air.
QString tamper(const QString &store, const QString &statements, const std::vector<QByteArray> &bytes = {});

/// Runs statements as they are, with the triggers in place: for changes to the schema itself.
QString runRaw(const QString &store, const QString &statements);

/// The first column of the first row.
QByteArray rawValue(const QString &store, const QString &query);
