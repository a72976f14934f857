// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>

#include "app/desktop/flows/photo_picker.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/photos/exif_place.hpp"
#include "tests/app/desktop/photo_bench.hpp"

using namespace Qt::StringLiterals;
using desktop::Side;

namespace {

/// Drags it over the widget and lets go. Whether it was taken.
bool drop(QWidget &on, const QMimeData &data)
{
    QDragEnterEvent enter(QPoint(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    enter.ignore();
    QCoreApplication::sendEvent(&on, &enter);
    if (!enter.isAccepted())
        return false;
    QDropEvent release(QPointF(5, 5), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(&on, &release);
    return true;
}

} // namespace

/// How photos come in, on their page, on the window and on the sheet, with the real widgets: by drop, paste, file and watched folder; none is taken unsigned.
class TstPhotosComingIn : public QObject, private PhotoBench {
    Q_OBJECT

private slots:
    void initTestCase() { desktop::applyAppearance(*qApp, desktop::Appearance::Light); }
    void init() { QCOMPARE(setUp(), QString()); }
    void cleanup() { tearDown(); }
    void emptyPageSaysWhatComesHere();
    void droppedOnThePageAndSigned();
    void droppedOnTheWindow();
    void droppedForWhatIsChosenNow_data();
    void droppedForWhatIsChosenNow();
    void severalWaitOneByOne();
    void pastedOnThePage();
    void nothingToPasteIsTold();
    void comesIntoTheWatchedFolder();
    void theFolderIsGone();
    void chosenDroppedAndPastedOnTheSheet();
    void whatIsNotAttachedWaitsOn();
    void aCopyThatCannotBeMade();
    void whatIsNoPhotoIsNamed();
    void theSamePhotoTwice();
    void withoutWhereItWasTaken();
};

void TstPhotosComingIn::emptyPageSaysWhatComesHere()
{
    const auto labels = named<desktop::RowTable>(page(), "items")->findChildren<QLabel *>();
    QVERIFY(std::any_of(labels.begin(), labels.end(), [](const QLabel *label) { return label->isVisible() && label->text().startsWith(u"No photo is attached in this job yet."); }));
    QVERIFY(!named<QLabel>(page(), "waiting")->isVisible());
    QVERIFY(!named<QPushButton>(page(), "place")->isEnabled());
    QVERIFY(!named<QPushButton>(page(), "photo.marked")->isEnabled());
    QCOMPARE(place().manualPage(), u"photos"_s);
}

void TstPhotosComingIn::droppedOnThePageAndSigned()
{
    go("photos", "D1");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file(u"IMG_1.jpg"_s, photoOf(400, 200)))});
    QVERIFY(drop(page(), data));
    QVERIFY2(told("waiting").startsWith(u"Waits to be attached: IMG_1.jpg in /"), qPrintable(told("waiting")));
    QTRY_VERIFY(sheet());
    QCOMPARE(photosOf(u"D1"_s), QStringList()); // nothing is taken before it is signed
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
    QCOMPARE(m_other->store().attachments().get(core::Digest::of(photoOf(400, 200))).value_or(QByteArray()), photoOf(400, 200));
    QTRY_COMPARE(told("waiting"), QString()); // it waits no more
    QCOMPARE(view(Side::Left).shown().picture.size(), QSize(400, 200));
    QVERIFY(view(Side::Right).shown().picture.isNull());
}

void TstPhotosComingIn::droppedOnTheWindow()
{
    go("list");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file(u"IMG_1.jpg"_s, photoOf(400, 200)))});
    QVERIFY(drop(*m_window, data));
    QVERIFY(page().isVisible());
    QTRY_VERIFY(sheet()); // the first of the interfaces that the ask offers
    QCOMPARE(m_ask->told, QStringList());
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
}

