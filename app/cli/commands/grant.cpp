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

core::Result<session::Grant> grantIn(const Arguments &arguments, const core::AuthorisationId &id, const Context &context)
{
    const auto person = personIn(arguments, u"person"_s);
    if (!person)
        return core::failure(person.error());
    const auto authority = core::parseAuthority(arguments.text(u"authority"_s));
    if (!authority)
        return core::failure(core::ErrorCode::BadInput, tr("\"%1\" is no authority. There are: administer, work, lead, inspect, overrule, release.").arg(arguments.text(u"authority"_s)));
    session::Grant grant{.id = id,
                         .person = *person,
                         .authority = *authority,
                         .kinds = arguments.texts(u"kind"_s),
                         .aircraftTypes = arguments.texts(u"aircraft-type"_s),
                         .from = context.clock().utcDate(),
                         .until = {},
                         .reference = arguments.text(u"reference"_s)};
    if (arguments.has(u"from"_s)) {
        const auto from = dayIn(arguments.text(u"from"_s));
        if (!from)
            return core::failure(from.error());
        grant.from = *from;
    }
    if (arguments.has(u"until"_s)) {
        const auto until = dayIn(arguments.text(u"until"_s));
        if (!until)
            return core::failure(until.error());
        grant.until = *until;
    }
    return grant;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto administration = administer(arguments, context);
    if (!administration)
        return core::failure(administration.error());
    const auto id = session::nextAuthorisation(administration->session().reg());
    const auto grant = grantIn(arguments, id, context);
    if (!grant)
        return core::failure(grant.error());
    const auto entries = signOnRegister(*administration, {session::grantDraft(administration->administrator.person, *grant)});
    if (!entries)
        return notSigned(entries.error());
    Answer answer = signedAnswer(*entries, tr("Granted %1: %2 may %3.").arg(id.text(), grant->person.text(), core::authorityText(grant->authority)));
    answer.json.set(u"authorisation"_s, id.text());
    return answer;
}

} // namespace

Command grantCommand()
{
    return {"grant"_L1,
            QT_TRANSLATE_NOOP("Cli", "Grant an authorisation."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "To whom."), Given::Always),
             value("authority"_L1, "WHAT", QT_TRANSLATE_NOOP("Cli", "administer, work, lead, inspect, overrule or release."), Given::Always),
             values("kind"_L1, "KIND", QT_TRANSLATE_NOOP("Cli", "A kind of interface that it covers; all when left out. May be repeated.")),
             values("aircraft-type"_L1, "TYPE", QT_TRANSLATE_NOOP("Cli", "An aircraft type that it covers; all when left out. May be repeated.")),
             value("from"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The first day (UTC); today when left out.")),
             value("until"_L1, "DATE", QT_TRANSLATE_NOOP("Cli", "The last day (UTC); without end when left out.")),
             value("reference"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "The approval document behind it."), Given::Always), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
