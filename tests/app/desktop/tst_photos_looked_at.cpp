// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QWheelEvent>

#include "app/desktop/flows/photo_picker.hpp"
#include "app/desktop/pages/photos/photo_choice.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "core/job/photo_marks.hpp"
#include "tests/app/desktop/photo_bench.hpp"

using namespace Qt::StringLiterals;
using desktop::Lens;
using desktop::Side;

namespace {

QString lensText(const Lens &lens) { return u"%1 at %2,%3"_s.arg(lens.zoom, 0, 'f', 2).arg(lens.centre.x(), 0, 'f', 2).arg(lens.centre.y(), 0, 'f', 2); }

} // namespace

/// What is looked at: photos side by side through one lens, and the marks on them, by mouse and by keyboard.
class TstPhotosLookedAt : public QObject, private PhotoBench {
    Q_OBJECT

private slots:
    void initTestCase() { desktop::applyAppearance(*qApp, desktop::Appearance::Light); }
    void init() { QCOMPARE(setUp(), QString()); }
    void cleanup() { tearDown(); }
    void aCaptionIsShownAsItIs();
    void sideBySideThroughOneLens();
    void whichStandSideBySide_data();
    void whichStandSideBySide();
    void lensStaysWithinThePicture();
    void markedByMouse();
    void markedByKeyboard();
    void aMarkIsTakenAway();
    void draftsMakeWayForAMarkSignedMeanwhile();
    void draftsStayWithTheirInterface();
    void theCardLeadsToThePage();
    void controlsAreNamedAndCanBeHit();
};

void TstPhotosLookedAt::aCaptionIsShownAsItIs()
{
    const QByteArray photo = photoOf(400, 200);
    QVERIFY(m_other->store().attachments().put(photo, u"image/jpeg"_s));
    QCOMPARE(Bench::say(*m_other, *m_job, u"ben"_s, u"photo.attached"_s, u"D1"_s, {{u"sha256"_s, core::Digest::of(photo).hex()}, {u"media_type"_s, u"image/jpeg"_s}, {u"moment"_s, u"before"_s}, {u"caption"_s, u"worn by 5 %1 of %2"_s}}), QString());
    m_window->look();
    go("photos", "D1");
    const QString row = named<QListWidget>(page(), "photos")->item(0)->text();
    QCOMPARE(row, u"Before: worn by 5 %1 of %2\nentry "_s + QString::number(itemOf(u"D1"_s)->photos.front().mark.seq));
}

void TstPhotosLookedAt::sideBySideThroughOneLens()
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
    pressKey(view(Side::Left), Qt::Key_Plus);
    pressKey(view(Side::Left), Qt::Key_Plus);
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

void TstPhotosLookedAt::whichStandSideBySide_data()
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

void TstPhotosLookedAt::whichStandSideBySide()
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
void TstPhotosLookedAt::lensStaysWithinThePicture()
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

void TstPhotosLookedAt::markedByMouse()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    QTest::mouseClick(&view(Side::Left), Qt::LeftButton, {}, view(Side::Left).transform().map(QPointF(0.25, 0.75)).toPoint());
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    QVERIFY(!named<QPushButton>(page(), "photo.marked")->isEnabled()); // nobody knows yet what to look at
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"chafed at the clamp"_s);
    QVERIFY(named<QPushButton>(page(), "photo.marked")->isEnabled());
    // A tap beside the picture places nothing: it is twice as broad as high, so there is room above it.
    QTest::mouseClick(&view(Side::Left), Qt::LeftButton, {}, QPoint(view(Side::Left).width() / 2, 8));
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    press(page(), "photo.marked");
    QCOMPARE(sign(u"ben"_s), QString());
    const core::Photo photo = itemOf(u"D1"_s)->photos.front();
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

void TstPhotosLookedAt::markedByKeyboard()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"after"_s), QString());
    go("photos", "D1");
    auto &photo = view(Side::Right); // the only one there is
    pressKey(*named<QPushButton>(page(), "place"), Qt::Key_Space);
    for (const Qt::Key key : {Qt::Key_Right, Qt::Key_Right, Qt::Key_Down, Qt::Key_Return})
        pressKey(photo, key);
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"seal"_s);
    pressKey(*named<QLineEdit>(page(), "markWords"), Qt::Key_Return);
    for (const Qt::Key key : {Qt::Key_Left, Qt::Key_Left, Qt::Key_Left, Qt::Key_Up, Qt::Key_Space})
        pressKey(photo, key);
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"nut"_s);
    pressKey(*named<QPushButton>(page(), "photo.marked"), Qt::Key_Space);
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"after image/jpeg; 1 at 540,520 seal; 2 at 480,500 nut"_s});
}

void TstPhotosLookedAt::aMarkIsTakenAway()
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
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"seal"_s);
    go("photos", "C1");
    QCOMPARE(named<QListWidget>(page(), "marks")->count(), 0);
    go("photos", "D1");
    QVERIFY(named<QListWidget>(page(), "marks")->item(0)->text().contains(u"seal"));
}

void TstPhotosLookedAt::draftsMakeWayForAMarkSignedMeanwhile()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    pressKey(view(Side::Left), Qt::Key_Return);
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"se"_s);
    const core::Mark nobody{0, *core::PersonId::parse(u"ben"), core::Instant::fromMilliseconds(0)};
    QCOMPARE(Bench::say(*m_other, *m_job, u"ben"_s, u"photo.marked"_s, u"D1"_s, {{u"sha256"_s, core::Digest::of(photoOf(400, 200)).hex()}, {u"marks"_s, core::linesOf({{nobody, 1, 10, 20, u"nut"_s}})}}), QString());
    m_window->look();
    QTRY_COMPARE(view(Side::Left).shown().marks.size(), 1u);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    QCOMPARE(view(Side::Left).shown().drafts.front().number, 2);
    // Whoever is typing goes on.
    QCOMPARE(named<QLineEdit>(page(), "markWords")->text(), u"se"_s);
    typeKeys(*named<QLineEdit>(page(), "markWords"), u"al"_s);
    press(page(), "photo.marked");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(photosOf(u"D1"_s), QStringList{u"before image/jpeg; 1 at 10,20 nut; 2 at 500,500 seal"_s});
}

/// The same picture may show two interfaces.
void TstPhotosLookedAt::draftsStayWithTheirInterface()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    QCOMPARE(attach(u"C1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    press(page(), "place");
    pressKey(view(Side::Left), Qt::Key_Return);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    go("photos", "C1");
    QCOMPARE(view(Side::Left).shown().drafts.size(), 0u);
    go("photos", "D1");
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
}

void TstPhotosLookedAt::theCardLeadsToThePage()
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
void TstPhotosLookedAt::controlsAreNamedAndCanBeHit()
{
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    go("photos", "D1");
    pressKey(*named<QPushButton>(page(), "place"), Qt::Key_Space);
    pressKey(view(Side::Left), Qt::Key_Return);
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

QTEST_MAIN(TstPhotosLookedAt)
#include "tst_photos_looked_at.moc"
