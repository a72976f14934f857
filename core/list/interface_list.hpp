// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>

#include <vector>

#include "core/job/state.hpp"
#include "core/kinds/kinds.hpp"
#include "core/value/json.hpp"
#include "core/value/result.hpp"

namespace core {

/// One row of an interface list, ready to become the draft of an `interface.listed` entry.
struct ListedRow {
    qint64 row; ///< in the file
    InterfaceId id;
    json::Object body;
    Listing listing; ///< what the body says
    bool operator==(const ListedRow &) const = default;
};

/// All rows, each after those that its access names, else in the file's order, so that they can be listed one after the
/// other; or all that is wrong with the file, in the order of rows, each error with file, row and column.
using InterfaceList = tl::expected<std::vector<ListedRow>, std::vector<Error>>;

/// What a list is read against.
struct ListContext {
    QString fileName;      ///< for messages
    const Kinds &kinds;
    const JobState &job;   ///< its zones, and the interfaces it has already
};

/// Reads an interface list (form: csv.hpp). The first record names the columns, in any order: `id` and the members of an
/// `interface.listed` body, `id`, `name`, `kind` and `zone` at least; capitals do not matter, a blank stands for `_`.
///
/// - Several requirements or interfaces in one cell are separated by `|`; a `|` or `\` in an id is written `\|`, `\\`.
/// - An empty requirements cell takes what the kind asks for by default; `none` asks for nothing.
/// - `critical` is `yes`, or `no` or empty. `inspections` is 1 when empty.
/// - Rows with nothing in any cell are passed over. Blanks around an unquoted cell are, too.
///
/// Refuses: unknown, missing or repeated columns; unknown kind, zone, requirement, unit; ids that stand twice or are
/// listed already; numbers with a decimal comma; a least torque above the most; a requirement without its specification; access
/// that names nothing or runs in a circle; a twin group of one; a designation of a half on two rows.
InterfaceList readInterfaceList(QByteArrayView bytes, const ListContext &context);

/// The interfaces of a job as a list that readInterfaceList takes again and reads to the same rows.
QByteArray writeInterfaceList(const std::vector<Listing> &listings);
QByteArray writeInterfaceList(const JobState &job);

/// The body of the `interface.listed` entry that says so: the inverse of listingIn (core/acts/listing.hpp). Only what is known
/// is in it, and always `requirements` and `inspections`.
json::Object bodyOf(const Listing &listing);

/// A list as it is shown before it is taken.
struct ListPreview {
    std::vector<QString> columns; ///< translated
    std::vector<std::vector<QString>> rows;
    QString summary; ///< `86 interfaces in 5 zones, 12 of them critical`
};

ListPreview previewOf(const std::vector<ListedRow> &rows, const Kinds &kinds);

} // namespace core
