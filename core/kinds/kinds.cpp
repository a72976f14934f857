// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/kinds/kinds.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Kinds", text); }

} // namespace

Result<Kinds> Kinds::of(std::vector<Kind> kinds)
{
    if (kinds.empty())
        return failure(ErrorCode::NotFound, tr("There is no kind of interface. Install the program again."));
    std::sort(kinds.begin(), kinds.end(), [](const Kind &a, const Kind &b) { return a.name < b.name; });
    for (std::size_t i = 0; i < kinds.size(); ++i) {
        for (std::size_t j = i + 1; j < kinds.size(); ++j) {
            if (kinds[i].id == kinds[j].id || kinds[i].name == kinds[j].name)
                return failure(ErrorCode::BadInput,
                               tr("Two kinds of interface share the id or the name \"%1\".").arg(kinds[j].name));
        }
    }
    return Kinds(std::move(kinds));
}

const Kind *Kinds::find(QStringView id) const
{
    const auto at = std::find_if(m_kinds.begin(), m_kinds.end(), [&](const Kind &kind) { return kind.id == id; });
    return at == m_kinds.end() ? nullptr : &*at;
}

QString Kinds::nameOf(const QString &id) const
{
    const Kind *kind = find(id);
    return kind ? wordOfKind(kind->name) : id;
}

} // namespace core
