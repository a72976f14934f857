// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>

#include "app/cli/opened.hpp"
#include "app/cli/tell.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

struct Words {
    QString text;
    QString code; ///< for programs
};

Words wordsOf(db::KeyPlace place)
{
    switch (place) {
    case db::KeyPlace::Here: return {tr("signs here"), u"here"_s};
    case db::KeyPlace::Unbound: return {tr("not bound yet: the PIN alone opens a copy; bound when they next sign"), u"unbound"_s};
    case db::KeyPlace::Elsewhere: return {tr("signs at other stations; carry-key there, take-key here"), u"elsewhere"_s};
    case db::KeyPlace::Nowhere: return {tr("no key in this store"), u"nowhere"_s};
    }
    return {};
}

QString triesInWords(const db::Tries &tries)
{
    return tries.wrongInARow == 0 ? QString() : tr("%1 wrong since the last right one, last %2").arg(QString::number(tries.wrongInARow), tries.last.spoken());
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    auto opened = openStore(arguments, context, db::Access::ReadOnly);
    if (!opened)
        return core::failure(opened.error());
    const session::Session &session = *opened->session;
    const auto station = session.station();
    if (!station)
        return core::failure(station.error());
    const QString path = session::stationFile(QProcessEnvironment::systemEnvironment()).path;
    std::vector<std::vector<QString>> rows{{tr("Person"), tr("Name"), tr("Key"), tr("Wrong PINs")}};
    core::json::Array people;
    db::Credentials &credentials = opened->store->credentials();
    for (const auto &[id, person] : session.reg().people) {
        const auto place = credentials.placeOf(id, person.key.fingerprint(), station->id());
        const auto tries = credentials.tries(id, person.key.fingerprint());
        if (!place || !tries)
            return core::failure(place ? tries.error() : place.error());
        const Words words = wordsOf(*place);
        rows.push_back({id.text(), person.name, person.keyStopped ? tr("stopped %1").arg(person.keyStopped->spoken()) : words.text, triesInWords(*tries)});
        people.emplace_back(core::json::Object{{u"id"_s, id.text()}, {u"key"_s, words.code}, {u"stopped"_s, person.keyStopped.has_value()}, {u"wrong_tries"_s, qint64{tries->wrongInARow}}});
    }
    const QString text = tr("Station: %1\nIts secret: %2\nKeep a copy of that file locked away, apart from every store and backup.").arg(station->id().hex(), path);
    return Answer{Exit::Good, text + u"\n\n"_s + columns(rows), {{u"station"_s, station->id().hex()}, {u"file"_s, path}, {u"people"_s, std::move(people)}}};
}

} // namespace

Command stationCommand()
{
    return {"station"_L1, QT_TRANSLATE_NOOP("Cli", "Show this station, and whose keys can be opened at it."), {storeOption()}, Fonts::NotNeeded, &run};
}

} // namespace cli
