// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/kinds/kind.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

#include "core/job/temporary.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/value/json.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Kinds", text); }

/// Reads members of one object and remembers the first fault, so that the parser below reads like the file.
class Members {
public:
    Members(const json::Object &object, QString fileName) : m_object(object), m_file(std::move(fileName)) {}

    QString text(const QString &name)
    {
        const json::Value *value = m_object.find(name);
        const QString *string = value ? value->string() : nullptr;
        if (!string || string->trimmed().isEmpty() || *string != string->trimmed())
            fault(name, tr("a text without blanks at its ends"));
        return string ? *string : QString();
    }

    std::vector<QString> texts(const QString &name)
    {
        const json::Value *value = m_object.find(name);
        const json::Array *array = value ? value->array() : nullptr;
        const bool onlyTexts = array && std::all_of(array->begin(), array->end(), [](const json::Value &element) {
            return element.string() && !element.string()->trimmed().isEmpty();
        });
        if (!onlyTexts)
            fault(name, tr("a list of texts"));
        return m_object.texts(name);
    }

    json::Object object(const QString &name)
    {
        const json::Value *value = m_object.find(name);
        const json::Object *object = value ? value->object() : nullptr;
        if (!object)
            fault(name, tr("an object in braces"));
        return object ? *object : json::Object();
    }

    void allowOnly(const QStringList &names)
    {
        for (const auto &[name, value] : m_object.members()) {
            if (!names.contains(name))
                fault(name, tr("no such member; known are %1").arg(names.join(QStringLiteral(", "))));
        }
    }

    void fault(const QString &member, const QString &expected)
    {
        if (!m_fault)
            m_fault = Error{ErrorCode::BadInput, tr("The member \"%1\" is not as it must be. Expected: %2.").arg(member, expected),
                            {m_file, std::nullopt, std::nullopt}};
    }

    const std::optional<Error> &firstFault() const { return m_fault; }

private:
    const json::Object &m_object;
    QString m_file;
    std::optional<Error> m_fault;
};

QString knownRequirements()
{
    QStringList names;
    for (const Requirement &requirement : requirements())
        names << requirement.name;
    return names.join(QStringLiteral(", "));
}

/// Lower-case letters, digits and underscores: it stands in lists, entries and file names.
bool isKindId(QStringView id)
{
    return !id.isEmpty() && std::all_of(id.begin(), id.end(), [](QChar c) {
        return (c >= u'a' && c <= u'z') || (c >= u'0' && c <= u'9') || c == u'_';
    });
}

void checkRequirements(Members &members, const std::vector<QString> &names)
{
    for (auto name = names.begin(); name != names.end(); ++name) {
        if (!findRequirement(*name))
            members.fault(QStringLiteral("requirements"), tr("known requirements (%1), not \"%2\"").arg(knownRequirements(), *name));
        if (std::find(names.begin(), name, *name) != name)
            members.fault(QStringLiteral("requirements"), tr("each requirement once, not \"%1\" twice").arg(*name));
    }
}

Result<Verbs> verbsIn(const json::Object &object, const QString &fileName)
{
    Members members(object, fileName);
    members.allowOnly({QStringLiteral("off"), QStringLiteral("off_done"), QStringLiteral("on"), QStringLiteral("on_done")});
    Verbs verbs{members.text(QStringLiteral("off")), members.text(QStringLiteral("off_done")), members.text(QStringLiteral("on")),
                members.text(QStringLiteral("on_done"))};
    if (members.firstFault())
        return failure(*members.firstFault());
    return verbs;
}

} // namespace

QString kindSortText(KindSort sort)
{
    switch (sort) {
    case KindSort::Interface: return QStringLiteral("interface");
    case KindSort::Temporary: return QStringLiteral("temporary");
    }
    Q_UNREACHABLE();
}

std::optional<KindSort> parseKindSort(QStringView text)
{
    for (const KindSort sort : {KindSort::Interface, KindSort::Temporary}) {
        if (text == kindSortText(sort))
            return sort;
    }
    return std::nullopt;
}

QString wordOfKind(const QString &word) { return word.isEmpty() ? QString() : QCoreApplication::translate("Kind", word.toUtf8().constData()); }

Result<Kind> parseKind(QByteArrayView json, const QString &fileName)
{
    const auto object = json::parseObject(json);
    if (!object)
        return failure(ErrorCode::BadInput, object.error().message, {fileName, std::nullopt, std::nullopt});

    Members members(*object, fileName);
    members.allowOnly({QStringLiteral("id"), QStringLiteral("sort"), QStringLiteral("name"), QStringLiteral("verbs"),
                       QStringLiteral("requirements"), QStringLiteral("look_at"), QStringLiteral("caution")});
    const QString id = members.text(QStringLiteral("id"));
    const auto sort = parseKindSort(members.text(QStringLiteral("sort")));
    const QString name = members.text(QStringLiteral("name"));
    const auto verbs = verbsIn(members.object(QStringLiteral("verbs")), fileName);
    const auto asked = members.texts(QStringLiteral("requirements"));
    const auto lookAt = members.texts(QStringLiteral("look_at"));
    const bool isCautioned = object->contains(u"caution");
    const QString caution = isCautioned ? members.text(QStringLiteral("caution")) : QString();

    if (!isKindId(id) || id + QStringLiteral(".json") != fileName.section(u'/', -1))
        members.fault(QStringLiteral("id"), tr("lower-case letters, digits and underscores, and the file named after it"));
    if (!sort)
        members.fault(QStringLiteral("sort"), tr("%1 or %2").arg(kindSortText(KindSort::Interface), kindSortText(KindSort::Temporary)));
    const auto &sorts = allTemporarySorts();
    if (sort == KindSort::Temporary && std::none_of(sorts.begin(), sorts.end(), [&](TemporarySort one) { return temporaryKindId(one) == id; }))
        members.fault(QStringLiteral("id"), tr("a sort of temporary items that the program has"));
    if (sort == KindSort::Temporary && !asked.empty())
        members.fault(QStringLiteral("requirements"), tr("none on a temporary item"));
    if (lookAt.empty())
        members.fault(QStringLiteral("look_at"), tr("at least one thing that an inspector looks at"));
    checkRequirements(members, asked);

    if (members.firstFault())
        return failure(*members.firstFault());
    if (!verbs)
        return failure(verbs.error());
    return Kind{id, *sort, name, *verbs, asked, lookAt, caution};
}

} // namespace core
