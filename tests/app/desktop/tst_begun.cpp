// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QBuffer>
#include <QCheckBox>
#include <QClipboard>
#include <QColor>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTableWidget>
#include <QTest>

#include <array>

#include "app/desktop/begun/begun_forms.hpp"
#include "app/desktop/flows/new_job.hpp"
#include "app/desktop/flows/new_key.hpp"
#include "app/desktop/flows/photo_picker.hpp"
#include "app/desktop/flows/set_hold.hpp"
#include "core/job/loose_ends.hpp"
#include "resources/resources.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/sheet_bench.hpp"

using namespace Qt::StringLiterals;
using core::json::arrayOf;
using core::json::Object;

namespace {

QByteArray all(const QString &folder)
{
    QByteArray bytes;
    for (const QFileInfo &file : QDir(folder).entryInfoList(QDir::Files | QDir::Hidden)) {
        QFile read(file.filePath());
        if (read.open(QIODevice::ReadOnly))
            bytes += read.readAll();
    }
    return bytes;
}

/// A photo of that colour all over.
photos::PhotoFile pictureOf(Qt::GlobalColor colour)
{
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(colour);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    if (!buffer.open(QIODevice::WriteOnly) || !picture.save(&buffer, "PNG"))
        qFatal("no picture");
    return {u"IMG_1.png"_s, bytes, u"image/png"_s};
}

qsizetype filesIn(const QString &folder) { return QDir(folder).entryList({u"*.json"_s}, QDir::Files).size(); }

bool isOffered(const SheetBench &window) { return window.sheet() && named<QPushButton>(*window.sheet(), u"takeUp"_s)->isVisibleTo(window.sheet()); }

} // namespace

/// What somebody typed and did not sign: it outlives the program, is offered and never signed by itself, and holds no secret.
class TestBegun : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void aFolderThatCannotBeWrittenIsTold();
    void eachFormIsTakenUp_data();
    void eachFormIsTakenUp();
    void itIsOfOneFormAlone();
    void itIsOfOnePhotoOrEntryAlone_data();
    void itIsOfOnePhotoOrEntryAlone();
    void wordsDoNotGoToAnotherPhoto_data();
    void wordsDoNotGoToAnotherPhoto();
    void itIsOfOneHandoverAlone_data();
    void itIsOfOneHandoverAlone();
    void nothingIsSignedBeforeAnybodyAnswered();
    void whatIsDiscardedIsGone();
    void cancelGivesItUp();
    void signedMeansGone();
    void nobodyTypedNobodyIsAsked();
    void noSecretIsWritten();
    void ticksAreNotTakenUp();
    void whatIsConfirmedIsConfirmedAgain();
    void aDamagedFileIsToldOnTheSheet();
    void killedWhileTyping();

private:
    std::unique_ptr<SheetBench> open() const { return std::make_unique<SheetBench>(m_bench->path(), m_job, m_bench->clock(), m_bench->kinds(), desktop::BegunForms(folder())); }
    QString folder() const { return m_folder->filePath(u"begun"_s); }
    void disconnect(SheetBench &window, const char *id);
    /// Attaches it to D1 as another program would. What was refused.
    QString attach(const photos::PhotoFile &photo);

    std::unique_ptr<QTemporaryDir> m_folder;
    std::unique_ptr<Bench> m_bench;
    std::optional<core::LedgerId> m_job;
};

void TestBegun::init()
{
    m_folder = std::make_unique<QTemporaryDir>();
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    const auto session = m_bench->another();
    m_job = m_bench->openJob(*session);
    QVERIFY2(m_job, qPrintable(m_bench->trouble()));
    for (const QString &id : {u"D1"_s, u"D2"_s})
        QCOMPARE(Bench::say(*session, *m_job, u"ana"_s, u"interface.listed"_s, id, {{u"name"_s, id}, {u"kind"_s, u"duct"_s}, {u"zone"_s, u"Left"_s}}), QString());
    QCOMPARE(Bench::say(*session, *m_job, u"ana"_s, u"hold.set"_s, u"free"_s,
                        {{u"title"_s, u"All free"_s}, {u"authority"_s, u"lead"_s}, {u"conditions"_s, core::json::Array()}, {u"gates"_s, core::json::Array{Object{{u"act"_s, u"job.closed"_s}}}},
                         {u"statements"_s, arrayOf({u"The hoist has the load."_s, u"Nobody stands under it."_s})}}), QString());
}

