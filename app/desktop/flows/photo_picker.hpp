// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFrame>

#include <functional>

#include "app/desktop/ask.hpp"
#include "app/photos/photo_file.hpp"
#include "core/rules/refusal.hpp"

class QCheckBox;
class QLineEdit;
class QLabel;
class QMimeData;
class QPushButton;

namespace desktop {

/// The photo that a sheet attaches: chosen as a file, dropped on it, or pasted; as it is, or as a copy that is smaller or holds the picture alone. What is
/// signed is the digest of what `photo` answers.
class PhotoPicker : public QFrame {
    Q_OBJECT

public:
    /// Pixels of the longer side of a smaller copy: a part as large as a hand shows its scratches.
    static constexpr int smallerSide = 2000;

    /// `attachedBefore` says where a file of that digest was attached; empty when it was not.
    PhotoPicker(Ask &ask, const std::optional<photos::PhotoFile> &photo, std::function<QString(const core::Digest &)> attachedBefore, QWidget *parent = nullptr);

    /// As it will be attached; nothing before one was chosen.
    const std::optional<photos::PhotoFile> &photo() const { return m_photo; }
    /// Of which it may be a copy; nothing before one was chosen.
    std::optional<core::Digest> original() const;
    /// The file that it is a copy of; nothing where it is that file, or where there is no file.
    std::optional<core::Digest> copyOf() const;
    /// That there is none yet, that what was taken up was typed for another one, or that it was attached before and nobody said that it is meant.
    core::Refusals whyNot() const;
    /// Where the keyboard begins while there is no photo.
    QWidget *chooseControl() const;

signals:
    void changed();
    void heightChanged();

protected:
    void dragEnterEvent(QDragEnterEvent *event) override;
    void dropEvent(QDropEvent *event) override;

private:
    void makeChoices();
    void choose();
    void paste();
    void take(const QMimeData &offered);
    void takePhoto(const core::Result<photos::PhotoFile> &photo);
    void makeCopy();
    void judgeWords();
    void show();
    QString factsOf(const photos::PhotoFile &photo) const;

    Ask &m_ask;
    std::function<QString(const core::Digest &)> m_attachedBefore;
    std::optional<photos::PhotoFile> m_original;
    std::optional<photos::PhotoFile> m_photo;
    QString m_known; ///< where it was attached before
    QLineEdit *m_typedFor; ///< never seen: kept with what is typed, it says for which photo that was, as digest and name
    QString m_shownFor; ///< what the picker itself wrote there last
    bool m_isAnother = false; ///< what was taken up was typed for another photo
    QLabel *m_picture;
    QLabel *m_facts;
    QLabel *m_place;
    QLabel *m_signed;
    QLabel *m_problem;
    QPushButton *m_choose;
    QCheckBox *m_bare;
    QCheckBox *m_smaller;
    QCheckBox *m_again;
};

} // namespace desktop
