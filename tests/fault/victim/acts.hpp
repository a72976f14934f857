// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

namespace victim {

/// Writes one line at once: what was said must not wait in a buffer when the process dies.
void say(const QString &line);

/// See main.cpp. `ballast` is a file that takes up room, or empty.
int append(const QString &path, int count, const QString &ballast);
int life(const QString &path, int count);

} // namespace victim
