// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

QString dateText(const std::optional<QDate> &date) { return date ? date->toString(Qt::ISODate) : QString(); }

QString scopeText(const std::vector<QString> &scope) { return scope.empty() ? tr("all") : QStringList(scope.begin(), scope.end()).join(u' '); }

Array peopleJson(const core::Register &reg)
{
    Array people;
    for (const auto &[id, person] : reg.people)
        people.emplace_back(Object{{u"id"_s, id.text()}, {u"name"_s, person.name}, {u"key"_s, person.key.fingerprint().hex()}, {u"root"_s, reg.root == id}});
    return people;
}

Array authorisationsJson(const core::Register &reg)
{
    Array list;
    for (const auto &[id, given] : reg.authorisations) {
        list.emplace_back(Object{{u"id"_s, id.text()}, {u"person"_s, given.person.text()}, {u"authority"_s, core::authorityText(given.authority)},
                                 {u"kinds"_s, core::json::arrayOf(given.kinds)}, {u"aircraft_types"_s, core::json::arrayOf(given.aircraftTypes)},
                                 {u"from"_s, given.from.toString(Qt::ISODate)}, {u"until"_s, dateText(given.until)},
                                 {u"withdrawn"_s, given.withdrawn ? given.withdrawn->text() : QString()}, {u"reference"_s, given.reference}});
    }
    return list;
}

Array toolsJson(const core::Register &reg)
{
    Array tools;
    for (const auto &[id, tool] : reg.tools) {
        Object object{{u"id"_s, id.text()}, {u"name"_s, tool.name}, {u"withdrawn"_s, tool.withdrawn.has_value()},
                      {u"due"_s, tool.calibrations.empty() ? QString() : tool.calibrations.back().due.toString(Qt::ISODate)}};
        if (tool.rangeMin && tool.rangeMax) {
            object.set(u"range_min"_s, tool.rangeMin->text());
            object.set(u"range_max"_s, tool.rangeMax->text());
        }
        tools.emplace_back(std::move(object));
    }
    return tools;
}

QString peopleText(const core::Register &reg)
{
    std::vector<std::vector<QString>> rows{{tr("Person"), tr("Name"), tr("Key fingerprint")}};
    for (const auto &[id, person] : reg.people)
        rows.push_back({id.text(), person.name + (reg.root == id ? tr(" (root)") : QString()), person.key.fingerprint().hex()});
    return columns(rows);
}

QString authorisationsText(const core::Register &reg)
{
    std::vector<std::vector<QString>> rows{{tr("Authorisation"), tr("Person"), tr("May"), tr("Kinds"), tr("Aircraft types"), tr("From"), tr("Until"), tr("Reference")}};
    for (const auto &[id, given] : reg.authorisations) {
        rows.push_back({id.text(), given.person.text(), core::authorityText(given.authority) + (given.withdrawn ? tr(" (withdrawn)") : QString()),
                        scopeText(given.kinds), scopeText(given.aircraftTypes), given.from.toString(Qt::ISODate), dateText(given.until), given.reference});
    }
    return columns(rows);
}

QString toolsText(const core::Register &reg, QDate today)
{
    std::vector<std::vector<QString>> rows{{tr("Tool"), tr("Name"), tr("Range"), tr("In calibration until")}};
    for (const auto &[id, tool] : reg.tools) {
        const QString range = tool.rangeMin && tool.rangeMax ? tr("%1 to %2").arg(tool.rangeMin->text(), tool.rangeMax->text()) : QString();
        const core::Calibration *now = core::calibrationOn(tool, today);
        rows.push_back({id.text(), tool.name, range, tool.withdrawn ? tr("withdrawn") : now ? now->due.toString(Qt::ISODate) : tr("not in calibration")});
    }
    return columns(rows);
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const core::Register &reg = opened->session->reg();
    if (!reg.ledger)
        return Answer{Exit::No, tr("This store has no register yet."), {}};
    const QString head = tr("%1\nRoot fingerprint: %2").arg(reg.organisation, reg.fingerprint.hex());
    const QStringList parts{head, peopleText(reg), authorisationsText(reg), toolsText(reg, context.clock().utcDate())};
    return Answer{Exit::Good, parts.join(u"\n\n"_s),
                  {{u"ledger"_s, reg.ledger->text()}, {u"organisation"_s, reg.organisation}, {u"root_fingerprint"_s, reg.fingerprint.hex()},
                   {u"people"_s, peopleJson(reg)}, {u"authorisations"_s, authorisationsJson(reg)}, {u"tools"_s, toolsJson(reg)}}};
}

} // namespace

Command registerCommand()
{
    return {"register"_L1, QT_TRANSLATE_NOOP("Cli", "Show the register: people, authorisations, tools."), {storeOption()}, Fonts::NotNeeded, &run};
}

} // namespace cli
