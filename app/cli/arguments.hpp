// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QHash>
#include <QString>
#include <QStringList>

#include <optional>

namespace cli {

/// What a command was told, by the names of its options.
class Arguments {
public:
    void set(const QString &name, const QStringList &values) { m_values.insert(name, values); }

    bool has(const QString &name) const { return m_values.contains(name); }
    /// The value, empty when it was not given.
    QString text(const QString &name) const { return m_values.value(name).value(0); }
    std::optional<QString> textIfGiven(const QString &name) const { return has(name) ? std::optional(text(name)) : std::nullopt; }
    std::vector<QString> texts(const QString &name) const
    {
        const QStringList list = m_values.value(name);
        return {list.begin(), list.end()};
    }

private:
    QHash<QString, QStringList> m_values;
};

} // namespace cli
