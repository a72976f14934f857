// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QIODevice>
#include <QString>

#include <functional>

#include "core/value/result.hpp"

namespace record {

/// Has `write` fill a file beside `path`, flushes it to the disk and renames it to `path`. When `write` fails or the disk
/// does, `path` stays as it was. What is there and is no plain file (a folder, a device, a pipe) is refused. Errors: write's own; NoSpace and Io with what to do next.
core::Result<void> writeSafely(const QString &path, const std::function<core::Result<void>(QIODevice &)> &write);

/// Flushes a finished file to the disk and renames it to `path`, in the same folder or one on the same disk. Same care, same errors.
core::Result<void> moveSafely(const QString &file, const QString &path);

} // namespace record
