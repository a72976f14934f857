// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/photos_page.hpp"

#include <QApplication>
#include <QDragEnterEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QMimeData>
#include <QPainter>
#include <QPointer>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

#include "app/desktop/actions.hpp"
#include "app/desktop/pages/photos/mark_panel.hpp"
#include "app/desktop/pages/photos/photo_intake.hpp"
#include "app/desktop/pages/photos/waiting_photos.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/photo_words.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/photos/incoming.hpp"
#include "core/job/photo_marks.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// Enough for the greatest enlargement that shows more than blur, and a fifth of the largest that is taken.
constexpr QSize mostShown(5000, 5000);

qint64 thousandths(double part) { return std::clamp<qint64>(std::llround(part * static_cast<double>(core::wholePicture)), 0, core::wholePicture); }

/// With some room on its right, which lists leave not.
QPixmap thumbnail(const QByteArray &bytes, const QSize &size, double ratio)
{
    QPixmap pixmap(size * ratio);
    pixmap.fill(Qt::transparent);
    const QSize place(pixmap.width() * 9 / 10, pixmap.height());
    if (const auto small = photos::upright(bytes, place))
        QPainter(&pixmap).drawImage((place.width() - small->width()) / 2, (place.height() - small->height()) / 2, *small);
    pixmap.setDevicePixelRatio(ratio);
    return pixmap;
}

} // namespace

PhotosPage::PhotosPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    setAcceptDrops(true);
    auto *column = new QVBoxLayout(this);
    m_title = makeLabel(tr("Photos"), "title", this);
    m_intake = new PhotoIntake(tools.ask, this);
    m_pair = new PhotoPair(this);
    m_marks = new MarkPanel(this);
    auto *right = new QWidget(this);
    auto *rightColumn = new QVBoxLayout(right);
    rightColumn->setContentsMargins(0, 0, 0, 0);
    rightColumn->addWidget(m_pair, 1);
    rightColumn->addWidget(m_marks);
    auto *splitter = new QSplitter(Qt::Horizontal, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(makeLeft());
    splitter->addWidget(right);
    splitter->setStretchFactor(1, 1);
    column->addWidget(m_title);
    column->addWidget(m_intake);
    column->addWidget(splitter, 1);
    setFocusProxy(&m_items->view());

    auto *pasteKey = new QShortcut(QKeySequence(QKeySequence::Paste), this);
    pasteKey->setContext(Qt::WidgetWithChildrenShortcut);
    connect(pasteKey, &QShortcut::activated, m_intake, &PhotoIntake::paste);
    connect(m_items, &RowTable::chosenChanged, this, &PhotosPage::chooseItem);
    connect(m_photos, &QListWidget::currentRowChanged, this, &PhotosPage::choosePhoto);
    connect(m_intake, &PhotoIntake::attachWanted, this, &PhotosPage::attachFirst);
    connect(m_intake, &PhotoIntake::changed, this, &PhotosPage::showWaiting);
    connect(m_pair, &PhotoPair::activeChanged, this, &PhotosPage::showMarks);
    connect(m_pair, &PhotoPair::placed, this, &PhotosPage::place);
    connect(m_marks, &MarkPanel::markingToggled, this, [this](bool isMarking) {
        m_pair->setMarking(isMarking);
        if (isMarking)
            m_pair->view(m_pair->active()).setFocus(Qt::OtherFocusReason);
    });
    connect(m_marks, &MarkPanel::worded, this, &PhotosPage::word);
    connect(m_marks, &MarkPanel::wordsDone, this, [this] { m_pair->view(m_pair->active()).setFocus(Qt::OtherFocusReason); });
    connect(m_marks, &MarkPanel::removeWanted, this, &PhotosPage::removeMark);
    connect(m_marks, &MarkPanel::signWanted, this, &PhotosPage::signMarks);
    connect(&selection(), &Selection::changed, this, [this] {
        if (selection().isSingle())
            chooseRow(selection().items().front().text());
        else
            refresh();
    });
    follow(&PhotosPage::refresh);
    if (selection().isSingle())
        m_wanted = selection().items().front();
    refresh();
}

