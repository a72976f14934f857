// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/tell.hpp"
#include "core/calculations/as_text.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }
QString named(const char *text) { return QCoreApplication::translate("Calculation", text); }
QString labelOf(const core::Field &field) { return QCoreApplication::translate("Field", field.label); }

Array arrayOf(const QStringList &texts)
{
    Array array;
    for (const QString &text : texts)
        array.emplace_back(text);
    return array;
}

/// A heading and indented lines under it; nothing where there are none.
void addLines(QStringList &text, const QString &heading, const QStringList &lines)
{
    if (lines.isEmpty())
        return;
    text << QString() << heading;
    for (const QString &line : lines)
        text << u"  "_s + line;
}

QStringList inColumns(const std::vector<std::vector<QString>> &rows) { return rows.empty() ? QStringList() : columns(rows).split(u'\n'); }

/// What is told besides the calculations themselves ends as they do.
Answer answer(QStringList text, Object json)
{
    text << QString() << core::measure::dataGoverns();
    json.set(u"data_governs"_s, core::measure::dataGoverns());
    return {Exit::Good, text.join(u'\n'), std::move(json)};
}

Answer listing(const core::LookUpTables &tables)
{
    std::vector<std::vector<QString>> calculations, lookUps;
    Array calculationsJson, tablesJson;
    for (const core::Calculation &one : core::calculations()) {
        calculations.push_back({one.name, named(one.summary)});
        calculationsJson.emplace_back(Object{{u"name"_s, QString(one.name)}, {u"title"_s, named(one.title)}, {u"summary"_s, named(one.summary)}});
    }
    for (const core::LookUpTable &table : tables.all()) {
        lookUps.push_back({table.id, table.title});
        tablesJson.emplace_back(Object{{u"id"_s, table.id}, {u"title"_s, table.title}});
    }
    QStringList text{tr(QT_TRANSLATE_NOOP("Cli", "Calculations (remate-cli calc NAME tells the fields):"))};
    text += inColumns(calculations);
    text << QString() << tr(QT_TRANSLATE_NOOP("Cli", "Look-up tables (remate-cli calc --table ID prints one):"));
    text += inColumns(lookUps);
    return answer(text, {{u"calculations"_s, calculationsJson}, {u"tables"_s, tablesJson}});
}

QString unitsText(const core::Field &field)
{
    QStringList symbols;
    for (const core::Unit *unit : core::unitsFor(field))
        symbols << unit->symbol;
    return symbols.join(u", "_s);
}

QString choicesText(const core::Field &field)
{
    QStringList choices;
    for (const QLatin1String choice : field.choices)
        choices << choice;
    return choices.join(tr(QT_TRANSLATE_NOOP("Cli", " or ")));
}

/// What may stand in a field.
QString takes(const core::Field &field)
{
    switch (field.type) {
    case core::FieldType::Quantity: return tr(QT_TRANSLATE_NOOP("Cli", "%1, in %2")).arg(core::dimensionInWords(*field.dimension), unitsText(field));
    case core::FieldType::Unit: return tr(QT_TRANSLATE_NOOP("Cli", "a unit: %1")).arg(unitsText(field));
    case core::FieldType::Choice: return choicesText(field);
    case core::FieldType::Integer: return tr(QT_TRANSLATE_NOOP("Cli", "a whole number"));
    case core::FieldType::Decimal: return tr(QT_TRANSLATE_NOOP("Cli", "a number"));
    case core::FieldType::Date: return tr(QT_TRANSLATE_NOOP("Cli", "a date such as 2026-03-02"));
    case core::FieldType::Texts: return tr(QT_TRANSLATE_NOOP("Cli", "several, separated by commas"));
    case core::FieldType::Text:
    case core::FieldType::Flag:
    case core::FieldType::Moment:
    case core::FieldType::Person:
    case core::FieldType::Interface:
    case core::FieldType::Tool:
    case core::FieldType::Job:
    case core::FieldType::Digest:
    case core::FieldType::DigestElsewhere:
    case core::FieldType::PublicKey:
    case core::FieldType::People:
    case core::FieldType::Interfaces:
    case core::FieldType::Statements:
    case core::FieldType::Records: return tr(QT_TRANSLATE_NOOP("Cli", "a text"));
    }
    Q_UNREACHABLE();
}

