// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>

#include "app/cli/arguments.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"

namespace cli {

/// Asks a question at the terminal, without echo. BadInput when nobody can be asked.
core::Result<QString> askUnseen(const QString &question);

/// Where PINs and passphrases come from: a file that was named, or the keyboard, without echo. Never the command line
/// itself, which every user of the machine can read.
class Secrets {
public:
    /// Reads the file that the option `pins` names, if any: a person's id, a blank and the secret on each line; lines that are
    /// empty or begin with # are passed over.
    static core::Result<Secrets> of(const Arguments &arguments);

    /// The secret that the person has. BadInput when it is not in the file and nobody can be asked.
    core::Result<QString> of(const core::PersonId &person) const;
    /// A secret that the person chooses now; asked for twice.
    core::Result<QString> chosenBy(const core::PersonId &person) const;

private:
    QHash<QString, QString> m_known;
};

} // namespace cli