QWidget *PhotosPage::makeLeft()
{
    auto *left = new QWidget(this);
    auto *column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    m_items = new RowTable({{tr("Item"), 9}, {tr("Photos"), 0}}, tr("Interfaces with photos"),
                           tr("No photo is attached in this job yet. Add one as a file, drop it here, paste it, or watch the folder that the camera copies to. It is taken once its entry is signed."), left);
    m_items->setObjectName(u"items"_s);
    m_photos = new QListWidget(left);
    m_photos->setObjectName(u"photos"_s);
    m_photos->setAccessibleName(tr("Photos of the chosen interface"));
    m_photos->setWordWrap(true);
    m_photos->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_photos->setIconSize(QSize(fontMetrics().averageCharWidth() * 12, fontMetrics().height() * 4));
    QPushButton *other = makeButton(tr("&Other interface …"), "", left);
    other->setObjectName(u"otherItem"_s);
    connect(other, &QPushButton::clicked, this, [this] {
        if (const auto id = askItem())
            chooseRow(id->text());
    });
    column->addWidget(m_items, 1);
    column->addWidget(other, 0, Qt::AlignLeft);
    column->addWidget(m_photos, 1);
    left->setMinimumWidth(fontMetrics().averageCharWidth() * 34);
    return left;
}

const core::InterfaceState *PhotosPage::item() const { return m_item && feed().state() ? feed().state()->item(*m_item) : nullptr; }

void PhotosPage::refresh()
{
    std::vector<Row> rows;
    for (const core::InterfaceState &one : feed().state() ? feed().state()->items : core::Series<core::InterfaceState>()) {
        if (!one.photos.empty() || m_wanted == one.listed.id)
            rows.push_back({one.listed.id.text(), {one.listed.id.text(), one.photos.empty() ? tr("%1\nnone yet").arg(one.listed.name) : tr("%1\n%2").arg(one.listed.name, photosCounted(one.photos))}});
    }
    {
        // Where the row that was chosen goes, the list takes one beside it, which nobody chose.
        const QSignalBlocker quiet(m_items);
        m_items->take(rows);
        const auto hasRow = [this](const std::optional<core::InterfaceId> &id) { return id && m_items->model().rowOf(id->text()) >= 0; };
        const QString key = hasRow(m_item) ? m_item->text() : hasRow(m_wanted) ? m_wanted->text() : rows.empty() ? QString() : rows.front().key;
        if (key != m_items->chosen())
            m_items->choose(key);
    }
    turnTo(core::InterfaceId::parse(m_items->chosen()));
    showPhotos();
    showWaiting();
}

void PhotosPage::chooseRow(const QString &key)
{
    m_wanted = core::InterfaceId::parse(key);
    refresh();
    m_items->choose(key);
    if (isVisible() && m_item && m_item == m_wanted)
        selection().choose({*m_item}); // it may have been shown before without anybody's choice
}

void PhotosPage::chooseItem(const QString &key)
{
    const auto id = core::InterfaceId::parse(key);
    if (!id || id == m_item)
        return;
    turnTo(id);
    showPhotos();
    showWaiting();
    if (isVisible())
        selection().choose({*id});
}

void PhotosPage::turnTo(const std::optional<core::InterfaceId> &id)
{
    if (id == m_item)
        return;
    m_item = id;
    m_chosenPhoto = 0;
    m_thumbnails.clear();
    m_marks->stopMarking();
}

void PhotosPage::choosePhoto(int row)
{
    const core::InterfaceState *of = item();
    if (!of || row < 0 || row >= static_cast<int>(of->photos.size()))
        return;
    const core::Photo &photo = of->photos[static_cast<std::size_t>(row)];
    m_chosenPhoto = photo.mark.seq;
    m_pair->activate(photo.moment == u"after" ? Side::Right : Side::Left);
    showPhotos();
}

ShownPhoto PhotosPage::shownOf(const core::Photo *photo, const QString &none)
{
    if (!photo)
        return {{}, none};
    ShownPhoto shown{{}, photoInWords(*photo, *feed().state(), feed().reg()), photo->marks, draftsOf(*photo)};
    const auto known = m_decoded.find(photo->digest);
    if (known != m_decoded.end()) {
        shown.picture = known->second;
        return shown;
    }
    const auto bytes = bytesOf(*photo);
    const auto picture = bytes ? photos::upright(*bytes, mostShown) : core::failure(bytes.error());
    if (picture)
        m_decoded.insert_or_assign(photo->digest, *picture);
    shown.picture = picture ? *picture : QImage();
    if (!picture)
        shown.words = tr("%1\n%2").arg(shown.words, core::errorInWords(picture.error()));
    return shown;
}

