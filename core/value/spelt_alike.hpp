// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringView>

#include <vector>

namespace core {

/// How many characters have to be put in, left out, exchanged or swapped with their neighbour to make one text of the other; no stretch is
/// edited twice. Large and small letters count as different.
/// Source: optimal string alignment distance (Damerau, CACM 7/3, 1964, with Wagner and Fischer's table, JACM 21/1, 1974).
qsizetype spellingDistance(QStringView a, QStringView b);

/// Those of `known` that somebody may have meant who typed `typed`, the nearest first, at most five: the same but for large and small letters, or one
/// slip away, two from six characters on. What is typed itself is not among them.
std::vector<QString> speltAlike(const QString &typed, const std::vector<QString> &known);

} // namespace core
