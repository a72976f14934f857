// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QApplication>
#include <QClipboard>
#include <QFile>
#include <QLineEdit>
#include <QListWidget>
#include <QPointer>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include "app/desktop/pages/calculator/calculator_page.hpp"
#include "app/desktop/parts/field_editor.hpp"
#include "app/desktop/parts/theme.hpp"
#include "tests/app/desktop/photo_bench.hpp"

using namespace Qt::StringLiterals;
using desktop::Side;

/// What is under way on the pages is not lost before somebody said so, whichever way the pages go; and never met on another job.
class TstLeaving : public QObject, private PhotoBench {
    Q_OBJECT

private slots:
    void initTestCase() { desktop::applyAppearance(*qApp, desktop::Appearance::Light); }
    void init() { QCOMPARE(setUp(), QString()); }
    void cleanup() { tearDown(); }
    void nothingUnderWayIsLostUnasked_data();
    void nothingUnderWayIsLostUnasked();
    void nothingTypedIsLostUnasked_data();
    void nothingTypedIsLostUnasked();
    void nothingIsMetOnAnotherJob();
    void theSameJobKeepsWhatWaits();
    void aNewJobAsksOnceItIsSigned_data();
    void aNewJobAsksOnceItIsSigned();

private:
    void goToJobs();
    /// Types that where it is typed on a page: on that with which a register is founded, in an empty store; into a calculation; into the filter
    /// of the list.
    void typeOn(const QString &page, const QString &text);
    /// Has that under way on the page: a photo, a mark, a folder.
    void begin(const QString &what);
    /// Opens a job with an interface D1 as well, as another program would.
    std::optional<core::LedgerId> openAnother();
    /// Goes that way: to another language, store or job, or out.
    void leave(const QString &way, const core::LedgerId &other);
    /// Whether that was done.
    bool hasLeft(const QString &way) const { return way == u"close" ? !m_window->isVisible() : m_before.isNull(); }

    QTemporaryDir m_camera;
    QPointer<QWidget> m_before;
};

std::optional<core::LedgerId> TstLeaving::openAnother()
{
    const auto other = m_bench->openJob(*m_other, {{u"work_order"_s, u"WO-2"_s}});
    const QString no = other ? Bench::say(*m_other, *other, u"ana"_s, u"interface.listed"_s, u"D1"_s, {{u"name"_s, u"Bleed duct"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}) : m_bench->trouble();
    m_window->look();
    return no.isEmpty() ? other : std::nullopt;
}

void TstLeaving::begin(const QString &what)
{
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
        pressKey(view(Side::Left), Qt::Key_Return);
        if (what == u"no mark")
            press(page(), "removeMark");
    } else if (what == u"folder") {
        m_ask->folderPath = m_camera.path();
        press(page(), "watch");
    }
}

void TstLeaving::leave(const QString &way, const core::LedgerId &other)
{
    if (way == u"language") {
        named<QAction>(*m_window, "language.de")->trigger();
        QTest::qWait(1); // it is asked once the menu is gone
    } else if (way == u"store") {
        m_window->openStore(m_bench->path());
    } else if (way == u"job") {
        m_window->openJob(other);
    } else {
        m_window->close();
    }
}

void TstLeaving::nothingUnderWayIsLostUnasked_data()
{
    QTest::addColumn<QString>("what");
    QTest::addColumn<QString>("way");
    QTest::addColumn<QString>("asked"); ///< empty where there is nothing to lose
    const std::pair<QString, QString> ways[] = {{u"language"_s, u"Change the language?"_s}, {u"store"_s, u"Leave this store?"_s}, {u"job"_s, u"Open another job?"_s}, {u"close"_s, u"Close the program?"_s}};
    for (const auto &[way, question] : ways) {
        const QByteArray by = way.toLatin1();
        QTest::addRow("%s, a photo that was attached", by.constData()) << u""_s << way << QString();
        QTest::addRow("%s, a pasted picture", by.constData()) << u"pasted"_s << way << question;
        QTest::addRow("%s, a mark without words", by.constData()) << u"mark"_s << way << question;
        QTest::addRow("%s, a mark taken away", by.constData()) << u"no mark"_s << way << QString();
        QTest::addRow("%s, a watched folder", by.constData()) << u"folder"_s << way << question;
    }
}