QString exampleOf(const core::Calculation &calculation)
{
    QStringList words{u"remate-cli calc "_s + calculation.name};
    for (const core::ExampleValue &one : calculation.example)
        words << u"%1=\"%2\""_s.arg(one.field, QString::fromUtf8(one.text));
    return words.join(u' ');
}

Answer fieldsOf(const core::Calculation &calculation)
{
    std::vector<std::vector<QString>> rows;
    Array fields;
    QStringList tables;
    for (const core::Field &field : calculation.fields) {
        const bool isNeeded = field.needed == core::Needed::Always;
        rows.push_back({field.name, isNeeded ? tr(QT_TRANSLATE_NOOP("Cli", "needed")) : tr(QT_TRANSLATE_NOOP("Cli", "if known")), labelOf(field), takes(field)});
        fields.emplace_back(Object{{u"name"_s, QString(field.name)}, {u"label"_s, labelOf(field)}, {u"is_needed"_s, isNeeded}, {u"takes"_s, takes(field)}});
    }
    for (const core::FromTable &from : calculation.tables)
        tables << from.table;
    tables.removeDuplicates();
    QStringList text{named(calculation.title), named(calculation.summary)};
    addLines(text, tr(QT_TRANSLATE_NOOP("Cli", "Fields:")), inColumns(rows));
    addLines(text, tr(QT_TRANSLATE_NOOP("Cli", "Tables to look up:")), tables);
    addLines(text, tr(QT_TRANSLATE_NOOP("Cli", "Example:")), {exampleOf(calculation)});
    return answer(text,
                  {{u"calculation"_s, QString(calculation.name)}, {u"title"_s, named(calculation.title)}, {u"fields"_s, fields}, {u"tables"_s, arrayOf(tables)}, {u"example"_s, exampleOf(calculation)}});
}

Answer worked(const core::Calculation &calculation, const Object &body, const core::Calculated &result)
{
    const core::measure::Working &working = result.working;
    Array steps;
    for (const core::measure::WorkingStep &step : working.steps)
        steps.emplace_back(Object{{u"what"_s, step.what}, {u"formula"_s, step.formula}, {u"numbers"_s, step.numbers}, {u"result"_s, step.result}});
    const bool isAnswered = result.verdict == core::Verdict::Answered;
    return {isAnswered ? Exit::Good : Exit::No, core::linesOf(calculation, body, result).join(u'\n'),
            {{u"calculation"_s, QString(calculation.name)},
             {u"given"_s, body},
             {u"is_answered"_s, isAnswered},
             {u"steps"_s, steps},
             {u"answer"_s, working.answer},
             {u"for_record"_s, arrayOf(result.forRecord)},
             {u"notes"_s, arrayOf(working.notes)},
             {u"sources"_s, arrayOf(working.sources)},
             {u"cautions"_s, arrayOf(calculation.cautions())},
             {u"data_governs"_s, core::measure::dataGoverns()}}};
}

QString headOf(const core::LookUpColumn &column) { return column.unit.isEmpty() ? column.title : u"%1 [%2]"_s.arg(column.title, column.unit); }

QString seenText(core::Seen seen)
{
    switch (seen) {
    case core::Seen::Read: return tr(QT_TRANSLATE_NOOP("Cli", "read"));
    case core::Seen::FromMemory: return tr(QT_TRANSLATE_NOOP("Cli", "from memory"));
    }
    Q_UNREACHABLE();
}

