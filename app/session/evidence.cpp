// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/evidence.hpp"

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

core::Result<std::vector<core::Fault>> StoreEvidence::faultsOfTheWhole()
{
    const auto differences = m_store.schemaDifferences();
    if (!differences)
        return core::failure(differences.error());
    std::vector<core::Fault> faults;
    for (const QString &difference : *differences)
        faults.push_back({noLedger(), 0, u"store.schema"_s, difference});
    return faults;
}

} // namespace session
