// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArrayView>
#include <QString>
#include <QStringView>

#include <optional>
#include <vector>

#include "core/value/result.hpp"

namespace core {

/// What sort of thing a kind describes. Stable texts, see kindSortText().
enum class KindSort {
    Interface, ///< one connection between the unit and the aircraft
    Temporary, ///< put on for the job, to come off again: a TemporarySort, of which this is the id
};

QString kindSortText(KindSort sort);
std::optional<KindSort> parseKindSort(QStringView text);

/// The words for undoing and restoring: `disconnect`, `disconnected`, `reconnect`, `reconnected`; a mount is released and
/// fitted. Lower case, since they stand inside sentences.
struct Verbs {
    QString off;
    QString offDone;
    QString on;
    QString onDone;
    bool operator==(const Verbs &) const = default;
};

/// One kind of interface or temporary item, as a file of resources/kinds describes it.
struct Kind {
    QString id; ///< stable text in lists, entries and authorisations: `fuel_line`
    KindSort sort;
    QString name; ///< on screens: `Fuel line`
    Verbs verbs;
    std::vector<QString> requirements; ///< what restoring it must show unless the list says otherwise; names in requirements()
    std::vector<QString> lookAt;       ///< what an inspector looks at, one short sentence each: common practice
    QString caution;                   ///< where the work can hurt somebody; empty where nothing special is known
    bool operator==(const Kind &) const = default;
};

/// A name, verb, caution or look of a kind as it is said to a person: translated. The files hold English, which is what the record says.
QString wordOfKind(const QString &word);

/// Reads one kind: a JSON object with the members id, sort, name, verbs {off, off_done, on, on_done}, requirements, look_at
/// and, where the work can hurt somebody, caution. Refuses (BadInput, naming file and member) anything missing, unknown, empty
/// or of the wrong type, a requirement that the program does not have, any on a temporary item, a sort of these that there is not, and an id
/// that is not the file's name.
Result<Kind> parseKind(QByteArrayView json, const QString &fileName);

} // namespace core
