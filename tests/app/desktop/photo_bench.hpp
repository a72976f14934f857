// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>
#include <optional>

#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/photos/photo_pair.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/app/photos/camera.hpp"

/// The real window with a job of two interfaces, D1 and C1, open at the page of its photos; and another program on the same store.
class PhotoBench {
protected:
    /// What went wrong; empty when nothing did.
    QString setUp();
    void tearDown();

    desktop::SignSheet *sheet() const { return m_window->findChild<desktop::SignSheet *>(); }
    /// Signs what is open as that person. What is in the way; empty when it was signed, and the sheet is gone.
    QString sign(const QString &person);
    /// Clicks that button.
    static void press(const QWidget &in, const char *button);
    desktop::PhotosPage &page() const { return *m_window->findChild<desktop::PhotosPage *>(); }
    desktop::JobPlace &place() const { return *m_window->findChild<desktop::JobPlace *>(); }
    void go(const char *name, const char *row = "") { place().showPage(QString::fromLatin1(name), QString::fromLatin1(row)); }
    QString file(const QString &name, const QByteArray &bytes) const { return m_bench->file(name, bytes); }
    /// What that label of the page says; empty while it is not there.
    QString told(const char *label) const;
    /// The photos of an interface as the ledger has them: moment and media type, and the marks.
    QStringList photosOf(const QString &item) const;
    const core::InterfaceState *itemOf(const QString &id) const;
    /// Attaches a photo as another program would. What was refused.
    QString attach(const QString &item, const QByteArray &bytes, const QString &moment);
    desktop::PhotoView &view(desktop::Side side) const { return page().findChild<desktop::PhotoPair *>()->view(side); }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
    std::unique_ptr<session::Session> m_other;
    std::optional<core::LedgerId> m_job;
};

inline QByteArray photoOf(int width, int height) { return camera::jpegOf(camera::twoHalves(width, height)); }

/// By hand: characters are held back until they cannot be a scanner's any more, so each waits for that.
void pressKey(QWidget &in, Qt::Key key);
void typeKeys(QWidget &in, const QString &text);