core::Result<QByteArray> PhotosPage::bytesOf(const core::Photo &photo) const
{
    return tools().readAttachment ? tools().readAttachment(photo.digest) : core::Result<QByteArray>(core::failure(core::ErrorCode::NotFound, tr("The photo is not at hand.")));
}

QPixmap PhotosPage::thumbnailOf(const core::Photo &photo)
{
    const auto known = m_thumbnails.find(photo.digest);
    if (known != m_thumbnails.end())
        return known->second;
    const QPixmap made = thumbnail(bytesOf(photo).value_or(QByteArray()), m_photos->iconSize(), devicePixelRatioF());
    return m_thumbnails.insert_or_assign(photo.digest, made).first->second;
}

/// A decoded photo is large, so only those in sight are kept.
void PhotosPage::forgetAllBut(const PhotoChoice &choice)
{
    for (auto at = m_decoded.begin(); at != m_decoded.end();) {
        const bool isShown = (choice.left && choice.left->digest == at->first) || (choice.right && choice.right->digest == at->first);
        at = isShown ? std::next(at) : m_decoded.erase(at);
    }
}

void PhotosPage::showPhotos()
{
    const core::InterfaceState *of = item();
    const std::vector<core::Photo> none;
    const std::vector<core::Photo> &all = of ? of->photos : none;
    PhotoChoice choice = usualChoice(all);
    const auto chosen = std::find_if(all.begin(), all.end(), [this](const core::Photo &photo) { return photo.mark.seq == m_chosenPhoto; });
    if (chosen != all.end())
        choice = withPhoto(choice, *chosen);
    m_title->setText(of ? tr("Photos of %1").arg(itemInWords(*of)) : tr("Photos"));
    m_pair->show(Side::Left, shownOf(choice.left, of ? tr("No photo from before.") : tr("Choose an interface.")));
    m_pair->show(Side::Right, shownOf(choice.right, of ? tr("No photo from after.") : QString()));
    forgetAllBut(choice);
    if (chosen == all.end() && !choice.left && choice.right)
        m_pair->activate(Side::Right);
    {
        const QSignalBlocker quiet(m_photos);
        m_photos->clear();
        for (const core::Photo &photo : all) {
            auto *row = new QListWidgetItem(tr("%1\nentry %2").arg(photoInWords(photo, *feed().state(), feed().reg()), QString::number(photo.mark.seq)), m_photos);
            row->setIcon(thumbnailOf(photo));
        }
        if (chosen != all.end())
            m_photos->setCurrentRow(static_cast<int>(chosen - all.begin()));
    }
    showMarks();
}

const core::Photo *PhotosPage::marked() const
{
    const core::InterfaceState *of = item();
    if (!of)
        return nullptr;
    PhotoChoice choice = usualChoice(of->photos);
    for (const core::Photo &photo : of->photos) {
        if (photo.mark.seq == m_chosenPhoto)
            choice = withPhoto(choice, photo);
    }
    return m_pair->active() == Side::Left ? choice.left : choice.right;
}

std::vector<core::PhotoMark> &PhotosPage::draftsOf(const core::Photo &photo)
{
    std::vector<core::PhotoMark> &drafts = m_drafts[{*m_item, photo.digest}];
    drafts = core::numberedBeside(photo.marks, std::move(drafts));
    return drafts;
}

void PhotosPage::showMarks()
{
    const core::Photo *photo = marked();
    std::vector<MarkRow> rows;
    QString whyNot;
    if (photo) {
        for (const core::PhotoMark &mark : photo->marks)
            rows.push_back({mark, markInWords(mark.mark, *feed().state(), feed().reg())});
        for (const core::PhotoMark &mark : draftsOf(*photo))
            rows.push_back({mark, {}});
        whyNot = refusalsInWords(deeds().whyNot(actionFor("photo.marked"_L1), {*m_item}, photo->digest.hex()));
    }
    m_marks->show(photo ? photoInWords(*photo, *feed().state(), feed().reg()) : QString(), rows, whyNot);
}

void PhotosPage::place(const QPointF &at)
{
    const core::Photo *photo = marked();
    if (!photo)
        return;
    std::vector<core::PhotoMark> all = photo->marks;
    std::vector<core::PhotoMark> &drafts = draftsOf(*photo);
    all.insert(all.end(), drafts.begin(), drafts.end());
    const qint64 number = core::nextMarkNumber(all);
    drafts.push_back({photo->mark, number, thousandths(at.x()), thousandths(at.y()), {}});
    showPhotos();
    m_marks->askWords(number);
}

