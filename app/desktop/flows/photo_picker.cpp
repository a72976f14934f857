// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/photo_picker.hpp"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QMimeData>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/photos/bare_copy.hpp"
#include "app/photos/exif_place.hpp"
#include "app/photos/incoming.hpp"
#include "db/attachments.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

static_assert(photos::mostBytes <= db::Attachments::largest); // what is taken can be kept

PhotoPicker::PhotoPicker(Ask &ask, const std::optional<photos::PhotoFile> &photo, std::function<QString(const core::Digest &)> attachedBefore, QWidget *parent)
    : QFrame(parent), m_ask(ask), m_attachedBefore(std::move(attachedBefore))
{
    setProperty("role", "card");
    setAcceptDrops(true);
    auto *row = new QHBoxLayout(this);
    m_picture = new QLabel(this);
    m_picture->setObjectName(u"picture"_s);
    m_picture->setAlignment(Qt::AlignCenter);
    m_picture->setFixedSize(fontMetrics().averageCharWidth() * 30, fontMetrics().height() * 9);
    row->addWidget(m_picture, 0, Qt::AlignTop);
    auto *column = new QVBoxLayout;
    row->addLayout(column, 1);
    m_facts = makeLabel({}, "", this);
    m_facts->setObjectName(u"photoFacts"_s);
    m_place = makeLabel(tr("The file tells where it was taken."), "caution", this);
    m_place->setObjectName(u"photoPlace"_s);
    m_problem = makeLabel({}, "alarm", this);
    m_problem->setObjectName(u"photoProblem"_s);
    m_signed = makeLabel({}, "quiet", this);
    m_signed->setObjectName(u"photoSigned"_s);
    auto *buttons = new QHBoxLayout;
    m_choose = makeButton(tr("Choose a &file …"), "", this);
    m_choose->setObjectName(u"choosePhoto"_s);
    QPushButton *fromClipboard = makeButton(tr("Paste (Ctrl+V)"), "", this);
    fromClipboard->setObjectName(u"pastePhoto"_s);
    for (QPushButton *button : {m_choose, fromClipboard}) {
        button->setMinimumHeight(touchHeight(fontMetrics()));
        buttons->addWidget(button);
    }
    buttons->addStretch();
    column->addWidget(m_facts);
    column->addWidget(m_problem);
    column->addLayout(buttons);
    column->addWidget(m_place);
    makeChoices();
    for (QWidget *widget : std::initializer_list<QWidget *>{m_bare, m_smaller, m_again, m_signed})
        column->addWidget(widget);
    auto *pasteKey = new QShortcut(QKeySequence(QKeySequence::Paste), this); // a field of text that has the keyboard takes it first
    connect(pasteKey, &QShortcut::activated, this, &PhotoPicker::paste);
    connect(m_choose, &QPushButton::clicked, this, &PhotoPicker::choose);
    connect(fromClipboard, &QPushButton::clicked, this, &PhotoPicker::paste);
    m_typedFor = new QLineEdit(this);
    m_typedFor->setObjectName(u"typedFor"_s);
    m_typedFor->hide();
    connect(m_typedFor, &QLineEdit::textChanged, this, &PhotoPicker::makeCopy); // taken up again
    m_original = photo;
    makeCopy();
}

/// What was begun for one photo is not signed of another: the words are taken up, the photo is not.
void PhotoPicker::judgeWords()
{
    const QString now = m_original ? photos::digestOf(*m_original).hex() + u' ' + m_original->name : QString();
    const QString before = m_typedFor->text();
    m_isAnother = !before.isEmpty() && before.left(64) != now.left(64) && (m_isAnother || before != m_shownFor);
    if (m_isAnother)
        return;
    m_shownFor = now;
    const QSignalBlocker quiet(m_typedFor);
    m_typedFor->setText(now);
}

void PhotoPicker::makeChoices()
{
    m_bare = new QCheckBox(tr("Leave out what the camera wrote: place, time, device"), this);
    m_bare->setObjectName(u"bare"_s);
    m_smaller = new QCheckBox(tr("Make it smaller: at most %1 pixels on the longer side").arg(smallerSide), this);
    m_smaller->setObjectName(u"smaller"_s);
    m_again = new QCheckBox(tr("Attach it once more all the same"), this);
    m_again->setObjectName(u"again"_s);
    m_again->setProperty(confirms, true);
    connect(m_bare, &QCheckBox::toggled, this, &PhotoPicker::makeCopy);
    connect(m_smaller, &QCheckBox::toggled, this, [this](bool isOn) {
        {
            // A smaller copy is made anew, so what the camera wrote is left out as well.
            const QSignalBlocker quiet(m_bare);
            m_bare->setChecked(isOn || m_bare->isChecked());
        }
        m_bare->setEnabled(!isOn);
        makeCopy();
    });
    connect(m_again, &QCheckBox::toggled, this, &PhotoPicker::changed);
}

QWidget *PhotoPicker::chooseControl() const { return m_choose; }

