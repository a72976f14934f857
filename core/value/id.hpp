// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>
#include <QStringView>

#include <optional>

namespace core {

/// True for text that can name something: 1 to 128 characters in one line, written the plain way (see plain_text.hpp), each to be seen, no
/// blank at either end.
bool isIdText(QStringView text);

/// The name of one kind of thing. There is no empty Id; absence is std::optional. Made only by parse(), so every Id is valid.
template <class Tag>
class Id {
public:
    /// The id, or nothing when `text` cannot name anything (see isIdText).
    static std::optional<Id> parse(QStringView text)
    {
        if (!isIdText(text))
            return std::nullopt;
        return Id(text.toString());
    }
    /// The same, sharing the text.
    static std::optional<Id> parse(const QString &text)
    {
        if (!isIdText(text))
            return std::nullopt;
        return Id(text);
    }
    const QString &text() const { return m_text; }

    friend bool operator==(const Id &a, const Id &b) { return a.m_text == b.m_text; }
    friend bool operator<(const Id &a, const Id &b) { return a.m_text < b.m_text; }
    friend size_t qHash(const Id &id, size_t seed = 0) { return ::qHash(id.m_text, seed); }

private:
    explicit Id(QString text) : m_text(std::move(text)) {}
    QString m_text;
};

using PersonId = Id<struct PersonTag>;
using ToolId = Id<struct ToolTag>;
using InterfaceId = Id<struct InterfaceTag>;
using LedgerId = Id<struct LedgerTag>;
using FindingId = Id<struct FindingTag>;
using AuthorisationId = Id<struct AuthorisationTag>;
using HoldId = Id<struct HoldTag>;
using TemporaryId = Id<struct TemporaryTag>;
using TestId = Id<struct TestTag>;
using AccessoryId = Id<struct AccessoryTag>;

} // namespace core
