// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>

#include <functional>

#include "app/desktop/ask.hpp"
#include "app/desktop/store_place.hpp"
#include "core/kinds/kinds.hpp"

namespace desktop {

/// The store that is open in a window, if any: made, opened and left here, with the record packages beside it. What shows it follows its signals.
class OpenStore : public QObject {
    Q_OBJECT

public:
    /// Asked before the store is left for another.
    using MayLeave = std::function<bool()>;

    /// Dialogs open over the window, which owns this.
    OpenStore(Ask &ask, const core::Kinds &kinds, SessionMaker maker, MayLeave mayLeave, QWidget *window);

    /// nullptr while none is open.
    session::Session *session() const { return m_place.session.get(); }
    /// While one is open.
    db::Store &store() const { return *m_place.store; }
    const SessionMaker &maker() const { return m_maker; }
    /// The jobs with that work order; none while no store is open or it cannot be read now.
    core::Result<std::vector<core::LedgerId>> jobsOf(const QString &workOrder) const;

    void askNew();
    void askOpen();
    /// A store, or a record package, which is verified. Says why when it cannot be opened.
    void open(const QString &path);
    /// A store that was opened already, or why it was not.
    void takeOpened(core::Result<StorePlace> place);
    void openDemo();
    void askPackage();
    /// Verifies a record package and shows the verdict; no store needs to be open.
    void openPackage(const QString &path);
    /// Those that the open store took in.
    void showPackages();
    void leave();

signals:
    /// The session is still there: whoever holds it lets go now.
    void leaving();
    /// Another store is open.
    void opened();

private:
    void take(StorePlace place);

    Ask &m_ask;
    const core::Kinds &m_kinds;
    SessionMaker m_maker;
    MayLeave m_mayLeave;
    QWidget *m_window;
    StorePlace m_place;
};

} // namespace desktop
