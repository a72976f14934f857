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

bool isFull(int systemError) { return systemError == ENOSPC || systemError == EDQUOT; }

/// SQLite calls a page that the disk could not read damaged. It need not be: a loose cable does the same.
bool isReadFault(int code, int systemError)
{
    const bool isDisk = systemError == EIO || systemError == ENXIO || systemError == ENODEV;
    return code == SQLITE_IOERR_CORRUPTFS || ((code & 0xff) == SQLITE_CORRUPT && isDisk);
}

Error unread(int code, int systemError)
{
    return {ErrorCode::Io, tr("The disk could not be read (SQLite %1, system %2). Nothing was recorded. Check that the disk is there and "
                              "try again; if it happens again, go on with the last backup on another disk.")
                               .arg(code)
                               .arg(systemError)};
}

Error io(int code, int systemError)
{
    if (isFull(systemError))
        return noSpace();
    return {ErrorCode::Io, tr("The disk reported an error (SQLite %1, system %2). Nothing was recorded. Check that the disk is "
                              "there and sign again; if it happens again, back up to another disk.")
                               .arg(code)
                               .arg(systemError)};
}

} // namespace

Error errorFrom(int extendedCode, int systemError)
{
    if (isReadFault(extendedCode, systemError))
        return unread(extendedCode, systemError);
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
        return {ErrorCode::ReadOnly, tr("The store may be read but not written here. Nothing was recorded. Close the store and open it "
                                        "again; if it stays so, ask whoever looks after this computer for the right to write to it.")};
    case SQLITE_PROTOCOL:
    case SQLITE_NOLFS:
        return {ErrorCode::Io, tr("The disk does not keep programs apart that use the store at once (SQLite %1, system %2). Nothing was "
                                  "recorded. Close the store and open it again; if it stays so, move the store to a disk of this computer.")
                                   .arg(extendedCode)
                                   .arg(systemError)};
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

Error errorOfCommit(int extendedCode, int systemError)
{
    if (extendedCode != SQLITE_IOERR_FSYNC && extendedCode != SQLITE_IOERR_DIR_FSYNC)
        return errorFrom(extendedCode, systemError);
    return {isFull(systemError) ? ErrorCode::NoSpace : ErrorCode::Io,
            tr("The disk did not confirm what was written (SQLite %1, system %2). It is not certain whether it was recorded. Check the disk "
               "and its room, close the store and open it again, and sign again only what is not there.")
                .arg(extendedCode)
                .arg(systemError)};
}

Error errorOfWritingBack(int extendedCode, int systemError)
{
    const int kind = extendedCode & 0xff;
    if (kind == SQLITE_FULL || isFull(systemError))
        return {ErrorCode::NoSpace, tr("The disk is full: make room.")};
    if (kind == SQLITE_IOERR || kind == SQLITE_CANTOPEN || isReadFault(extendedCode, systemError))
        return {ErrorCode::Io, tr("The disk reported an error (SQLite %1, system %2).").arg(extendedCode).arg(systemError)};
    return errorFrom(extendedCode, systemError);
}

} // namespace db
