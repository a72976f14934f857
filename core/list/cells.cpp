// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/cells.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/list/line_cell.hpp"
#include "core/rules/form.hpp"

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("InterfaceList", text); }

tl::unexpected<QString> expected(const QString &cell, const QString &what)
{
    return tl::unexpected<QString>(tr("\"%1\" cannot be taken. Expected: %2.").arg(cell, what));
}

bool hasDecimalComma(QStringView text)
{
    const qsizetype comma = text.indexOf(u',');
    const auto isNumeric = [](QChar c) { return c.isDigit() || c == u','; };
    return comma > 0 && comma < text.size() - 1 && std::all_of(text.begin(), text.end(), isNumeric) && text.count(u',') == 1;
}

CellValue decimalIn(const QString &text)
{
    if (hasDecimalComma(text))
        return expected(text, tr("a decimal point; this number has a decimal comma"));
    const auto decimal = Decimal::parse(text);
    if (!decimal || decimal->isNegative())
        return expected(text, tr("a number with a point, such as 12.5, not below 0"));
    return json::Value(text);
}

CellValue integerIn(const QString &text)
{
    const bool isWhole = text.size() <= 9 && std::all_of(text.begin(), text.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    if (!isWhole)
        return expected(text, tr("a whole number, such as 4"));
    return json::Value(text.toLongLong());
}

CellValue flagIn(const QString &text)
{
    const QString word = text.toLower();
    if (word == u"yes")
        return json::Value(true);
    if (word == u"no")
        return std::nullopt;
    return expected(text, tr("yes or no"));
}

CellValue unitIn(const Field &field, const QString &text)
{
    const Unit *unit = findUnit(text);
    if (unit && (!field.dimension || unit->dimension == *field.dimension))
        return json::Value(unit->symbol);
    QStringList known;
    for (const Unit *one : unitsFor(field))
        known << one->symbol;
    return expected(text, tr("one of the units %1").arg(known.join(QStringLiteral(", "))));
}

CellValue quantityIn(const Field &field, const QString &text)
{
    const auto read = Quantity::read(text, *field.dimension);
    if (!read)
        return tl::unexpected<QString>(read.error().message);
    return json::Value(read->text());
}

CellValue interfacesIn(const QString &text)
{
    const auto parts = partsOfCell(text);
    for (const QString &part : parts) {
        if (!isIdText(part))
            return expected(part, tr("ids of interfaces, separated by |"));
    }
    return json::Value(json::arrayOf(parts));
}

CellValue linesIn(const Field &field, const QString &text)
{
    if (!isLineOfCell(field))
        return expected(text, tr("nothing: a list cannot hold this"));
    json::Array lines;
    for (const QString &part : partsOfCell(text)) {
        auto line = lineIn(field, part);
        if (!line)
            return tl::unexpected<QString>(line.error());
        lines.emplace_back(*std::move(line));
    }
    return json::Value(std::move(lines));
}

CellValue otherIn(const Field &field, const QString &text)
{
    const json::Value value(text);
    if (const auto why = whyNotOfType(field, value))
        return tl::unexpected<QString>(*why);
    return value;
}

/// True when nothing or a single separator stands at `at`: the end of one part.
bool endsPart(const QString &cell, qsizetype at) { return at >= cell.size() || cell[at] == u'|'; }

} // namespace

QString plainText(const csv::Field &cell)
{
    const QString text = csv::unguarded(cell.text);
    return cell.isQuoted ? text : text.trimmed();
}

CellValue cellValue(const Field &field, const csv::Field &cell)
{
    const QString text = csv::unguarded(cell.text).trimmed();
    if (text.isEmpty())
        return std::nullopt;
    switch (field.type) {
    case FieldType::Text: return json::Value(plainText(cell));
    case FieldType::Integer: return integerIn(text);
    case FieldType::Flag: return flagIn(text);
    case FieldType::Decimal: return decimalIn(text);
    case FieldType::Unit: return unitIn(field, text);
    case FieldType::Quantity: return quantityIn(field, text);
    case FieldType::Texts: return json::Value(json::arrayOf(partsOfCell(text)));
    case FieldType::Interfaces:
    case FieldType::People: return interfacesIn(text);
    case FieldType::Date:
    case FieldType::Moment:
    case FieldType::Choice:
    case FieldType::Person:
    case FieldType::Interface:
    case FieldType::Tool:
    case FieldType::Job:
    case FieldType::Digest:
    case FieldType::DigestElsewhere:
    case FieldType::PublicKey: return otherIn(field, text);
    case FieldType::Records: return linesIn(field, text);
    case FieldType::Statements: return expected(text, tr("nothing: a list cannot hold this"));
    }
    Q_UNREACHABLE();
}

QString cellText(const json::Value &value)
{
    if (const QString *text = value.string())
        return *text;
    if (const qint64 *number = value.integer())
        return QString::number(*number);
    if (const bool *flag = value.boolean())
        return *flag ? QStringLiteral("yes") : QStringLiteral("no");
    std::vector<QString> parts;
    if (const json::Array *array = value.array()) {
        for (const json::Value &element : *array)
            parts.push_back(cellText(element));
    }
    return joinedInCell(parts);
}

QString cellText(const Field &field, const json::Value &value)
{
    const json::Array *array = value.array();
    if (!array || !isLineOfCell(field))
        return cellText(value);
    std::vector<QString> lines;
    for (const json::Value &element : *array) {
        if (const json::Object *line = element.object())
            lines.push_back(lineText(field, *line));
    }
    return joinedInCell(lines);
}

QString joinedInCell(const std::vector<QString> &texts)
{
    QStringList escaped;
    for (QString text : texts)
        escaped << text.replace(u'\\', QStringLiteral("\\\\")).replace(u'|', QStringLiteral("\\|"));
    return escaped.join(u'|');
}

std::vector<QString> partsOfCell(const QString &cell)
{
    std::vector<QString> parts;
    QString part;
    for (qsizetype at = 0; at <= cell.size(); ++at) {
        if (endsPart(cell, at)) {
            if (const QString trimmed = part.trimmed(); !trimmed.isEmpty())
                parts.push_back(trimmed);
            part.clear();
            continue;
        }
        if (cell[at] == u'\\' && at + 1 < cell.size())
            ++at;
        part += cell[at];
    }
    return parts;
}

} // namespace core
