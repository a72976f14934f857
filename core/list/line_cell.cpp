// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/list/line_cell.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("InterfaceList", text); }

/// Takes the names of flags off the end of the text and sets them in the line.
QString withoutFlags(const Field &field, const QString &text, json::Object &line)
{
    QString rest = text.trimmed();
    for (auto column = field.columns.rbegin(); column != field.columns.rend() && column->type == FieldType::Flag; ++column) {
        const QString name = u' ' + QString(column->name);
        if (!rest.endsWith(name, Qt::CaseInsensitive))
            continue;
        rest = rest.chopped(name.size()).trimmed();
        line.set(column->name, true);
    }
    return rest;
}

} // namespace

bool isLineOfCell(const Field &field)
{
    const auto &columns = field.columns;
    return columns.size() >= 2 && columns[0].type == FieldType::Text && columns[1].type == FieldType::Integer &&
           std::all_of(columns.begin() + 2, columns.end(), [](const Field &column) { return column.type == FieldType::Flag; });
}

QString lineText(const Field &field, const json::Object &line)
{
    QString text = line.text(QString(field.columns[0].name)) + u" x "_s + QString::number(line.integer(QString(field.columns[1].name)).value_or(0));
    for (const Field &column : field.columns) {
        if (column.type == FieldType::Flag && line.isTrue(QString(column.name)))
            text += u' ' + QString(column.name);
    }
    return text;
}

tl::expected<json::Object, QString> lineIn(const Field &field, const QString &text)
{
    json::Object line;
    const QString rest = withoutFlags(field, text, line).replace(u" × "_s, u" x "_s);
    const qsizetype at = rest.lastIndexOf(u" x "_s);
    const QString name = rest.left(std::max<qsizetype>(at, 0)).trimmed();
    const QString number = at < 0 ? QString() : rest.mid(at + 3).trimmed();
    const bool isWhole = !number.isEmpty() && number.size() <= 9 && std::all_of(number.begin(), number.end(), [](QChar c) { return c >= u'0' && c <= u'9'; });
    if (name.isEmpty() || !isWhole)
        return tl::unexpected<QString>(tr(QT_TRANSLATE_NOOP("InterfaceList", "\"%1\" cannot be taken. Expected: %2.")).arg(text.trimmed(), lineForm(field)));
    line.set(field.columns[0].name, name);
    line.set(field.columns[1].name, number.toLongLong());
    return line;
}

QString lineForm(const Field &field)
{
    QStringList flags;
    for (const Field &column : field.columns) {
        if (column.type == FieldType::Flag)
            flags << column.name;
    }
    const QString form = tr(QT_TRANSLATE_NOOP("InterfaceList", "%1 x %2, separated by |")).arg(field.columns[0].name, field.columns[1].name);
    return flags.isEmpty() ? form : tr(QT_TRANSLATE_NOOP("InterfaceList", "%1; behind it %2 where it is so")).arg(form, flags.join(u", "_s));
}

} // namespace core
