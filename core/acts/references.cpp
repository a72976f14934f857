// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/references.hpp"

#include <algorithm>

#include "core/acts/act.hpp"

namespace core {

namespace {

void add(std::vector<Reference> &references, const QString &sort, const QString &value)
{
    const Reference reference{sort, value};
    if (!value.isEmpty() && std::find(references.begin(), references.end(), reference) == references.end())
        references.push_back(reference);
}

QString sortOfSubject(SubjectSort subject)
{
    switch (subject) {
    case SubjectSort::Tool:
    case SubjectSort::NewTool:
    case SubjectSort::JobTool:
    case SubjectSort::NewJobTool: return QStringLiteral("tool");
    case SubjectSort::Person:
    case SubjectSort::NewPerson: return QStringLiteral("person");
    case SubjectSort::Nothing:
    case SubjectSort::NewInterface:
    case SubjectSort::Interface:
    case SubjectSort::NewFinding:
    case SubjectSort::Finding:
    case SubjectSort::NewAuthorisation:
    case SubjectSort::Authorisation:
    case SubjectSort::NewTemporary:
    case SubjectSort::Temporary:
    case SubjectSort::HoldPoint:
    case SubjectSort::NewTest:
    case SubjectSort::NewAccessory:
    case SubjectSort::Accessory: return {};
    }
    Q_UNREACHABLE();
}

/// What the lines of a field refer to.
void addLines(std::vector<Reference> &references, const Field &field, const json::Object &body)
{
    const json::Value *value = body.find(QString(field.name));
    const json::Array *lines = value ? value->array() : nullptr;
    if (!lines)
        return;
    for (const json::Value &line : *lines) {
        for (const Field &column : field.columns) {
            if (line.object() && !column.refersTo.isEmpty())
                add(references, column.refersTo, line.object()->text(QString(column.name)));
        }
    }
}

} // namespace

std::vector<Reference> referencesOf(const Statement &said)
{
    std::vector<Reference> references;
    add(references, QStringLiteral("person"), said.author.text());
    const Act *act = findAct(said.kind);
    if (!act)
        return references;
    if (const QString sort = sortOfSubject(act->subject); !sort.isEmpty())
        add(references, sort, said.subject.value_or(QString()));
    for (const Field &field : act->fields) {
        addLines(references, field, said.body);
        if (field.refersTo.isEmpty())
            continue;
        add(references, field.refersTo, said.body.text(QString(field.name)));
        for (const QString &value : said.body.texts(QString(field.name)))
            add(references, field.refersTo, value);
    }
    return references;
}

} // namespace core
