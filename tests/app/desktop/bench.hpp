// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>

#include <memory>

#include "app/session/session.hpp"
#include "core/kinds/kinds.hpp"

/// A store in a folder of its own with people, authorisations and tools, on a clock that ticks a millisecond at each look.
/// Everybody's PIN is their id and "-4711".
class Bench {
public:
    Bench();

    QString path() const { return m_folder.filePath(QStringLiteral("bench.remate")); }
    QString file(const QString &name, const QByteArray &bytes) const;
    session::Clock clock() const;
    const core::Kinds &kinds() const { return m_kinds; }
    /// What went wrong while it was set up; empty when nothing did.
    const QString &trouble() const { return m_trouble; }
    static QString pinOf(const QString &person) { return person + QStringLiteral("-4711"); }

    /// A session of its own on the same file: another program.
    std::unique_ptr<session::Session> another();

    /// Signs one draft as another program would. What was refused; empty when it was signed.
    static QString say(session::Session &session, const core::LedgerId &ledger, const QString &who, const QString &kind,
                       const std::optional<QString> &subject, core::json::Object body);
    /// Opens a job with zones Left and Right, led by ana, and with more members where they are given; returns its ledger.
    std::optional<core::LedgerId> openJob(session::Session &session, const core::json::Object &more = {});

private:
    void furnish();
    QTemporaryDir m_folder;
    core::Kinds m_kinds;
    std::shared_ptr<qint64> m_now;
    QString m_trouble;
    std::vector<std::unique_ptr<db::Store>> m_stores;
};

/// Four interfaces: a duct with torque, a connector with halves, a bonding lead, a fuel line with seal and safetying.
QByteArray benchList();
