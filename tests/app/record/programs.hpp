// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

namespace programs {

/// How a program ended: -1 when it could not be started or did not end by itself.
struct Ran {
    int code = -1;
    QString output; ///< both streams
};

/// Runs a program that packaging/check installs. One that is missing fails the test: a check that was not made is no check passed.
Ran run(const QString &program, const QStringList &arguments);

/// Runs the validator of PDF/A-1b of Debian's libpdfbox2-java on a file: 0 when it is valid, 255 when it is not.
Ran validateArchive(const QString &pdf);

} // namespace programs
