// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/json.hpp"

#include <QCoreApplication>

#include <simdjson.h>

namespace core::json {

namespace {

constexpr int deepest = 32;

QString tr(const char *text) { return QCoreApplication::translate("Json", text); }

tl::unexpected<Error> bad(const QString &why)
{
    return failure(ErrorCode::BadInput, tr("This is not an object an entry may hold: %1").arg(why));
}

QString toQString(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

/// Turns simdjson's document into ours. A class only so that Object can let it build members in place.
class Parser {
public:
    static Result<Value> value(simdjson::dom::element element, int depth)
    {
        using simdjson::dom::element_type;
        if (depth > deepest)
            return bad(tr("it nests more than %1 levels").arg(deepest));
        switch (element.type()) {
        case element_type::NULL_VALUE: return Value();
        case element_type::BOOL: return Value(element.get_bool().value_unsafe());
        case element_type::STRING: return Value(toQString(element.get_string().value_unsafe()));
        case element_type::INT64: return integer(element.get_int64().value_unsafe());
        case element_type::UINT64:
        case element_type::DOUBLE:
            return bad(tr("it holds a number that is not a whole number within ±(2^53−1)"));
        case element_type::ARRAY: return array(element.get_array().value_unsafe(), depth);
        case element_type::OBJECT:
            return object(element.get_object().value_unsafe(), depth).map([](Object o) { return Value(std::move(o)); });
        }
        return bad(tr("it holds a value of unknown type"));
    }

    static Result<Object> object(simdjson::dom::object members, int depth)
    {
        Object result;
        result.m_members.reserve(members.size());
        for (const auto [key, element] : members) {
            auto parsed = value(element, depth + 1);
            if (!parsed)
                return failure(parsed.error());
            const QString name = toQString(key);
            // Canonical input comes sorted, so nearly always the new name belongs at the end.
            if (result.m_members.empty() || nameBefore(result.m_members.back().first, name)) {
                result.m_members.emplace_back(name, *std::move(parsed));
                continue;
            }
            if (result.contains(name))
                return bad(tr("the name \"%1\" stands twice").arg(name));
            result.set(name, *std::move(parsed));
        }
        return result;
    }

private:
    static Result<Value> integer(qint64 number)
    {
        if (number > largestInteger || number < -largestInteger)
            return bad(tr("the number %1 lies beyond ±(2^53−1)").arg(number));
        return Value(number);
    }

    static Result<Value> array(simdjson::dom::array elements, int depth)
    {
        Array result;
        result.reserve(elements.size());
        for (const auto element : elements) {
            auto parsed = value(element, depth + 1);
            if (!parsed)
                return failure(parsed.error());
            result.push_back(*std::move(parsed));
        }
        return Value(std::move(result));
    }
};

Result<Object> parseObject(QByteArrayView utf8)
{
    simdjson::dom::parser parser;
    simdjson::dom::element root;
    const simdjson::padded_string padded(utf8.data(), static_cast<std::size_t>(utf8.size()));
    if (const auto error = parser.parse(padded).get(root))
        return bad(QString::fromLatin1(simdjson::error_message(error)));
    simdjson::dom::object members;
    if (root.get(members))
        return bad(tr("it is not an object in braces"));
    return Parser::object(members, 1);
}

} // namespace core::json