std::optional<core::Digest> PhotoPicker::copyOf() const
{
    return m_photo && m_original && m_original->isFile && m_photo->bytes != m_original->bytes ? original() : std::nullopt;
}

std::optional<core::Digest> PhotoPicker::original() const { return m_original ? std::optional(photos::digestOf(*m_original)) : std::nullopt; }

core::Refusals PhotoPicker::whyNot() const
{
    if (!m_photo)
        return {{{}, {}, tr("Choose a photo: as a file, by dropping it here, or by pasting it."), {}}};
    if (m_isAnother)
        return {{{}, {}, tr("What was begun was typed for the photo %1. Choose that one, or cancel and begin anew.").arg(m_typedFor->text().mid(65)), {}}};
    if (!m_known.isEmpty() && !m_again->isChecked())
        return {{{}, {}, tr("%1 Choose another, or say that it is meant.").arg(m_known), {}}};
    return {};
}

void PhotoPicker::choose()
{
    if (const auto path = m_ask.fileToOpen(tr("Attach a photo"), tr("Pictures (*.png *.jpg *.jpeg)")))
        takePhoto(photos::readPhoto(*path));
}

void PhotoPicker::paste()
{
    if (const QMimeData *offered = QApplication::clipboard()->mimeData())
        take(*offered);
}

/// One at a time: each has its own entry.
void PhotoPicker::take(const QMimeData &offered)
{
    const auto all = photos::photosIn(offered, tr("Pasted picture"));
    if (all.size() == 1)
        takePhoto(all.front());
    else
        takePhoto(core::failure(core::ErrorCode::BadInput, all.empty() ? tr("There is no picture in it. Copy one, then try again.") : tr("Those are several photos. An entry attaches one: take them one by one, or drop them on the page of photos.")));
}

void PhotoPicker::takePhoto(const core::Result<photos::PhotoFile> &photo)
{
    if (!photo) {
        m_problem->setText(photo.error().message); // the photo that was there stays
        show();
        return;
    }
    m_problem->clear();
    m_original = *photo;
    m_again->setChecked(false);
    makeCopy();
}

void PhotoPicker::makeCopy()
{
    m_photo = m_original;
    m_problem->clear(); // the photo as it is needs no copy that cannot be made
    if (m_original && (m_bare->isChecked() || m_smaller->isChecked())) {
        const auto copy = photos::bareCopy(*m_original, m_smaller->isChecked() ? std::optional(smallerSide) : std::nullopt);
        m_photo = copy ? std::optional(*copy) : std::nullopt;
        if (!copy)
            m_problem->setText(copy.error().message);
    }
    judgeWords();
    m_known = m_original ? m_attachedBefore(photos::digestOf(*m_original)) : QString();
    if (m_known.isEmpty() && m_photo)
        m_known = m_attachedBefore(photos::digestOf(*m_photo));
    show();
    emit changed();
}

QString PhotoPicker::factsOf(const photos::PhotoFile &photo) const
{
    const QSize size = photos::uprightSize(photo.bytes);
    return tr("%1, %2 × %3 pixels, %4").arg(photo.name, QString::number(size.width()), QString::number(size.height()), QLocale().formattedDataSize(photo.bytes.size()));
}

void PhotoPicker::show()
{
    m_problem->setVisible(!m_problem->text().isEmpty());
    m_bare->setVisible(m_original.has_value());
    m_smaller->setVisible(m_original.has_value());
    m_signed->setVisible(m_photo.has_value());
    m_place->setVisible(m_photo && photos::tellsPlace(m_photo->bytes));
    m_again->setVisible(!m_known.isEmpty());
    m_facts->setText(m_photo ? factsOf(*m_photo) : tr("Drop a photo here, paste it, or choose a file: JPEG or PNG."));
    if (m_photo) {
        const QString digest = photos::digestOf(*m_photo).hex().left(16);
        const auto of = copyOf();
        m_signed->setText(of ? tr("What is kept and signed is this copy, SHA-256 %1…. The original is not kept and stays where it came from; the entry names it by its SHA-256, %2….").arg(digest, of->hex().left(16))
                          : m_bare->isChecked() ? tr("What is kept and signed is this copy, SHA-256 %1…. The picture was pasted, so there is no file to name.").arg(digest)
                                                : tr("What is kept and signed is the photo as it is, SHA-256 %1….").arg(digest));
    }
    const double ratio = devicePixelRatioF();
    const auto picture = m_photo ? photos::upright(m_photo->bytes, m_picture->size() * ratio) : core::failure(core::ErrorCode::NotFound, {});
    QPixmap pixmap = picture ? QPixmap::fromImage(*picture) : QPixmap();
    pixmap.setDevicePixelRatio(ratio);
    m_picture->setPixmap(pixmap);
    m_picture->setVisible(!pixmap.isNull());
    emit heightChanged();
}

void PhotoPicker::dragEnterEvent(QDragEnterEvent *event)
{
    if (photos::mayHoldPhotos(*event->mimeData()))
        event->acceptProposedAction();
}

void PhotoPicker::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    take(*event->mimeData());
}

} // namespace desktop
