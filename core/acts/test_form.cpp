// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/test_form.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Test", text); }

std::vector<json::Object> objectsIn(const json::Object &body)
{
    std::vector<json::Object> objects;
    const json::Value *value = body.find(u"values");
    if (const json::Array *array = value ? value->array() : nullptr) {
        for (const json::Value &element : *array) {
            if (const json::Object *object = element.object())
                objects.push_back(*object);
        }
    }
    return objects;
}

std::optional<Quantity> quantityOf(const json::Object &object, QStringView name)
{
    const auto read = Quantity::read(object.text(name));
    return read ? std::optional(*read) : std::nullopt;
}

std::optional<QString> faultOf(const json::Object &object)
{
    const QString name = object.text(u"name");
    if (name.trimmed().isEmpty())
        return tr(QT_TRANSLATE_NOOP("Test", "A value that was read in a test has a name."));
    for (const auto &[member, value] : object.members()) {
        constexpr QLatin1String known[] = {"name"_L1, "read"_L1, "least"_L1, "most"_L1};
        if (std::none_of(std::begin(known), std::end(known), [&member = member](QLatin1String one) { return member == one; }) || !value.string())
            return tr(QT_TRANSLATE_NOOP("Test", "%1: \"%2\" is not part of a value that was read.")).arg(name, member);
    }
    const auto read = quantityOf(object, u"read");
    if (!read)
        return tr(QT_TRANSLATE_NOOP("Test", "%1: \"%2\" cannot be read. Give a number with its unit.")).arg(name, object.text(u"read"));
    if (!object.contains(u"least") && !object.contains(u"most"))
        return tr(QT_TRANSLATE_NOOP("Test", "%1: give the least or the most that the maintenance data allows.")).arg(name);
    for (const QString &limit : {u"least"_s, u"most"_s}) {
        const auto bound = quantityOf(object, limit);
        if (object.contains(limit) && (!bound || bound->dimension() != read->dimension()))
            return tr(QT_TRANSLATE_NOOP("Test", "%1: the limit \"%2\" is none for %3.")).arg(name, object.text(limit), read->text());
    }
    return std::nullopt;
}

} // namespace

std::vector<TestValue> testValuesIn(const json::Object &body)
{
    std::vector<TestValue> values;
    for (const json::Object &object : objectsIn(body)) {
        if (!faultOf(object))
            values.push_back({object.text(u"name"), *quantityOf(object, u"read"), quantityOf(object, u"least"), quantityOf(object, u"most")});
    }
    return values;
}

std::optional<QString> faultOfTestValues(const json::Object &body)
{
    for (const json::Object &object : objectsIn(body)) {
        if (const auto fault = faultOf(object))
            return fault;
    }
    return std::nullopt;
}

} // namespace core
