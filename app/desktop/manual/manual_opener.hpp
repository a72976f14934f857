// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>

#include <memory>
#include <optional>

#include "app/desktop/ask.hpp"
#include "app/desktop/parts/help_page.hpp"

class QMenuBar;
class QWidget;

namespace desktop {

class ManualWindow;

/// The one manual beside a window; read when it is asked for first.
class ManualOpener : public QObject {
    Q_OBJECT

public:
    ManualOpener(Ask &ask, QWidget *window);
    ~ManualOpener() override;
    /// Shows that place, the keys of these menus among the pages; says why when the manual cannot be read.
    void show(const HelpPlace &place, const QMenuBar &menus);
    /// Nothing while it is not open.
    std::optional<QString> shownPage() const;
    /// nullptr before it was opened.
    ManualWindow *window() const { return m_manual.get(); }
    /// It is read anew, in the language that is then spoken.
    void close();

private:
    Ask &m_ask;
    QWidget *m_window;
    /// No child of the window: a sheet that is open over that one would keep it from being read.
    std::unique_ptr<ManualWindow> m_manual;
};

} // namespace desktop
