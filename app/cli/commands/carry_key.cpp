// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFile>

#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"
#include "app/session/carry.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<std::chrono::minutes> openFor(const Arguments &arguments)
{
    if (!arguments.has(u"hours"_s))
        return std::chrono::minutes(session::usualTransfer);
    bool isNumber = false;
    const int hours = arguments.text(u"hours"_s).toInt(&isNumber);
    if (!isNumber || hours < 1 || hours > session::longestTransfer.count())
        return core::failure(core::ErrorCode::BadInput, tr("--hours is a whole number from 1 to %1.").arg(static_cast<int>(session::longestTransfer.count())));
    return std::chrono::minutes(std::chrono::hours(hours));
}

/// Out of a file, so that it stands on no command line; or asked for.
core::Result<QString> codeIn(const Arguments &arguments)
{
    const auto path = arguments.textIfGiven(u"code-file"_s);
    if (!path)
        return askUnseen(tr("Transfer code"));
    QFile file(*path);
    if (!file.open(QIODevice::ReadOnly))
        return core::failure(core::ErrorCode::Io, tr("The file %1 cannot be read: %2").arg(*path, file.errorString()));
    return QString::fromUtf8(file.readAll()).trimmed();
}

struct Sitting {
    Opened opened;
    session::Signer person;
};

core::Result<Sitting> sitDown(const Arguments &arguments, const Context &context)
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
    const auto secret = secrets->of(*person);
    if (!secret)
        return core::failure(secret.error());
    return Sitting{*std::move(opened), {*person, *secret}};
}

core::Result<Answer> carry(const Arguments &arguments, const Context &context)
{
    const auto span = openFor(arguments);
    if (!span)
        return core::failure(span.error());
    const auto sitting = sitDown(arguments, context);
    if (!sitting)
        return core::failure(sitting.error());
    const auto offer = session::offerTransfer(*sitting->opened.session, sitting->person, *span);
    if (!offer)
        return core::failure(offer.error());
    context.log.info(u"key.offered", {{u"person"_s, sitting->person.person.text()}, {u"until"_s, offer->until.text()}});
    const QString text = tr("Transfer code: %1\nIt is shown this once, works once, and until %2. At the other station, on this store or a copy of it made from now on:\n"
                            "  remate-cli take-key STORE --person %3")
                             .arg(offer->code, offer->until.spoken(), sitting->person.person.text());
    return Answer{Exit::Good, text, {{u"code"_s, offer->code}, {u"until"_s, offer->until.text()}}};
}

core::Result<Answer> take(const Arguments &arguments, const Context &context)
{
    const auto code = codeIn(arguments);
    if (!code)
        return core::failure(code.error());
    const auto sitting = sitDown(arguments, context);
    if (!sitting)
        return core::failure(sitting.error());
    const auto taken = session::takeTransfer(*sitting->opened.session, *code, sitting->person.secret);
    if (!taken)
        return core::failure(taken.error());
    context.log.info(u"key.taken", {{u"person"_s, taken->text()}});
    return Answer{Exit::Good, tr("%1 signs at this station from now on, with the same PIN.").arg(taken->text()), {{u"person"_s, taken->text()}}};
}

} // namespace

Command carryKeyCommand()
{
    return {"carry-key"_L1,
            QT_TRANSLATE_NOOP("Cli", "Leave a person's key in the store for another station, and show the code that opens it there."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Whose key."), Given::Always),
             value("hours"_L1, "HOURS", QT_TRANSLATE_NOOP("Cli", "How long the code works; else a day, at most a week.")), pinFileOption()},
            Fonts::NotNeeded,
            &carry};
}

Command takeKeyCommand()
{
    return {"take-key"_L1,
            QT_TRANSLATE_NOOP("Cli", "Take a person's key over at this station, with the code that carry-key showed at another."),
            {storeOption(), value("person"_L1, "PERSON", QT_TRANSLATE_NOOP("Cli", "Whose key."), Given::Always),
             value("code-file"_L1, "FILE", QT_TRANSLATE_NOOP("Cli", "A file with the code, instead of being asked.")), pinFileOption()},
            Fonts::NotNeeded,
            &take};
}

} // namespace cli
