// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QMutex>
#include <QTranslator>

#include <set>

/// A language in which every single text of the program is another: ⟦Disconnect⟧. What is the same with it as without it depends on no
/// language. While one lives, the program speaks it; it keeps what was asked of it.
class MarkedWords final : public QTranslator {
public:
    MarkedWords();
    ~MarkedWords() override;

    QString translate(const char *context, const char *source, const char *disambiguation, int n) const override;
    bool isEmpty() const override { return false; }
    /// Every text of the program that was said in it.
    std::set<QString> said() const;

private:
    mutable QMutex m_lock; ///< what is said may be asked for by several threads
    mutable std::set<QString> m_said;
};
