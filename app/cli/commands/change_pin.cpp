// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"
#include "app/session/people.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

/// The new PIN stands in a file of its own, or is asked for.
core::Result<QString> newSecret(const Arguments &arguments, const core::PersonId &person)
{
    Arguments file;
    if (arguments.has(u"new-pins"_s))
        file.set(u"pins"_s, {arguments.text(u"new-pins"_s)});
    const auto secrets = Secrets::of(file);
    return secrets ? secrets->chosenBy(person) : core::failure(secrets.error());
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto person = personIn(arguments, u"person"_s);
    if (!person)
        return core::failure(person.error());
    const auto secrets = Secrets::of(arguments);
    if (!secrets)
        return core::failure(secrets.error());
    auto opened = openStore(arguments, context, db::Access::ReadWrite);
    if (!opened)
        return core::failure(opened.error());
    const auto old = secrets->of(*person);
    if (!old)
        return core::failure(old.error());
    const auto chosen = newSecret(arguments, *person);
    if (!chosen)
        return core::failure(chosen.error());
    if (const auto changed = session::changeSecret(*opened->session, {*person, *old}, *chosen); !changed)
        return core::failure(changed.error());
    return Answer{Exit::Good, QCoreApplication::translate("Cli", "The PIN of %1 was changed. The key is the same.").arg(person->text()), {{u"person"_s, person->text()}, {u"changed"_s, true}}};
}

} // namespace

Command changePinCommand()
{
    return {"change-pin"_L1,
            QT_TRANSLATE_NOOP("Cli", "Change a person's PIN or passphrase."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Whose PIN."), Given::Always), pinFileOption(),
             value("new-pins"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "A file with the person's id and new PIN, instead of being asked."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
