// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QDropEvent>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMimeData>
#include <QPointer>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>
#include <QWheelEvent>

#include "app/desktop/flows/photo_picker.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/photos/photo_choice.hpp"
#include "app/desktop/pages/photos/photo_pair.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/scan/scanner_keys.hpp"
#include "app/photos/exif_place.hpp"
#include "core/job/photo_marks.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/app/photos/camera.hpp"

using namespace Qt::StringLiterals;
using desktop::Lens;
using desktop::Side;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    auto *found = in.findChild<Widget *>(QString::fromLatin1(name));
    if (!found)
        qFatal("no widget %s", name);
    return found;
}

QByteArray photoOf(int width, int height) { return camera::jpegOf(camera::twoHalves(width, height)); }

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

/// Characters are held back until they cannot be a scanner's any more.
void waitForScanner() { QTest::qWait(3 * desktop::ScannerKeys::longestGap); }

void press(QWidget &in, Qt::Key key)
{
    QTest::keyClick(&in, key);
    waitForScanner();
}

void type(QWidget &in, const QString &text)
{
    QTest::keyClicks(&in, text);
    waitForScanner();
}

QString lensText(const Lens &lens) { return u"%1 at %2,%3"_s.arg(lens.zoom, 0, 'f', 2).arg(lens.centre.x(), 0, 'f', 2).arg(lens.centre.y(), 0, 'f', 2); }

} // namespace

/// Photos on their page and on the sheet, with the real widgets: how they come in, what is signed, side by side, and marks.
class TstPhotos : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { desktop::applyAppearance(*qApp, desktop::Appearance::Light); }
    void init();
    void cleanup();
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
    void aCaptionIsShownAsItIs();
    void whatIsNoPhotoIsNamed();
    void theSamePhotoTwice();
    void withoutWhereItWasTaken();
    void sideBySideThroughOneLens();
    void whichStandSideBySide_data();
    void whichStandSideBySide();
    void lensStaysWithinThePicture();
    void markedByMouse();
    void markedByKeyboard();
    void aMarkIsTakenAway();
    void draftsMakeWayForAMarkSignedMeanwhile();
    void draftsStayWithTheirInterface();
    void nothingUnderWayIsLostUnasked_data();
    void nothingUnderWayIsLostUnasked();
    void theCardLeadsToThePage();
    void controlsAreNamedAndCanBeHit();

private:
    desktop::SignSheet *sheet() const { return m_window->findChild<desktop::SignSheet *>(); }
    QString sign(const QString &person);
    void press(const QWidget &in, const char *button) { QTest::mouseClick(named<QPushButton>(in, button), Qt::LeftButton); }
    desktop::PhotosPage &page() const { return *m_window->findChild<desktop::PhotosPage *>(); }
    desktop::JobPlace &place() const { return *m_window->findChild<desktop::JobPlace *>(); }
    void go(const char *name, const char *row = "") { place().showPage(QString::fromLatin1(name), QString::fromLatin1(row)); }
    QString file(const QString &name, const QByteArray &bytes) const { return m_bench->file(name, bytes); }
    QString told(const char *label) const { return named<QLabel>(page(), label)->isVisible() ? named<QLabel>(page(), label)->text() : QString(); }
    /// The photos of an interface as the ledger has them: moment and media type, and the marks.
    QStringList photosOf(const QString &item) const;
    const core::InterfaceState *item(const QString &id) const;
    /// Attaches a photo as another program would.
    QString attach(const QString &item, const QByteArray &bytes, const QString &moment);
    desktop::PhotoView &view(Side side) const { return page().findChild<desktop::PhotoPair *>()->view(side); }

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
    std::unique_ptr<session::Session> m_other;
    std::optional<core::LedgerId> m_job;
};

