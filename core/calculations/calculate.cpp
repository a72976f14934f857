// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/calculations/calculation.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/rules/form.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Calculation", text); }

const Field *fieldNamed(const Calculation &calculation, const QString &name)
{
    const auto at = std::find_if(calculation.fields.begin(), calculation.fields.end(), [&](const Field &one) { return one.name == name; });
    return at == calculation.fields.end() ? nullptr : &*at;
}

QString unknownField(const Calculation &calculation, const QString &name)
{
    QStringList names;
    for (const Field &field : calculation.fields)
        names << field.name;
    return tr(QT_TRANSLATE_NOOP("Calculation", "%1 has no field \"%2\"; it has %3.")).arg(calculation.name, name, names.join(u", "_s));
}

json::Value valueOf(const Field &field, const QString &text)
{
    switch (field.type) {
    case FieldType::Integer: {
        bool isNumber = false;
        const qint64 number = text.toLongLong(&isNumber);
        return isNumber && std::abs(number) <= json::largestInteger ? json::Value(number) : json::Value(text);
    }
    case FieldType::Quantity: {
        const auto read = Quantity::read(text, *field.dimension);
        return read ? read->text() : text;
    }
    case FieldType::Unit: {
        const Unit *unit = findUnit(text);
        return unit ? unit->symbol : text;
    }
    case FieldType::Texts: {
        json::Array parts;
        for (const QString &part : text.split(u','))
            parts.emplace_back(part.trimmed());
        return parts;
    }
    case FieldType::Text:
    case FieldType::Flag:
    case FieldType::Date:
    case FieldType::Moment:
    case FieldType::Decimal:
    case FieldType::Choice:
    case FieldType::Person:
    case FieldType::Interface:
    case FieldType::Tool:
    case FieldType::Job:
    case FieldType::Digest:
    case FieldType::DigestElsewhere:
    case FieldType::PublicKey:
    case FieldType::People:
    case FieldType::Interfaces:
    case FieldType::Statements:
    case FieldType::Records: return text;
    }
    Q_UNREACHABLE();
}

QString textOf(const json::Value &value)
{
    if (value.string())
        return *value.string();
    if (value.integer())
        return QString::number(*value.integer());
    QStringList parts;
    if (const json::Array *array = value.array()) {
        for (const json::Value &part : *array)
            parts << textOf(part);
    }
    return parts.join(u", "_s);
}

} // namespace

std::vector<Given> givenIn(const Calculation &calculation, const json::Object &body)
{
    std::vector<Given> given;
    for (const Field &field : calculation.fields) {
        if (const json::Value *value = body.find(QString(field.name)))
            given.push_back({QCoreApplication::translate("Field", field.label), textOf(*value)});
    }
    return given;
}

QStringList faultsOfForm(const Calculation &calculation, const json::Object &body)
{
    QStringList faults;
    for (const Field &field : calculation.fields) {
        const json::Value *value = body.find(QString(field.name));
        if (value) {
            if (const auto why = whyNotOfType(field, *value))
                faults << *why;
        } else if (field.needed == Needed::Always) {
            faults << tr(QT_TRANSLATE_NOOP("Calculation", "\"%1\" (%2) is missing.")).arg(QCoreApplication::translate("Field", field.label), field.name);
        }
    }
    for (const auto &member : body.members()) {
        if (!fieldNamed(calculation, member.first))
            faults << unknownField(calculation, member.first);
    }
    return faults;
}

Result<Calculated> calculate(const Calculation &calculation, const json::Object &body, const LookUpTables &tables)
{
    if (const QStringList faults = faultsOfForm(calculation, body); !faults.isEmpty())
        return failure(ErrorCode::BadInput, faults.join(u' '));
    return calculation.work(body, tables);
}

Result<json::Object> bodyOf(const Calculation &calculation, const std::vector<TypedField> &typed)
{
    json::Object body;
    for (const TypedField &one : typed) {
        const Field *field = fieldNamed(calculation, one.name);
        if (!field)
            return failure(ErrorCode::BadInput, unknownField(calculation, one.name));
        if (body.contains(one.name))
            return failure(ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Calculation", "\"%1\" is given twice.")).arg(one.name));
        body.set(one.name, valueOf(*field, one.text.trimmed()));
    }
    return body;
}

} // namespace core