void TestBegun::cleanup()
{
    m_bench.reset();
    m_folder.reset();
}

void TestBegun::disconnect(SheetBench &window, const char *id) { window.signing().begin(desktop::actionFor("interface.disconnected"_L1), {item(id)}); }

QString TestBegun::attach(const photos::PhotoFile &photo)
{
    const auto session = m_bench->another();
    if (!session->openJob(*m_job) || !session->store().attachments().put(photo.bytes, photo.mediaType))
        return u"the photo is not kept"_s;
    return Bench::say(*session, *m_job, u"ben"_s, u"photo.attached"_s, u"D1"_s, {{u"sha256"_s, photos::digestOf(photo).hex()}, {u"media_type"_s, photo.mediaType}, {u"moment"_s, u"before"_s}});
}

void TestBegun::aFolderThatCannotBeWrittenIsTold()
{
    QFile file(folder()); // a file is where the folder should be
    QVERIFY(file.open(QIODevice::WriteOnly));
    auto window = open();
    disconnect(*window, "D1");
    typeInto(*window->sheet(), u"remarks"_s, u"Half a sentence"_s);
    QTRY_VERIFY(named<QLabel>(*window->sheet(), u"begunText"_s)->text().contains(folder()));
    window->sign(u"ana"_s); // the work goes on
}

void TestBegun::eachFormIsTakenUp_data()
{
    using Typed = QList<QPair<QString, QString>>;
    QTest::addColumn<QString>("form");
    QTest::addColumn<Typed>("typed");
    QTest::addRow("one interface") << u"interface.disconnected"_s << Typed{{u"tag"_s, u"17"_s}, {u"remarks"_s, u"Cushion worn, und"_s}, {u"as_found"_s, u"worn"_s}};
    QTest::addRow("a number that is none yet") << u"interface.disconnected"_s << Typed{{u"blanks_fitted"_s, u"1o"_s}};
    QTest::addRow("a number beyond what an entry takes") << u"interface.disconnected"_s << Typed{{u"blanks_fitted"_s, u"9007199254740993"_s}};
    QTest::addRow("a new job") << u"job.opened"_s << Typed{{u"title"_s, u"Propeller change"_s}, {u"zones"_s, u"Left: Ana\nRi"_s}};
    QTest::addRow("a hold point of its own") << u"hold.set"_s << Typed{{u"holdId"_s, u"last-look"_s}, {u"title"_s, u"Last lo"_s}, {u"statements"_s, u"Rags are out.\nNob"_s}};
    QTest::addRow("a hold point of the standard set, changed") << u"hold.set"_s << Typed{{u"standardHold"_s, u"start"_s}, {u"title"_s, u"Safe to begin at the pyl"_s}};
    QTest::addRow("a hold point of the standard set, its statements cleared") << u"hold.set"_s << Typed{{u"standardHold"_s, u"start"_s}, {u"statements"_s, QString()}};
    QTest::addRow("a person") << u"person.enrolled"_s << Typed{{u"newId"_s, u"eve"_s}, {u"newName"_s, u"Eve Tor"_s}};
}

void TestBegun::eachFormIsTakenUp()
{
    using Typed = QList<QPair<QString, QString>>;
    QFETCH(QString, form);
    QFETCH(Typed, typed);
    const auto begin = [&](SheetBench &window) {
        if (form == u"job.opened")
            window.signing().open(desktop::newJobPlan(window.session(), window.window()));
        else if (form == u"hold.set")
            window.signing().open(desktop::setHoldPlan(window.session(), window.window()));
        else if (form == u"person.enrolled")
            window.signing().open(desktop::enrolPlan(window.session(), window.window()));
        else
            disconnect(window, "D1");
    };
    QStringList fresh;
    {
        auto window = open();
        begin(*window);
        QVERIFY(!isOffered(*window));
        for (const auto &[field, text] : typed)
            fresh << shownIn(*window->sheet(), field);
        for (const auto &[field, text] : typed)
            typeInto(*window->sheet(), field, text);
        QElapsedTimer since;
        since.start();
        QTRY_COMPARE(filesIn(folder()), 1);
        QVERIFY2(since.elapsed() < 900, "kept some hundred milliseconds after typing");
    }
    auto window = open();
    begin(*window);
    QVERIFY(isOffered(*window));
    for (int i = 0; i < typed.size(); ++i)
        QCOMPARE(shownIn(*window->sheet(), typed[i].first), fresh[i]); // nothing is filled in unasked
    window->press(u"takeUp"_s);
    QVERIFY(!isOffered(*window));
    for (const auto &[field, text] : typed)
        QCOMPARE(shownIn(*window->sheet(), field), text);
}

