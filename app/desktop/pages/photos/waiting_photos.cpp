// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/waiting_photos.hpp"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/labels.hpp"
#include "core/value/counted.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

WaitingPhotos::WaitingPhotos(QWidget *parent) : QFrame(parent)
{
    setProperty("role", "card");
    auto *row = new QHBoxLayout(this);
    auto *column = new QVBoxLayout;
    m_name = makeLabel({}, "heading", this);
    m_name->setObjectName(u"waiting"_s);
    m_known = makeLabel({}, "alarm", this);
    m_known->setObjectName(u"waitingKnown"_s);
    m_problem = makeLabel({}, "alarm", this);
    m_problem->setObjectName(u"waitingProblem"_s);
    m_attach = makeButton({}, "main", this);
    m_attach->setObjectName(u"attachWaiting"_s);
    m_leave = makeButton(tr("Leave &it"), "", this);
    m_leave->setObjectName(u"leaveWaiting"_s);
    for (QLabel *label : {m_name, m_known, m_problem})
        column->addWidget(label);
    row->addLayout(column, 1);
    row->addWidget(m_attach);
    row->addWidget(m_leave);
    connect(m_attach, &QPushButton::clicked, this, &WaitingPhotos::attachWanted);
    connect(m_leave, &QPushButton::clicked, this, [this] { drop(firstDigest()); });
    show({}, {});
}

bool WaitingPhotos::addFile(const QString &path)
{
    const auto photo = photos::readPhoto(path);
    if (!photo) {
        say(photo.error().message);
        return false;
    }
    return append({photo->name, path, {}, photos::digestOf(*photo)});
}

bool WaitingPhotos::add(const photos::PhotoFile &photo) { return append({photo.name, {}, photo, photos::digestOf(photo)}); }

bool WaitingPhotos::append(Waiting waiting)
{
    const bool waits = std::any_of(m_waiting.begin(), m_waiting.end(), [&](const Waiting &one) { return one.digest == waiting.digest; });
    if (waits) {
        say(tr("%1 waits here already, under this name or another.").arg(waiting.name));
        return false;
    }
    m_waiting.push_back(std::move(waiting));
    say({});
    emit changed();
    return true;
}

core::Result<photos::PhotoFile> WaitingPhotos::first() const
{
    const Waiting &waiting = m_waiting.front();
    return waiting.path.isEmpty() ? core::Result<photos::PhotoFile>(waiting.photo) : photos::readPhoto(waiting.path);
}

void WaitingPhotos::drop(const core::Digest &digest)
{
    const auto gone = std::find_if(m_waiting.begin(), m_waiting.end(), [&](const Waiting &one) { return one.digest == digest; });
    if (gone == m_waiting.end())
        return;
    m_waiting.erase(gone);
    say({});
    emit changed();
}

void WaitingPhotos::bringLastToFront()
{
    std::rotate(m_waiting.begin(), std::prev(m_waiting.end()), m_waiting.end());
    emit changed();
}

void WaitingPhotos::say(const QString &problem)
{
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
    setVisible(!problem.isEmpty() || !m_waiting.empty());
}

void WaitingPhotos::show(const QString &item, const QString &known)
{
    const bool waits = !m_waiting.empty();
    for (QWidget *widget : std::initializer_list<QWidget *>{m_name, m_attach, m_leave})
        widget->setVisible(waits);
    m_known->setText(known);
    m_known->setVisible(waits && !known.isEmpty());
    if (waits) {
        const Waiting &first = m_waiting.front();
        const QString where = first.path.isEmpty() ? first.name : tr("%1 in %2").arg(first.name, QFileInfo(first.path).absolutePath());
        const int more = static_cast<int>(m_waiting.size()) - 1;
        m_name->setText(more == 0 ? tr("Waits to be attached: %1").arg(where) : tr("Waits to be attached: %1, and %2").arg(where, core::counted(more, tr("1 more"), tr("%1 more"))));
        m_attach->setText(item.isEmpty() ? tr("A&ttach it to …") : tr("A&ttach it to %1 …").arg(item));
    }
    setVisible(waits || !m_problem->text().isEmpty());
}

} // namespace desktop
