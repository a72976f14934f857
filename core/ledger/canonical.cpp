// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/ledger/canonical.hpp"

#include <QCoreApplication>

#include "core/ledger/linked_heads.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Ledger", text); }

constexpr qint64 formVersion = 1;

json::Value pinValue(const std::optional<Head> &pin)
{
    if (!pin)
        return {};
    return json::Object{{u"seq"_s, pin->seq}, {u"hash"_s, pin->hash.hex()}};
}

/// Takes typed members out of the object and remembers the first one that was not as it must be.
class Reader {
public:
    explicit Reader(const json::Object &object) : m_object(object) {}

    QString text(QLatin1String name)
    {
        const json::Value *value = m_object.find(name);
        const QString *string = value ? value->string() : nullptr;
        if (!string)
            fault(name);
        return string ? *string : QString();
    }
    qint64 integer(QLatin1String name)
    {
        const json::Value *value = m_object.find(name);
        const qint64 *number = value ? value->integer() : nullptr;
        if (!number)
            fault(name);
        return number ? *number : 0;
    }
    /// Turns a text into a T with `parse`; the fault names the member.
    template <class Parse>
    auto parsed(QLatin1String name, Parse parse)
    {
        auto result = parse(text(name));
        if (!result)
            fault(name);
        return result;
    }
    const json::Value *any(QLatin1String name)
    {
        const json::Value *value = m_object.find(name);
        if (!value)
            fault(name);
        return value;
    }
    void fault(QLatin1String name)
    {
        if (!m_fault)
            m_fault = name;
    }
    const std::optional<QLatin1String> &firstFault() const { return m_fault; }

private:
    const json::Object &m_object;
    std::optional<QLatin1String> m_fault;
};

tl::unexpected<Error> badMember(QLatin1String name)
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
        reader.fault("register"_L1);
        return std::nullopt;
    }
    return Head{*seq, *hash};
}

/// Left out where there is none, and each ledger once in the order of their names: so a list has one spelling.
std::vector<LinkedHead> readLinked(Reader &reader, const json::Value *value)
{
    std::vector<LinkedHead> linked;
    if (!value)
        return linked;
    const json::Array *heads = value->array();
    if (!heads || heads->empty())
        reader.fault("linked"_L1);
    for (const json::Value &one : heads ? *heads : json::Array()) {
        const auto head = readLinkedHead(one);
        if (!head || (!linked.empty() && !(linked.back().ledger < head->ledger)))
            reader.fault("linked"_L1);
        if (head)
            linked.push_back(*head);
    }
    return linked;
}

/// Every one of them must be there, and no other but `linked`.
constexpr std::size_t memberCount = 12;

Result<Statement> readStatement(json::Object object)
{
    Reader reader(object);
    if (reader.integer("v"_L1) != formVersion)
        return failure(ErrorCode::Damaged, tr("The entry is not of form 1; a later version of the program may read it."));
    const auto ledger = reader.parsed("ledger"_L1, [](const QString &t) { return LedgerId::parse(t); });
    const auto at = reader.parsed("at"_L1, [](const QString &t) { return Instant::parseLedger(t); });
    const auto author = reader.parsed("author"_L1, [](const QString &t) { return PersonId::parse(t); });
    const auto key = reader.parsed("key"_L1, [](const QString &t) { return Digest::parse(t); });
    const auto prev = reader.parsed("prev"_L1, [](const QString &t) { return Digest::parse(t); });
    const qint64 seq = reader.integer("seq"_L1);
    const QString meaning = reader.text("meaning"_L1);
    const QString kind = reader.text("kind"_L1);
    const json::Value *subject = reader.any("subject"_L1);
    const json::Value *body = reader.any("body"_L1);
    const auto pin = readPin(reader, reader.any("register"_L1));
    const json::Value *heads = object.find("linked"_L1);
    std::vector<LinkedHead> linked = readLinked(reader, heads);
    if (subject && !subject->isNull() && !subject->string())
        reader.fault("subject"_L1);
    if (body && !body->object())
        reader.fault("body"_L1);
    if (reader.firstFault())
        return badMember(*reader.firstFault());
    if (object.members().size() != memberCount + (heads ? 1 : 0))
        return failure(ErrorCode::Damaged, tr("The entry has a member that no entry has."));
    const std::optional<QString> about = subject->string() ? std::optional(*subject->string()) : std::nullopt;
    json::Value said = object.take(u"body");
    return Statement{*ledger, seq, *at, *author, *key, meaning, kind, about, std::move(*said.object()), pin, *prev, std::move(linked)};
}

} // namespace

Draft draftOf(const Statement &said)
{
    return {said.author, said.at, said.kind, said.subject, said.body};
}

QByteArray canonicalBytes(const Statement &said)
{
    json::Object object; // in canonical order, so that each member is put at the end
    object.set(u"at"_s, said.at.text());
    object.set(u"author"_s, said.author.text());
    object.set(u"body"_s, said.body);
    object.set(u"key"_s, said.key.hex());
    object.set(u"kind"_s, said.kind);
    object.set(u"ledger"_s, said.ledger.text());
    if (!said.linked.empty())
        object.set(u"linked"_s, linkedHeadsValue(said.linked));
    object.set(u"meaning"_s, said.meaning);
    object.set(u"prev"_s, said.prev.hex());
    object.set(u"register"_s, pinValue(said.reg));
    object.set(u"seq"_s, said.seq);
    object.set(u"subject"_s, said.subject ? json::Value(*said.subject) : json::Value());
    object.set(u"v"_s, formVersion);
    return json::canonical(object);
}

Result<Statement> parseStatement(QByteArrayView bytes)
{
    json::ObjectReader reader;
    return parseStatement(bytes, reader);
}

Result<Statement> parseStatement(QByteArrayView bytes, json::ObjectReader &objects)
{
    // What the members hold has one spelling each (digests, moments, ids), so bytes in canonical form are the only ones that
    // say this.
    auto object = objects.canonical(bytes);
    if (!object)
        return failure(ErrorCode::Damaged, object.error().message);
    return readStatement(*std::move(object));
}

} // namespace core
