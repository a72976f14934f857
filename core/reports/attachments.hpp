// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/reports/job_record.hpp"

namespace core {

/// One entry that names a photo or a paper of the store.
struct NamedAttachment {
    const Entry *entry;
    const Line *line;
    const InterfaceState *item; ///< nullptr where it belongs to none that the job lists
    Digest digest;
    QString mediaType; ///< as the entry tells it; empty when it does not
};

/// Every entry that brought an attachment, in whatever field of its act, without those that mark one which another brought: zone by zone, in the order of the list and then of the ledger; those that
/// belong to no listed interface last. All of it lasts as long as `record` does.
std::vector<NamedAttachment> namedAttachments(const JobRecord &record);

/// `Before, entry 71: Chafed at the clamp.` — what the entry says of its attachment: when it was taken, of what, the finding that it shows.
QString attachmentText(const NamedAttachment &named);
/// The marks that stand on it.
std::vector<PhotoMark> marksOn(const NamedAttachment &named);
/// `Mark 1: chafed at the clamp. Ana Ruiz, recorded 2026-03-02 09:04:00 UTC, entry 72`
QString markText(const JobRecord &record, const PhotoMark &mark);
/// Who attached it, what that signature means, when, and the beginning of its SHA-256.
QString attachmentProof(const JobRecord &record, const NamedAttachment &named);

} // namespace core
