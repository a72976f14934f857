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

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto id = personIn(arguments, u"id"_s);
    if (!id)
        return core::failure(id.error());
    auto administration = administer(arguments, context);
    if (!administration)
        return core::failure(administration.error());
    const auto secret = administration->secrets.chosenBy(*id);
    if (!secret)
        return core::failure(secret.error());
    const session::NewPerson person{*id, arguments.text(u"name"_s), *secret, arguments.text(u"identity"_s)};
    const auto entries = session::enrol(administration->session(), person, administration->administrator);
    return entries ? signedAnswer(*entries, tr("Enrolled %1 (%2).").arg(person.name, id->text())) : notSigned(entries.error());
}

} // namespace

Command enrolCommand()
{
    return {"enrol"_L1,
            QT_TRANSLATE_NOOP("Cli", "Enrol a person, who chooses a PIN and gets a key."),
            {storeOption(), value("id"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "The person's id, never given twice."), Given::Always),
             value("name"_L1, "NAME", QT_TRANSLATE_NOOP("Cli", "Their name, as printed on records."), Given::Always),
             value("identity"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "How it was proved who they are."), Given::Always), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
