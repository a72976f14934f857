// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/administer.hpp"

#include <QCoreApplication>

namespace cli {

using namespace Qt::StringLiterals;

core::Result<Administration> administer(const Arguments &arguments, const Context &context)
{
    const auto by = personIn(arguments, u"by"_s);
    if (!by)
        return core::failure(by.error());
    auto secrets = Secrets::of(arguments);
    if (!secrets)
        return core::failure(secrets.error());
    auto opened = openStore(arguments, context, db::Access::ReadWrite);
    if (!opened)
        return core::failure(opened.error());
    const auto secret = secrets->of(*by);
    if (!secret)
        return core::failure(secret.error());
    return Administration{*std::move(opened), *std::move(secrets), {*by, *secret}};
}

session::Signed signOnRegister(Administration &administration, const std::vector<core::Draft> &drafts)
{
    const auto &ledger = administration.session().reg().ledger;
    if (!ledger) {
        return tl::unexpected(session::NotSigned{
            {core::ErrorCode::NotFound, QCoreApplication::translate("Cli", "This store has no register yet. Make one with init.")}, {}});
    }
    return administration.session().sign(*ledger, drafts, administration.administrator);
}

core::Result<core::Instant> momentIn(const QString &text)
{
    if (const auto moment = core::Instant::parse(text))
        return *moment;
    return core::failure(core::ErrorCode::BadInput, QCoreApplication::translate("Cli", "\"%1\" is no time such as 2026-03-02T08:14:00Z.").arg(text));
}

core::Result<QDate> dayIn(const QString &text)
{
    const QDate day = QDate::fromString(text, Qt::ISODate);
    if (day.isValid() && text.size() == 10)
        return day;
    return core::failure(core::ErrorCode::BadInput, QCoreApplication::translate("Cli", "\"%1\" is no day such as 2026-03-02.").arg(text));
}

} // namespace cli