void TstPhotos::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_ask = std::make_unique<ScriptedAsk>();
    m_other = m_bench->another();
    m_job = m_bench->openJob(*m_other);
    QVERIFY(m_job);
    for (const auto &[id, name] : {std::pair(u"D1"_s, u"Bleed duct"_s), std::pair(u"C1"_s, u"Clamp"_s)})
        QCOMPARE(Bench::say(*m_other, *m_job, u"ana"_s, u"interface.listed"_s, id, {{u"name"_s, name}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}), QString());
    m_window = std::make_unique<desktop::MainWindow>(*m_ask, m_bench->kinds(), desktop::SessionMaker{m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->resize(1366, 768);
    m_window->show();
    m_window->openStore(m_bench->path());
    m_window->openJob(*m_job);
    go("photos");
}

void TstPhotos::cleanup()
{
    m_window.reset();
    m_other.reset();
    m_ask.reset();
    m_bench.reset();
    QApplication::clipboard()->clear();
}

QString TstPhotos::sign(const QString &person)
{
    if (!QTest::qWaitFor([this] { return sheet() != nullptr; }))
        return u"no sheet"_s;
    desktop::SignSheet &here = *sheet();
    auto *who = named<desktop::PersonField>(here, "person");
    if (who->isVisible())
        QTest::keyClicks(who->findChild<QLineEdit *>(), person);
    auto *secret = named<QLineEdit>(here, "secret");
    QTest::keyClicks(secret, Bench::pinOf(person));
    QTest::keyClick(secret, Qt::Key_Return);
    const QString problem = named<QLabel>(here, "problem")->text();
    if (!problem.isEmpty() || here.isVisible())
        return problem.isEmpty() ? u"still open"_s : problem;
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return QTest::qWaitFor([this] { return sheet() == nullptr; }) ? QString() : u"sheet stays"_s;
}

const core::InterfaceState *TstPhotos::item(const QString &id) const
{
    if (!m_other->refresh() || !m_other->openJob(*m_job))
        return nullptr;
    return m_other->state()->item(*core::InterfaceId::parse(id));
}

QStringList TstPhotos::photosOf(const QString &id) const
{
    const core::InterfaceState *of = item(id);
    QStringList lines;
    for (const core::Photo &photo : of ? of->photos : std::vector<core::Photo>()) {
        QString line = photo.moment + u' ' + photo.mediaType;
        for (const core::PhotoMark &mark : photo.marks)
            line += u"; %1 at %2,%3 %4"_s.arg(mark.number).arg(mark.across).arg(mark.down).arg(mark.what);
        lines << line;
    }
    return lines;
}

QString TstPhotos::attach(const QString &id, const QByteArray &bytes, const QString &moment)
{
    if (!m_other->store().attachments().put(bytes, u"image/jpeg"_s))
        return u"not kept"_s;
    const QString no = Bench::say(*m_other, *m_job, u"ben"_s, u"photo.attached"_s, id, {{u"sha256"_s, core::Digest::of(bytes).hex()}, {u"media_type"_s, u"image/jpeg"_s}, {u"moment"_s, moment}});
    m_window->look();
    return no;
}

void TstPhotos::emptyPageSaysWhatComesHere()
{
    const auto labels = named<desktop::RowTable>(page(), "items")->findChildren<QLabel *>();
    QVERIFY(std::any_of(labels.begin(), labels.end(), [](const QLabel *label) { return label->isVisible() && label->text().startsWith(u"No photo is attached in this job yet."); }));
    QVERIFY(!named<QLabel>(page(), "waiting")->isVisible());
    QVERIFY(!named<QPushButton>(page(), "place")->isEnabled());
    QVERIFY(!named<QPushButton>(page(), "photo.marked")->isEnabled());
    QCOMPARE(place().manualPage(), u"photos"_s);
}

void TstPhotos::droppedOnThePageAndSigned()
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

void TstPhotos::droppedOnTheWindow()
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

void TstPhotos::droppedForWhatIsChosenNow_data()
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
void TstPhotos::droppedForWhatIsChosenNow()
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

void TstPhotos::severalWaitOneByOne()
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

void TstPhotos::pastedOnThePage()
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

void TstPhotos::nothingToPasteIsTold()
{
    go("photos", "D1");
    QApplication::clipboard()->setText(u"words"_s);
    press(page(), "paste");
    QVERIFY(!sheet());
    QCOMPARE(told("waitingProblem"), u"There is no picture in the clipboard. Copy one, then paste again."_s);
}

void TstPhotos::comesIntoTheWatchedFolder()
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

void TstPhotos::theFolderIsGone()
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

void TstPhotos::chosenDroppedAndPastedOnTheSheet()
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
    QCOMPARE(item(u"D1"_s)->photos.front().digest, pasted);
}