void TstPhotosComingIn::droppedForWhatIsChosenNow_data()
{
    QTest::addColumn<QStringList>("withPhotos"); // C1 is chosen after D1; E1 is a third
    QTest::addColumn<bool>("isPageShown");
    for (const bool isPageShown : {false, true}) {
        const char *where = isPageShown ? "on the page" : "on the list";
        QTest::addRow("none has photos, chosen %s", where) << QStringList() << isPageShown;
        QTest::addRow("the one before has one, chosen %s", where) << QStringList{u"D1"_s} << isPageShown;
        QTest::addRow("the one before goes and another has one, chosen %s", where) << QStringList{u"E1"_s} << isPageShown;
        QTest::addRow("all have one, chosen %s", where) << QStringList{u"D1"_s, u"C1"_s, u"E1"_s} << isPageShown;
    }
}

/// The page was shown with one interface, and another was chosen since: a photo must not be signed for the first.
void TstPhotosComingIn::droppedForWhatIsChosenNow()
{
    QFETCH(QStringList, withPhotos);
    QFETCH(bool, isPageShown);
    QCOMPARE(Bench::say(*m_other, *m_job, u"ana"_s, u"interface.listed"_s, u"E1"_s, {{u"name"_s, u"Earth lead"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}), QString());
    m_window->look();
    for (int i = 0; i < withPhotos.size(); ++i)
        QCOMPARE(attach(withPhotos.at(i), photoOf(100 + 10 * i, 50), u"before"_s), QString());
    go("photos", "D1");
    QCOMPARE(named<desktop::RowTable>(page(), "items")->chosen(), u"D1"_s);
    if (!isPageShown)
        go("list");
    place().choose({*core::InterfaceId::parse(u"C1"_s)});
    QCOMPARE(place().chosen(), std::vector{*core::InterfaceId::parse(u"C1"_s)});
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file(u"IMG_1.jpg"_s, photoOf(400, 200)))});
    QVERIFY(drop(*m_window, data));
    QCOMPARE(named<desktop::RowTable>(page(), "items")->chosen(), u"C1"_s);
    QTRY_VERIFY(sheet());
    QCOMPARE(sign(u"ana"_s), QString());
    for (const QString &id : {u"D1"_s, u"C1"_s, u"E1"_s})
        QCOMPARE(photosOf(id).size(), (withPhotos.contains(id) ? 1 : 0) + (id == u"C1" ? 1 : 0));
    QCOMPARE(place().chosen(), std::vector{*core::InterfaceId::parse(u"C1"_s)});
}

void TstPhotosComingIn::severalWaitOneByOne()
{
    go("photos", "C1");
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file(u"a.jpg"_s, photoOf(400, 200))), QUrl::fromLocalFile(file(u"again.jpg"_s, photoOf(400, 200))), QUrl::fromLocalFile(file(u"b.jpg"_s, photoOf(200, 400)))});
    QVERIFY(drop(page(), data));
    QVERIFY(!sheet());
    QVERIFY2(told("waiting").contains(u"a.jpg") && told("waiting").endsWith(u"and 1 more"), qPrintable(told("waiting")));
    press(page(), "attachWaiting");
    QCOMPARE(sign(u"ana"_s), QString());
    QTRY_VERIFY(told("waiting").contains(u"b.jpg"));
    // What somebody has in their hand goes first.
    m_ask->openPath = file(u"c.jpg"_s, photoOf(100, 100));
    press(page(), "addPhoto");
    QTRY_VERIFY(sheet());
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"c.jpg"));
    QCOMPARE(sign(u"ana"_s), QString());
    QTRY_VERIFY(told("waiting").contains(u"b.jpg"));
    press(page(), "leaveWaiting");
    QCOMPARE(told("waiting"), QString());
    QCOMPARE(photosOf(u"C1"_s).size(), 2);
}

