// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/form.hpp"

#include <QDate>

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/rules/words.hpp"
#include "core/value/plain_text.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString labelOf(const Field &field) { return QCoreApplication::translate("Field", field.label); }

QString author() { return inWords(QT_TRANSLATE_NOOP("Rule", "whoever fills in the form")); }

template <class IsGood>
bool isArrayOf(const json::Value &value, IsGood isGood)
{
    const json::Array *array = value.array();
    return array && array->size() <= longestList && std::all_of(array->begin(), array->end(), isGood);
}

bool isList(FieldType type)
{
    return type == FieldType::Texts || type == FieldType::Statements || type == FieldType::People || type == FieldType::Interfaces || type == FieldType::Records;
}

bool isId(const json::Value &value) { return value.string() && isIdText(*value.string()); }
bool isText(const json::Value &value)
{
    const QString *text = value.string();
    return text && text->size() <= longestText && hasSomethingToSee(*text) && !hiddenCharacterIn(*text);
}

bool isUnitOf(const Field &field, const QString &text)
{
    const std::vector<const Unit *> all = unitsFor(field);
    return std::any_of(all.begin(), all.end(), [&](const Unit *unit) { return unit->symbol == text; });
}

bool isChoice(const Field &field, const json::Value &value)
{
    return value.string() && std::any_of(field.choices.begin(), field.choices.end(), [&](QLatin1String c) { return c == *value.string(); });
}

bool isLineOf(const Field &field, const json::Value &value);

bool isOfType(const Field &field, const json::Value &value)
{
    const QString *text = value.string();
    switch (field.type) {
    case FieldType::Text: return isText(value);
    case FieldType::Integer: return value.integer() && *value.integer() >= 0;
    case FieldType::Flag: return value.boolean();
    case FieldType::Date: return text && text->size() == 10 && QDate::fromString(*text, Qt::ISODate).isValid();
    case FieldType::Moment: return text && Instant::parseLedger(*text);
    case FieldType::Decimal: return text && Decimal::parse(*text);
    case FieldType::Unit: return text && isUnitOf(field, *text);
    case FieldType::Quantity: {
        const auto read = text ? Quantity::read(*text, *field.dimension) : Result<Quantity>(failure(ErrorCode::BadInput, {}));
        return read && read->text() == *text;
    }
    case FieldType::Choice: return isChoice(field, value);
    case FieldType::Person:
    case FieldType::Interface:
    case FieldType::Tool:
    case FieldType::Job: return isId(value);
    case FieldType::Digest:
    case FieldType::DigestElsewhere: return text && Digest::parse(*text);
    case FieldType::PublicKey: return text && PublicKey::parse(*text);
    case FieldType::Texts:
    case FieldType::Statements: return isArrayOf(value, isText);
    case FieldType::People:
    case FieldType::Interfaces: return isArrayOf(value, isId);
    case FieldType::Records: return isArrayOf(value, [&](const json::Value &line) { return isLineOf(field, line); });
    }
    Q_UNREACHABLE();
}

/// Where the field names its columns, a line has what they need, in their types, and nothing else.
bool isLineOf(const Field &field, const json::Value &value)
{
    const json::Object *line = value.object();
    if (!line || field.columns.empty())
        return line;
    const bool isWhole = std::all_of(field.columns.begin(), field.columns.end(), [&](const Field &column) {
        const json::Value *member = line->find(column.name);
        return member ? isOfType(column, *member) : column.needed == Needed::IfKnown;
    });
    return isWhole && std::all_of(line->members().begin(), line->members().end(), [&](const auto &member) {
               return std::any_of(field.columns.begin(), field.columns.end(), [&](const Field &column) { return column.name == member.first; });
           });
}

