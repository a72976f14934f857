// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/manual/manual_opener.hpp"

#include <QMenuBar>

#include "app/desktop/manual/manual_window.hpp"
#include "app/desktop/manual/shortcuts_page.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

ManualOpener::ManualOpener(Ask &ask, QWidget *window) : QObject(window), m_ask(ask), m_window(window) {}

ManualOpener::~ManualOpener() = default;

void ManualOpener::show(const HelpPlace &place, const QMenuBar &menus)
{
    if (!m_manual) {
        auto pages = manual::loadPages();
        if (!pages) {
            m_ask.tell(tr("The manual cannot be shown"), core::errorInWords(pages.error()));
            return;
        }
        pages->push_back(shortcutsPage(menus));
        m_manual = std::make_unique<ManualWindow>(*std::move(pages), nullptr);
        m_manual->setWindowIcon(m_window->windowIcon());
        m_manual->setAttribute(Qt::WA_QuitOnClose, false);
    }
    m_manual->showPage(place.page, place.section);
    m_manual->show();
    m_manual->raise();
    m_manual->activateWindow();
}

std::optional<QString> ManualOpener::shownPage() const { return m_manual && m_manual->isVisible() ? std::optional(m_manual->shownPage()) : std::nullopt; }

void ManualOpener::close() { m_manual.reset(); }

} // namespace desktop