void TstPhotosComingIn::pastedOnThePage()
{
    go("photos", "D1");
    QApplication::clipboard()->setImage(camera::twoHalves(60, 30));
    page().findChild<QTableView *>()->setFocus();
    QTest::keySequence(page().findChild<QTableView *>(), QKeySequence::Paste);
    if (!QTest::qWaitFor([this] { return sheet() != nullptr; }, 300))
        press(page(), "paste"); // offscreen windows are not always active, and then know no shortcuts
    QTRY_VERIFY(sheet());
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"Pasted picture, 60 × 30 pixels"));
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/png"_s});
}

void TstPhotosComingIn::nothingToPasteIsTold()
{
    go("photos", "D1");
    QApplication::clipboard()->setText(u"words"_s);
    press(page(), "paste");
    QVERIFY(!sheet());
    QCOMPARE(told("waitingProblem"), u"There is no picture in the clipboard. Copy one, then paste again."_s);
}

void TstPhotosComingIn::comesIntoTheWatchedFolder()
{
    go("photos", "D1");
    const QTemporaryDir camera;
    const auto copyIn = [&](const QString &name, const QByteArray &bytes) {
        QFile out(camera.filePath(name));
        return out.open(QIODevice::WriteOnly) && out.write(bytes) == bytes.size();
    };
    QVERIFY(copyIn(u"old.jpg"_s, photoOf(10, 20)));
    m_ask->folderPath = camera.path();
    press(page(), "watch");
    QVERIFY(told("watched").contains(camera.path()));
    QVERIFY(copyIn(u"IMG_5.jpg"_s, photoOf(400, 200)));
    QTRY_VERIFY(told("waiting").contains(u"IMG_5.jpg"));
    QVERIFY(told("waiting").contains(camera.path()));
    QVERIFY(!sheet()); // asked about, not taken
    QCOMPARE(photosOf(u"D1"_s), QStringList());
    QCOMPARE(named<QPushButton>(page(), "attachWaiting")->text().remove(u'&'), u"Attach it to D1 …"_s);
    // The same photo under another name waits once.
    QVERIFY(copyIn(u"IMG_6.jpg"_s, photoOf(400, 200)));
    QTRY_COMPARE(told("waitingProblem"), u"IMG_6.jpg waits here already, under this name or another."_s);
    // What is no photo is named.
    QVERIFY(copyIn(u"IMG_7.jpg"_s, "broken"));
    QTRY_VERIFY(told("waitingProblem").startsWith(u"IMG_7.jpg is no picture"));
    press(page(), "attachWaiting");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
    // Attached once, it is said to be known when the camera brings it again.
    QVERIFY(copyIn(u"IMG_8.jpg"_s, photoOf(400, 200)));
    QTRY_VERIFY(told("waiting").contains(u"IMG_8.jpg"));
    QVERIFY2(told("waitingKnown").startsWith(u"This photo is attached to D1 already"), qPrintable(told("waitingKnown")));
    press(page(), "watch");
    QVERIFY(!told("watched").contains(camera.path()));
}

void TstPhotosComingIn::theFolderIsGone()
{
    auto camera = std::make_unique<QTemporaryDir>();
    const QString path = camera->path();
    m_ask->folderPath = path;
    press(page(), "watch");
    camera.reset();
    QTRY_VERIFY(told("waitingProblem").contains(path));
    QVERIFY(named<QPushButton>(page(), "watch")->text().contains(u"Watch a folder"));
    // One that is not there is told at once.
    press(page(), "watch");
    QCOMPARE(m_ask->told.size(), 1);
    QVERIFY(m_ask->told.front().contains(path));
}

