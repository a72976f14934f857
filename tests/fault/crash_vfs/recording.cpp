// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/crash_vfs/recording.hpp"

#include <QFile>

#include <cstring>
#include <string_view>

#include <sqlite3.h>

namespace crash {

namespace {

Recording *theRecording = nullptr;
sqlite3_vfs *below = nullptr; // the real one
sqlite3_vfs ours{};

/// SQLite makes room for it and for the real one's behind it.
struct File {
    sqlite3_file base;
    int number; ///< 0: not recorded
    bool syncsFolder; ///< the real one syncs the folder with the file's first sync: a side file that was new
    sqlite3_file *real() { return reinterpret_cast<sqlite3_file *>(this + 1); }
};

File *mine(sqlite3_file *file) { return reinterpret_cast<File *>(file); }
sqlite3_file *real(sqlite3_file *file) { return mine(file)->real(); }
const sqlite3_io_methods *methods(sqlite3_file *file) { return real(file)->pMethods; }

void note(sqlite3_file *file, Event event)
{
    if (mine(file)->number == 0 || !theRecording)
        return;
    event.file = mine(file)->number;
    theRecording->take(std::move(event));
}

int closeFile(sqlite3_file *file) { return methods(file)->xClose(real(file)); }

int readFile(sqlite3_file *file, void *into, int size, sqlite3_int64 at) { return methods(file)->xRead(real(file), into, size, at); }

int writeFile(sqlite3_file *file, const void *bytes, int size, sqlite3_int64 at)
{
    const int status = methods(file)->xWrite(real(file), bytes, size, at);
    if (status == SQLITE_OK)
        note(file, {.what = Event::What::Write, .at = at, .bytes = QByteArray(static_cast<const char *>(bytes), size)});
    return status;
}

int truncateFile(sqlite3_file *file, sqlite3_int64 size)
{
    const int status = methods(file)->xTruncate(real(file), size);
    if (status == SQLITE_OK)
        note(file, {.what = Event::What::Truncate, .at = size});
    return status;
}

int syncFile(sqlite3_file *file, int flags)
{
    const int status = methods(file)->xSync(real(file), flags);
    if (status != SQLITE_OK)
        return status;
    note(file, {.what = Event::What::Sync});
    if (std::exchange(mine(file)->syncsFolder, false))
        note(file, {.what = Event::What::SyncFolder});
    return status;
}

int fileSize(sqlite3_file *file, sqlite3_int64 *size) { return methods(file)->xFileSize(real(file), size); }
int lockFile(sqlite3_file *file, int level) { return methods(file)->xLock(real(file), level); }
int unlockFile(sqlite3_file *file, int level) { return methods(file)->xUnlock(real(file), level); }
int checkLock(sqlite3_file *file, int *held) { return methods(file)->xCheckReservedLock(real(file), held); }

/// Keeps `PRAGMA synchronous` at what the test wants, whatever the program says.
int control(sqlite3_file *file, int what, void *argument)
{
    const bool isWeakened = theRecording && theRecording->trust() != Trust::AsProgrammed;
    if (isWeakened && what == SQLITE_FCNTL_PRAGMA) {
        char **pragma = static_cast<char **>(argument);
        const char *wanted = theRecording->trust() == Trust::Normal ? "NORMAL" : "OFF";
        const bool isIt = sqlite3_stricmp(pragma[1], "synchronous") == 0;
        if (isIt && !pragma[2])
            pragma[0] = sqlite3_mprintf("2"); // the store asks whether it is FULL, and would refuse
        if (isIt && (!pragma[2] || std::strcmp(pragma[2], wanted) != 0))
            return SQLITE_OK;
    }
    return methods(file)->xFileControl(real(file), what, argument);
}

int sectorSize(sqlite3_file *file) { return methods(file)->xSectorSize(real(file)); }
int deviceTraits(sqlite3_file *file) { return methods(file)->xDeviceCharacteristics(real(file)); }
int mapShared(sqlite3_file *file, int region, int size, int extend, void volatile **memory) { return methods(file)->xShmMap(real(file), region, size, extend, memory); }
int lockShared(sqlite3_file *file, int at, int count, int flags) { return methods(file)->xShmLock(real(file), at, count, flags); }
void barrier(sqlite3_file *file) { methods(file)->xShmBarrier(real(file)); }
int unmapShared(sqlite3_file *file, int remove) { return methods(file)->xShmUnmap(real(file), remove); }

/// Version 2: without mapped reading and writing, which would pass us by.
const sqlite3_io_methods recorded = {2,          &closeFile,   &readFile,   &writeFile, &truncateFile, &syncFile,     &fileSize,   &lockFile, &unlockFile, &checkLock,
                                     &control,   &sectorSize,  &deviceTraits, &mapShared, &lockShared, &barrier, &unmapShared, nullptr,   nullptr};

int openFile(sqlite3_vfs *, const char *name, sqlite3_file *file, int flags, int *flagsOut)
{
    File *opened = mine(file);
    opened->base.pMethods = nullptr;
    opened->number = 0;
    opened->syncsFolder = false;
    const bool isSideFile = (flags & (SQLITE_OPEN_WAL | SQLITE_OPEN_MAIN_JOURNAL)) != 0;
    const bool isOurs = theRecording && theRecording->isOurs(name) && (isSideFile || (flags & SQLITE_OPEN_MAIN_DB) != 0);
    const bool isNew = isOurs && !QFile::exists(QFile::decodeName(name));
    const int status = below->xOpen(below, name, opened->real(), flags, flagsOut);
    if (status != SQLITE_OK)
        return status;
    opened->base.pMethods = &recorded;
    if (isOurs)
        opened->number = theRecording->fileOf(name, isNew);
    opened->syncsFolder = isNew && isSideFile;
    return status;
}

int removeFile(sqlite3_vfs *, const char *name, int syncsFolder)
{
    const bool isOurs = theRecording && theRecording->isOurs(name) && QFile::exists(QFile::decodeName(name));
    const int number = isOurs ? theRecording->fileOf(name, false) : 0;
    const int status = below->xDelete(below, name, syncsFolder);
    if (status != SQLITE_OK || !isOurs)
        return status;
    theRecording->take({.what = Event::What::Remove, .file = number, .name = theRecording->nameOf(name)});
    if (syncsFolder)
        theRecording->take({.what = Event::What::SyncFolder});
    return status;
}

int weaken(sqlite3 *handle, char **, const struct sqlite3_api_routines *)
{
    const bool isNormal = theRecording && theRecording->trust() == Trust::Normal;
    return sqlite3_exec(handle, isNormal ? "PRAGMA synchronous = NORMAL" : "PRAGMA synchronous = OFF", nullptr, nullptr, nullptr);
}

using Entry = void (*)();

} // namespace

Recording::Recording(const QByteArray &folder, Trust trust) : m_folder(folder + '/'), m_trust(trust), m_names(1)
{
    Q_ASSERT(!theRecording);
    theRecording = this;
    sqlite3_initialize();
    below = sqlite3_vfs_find(nullptr);
    ours = *below;
    ours.zName = "recording";
    ours.szOsFile = static_cast<int>(sizeof(File)) + below->szOsFile;
    ours.xOpen = &openFile;
    ours.xDelete = &removeFile;
    sqlite3_vfs_register(&ours, 1);
    if (trust != Trust::AsProgrammed)
        sqlite3_auto_extension(reinterpret_cast<Entry>(&weaken));
}

Recording::~Recording()
{
    sqlite3_reset_auto_extension();
    sqlite3_vfs_unregister(&ours);
    sqlite3_vfs_register(below, 1);
    theRecording = nullptr;
}

void Recording::acknowledge() { take({.what = Event::What::Acknowledge}); }

bool Recording::isOurs(const char *path) const { return path && std::string_view(path).starts_with(std::string_view(m_folder.constData())); }

QByteArray Recording::nameOf(const char *path) const { return QByteArray(path).mid(m_folder.size()); }

int Recording::fileOf(const char *path, bool isNew)
{
    const QByteArray name = nameOf(path);
    for (std::size_t number = m_names.size(); number-- > 1;) {
        if (m_names[number] == name && !isNew)
            return static_cast<int>(number);
        if (m_names[number] == name)
            m_names[number].clear();
    }
    m_names.push_back(name);
    const int number = static_cast<int>(m_names.size()) - 1;
    QByteArray bytes;
    // What was there before the recording began. Read before SQLite locks anything in it.
    if (QFile file(QFile::decodeName(path)); !isNew && file.open(QIODevice::ReadOnly))
        bytes = file.readAll();
    take({.what = isNew ? Event::What::Create : Event::What::Begin, .file = number, .bytes = bytes, .name = name});
    return number;
}

} // namespace crash
