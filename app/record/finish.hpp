// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

#include "app/record/sheet.hpp"
#include "core/value/digest.hpp"
#include "core/value/instant.hpp"
#include "core/value/result.hpp"

namespace record {

/// What a file says of itself, all of it from the record and none from the machine or the hour that it is made on.
struct Particulars {
    QString title;
    QString author;    ///< may be empty
    core::Instant at;  ///< of the last entry: when the file counts as made and as changed
    core::Digest head; ///< of the last entry: its first 16 bytes are the file's permanent identifier
};

/// The drawn pages as they are handed out: dates, title and author alike in the information dictionary and in the XMP packet
/// (ISO 19005-1 section 6.7.3), an identifier that follows from the record, and a tree of bookmarks that readers open beside
/// the pages. Stays PDF 1.4, without object streams (ISO 19005-1 section 6.1.4). The same input gives the same bytes.
/// `drawn` is a PDF as Qt writes it; each bookmark's page and `y` are those of its sheet.
/// Damaged: the drawn pages cannot be read.
core::Result<QByteArray> finished(const QByteArray &drawn, const Particulars &particulars, const std::vector<Bookmark> &bookmarks);

} // namespace record
