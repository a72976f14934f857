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

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto person = personIn(arguments, u"person"_s);
    if (!person)
        return core::failure(person.error());
    std::optional<core::Instant> since;
    if (arguments.has(u"since"_s)) {
        const auto moment = momentIn(arguments.text(u"since"_s));
        if (!moment)
            return core::failure(moment.error());
        since = *moment;
    }
    auto administration = administer(arguments, context);
    if (!administration)
        return core::failure(administration.error());
    const auto secret = administration->secrets.chosenBy(*person);
    if (!secret)
        return core::failure(secret.error());
    const auto entries = session::replaceKey(administration->session(), *person, *secret, arguments.text(u"reason"_s), administration->administrator, since);
    if (!entries)
        return notSigned(entries.error());
    return signedAnswer(*entries, QCoreApplication::translate("Cli", "%1 has a new key. What they signed before stays valid.").arg(person->text()));
}

} // namespace

Command replaceKeyCommand()
{
    return {"replace-key"_L1,
            QT_TRANSLATE_NOOP("Cli", "Give a person who lost their PIN or key a new one."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Whose key."), Given::Always),
             value("reason"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "Why."), Given::Always),
             value("since"_L1, "TIME", QT_TRANSLATE_NOOP("Cli", "Since when signatures with the old key are in doubt, if somebody else may have had it.")), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
