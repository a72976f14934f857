// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/hold_form.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

/// The objects of an array; what is none is passed over.
std::vector<json::Object> objectsIn(const json::Object &body, QStringView name)
{
    std::vector<json::Object> objects;
    const json::Value *value = body.find(name);
    if (const json::Array *array = value ? value->array() : nullptr) {
        for (const json::Value &element : *array) {
            if (const json::Object *object = element.object())
                objects.push_back(*object);
        }
    }
    return objects;
}

HoldCondition conditionIn(const json::Object &object)
{
    return {object.text(u"what"), itemFilterIn(object), object.text(u"stage"), object.texts(u"names"), object.integer(u"least").value_or(1), object.text(u"until")};
}

HoldGate gateIn(const json::Object &object) { return {object.text(u"act"), itemFilterIn(object), object.texts(u"names")}; }

enum class MemberForm { Text, Texts, Number };

struct Member {
    QLatin1String name;
    MemberForm form;
};

constexpr Member conditionMembers[] = {{"what"_L1, MemberForm::Text},   {"stage"_L1, MemberForm::Text},  {"until"_L1, MemberForm::Text},  {"least"_L1, MemberForm::Number},       {"names"_L1, MemberForm::Texts},
                                       {"kinds"_L1, MemberForm::Texts}, {"except_kinds"_L1, MemberForm::Texts}, {"zones"_L1, MemberForm::Texts}, {"interfaces"_L1, MemberForm::Texts}};
constexpr Member gateMembers[] = {{"act"_L1, MemberForm::Text}, {"names"_L1, MemberForm::Texts}, {"kinds"_L1, MemberForm::Texts}, {"except_kinds"_L1, MemberForm::Texts}, {"zones"_L1, MemberForm::Texts}, {"interfaces"_L1, MemberForm::Texts}};

bool isOf(MemberForm form, const json::Value &value)
{
    switch (form) {
    case MemberForm::Text: return value.string() && !value.string()->isEmpty();
    case MemberForm::Number: return value.integer() != nullptr;
    case MemberForm::Texts: {
        const json::Array *array = value.array();
        return array && !array->empty() && std::all_of(array->begin(), array->end(), [](const json::Value &one) { return one.string() && isIdText(*one.string()); });
    }
    }
    Q_UNREACHABLE();
}

template <std::size_t N>
std::optional<QString> faultOfMembers(const json::Object &object, const Member (&known)[N])
{
    for (const auto &[name, value] : object.members()) {
        const auto at = std::find_if(std::begin(known), std::end(known), [&name = name](const Member &one) { return one.name == name; });
        if (at == std::end(known))
            return tr(QT_TRANSLATE_NOOP("Hold", "There is no member \"%1\" in conditions or gates of hold points.")).arg(name);
        if (!isOf(at->form, value))
            return tr(QT_TRANSLATE_NOOP("Hold", "The member \"%1\" of a hold point is not of the form that it has to be.")).arg(name);
    }
    return std::nullopt;
}

} // namespace

HoldPoint holdIn(const HoldId &id, const json::Object &body)
{
    HoldPoint hold{id, body.text(u"title"), {}, {}, body.texts(u"statements"), body.text(u"authority"), body.isTrue(u"independent"), std::nullopt};
    for (const json::Object &object : objectsIn(body, u"conditions"))
        hold.conditions.push_back(conditionIn(object));
    for (const json::Object &object : objectsIn(body, u"gates"))
        hold.gates.push_back(gateIn(object));
    return hold;
}

std::optional<QString> faultOfHoldForm(const json::Object &body)
{
    for (const json::Object &object : objectsIn(body, u"conditions")) {
        if (const auto fault = faultOfMembers(object, conditionMembers))
            return fault;
    }
    for (const json::Object &object : objectsIn(body, u"gates")) {
        if (const auto fault = faultOfMembers(object, gateMembers))
            return fault;
    }
    return std::nullopt;
}

} // namespace core
