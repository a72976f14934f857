// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <vector>

#include "core/value/digest.hpp"

/// One run of the victim under one fault, and what became of its store.
namespace rounds {

/// The fault: what the shim reads from the environment. See shim/plan.hpp.
struct Fault {
    QString calls = QStringLiteral("write");
    long nth = 0;
    QString does = QStringLiteral("fail");
    int error = 0;
    bool isSticky = false;
    bool isStick = false; ///< a memory stick's file system is acted out
};

struct Told {
    std::vector<core::Digest> acknowledged;
    std::size_t acknowledgedAtBackup = 0;
    QStringList attached;
    QStringList said;    ///< "WHAT MESSAGE", as the victim wrote it
    bool isReady = false;  ///< the store with its people and job was made
    bool isCopied = false; ///< the backup was called made
    bool isClosed = false;
    bool madeRoom = false;
    bool isKilled = false; ///< by SIGKILL
    bool isAborted = false;
    int otherSignal = 0;   ///< the program crashed
    bool hangs = false;
    long counted = 0; ///< calls of the fault's sort
    bool isHurt = false;
};

/// Runs the victim with these arguments and this fault; only calls below `folder` are hurt.
Told run(const QStringList &arguments, const QString &folder, const Fault &fault);

/// Where the programs of this folder were built.
QString built(const char *name);

/// Whether the shim can be used here: the sanitizers' runtime wants to come first itself.
bool mayUseShim();

} // namespace rounds
