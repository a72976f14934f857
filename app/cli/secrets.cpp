// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/secrets.hpp"

#include <QCoreApplication>
#include <QFile>

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Error badLine(const QString &file, qint64 row)
{
    return {core::ErrorCode::BadInput, tr("A line of the PIN file has a person's id, a blank and the PIN."), {file, row, std::nullopt}};
}

/// The terminal without echo, put back when it goes.
class Unseen {
public:
    explicit Unseen(int terminal) : m_terminal(terminal)
    {
        m_isTerminal = tcgetattr(terminal, &m_before) == 0;
        if (!m_isTerminal)
            return;
        termios silent = m_before;
        silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
        tcsetattr(terminal, TCSAFLUSH, &silent);
    }
    ~Unseen()
    {
        if (m_isTerminal)
            tcsetattr(m_terminal, TCSAFLUSH, &m_before);
    }
    Unseen(const Unseen &) = delete;
    Unseen &operator=(const Unseen &) = delete;

private:
    int m_terminal;
    bool m_isTerminal = false;
    termios m_before{};
};

} // namespace

core::Result<QString> askUnseen(const QString &question)
{
    QFile terminal;
    const int handle = open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY);
    if (handle < 0 || !terminal.open(handle, QIODevice::ReadWrite | QIODevice::Unbuffered, QFileDevice::AutoCloseHandle))
        return core::failure(core::ErrorCode::BadInput, tr("There is nobody to ask for a PIN or code. Name a file with --pins (or --code-file)."));
    const Unseen unseen(handle);
    terminal.write(question.toUtf8() + ": ");
    QByteArray typed;
    char one = 0;
    while (terminal.getChar(&one) && one != '\n')
        typed.append(one);
    terminal.write("\n");
    const QString secret = QString::fromUtf8(typed);
    typed.fill('\0');
    return secret;
}

core::Result<Secrets> Secrets::of(const Arguments &arguments)
{
    Secrets secrets;
    const auto path = arguments.textIfGiven(u"pins"_s);
    if (!path)
        return secrets;
    QFile file(*path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("The PIN file %1 cannot be read: %2").arg(*path, file.errorString()));
    qint64 row = 0;
    for (const QByteArray &bytes : file.readAll().split('\n')) {
        ++row;
        const QString line = QString::fromUtf8(bytes).trimmed();
        if (line.isEmpty() || line.startsWith(u'#'))
            continue;
        const qsizetype blank = line.indexOf(u' ');
        if (blank < 1)
            return core::failure(badLine(*path, row));
        secrets.m_known.insert(line.left(blank), line.mid(blank + 1).trimmed());
    }
    return secrets;
}

core::Result<QString> Secrets::of(const core::PersonId &person) const
{
    if (const auto at = m_known.constFind(person.text()); at != m_known.constEnd())
        return *at;
    return askUnseen(tr("PIN of %1").arg(person.text()));
}

core::Result<QString> Secrets::chosenBy(const core::PersonId &person) const
{
    if (const auto at = m_known.constFind(person.text()); at != m_known.constEnd())
        return *at;
    const auto first = askUnseen(tr("New PIN of %1, at least 6 characters").arg(person.text()));
    if (!first)
        return first;
    const auto again = askUnseen(tr("Once more"));
    if (again && *again != *first)
        return core::failure(core::ErrorCode::BadInput, tr("The two PINs differ. Nothing was done."));
    return again;
}

} // namespace cli