void TstPhotos::whatIsNotAttachedWaitsOn()
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
    QCOMPARE(item(u"D1"_s)->photos.front().copyOf, std::nullopt); // as it is
    QVERIFY2(told("waiting").contains(u"Pasted picture"), qPrintable(told("waiting")));
    // A copy of it counts.
    press(page(), "attachWaiting");
    QTRY_VERIFY(sheet());
    named<QCheckBox>(*sheet(), "bare")->click();
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s).size(), 2);
    QTRY_COMPARE(told("waiting"), QString());
}

/// Of a photo that was cut off within, as from a card that was pulled out, no copy may be made; the alarm goes once none is wanted.
void TstPhotos::aCopyThatCannotBeMade()
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

void TstPhotos::aCaptionIsShownAsItIs()
{
    const QByteArray photo = photoOf(400, 200);
    QVERIFY(m_other->store().attachments().put(photo, u"image/jpeg"_s));
    QCOMPARE(Bench::say(*m_other, *m_job, u"ben"_s, u"photo.attached"_s, u"D1"_s, {{u"sha256"_s, core::Digest::of(photo).hex()}, {u"media_type"_s, u"image/jpeg"_s}, {u"moment"_s, u"before"_s}, {u"caption"_s, u"worn by 5 %1 of %2"_s}}), QString());
    m_window->look();
    go("photos", "D1");
    const QString row = named<QListWidget>(page(), "photos")->item(0)->text();
    QCOMPARE(row, u"Before: worn by 5 %1 of %2\nentry "_s + QString::number(item(u"D1"_s)->photos.front().mark.seq));
}

void TstPhotos::whatIsNoPhotoIsNamed()
{
    go("photos", "D1");
    m_ask->openPath = file(u"words.png"_s, "no picture");
    press(page(), "addPhoto");
    QVERIFY(!sheet());
    QVERIFY2(told("waitingProblem").startsWith(u"words.png is no picture"), qPrintable(told("waitingProblem")));
}

void TstPhotos::theSamePhotoTwice()
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

void TstPhotos::withoutWhereItWasTaken()
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
    const core::Digest named = item(u"D1"_s)->photos.front().digest;
    const auto kept = m_other->store().attachments().get(named);
    QVERIFY(kept);
    QVERIFY(!photos::tellsPlace(*kept) && !kept->contains("Exif") && !kept->contains(camera::latitudeBytes()));
    QVERIFY(!m_other->store().attachments().exists(core::Digest::of(taken)).value_or(true));
    // What it was made from is named, and known when it comes again.
    QCOMPARE(item(u"D1"_s)->photos.front().copyOf, std::optional(core::Digest::of(taken)));
    press(page(), "addPhoto");
    QTRY_VERIFY(sheet());
    const QString no = sign(u"ana"_s);
    QVERIFY2(no.startsWith(u"A copy of this photo is attached to D1 already, by entry "), qPrintable(no));
}

