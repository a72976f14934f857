// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/reports/timeline.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "core/acts/act.hpp"
#include "core/kinds/verb_words.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Timeline", text); }

QString personText(const QString &id, const Register &reg)
{
    const auto person = PersonId::parse(id);
    return person ? reg.nameOf(*person) : id;
}

QString toolText(const QString &id, const Register &reg)
{
    const auto tool = ToolId::parse(id);
    const Tool *known = tool ? reg.tool(*tool) : nullptr;
    return known ? tr("%1 (%2)").arg(id, known->name) : id;
}

QString plainText(const json::Value &value)
{
    if (const QString *text = value.string())
        return *text;
    if (const qint64 *number = value.integer())
        return QString::number(*number);
    if (const bool *flag = value.boolean())
        return *flag ? tr("yes") : tr("no");
    return {};
}

/// `missing: torque, safetying`, or nothing for an empty list.
QString namedListText(const QString &name, const json::Array &list)
{
    QStringList parts;
    for (const json::Value &element : list)
        parts << plainText(element);
    return parts.isEmpty() ? QString() : tr("%1: %2").arg(name, parts.join(u", "_s));
}

/// A record in words: its first member, the others in brackets, lists last: `E13 (reconnected; missing: torque, safetying)`.
QString recordText(const json::Object &record)
{
    QStringList parts;
    QStringList lists;
    for (const auto &[name, value] : record.members()) {
        const json::Array *list = value.array();
        const QString text = list ? namedListText(name, *list) : plainText(value);
        if (!text.isEmpty())
            (list ? lists : parts) << text;
    }
    parts << lists;
    const QString first = parts.isEmpty() ? QString() : parts.takeFirst();
    return parts.isEmpty() ? first : tr("%1 (%2)").arg(first, parts.join(u"; "_s));
}

/// A line of named columns: the first, the others in brackets with their names: `BOLT-6 (Reused: 4; Scrapped: 1)`.
QString lineText(const std::vector<Field> &columns, const json::Object &line)
{
    QStringList parts;
    for (const Field &column : columns) {
        const json::Value *value = line.find(QString(column.name));
        const QString text = value ? plainText(*value) : QString();
        if (!text.isEmpty())
            parts << (parts.isEmpty() ? text : tr("%1: %2").arg(QCoreApplication::translate("Field", column.label), text));
    }
    const QString first = parts.isEmpty() ? QString() : parts.takeFirst();
    return parts.isEmpty() ? first : tr("%1 (%2)").arg(first, parts.join(u"; "_s));
}

QString listText(const json::Array &array, const Field &field, const Register &reg)
{
    QStringList parts;
    for (const json::Value &element : array) {
        if (const json::Object *record = element.object())
            parts << (field.columns.empty() ? recordText(*record) : lineText(field.columns, *record));
        else
            parts << (field.type == FieldType::People ? personText(plainText(element), reg) : plainText(element));
    }
    return parts.isEmpty() ? tr("none") : parts.join(u", "_s);
}

/// Long hex is told by its beginning; the entry's bytes hold it whole.
QString beginningOf(const QString &hex) { return hex.left(16) + u'…'; }

QString momentIn(const QString &text)
{
    const auto at = Instant::parseLedger(text);
    return at ? momentText(*at) : text;
}

QString valueText(const Field &field, const json::Value &value, const Register &reg)
{
    if (const json::Array *array = value.array())
        return listText(*array, field, reg);
    const QString text = plainText(value);
    switch (field.type) {
    case FieldType::Person: return personText(text, reg);
    case FieldType::Tool: return toolText(text, reg);
    case FieldType::Moment: return momentIn(text);
    case FieldType::Digest:
    case FieldType::DigestElsewhere:
    case FieldType::PublicKey: return beginningOf(text);
    case FieldType::Text:
    case FieldType::Integer:
    case FieldType::Flag:
    case FieldType::Date:
    case FieldType::Decimal:
    case FieldType::Unit:
    case FieldType::Quantity:
    case FieldType::Choice:
    case FieldType::Interface:
    case FieldType::Job:
    case FieldType::Texts:
    case FieldType::People:
    case FieldType::Interfaces:
    case FieldType::Statements:
    case FieldType::Records: return text;
    }
    Q_UNREACHABLE();
}

/// The unit of a decimal: what stands in the next unit field of the act.
QString unitAfter(const std::vector<Field> &fields, std::size_t decimal, const json::Object &body)
{
    for (std::size_t i = decimal + 1; i < fields.size(); ++i) {
        if (fields[i].type == FieldType::Unit)
            return u' ' + body.text(QString(fields[i].name));
    }
    return {};
}

QString fieldsText(const Act &act, const Statement &said, const Register &reg, const Kind *kind)
{
    QStringList parts;
    for (std::size_t i = 0; i < act.fields.size(); ++i) {
        const Field &field = act.fields[i];
        const json::Value *value = said.body.find(QString(field.name));
        if (!value || field.type == FieldType::Unit)
            continue;
        QString text = valueText(field, *value, reg);
        if (kind && field.name == "kind"_L1 && text == kind->id)
            text = wordOfKind(kind->name);
        if (field.type == FieldType::Decimal)
            text += unitAfter(act.fields, i, said.body);
        if (text.endsWith(u'.'))
            text.chop(1);
        parts << tr("%1: %2").arg(QCoreApplication::translate("Field", field.label), text);
    }
    return parts.join(u"; "_s);
}

/// Which acts a kind has words of its own for.
struct KindWord {
    QLatin1String act;
    QString Verbs::*done;
};

constexpr KindWord kindWords[] = {
    {QLatin1String("interface.disconnected"), &Verbs::offDone},
    {QLatin1String("interface.reconnected"), &Verbs::onDone},
};

QString doneText(const Act &act, const Kind *kind)
{
    for (const KindWord &word : kindWords) {
        if (kind && word.act == act.kind) {
            const QString done = verbInWords(kind->verbs, word.done);
            return done.left(1).toUpper() + done.mid(1);
        }
    }
    return QCoreApplication::translate("Act", act.done);
}

QString withFullStop(const QString &text) { return text.endsWith(u'.') ? text : text + u'.'; }

} // namespace

QString momentText(Instant at)
{
    return at.spoken();
}

QString momentText(const JobState &job, qint64 seq, Instant at)
{
    const TimeInDoubt *doubt = doubtOfTime(job, seq);
    return doubt ? tr("%1, in doubt (entry %2)").arg(momentText(at)).arg(doubt->mark.seq) : momentText(at);
}

QString describe(const Statement &said, const Register &reg, const Kind *kind)
{
    const Act *act = findAct(said.kind);
    if (!act)
        return tr("An entry of a kind that this version does not know: %1.").arg(said.kind);
    QString sentence = doneText(*act, kind);
    if (said.subject) {
        const bool isPerson = act->subject == SubjectSort::Person;
        sentence += u' ' + (isPerson ? personText(*said.subject, reg) : *said.subject);
    }
    sentence = withFullStop(sentence);
    const QString fields = fieldsText(*act, said, reg, kind);
    return fields.isEmpty() ? sentence : sentence + u' ' + withFullStop(fields);
}

} // namespace core
