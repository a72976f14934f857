// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/json.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <charconv>
#include <functional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include <simdjson.h>

#include "core/value/json_escape.hpp"

namespace core::json {

namespace {

constexpr int deepest = 32;
/// More than any object of ours has; each member is looked for among the others.
constexpr std::size_t mostMembers = 1000;

QString tr(const char *text) { return QCoreApplication::translate("Json", text); }

tl::unexpected<Error> bad(const QString &why)
{
    return failure(ErrorCode::BadInput, tr("This is not an object an entry may hold: %1").arg(why));
}

/// How the members of an object may stand.
enum class Order { Any, Canonical };

QString toQString(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// Texts that were read before, to be shared: names of members, kinds, people and tools come again in entry after entry.
class Texts {
public:
    QString of(std::string_view text)
    {
        if (text.size() > longest)
            return toQString(text);
        if (const auto at = m_texts.find(text); at != m_texts.end())
            return at->second;
        QString made = toQString(text);
        if (m_texts.size() < most)
            m_texts.emplace(text, made);
        return made;
    }

private:
    struct Hash {
        using is_transparent = void;
        std::size_t operator()(std::string_view text) const { return std::hash<std::string_view>()(text); }
    };
    static constexpr std::size_t longest = 40;
    static constexpr std::size_t most = 512;
    std::unordered_map<std::string, QString, Hash, std::equal_to<>> m_texts;
};

} // namespace

/// Turns simdjson's document into ours. A class only so that Object can let it build members in place.
class Parser {
public:
    Parser(Order order, Texts &texts) : m_order(order), m_texts(texts) {}

    Result<Value> value(simdjson::dom::element element, int depth)
    {
        using simdjson::dom::element_type;
        if (depth > deepest)
            return bad(tr("it nests more than %1 levels").arg(deepest));
        switch (element.type()) {
        case element_type::NULL_VALUE: return Value();
        case element_type::BOOL: return Value(element.get_bool().value_unsafe());
        case element_type::STRING: return Value(m_texts.of(element.get_string().value_unsafe()));
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

    Result<Object> object(simdjson::dom::object members, int depth)
    {
        Object result;
        if (members.size() > mostMembers)
            return bad(tr("an object in it has more than %1 members").arg(mostMembers));
        Object::Members &read = result.own();
        read.reserve(members.size());
        for (const auto [key, element] : members) {
            auto parsed = value(element, depth + 1);
            if (!parsed)
                return failure(parsed.error());
            QString name = m_texts.of(key);
            // Canonical input comes sorted, so nearly always the new name belongs at the end.
            if (read.empty() || nameBefore(read.back().first, name)) {
                read.emplace_back(std::move(name), *std::move(parsed));
                continue;
            }
            if (m_order == Order::Canonical)
                return bad(tr("its members are not in canonical order (RFC 8785)"));
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

    Result<Value> array(simdjson::dom::array elements, int depth)
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

    Order m_order;
    Texts &m_texts;
};

struct ObjectReader::Buffers {
    simdjson::dom::parser parser;
    std::vector<char> padded; ///< simdjson reads a little beyond the end
    std::string written;
    Texts texts;

    Result<simdjson::dom::object> members(QByteArrayView utf8)
    {
        const auto size = static_cast<std::size_t>(utf8.size());
        padded.assign(size + simdjson::SIMDJSON_PADDING, '\0');
        std::copy(utf8.begin(), utf8.end(), padded.begin());
        simdjson::dom::element root;
        if (const auto error = parser.parse(padded.data(), size, false).get(root))
            return bad(QString::fromLatin1(simdjson::error_message(error)));
        simdjson::dom::object members;
        if (root.get(members))
            return bad(tr("it is not an object in braces"));
        return members;
    }
};

namespace {

/// Writes what simdjson read in canonical form, but for the order of members, which it keeps.
class Writer {
public:
    explicit Writer(std::string &out) : m_out(out) {}

    void object(simdjson::dom::object members)
    {
        char before = '{';
        for (const auto [key, element] : members) {
            m_out += std::exchange(before, ',');
            string(key);
            m_out += ':';
            value(element);
        }
        if (before == '{')
            m_out += before;
        m_out += '}';
    }

private:
    void value(simdjson::dom::element element)
    {
        using simdjson::dom::element_type;
        switch (element.type()) {
        case element_type::NULL_VALUE: m_out += "null"; return;
        case element_type::BOOL: m_out += element.get_bool().value_unsafe() ? "true" : "false"; return;
        case element_type::STRING: string(element.get_string().value_unsafe()); return;
        case element_type::INT64: integer(element.get_int64().value_unsafe()); return;
        case element_type::ARRAY: array(element.get_array().value_unsafe()); return;
        case element_type::OBJECT: object(element.get_object().value_unsafe()); return;
        case element_type::UINT64:
        case element_type::DOUBLE: return; // refused before anything is written
        }
    }

    void array(simdjson::dom::array elements)
    {
        char before = '[';
        for (const auto element : elements) {
            m_out += std::exchange(before, ',');
            value(element);
        }
        if (before == '[')
            m_out += before;
        m_out += ']';
    }

    void integer(qint64 number)
    {
        std::array<char, 24> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
        m_out.append(digits.data(), end);
    }

    void string(std::string_view text)
    {
        m_out += '"';
        std::size_t plainFrom = 0;
        for (std::size_t i = 0; i < text.size(); ++i) {
            const auto byte = static_cast<unsigned char>(text[i]);
            if (standsForItself(byte))
                continue;
            m_out.append(text, plainFrom, i - plainFrom);
            plainFrom = i + 1;
            m_out += escapeOf(byte);
        }
        m_out.append(text, plainFrom);
        m_out += '"';
    }

    std::string &m_out;
};

} // namespace

ObjectReader::ObjectReader() : m_buffers(std::make_unique<Buffers>()) {}
ObjectReader::~ObjectReader() = default;

Result<Object> ObjectReader::canonical(QByteArrayView utf8)
{
    const auto members = m_buffers->members(utf8);
    if (!members)
        return failure(members.error());
    auto object = Parser(Order::Canonical, m_buffers->texts).object(*members, 1);
    if (!object)
        return object;
    // The members stand in canonical order, so writing them in the order of the bytes must yield the bytes.
    m_buffers->written.clear();
    Writer(m_buffers->written).object(*members);
    if (QByteArrayView(m_buffers->written) != utf8)
        return bad(tr("it is not in canonical form (RFC 8785)"));
    return object;
}

Result<Object> parseObject(QByteArrayView utf8)
{
    ObjectReader::Buffers buffers;
    const auto members = buffers.members(utf8);
    if (!members)
        return failure(members.error());
    return Parser(Order::Any, buffers.texts).object(*members, 1);
}

Result<Object> parseCanonicalObject(QByteArrayView utf8) { return ObjectReader().canonical(utf8); }

} // namespace core::json
