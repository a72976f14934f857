// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/logging/state_folder.hpp"

#include <QDir>

namespace logging {

QString stateFolder(const QProcessEnvironment &environment)
{
    const QString stated = environment.value(QStringLiteral("XDG_STATE_HOME"));
    if (QDir::isAbsolutePath(stated))
        return stated + QStringLiteral("/remate");
    return environment.value(QStringLiteral("HOME"), QDir::homePath()) + QStringLiteral("/.local/state/remate");
}

} // namespace logging
