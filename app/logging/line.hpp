// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

namespace logging {

/// One named value of a log line: `seq=17`.
struct Field {
    QString name;
    QString value;
};

/// The text of a log line: the event, then its fields, `entry.appended ledger=… seq=17`.
/// A log line names things by id. It never carries a PIN, a passphrase, a key or what somebody typed as free text: that
/// is for the caller to keep; as a second line of defence, fields named after a secret are written as `(withheld)`.
/// Values with blanks are quoted, control characters escaped (a value cannot forge a second line), and long ones cut
/// at 300 characters.
QString line(QStringView event, const std::vector<Field> &fields);

} // namespace logging
