// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/set_hold.hpp"

#include <QComboBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/begun/form_name.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/hold_words.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/acts/act.hpp"
#include "core/acts/hold_form.hpp"
#include "core/holds/condition.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;
using core::json::Value;

struct SetHold {
    Q_DECLARE_TR_FUNCTIONS(SetHold)
};

/// Members that name several things. In a cell they stand with commas between.
bool namesSeveral(const QString &member) { return member == u"kinds" || member == u"except_kinds" || member == u"names"; }

/// As the entry holds them.
Array objectsOf(const Value *lines)
{
    Array objects;
    const Array *array = lines ? lines->array() : nullptr;
    for (std::size_t i = 0; array && i < array->size(); ++i) {
        Object object;
        for (const auto &[name, value] : (*array)[i].object()->members()) {
            if (!namesSeveral(name) || !value.string()) {
                object.set(name, value);
                continue;
            }
            std::vector<QString> several;
            for (const QString &one : value.string()->split(u',', Qt::SkipEmptyParts))
                several.push_back(one.trimmed());
            object.set(name, core::json::arrayOf(several));
        }
        objects.emplace_back(std::move(object));
    }
    return objects;
}

/// As the cells hold them.
Array linesOf(const Value *objects)
{
    Array lines;
    const Array *array = objects ? objects->array() : nullptr;
    for (std::size_t i = 0; array && i < array->size(); ++i) {
        const Object *object = (*array)[i].object();
        if (!object)
            continue;
        Object line;
        for (const auto &[name, value] : object->members()) {
            const std::vector<QString> several = object->texts(name);
            line.set(name, namesSeveral(name) ? Value(QStringList(several.begin(), several.end()).join(u", "_s)) : value);
        }
        lines.emplace_back(std::move(line));
    }
    return lines;
}

