// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>
#include <optional>

#include "app/desktop/begun/begun_forms.hpp"
#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/pages/page.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/selection.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

/// One program with its sheets over an empty window: what pages would begin is begun by the test. It goes away without a word, as a killed program does.
class SheetBench {
public:
    /// On a store, with that job open if one is given; what is typed is kept in `begun` where one is given.
    SheetBench(const QString &store, const std::optional<core::LedgerId> &job, session::Clock clock, const core::Kinds &kinds, std::optional<desktop::BegunForms> begun = {});
    SheetBench(const Bench &bench, const std::optional<core::LedgerId> &job) : SheetBench(bench.path(), job, bench.clock(), bench.kinds()) {}

    session::Session &session() { return *m_session; }
    desktop::JobFeed &feed() { return m_feed; }
    desktop::Selection &selection() { return m_selection; }
    desktop::Signing &signing() { return *m_signing; }
    QWidget *window() const { return m_window.get(); }
    /// For pages of the test's own.
    desktop::PageTools tools() { return {m_feed, *m_signing, m_selection, m_ask, m_kinds, {}}; }
    /// Looks at the store, and shows what is new; also done once something was signed here.
    void refresh();

    /// The one that is open; nullptr while there is none.
    desktop::SignSheet *sheet() const;
    void press(const QString &button) const;
    QString problem() const;
    bool maySign() const;
    void choosePerson(const QString &who);
    /// Signs what is open as that person. What is in the way; empty when it was signed, and the sheet is gone.
    QString sign(const QString &who);
    /// Gives up what is open.
    void close();

private:
    const core::Kinds &m_kinds;
    std::optional<desktop::BegunForms> m_begun;
    ScriptedAsk m_ask;
    std::unique_ptr<db::Store> m_store;
    std::unique_ptr<session::Session> m_session;
    desktop::JobFeed m_feed;
    desktop::Selection m_selection;
    std::unique_ptr<QWidget> m_window;
    desktop::Signing *m_signing;
};
