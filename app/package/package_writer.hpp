// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "app/package/contents.hpp"
#include "app/package/zip_writer.hpp"
#include "core/kinds/kinds.hpp"
#include "core/value/result.hpp"
#include "db/store.hpp"

namespace package {

struct PackageOptions {
    record::PageSize paper = record::PageSize::A4;
    record::WhenOpen whenOpen = record::WhenOpen::Refuse;
    Going going{};
};

struct Packed {
    qint64 entries = 0;     ///< of all ledgers
    qint64 attachments = 0;
    core::Head head;        ///< of the job
    core::Digest root;
    bool isClosed = false;
};

/// Writes a job's record package to `path`, replacing a file of that name: the job's entries, the register and linked jobs as far as they are pinned, attachments,
/// PDF, CSV, and how to check it all. Appears whole and flushed to the disk, or not at all. The same job gives the same bytes on the same computer.
/// Needs a QGuiApplication for the PDF.
/// Refused: the job is not closed. Damaged: what the record rests on is not sound (session::requireSound). BadInput: it is larger than 4 GiB. Cancelled; NoSpace, Io: the disk.
core::Result<Packed> writePackage(db::Store &store, const core::LedgerId &job, const core::Kinds &kinds, const QString &path, const PackageOptions &options = {});

} // namespace package