void TstPhotos::sideBySideThroughOneLens()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    QCOMPARE(attach(u"D1"_s, photoOf(402, 202), u"after"_s), QString());
    go("photos", "D1");
    QTRY_COMPARE(view(Side::Left).shown().picture.size(), QSize(400, 200));
    QCOMPARE(view(Side::Right).shown().picture.size(), QSize(402, 202));
    QCOMPARE(view(Side::Left).size(), view(Side::Right).size());
    const auto both = [&] { return lensText(view(Side::Left).lens()) + u" | "_s + lensText(view(Side::Right).lens()); };
    QCOMPARE(both(), u"1.00 at 0.50,0.50 | 1.00 at 0.50,0.50"_s);
    // By key, in the left one.
    ::press(view(Side::Left), Qt::Key_Plus);
    ::press(view(Side::Left), Qt::Key_Plus);
    QCOMPARE(both(), u"1.56 at 0.50,0.50 | 1.56 at 0.50,0.50"_s);
    QTest::keyClick(&view(Side::Left), Qt::Key_Right);
    QCOMPARE(both(), u"1.56 at 0.56,0.50 | 1.56 at 0.56,0.50"_s);
    // By button, by wheel and by dragging, in the right one: always both.
    press(page(), "larger");
    const QPointF middle = QRectF(view(Side::Right).rect()).center();
    QWheelEvent wheel(middle, view(Side::Right).mapToGlobal(middle), {}, {0, 120}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(&view(Side::Right), &wheel);
    QCOMPARE(both(), u"2.93 at 0.56,0.50 | 2.93 at 0.56,0.50"_s);
    const QPoint from = view(Side::Right).rect().center();
    QTest::mousePress(&view(Side::Right), Qt::LeftButton, {}, from);
    QTest::mouseMove(&view(Side::Right), from + QPoint(60, 0));
    QTest::mouseRelease(&view(Side::Right), Qt::LeftButton, {}, from + QPoint(60, 0));
    QCOMPARE(view(Side::Left).lens(), view(Side::Right).lens());
    QVERIFY2(view(Side::Left).lens().centre.x() < 0.55, qPrintable(both()));
    // A tap brings the place into the middle, in both.
    const QPointF place = view(Side::Left).transform().map(QPointF(0.25, 0.5));
    QTest::mouseClick(&view(Side::Left), Qt::LeftButton, {}, place.toPoint());
    QCOMPARE(view(Side::Left).lens(), view(Side::Right).lens());
    QVERIFY2(std::abs(view(Side::Left).lens().centre.x() - 0.25) < 0.01, qPrintable(both()));
    // Both are drawn through the same transform, but for the pixel by which their shapes differ.
    for (const QPointF &at : {QPointF(0, 0), QPointF(1, 1)})
        QVERIFY((view(Side::Left).transform().map(at) - view(Side::Right).transform().map(at)).manhattanLength() < 8);
    press(page(), "whole");
    QCOMPARE(both(), u"1.00 at 0.50,0.50 | 1.00 at 0.50,0.50"_s);
}

void TstPhotos::whichStandSideBySide_data()
{
    QTest::addColumn<QStringList>("moments");
    QTest::addColumn<int>("left"); // -1: none
    QTest::addColumn<int>("right");
    QTest::newRow("none") << QStringList() << -1 << -1;
    QTest::newRow("before alone") << QStringList{u"before"_s} << 0 << -1;
    QTest::newRow("after alone") << QStringList{u"after"_s} << -1 << 0;
    QTest::newRow("the last of each") << QStringList{u"before"_s, u"after"_s, u"before"_s, u"after"_s, u"other"_s} << 2 << 3;
    QTest::newRow("another in place of one before") << QStringList{u"other"_s, u"after"_s} << 0 << 1;
}

void TstPhotos::whichStandSideBySide()
{
    QFETCH(QStringList, moments);
    QFETCH(int, left);
    QFETCH(int, right);
    std::vector<core::Photo> all;
    for (const QString &moment : moments)
        all.push_back({{static_cast<qint64>(all.size()), *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0)}, {}, u"image/png"_s, {}, moment, {}});
    const auto at = [&](int row) { return row < 0 ? nullptr : &all[static_cast<std::size_t>(row)]; };
    QVERIFY(desktop::usualChoice(all) == (desktop::PhotoChoice{at(left), at(right)}));
    for (const core::Photo &photo : all) {
        const desktop::PhotoChoice chosen = desktop::withPhoto(desktop::usualChoice(all), photo);
        QVERIFY(photo.moment == u"after" ? chosen.right == &photo && chosen.left == at(left) : chosen.left == &photo && chosen.right == at(right));
    }
}

