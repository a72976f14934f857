// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/cli/program.hpp"

#include <QDateTime>
#include <QFile>
#include <QProcess>

#include "core/ledger/seal.hpp"
#include "db/store.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

namespace {

core::json::Object objectIn(const QByteArray &bytes) { return core::json::parseObject(bytes.trimmed()).value_or(core::json::Object()); }

} // namespace

core::json::Object Said::json() const { return objectIn(out); }
core::json::Object Said::errorJson() const { return objectIn(err); }

QString programPath() { return QString::fromLocal8Bit(REMATE_CLI); }

Said remateCli(const QStringList &arguments, const QByteArray &input)
{
    QProcess process;
    process.start(programPath(), arguments);
    process.write(input);
    process.closeWriteChannel();
    const bool ended = process.waitForFinished(120'000) && process.exitStatus() == QProcess::NormalExit;
    return {ended ? process.exitCode() : -1, process.readAllStandardOutput(), process.readAllStandardError()};
}

QString pinsOf(const QString &path) { return path + u".pins"_s; }

QString makeDemo(const QString &path, const QStringList &options)
{
    const Said said = remateCli(QStringList{u"demo"_s, path, u"--json"_s} + options);
    const core::json::Object made = said.json();
    const core::json::Value *people = made.find(u"people");
    if (said.exit != 0 || !people || !people->array())
        return QString::fromUtf8(said.err);
    QByteArray pins;
    for (const core::json::Value &one : *people->array())
        pins += one.object()->text(u"id").toUtf8() + ' ' + one.object()->text(u"pin").toUtf8() + '\n';
    return writeFile(pinsOf(path), pins) ? QString() : u"cannot write PINs"_s;
}

QString makeQuickDemo(const QString &path, demo::Until until)
{
    const auto kinds = resources::loadKinds();
    auto store = db::Store::create(path);
    if (!core::readyCryptography() || !kinds || !store)
        return u"no cryptography, no kinds or no store"_s;
    const auto played = demo::play(**store, *kinds, QDateTime::currentDateTimeUtc().date().addDays(-1), until, core::leastCost);
    if (!played)
        return played.error().message;
    if (const auto closed = (*store)->close(); !closed)
        return closed.error().message;
    QByteArray pins;
    for (const demo::CastMember &member : played->cast)
        pins += member.id.text().toUtf8() + ' ' + member.pin.toUtf8() + '\n';
    return writeFile(pinsOf(path), pins) ? QString() : u"cannot write PINs"_s;
}

bool writeFile(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
}
