// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QTemporaryDir>

#include <functional>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/main_window.hpp"
#include "app/language/spoken.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

/// Every page and every dialog that a person can come to in the middle of the demo's second shift, in any language.
class AllScreens {
public:
    /// Plays the demo and finds out what may be signed there by somebody.
    AllScreens();
    ~AllScreens();
    AllScreens(const AllScreens &) = delete;
    AllScreens &operator=(const AllScreens &) = delete;

    /// What went wrong while it was set up; empty when nothing did.
    const QString &trouble() const { return m_trouble; }

    struct Screen {
        QString name;
        /// Brings it up, in the language that is spoken; the window that it is.
        std::function<QWidget *()> show;
    };
    const std::vector<Screen> &pages() const { return m_pages; }
    const std::vector<Screen> &dialogs() const { return m_dialogs; }
    /// The kinds of entry whose sheet is among the dialogs.
    const QStringList &acts() const { return m_acts; }

    /// From now on in that language, in a new window.
    void speak(language::Language language);
    /// Closes whatever dialog is open.
    void leave();
    desktop::MainWindow &window() { return *m_window; }

private:
    std::unique_ptr<desktop::MainWindow> newWindow();
    void addPages();
    void addHappenings();
    void addDialogs();
    void addActs();
    void addRegister();
    void scan(const QString &text);
    QWidget *press(const QString &page, const char *button);
    QWidget *trigger(const QString &keys);
    /// What lies over everything else.
    QWidget *top();

    QTemporaryDir m_folder;
    core::Kinds m_kinds;
    ScriptedAsk m_ask;
    QString m_trouble;
    std::optional<core::LedgerId> m_job;
    language::Spoken m_words;
    std::unique_ptr<desktop::MainWindow> m_window;
    std::unique_ptr<desktop::MainWindow> m_other; ///< without a store, or with one that nobody founded
    std::vector<Screen> m_pages;
    std::vector<Screen> m_dialogs;
    QStringList m_acts;
    QStringList m_tools; ///< of the register
    quint64 m_moment = 1000; ///< of the last key that was scanned, in milliseconds
};
