// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/open_items.hpp"

#include <QStringList>

#include <algorithm>

#include "core/value/in_words.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

/// What may be handed over beside interfaces: the member that names it, the one that tells more, and the words.
struct OpenSort {
    QStringView member;
    QStringView more;
    const char *sentence; ///< %1 is the one, %2 the other
    const char *state;    ///< %1 is what the entry says of the state
};

constexpr OpenSort sorts[] = {
    {u"temporary", u"name", QT_TRANSLATE_NOOP("Report", "%1 applied (%2)"), QT_TRANSLATE_NOOP("Report", "applied")},
    {u"hold_point", u"state", QT_TRANSLATE_NOOP("Report", "hold point %1 %2"), QT_TRANSLATE_NOOP("Report", "hold point, %1")},
    {u"test", u"state", QT_TRANSLATE_NOOP("Report", "test %1 %2"), QT_TRANSLATE_NOOP("Report", "test, %1")},
    {u"tool", u"name", QT_TRANSLATE_NOOP("Report", "tool %1 out (%2)"), QT_TRANSLATE_NOOP("Report", "tool, out")},
    {u"tags", {}, QT_TRANSLATE_NOOP("Report", "tags %1 out"), QT_TRANSLATE_NOOP("Report", "tags, out")},
    {u"accessory", u"name", QT_TRANSLATE_NOOP("Report", "accessory %1 not placed (%2)"), QT_TRANSLATE_NOOP("Report", "accessory, not placed")},
    {u"finding", u"description", QT_TRANSLATE_NOOP("Report", "finding %1 open (%2)"), QT_TRANSLATE_NOOP("Report", "finding, open")},
};

/// The states that entries hold are stable text, and no words of a screen.
QString stateWord(const QString &state)
{
    if (state == u"void")
        return inWords(QT_TRANSLATE_NOOP("Report", "void"));
    return state == u"failed" ? inWords(QT_TRANSLATE_NOOP("Report", "failed")) : state;
}

const OpenSort *sortOf(const json::Object &item)
{
    const auto *at = std::find_if(std::begin(sorts), std::end(sorts), [&](const OpenSort &sort) { return item.contains(sort.member); });
    return at == std::end(sorts) ? nullptr : at;
}

/// `reconnected, torqued 2 of 4`: how far it is, and all that the next shift has to know.
QString interfaceStateInWords(const json::Object &item)
{
    QString text = item.text(u"stage");
    if (item.contains(u"torqued"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, torqued %2 of %3")).arg(text).arg(item.integer(u"torqued").value_or(0)).arg(item.integer(u"of").value_or(0));
    if (item.contains(u"attached"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, still attached: %2")).arg(text, item.text(u"attached"));
    const std::vector<QString> texts = item.texts(u"missing");
    const QString missing = QStringList(texts.begin(), texts.end()).join(u", "_s);
    if (!missing.isEmpty())
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, still to show: %2")).arg(text, missing);
    for (const QString &condition : item.texts(u"conditions"))
        text += u", "_s + condition;
    if (const QString stopped = item.text(u"stopped"); !stopped.isEmpty())
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, stopped: %2")).arg(text, stopped);
    if (item.contains(u"sent"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, sent to a linked job and not taken on there")).arg(text);
    if (item.contains(u"details"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, details to follow")).arg(text);
    if (item.contains(u"revision"))
        text = inWords(QT_TRANSLATE_NOOP("Report", "%1, row to look up")).arg(text);
    return text;
}

} // namespace

QString openItemInWords(const json::Object &item)
{
    const OpenSort *sort = sortOf(item);
    if (!sort)
        return inWords(QT_TRANSLATE_NOOP("Report", "%1 %2")).arg(item.text(u"interface"), interfaceStateInWords(item));
    const QString sentence = inWords(sort->sentence);
    const QString name = item.text(sort->member);
    if (sort->member == u"tool" && item.text(sort->more).isEmpty())
        return inWords(QT_TRANSLATE_NOOP("Report", "tool %1 out")).arg(name); // the register names it
    return sort->more.isEmpty() ? sentence.arg(name) : sentence.arg(name, sort->more == u"state" ? stateWord(item.text(sort->more)) : item.text(sort->more));
}

QStringView openMember(const json::Object &item)
{
    const OpenSort *sort = sortOf(item);
    return sort ? sort->member : QStringView(u"interface");
}

QString openStateInWords(const json::Object &item)
{
    const OpenSort *sort = sortOf(item);
    if (!sort)
        return {};
    const QString state = inWords(sort->state);
    return item.contains(u"state") ? state.arg(stateWord(item.text(u"state"))) : state;
}

OpenItem openItemOf(const json::Object &item)
{
    const OpenSort *sort = sortOf(item);
    if (!sort)
        return {item.text(u"interface"), interfaceStateInWords(item)};
    const QString id = item.text(sort->member);
    const QString more = sort->more.isEmpty() || sort->more == u"state" ? QString() : item.text(sort->more);
    return {more.isEmpty() ? id : inWords(QT_TRANSLATE_NOOP("Report", "%1 (%2)")).arg(id, more), openStateInWords(item)};
}

} // namespace core