/// `Part number (part), Number (quantity), if known Batch (batch)`.
QString columnsOf(const Field &field)
{
    QStringList columns;
    for (const Field &column : field.columns) {
        const QString name = inWords(QT_TRANSLATE_NOOP("Rule", "%1 (%2)")).arg(labelOf(column), column.name);
        columns << (column.needed == Needed::Always ? name : inWords(QT_TRANSLATE_NOOP("Rule", "if known %1")).arg(name));
    }
    return columns.join(u", "_s);
}

QString whatIsExpected(const Field &field)
{
    switch (field.type) {
    case FieldType::Text: return inWords(QT_TRANSLATE_NOOP("Rule", "a text that is not blank"));
    case FieldType::Integer: return inWords(QT_TRANSLATE_NOOP("Rule", "a whole number, 0 or more"));
    case FieldType::Flag: return inWords(QT_TRANSLATE_NOOP("Rule", "true or false"));
    case FieldType::Date: return inWords(QT_TRANSLATE_NOOP("Rule", "a date such as 2026-03-02"));
    case FieldType::Moment: return inWords(QT_TRANSLATE_NOOP("Rule", "a time such as 2026-03-02T08:14:31.120Z"));
    case FieldType::Decimal: return inWords(QT_TRANSLATE_NOOP("Rule", "a decimal with a point, such as 12.5, of at most 18 digits"));
    case FieldType::Unit: {
        QStringList symbols;
        for (const Unit *unit : unitsFor(field))
            symbols << unit->symbol;
        return inWords(QT_TRANSLATE_NOOP("Rule", "one of the units %1")).arg(symbols.join(u", "_s));
    }
    case FieldType::Quantity: return inWords(QT_TRANSLATE_NOOP("Rule", "%1 with its unit, such as %2")).arg(dimensionInWords(*field.dimension), u"12.5 "_s + unitsOf(*field.dimension).front()->symbol);
    case FieldType::Choice: {
        QStringList choices;
        for (const QLatin1String one : field.choices)
            choices << one;
        return inWords(QT_TRANSLATE_NOOP("Rule", "one of: %1")).arg(choices.join(QStringLiteral(", ")));
    }
    case FieldType::Person: return inWords(QT_TRANSLATE_NOOP("Rule", "a person's id"));
    case FieldType::Interface: return inWords(QT_TRANSLATE_NOOP("Rule", "an interface's id"));
    case FieldType::Tool: return inWords(QT_TRANSLATE_NOOP("Rule", "a tool's id"));
    case FieldType::Job: return inWords(QT_TRANSLATE_NOOP("Rule", "the ledger of a job"));
    case FieldType::DigestElsewhere: return inWords(QT_TRANSLATE_NOOP("Rule", "the SHA-256 digest of a file that is kept elsewhere, in 64 lower-case hex digits"));
    case FieldType::Digest: return inWords(QT_TRANSLATE_NOOP("Rule", "a SHA-256 digest in 64 lower-case hex digits"));
    case FieldType::PublicKey: return inWords(QT_TRANSLATE_NOOP("Rule", "an Ed25519 public key in 64 lower-case hex digits"));
    case FieldType::Statements: return inWords(QT_TRANSLATE_NOOP("Rule", "a list of texts, each of them looked at and confirmed"));
    case FieldType::Texts: return inWords(QT_TRANSLATE_NOOP("Rule", "a list of texts"));
    case FieldType::People: return inWords(QT_TRANSLATE_NOOP("Rule", "a list of people's ids"));
    case FieldType::Interfaces: return inWords(QT_TRANSLATE_NOOP("Rule", "a list of interfaces' ids"));
    case FieldType::Records:
        return field.columns.empty() ? inWords(QT_TRANSLATE_NOOP("Rule", "a list of objects")) : inWords(QT_TRANSLATE_NOOP("Rule", "lines of %1")).arg(columnsOf(field));
    }
    Q_UNREACHABLE();
}

Refusal formRefusal(QLatin1String rule, const Draft &draft, const QString &sentence)
{
    return {rule, draft.subject.value_or(QString()), sentence, author()};
}