void TstLeaving::nothingUnderWayIsLostUnasked()
{
    QFETCH(QString, what);
    QFETCH(QString, way);
    QFETCH(QString, asked);
    const auto other = openAnother();
    QVERIFY(other);
    QCOMPARE(attach(u"D1"_s, photoOf(400, 200), u"before"_s), QString());
    begin(what);
    m_before = &page();
    m_ask->confirms = false;
    leave(way, *other);
    QCOMPARE(m_ask->asked, asked.isEmpty() ? QStringList() : QStringList{asked});
    QCOMPARE(hasLeft(way), asked.isEmpty());
    if (asked.isEmpty())
        return;
    QVERIFY2(readOn(place()).contains(u"WO-1 "), qPrintable(readOn(place())));
    m_ask->confirms = true;
    leave(way, *other);
    QCOMPARE(m_ask->asked.size(), 2);
    QVERIFY(hasLeft(way));
}

void TstLeaving::typeOn(const QString &page, const QString &text)
{
    QLineEdit *line = nullptr;
    m_before = &place();
    if (page == u"found") {
        const QString empty = file(u"empty.remate"_s, {});
        QVERIFY(QFile::remove(empty) && db::Store::create(empty));
        m_window->openStore(empty);
        m_before = line = named<QLineEdit>(*m_window, "organisation");
    } else if (page == u"calculator") {
        for (QAction *action : m_window->findChildren<QAction *>()) {
            if (action->shortcut() == QKeySequence(u"Ctrl+K"_s))
                action->trigger();
        }
        auto *calculator = m_window->findChild<desktop::CalculatorPage *>();
        QVERIFY(calculator && calculator->isVisible());
        line = calculator->findChild<desktop::FieldEditor *>()->findChild<QLineEdit *>();
    } else {
        go("list");
        line = named<QLineEdit>(*m_window, "filter");
    }
    for (const QChar typed : text) {
        if (typed == u'\b')
            pressKey(*line, Qt::Key_Backspace);
        else
            typeKeys(*line, typed);
    }
}

void TstLeaving::nothingTypedIsLostUnasked_data()
{
    QTest::addColumn<QString>("page");
    QTest::addColumn<QString>("text");
    QTest::addColumn<QString>("way");
    QTest::addColumn<bool>("isAsked");
    for (const char *way : {"language", "store", "close"}) {
        const QString by = QString::fromLatin1(way);
        QTest::addRow("%s, an organisation", way) << u"found"_s << u"Hangar 3"_s << by << true;
        QTest::addRow("%s, no organisation", way) << u"found"_s << QString() << by << false;
        QTest::addRow("%s, an organisation rubbed out", way) << u"found"_s << u"H\b"_s << by << false;
        QTest::addRow("%s, a figure of a calculation", way) << u"calculator"_s << u"12"_s << by << (by != u"store"); // it stays when the store goes
        QTest::addRow("%s, a calculation that is only looked at", way) << u"calculator"_s << QString() << by << false;
        QTest::addRow("%s, what is looked for on the list", way) << u"list"_s << u"du"_s << by << false;
    }
}

void TstLeaving::nothingTypedIsLostUnasked()
{
    QFETCH(QString, page);
    QFETCH(QString, text);
    QFETCH(QString, way);
    QFETCH(bool, isAsked);
    typeOn(page, text);
    QVERIFY(m_before);
    m_ask->confirms = false;
    leave(way, *m_job);
    QCOMPARE(m_ask->asked.size(), isAsked ? 1 : 0);
    QCOMPARE(hasLeft(way), !isAsked);
    if (!isAsked)
        return;
    m_ask->confirms = true;
    leave(way, *m_job);
    QCOMPARE(m_ask->asked.size(), 2);
    QVERIFY(hasLeft(way));
    if (way == u"close")
        return;
    m_window->close(); // what went with its page is not asked about again
    QCOMPARE(m_ask->asked.size(), 2);
}

