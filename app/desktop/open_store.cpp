// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/open_store.hpp"

#include <QTimer>
#include <QWidget>

#include "app/desktop/flows/demo_flow.hpp"
#include "app/desktop/flows/record_flow.hpp"
#include "app/desktop/pages/verdict/packages_dialog.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/package/verify_package.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

OpenStore::OpenStore(Ask &ask, const core::Kinds &kinds, SessionMaker maker, MayLeave mayLeave, QWidget *window)
    : QObject(window), m_ask(ask), m_kinds(kinds), m_maker(std::move(maker)), m_mayLeave(std::move(mayLeave)), m_window(window)
{
}

core::Result<std::vector<core::LedgerId>> OpenStore::jobsOf(const QString &workOrder) const
{
    std::vector<core::LedgerId> found;
    const auto rows = session() ? session()->jobs() : std::vector<session::JobRow>();
    if (!rows)
        return core::failure(rows.error());
    for (const session::JobRow &row : *rows) {
        if (row.summary.workOrder == workOrder)
            found.push_back(row.ledger);
    }
    return found;
}

void OpenStore::askNew()
{
    const auto path = m_ask.fileToSave(tr("New store"), QStringLiteral("jobs.remate"), tr("Store (*.remate)"));
    if (!path || !m_mayLeave())
        return;
    auto place = createPlace(*path, m_maker);
    if (!place)
        m_ask.tell(tr("The store was not made"), core::errorInWords(place.error()));
    else
        take(*std::move(place));
}

void OpenStore::askOpen()
{
    if (const auto path = m_ask.fileToOpen(tr("Open a store"), tr("Stores (*.remate);;All files (*)")))
        open(*path);
}

void OpenStore::open(const QString &path)
{
    if (package::looksLikePackage(path)) {
        openPackage(path);
        return;
    }
    takeOpened(openPlace(path, m_maker));
}

void OpenStore::takeOpened(core::Result<StorePlace> place)
{
    if (!place)
        m_ask.tell(tr("The store was not opened"), core::errorInWords(place.error()));
    else if (m_mayLeave())
        take(*std::move(place));
}

void OpenStore::openDemo()
{
    if (const auto path = makeDemo(m_kinds, m_maker.care.cost, m_ask, m_window))
        open(*path);
}

void OpenStore::askPackage()
{
    if (const auto path = m_ask.fileToOpen(tr("Verify a record package"), tr("Record packages (*.zip);;All files (*)")))
        openPackage(*path);
}

void OpenStore::openPackage(const QString &path)
{
    VerifyWhat what = packageToVerify(path, m_kinds);
    if (session())
        what.import = [this, path](const session::Known &known) { importPackage(*session(), path, known, m_kinds, m_ask, m_window); };
    auto *dialog = new VerifyDialog(std::move(what), m_ask, m_window);
    dialog->open();
    dialog->verify();
}

void OpenStore::showPackages()
{
    auto *dialog = new PackagesDialog(*session(), m_kinds, m_ask, m_window);
    connect(dialog, &PackagesDialog::openWanted, this, [this, dialog] {
        dialog->close();
        askPackage();
    });
    dialog->open();
}

void OpenStore::leave()
{
    emit leaving();
    m_place = StorePlace();
}

void OpenStore::take(StorePlace place)
{
    leave();
    m_place = std::move(place);
    // While a sheet is being signed; told once it is gone.
    session()->setTell([this](const QString &sentence) { QTimer::singleShot(0, this, [this, sentence] { m_ask.tell(tr("About your key"), sentence); }); });
    emit opened();
}

} // namespace desktop
