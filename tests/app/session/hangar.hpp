// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>

#include <memory>

#include "app/session/people.hpp"
#include "app/session/session.hpp"

/// A store with a handful of people, for tests of the session.
class Hangar {
public:
    Hangar();

    /// Another program on the same store, with its own session. Lives as long as the hangar.
    session::Session &another();
    /// A store of the same file, for looking behind the session's back.
    db::Store &store() { return *m_store; }
    session::Session &session() { return *m_session; }
    QString path() const { return m_folder.filePath(QStringLiteral("hangar.remate")); }

    void pass(std::chrono::milliseconds span) { m_now = core::Instant::fromMilliseconds(m_now.milliseconds() + span.count()); }
    session::Clock clock()
    {
        return [this] { return m_now; };
    }

    /// Opens a job led by `lead` with two interfaces on its list; empty when it went well, else why not.
    QString openJob();
    core::LedgerId job() const { return *m_job; }

    /// Why making it went wrong; empty when it did not.
    const QString &trouble() const { return m_trouble; }

private:
    QString makePeople();
    QTemporaryDir m_folder;
    core::Instant m_now;
    std::unique_ptr<db::Store> m_store;
    std::unique_ptr<session::Session> m_session;
    struct Program {
        std::unique_ptr<db::Store> store;
        std::unique_ptr<session::Session> session;
    };
    std::vector<Program> m_others;
    std::optional<core::LedgerId> m_job;
    QString m_trouble;
};

core::PersonId person(const char *id);
session::Signer signer(const char *id); ///< with the secret that everybody in the hangar has: the id and "-secret"

core::Draft draft(const char *author, const QString &kind, const std::optional<QString> &subject, core::json::Object body);
core::Draft undone(const char *author, const QString &item, const QString &tag);
core::Draft openedBy(const char *lead);

/// The names of the rules that said no, with the index of the draft: `1 balance.tag-unique`.
QStringList rulesOf(const session::NotSigned &no);
