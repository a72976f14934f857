// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <optional>

#include "core/value/instant.hpp"
#include "core/value/json.hpp"
#include "core/value/result.hpp"

namespace desktop {

/// Which form it is: that of one act on the same things of the same job.
struct FormName {
    QString store; ///< ledger of its register
    QString job;   ///< its ledger; empty for acts of the register and for a job that is only opened
    QString act;
    QStringList subjects; ///< in the form's order, and what else it is about: an entry, a photo
    bool operator==(const FormName &) const = default;
};

/// What somebody typed into a form and did not sign.
struct Begun {
    core::Instant at;         ///< when it was typed last
    core::json::Object typed; ///< by the names of the fields
};

/// Forms that were begun and not signed, each a file in a folder of the user's own (mode 0700, files 0600). It is no evidence, so it is
/// beside the stores and never in one. Whoever writes last has the file: two windows on one form do not wait for each other.
class BegunForms {
public:
    static constexpr int keptDays = 30;

    /// The folder is made when something is kept.
    explicit BegunForms(QString folder) : m_folder(std::move(folder)) {}

    /// What was begun in that form, or nothing. A file that cannot be read is set aside under another name and told once (Damaged).
    core::Result<std::optional<Begun>> find(const FormName &form) const;
    /// At once, in the place of what was there; whole, or not at all. Errors: Io.
    core::Result<void> keep(const FormName &form, const Begun &begun) const;
    /// It was signed, or is not wanted. There may be nothing. Errors: Io.
    core::Result<void> drop(const FormName &form) const;
    /// Drops whatever was typed more than keptDays ago, and what was set aside so long ago.
    void dropOld(const core::Instant &now) const;

    QString pathOf(const FormName &form) const;

private:
    core::Error setAside(const QString &path) const;
    QString m_folder;
};

} // namespace desktop