void TestBegun::itIsOfOneFormAlone()
{
    {
        auto window = open();
        disconnect(*window, "D1");
        typeInto(*window->sheet(), u"tag"_s, u"17"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    disconnect(*window, "D2");
    QVERIFY(!isOffered(*window));
    window->close();
    window->signing().begin(desktop::actionFor("finding.raised"_L1), {item("D1")});
    QVERIFY(!isOffered(*window));
    window->close();
    disconnect(*window, "D1");
    QVERIFY(isOffered(*window));
}

void TestBegun::itIsOfOnePhotoOrEntryAlone_data()
{
    QTest::addColumn<QString>("act");
    QTest::addRow("attached") << u"photo.attached"_s;
    QTest::addRow("marked") << u"photo.marked"_s;
    QTest::addRow("struck") << u"entry.struck"_s;
}

/// Two photos of one interface, and two entries of one job.
void TestBegun::itIsOfOnePhotoOrEntryAlone()
{
    QFETCH(QString, act);
    const std::array pictures{pictureOf(Qt::darkGreen), pictureOf(Qt::darkRed)};
    for (const photos::PhotoFile &photo : pictures) {
        if (act != u"photo.attached")
            QCOMPARE(attach(photo), QString());
    }
    const auto begin = [&](SheetBench &window, std::size_t which) {
        if (act == u"photo.attached")
            window.signing().beginGiven(act, {item("D1")}, {}, {{}, pictures[which], {}});
        else if (act == u"photo.marked")
            window.signing().begin(desktop::actionFor("photo.marked"_L1), {item("D1")}, photos::digestOf(pictures[which]).hex());
        else
            window.signing().begin(desktop::actionFor("entry.struck"_L1), {}, QString::number(window.feed().state()->item(item("D1"))->photos.at(which).mark.seq));
        return window.sheet() != nullptr;
    };
    {
        auto window = open();
        QVERIFY(begin(*window, 0));
        if (act == u"photo.marked") {
            named<QPushButton>(*window->sheet(), u"addRow"_s)->click();
            auto *rows = named<QWidget>(*window->sheet(), u"marks"_s)->findChild<QTableWidget *>();
            rows->item(0, 3)->setText(u"Chafed"_s);
        } else {
            typeInto(*window->sheet(), act == u"photo.attached" ? u"caption"_s : u"reason"_s, u"Chafed"_s);
        }
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    QVERIFY(begin(*window, 1));
    QVERIFY(!isOffered(*window));
    window->close();
    QVERIFY(begin(*window, 0));
    QVERIFY(isOffered(*window));
}

void TestBegun::itIsOfOneHandoverAlone_data()
{
    QTest::addColumn<QString>("act");
    QTest::addColumn<QString>("field");
    QTest::addRow("accepted") << u"handover.accepted"_s << u"remarks"_s;
    QTest::addRow("refused") << u"handover.refused"_s << u"reason"_s;
}

/// What was typed about one shift's handover is not offered for the next one's.
void TestBegun::itIsOfOneHandoverAlone()
{
    QFETCH(QString, act);
    QFETCH(QString, field);
    const auto other = m_bench->another();
    QVERIFY(other->openJob(*m_job));
    const auto handOver = [&] {
        return Bench::say(*other, *m_job, u"ana"_s, u"handover.given"_s, {}, {{u"to"_s, u"ben"_s}, {u"open"_s, core::openAtHandover(*other->state())}});
    };
    const auto begin = [&](SheetBench &window) {
        window.signing().begin(desktop::actionFor(QLatin1String(act.toLatin1())), {});
        return window.sheet() != nullptr;
    };
    QCOMPARE(handOver(), QString());
    const qint64 first = static_cast<qint64>(other->said().size());
    {
        auto window = open();
        QVERIFY(begin(*window));
        typeInto(*window->sheet(), field, u"The sling is on its hook"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    {
        auto window = open();
        QVERIFY(begin(*window));
        QVERIFY(isOffered(*window));
    }
    QCOMPARE(Bench::say(*other, *m_job, u"ben"_s, u"handover.refused"_s, {}, {{u"given"_s, first}, {u"reason"_s, u"Nobody walked round."_s}}), QString());
    QCOMPARE(handOver(), QString());
    auto window = open();
    QVERIFY(begin(*window));
    QVERIFY(!isOffered(*window));
    QCOMPARE(shownIn(*window->sheet(), field), QString());
}

void TestBegun::nothingIsSignedBeforeAnybodyAnswered()
{
    {
        auto window = open();
        disconnect(*window, "D1");
        typeInto(*window->sheet(), u"tag"_s, u"17"_s);
        typeInto(*window->sheet(), u"blanks_fitted"_s, u"2"_s);
        typeInto(*window->sheet(), u"as_found"_s, u"sound"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    const auto before = window->session().said().size();
    disconnect(*window, "D1");
    window->sign(u"ana"_s);
    QCOMPARE(window->session().said().size(), before);
    QVERIFY(!named<QWidget>(*window->sheet(), u"tag"_s)->isEnabled());
    QVERIFY2(window->problem().contains(u"take up"), qPrintable(window->problem()));
    // Away and back without an answer: it is still there.
    window->close();
    disconnect(*window, "D1");
    QVERIFY(isOffered(*window));
    window->press(u"takeUp"_s);
    QVERIFY(named<QWidget>(*window->sheet(), u"tag"_s)->isEnabled());
    window->sign(u"ana"_s);
    QCOMPARE(window->session().said().size(), before + 1);
    QCOMPARE(window->session().said().back().body.text(u"tag"), u"17"_s);
}

void TestBegun::whatIsDiscardedIsGone()
{
    {
        auto window = open();
        disconnect(*window, "D1");
        typeInto(*window->sheet(), u"tag"_s, u"17"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    disconnect(*window, "D1");
    window->press(u"discard"_s);
    QCOMPARE(filesIn(folder()), 0);
    QVERIFY(shownIn(*window->sheet(), u"tag"_s) != u"17"_s);
    QVERIFY(named<QWidget>(*window->sheet(), u"tag"_s)->isEnabled());
}

void TestBegun::cancelGivesItUp()
{
    auto window = open();
    disconnect(*window, "D1");
    typeInto(*window->sheet(), u"tag"_s, u"17"_s);
    QTRY_COMPARE(filesIn(folder()), 1);
    window->close();
    QCOMPARE(filesIn(folder()), 0);
    disconnect(*window, "D1");
    typeInto(*window->sheet(), u"tag"_s, u"18"_s);
    window->close(); // before it was kept: nor does it come later
    QTest::qWait(400);
    QCOMPARE(filesIn(folder()), 0);
}

void TestBegun::signedMeansGone()
{
    auto window = open();
    disconnect(*window, "D1");
    typeInto(*window->sheet(), u"tag"_s, u"17"_s);
    typeInto(*window->sheet(), u"blanks_fitted"_s, u"2"_s);
    typeInto(*window->sheet(), u"as_found"_s, u"sound"_s);
    QTRY_COMPARE(filesIn(folder()), 1);
    const auto before = window->session().said().size();
    window->sign(u"ana"_s);
    QCOMPARE(window->session().said().size(), before + 1);
    QCOMPARE(filesIn(folder()), 0);
}

/// What the form was filled in with beforehand is no typing; nor is what was typed and taken back.
void TestBegun::nobodyTypedNobodyIsAsked()
{
    auto window = open();
    disconnect(*window, "D1");
    const QString tag = shownIn(*window->sheet(), u"tag"_s);
    QTest::qWait(400);
    QCOMPARE(filesIn(folder()), 0);
    typeInto(*window->sheet(), u"tag"_s, u"17"_s);
    QTRY_COMPARE(filesIn(folder()), 1);
    typeInto(*window->sheet(), u"tag"_s, tag);
    QTRY_COMPARE(filesIn(folder()), 0);
}

void TestBegun::noSecretIsWritten()
{
    const QString secret = u"7351-open-sesame"_s;
    auto window = open();
    disconnect(*window, "D1");
    typeInto(*window->sheet(), u"tag"_s, u"17"_s);
    typeInto(*window->sheet(), u"person"_s, u"ana"_s);
    typeInto(*window->sheet(), u"secret"_s, secret);
    QTRY_COMPARE(filesIn(folder()), 1);
    QTest::qWait(400);
    QVERIFY(all(folder()).contains("17"));
    QVERIFY(!all(folder()).contains(secret.toUtf8()));
    window->close();
    window->signing().open(desktop::enrolPlan(window->session(), window->window()));
    typeInto(*window->sheet(), u"newName"_s, u"Eve Tor"_s);
    typeInto(*window->sheet(), u"newSecret"_s, secret);
    typeInto(*window->sheet(), u"newSecretAgain"_s, secret);
    QTRY_COMPARE(filesIn(folder()), 1);
    QTest::qWait(400);
    QVERIFY(all(folder()).contains("Eve Tor"));
    QVERIFY(!all(folder()).contains(secret.toUtf8()));
}

/// A tick says that its signer looked, and who takes the form up may be somebody else.
void TestBegun::ticksAreNotTakenUp()
{
    const auto begin = [](SheetBench &window) { window.signing().begin(desktop::actionFor("hold.passed"_L1), {}, u"free"_s); };
    {
        auto window = open();
        begin(*window);
        QVERIFY(window->sheet());
        named<QCheckBox>(*window->sheet(), u"statement.0"_s)->setChecked(true);
        typeInto(*window->sheet(), u"remarks"_s, u"Told at the n"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
        QVERIFY(!all(folder()).contains("hoist"));
    }
    auto window = open();
    begin(*window);
    window->press(u"takeUp"_s);
    QCOMPARE(shownIn(*window->sheet(), u"remarks"_s), u"Told at the n"_s);
    QVERIFY(!named<QCheckBox>(*window->sheet(), u"statement.0"_s)->isChecked());
}

void TestBegun::wordsDoNotGoToAnotherPhoto_data()
{
    QTest::addColumn<QColor>("before"); ///< the photo that was chosen while the words were typed; none where it has no colour
    QTest::addColumn<QColor>("now");
    QTest::addColumn<bool>("isRefused");
    QTest::addRow("the same photo") << QColor(Qt::darkGreen) << QColor(Qt::darkGreen) << false;
    QTest::addRow("another photo") << QColor(Qt::darkGreen) << QColor(Qt::darkRed) << true;
    QTest::addRow("typed before any photo was chosen") << QColor() << QColor(Qt::darkRed) << false;
}

/// Of a sheet that was opened for no photo: the one that was chosen in it is not kept, and the next one may be another.
void TestBegun::wordsDoNotGoToAnotherPhoto()
{
    QFETCH(QColor, before);
    QFETCH(QColor, now);
    QFETCH(bool, isRefused);
    const auto paste = [](SheetBench &window, const QColor &colour) {
        QImage picture(40, 30, QImage::Format_RGB32);
        picture.fill(colour);
        QApplication::clipboard()->setImage(picture);
        window.press(u"pastePhoto"_s);
        return window.sheet()->findChild<desktop::PhotoPicker *>()->whyNot();
    };
    const auto begin = [&](SheetBench &window) {
        window.signing().begin(desktop::actionFor("photo.attached"_L1), {item("D1")});
        return window.sheet() != nullptr;
    };
    {
        auto window = open();
        QVERIFY(begin(*window));
        if (before.isValid()) {
            (void)paste(*window, Qt::darkBlue);
            QVERIFY(paste(*window, before).empty()); // to choose otherwise while nothing was taken up is nobody's error
        }
        typeInto(*window->sheet(), u"caption"_s, u"Chafed"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    QVERIFY(begin(*window));
    QVERIFY(isOffered(*window));
    window->press(u"takeUp"_s);
    QCOMPARE(shownIn(*window->sheet(), u"caption"_s), u"Chafed"_s);
    const core::Refusals refusals = paste(*window, now);
    QCOMPARE(refusals.empty(), !isRefused);
    if (!isRefused)
        return;
    QVERIFY2(refusals.front().sentence.contains(u"Pasted picture"), qPrintable(refusals.front().sentence));
    QVERIFY(paste(*window, before).empty());
}

/// Nor is a tick that something is meant all the same.
void TestBegun::whatIsConfirmedIsConfirmedAgain()
{
    const photos::PhotoFile photo = pictureOf(Qt::darkGreen);
    QCOMPARE(attach(photo), QString());
    const auto begin = [&](SheetBench &window) {
        window.signing().beginGiven(u"photo.attached"_s, {item("D1")}, {}, {{}, photo, {}});
        return window.sheet() != nullptr;
    };
    {
        auto window = open();
        QVERIFY(begin(*window));
        named<QCheckBox>(*window->sheet(), u"again"_s)->setChecked(true);
        named<QCheckBox>(*window->sheet(), u"bare"_s)->setChecked(true);
        typeInto(*window->sheet(), u"caption"_s, u"Chafed"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    auto window = open();
    QVERIFY(begin(*window));
    QVERIFY(isOffered(*window));
    window->press(u"takeUp"_s);
    QCOMPARE(shownIn(*window->sheet(), u"caption"_s), u"Chafed"_s);
    QVERIFY(named<QCheckBox>(*window->sheet(), u"bare"_s)->isChecked()); // a choice, no confirmation
    QVERIFY(!named<QCheckBox>(*window->sheet(), u"again"_s)->isChecked());
}

void TestBegun::aDamagedFileIsToldOnTheSheet()
{
    {
        auto window = open();
        disconnect(*window, "D1");
        typeInto(*window->sheet(), u"tag"_s, u"17"_s);
        QTRY_COMPARE(filesIn(folder()), 1);
    }
    QFile file(QDir(folder()).entryInfoList(QDir::Files).front().filePath());
    QVERIFY(file.resize(file.size() / 2));
    auto window = open();
    disconnect(*window, "D1");
    QVERIFY(!isOffered(*window));
    const QString told = named<QLabel>(*window->sheet(), u"begunText"_s)->text();
    QVERIFY2(told.contains(u"set aside"), qPrintable(told));
    QVERIFY(named<QWidget>(*window->sheet(), u"tag"_s)->isEnabled());
}

/// A program of its own that is killed (SIGKILL) while somebody types into it.
void TestBegun::killedWhileTyping()
{
    QProcess other;
    other.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    other.start(QCoreApplication::applicationFilePath(), {u"--type-until-killed"_s, m_bench->path(), folder(), m_job->text()});
    QVERIFY(other.waitForReadyRead(60'000));
    QTRY_COMPARE_WITH_TIMEOUT(filesIn(folder()), 1, 20'000);
    QTRY_VERIFY(all(folder()).contains("Chafed where it passes"));
    other.kill();
    QVERIFY(other.waitForFinished(20'000));
    QCOMPARE(other.exitStatus(), QProcess::CrashExit);

    auto window = open();
    const auto before = window->session().said().size();
    disconnect(*window, "D1");
    QVERIFY(isOffered(*window));
    window->press(u"takeUp"_s);
    QCOMPARE(shownIn(*window->sheet(), u"remarks"_s), u"Chafed where it passes"_s);
    QCOMPARE(window->session().said().size(), before); // the killed one signed nothing
}

namespace {

/// Types into a sheet, says so, and waits for its end.
int typeUntilKilled(const QString &store, const QString &folder, const QString &job)
{
    const auto kinds = resources::loadKinds();
    if (!kinds || !core::readyCryptography())
        return 1;
    SheetBench window(store, core::LedgerId::parse(job), session::systemClock(), *kinds, desktop::BegunForms(folder));
    window.signing().begin(desktop::actionFor("interface.disconnected"_L1), {item("D1")});
    typeInto(*window.sheet(), u"remarks"_s, u"Chafed where it passes"_s);
    std::puts("typed");
    std::fflush(stdout);
    return QApplication::exec();
}

} // namespace

int main(int argc, char **argv)
{
    QApplication app(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.value(1) == u"--type-until-killed")
        return typeUntilKilled(arguments[2], arguments[3], arguments[4]);
    TestBegun test;
    return QTest::qExec(&test, argc, argv);
}

#include "tst_begun.moc"
