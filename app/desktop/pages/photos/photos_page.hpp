// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QPixmap>

#include <map>

#include "app/desktop/pages/page.hpp"
#include "app/desktop/pages/photos/photo_choice.hpp"
#include "app/desktop/pages/photos/photo_pair.hpp"

class QLabel;
class QListWidget;
class QMimeData;

namespace desktop {

class MarkPanel;
class PhotoIntake;
class RowTable;

/// The photos of a job: those that wait to be attached, and those of one interface before and after, side by side, with their marks. Photos come by file,
/// drop, paste and from a watched folder; each is asked about, and is in the store once its entry is signed.
class PhotosPage : public Page {
    Q_OBJECT

public:
    explicit PhotosPage(const PageTools &tools, QWidget *parent = nullptr);
    static Page *make(const PageTools &tools, QWidget *parent) { return new PhotosPage(tools, parent); }

    /// An interface, by its id; one without photos, too.
    void chooseRow(const QString &key) override;
    /// Photos that wait, marks, and a folder that is watched.
    bool isAnythingUnsigned() const override;
    /// Has what was dropped or pasted wait; a single photo is asked about at once.
    void offer(const QMimeData &offered);

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    QWidget *makeLeft();
    void refresh();
    void chooseItem(const QString &key);
    void turnTo(const std::optional<core::InterfaceId> &id);
    void choosePhoto(int row);
    void showPhotos();
    ShownPhoto shownOf(const core::Photo *photo, const QString &none);
    core::Result<QByteArray> bytesOf(const core::Photo &photo) const;
    QPixmap thumbnailOf(const core::Photo &photo);
    void forgetAllBut(const PhotoChoice &choice);
    void showMarks();
    void showWaiting();
    void attachFirst();
    void place(const QPointF &at);
    void removeMark(qint64 number);
    void word(qint64 number, const QString &what);
    void signMarks();

    const core::InterfaceState *item() const;
    /// The photo that marks are about, or nullptr.
    const core::Photo *marked() const;
    /// Of the interface that is shown; their numbers make way for marks that were signed meanwhile.
    std::vector<core::PhotoMark> &draftsOf(const core::Photo &photo);
    std::optional<core::InterfaceId> askItem();

    QLabel *m_title;
    PhotoIntake *m_intake;
    RowTable *m_items;
    QListWidget *m_photos;
    PhotoPair *m_pair;
    MarkPanel *m_marks;
    std::optional<core::InterfaceId> m_item;
    std::optional<core::InterfaceId> m_wanted; ///< was led to, whether it has photos or not
    qint64 m_chosenPhoto = 0;                  ///< the entry of the photo that was chosen last; 0 for none
    std::map<std::pair<core::InterfaceId, core::Digest>, std::vector<core::PhotoMark>> m_drafts; ///< marks that nobody signed yet, by interface and photo
    std::map<core::Digest, QImage> m_decoded;      ///< those in sight
    std::map<core::Digest, QPixmap> m_thumbnails;  ///< of the interface that is shown
};

} // namespace desktop
