// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/demo_flow.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>

#include "app/demo/scenario.hpp"
#include "app/desktop/flows/long_work.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

struct DemoFlow {
    Q_DECLARE_TR_FUNCTIONS(DemoFlow)
};

/// A demo that failed half way leaves no file.
core::Result<demo::Played> playInto(const QString &path, const core::Kinds &kinds, core::WrapCost cost)
{
    auto store = db::Store::create(path);
    if (!store)
        return core::failure(store.error());
    auto played = demo::play(**store, kinds, QDateTime::currentDateTimeUtc().date().addDays(-1), demo::Until::SecondShift, cost);
    const auto closed = (*store)->close();
    if (played && closed)
        return played;
    QFile::remove(path);
    return core::failure(played ? closed.error() : played.error());
}

} // namespace

std::optional<QString> makeDemo(const core::Kinds &kinds, core::WrapCost cost, Ask &ask, QWidget *window)
{
    const auto path = ask.fileToSave(DemoFlow::tr("Where to keep the demo"), QStringLiteral("demo.remate"), DemoFlow::tr("Store (*.remate)"));
    if (!path)
        return std::nullopt;
    core::Result<demo::Played> played = core::failure(core::ErrorCode::Cancelled, QString());
    {
        LongWork work(DemoFlow::tr("Playing the demo: people, tools, one engine change"), window);
        work.progress()(0, 1);
        played = playInto(*path, kinds, cost);
    }
    if (!played) {
        ask.tell(DemoFlow::tr("The demo was not made"), core::errorInWords(played.error()));
        return std::nullopt;
    }
    QStringList lines;
    for (const demo::CastMember &member : played->cast)
        lines << DemoFlow::tr("%1 (%2), %3: PIN %4").arg(member.name, member.id.text(), member.role, member.pin);
    ask.tell(DemoFlow::tr("The demo's people and PINs"), lines.join(u'\n'));
    return path;
}

} // namespace desktop