void TstPhotosComingIn::chosenDroppedAndPastedOnTheSheet()
{
    go("list");
    place().showItem(*core::InterfaceId::parse(u"D1"_s));
    press(*m_window->findChild<desktop::Page *>(u"list"_s), "photo.attached");
    QTRY_VERIFY(sheet());
    QCOMPARE(named<QLabel>(*sheet(), "problem")->text(), QString()); // who signs is not known yet
    QTest::keyClicks(named<desktop::PersonField>(*sheet(), "person")->findChild<QLineEdit *>(), u"ana"_s);
    QVERIFY(named<QLabel>(*sheet(), "problem")->text().startsWith(u"Choose a photo"));
    auto *picker = sheet()->findChild<desktop::PhotoPicker *>();
    // By file.
    m_ask->openPath = file(u"IMG_1.jpg"_s, photoOf(400, 200));
    press(*sheet(), "choosePhoto");
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"IMG_1.jpg, 400 × 200 pixels"));
    QCOMPARE(named<QLabel>(*sheet(), "problem")->text(), QString());
    // Dropped, it takes its place.
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(file(u"IMG_2.jpg"_s, photoOf(200, 100)))});
    QVERIFY(drop(*picker, data));
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"IMG_2.jpg, 200 × 100 pixels"));
    // Several at once are none.
    data.setUrls({QUrl::fromLocalFile(file(u"IMG_2.jpg"_s, photoOf(200, 100))), QUrl::fromLocalFile(file(u"IMG_1.jpg"_s, photoOf(400, 200)))});
    QVERIFY(drop(*picker, data));
    QVERIFY(named<QLabel>(*sheet(), "photoProblem")->text().startsWith(u"Those are several photos."));
    QCOMPARE(photos::digestOf(*picker->photo()), core::Digest::of(photoOf(200, 100)));
    // Pasted.
    QApplication::clipboard()->setImage(camera::twoHalves(60, 30));
    press(*sheet(), "pastePhoto");
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"Pasted picture, 60 × 30 pixels"));
    const core::Digest pasted = photos::digestOf(*picker->photo());
    QVERIFY(named<QLabel>(*sheet(), "photoSigned")->text().contains(pasted.hex().left(16)));
    named<QLineEdit>(*sheet(), "secret")->setFocus();
    QTest::keyClicks(named<QLineEdit>(*sheet(), "secret"), Bench::pinOf(u"ana"_s));
    QTest::keyClick(named<QLineEdit>(*sheet(), "secret"), Qt::Key_Return);
    QTRY_COMPARE(photosOf(u"D1"_s), QStringList{u"before image/png"_s});
    QCOMPARE(itemOf(u"D1"_s)->photos.front().digest, pasted);
}

void TstPhotosComingIn::whatIsNotAttachedWaitsOn()
{
    go("photos", "D1");
    QApplication::clipboard()->setImage(camera::twoHalves(60, 30));
    press(page(), "paste");
    QTRY_VERIFY(sheet());
    // Another is chosen on the sheet, so the pasted one was not attached.
    m_ask->openPath = file(u"IMG_1.jpg"_s, photoOf(400, 200));
    press(*sheet(), "choosePhoto");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
    QCOMPARE(itemOf(u"D1"_s)->photos.front().copyOf, std::nullopt); // as it is
    QVERIFY2(told("waiting").contains(u"Pasted picture"), qPrintable(told("waiting")));
    // A copy of it counts.
    press(page(), "attachWaiting");
    QTRY_VERIFY(sheet());
    named<QCheckBox>(*sheet(), "bare")->click();
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s).size(), 2);
    QCOMPARE(itemOf(u"D1"_s)->photos.back().copyOf, std::nullopt); // of what was pasted there is no file that somebody could show
    QTRY_COMPARE(told("waiting"), QString());
}

/// Of a photo that was cut off within, as from a card that was pulled out, no copy may be made; the alarm goes once none is wanted.
void TstPhotosComingIn::aCopyThatCannotBeMade()
{
    desktop::PhotoPicker picker(*m_ask, photos::PhotoFile{u"IMG_1.jpg"_s, photoOf(400, 200).first(40), u"image/jpeg"_s}, [](const core::Digest &) { return QString(); });
    const auto *problem = named<QLabel>(picker, "photoProblem");
    QVERIFY(problem->text().isEmpty());
    named<QCheckBox>(picker, "bare")->click();
    QVERIFY(!problem->text().isEmpty());
    QVERIFY(!picker.photo());
    named<QCheckBox>(picker, "bare")->click();
    QCOMPARE(problem->text(), QString());
    QVERIFY(picker.photo());
}

