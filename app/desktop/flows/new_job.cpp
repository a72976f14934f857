// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/new_job.hpp"

#include <QCheckBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QPlainTextEdit>
#include <QVBoxLayout>

#include "app/desktop/begun/form_name.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/acts/act.hpp"
#include "core/job/admit.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

struct NewJob {
    Q_DECLARE_TR_FUNCTIONS(NewJob)
};

std::vector<core::Person> everybody(const core::Register &reg)
{
    std::vector<core::Person> people;
    for (const auto &[id, person] : reg.people)
        people.push_back(person);
    return people;
}

/// One zone a line, its technician after a colon. A technician whom nobody knows stays as typed, so that the rules name it.
core::json::Array zonesIn(const QString &text, const core::Register &reg)
{
    core::json::Array zones;
    for (const QString &line : text.split(u'\n', Qt::SkipEmptyParts)) {
        const QString name = line.section(u':', 0, 0).trimmed();
        const QString technician = line.section(u':', 1).trimmed();
        if (name.isEmpty())
            continue;
        core::json::Object zone{{u"name"_s, name}};
        if (!technician.isEmpty()) {
            const auto person = personMeant(technician, everybody(reg));
            zone.set(u"technician"_s, person ? person->text() : technician);
        }
        zones.emplace_back(std::move(zone));
    }
    return zones;
}

} // namespace

SheetPlan newJobPlan(session::Session &session, QWidget *parent)
{
    const core::Act &act = *core::findAct(u"job.opened");
    auto *area = new QWidget(parent);
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(0, 0, 0, 0);
    auto *form = new FieldForm({act.fields, {Seed{}}, {}, session.reg(), nullptr}, area);
    auto *zones = new QPlainTextEdit(area);
    zones->setObjectName(u"zones"_s);
    zones->setPlaceholderText(NewJob::tr("One a line, with its technician after a colon: Left: Ana"));
    zones->setTabChangesFocus(true);
    zones->setAccessibleName(NewJob::tr("Zones"));
    zones->setFixedHeight(area->fontMetrics().height() * 7);
    auto *rows = new QFormLayout;
    addRow(rows, NewJob::tr("Zones"), zones);
    column->addWidget(form);
    column->addLayout(rows);
    const auto holds = resources::loadHoldPoints();
    auto *standard = new QCheckBox(area);
    standard->setObjectName(u"standardHolds"_s);
    standard->setText(holds ? NewJob::tr("With the %n standard hold points", nullptr, static_cast<int>(holds->size())) : core::errorInWords(holds.error()));
    standard->setToolTip(NewJob::tr("Signed gates: safe to start, all free, lowering, lifting, mounts, last look, power, closure. The lead may strike or change one before it matters."));
    standard->setChecked(holds.has_value());
    standard->setEnabled(holds.has_value());
    column->addWidget(standard);

    const auto draft = [=, &session](const core::PersonId &author) {
        core::json::Object body = form->bodies().front();
        body.set(u"zones"_s, zonesIn(zones->toPlainText(), session.reg()));
        return core::Draft{author, session.now(), u"job.opened"_s, {}, std::move(body)};
    };
    SheetPlan plan{NewJob::tr("New job"), QLatin1String("measuring"), core::meaningInWords(QString(act.meaning)), NewJob::tr("Open the job and sign"), {}, area, {}, {}, {}, {}, {}, {}};
    plan.section = "what-the-job-is-opened-with"_L1;
    plan.keptAs = formName(session, {}, "job.opened"_L1);
    plan.firstGap = [=] { return form->firstGap(); };
    plan.words = [=, &session, &act] {
        QStringList lines{doneOf(act) + u'\n' + bodyInWords(act, form->bodies().front(), session.reg())};
        if (holds && standard->isChecked()) {
            for (const core::NamedHold &hold : *holds)
                lines << NewJob::tr("Hold point set: %1").arg(hold.body.text(u"title"));
        }
        return lines;
    };
    plan.whyNot = [=, &session](const core::PersonId &author) { return core::admit(core::JobState(), session.reg(), draft(author)); };
    plan.take = [=, &session](const session::Signer &signer) {
        const bool isWanted = holds && standard->isChecked();
        return session.newJob(draft(signer.person), signer, isWanted ? core::holdDrafts(*holds, signer.person, session.now()) : std::vector<core::Draft>());
    };
    return plan;
}

} // namespace desktop
