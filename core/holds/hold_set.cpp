// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/holds/hold_set.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/hold_form.hpp"
#include "core/holds/condition.hpp"
#include "core/rules/form.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Hold", text); }

std::optional<QString> faultOf(const NamedHold &hold)
{
    const auto somebody = PersonId::parse(u"-");
    const Refusals refusals = refusalsOfForm({*somebody, Instant::fromMilliseconds(0), u"hold.set"_s, hold.id.text(), hold.body});
    if (!refusals.empty())
        return refusals.front().sentence;
    if (const auto fault = faultOfHoldForm(hold.body))
        return fault;
    for (const HoldCondition &condition : holdIn(hold.id, hold.body).conditions) {
        if (const auto fault = core::faultOf(condition))
            return fault;
    }
    return std::nullopt;
}

} // namespace

Result<std::vector<NamedHold>> parseHoldSet(QByteArrayView json, const QString &fileName)
{
    const Where place{fileName, std::nullopt, std::nullopt};
    const auto object = json::parseObject(json);
    if (!object)
        return failure(ErrorCode::BadInput, object.error().message, place);
    const json::Value *value = object->find(u"hold_points");
    if (!value || !value->array())
        return failure(ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Hold", "The file holds no list \"hold_points\".")), place);
    std::vector<NamedHold> holds;
    for (const json::Value &element : *value->array()) {
        json::Object body = element.object() ? *element.object() : json::Object();
        const QString text = body.text(u"id");
        body.remove(u"id");
        const auto id = HoldId::parse(text);
        const bool isKnown = id && std::any_of(holds.begin(), holds.end(), [&](const NamedHold &one) { return one.id == *id; });
        if (!id || isKnown)
            return failure(ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Hold", "A hold point has no id of its own: \"%1\".")).arg(text), place);
        holds.push_back({*id, std::move(body)});
        if (const auto fault = faultOf(holds.back()))
            return failure(ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Hold", "Hold point %1: %2")).arg(text, *fault), place);
    }
    return holds;
}

std::vector<Draft> holdDrafts(const std::vector<NamedHold> &holds, const PersonId &author, Instant at)
{
    std::vector<Draft> drafts;
    for (const NamedHold &hold : holds)
        drafts.push_back({author, at, u"hold.set"_s, hold.id.text(), hold.body});
    return drafts;
}

} // namespace core