void PhotosPage::word(qint64 number, const QString &what)
{
    if (const core::Photo *photo = marked()) {
        for (core::PhotoMark &mark : draftsOf(*photo)) {
            if (mark.number == number)
                mark.what = what;
        }
        showMarks();
        m_pair->show(m_pair->active(), shownOf(photo, {}));
    }
}

void PhotosPage::removeMark(qint64 number)
{
    if (const core::Photo *photo = marked()) {
        std::vector<core::PhotoMark> &drafts = draftsOf(*photo);
        drafts.erase(std::remove_if(drafts.begin(), drafts.end(), [&](const core::PhotoMark &mark) { return mark.number == number; }), drafts.end());
        showPhotos();
    }
}

void PhotosPage::signMarks()
{
    const core::Photo *photo = marked();
    if (!photo || draftsOf(*photo).empty())
        return;
    m_marks->stopMarking();
    const core::Digest digest = photo->digest;
    Given given{{{u"sha256"_s, digest.hex()}, {u"marks"_s, core::linesOf(draftsOf(*photo))}}, std::nullopt, {}};
    given.whenSigned = [page = QPointer<PhotosPage>(this), on = std::pair(*m_item, digest)](const std::optional<core::Digest> &) {
        if (!page)
            return;
        page->m_drafts.erase(on);
        page->showPhotos();
    };
    emit sheetWanted(u"photo.marked"_s, {*m_item}, digest.hex(), given);
}

void PhotosPage::showWaiting()
{
    const QString known = m_intake->waiting().isEmpty() || !feed().state() ? QString() : attachedBefore(m_intake->waiting().firstDigest(), *feed().state());
    m_intake->waiting().show(m_item ? m_item->text() : QString(), known);
}

std::optional<core::InterfaceId> PhotosPage::askItem()
{
    QStringList choices;
    for (const core::InterfaceState &one : feed().state() ? feed().state()->items : core::Series<core::InterfaceState>())
        choices << one.listed.id.text();
    if (choices.isEmpty()) {
        tools().ask.tell(tr("There is no interface yet"), tr("The job lists nothing that a photo could show. Import the interface list first; what waits here stays."));
        return std::nullopt;
    }
    const auto chosen = tools().ask.oneOf(tr("Photos"), tr("Which interface does it show?"), choices);
    return chosen ? core::InterfaceId::parse(*chosen) : std::nullopt;
}

void PhotosPage::attachFirst()
{
    const auto photo = m_intake->waiting().first();
    if (!photo) {
        const QString problem = photo.error().message;
        m_intake->waiting().drop(m_intake->waiting().firstDigest());
        m_intake->waiting().say(problem);
        return;
    }
    const auto id = m_item ? m_item : askItem();
    if (!id)
        return;
    if (const QString no = refusalsInWords(deeds().whyNot(actionFor("photo.attached"_L1), {*id})); !no.isEmpty()) {
        m_intake->waiting().say(no);
        return;
    }
    Given given{{}, *photo, {}};
    // A file may have changed since it came, and another photo may be chosen on the sheet: what waits goes only where it was attached.
    given.whenSigned = [page = QPointer<PhotosPage>(this), digest = m_intake->waiting().firstDigest(), offered = photos::digestOf(*photo), to = *id](const std::optional<core::Digest> &original) {
        if (!page)
            return;
        if (original)
            page->m_intake->waiting().drop(*original == offered ? digest : *original);
        page->chooseRow(to.text());
    };
    emit sheetWanted(u"photo.attached"_s, {*id}, std::nullopt, given);
}

bool PhotosPage::isAnythingUnsigned() const
{
    return m_intake->isAnythingExpected() || std::any_of(m_drafts.begin(), m_drafts.end(), [](const auto &drafts) { return !drafts.second.empty(); });
}

void PhotosPage::offer(const QMimeData &offered) { m_intake->offer(offered); }

void PhotosPage::dragEnterEvent(QDragEnterEvent *event)
{
    if (photos::mayHoldPhotos(*event->mimeData()))
        event->acceptProposedAction();
}

void PhotosPage::dropEvent(QDropEvent *event)
{
    event->acceptProposedAction();
    offer(*event->mimeData());
}

} // namespace desktop
