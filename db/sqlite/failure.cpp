// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "db/sqlite/failure.hpp"

#include <QCoreApplication>

#include <cerrno>

#include <sqlite3.h>

namespace db {

using core::Error;
using core::ErrorCode;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Store", text); }

Error noSpace()
{
    return {ErrorCode::NoSpace, tr("The disk is full. Nothing was recorded. Make room and sign again.")};
}

Error damaged(int code)
{
    return {ErrorCode::Damaged,
            tr("The store is damaged (SQLite %1). Keep the file as it is and go on with the last backup.").arg(code)};
}

Error io(int code, int systemError)
{
    if (systemError == ENOSPC || systemError == EDQUOT)
        return noSpace();
    return {ErrorCode::Io, tr("The disk reported an error (SQLite %1, system %2). Nothing was recorded. Check that the disk is "
                              "there and sign again; if it happens again, back up to another disk.")
                               .arg(code)
                               .arg(systemError)};
}

} // namespace

Error errorFrom(int extendedCode, int systemError)
{
    switch (extendedCode & 0xff) {
    case SQLITE_BUSY:
    case SQLITE_LOCKED:
        return {ErrorCode::Locked, tr("Another program holds the store. Nothing was recorded. Wait for it to finish, or close "
                                      "it, and try again.")};
    case SQLITE_FULL:
        return noSpace();
    case SQLITE_CORRUPT:
        return damaged(extendedCode);
    case SQLITE_NOTADB:
        return {ErrorCode::Damaged, tr("The beginning of the store is damaged. Keep the file as it is and go on with the last "
                                       "backup.")};
    case SQLITE_READONLY:
    case SQLITE_PERM:
        return {ErrorCode::ReadOnly, tr("The store may be read but not written here. Nothing was recorded. Ask whoever looks "
                                        "after this computer for the right to write to it.")};
    case SQLITE_NOMEM:
        return {ErrorCode::Io, tr("There was not enough memory. Nothing was recorded. Close other programs and try again.")};
    case SQLITE_TOOBIG:
        return {ErrorCode::BadInput, tr("That is larger than the store can hold in one piece. Nothing was recorded.")};
    case SQLITE_CONSTRAINT:
        return {ErrorCode::Refused, tr("The store refused a change that would break a ledger (SQLite %1). Nothing was recorded. "
                                       "This is a fault of the program: please report it.")
                                        .arg(extendedCode)};
    case SQLITE_CANTOPEN:
    case SQLITE_IOERR:
        return io(extendedCode, systemError);
    }
    return {ErrorCode::Io, tr("The store could not be used (SQLite %1, system %2). Nothing was recorded. Close the program and "
                              "try again; if it happens again, report these numbers.")
                               .arg(extendedCode)
                               .arg(systemError)};
}

} // namespace db