Answer tableOf(const core::LookUpTable &table)
{
    std::vector<std::vector<QString>> rows(1);
    Array columnsJson, rowsJson;
    for (const core::LookUpColumn &column : table.columns) {
        rows.front().push_back(headOf(column));
        columnsJson.emplace_back(Object{{u"id"_s, column.id}, {u"title"_s, column.title}, {u"unit"_s, column.unit}});
    }
    rows.front().push_back(tr(QT_TRANSLATE_NOOP("Cli", "Source")));
    for (const core::LookUpRow &row : table.rows) {
        rows.push_back(row.cells);
        const QString source = u"%1 (%2)"_s.arg(row.source, seenText(row.seen));
        rows.back().push_back(row.note.isEmpty() ? source : source + u". "_s + row.note);
        Object cells;
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            cells.set(table.columns[i].id, row.cells[i]);
        rowsJson.emplace_back(Object{{u"id"_s, row.id}, {u"cells"_s, cells}, {u"note"_s, row.note}, {u"source"_s, row.source}, {u"seen"_s, seenText(row.seen)}});
    }
    QStringList text{table.title, table.about, QString()};
    text += inColumns(rows);
    text << QString() << table.caution;
    return answer(text,
                  {{u"table"_s, table.id}, {u"title"_s, table.title}, {u"about"_s, table.about}, {u"columns"_s, columnsJson}, {u"rows"_s, rowsJson}, {u"caution"_s, table.caution}});
}

/// `least=50 lbf.in`
core::Result<std::vector<core::TypedField>> typedIn(const std::vector<QString> &words)
{
    std::vector<core::TypedField> typed;
    for (const QString &word : words) {
        const qsizetype equals = word.indexOf(u'=');
        if (equals < 1)
            return core::failure(core::ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Cli", "\"%1\" is no field with a value. Type FIELD=VALUE, in quotation marks where it has a blank.")).arg(word));
        typed.push_back({word.left(equals), word.mid(equals + 1)});
    }
    return typed;
}

core::Result<Answer> runTable(const QString &id, const core::LookUpTables &tables)
{
    const core::LookUpTable *table = tables.find(id);
    if (!table)
        return core::failure(core::ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Cli", "There is no look-up table \"%1\". remate-cli calc lists them.")).arg(id));
    return tableOf(*table);
}

core::Result<Answer> run(const Arguments &arguments, const Context &)
{
    const auto tables = resources::loadTables();
    if (!tables)
        return core::failure(tables.error());
    const QString name = arguments.text(u"name"_s);
    if (arguments.has(u"table"_s) && !name.isEmpty())
        return core::failure(core::ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Cli", "Ask either for a calculation or for a table.")));
    if (arguments.has(u"table"_s))
        return runTable(arguments.text(u"table"_s), *tables);
    if (name.isEmpty())
        return listing(*tables);
    const core::Calculation *calculation = core::findCalculation(name);
    if (!calculation)
        return core::failure(core::ErrorCode::BadInput, tr(QT_TRANSLATE_NOOP("Cli", "There is no calculation \"%1\". remate-cli calc lists them.")).arg(name));
    if (!arguments.has(u"values"_s))
        return fieldsOf(*calculation);
    const auto typed = typedIn(arguments.texts(u"values"_s));
    if (!typed)
        return core::failure(typed.error());
    const auto body = core::bodyOf(*calculation, *typed);
    if (!body)
        return core::failure(body.error());
    return core::calculate(*calculation, *body, *tables).map([&](const core::Calculated &result) { return worked(*calculation, *body, result); });
}

} // namespace

Command calcCommand()
{
    return {"calc"_L1,
            QT_TRANSLATE_NOOP("Cli", "Work out a figure outside any job, with the working shown; exit code 1 when a limit is not met or there is no answer."),
            {position("name"_L1, "NAME", QT_TRANSLATE_NOOP("Cli", "The calculation; without it, all are listed."), Given::MayBe),
             positions("values"_L1, "FIELD=VALUE", QT_TRANSLATE_NOOP("Cli", "Its fields, such as least=\"50 lbf.in\"; without any, its fields are listed.")),
             value("table"_L1, "ID", QT_TRANSLATE_NOOP("Cli", "Print this look-up table, with the source of each row."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
