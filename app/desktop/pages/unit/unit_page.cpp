// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/unit/unit_page.hpp"

#include <QLabel>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

qsizetype UnitPage::waiting(const PageTools &tools)
{
    if (!tools.feed.state())
        return 0;
    const auto last = core::lastTests(*tools.feed.state());
    return std::count_if(last.begin(), last.end(), [&](const core::JobTest *test) { return !test->hasPassed || core::whyVoid(*tools.feed.state(), *test); });
}

UnitPage::UnitPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_steps = new RowTable({{tr("Step"), 30}, {tr("Serial number"), 20}, {tr("What was looked at"), 0}, {tr("Signed"), 44}}, tr("The unit"), tr("No job is open."), this);
    m_steps->setObjectName(u"unitSteps"_s);
    m_tests = new RowTable({{tr("Test"), 8}, {tr("Of what"), 30}, {tr("Result"), 0}, {tr("Covers"), 24}, {tr("Signed"), 44}}, tr("Tests"),
                           tr("No test is recorded: ground runs, functional tests, leak checks of a system. A good test never stands for the inspection of an item."), this);
    m_tests->setObjectName(u"tests"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"accessory.moved"_L1, "accessory.left"_L1, "accessory.listed"_L1, "unit.removed"_L1, "unit.received"_L1, "unit.positioned"_L1, "test.recorded"_L1, "job.reversed"_L1}, this);
    column->addWidget(makeLabel(tr("The unit, its accessories and tests"), "title", this));
    m_steps->showAtLeast(4); // the unit off, received, in its place, and perhaps the change given up
    m_tests->showAtLeast(1);
    column->addWidget(m_steps, 3);
    column->addWidget(makeLabel(tr("Tests"), "heading", this));
    column->addWidget(m_tests, 1);
    column->addWidget(makeScrolled(m_actions), 3);
    setFocusProxy(&m_steps->view());
    connect(m_steps, &RowTable::chosenChanged, this, &UnitPage::showActions);
    follow(&UnitPage::refresh);
    refresh();
}

/// On a small screen what may be signed scrolls, so that what was signed stays in sight.
QWidget *UnitPage::makeScrolled(QWidget *inside)
{
    auto *area = new QScrollArea(this);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(inside);
    return area;
}

void UnitPage::chooseRow(const QString &key)
{
    m_steps->choose(key);
    m_tests->choose(key);
}

void UnitPage::refresh()
{
    std::vector<Row> steps, tests;
    if (const auto &job = feed().state()) {
        const core::UnitChange &unit = job->unit;
        const auto step = [&](const QString &name, const QString &serial, const QString &told, const std::optional<core::Mark> &mark) {
            steps.push_back({name, {name, serial, told, mark ? markInWords(*mark, *feed().state(), feed().reg()) : tr("not yet")}});
        };
        step(tr("Outgoing unit off"), job->facts.outgoingSerial, unit.off ? tr("%n openings blanked; tagged %1", nullptr, static_cast<int>(unit.off->openingsBlanked)).arg(unit.off->tag) : QString(),
             unit.off ? std::optional(unit.off->mark) : std::nullopt);
        step(tr("Incoming unit received"), job->facts.incomingSerial,
             unit.in ? tr("certificate %1; %2 shipping blanks; %3").arg(unit.in->certificate).arg(unit.in->shippingBlanks).arg(unit.in->configuration) : QString(), unit.in ? std::optional(unit.in->mark) : std::nullopt);
        step(tr("Incoming unit in its place"), job->facts.incomingSerial, unit.up ? tr("%n shipping blanks removed", nullptr, static_cast<int>(unit.up->shippingBlanksRemoved)) : QString(),
             unit.up ? std::optional(unit.up->mark) : std::nullopt);
        if (job->reversed)
            steps.push_back({u"reversed"_s, {tr("Change given up"), job->facts.outgoingSerial, tr("The outgoing unit goes back on."), markInWords(*job->reversed, *feed().state(), feed().reg())}, false, true});
        for (const core::Accessory &accessory : job->accessories) {
            const QString where = accessory.moved ? tr("moved to the incoming unit")
                                  : accessory.left ? tr("leaves with the outgoing unit: %1").arg(accessory.leftBecause)
                                                   : tr("to be moved, or declared to leave");
            const core::Mark &mark = accessory.moved ? *accessory.moved : accessory.left ? *accessory.left : accessory.listed;
            steps.push_back({accessory.id.text(), {tr("%1 %2").arg(accessory.id.text(), accessory.name), accessory.serial, where, markInWords(mark, *feed().state(), feed().reg())}, false, !core::isPlaced(*job, accessory)});
        }
        for (const core::JobTest &test : job->tests) {
            const auto voided = test.hasPassed ? core::whyVoid(*job, test) : std::nullopt;
            QStringList covers;
            for (const core::InterfaceId &id : test.covers)
                covers << id.text();
            const QString result = !test.hasPassed ? tr("failed") : voided ? tr("void: %1").arg(*voided) : tr("passed", "a test");
            tests.push_back({test.id.text(), {test.id.text(), tr("%1, %2").arg(choiceInWords(test.what), test.name), result, covers.isEmpty() ? tr("everything") : covers.join(u", "_s), markInWords(test.mark, *feed().state(), feed().reg())},
                             false, !test.hasPassed || voided});
        }
    }
    m_steps->take(steps);
    m_tests->take(tests);
    showActions();
}

void UnitPage::showActions()
{
    const auto id = core::AccessoryId::parse(m_steps->chosen());
    const bool isAccessory = id && feed().state() && feed().state()->accessory(*id);
    m_actions->show({}, isAccessory ? std::optional(id->text()) : std::nullopt);
}

} // namespace desktop
