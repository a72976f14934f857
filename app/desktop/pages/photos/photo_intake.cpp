// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/photo_intake.hpp"

#include <QApplication>
#include <QClipboard>
#include <QHBoxLayout>
#include <QLabel>
#include <QMimeData>
#include <QPushButton>
#include <QUrl>
#include <QVBoxLayout>

#include "app/desktop/pages/photos/waiting_photos.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/photos/incoming.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

PhotoIntake::PhotoIntake(Ask &ask, QWidget *parent) : QWidget(parent), m_ask(ask)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeSources());
    m_waiting = new WaitingPhotos(this);
    column->addWidget(m_waiting);
    connect(m_waiting, &WaitingPhotos::attachWanted, this, &PhotoIntake::attachWanted);
    connect(m_waiting, &WaitingPhotos::changed, this, &PhotoIntake::changed);
    connect(&m_folder, &photos::WatchedFolder::arrived, this, [this](const QString &path) { (void)m_waiting->addFile(path); });
    connect(&m_folder, &photos::WatchedFolder::lost, this, [this](const QString &path) {
        m_waiting->say(tr("The folder %1 is gone, so it is watched no longer. Connect the camera again, and choose its folder.").arg(path));
        showWatched();
    });
    showWatched();
}

QWidget *PhotoIntake::makeSources()
{
    auto *bar = new QWidget(this);
    auto *row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    QPushButton *add = makeButton(tr("&Add a photo …"), "", bar);
    add->setObjectName(u"addPhoto"_s);
    QPushButton *fromClipboard = makeButton(tr("Paste (Ctrl+V)"), "", bar);
    fromClipboard->setObjectName(u"paste"_s);
    m_watch = makeButton({}, "", bar);
    m_watch->setObjectName(u"watch"_s);
    m_watched = makeLabel({}, "quiet", bar);
    m_watched->setObjectName(u"watched"_s);
    for (QPushButton *button : {add, fromClipboard, m_watch})
        row->addWidget(button);
    row->addWidget(m_watched, 1);
    connect(add, &QPushButton::clicked, this, &PhotoIntake::addFile);
    connect(fromClipboard, &QPushButton::clicked, this, &PhotoIntake::paste);
    connect(m_watch, &QPushButton::clicked, this, &PhotoIntake::watchOrStop);
    return bar;
}

bool PhotoIntake::isAnythingExpected() const { return !m_waiting->isEmpty() || !m_folder.path().isEmpty(); }

void PhotoIntake::offer(const QMimeData &offered)
{
    int came = 0;
    int added = 0;
    const auto count = [&](bool isAdded) {
        ++came;
        added += isAdded ? 1 : 0;
    };
    for (const QUrl &url : offered.urls()) {
        if (url.isLocalFile())
            count(m_waiting->addFile(url.toLocalFile()));
    }
    if (came == 0) {
        for (const auto &photo : photos::photosIn(offered, tr("Pasted picture"))) {
            if (!photo)
                m_waiting->say(photo.error().message);
            count(photo && m_waiting->add(*photo));
        }
    }
    if (came == 0)
        m_waiting->say(tr("There is no picture in the clipboard. Copy one, then paste again."));
    if (came == 1 && added == 1)
        attachLast();
}

void PhotoIntake::paste()
{
    if (const QMimeData *offered = QApplication::clipboard()->mimeData())
        offer(*offered);
}

void PhotoIntake::addFile()
{
    if (const auto path = m_ask.fileToOpen(tr("Add a photo"), tr("Pictures (*.png *.jpg *.jpeg)")); path && m_waiting->addFile(*path))
        attachLast();
}

void PhotoIntake::attachLast()
{
    m_waiting->bringLastToFront();
    emit attachWanted();
}

void PhotoIntake::watchOrStop()
{
    if (!m_folder.path().isEmpty()) {
        m_folder.stop();
    } else if (const auto path = m_ask.folderToOpen(tr("Watch the folder of a camera or phone"))) {
        if (const auto watching = m_folder.watch(*path); !watching)
            m_ask.tell(tr("The folder is not watched"), core::errorInWords(watching.error()));
    }
    showWatched();
}

void PhotoIntake::showWatched()
{
    const bool isWatching = !m_folder.path().isEmpty();
    m_watch->setText(isWatching ? tr("Stop &watching") : tr("&Watch a folder …"));
    m_watched->setText(isWatching ? tr("Photos that come into %1 from now on are asked about here.").arg(m_folder.path()) : tr("Or drop photos on this page. None is taken before its entry is signed."));
}

} // namespace desktop
