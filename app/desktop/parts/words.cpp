// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/words.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QLocale>
#include <QStringList>

#include <algorithm>

namespace desktop {

namespace {

/// A unit is what hangs on the aircraft as well; English alone has one word for both. Other labels are found without the comment.
constexpr const char *unitOfMeasurement[] = QT_TRANSLATE_NOOP3("Field", "Unit", "of measurement");

/// `BOLT-6 (Reused: 4; Scrapped: 1), SEAL-28 (…)`; nothing where the field names no columns.
QString linesInWords(const core::Field &field, const core::json::Value &value, const core::Register &reg)
{
    QStringList lines;
    const core::json::Array *array = field.columns.empty() ? nullptr : value.array();
    for (std::size_t i = 0; array && i < array->size(); ++i) {
        const core::json::Object *line = (*array)[i].object();
        QStringList parts;
        for (const core::Field &column : field.columns) {
            const core::json::Value *member = line ? line->find(QString(column.name)) : nullptr;
            const QString words = member ? valueInWords(column, *member, reg) : QString();
            if (!words.isEmpty())
                parts << (parts.isEmpty() ? words : QCoreApplication::translate("Field", "%1: %2").arg(labelOf(column), words));
        }
        const QString first = parts.isEmpty() ? QString() : parts.takeFirst();
        lines << (parts.isEmpty() ? first : QCoreApplication::translate("Field", "%1 (%2)").arg(first, parts.join(QStringLiteral("; "))));
    }
    return lines.join(QStringLiteral(", "));
}

QString joined(const core::json::Array &values, const core::Field &field, const core::Register &reg)
{
    QStringList parts;
    core::Field single = field;
    single.type = field.type == core::FieldType::People ? core::FieldType::Person : core::FieldType::Text;
    for (const core::json::Value &value : values) {
        if (const QString words = valueInWords(single, value, reg); !words.isEmpty())
            parts << words;
    }
    return parts.join(QStringLiteral(", "));
}

} // namespace

QString verbOf(const core::Act &act) { return QCoreApplication::translate("Act", act.verb); }
QString doneOf(const core::Act &act) { return QCoreApplication::translate("Act", act.done); }

QString labelOf(const core::Field &field)
{
    return field.type == core::FieldType::Unit ? QCoreApplication::translate("Field", field.label, unitOfMeasurement[1]) : QCoreApplication::translate("Field", field.label);
}

QString choiceMidSentence(QStringView choice) { return QCoreApplication::translate("Choice", choice.toUtf8().constData()); }

QString choiceInWords(QStringView choice)
{
    QString words = choiceMidSentence(choice);
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString itemInWords(const core::InterfaceState &item) { return item.listed.id.text() + u' ' + item.listed.name; }

QString momentInWords(const core::Instant &at)
{
    const QDateTime utc = QDateTime::fromMSecsSinceEpoch(at.milliseconds(), Qt::UTC);
    return QCoreApplication::translate("Moment", "%1 UTC").arg(QLocale().toString(utc, QCoreApplication::translate("Moment", "d MMM yyyy, HH:mm")));
}

QString momentInWords(const core::JobState &job, qint64 seq, const core::Instant &at)
{
    return core::doubtOfTime(job, seq) ? QCoreApplication::translate("Moment", "%1, in doubt").arg(momentInWords(at)) : momentInWords(at);
}

QString markInWords(const core::Mark &mark, const core::JobState &job, const core::Register &reg)
{
    return QCoreApplication::translate("Moment", "%1, %2").arg(reg.nameOf(mark.by), momentInWords(job, mark.seq, mark.at));
}

QString valueInWords(const core::Field &field, const core::json::Value &value, const core::Register &reg)
{
    switch (field.type) {
    case core::FieldType::Digest:
    case core::FieldType::DigestElsewhere:
    case core::FieldType::PublicKey: return {};
    case core::FieldType::Records: return linesInWords(field, value, reg);
    case core::FieldType::Choice: return value.string() ? choiceInWords(*value.string()) : QString();
    case core::FieldType::Flag: return value.boolean() && *value.boolean() ? QCoreApplication::translate("Field", "yes") : QString();
    case core::FieldType::Person: {
        const auto id = value.string() ? core::PersonId::parse(*value.string()) : std::nullopt;
        return id ? reg.nameOf(*id) : QString();
    }
    case core::FieldType::Tool: {
        const auto id = value.string() ? core::ToolId::parse(*value.string()) : std::nullopt;
        const core::Tool *tool = id ? reg.tool(*id) : nullptr;
        return tool ? tool->id.text() + u' ' + tool->name : value.string() ? *value.string() : QString();
    }
    case core::FieldType::Text:
    case core::FieldType::Integer:
    case core::FieldType::Date:
    case core::FieldType::Moment:
    case core::FieldType::Decimal:
    case core::FieldType::Unit:
    case core::FieldType::Quantity:
    case core::FieldType::Interface:
    case core::FieldType::Job:
    case core::FieldType::Texts:
    case core::FieldType::Statements:
    case core::FieldType::People:
    case core::FieldType::Interfaces: break;
    }
    if (const qint64 *integer = value.integer())
        return QString::number(*integer);
    if (const core::json::Array *array = value.array())
        return joined(*array, field, reg);
    return value.string() ? *value.string() : QString();
}

QString bodyInWords(const core::Act &act, const core::json::Object &body, const core::Register &reg)
{
    QStringList parts;
    bool isAfterReading = false;
    for (const core::Field &field : act.fields) {
        const core::json::Value *value = body.find(QString(field.name));
        const QString words = value ? valueInWords(field, *value, reg) : QString();
        // A unit belongs to the reading before it, "Reading: 24.0 N·m", and says nothing without one.
        if (field.type == core::FieldType::Unit && isAfterReading)
            parts.last() += u' ' + words;
        isAfterReading = field.type == core::FieldType::Decimal && !words.isEmpty();
        if (!words.isEmpty() && field.type != core::FieldType::Unit)
            parts << QCoreApplication::translate("Field", "%1: %2").arg(labelOf(field), words);
    }
    return parts.join(QStringLiteral(" · "));
}

QString subjectInWords(core::SubjectSort sort, const std::optional<QString> &subject, const core::JobState &job)
{
    if (!subject)
        return {};
    const auto called = [&](const QString &name) { return name.isEmpty() ? *subject : *subject + u' ' + name; };
    switch (sort) {
    case core::SubjectSort::NewInterface:
    case core::SubjectSort::Interface: {
        const auto id = core::InterfaceId::parse(*subject);
        const core::InterfaceState *item = id ? job.item(*id) : nullptr;
        return item ? itemInWords(*item) : *subject;
    }
    case core::SubjectSort::NewTemporary:
    case core::SubjectSort::Temporary: {
        const auto id = core::TemporaryId::parse(*subject);
        const core::TemporaryItem *temporary = id ? job.temporary(*id) : nullptr;
        return temporary ? called(temporary->name) : *subject;
    }
    case core::SubjectSort::NewAccessory:
    case core::SubjectSort::Accessory: {
        const auto id = core::AccessoryId::parse(*subject);
        const core::Accessory *accessory = id ? job.accessory(*id) : nullptr;
        return accessory ? called(accessory->name) : *subject;
    }
    case core::SubjectSort::HoldPoint: {
        const auto id = core::HoldId::parse(*subject);
        const core::HoldPoint *hold = id ? job.hold(*id) : nullptr;
        return hold ? hold->title : *subject;
    }
    case core::SubjectSort::NewTest: {
        const auto at = std::find_if(job.tests.begin(), job.tests.end(), [&](const core::JobTest &test) { return test.id.text() == *subject; });
        return at == job.tests.end() ? *subject : called(at->name);
    }
    case core::SubjectSort::NewJobTool:
    case core::SubjectSort::JobTool: {
        const auto id = core::ToolId::parse(*subject);
        const core::JobTool *tool = id ? job.tools.last(*id) : nullptr;
        return tool ? called(tool->name) : *subject;
    }
    case core::SubjectSort::Nothing:
    case core::SubjectSort::NewFinding:
    case core::SubjectSort::Finding:
    case core::SubjectSort::Person:
    case core::SubjectSort::NewPerson:
    case core::SubjectSort::NewAuthorisation:
    case core::SubjectSort::Authorisation:
    case core::SubjectSort::NewTool:
    case core::SubjectSort::Tool: return *subject;
    }
    Q_UNREACHABLE();
}

QString walkRoundInWords(const core::InterfaceState &item)
{
    if (item.stillAttached)
        return QCoreApplication::translate("WalkRound", "still attached: %1").arg(item.stillAttached->what);
    return item.walkedRound ? QCoreApplication::translate("WalkRound", "confirmed free") : QString();
}

QString hardwareInWords(const std::vector<core::HardwareLine> &listed)
{
    QStringList parts;
    for (const core::HardwareLine &line : listed) {
        const QString part = QCoreApplication::translate("Hardware", "%1 × %2").arg(QString::number(line.quantity), line.part);
        parts << (line.mustBeNew ? QCoreApplication::translate("Hardware", "%1 (always new)").arg(part) : part);
    }
    return parts.join(QStringLiteral(", "));
}

QString hardwareInWords(const std::vector<core::HardwareRemoved> &removed)
{
    QStringList parts;
    for (const core::HardwareRemoved &line : removed)
        parts << QCoreApplication::translate("Hardware", "%1 × %2").arg(QString::number(line.quantity), line.part);
    return parts.join(QStringLiteral(", "));
}

QString hardwareInWords(const std::vector<core::HardwareUse> &used)
{
    QStringList parts;
    for (const core::HardwareUse &line : used) {
        QStringList became;
        if (line.reused > 0)
            became << QCoreApplication::translate("Hardware", "%1 reused").arg(line.reused);
        if (line.renewed > 0)
            became << QCoreApplication::translate("Hardware", "%1 renewed of %2").arg(QString::number(line.renewed), line.batch);
        if (line.scrapped > 0)
            became << QCoreApplication::translate("Hardware", "%1 scrapped").arg(line.scrapped);
        parts << QCoreApplication::translate("Hardware", "%1: %2").arg(line.part, became.join(QStringLiteral(", ")));
    }
    return parts.join(QStringLiteral("; "));
}

QString spreadsheetColumn(qint64 column)
{
    QString letters;
    for (qint64 rest = column; rest > 0; rest = (rest - 1) / 26)
        letters.prepend(QChar(static_cast<char16_t>(u'A' + (rest - 1) % 26)));
    return letters;
}

QString refusalsInWords(const core::Refusals &refusals)
{
    QStringList lines;
    for (const core::Refusal &refusal : refusals) {
        if (!lines.contains(refusal.sentence))
            lines << refusal.sentence;
    }
    return lines.join(u'\n');
}

} // namespace desktop
