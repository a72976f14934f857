// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QString>
#include <QStringView>

#include <memory>
#include <utility>
#include <variant>
#include <vector>

#include "core/value/result.hpp"

/// The part of JSON that a ledger entry may hold: strings, integers within ±(2^53−1), true and false, null, arrays and
/// objects. No fractions: a measured decimal is a string, as it was typed.
namespace core::json {

class Value;
using Array = std::vector<Value>;

/// Members sorted by UTF-16 code units (RFC 8785 section 3.2.3), each name once. Copies share their members until one of them is changed, since an
/// entry's body is handed from the reader to the rules, the fold and the reports. Copies may be read in several threads.
class Object {
public:
    using Members = std::vector<std::pair<QString, Value>>;

    Object() = default;
    Object(std::initializer_list<std::pair<QString, Value>> members);

    /// Sets a member, replacing one of that name.
    void set(const QString &name, Value value);
    void remove(QStringView name);

    /// Takes the member out of the object; null when it is absent.
    Value take(QStringView name);
    /// The member, or nullptr.
    const Value *find(QStringView name) const;
    const Value *find(QLatin1String name) const;
    bool contains(QStringView name) const { return find(name) != nullptr; }
    /// The text of a member, empty when it is absent or no string.
    QString text(QStringView name) const;
    /// The members of an array of strings; anything else in it is passed over.
    std::vector<QString> texts(QStringView name) const;
    /// The integer, or nothing.
    std::optional<qint64> integer(QStringView name) const;
    /// True only when the member is the literal true.
    bool isTrue(QStringView name) const;

    bool isEmpty() const;
    const Members &members() const;
    bool operator==(const Object &) const;

private:
    friend class Parser;
    static const Members &none();
    /// The members, to be changed: this object's alone.
    Members &own();

    std::shared_ptr<Members> m_members; ///< null while there is none
};

class Value {
public:
    Value() = default;
    Value(bool b) : m_value(b) {}
    Value(int i) : m_value(qint64{i}) {}
    Value(qint64 i) : m_value(i) {}
    Value(QString s) : m_value(std::move(s)) {}
    Value(Array a) : m_value(std::move(a)) {}
    Value(Object o) : m_value(std::move(o)) {}
    Value(const char *) = delete; // would turn into a bool unnoticed

    bool isNull() const { return std::holds_alternative<std::monostate>(m_value); }
    const bool *boolean() const { return std::get_if<bool>(&m_value); }
    const qint64 *integer() const { return std::get_if<qint64>(&m_value); }
    const QString *string() const { return std::get_if<QString>(&m_value); }
    const Array *array() const { return std::get_if<Array>(&m_value); }
    const Object *object() const { return std::get_if<Object>(&m_value); }
    Object *object() { return std::get_if<Object>(&m_value); }
    bool operator==(const Value &) const = default;

private:
    std::variant<std::monostate, bool, qint64, QString, Array, Object> m_value;
};

// Here because a vector of an incomplete type may not be asked anything.
inline const Object::Members &Object::members() const { return m_members ? *m_members : none(); }
inline bool Object::isEmpty() const { return members().empty(); }

/// The largest integer an entry may hold, 2^53−1 (RFC 8785 section 3.2.2.3, IEEE 754 doubles).
constexpr qint64 largestInteger = 9'007'199'254'740'991;

/// The order of member names: UTF-16 code units (RFC 8785 section 3.2.3), not code points and not UTF-8 bytes.
bool nameBefore(QStringView a, QStringView b);

/// Whether every text in it is whole: half a surrogate pair, pasted say, has no UTF-8, so its bytes would say something else.
bool isWellFormed(const Value &value);

/// Makes an array of strings.
Array arrayOf(const std::vector<QString> &texts);

/// Reads objects one after another in the same buffers, which for an entry cost as much to make as the reading. Not for two threads at a time.
class ObjectReader {
public:
    ObjectReader();
    ~ObjectReader();
    Q_DISABLE_COPY_MOVE(ObjectReader)

    /// As parseCanonicalObject().
    Result<Object> canonical(QByteArrayView utf8);

private:
    friend Result<Object> parseObject(QByteArrayView utf8);
    struct Buffers;
    std::unique_ptr<Buffers> m_buffers;
};

/// Reads one JSON object. Refuses, with what and where: bad syntax, bad UTF-8, fractions and exponents, integers beyond
/// ±(2^53−1), duplicate names, lone surrogates, more than 32 levels.
Result<Object> parseObject(QByteArrayView utf8);

/// The same, and refuses bytes that are not in canonical form (RFC 8785): blanks, another order of members, another spelling
/// of a string or a number. Quicker than reading, writing again and comparing.
Result<Object> parseCanonicalObject(QByteArrayView utf8);

/// The canonical bytes, RFC 8785: members sorted, no blanks, shortest escapes, UTF-8.
QByteArray canonical(const Object &object);

} // namespace core::json
