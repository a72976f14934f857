// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/administer.hpp"
#include "app/cli/tell.hpp"
#include "app/session/people.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<core::Tool> toolIn(const Arguments &arguments, const core::ToolId &id)
{
    core::Tool tool{id, arguments.text(u"name"_s), std::nullopt, std::nullopt, {}, std::nullopt};
    tool.deviationSource = arguments.text(u"deviation-source"_s);
    const QString unit = arguments.text(u"unit"_s);
    if (arguments.has(u"min"_s) || arguments.has(u"max"_s) || arguments.has(u"unit"_s)) {
        tool.rangeMin = core::Quantity::parse(arguments.text(u"min"_s), unit);
        tool.rangeMax = core::Quantity::parse(arguments.text(u"max"_s), unit);
        if (!tool.rangeMin || !tool.rangeMax)
            return core::failure(core::ErrorCode::BadInput, tr("A usable range is --min, --max and --unit: two decimals with a point, and a unit such as N·m, lbf·in or mΩ."));
    }
    if (arguments.has(u"graduation"_s)) {
        tool.graduation = core::Quantity::parse(arguments.text(u"graduation"_s), unit);
        if (!tool.graduation)
            return core::failure(core::ErrorCode::BadInput, tr("A graduation is a decimal with a point, in the unit of --unit."));
    }
    if (arguments.has(u"torque-type"_s)) {
        tool.torqueType = core::parseTorqueToolType(arguments.text(u"torque-type"_s));
        if (!tool.torqueType)
            return core::failure(core::ErrorCode::BadInput, tr("A torque tool is \"indicating\" or \"setting\"; not \"%1\".").arg(arguments.text(u"torque-type"_s)));
    }
    if (arguments.has(u"length"_s)) {
        const auto length = core::Quantity::read(arguments.text(u"length"_s), core::Dimension::Length);
        if (!length)
            return core::failure(length.error());
        tool.length = *length;
    }
    return tool;
}

core::Result<std::optional<core::Decimal>> deviationIn(const Arguments &arguments)
{
    if (!arguments.has(u"deviation"_s))
        return std::optional<core::Decimal>();
    const auto percent = core::Decimal::parse(arguments.text(u"deviation"_s));
    if (!percent)
        return core::failure(core::ErrorCode::BadInput, tr("A deviation is a decimal with a point, in percent of the reading, such as 4."));
    return percent;
}

core::Result<std::optional<core::Calibration>> calibrationIn(const Arguments &arguments)
{
    if (!arguments.has(u"calibrated"_s) && !arguments.has(u"due"_s))
        return std::optional<core::Calibration>();
    const auto on = dayIn(arguments.text(u"calibrated"_s));
    if (!on)
        return core::failure(on.error());
    const auto due = dayIn(arguments.text(u"due"_s));
    if (!due)
        return core::failure(due.error());
    return std::optional(core::Calibration{*on, *due, arguments.text(u"certificate"_s), std::nullopt});
}

/// What there is to say: a tool that is new, a calibration, or both.
core::Result<std::vector<core::Draft>> draftsOf(const Arguments &arguments, const core::Register &reg, const core::PersonId &author)
{
    const auto id = core::ToolId::parse(arguments.text(u"id"_s));
    if (!id)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" cannot be a tool's id.").arg(arguments.text(u"id"_s)));
    auto tool = toolIn(arguments, *id);
    if (!tool)
        return core::failure(tool.error());
    auto calibration = calibrationIn(arguments);
    if (!calibration)
        return core::failure(calibration.error());
    const auto deviation = deviationIn(arguments);
    if (!deviation)
        return core::failure(deviation.error());
    const bool isNew = !reg.tool(*id) || arguments.has(u"name"_s);
    // What a tool is registered with is its class; beside a calibration alone it is what the certificate states.
    if (isNew)
        tool->deviation = *deviation;
    else if (*calibration)
        (*calibration)->deviation = *deviation;
    std::vector<core::Draft> drafts;
    if (isNew)
        drafts.push_back(session::toolDraft(author, *tool));
    if (*calibration)
        drafts.push_back(session::calibrationDraft(author, *id, **calibration));
    if (arguments.has(u"doubted-after"_s)) {
        const auto after = dayIn(arguments.text(u"doubted-after"_s));
        if (!after)
            return core::failure(after.error());
        drafts.push_back(session::doubtDraft(author, *id, *after, arguments.text(u"found"_s), arguments.text(u"certificate"_s)));
    }
    if (drafts.empty())
        return core::failure(core::ErrorCode::BadInput, tr("The register has tool %1 already, and no calibration was given.").arg(id->text()));
    return drafts;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto administration = administer(arguments, context);
    if (!administration)
        return core::failure(administration.error());
    const auto drafts = draftsOf(arguments, administration->session().reg(), administration->administrator.person);
    if (!drafts)
        return core::failure(drafts.error());
    const auto entries = signOnRegister(*administration, *drafts);
    return entries ? signedAnswer(*entries, tr("Recorded tool %1.").arg(arguments.text(u"id"_s))) : notSigned(entries.error());
}

} // namespace

Command toolCommand()
{
    return {"tool"_L1,
            QT_TRANSLATE_NOOP("Cli", "Register a tool, record its calibration, or both."),
            {storeOption(), value("id"_L1, "TOOL", QT_TRANSLATE_NOOP("Cli", "The tool's id, as marked on it."), Given::Always),
             value("name"_L1, "NAME", QT_TRANSLATE_NOOP("Cli", "What it is; for a tool that is new.")),
             value("min"_L1, "VALUE", QT_TRANSLATE_NOOP("Cli", "Where its usable range begins.")),
             value("max"_L1, "VALUE", QT_TRANSLATE_NOOP("Cli", "Where its usable range ends.")),
             value("unit"_L1, "UNIT", QT_TRANSLATE_NOOP("Cli", "The unit of its range: N·m, lbf·in, lbf·ft, mΩ.")),
             value("graduation"_L1, "VALUE", QT_TRANSLATE_NOOP("Cli", "One step of its scale or display, in that unit.")),
             value("length"_L1, "LENGTH", QT_TRANSLATE_NOOP("Cli", "Of a torque wrench: from the middle of the grip to the drive, such as \"10 in\".")),
             value("torque-type"_L1, "TYPE", QT_TRANSLATE_NOOP("Cli", "Of a torque tool: \"indicating\" where it shows what it gives, \"setting\" where it clicks at what it was set to.")),
             value("deviation"_L1, "PERCENT", QT_TRANSLATE_NOOP("Cli", "What it may be off, in percent of the reading: by its class for a new tool, else as the certificate states it.")),
             value("deviation-source"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "The standard and class that say so.")),
             value("calibrated"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The day on which it was calibrated.")),
             value("due"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The last day on which it may be used.")),
             value("doubted-after"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The tool was found out of tolerance: the last day on which it was known to be right.")),
             value("found"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "What was found then.")),
             value("certificate"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "The certificate of the calibration, or of the one that found it out of tolerance.")), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
