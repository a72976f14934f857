// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/job/item_filter.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/job/state.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

template <class T>
bool has(const std::vector<T> &all, const T &one)
{
    return std::find(all.begin(), all.end(), one) != all.end();
}

/// `access_panel` as people say it.
QString spoken(const std::vector<QString> &kinds)
{
    QStringList words;
    for (QString kind : kinds)
        words << kind.replace(u'_', u' ');
    return words.join(u", "_s);
}

} // namespace

bool ItemFilter::letsThrough(const Listing &listed) const
{
    // What was undone without being on a list has no kind until its details follow, and could be any.
    return (kinds.empty() || listed.kind.isEmpty() || has(kinds, listed.kind)) && !has(exceptKinds, listed.kind) && (zones.empty() || has(zones, listed.zone)) && (ids.empty() || has(ids, listed.id));
}

ItemFilter itemFilterIn(const json::Object &object)
{
    ItemFilter filter{object.texts(u"kinds"), object.texts(u"except_kinds"), object.texts(u"zones"), {}};
    for (const QString &text : object.texts(u"interfaces")) {
        if (const auto id = InterfaceId::parse(text))
            filter.ids.push_back(*id);
    }
    return filter;
}

QString inWordsOf(const ItemFilter &filter)
{
    QString words = filter.kinds.empty() ? tr(QT_TRANSLATE_NOOP("Hold", "every interface")) : tr(QT_TRANSLATE_NOOP("Hold", "every %1")).arg(spoken(filter.kinds));
    if (!filter.ids.empty()) {
        QStringList ids;
        for (const InterfaceId &id : filter.ids)
            ids << id.text();
        words = ids.join(u", "_s);
    }
    if (!filter.zones.empty())
        words = tr(QT_TRANSLATE_NOOP("Hold", "%1 of zone %2")).arg(words, QStringList(filter.zones.begin(), filter.zones.end()).join(u", "_s));
    if (!filter.exceptKinds.empty())
        words = tr(QT_TRANSLATE_NOOP("Hold", "%1 (except %2)")).arg(words, spoken(filter.exceptKinds));
    return words;
}

} // namespace core
