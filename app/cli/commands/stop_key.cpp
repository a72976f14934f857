// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/administer.hpp"
#include "app/cli/tell.hpp"
#include "app/session/doubtful.hpp"
#include "app/session/people.hpp"
#include "core/reports/timeline.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<Answer> stop(const Arguments &arguments, const Context &context)
{
    const auto person = personIn(arguments, u"person"_s);
    const auto since = momentIn(arguments.text(u"since"_s));
    if (!person || !since)
        return core::failure(person ? since.error() : person.error());
    auto administration = administer(arguments, context);
    if (!administration)
        return core::failure(administration.error());
    const auto entries = signOnRegister(*administration, {session::stopKeyDraft(administration->administrator.person, *person, *since, arguments.text(u"reason"_s))});
    if (!entries)
        return notSigned(entries.error());
    const auto doubtful = session::doubtfulSignatures(administration->session(), *person);
    if (!doubtful)
        return core::failure(doubtful.error());
    return signedAnswer(*entries, tr("The key of %1 signs nothing more. Signatures in doubt since %2: %3 (doubtful lists them).").arg(person->text(), since->spoken(), QString::number(doubtful->size())));
}

core::Result<Answer> list(const Arguments &arguments, const Context &context)
{
    std::optional<core::PersonId> person;
    if (arguments.has(u"person"_s)) {
        const auto named = personIn(arguments, u"person"_s);
        if (!named)
            return core::failure(named.error());
        person = *named;
    }
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    if (person && !opened->session->reg().person(*person))
        return core::failure(core::ErrorCode::BadInput, tr("The register knows no person %1.").arg(person->text()));
    const auto found = session::doubtfulSignatures(*opened->session, person);
    if (!found)
        return core::failure(found.error());
    const core::Register &reg = opened->session->reg();
    std::vector<std::vector<QString>> rows;
    core::json::Array signatures;
    for (const session::UseOf &use : *found) {
        const core::Statement &said = use.said;
        const QString job = use.workOrder.value_or(tr("register"));
        const core::Person *author = reg.person(said.author);
        const core::KeyDoubt *doubt = author ? core::keyDoubtAt(*author, said.at) : nullptr;
        const QString reason = doubt ? doubt->reason : QString();
        rows.push_back({job, QString::number(said.seq), core::momentText(said.at), reg.nameOf(said.author), core::describe(said, reg, nullptr), reason});
        signatures.emplace_back(core::json::Object{{u"ledger"_s, said.ledger.text()}, {u"work_order"_s, job}, {u"seq"_s, said.seq}, {u"at"_s, said.at.text()}, {u"kind"_s, said.kind},
                                                   {u"author"_s, said.author.text()}, {u"reason"_s, reason}});
    }
    const QString count = tr("Signatures in doubt: %1").arg(rows.size());
    return Answer{rows.empty() ? Exit::Good : Exit::No, rows.empty() ? count : columns(rows) + u'\n' + count, {{u"doubtful"_s, std::move(signatures)}}};
}

} // namespace

Command stopKeyCommand()
{
    return {"stop-key"_L1,
            QT_TRANSLATE_NOOP("Cli", "Stop a person's key at once, when somebody else may have it or know its PIN."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Whose key."), Given::Always),
             value("since"_L1, "TIME", QT_TRANSLATE_NOOP("Cli", "Since when its signatures are in doubt, such as 2026-03-02T08:14:00Z."), Given::Always),
             value("reason"_L1, "TEXT", QT_TRANSLATE_NOOP("Cli", "Why."), Given::Always), administratorOption(), pinFileOption()},
            Fonts::NotNeeded,
            &stop};
}

Command doubtfulCommand()
{
    return {"doubtful"_L1,
            QT_TRANSLATE_NOOP("Cli", "List every signature of the time in which somebody else may have had the signer's key."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Of this person alone."))},
            Fonts::NotNeeded,
            &list};
}

} // namespace cli