/// Both jobs have an interface D1, and the same photo of it: what was begun in one must not be signed in the other.
void TstLeaving::nothingIsMetOnAnotherJob()
{
    const auto other = openAnother();
    QVERIFY(other);
    const QByteArray photo = photoOf(400, 200);
    QCOMPARE(attach(u"D1"_s, photo, u"before"_s), QString());
    QCOMPARE(Bench::say(*m_other, *other, u"ben"_s, u"photo.attached"_s, u"D1"_s, {{u"sha256"_s, core::Digest::of(photo).hex()}, {u"media_type"_s, u"image/jpeg"_s}, {u"moment"_s, u"before"_s}}), QString());
    begin(u"pasted"_s);
    begin(u"folder"_s);
    begin(u"mark"_s);
    QCOMPARE(view(Side::Left).shown().drafts.size(), 1u);
    m_window->openJob(*other);
    QCOMPARE(m_ask->asked, QStringList{u"Open another job?"_s});
    QVERIFY2(readOn(place()).contains(u"WO-2 "), qPrintable(readOn(place())));
    go("photos", "D1");
    QCOMPARE(view(Side::Left).shown().picture.size(), QSize(400, 200));
    QCOMPARE(view(Side::Left).shown().drafts.size(), 0u);
    QCOMPARE(told("waiting"), QString());
    QVERIFY(!told("watched").contains(m_camera.path()));
}

void TstLeaving::goToJobs()
{
    for (QPushButton *button : m_window->findChildren<QPushButton *>()) {
        if (button->text() == u"&Jobs")
            button->click();
    }
    QVERIFY(!page().isVisible());
}

void TstLeaving::theSameJobKeepsWhatWaits()
{
    begin(u"pasted"_s);
    goToJobs();
    m_window->openJob(*m_job);
    QCOMPARE(m_ask->asked, QStringList());
    go("photos", "D1");
    QVERIFY(told("waiting").contains(u"Pasted picture"));
}

void TstLeaving::aNewJobAsksOnceItIsSigned_data()
{
    QTest::addColumn<bool>("confirms");
    QTest::addColumn<QString>("open"); ///< its work order
    QTest::addRow("stays") << false << u"WO-1"_s;
    QTest::addRow("goes") << true << u"WO-9"_s;
}

/// What is signed is signed; whether the job is opened at once is another question.
void TstLeaving::aNewJobAsksOnceItIsSigned()
{
    QFETCH(bool, confirms);
    QFETCH(QString, open);
    begin(u"pasted"_s);
    m_ask->confirms = confirms;
    goToJobs();
    press(*m_window, "newJob");
    QTRY_VERIFY(sheet());
    const std::pair<const char *, const char *> texts[] = {{"title", "Engine change"}, {"work_order", "WO-9"}, {"aircraft", "Freighter 07"}, {"aircraft_type", "Ostrel 40F"}, {"maintenance_data", "MM 71"}, {"revision", "14"}, {"unit", "Engine 1"}, {"outgoing_serial", "K-1"}, {"incoming_serial", "K-2"}, {"lead", "ana"}, {"zones", "Left: ana"}};
    for (const auto &[field, text] : texts)
        typeInto(*sheet(), QString::fromLatin1(field), QString::fromLatin1(text));
    named<QWidget>(*sheet(), "crew")->findChild<QListWidget *>()->item(0)->setCheckState(Qt::Checked);
    QCOMPARE(sign(u"ana"_s), QString());
    QTRY_COMPARE(m_ask->asked, QStringList{u"Open another job?"_s});
    QTRY_VERIFY2(readOn(place()).contains(open + u" "_s), qPrintable(readOn(place())));
    const auto rows = m_other->refresh() ? m_other->jobs() : std::vector<session::JobRow>();
    QVERIFY(rows);
    QCOMPARE(rows->size(), 2u);
    if (!confirms)
        m_window->openJob(*m_job); // back from the jobs to the one that is open
    go("photos", "D1");
    QCOMPARE(told("waiting").isEmpty(), confirms);
}

QTEST_MAIN(TstLeaving)
#include "tst_leaving.moc"