/// Nothing of it needs a screen: what is shown never goes beyond the picture, and the place under the pointer stays there.
void TstPhotos::lensStaysWithinThePicture()
{
    QCOMPARE(lensText(desktop::zoomed({}, 0.1, {0.5, 0.5})), u"1.00 at 0.50,0.50"_s);
    QCOMPARE(lensText(desktop::zoomed({}, 1000, {0.5, 0.5})), u"16.00 at 0.50,0.50"_s);
    QCOMPARE(lensText(desktop::moved({2, {0.5, 0.5}}, {10, -10})), u"2.00 at 0.75,0.25"_s);
    QCOMPARE(lensText(desktop::moved({2, {0.5, 0.5}}, {0.2, 0})), u"2.00 at 0.60,0.50"_s);
    const QRectF view(0, 0, 300, 200);
    const auto inView = [&](const Lens &lens, const QPointF &place) {
        const QRectF picture = desktop::pictureIn(view, {600, 400}, lens);
        return picture.topLeft() + QPointF(picture.width() * place.x(), picture.height() * place.y());
    };
    const Lens before{2, {0.4, 0.6}};
    const QPointF place(0.45, 0.5);
    const QPointF moved = inView(desktop::zoomed(before, 1.7, place), place) - inView(before, place);
    QVERIFY(moved.manhattanLength() < 1e-6);
    QCOMPARE(desktop::pictureIn(view, {600, 100}, {}), QRectF(0, 75, 300, 50));
}

void TstPhotos::markedByMouse()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    QTest::mouseClick(&view(Side::Left), Qt::LeftButton, {}, view(Side::Left).transform().map(QPointF(0.25, 0.75)).toPoint());
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    QVERIFY(!named<QPushButton>(page(), "photo.marked")->isEnabled()); // nobody knows yet what to look at
    type(*named<QLineEdit>(page(), "markWords"), u"chafed at the clamp"_s);
    QVERIFY(named<QPushButton>(page(), "photo.marked")->isEnabled());
    // A tap beside the picture places nothing: it is twice as broad as high, so there is room above it.
    QTest::mouseClick(&view(Side::Left), Qt::LeftButton, {}, QPoint(view(Side::Left).width() / 2, 8));
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    press(page(), "photo.marked");
    QCOMPARE(sign(u"ben"_s), QString());
    const core::Photo photo = item(u"D1"_s)->photos.front();
    QCOMPARE(photo.marks.size(), 1u);
    QCOMPARE(photo.marks.front().number, 1);
    QCOMPARE(photo.marks.front().what, u"chafed at the clamp"_s);
    QVERIFY(std::abs(photo.marks.front().across - 250) <= 3 && std::abs(photo.marks.front().down - 750) <= 5);
    QTRY_COMPARE(view(Side::Left).shown().marks.size(), 1u);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 0u);
    QVERIFY(view(Side::Left).accessibleDescription().contains(u"Mark 1: chafed at the clamp"));
    QVERIFY(named<QListWidget>(page(), "marks")->item(0)->text().contains(u"Ben Orr"));
    // The photo itself is as it was.
    QCOMPARE(m_other->store().attachments().get(photo.digest).value_or(QByteArray()), photoOf(400, 200));
}