std::vector<core::Field> conditionColumns()
{
    std::vector<QLatin1String> kinds, stages;
    for (const core::ConditionKind &kind : core::conditionKinds()) {
        kinds.push_back(kind.what);
        for (const QLatin1String stage : kind.stages) {
            if (std::find(stages.begin(), stages.end(), stage) == stages.end())
                stages.push_back(stage);
        }
    }
    return {core::choice("what"_L1, core::Needed::Always, QT_TRANSLATE_NOOP("Field", "What"), kinds), core::choice("stage"_L1, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "How far"), stages),
            core::field("kinds"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Kinds")), core::field("except_kinds"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "But not")),
            core::field("names"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Named")), core::field("least"_L1, core::FieldType::Integer, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "At least")),
            core::field("until"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Until"))};
}

std::vector<core::Field> gateColumns()
{
    std::vector<QLatin1String> acts;
    for (const core::Act &act : core::acts()) {
        if (act.ledger == core::LedgerSort::Job)
            acts.push_back(act.kind);
    }
    return {core::choice("act"_L1, core::Needed::Always, QT_TRANSLATE_NOOP("Field", "What waits"), acts), core::field("kinds"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Kinds")),
            core::field("except_kinds"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "But not")), core::field("names"_L1, core::FieldType::Text, core::Needed::IfKnown, QT_TRANSLATE_NOOP("Field", "Named"))};
}

/// The act's own fields, with columns for its lines; the statements have a place of their own, since they hold commas.
const std::vector<core::Field> &formFields()
{
    static const std::vector<core::Field> fields = [] {
        std::vector<core::Field> all;
        for (core::Field field : core::findAct(u"hold.set")->fields) {
            if (field.name == "conditions"_L1)
                field.columns = conditionColumns();
            else if (field.name == "gates"_L1)
                field.columns = gateColumns();
            if (field.name != "statements"_L1)
                all.push_back(std::move(field));
        }
        return all;
    }();
    return fields;
}

/// What the sheet is made of.
struct Controls {
    QComboBox *standard;
    QLineEdit *id;
    FieldForm *form;
    QPlainTextEdit *statements;

    Object body() const
    {
        Object body = form->bodies().front();
        body.set(u"conditions"_s, objectsOf(body.find(u"conditions")));
        body.set(u"gates"_s, objectsOf(body.find(u"gates")));
        std::vector<QString> seen;
        for (const QString &line : statements->toPlainText().split(u'\n', Qt::SkipEmptyParts)) {
            if (!line.trimmed().isEmpty())
                seen.push_back(line.trimmed());
        }
        if (!seen.empty())
            body.set(u"statements"_s, core::json::arrayOf(seen));
        return body;
    }

    void show(const core::NamedHold &hold) const
    {
        id->setText(hold.id.text());
        form->fill(u"title"_s, hold.body.text(u"title"));
        form->fill(u"authority"_s, hold.body.text(u"authority"));
        form->fill(u"independent"_s, hold.body.isTrue(u"independent"));
        form->fill(u"conditions"_s, linesOf(hold.body.find(u"conditions")));
        form->fill(u"gates"_s, linesOf(hold.body.find(u"gates")));
        const std::vector<QString> seen = hold.body.texts(u"statements");
        statements->setPlainText(QStringList(seen.begin(), seen.end()).join(u'\n'));
    }
};

Controls controlsIn(QWidget *area, session::Session &session)
{
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(0, 0, 0, 0);
    auto *head = new QFormLayout;
    auto *standard = new QComboBox(area);
    standard->setObjectName(u"standardHold"_s);
    standard->addItem(SetHold::tr("None: one of its own"));
    auto *id = new QLineEdit(area);
    id->setObjectName(u"holdId"_s);
    id->setPlaceholderText(SetHold::tr("A short name without blanks, such as last-look"));
    addRow(head, SetHold::tr("From the standard set"), standard);
    addRow(head, SetHold::tr("Id"), id);
    column->addLayout(head);
    // At once in sight, though they may stay empty.
    const Seed seed{{}, {{u"authority"_s, u"lead"_s}}, {{u"conditions"_s, Array()}, {u"independent"_s, true}, {u"reason"_s, QString()}}};
    auto *form = new FieldForm({formFields(), {seed}, {}, session.reg(), session.state().get()}, area);
    column->addWidget(form);
    column->addWidget(makeLabel(SetHold::tr("Kinds as in the interface list, several with commas between: mount, access_panel. Named are sorts of what is applied (hoist, sling), units, tests or hold points."), "quiet", area));
    auto *rest = new QFormLayout;
    auto *statements = new QPlainTextEdit(area);
    statements->setObjectName(u"statements"_s);
    statements->setTabChangesFocus(true);
    statements->setPlaceholderText(SetHold::tr("What the signer looks at and confirms, one statement a line"));
    statements->setAccessibleName(SetHold::tr("Statements"));
    statements->setFixedHeight(area->fontMetrics().height() * 5);
    addRow(rest, SetHold::tr("Statements"), statements);
    column->addLayout(rest);
    // One column of labels, though they are of three layouts.
    int widest = 0;
    for (const QLabel *label : form->findChildren<QLabel *>())
        widest = std::max(widest, label->buddy() ? label->sizeHint().width() : 0);
    for (QWidget *control : std::initializer_list<QWidget *>{standard, id})
        head->labelForField(control)->setMinimumWidth(widest);
    rest->labelForField(statements)->setMinimumWidth(widest);
    area->setMinimumWidth(area->fontMetrics().averageCharWidth() * 120);
    return {standard, id, form, statements};
}

} // namespace

SheetPlan setHoldPlan(session::Session &session, QWidget *parent)
{
    const core::Act &act = *core::findAct(u"hold.set");
    auto *area = new QWidget(parent);
    const Controls controls = controlsIn(area, session);
    const auto loaded = resources::loadHoldPoints();
    const std::vector<core::NamedHold> holds = loaded ? *loaded : std::vector<core::NamedHold>();
    for (const core::NamedHold &hold : holds)
        controls.standard->addItem(hold.body.text(u"title"), hold.id.text());
    controls.standard->setEnabled(loaded.has_value());
    controls.standard->setToolTip(loaded ? QString() : core::errorInWords(loaded.error()));
    QObject::connect(controls.standard, &QComboBox::currentIndexChanged, area, [controls, holds](int at) {
        if (at > 0)
            controls.show(holds[static_cast<std::size_t>(at) - 1]);
    });

    const auto draft = [controls, &session](const core::PersonId &author) {
        return core::Draft{author, session.now(), u"hold.set"_s, controls.id->text().trimmed(), controls.body()};
    };
    SheetPlan plan{SetHold::tr("Set a hold point"), QLatin1String("hold_points"), core::meaningInWords(QString(act.meaning)), SetHold::tr("Sign"), {}, area, {}, {}, {}, {}, {}, {}};
    const core::JobFacts &facts = session.state()->facts;
    plan.about = SetHold::tr("%1 · %2 · %3").arg(facts.aircraft, facts.unit, facts.workOrder);
    plan.section = "hold-points"_L1;
    plan.keptAs = formName(session, session.job(), "hold.set"_L1);
    plan.firstGap = [controls]() -> QWidget * { return controls.id->text().isEmpty() ? static_cast<QWidget *>(controls.standard) : controls.form->firstGap(); };
    plan.words = [controls, &act] {
        const Object body = controls.body();
        QStringList lines{SetHold::tr("%1: %2").arg(doneOf(act), body.text(u"title"))};
        if (const auto id = core::HoldId::parse(controls.id->text().trimmed()))
            lines += holdInWords(core::holdIn(*id, body));
        return lines;
    };
    plan.whyNot = [draft, &session](const core::PersonId &author) { return session.ask(draft(author)); };
    plan.take = [draft, &session](const session::Signer &signer) { return session.sign(*session.job(), {draft(signer.person)}, signer); };
    return plan;
}

} // namespace desktop