void judgeSubject(const Act &act, const Draft &draft, Refusals &refusals)
{
    const bool needed = act.subject != SubjectSort::Nothing;
    if (draft.subject && !needed) {
        refusals.push_back(formRefusal(QLatin1String("form.subject"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "%1 is about the whole job; leave the subject out.")).arg(act.kind)));
    } else if (needed && !draft.subject) {
        refusals.push_back(formRefusal(QLatin1String("form.subject"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "%1 must name what it is about.")).arg(act.kind)));
    } else if (draft.subject && !isIdText(*draft.subject)) {
        refusals.push_back(formRefusal(QLatin1String("form.subject"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" cannot be a name: use 1 to 128 plain characters that everybody sees, no blanks at either end.")).arg(*draft.subject)));
    }
}

void judgeField(const Field &field, const Draft &draft, Refusals &refusals)
{
    const json::Value *value = draft.body.find(field.name);
    if (!value) {
        if (field.needed == Needed::Always)
            refusals.push_back(formRefusal(QLatin1String("form.missing"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) is missing.")).arg(labelOf(field), field.name)));
    } else if (!json::isWellFormed(*value)) {
        refusals.push_back(formRefusal(QLatin1String("form.value"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) holds half a character, which cannot be recorded. Type it again.")).arg(labelOf(field), field.name)));
    } else if (const auto why = whyNotOfType(field, *value)) {
        refusals.push_back(formRefusal(QLatin1String("form.value"), draft, *why));
    }
}

void judgeUnknown(const Act &act, const Draft &draft, Refusals &refusals)
{
    for (const auto &[name, value] : draft.body.members()) {
        const bool known = std::any_of(act.fields.begin(), act.fields.end(), [&name = name](const Field &f) { return f.name == name; });
        if (!known)
            refusals.push_back(formRefusal(QLatin1String("form.unknown"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "%1 has no \"%2\".")).arg(act.kind, name)));
    }
}

} // namespace

std::optional<QString> whyNotOfType(const Field &field, const json::Value &value)
{
    if (isOfType(field, value))
        return std::nullopt;
    if (field.type == FieldType::Text && value.string()) {
        if (value.string()->size() > longestText)
            return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) is %3 characters long; %4 are kept. Say it shorter, or attach a file.")).arg(labelOf(field), field.name, QString::number(value.string()->size()), QString::number(longestText));
        if (const auto hidden = hiddenCharacterIn(*value.string()); hidden && hasSomethingToSee(*value.string()))
            return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) holds a character that nobody sees (%3). Type it again.")).arg(labelOf(field), field.name, *hidden);
    }
    if (const json::Array *array = value.array(); array && array->size() > longestList && isList(field.type))
        return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) is a list of %3; one entry holds %4. Make several entries of it.")).arg(labelOf(field), field.name, QString::number(array->size()), QString::number(longestList));
    if (field.type == FieldType::Quantity && value.string()) {
        if (const auto read = Quantity::read(*value.string(), *field.dimension); !read)
            return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2): %3")).arg(labelOf(field), field.name, read.error().message);
    }
    return inWords(QT_TRANSLATE_NOOP("Rule", "\"%1\" (%2) must be %3.")).arg(labelOf(field), field.name, whatIsExpected(field));
}

Refusals refusalsOfForm(const Draft &draft)
{
    Refusals refusals;
    const Act *act = findAct(draft.kind);
    if (!act) {
        refusals.push_back(formRefusal(QLatin1String("form.kind"), draft, inWords(QT_TRANSLATE_NOOP("Rule", "There is no entry of the kind \"%1\".")).arg(draft.kind)));
        return refusals;
    }
    judgeSubject(*act, draft, refusals);
    for (const Field &field : act->fields)
        judgeField(field, draft, refusals);
    judgeUnknown(*act, draft, refusals);
    return refusals;
}

} // namespace core