void TstPhotos::markedByKeyboard()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"after"_s), QString());
    go("photos", "D1");
    auto &photo = view(Side::Right); // the only one there is
    ::press(*named<QPushButton>(page(), "place"), Qt::Key_Space);
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Right, Qt::Key_Down, Qt::Key_Return})
        ::press(photo, key);
    type(*named<QLineEdit>(page(), "markWords"), u"seal"_s);
    ::press(*named<QLineEdit>(page(), "markWords"), Qt::Key_Return);
    for (const Qt::Key key : {Qt::Key_Left, Qt::Key_Left, Qt::Key_Left, Qt::Key_Up, Qt::Key_Space})
        ::press(photo, key);
    type(*named<QLineEdit>(page(), "markWords"), u"nut"_s);
    ::press(*named<QPushButton>(page(), "photo.marked"), Qt::Key_Space);
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"after image/jpeg; 1 at 540,520 seal; 2 at 480,500 nut"_s});
}

void TstPhotos::aMarkIsTakenAway()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    QTest::keyClick(&view(Side::Left), Qt::Key_Return);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    press(page(), "removeMark");
    QCOMPARE(view(Side::Left).shown().drafts.size(), 0u);
    QCOMPARE(named<QListWidget>(page(), "marks")->count(), 0);
    QVERIFY(!named<QPushButton>(page(), "removeMark")->isEnabled());
    // Drafts stay with their photo while another interface is looked at.
    QTest::keyClick(&view(Side::Left), Qt::Key_Return);
    type(*named<QLineEdit>(page(), "markWords"), u"seal"_s);
    go("photos", "C1");
    QCOMPARE(named<QListWidget>(page(), "marks")->count(), 0);
    go("photos", "D1");
    QVERIFY(named<QListWidget>(page(), "marks")->item(0)->text().contains(u"seal"));
}

void TstPhotos::draftsMakeWayForAMarkSignedMeanwhile()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    ::press(view(Side::Left), Qt::Key_Return);
    type(*named<QLineEdit>(page(), "markWords"), u"se"_s);
    const core::Mark nobody{0, *core::PersonId::parse(u"ben"), core::Instant::fromMilliseconds(0)};
    QCOMPARE(Bench::say(*m_other, *m_job, u"ben"_s, u"photo.marked"_s, u"D1"_s, {{u"sha256"_s, core::Digest::of(photoOf(400, 200)).hex()}, {u"marks"_s, core::linesOf({{nobody, 1, 10, 20, u"nut"_s}})}}), QString());
    m_window->look();
    QTRY_COMPARE(view(Side::Left).shown().marks.size(), 1u);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    QCOMPARE(view(Side::Left).shown().drafts.front().number, 2);
    // Whoever is typing goes on.
    QCOMPARE(named<QLineEdit>(page(), "markWords")->text(), u"se"_s);
    type(*named<QLineEdit>(page(), "markWords"), u"al"_s);
    press(page(), "photo.marked");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg; 1 at 10,20 nut; 2 at 500,500 seal"_s});
}

