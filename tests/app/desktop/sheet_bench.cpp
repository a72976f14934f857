// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/desktop/sheet_bench.hpp"

#include <QCoreApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "tests/app/desktop/on_screen.hpp"

using namespace Qt::StringLiterals;

SheetBench::SheetBench(const QString &store, const std::optional<core::LedgerId> &job, session::Clock clock, const core::Kinds &kinds, std::optional<desktop::BegunForms> begun)
    : m_kinds(kinds), m_begun(std::move(begun))
{
    auto opened = db::Store::open(store, db::Access::ReadWrite);
    if (!opened)
        qFatal("%s", qPrintable(opened.error().message));
    m_store = *std::move(opened);
    m_session = std::make_unique<session::Session>(*m_store, std::move(clock), core::leastCost);
    if (!m_session->refresh() || (job && !m_session->openJob(*job)))
        qFatal("the bench cannot be read");
    m_window = std::make_unique<QWidget>();
    m_window->show();
    m_signing = new desktop::Signing(*m_session, m_feed, kinds, m_ask, m_window.get());
    if (m_begun)
        m_signing->keepBegun(*m_begun);
    QObject::connect(m_signing, &desktop::Signing::hasSigned, m_window.get(), [this] { refresh(); });
    refresh();
}

void SheetBench::refresh()
{
    if (!m_session->refresh())
        qFatal("the store cannot be read any more");
    if (m_session->job())
        m_feed.take(m_session->state(), m_session->said(), m_session->reg());
    m_feed.tellPersonChanged();
}

desktop::SignSheet *SheetBench::sheet() const { return m_window->findChild<desktop::SignSheet *>(); }

void SheetBench::press(const QString &button) const { named<QPushButton>(*sheet(), button)->click(); }

QString SheetBench::problem() const { return named<QLabel>(*sheet(), u"problem"_s)->text(); }

bool SheetBench::maySign() const { return named<QPushButton>(*sheet(), u"sign"_s)->isEnabled(); }

void SheetBench::choosePerson(const QString &who)
{
    if (auto *other = sheet()->findChild<QPushButton *>(u"somebodyElse"_s); other && other->isVisible())
        other->click();
    typeInto(*sheet(), u"person"_s, who);
}

QString SheetBench::sign(const QString &who)
{
    choosePerson(who);
    typeInto(*sheet(), u"secret"_s, Bench::pinOf(who));
    press(u"sign"_s);
    const QString no = sheet()->isVisible() ? problem() : QString();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the sheet goes once it has signed
    return no;
}

void SheetBench::close()
{
    sheet()->reject();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}
