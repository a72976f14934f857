// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <functional>

#include "core/reports/job_record.hpp"
#include "core/value/result.hpp"

namespace record {

/// How this program sets a record out; counts up with every change of what stands where, so that a PDF set otherwise is not taken for one that was altered.
/// 2: what is still due, signatures in doubt and the organisation on the cover; what was handed over as a table.
/// 3: findings name their authority reference.
constexpr int layoutNumber = 3;

enum class PageSize { A4, Letter };

/// What to do about a job that is not closed.
enum class WhenOpen {
    Refuse,
    MarkAsDraft, ///< every page says NOT CLOSED
};

enum class Going { On, Cancel };

/// Told about each page; `pages` is 0 while the pages are being laid out and their number is not known. Returns whether to go on. Called in the language
/// of the screens, while the record is written in its own.
using Progress = std::function<Going(int page, int pages)>;

/// Fetches the bytes of an attachment. What it answers instead of them, in words, is printed in the place of the photo.
using FetchAttachment = std::function<core::Result<QByteArray>(const core::Digest &)>;

struct RecordOptions {
    PageSize pageSize = PageSize::A4;
    WhenOpen whenOpen = WhenOpen::Refuse;
    Progress progress{};
    FetchAttachment attachment{}; ///< without one, photos are named and not shown
};

/// The job's record as the bytes of a PDF/A-1b. They follow from the entries, their attachments, the kinds and the language alone: on one machine the same job
/// gives the same bytes, whenever it is exported.
/// Needs a QGuiApplication for its fonts; a program without a display starts one on the platform `offscreen`.
/// Refused: the job is not closed. NotFound: no font to write with. Cancelled: progress said so. Io, Damaged: it could not be drawn.
core::Result<QByteArray> recordPdf(const core::JobRecord &job, const RecordOptions &options = {});

/// Writes recordPdf() to a file, replacing a file of that name. Written beside it first, flushed to the disk, then
/// renamed: a cancelled or failed export leaves what was there before, or nothing.
/// Errors: those of recordPdf(). NoSpace, Io: the disk.
core::Result<void> writeRecord(const core::JobRecord &job, const QString &path, const RecordOptions &options = {});

/// Writes the interfaces with their stages, who and when, as CSV (report `interfaces`). Same care, same errors.
core::Result<void> writeInterfacesCsv(const core::JobRecord &job, const QString &path);

} // namespace record
