// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/record/programs.hpp"

#include <QProcess>

using namespace Qt::StringLiterals;

namespace programs {

Ran run(const QString &program, const QStringList &arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(program, arguments);
    if (!process.waitForFinished(180'000) || process.exitStatus() != QProcess::NormalExit)
        return {-1, program + u": "_s + process.errorString()};
    return {process.exitCode(), QString::fromUtf8(process.readAll())};
}

Ran validateArchive(const QString &pdf)
{
    QStringList jars;
    for (const char *jar : {"preflight", "xmpbox", "pdfbox2", "fontbox2", "commons-logging", "commons-io", "javax.activation", "jaxb-api"})
        jars << u"/usr/share/java/%1.jar"_s.arg(QLatin1String(jar));
    return run(u"java"_s, {u"-cp"_s, jars.join(u':'), u"org.apache.pdfbox.preflight.Validator_A1b"_s, pdf});
}

} // namespace programs
