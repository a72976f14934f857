// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/known.hpp"

#include <QCoreApplication>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

core::Result<core::Digest> digestIn(const QString &text)
{
    const auto digest = core::Digest::parse(text);
    if (!digest)
        return core::failure(core::ErrorCode::BadInput, QCoreApplication::translate("Cli", "\"%1\" is no digest: 64 lower-case hex digits.").arg(text));
    return *digest;
}

} // namespace

Option rootOption() { return value("root"_L1, "DIGEST", QT_TRANSLATE_NOOP("Cli", "The root fingerprint that you know, from a printed record say.")); }

Option headOption()
{
    return values("head"_L1, "DIGEST", QT_TRANSLATE_NOOP("Cli", "The hash of an entry that must be there: it stands at the foot of an earlier printed record. A ledger whose end was cut off looks whole without one. May be repeated."));
}

core::Result<session::Known> knownIn(const Arguments &arguments)
{
    session::Known known;
    if (arguments.has(u"root"_s)) {
        const auto root = digestIn(arguments.text(u"root"_s));
        if (!root)
            return core::failure(root.error());
        known.rootFingerprint = *root;
    }
    for (const QString &text : arguments.texts(u"head"_s)) {
        const auto entry = digestIn(text);
        if (!entry)
            return core::failure(entry.error());
        known.entries.push_back(*entry);
    }
    return known;
}

} // namespace cli
