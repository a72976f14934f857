// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <utility>
#include <vector>

#include "core/value/digest.hpp"
#include "core/value/result.hpp"

/// The text files of a bag, BagIt 1.0 (RFC 8493): what is written, and a reader that takes nothing else than that form.
namespace core::bag {

/// One file of a bag, named from the bag's own folder: `data/record.pdf`.
struct Listed {
    QString path;
    Digest digest;
    bool operator==(const Listed &) const = default;
};

/// A label of bag-info.txt with its value.
using Label = std::pair<QString, QString>;

/// bagit.txt (RFC 8493 section 2.1.1).
QByteArray declaration();

/// A manifest: a line a file, by their paths, digest and path with two blanks between, as sha256sum writes and reads them. In a
/// path CR, LF and % are percent-encoded (RFC 8493 section 2.1.3).
QByteArray manifest(std::vector<Listed> files);

/// Reads a manifest. BadInput, with the row: no digest of SHA-256, no path, a path that is written otherwise than above or leads out of the bag, the same
/// path twice, another order, a last line without its end.
Result<std::vector<Listed>> parseManifest(QByteArrayView text, const QString &file);

/// bag-info.txt (RFC 8493 section 2.2.2): a line a label, in the order given. What is no text in one line has its joints turned into blanks.
QByteArray info(const std::vector<Label> &labels);

/// Reads bag-info.txt. BadInput, with the row: no label, a continued line, the same label twice.
Result<std::vector<Label>> parseInfo(QByteArrayView text, const QString &file);

/// Whether a name is safe to look for below a folder, on any system: relative, no `..`, no backslash, no drive, no control characters, no
/// empty parts (RFC 8493 section 5.1).
bool isSafePath(QStringView path);

} // namespace core::bag
