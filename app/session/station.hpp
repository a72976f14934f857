// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QProcessEnvironment>
#include <QString>

#include <functional>

#include "core/ledger/second_key.hpp"
#include "core/value/result.hpp"

namespace session {

/// Where the secret of a station lies.
struct StationFile {
    QString path;
    bool isShared; ///< named by the environment, for several users of one computer: their group may read it
};

/// `station` in the state folder of the user, or the file that REMATE_STATION names. Never beside a store: whoever copies the
/// one must not get the other with it.
StationFile stationFile(const QProcessEnvironment &environment);

/// Reads the secret, and makes the file first when there is none: mode 0600, appearing whole or not at all.
/// BadInput when it lies in the folder of the store; Refused when others than its owner (and group, if shared) may read it; Damaged
/// when it holds something else; Io.
core::Result<core::SecondKey> readStation(const StationFile &file, const QString &storePath);

/// The second key of the computer at hand, for a store at a path.
using Station = std::function<core::Result<core::SecondKey>(const QString &storePath)>;

/// As this process's environment says.
Station stationOfThisComputer();

} // namespace session
