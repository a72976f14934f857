// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/value/json.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/value/json_escape.hpp"

namespace core::json {

bool nameBefore(QStringView a, QStringView b)
{
    // std::lexicographical_compare on code units: QString's own operator< happens to agree, but does not promise it.
    return std::lexicographical_compare(a.utf16(), a.utf16() + a.size(), b.utf16(), b.utf16() + b.size());
}

namespace {

void appendUtf8(QByteArray &out, QStringView text)
{
    // Nearly all of an entry is ASCII, where a unit is a byte; the general conversion would allocate for each string.
    const qsizetype from = out.size();
    out.resize(from + text.size());
    char *byte = out.data() + from;
    for (const QChar c : text) {
        if (c.unicode() > 0x7f) {
            out.truncate(from);
            out += text.toUtf8();
            return;
        }
        *byte++ = static_cast<char>(c.unicode());
    }
}

void writeString(QByteArray &out, QStringView text)
{
    out += '"';
    qsizetype plainFrom = 0;
    const auto flush = [&](qsizetype upTo) { appendUtf8(out, text.sliced(plainFrom, upTo - plainFrom)); };
    for (qsizetype i = 0; i < text.size(); ++i) {
        const char16_t c = text[i].unicode();
        if (standsForItself(c))
            continue;
        flush(i);
        plainFrom = i + 1;
        out += QByteArrayView(escapeOf(c));
    }
    flush(text.size());
    out += '"';
}

void writeValue(QByteArray &out, const Value &value);

void writeObject(QByteArray &out, const Object &object)
{
    out += '{';
    bool first = true;
    for (const auto &[name, value] : object.members()) {
        if (!std::exchange(first, false))
            out += ',';
        writeString(out, name);
        out += ':';
        writeValue(out, value);
    }
    out += '}';
}

void writeArray(QByteArray &out, const Array &array)
{
    out += '[';
    for (std::size_t i = 0; i < array.size(); ++i) {
        if (i > 0)
            out += ',';
        writeValue(out, array[i]);
    }
    out += ']';
}

void writeValue(QByteArray &out, const Value &value)
{
    if (const auto *b = value.boolean())
        out += *b ? "true" : "false";
    else if (const auto *i = value.integer())
        out += QByteArray::number(*i);
    else if (const auto *s = value.string())
        writeString(out, *s);
    else if (const auto *a = value.array())
        writeArray(out, *a);
    else if (const auto *o = value.object())
        writeObject(out, *o);
    else
        out += "null";
}

} // namespace

namespace {

template <class Name>
auto placeOf(const Object::Members &members, Name name)
{
    return std::find_if(members.begin(), members.end(), [&](const auto &member) { return member.first == name; });
}

} // namespace

Object::Object(std::initializer_list<std::pair<QString, Value>> members)
{
    own().reserve(members.size());
    for (const auto &[name, value] : members)
        set(name, value);
}

const Object::Members &Object::none()
{
    static const Members nothing;
    return nothing;
}

Object::Members &Object::own()
{
    if (!m_members)
        m_members = std::make_shared<Members>();
    else if (m_members.use_count() > 1)
        m_members = std::make_shared<Members>(*m_members);
    return *m_members;
}

void Object::set(const QString &name, Value value)
{
    Members &members = own();
    if (members.empty() || nameBefore(members.back().first, name)) {
        members.emplace_back(name, std::move(value));
        return;
    }
    const auto at = std::lower_bound(members.begin(), members.end(), name,
                                     [](const auto &member, const QString &wanted) { return nameBefore(member.first, wanted); });
    if (at != members.end() && at->first == name)
        at->second = std::move(value);
    else
        members.insert(at, {name, std::move(value)});
}

Value Object::take(QStringView name)
{
    const auto there = placeOf(members(), name);
    if (there == members().end())
        return {};
    const auto index = there - members().begin();
    const auto at = own().begin() + index;
    Value value = std::move(at->second);
    own().erase(at);
    return value;
}

void Object::remove(QStringView name)
{
    if (contains(name))
        std::erase_if(own(), [&](const auto &member) { return member.first == name; });
}

const Value *Object::find(QStringView name) const
{
    const auto at = placeOf(members(), name);
    return at == members().end() ? nullptr : &at->second;
}

const Value *Object::find(QLatin1String name) const
{
    const auto at = placeOf(members(), name);
    return at == members().end() ? nullptr : &at->second;
}

QString Object::text(QStringView name) const
{
    const Value *value = find(name);
    const QString *string = value ? value->string() : nullptr;
    return string ? *string : QString();
}

std::vector<QString> Object::texts(QStringView name) const
{
    std::vector<QString> result;
    const Value *value = find(name);
    if (const Array *array = value ? value->array() : nullptr) {
        for (const Value &element : *array) {
            if (const QString *string = element.string())
                result.push_back(*string);
        }
    }
    return result;
}

std::optional<qint64> Object::integer(QStringView name) const
{
    const Value *value = find(name);
    const qint64 *number = value ? value->integer() : nullptr;
    return number ? std::optional(*number) : std::nullopt;
}

bool Object::isTrue(QStringView name) const
{
    const Value *value = find(name);
    const bool *truth = value ? value->boolean() : nullptr;
    return truth && *truth;
}

bool Object::operator==(const Object &other) const
{
    return m_members == other.m_members || members() == other.members();
}

bool isWellFormed(const Value &value)
{
    if (const QString *string = value.string())
        return string->isValidUtf16();
    if (const Array *array = value.array())
        return std::all_of(array->begin(), array->end(), &isWellFormed);
    const Object *object = value.object();
    return !object || std::all_of(object->members().begin(), object->members().end(),
                                  [](const auto &member) { return member.first.isValidUtf16() && isWellFormed(member.second); });
}

Array arrayOf(const std::vector<QString> &texts)
{
    Array array;
    for (const QString &text : texts)
        array.emplace_back(text);
    return array;
}

QByteArray canonical(const Object &object)
{
    QByteArray out;
    out.reserve(640);
    writeObject(out, object);
    return out;
}

} // namespace core::json