void TstPhotosComingIn::whatIsNoPhotoIsNamed()
{
    go("photos", "D1");
    m_ask->openPath = file(u"words.png"_s, "no picture");
    press(page(), "addPhoto");
    QVERIFY(!sheet());
    QVERIFY2(told("waitingProblem").startsWith(u"words.png is no picture"), qPrintable(told("waitingProblem")));
}

void TstPhotosComingIn::theSamePhotoTwice()
{
    const QByteArray photo = photoOf(400, 200);
    QCOMPARE(attach(u"C1"_s, photo, u"before"_s), QString());
    go("photos", "D1");
    m_ask->openPath = file(u"other_name.jpg"_s, photo);
    press(page(), "addPhoto");
    QTRY_VERIFY(sheet());
    const QString no = sign(u"ana"_s);
    QVERIFY2(no.startsWith(u"This photo is attached to C1 already, by entry "), qPrintable(no));
    QCOMPARE(photosOf(u"D1"_s), QStringList());
    // A copy of it is the same photo.
    named<QCheckBox>(*sheet(), "bare")->click();
    QVERIFY(!named<QLabel>(*sheet(), "problem")->text().isEmpty());
    named<QCheckBox>(*sheet(), "bare")->click();
    named<QCheckBox>(*sheet(), "again")->click();
    QCOMPARE(named<QLabel>(*sheet(), "problem")->text(), QString());
    QTest::keyClick(named<QLineEdit>(*sheet(), "secret"), Qt::Key_Return); // the PIN stands there still
    QTRY_COMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
}

void TstPhotosComingIn::withoutWhereItWasTaken()
{
    const QByteArray taken = camera::with(photoOf(4000, 2000), {camera::exifSegment(6, true)});
    go("photos", "D1");
    m_ask->openPath = file(u"IMG_1.jpg"_s, taken);
    press(page(), "addPhoto");
    QTRY_VERIFY(sheet());
    QVERIFY(named<QLabel>(*sheet(), "photoPlace")->isVisible());
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"IMG_1.jpg, 2000 × 4000 pixels"));
    named<QCheckBox>(*sheet(), "smaller")->click();
    QVERIFY(named<QCheckBox>(*sheet(), "bare")->isChecked());
    QVERIFY(!named<QLabel>(*sheet(), "photoPlace")->isVisible());
    QVERIFY(named<QLabel>(*sheet(), "photoFacts")->text().startsWith(u"IMG_1.jpg, 1000 × 2000 pixels"));
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg"_s});
    // What the entry names is the copy, and the store holds the copy alone.
    const core::Digest named = itemOf(u"D1"_s)->photos.front().digest;
    const auto kept = m_other->store().attachments().get(named);
    QVERIFY(kept);
    QVERIFY(!photos::tellsPlace(*kept) && !kept->contains("Exif") && !kept->contains(camera::latitudeBytes()));
    QVERIFY(!m_other->store().attachments().exists(core::Digest::of(taken)).value_or(true));
    // What it was made from is named, and known when it comes again.
    QCOMPARE(itemOf(u"D1"_s)->photos.front().copyOf, std::optional(core::Digest::of(taken)));
    press(page(), "addPhoto");
    QTRY_VERIFY(sheet());
    const QString no = sign(u"ana"_s);
    QVERIFY2(no.startsWith(u"A copy of this photo is attached to D1 already, by entry "), qPrintable(no));
}

QTEST_MAIN(TstPhotosComingIn)
#include "tst_photos_coming_in.moc"