/// The same picture may show two interfaces.
void TstPhotos::draftsStayWithTheirInterface()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    QCOMPARE(attach(u"C1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    ::press(view(Side::Left), Qt::Key_Return);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    go("photos", "C1");
    QCOMPARE(view(Side::Left).shown().drafts.size(), 0u);
    go("photos", "D1");
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
}

void TstPhotos::nothingUnderWayIsLostUnasked_data()
{
    QTest::addColumn<QString>("what");
    QTest::addColumn<bool>("isAsked");
    QTest::newRow("a photo that was attached") << u""_s << false;
    QTest::newRow("a pasted picture") << u"pasted"_s << true;
    QTest::newRow("a mark without words") << u"mark"_s << true;
    QTest::newRow("a mark taken away") << u"no mark"_s << false;
    QTest::newRow("a watched folder") << u"folder"_s << true;
}

void TstPhotos::nothingUnderWayIsLostUnasked()
{
    QFETCH(QString, what);
    QFETCH(bool, isAsked);
    const QTemporaryDir folder;
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    if (what == u"pasted") {
        QApplication::clipboard()->setImage(camera::twoHalves(60, 30));
        press(page(), "paste");
        QTRY_VERIFY(sheet());
        sheet()->reject();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QTRY_VERIFY(!sheet());
        QVERIFY(told("waiting").contains(u"Pasted picture"));
    } else if (what.contains(u"mark")) {
        press(page(), "place");
        ::press(view(Side::Left), Qt::Key_Return);
        if (what == u"no mark")
            press(page(), "removeMark");
    } else if (what == u"folder") {
        m_ask->folderPath = folder.path();
        press(page(), "watch");
    }
    m_ask->confirms = false;
    QPointer<desktop::PhotosPage> before = &page();
    QVERIFY(before);
    if (isAsked) {
        named<QAction>(*m_window, "language.de")->trigger();
        QTRY_COMPARE(m_ask->asked, QStringList{u"Change the language?"_s});
        QVERIFY(before);
        m_ask->asked.clear();
    }
    m_window->openStore(m_bench->path());
    QCOMPARE(m_ask->asked, isAsked ? QStringList{u"Leave this store?"_s} : QStringList());
    QCOMPARE(before.isNull(), !isAsked);
    if (!isAsked)
        return;
    m_ask->confirms = true;
    m_window->openStore(m_bench->path());
    QVERIFY(!before);
}

void TstPhotos::theCardLeadsToThePage()
{
    QCOMPARE(attach(u"C1"_s, camera::with(photoOf(400, 200), {camera::exifSegment(6, false)}), u"before"_s), QString());
    place().showItem(*core::InterfaceId::parse(u"C1"_s));
    auto *list = m_window->findChild<desktop::Page *>(u"list"_s);
    // Upright, as the camera was held.
    const auto labels = list->findChildren<QLabel *>();
    const auto picture = std::find_if(labels.begin(), labels.end(), [](const QLabel *label) { return !label->pixmap().isNull() && label->accessibleName().startsWith(u"before", Qt::CaseInsensitive); });
    QVERIFY(picture != labels.end());
    QVERIFY((*picture)->pixmap().height() > (*picture)->pixmap().width());
    named<QPushButton>(*list, "sideBySide")->click();
    QVERIFY(page().isVisible());
    QCOMPARE(named<desktop::RowTable>(page(), "items")->chosen(), u"C1"_s);
}

/// With gloves: 44 px each way (WCAG 2.2, 2.5.5), and a name for whoever does not see it (4.1.2), on the page with all of its parts and on the sheet.
void TstPhotos::controlsAreNamedAndCanBeHit()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    ::press(*named<QPushButton>(page(), "place"), Qt::Key_Space);
    ::press(view(Side::Left), Qt::Key_Return);
    QApplication::clipboard()->setImage(camera::twoHalves(60, 30));
    press(page(), "paste");
    QTRY_VERIFY(sheet());
    QCoreApplication::processEvents();
    QStringList faults;
    int buttons = 0;
    for (const QWidget *screen : {static_cast<QWidget *>(&page()), static_cast<QWidget *>(sheet()->findChild<desktop::PhotoPicker *>())}) {
        for (const QPushButton *button : screen->findChildren<QPushButton *>()) {
            buttons += button->isVisible() ? 1 : 0;
            if (button->isVisible() && (button->width() < 44 || button->height() < 44 || button->text().isEmpty()))
                faults << u"%1: %2 x %3"_s.arg(button->objectName()).arg(button->width()).arg(button->height());
        }
    }
    QVERIFY(buttons >= 14);
    for (const QWidget *control : {static_cast<QWidget *>(&view(Side::Left)), static_cast<QWidget *>(&view(Side::Right)), static_cast<QWidget *>(named<QListWidget>(page(), "marks")), static_cast<QWidget *>(named<QListWidget>(page(), "photos")), static_cast<QWidget *>(named<QLineEdit>(page(), "markWords"))}) {
        if (control->accessibleName().isEmpty())
            faults << control->objectName() + u" has no name"_s;
    }
    QCOMPARE(faults.join(u'\n'), QString());
    sheet()->reject();
}

QTEST_MAIN(TstPhotos)
#include "tst_photos.moc"
