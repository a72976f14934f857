// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/canonical.hpp"

#include <QCoreApplication>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Ledger", text); }

constexpr qint64 formVersion = 1;

json::Value pinValue(const std::optional<Head> &pin)
{
    if (!pin)
        return {};
    return json::Object{{QStringLiteral("seq"), pin->seq}, {QStringLiteral("hash"), pin->hash.hex()}};
}

/// Takes typed members out of the object and remembers the first one that was not as it must be.
class Reader {
public:
    explicit Reader(const json::Object &object) : m_object(object) {}

    QString text(const QString &name)
    {
        const json::Value *value = m_object.find(name);
        if (!value || !value->string())
            fault(name);
        return m_object.text(name);
    }
    qint64 integer(const QString &name)
    {
        const auto number = m_object.integer(name);
        if (!number)
            fault(name);
        return number.value_or(0);
    }
    /// Turns a text into a T with `parse`; the fault names the member.
    template <class Parse>
    auto parsed(const QString &name, Parse parse)
    {
        auto result = parse(text(name));
        if (!result)
            fault(name);
        return result;
    }
    const json::Value *any(const QString &name)
    {
        const json::Value *value = m_object.find(name);
        if (!value)
            fault(name);
        return value;
    }
    void fault(const QString &name)
    {
        if (!m_fault)
            m_fault = name;
    }
    const std::optional<QString> &firstFault() const { return m_fault; }

private:
    const json::Object &m_object;
    std::optional<QString> m_fault;
};

tl::unexpected<Error> badMember(const QString &name)
{
    return failure(ErrorCode::Damaged, tr("The entry's \"%1\" is missing or not of its type.").arg(name));
}

std::optional<Head> readPin(Reader &reader, const json::Value *value)
{
    if (!value || value->isNull())
        return std::nullopt;
    const json::Object *pin = value->object();
    const auto hash = pin ? Digest::parse(pin->text(u"hash")) : std::nullopt;
    const auto seq = pin ? pin->integer(u"seq") : std::nullopt;
    if (!hash || !seq || pin->members().size() != 2) {
        reader.fault(QStringLiteral("register"));
        return std::nullopt;
    }
    return Head{*seq, *hash};
}

Result<Statement> readStatement(const json::Object &object)
{
    Reader reader(object);
    if (reader.integer(QStringLiteral("v")) != formVersion)
        return failure(ErrorCode::Damaged, tr("The entry is not of form 1; a later version of the program may read it."));
    const auto ledger = reader.parsed(QStringLiteral("ledger"), [](const QString &t) { return LedgerId::parse(t); });
    const auto at = reader.parsed(QStringLiteral("at"), [](const QString &t) { return Instant::parseLedger(t); });
    const auto author = reader.parsed(QStringLiteral("author"), [](const QString &t) { return PersonId::parse(t); });
    const auto key = reader.parsed(QStringLiteral("key"), [](const QString &t) { return Digest::parse(t); });
    const auto prev = reader.parsed(QStringLiteral("prev"), [](const QString &t) { return Digest::parse(t); });
    const qint64 seq = reader.integer(QStringLiteral("seq"));
    const QString meaning = reader.text(QStringLiteral("meaning"));
    const QString kind = reader.text(QStringLiteral("kind"));
    const json::Value *subject = reader.any(QStringLiteral("subject"));
    const json::Value *body = reader.any(QStringLiteral("body"));
    const auto pin = readPin(reader, reader.any(QStringLiteral("register")));
    if (subject && !subject->isNull() && !subject->string())
        reader.fault(QStringLiteral("subject"));
    if (body && !body->object())
        reader.fault(QStringLiteral("body"));
    if (reader.firstFault())
        return badMember(*reader.firstFault());
    const std::optional<QString> about = subject->string() ? std::optional(*subject->string()) : std::nullopt;
    return Statement{*ledger, seq, *at, *author, *key, meaning, kind, about, *body->object(), pin, *prev};
}

} // namespace

Draft draftOf(const Statement &said)
{
    return {said.author, said.at, said.kind, said.subject, said.body};
}

QByteArray canonicalBytes(const Statement &said)
{
    return json::canonical(json::Object{
        {QStringLiteral("v"), formVersion},
        {QStringLiteral("ledger"), said.ledger.text()},
        {QStringLiteral("seq"), said.seq},
        {QStringLiteral("at"), said.at.text()},
        {QStringLiteral("author"), said.author.text()},
        {QStringLiteral("key"), said.key.hex()},
        {QStringLiteral("meaning"), said.meaning},
        {QStringLiteral("kind"), said.kind},
        {QStringLiteral("subject"), said.subject ? json::Value(*said.subject) : json::Value()},
        {QStringLiteral("body"), said.body},
        {QStringLiteral("register"), pinValue(said.reg)},
        {QStringLiteral("prev"), said.prev.hex()},
    });
}

Result<Statement> parseStatement(QByteArrayView bytes)
{
    const auto object = json::parseObject(bytes);
    if (!object)
        return failure(ErrorCode::Damaged, object.error().message);
    auto said = readStatement(*object);
    // Writing it again and comparing catches every second spelling at once: order, blanks, escapes, unknown names.
    if (said && canonicalBytes(*said) != bytes)
        return failure(ErrorCode::Damaged, tr("The entry is not in its canonical form (RFC 8785)."));
    return said;
}

} // namespace core
