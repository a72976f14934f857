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

using Range = std::optional<std::pair<core::Quantity, core::Quantity>>;

core::Result<Range> rangeIn(const Arguments &arguments)
{
    if (!arguments.has(u"min"_s) && !arguments.has(u"max"_s) && !arguments.has(u"unit"_s))
        return Range();
    const auto min = core::Quantity::parse(arguments.text(u"min"_s), arguments.text(u"unit"_s));
    const auto max = core::Quantity::parse(arguments.text(u"max"_s), arguments.text(u"unit"_s));
    if (!min || !max)
        return core::failure(core::ErrorCode::BadInput, tr("A usable range is --min, --max and --unit: two decimals with a point, and a unit such as N·m, lbf·in or mΩ."));
    return Range(std::pair(*min, *max));
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
    return std::optional(core::Calibration{*on, *due, arguments.text(u"certificate"_s)});
}

/// What there is to say: a tool that is new, a calibration, or both.
core::Result<std::vector<core::Draft>> draftsOf(const Arguments &arguments, const core::Register &reg, const core::PersonId &author)
{
    const auto id = core::ToolId::parse(arguments.text(u"id"_s));
    if (!id)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" cannot be a tool's id.").arg(arguments.text(u"id"_s)));
    const auto range = rangeIn(arguments);
    if (!range)
        return core::failure(range.error());
    const auto calibration = calibrationIn(arguments);
    if (!calibration)
        return core::failure(calibration.error());
    std::vector<core::Draft> drafts;
    if (!reg.tool(*id) || arguments.has(u"name"_s))
        drafts.push_back(session::toolDraft(author, *id, arguments.text(u"name"_s), *range));
    if (*calibration)
        drafts.push_back(session::calibrationDraft(author, *id, **calibration));
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
             value("calibrated"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The day on which it was calibrated.")),
             value("due"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The last day on which it may be used.")),
             value("certificate"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "The certificate of the calibration.")), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
