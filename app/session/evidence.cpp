// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/evidence.hpp"

#include <QCoreApplication>
#include <QFile>

namespace session {

using namespace Qt::StringLiterals;

core::LedgerId noLedger() { return *core::LedgerId::parse(u"-"); }

core::Result<void> StoreEvidence::forEachAttachment(const AttachmentVisitor &visit)
{
    const auto kept = m_store.attachments().list();
    if (!kept)
        return core::failure(kept.error());
    for (const db::Attachment &attachment : *kept) {
        const auto bytes = m_store.attachments().get(attachment.digest);
        if (!bytes && bytes.error().code != core::ErrorCode::Damaged)
            return core::failure(bytes.error());
        visit(attachment.digest, bytes ? std::nullopt : std::optional(bytes.error().message));
    }
    return {};
}

core::Result<std::vector<core::Fault>> StoreEvidence::faultsOfLookUps()
{
    // An index of the file may hold other rows than its table; then one reader sees the one, and another the other.
    const auto damage = m_store.damage();
    if (!damage)
        return core::failure(damage.error());
    if (*damage)
        return std::vector<core::Fault>{{noLedger(), 0, u"store.file"_s, QCoreApplication::translate("VerifyStore", "The store's file does not agree with itself (%1): it was damaged, or changed by other means. Restore a backup.").arg(**damage)}};
    return m_store.whereUsed().difference().map([](const std::optional<QString> &difference) {
        return difference ? std::vector<core::Fault>{{noLedger(), 0, u"store.where-used"_s, *difference}} : std::vector<core::Fault>();
    });
}

core::Result<std::vector<core::Fault>> StoreEvidence::faultsOfTheWhole()
{
    const auto differences = m_store.schemaDifferences();
    if (!differences)
        return core::failure(differences.error());
    std::vector<core::Fault> faults;
    for (const QString &difference : *differences)
        faults.push_back({noLedger(), 0, u"store.schema"_s, difference});
    const auto packages = m_store.packages().list();
    if (!packages) {
        faults.push_back({noLedger(), 0, u"package.digest"_s, packages.error().message});
        return faults;
    }
    QFile nowhere(u"/dev/null"_s);
    if (!packages->empty() && !nowhere.open(QIODevice::WriteOnly))
        return core::failure(core::ErrorCode::Io, nowhere.errorString());
    for (const db::KeptPackage &package : *packages) {
        const auto read = m_store.packages().writeTo(nowhere, package.number);
        if (!read && read.error().code != core::ErrorCode::Damaged)
            return core::failure(read.error());
        if (!read)
            faults.push_back({noLedger(), 0, u"package.digest"_s, read.error().message});
    }
    return faults;
}

} // namespace session
