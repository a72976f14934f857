// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <map>

/// A line of the table that the run ends with.
struct Row {
    QString tool;
    qint64 rounds = 0;
    qint64 hurt = 0;         ///< rounds in which the fault really struck; all of them where the tool needs no striking
    qint64 acknowledged = 0; ///< entries, over all rounds
    qint64 lost = 0;
    qint64 reported = 0;     ///< rounds in which the fault was told in words
    qint64 harmless = 0;     ///< rounds in which everything was acknowledged, or the process died, and all was there and sound
    bool mustLose = false;   ///< the fault is made so strong that a sound tool must find loss
    QString notRun{};        ///< why this row was not run; it is then not passed either
    QStringList failures{};   ///< what must not be
    std::map<QString, qint64> messages{}; ///< what a technician would have read, and how often

    bool isRun() const { return notRun.isEmpty(); }
    bool isGood() const { return isRun() && failures.isEmpty() && (lost > 0) == mustLose; }
};

/// How much is run.
struct Extent {
    bool isFull = false;
    /// Of `all` calls, how many to hurt one after another; the short form takes that many at equal distances.
    long rounds(long all, long shortForm) const { return isFull || all < shortForm ? all : shortForm; }
    /// The number, from 1, of the call of one of so many rounds.
    static long nth(long round, long rounds, long all) { return rounds < 2 ? 1 : 1 + round * (all - 1) / (rounds - 1); }
};

/// Whether a message says what happened and what to do next: at least two sentences, one of them with a thing to do.
bool isOfUse(const QString &message);

/// Counts against a row that proves nothing: no round, nothing acknowledged, no fault that struck.
void demandProof(Row &row);
