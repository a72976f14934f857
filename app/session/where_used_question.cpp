// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/where_used_question.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "core/acts/act.hpp"
#include "core/value/spelt_alike.hpp"

namespace session {

using namespace Qt::StringLiterals;

namespace {

QString tr(const char *text) { return QCoreApplication::translate("WhereUsed", text); }

/// A person's id, or the id of the one who is known by that name.
core::Result<QString> personBy(const QString &typed, const core::Register &reg)
{
    const auto id = core::PersonId::parse(typed);
    if (id && reg.person(*id))
        return typed;
    QStringList named;
    for (const auto &one : reg.people) {
        if (one.second.name.compare(typed, Qt::CaseInsensitive) == 0)
            named << one.first.text();
    }
    if (named.size() > 1)
        return core::failure(core::ErrorCode::BadInput, tr("Several people are called %1: %2. Say which by the id.").arg(typed, named.join(u", "_s)));
    return named.isEmpty() ? typed : named.front();
}

core::Result<core::Instant> startOf(const QString &text, qint64 daysLater)
{
    const QDate day = QDate::fromString(text, Qt::ISODate);
    if (!day.isValid() || text.size() != 10)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no day such as 2026-03-02.").arg(text));
    return core::Instant::fromMilliseconds(day.addDays(daysLater).startOfDay(Qt::UTC).toMSecsSinceEpoch());
}

/// An end that was not given lies beyond every entry.
constexpr QLatin1String firstOfAllDays("1970-01-01");
constexpr QLatin1String lastOfAllDays("9998-12-31");

core::Result<db::Between> daysBy(const UsesQuestion &question)
{
    const auto from = startOf(question.from.value_or(firstOfAllDays), 0);
    const auto next = startOf(question.until.value_or(lastOfAllDays), 1);
    if (!from || !next)
        return core::failure(from ? next.error() : from.error());
    if (*next <= *from)
        return core::failure(core::ErrorCode::BadInput, tr("%1 is later than %2: the first day comes first, or nothing could be found.").arg(question.from.value_or(firstOfAllDays), question.until.value_or(lastOfAllDays)));
    return db::Between{*from, core::Instant::fromMilliseconds(next->milliseconds() - 1)};
}

tl::unexpected<core::Error> noSuchKind(const QString &typed)
{
    std::vector<QString> kinds;
    for (const core::Act &act : core::acts())
        kinds.emplace_back(act.kind);
    const std::vector<QString> alike = core::speltAlike(typed, kinds);
    const QString none = tr("There is no kind of entry \"%1\".").arg(typed);
    return core::failure(core::ErrorCode::BadInput, alike.empty() ? none : tr("%1 Known that are spelt alike: %2.").arg(none, QStringList(alike.begin(), alike.end()).join(u", "_s)));
}

} // namespace

core::Result<db::Wanted> wantedBy(const UsesQuestion &question, const core::Register &reg)
{
    if (question.value.isEmpty())
        return core::failure(core::ErrorCode::BadInput, tr("Say what is looked for: a %1 by its name or number.").arg(sortInSentence(question.sort)));
    if (question.kind && !core::findAct(*question.kind))
        return noSuchKind(*question.kind);
    db::Wanted wanted{question.sort, question.value, {}, question.kind};
    if (question.sort == u"person") {
        auto person = personBy(question.value, reg);
        if (!person)
            return core::failure(person.error());
        wanted.value = *std::move(person);
    }
    if (question.from || question.until) {
        const auto days = daysBy(question);
        if (!days)
            return core::failure(days.error());
        wanted.between = *days;
    }
    return wanted;
}

bool isOfRegister(QStringView sort) { return sort == u"person" || sort == u"tool"; }

bool isRegistered(const db::Wanted &wanted, const core::Register &reg)
{
    const auto person = wanted.sort == u"person" ? core::PersonId::parse(wanted.value) : std::nullopt;
    const auto tool = wanted.sort == u"tool" ? core::ToolId::parse(wanted.value) : std::nullopt;
    return (person && reg.person(*person)) || (tool && reg.tool(*tool));
}

QString sortInWords(QStringView sort)
{
    if (sort == u"person")
        return tr("Person");
    if (sort == u"tool")
        return tr("Tool");
    if (sort == u"part")
        return tr("Part number");
    if (sort == u"batch")
        return tr("Batch");
    return sort == u"serial" ? tr("Serial number") : tr("Certificate");
}

QString sortInSentence(QStringView sort)
{
    if (sort == u"person")
        return tr("person");
    if (sort == u"tool")
        return tr("tool");
    if (sort == u"part")
        return tr("part number");
    if (sort == u"batch")
        return tr("batch");
    return sort == u"serial" ? tr("serial number") : tr("certificate");
}

QString thingInWords(const db::Wanted &wanted, const core::Register &reg)
{
    if (!isRegistered(wanted, reg))
        return wanted.value;
    const QString name = wanted.sort == u"person" ? reg.nameOf(*core::PersonId::parse(wanted.value)) : reg.tool(*core::ToolId::parse(wanted.value))->name;
    return tr("%1 (%2)").arg(wanted.value, name);
}

QString daysInWords(const std::optional<db::Between> &between)
{
    if (!between)
        return tr("of all its time");
    const QString from = between->from.spoken();
    const QString until = between->until.spoken();
    if (until.startsWith(lastOfAllDays))
        return tr("from %1 on").arg(from);
    return from.startsWith(firstOfAllDays) ? tr("up to %1").arg(until) : tr("from %1 to %2").arg(from, until);
}

} // namespace session
