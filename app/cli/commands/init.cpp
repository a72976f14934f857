// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFile>

#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"
#include "app/cli/tell.hpp"
#include "app/session/people.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<Answer> foundIn(db::Store &store, const Arguments &arguments, const Context &context, const session::NewPerson &root)
{
    session::Session session(store, context.clock);
    const auto founded = session::found(session, arguments.text(u"organisation"_s), root);
    if (!founded)
        return notSigned(founded.error());
    const auto fresh = session.refresh();
    if (!fresh)
        return core::failure(fresh.error());
    const QString fingerprint = session.reg().fingerprint.hex();
    Answer answer = signedAnswer(*founded, tr("Made %1. Root person: %2 (%3).\nRoot fingerprint, to be kept elsewhere: %4\n"
                                                  "Keys of this store open at this station alone; \"remate-cli station\" tells of which file to lock a copy away.")
                                               .arg(store.path(), root.name, root.id.text(), fingerprint));
    answer.json.set(u"store"_s, store.path());
    answer.json.set(u"root_fingerprint"_s, fingerprint);
    return answer;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto id = personIn(arguments, u"id"_s);
    if (!id)
        return core::failure(id.error());
    const auto secrets = Secrets::of(arguments);
    if (!secrets)
        return core::failure(secrets.error());
    const auto secret = secrets->chosenBy(*id);
    if (!secret)
        return core::failure(secret.error());
    auto store = db::Store::create(arguments.text(u"store"_s));
    if (!store)
        return core::failure(store.error());
    auto answer = foundIn(**store, arguments, context, {*id, arguments.text(u"name"_s), *secret, {}});
    if (answer && answer->exit == Exit::Good)
        return answer;
    // A store without a root is of no use to anybody, and would be in the way of trying again.
    const QString path = (*store)->path();
    if (const auto closed = (*store)->close(); closed)
        QFile::remove(path);
    return answer;
}

} // namespace

Command initCommand()
{
    return {"init"_L1,
            QT_TRANSLATE_NOOP("Cli", "Make an empty store and found its register."),
            {position("store"_L1, "STORE", QT_TRANSLATE_NOOP("Cli", "The file to make.")),
             value("organisation"_L1, "NAME", QT_TRANSLATE_NOOP("Cli", "The organisation that keeps the store."), Given::Always),
             value("id"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "The id of the root person, who administers the register."), Given::Always),
             value("name"_L1, "NAME", QT_TRANSLATE_NOOP("Cli", "Their name, as printed on records."), Given::Always),
             pinFileOption()},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
