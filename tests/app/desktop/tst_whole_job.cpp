// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QCheckBox>
#include <QComboBox>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <algorithm>

#include "app/desktop/flows/import_dialog.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/parts/field_editor.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    auto *found = in.findChild<Widget *>(QString::fromLatin1(name));
    if (!found)
        qFatal("no widget %s", name);
    return found;
}

void type(QWidget &in, const char *field, const QString &text)
{
    auto *editor = named<QWidget>(in, field);
    auto *line = qobject_cast<QLineEdit *>(editor);
    if (!line)
        line = editor->findChild<QLineEdit *>();
    line->clear();
    QTest::keyClicks(line, text);
}

void pick(QWidget &in, const char *field, const QString &value)
{
    auto *box = named<QWidget>(in, field)->findChild<QComboBox *>();
    box->setCurrentIndex(box->findData(value));
}

} // namespace

/// One small job from its opening to its closure, with mouse and keys on the real widgets, by a technician, an inspector and
/// the one who releases; and what must hold on the way.
class TstWholeJob : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void fromImportToClosure();
    void refusedActionShowsItsReason();
    void wrongPinSignsNothing();
    void returnWithoutPinSignsNothing();
    void lockAsksForBoth();
    void anotherProgramsEntryAppears();
    void photoIsShownOnTheCard();
    void strikeTakesBack();
    void shiftIsHandedOver();
    void findingIsRaisedAndDisposedOf();
    void newPersonSignsWithTheirOwnPin();
    void newKeySaysSinceWhenTheOldOneIsInDoubt();
    void faultyListIsNotTaken();

private:
    desktop::SignSheet *sheet() const { return m_window->findChild<desktop::SignSheet *>(); }
    /// Fills in who and PIN and presses Return. The problem that is shown; empty when it was signed.
    QString sign(const QString &person, const QString &pin = {});
    QString choose(const QStringList &items);
    void press(const QWidget &in, const char *button) { QTest::mouseClick(named<QPushButton>(in, button), Qt::LeftButton); }
    QWidget &page(const char *name) const { return *named<desktop::Page>(*m_window, name); }
    void go(const char *name) { m_window->findChild<desktop::JobPlace *>()->showPage(QString::fromLatin1(name)); }
    QString stages() const;
    /// Opens the job and takes the list without the screen, for what is not about that.
    void startWithList();
    bool isShownAnywhere(const QString &text) const;

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
};

void TstWholeJob::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<desktop::MainWindow>(*m_ask, m_bench->kinds(), desktop::SessionMaker{m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->show();
}

void TstWholeJob::cleanup()
{
    m_window.reset();
    m_ask.reset();
    m_bench.reset();
}

QString TstWholeJob::sign(const QString &person, const QString &pin)
{
    if (!QTest::qWaitFor([this] { return sheet() != nullptr; }))
        return u"no sheet"_s;
    desktop::SignSheet &here = *sheet();
    auto *who = named<desktop::PersonField>(here, "person");
    if (!who->isVisible() && here.property("signer").toString() != person)
        QTest::mouseClick(named<QPushButton>(here, "somebodyElse"), Qt::LeftButton);
    if (who->isVisible())
        type(here, "person", person);
    auto *secret = named<QLineEdit>(here, "secret");
    QTest::keyClicks(secret, pin.isEmpty() ? Bench::pinOf(person) : pin);
    if (isShownAnywhere(secret->text()))
        return u"the PIN is shown"_s;
    QTest::keyClick(secret, Qt::Key_Return);
    const QString problem = named<QLabel>(here, "problem")->text();
    if (!problem.isEmpty() || here.isVisible())
        return problem.isEmpty() ? u"still open: "_s + named<QLabel>(here, "signer")->text() : problem;
    return QTest::qWaitFor([this] { return sheet() == nullptr; }) ? QString() : u"sheet stays"_s;
}

bool TstWholeJob::isShownAnywhere(const QString &text) const
{
    for (const QLabel *label : m_window->findChildren<QLabel *>()) {
        if (label->text().contains(text))
            return true;
    }
    for (const QLineEdit *line : m_window->findChildren<QLineEdit *>()) {
        if (line->displayText().contains(text))
            return true;
    }
    for (const QListWidget *list : m_window->findChildren<QListWidget *>()) {
        for (int row = 0; row < list->count(); ++row) {
            if (list->item(row)->text().contains(text))
                return true;
        }
    }
    return false;
}

QString TstWholeJob::choose(const QStringList &items)
{
    go("list");
    auto *table = named<QTableView>(page("list"), "interfaces");
    table->clearSelection();
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        const QModelIndex at = table->model()->index(row, 0);
        if (items.contains(at.data(desktop::InterfaceModel::ItemRole).toString()))
            table->selectionModel()->select(at, QItemSelectionModel::Select | QItemSelectionModel::Rows);
    }
    return QString::number(table->selectionModel()->selectedRows().size());
}

QString TstWholeJob::stages() const
{
    QStringList words;
    const auto *table = named<QTableView>(page("list"), "interfaces");
    for (int row = 0; row < table->model()->rowCount(); ++row) {
        const QModelIndex at = table->model()->index(row, 0);
        words << at.data(desktop::InterfaceModel::ItemRole).toString() + u' ' + at.data().toString().toLower();
    }
    return words.join(u", "_s);
}

void TstWholeJob::startWithList()
{
    const auto other = m_bench->another();
    QVERIFY(other);
    const auto ledger = m_bench->openJob(*other);
    QVERIFY2(ledger, qPrintable(m_bench->trouble()));
    m_window->openStore(m_bench->path());
    m_window->openJob(*ledger);
    m_ask->openPath = m_bench->file(u"list.csv"_s, benchList());
    press(page("list"), "import");
    press(*m_window->findChild<desktop::ImportDialog *>(), "take");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(stages(), u"D1 connected, C1 connected, B1 connected, F1 connected"_s);
}

void TstWholeJob::fromImportToClosure()
{
    m_window->openStore(m_bench->path());
    QCOMPARE(m_ask->told, QStringList());

    // The lead opens the job.
    press(*m_window, "newJob");
    QTRY_VERIFY(sheet());
    const std::pair<const char *, const char *> texts[] = {{"title", "Engine change"}, {"work_order", "WO-9"}, {"aircraft", "Freighter 07"}, {"aircraft_type", "Ostrel 40F"}, {"maintenance_data", "MM 71"}, {"revision", "14"}, {"unit", "Engine 1"}, {"outgoing_serial", "K-1"}, {"incoming_serial", "K-2"}};
    for (const auto &[field, text] : texts)
        type(*sheet(), field, QString::fromLatin1(text));
    pick(*sheet(), "lead", u"ana"_s);
    named<QWidget>(*sheet(), "crew")->findChild<QListWidget *>()->item(0)->setCheckState(Qt::Checked);
    named<QPlainTextEdit>(*sheet(), "zones")->setPlainText(u"Left: ana\nRight"_s);
    QVERIFY(named<QCheckBox>(*sheet(), "standardHolds")->isChecked());
    named<QCheckBox>(*sheet(), "standardHolds")->click(); // a short job, without gates
    QCOMPARE(sign(u"ana"_s), QString());

    // They take the list.
    m_ask->openPath = m_bench->file(u"list.csv"_s, benchList());
    press(page("list"), "import");
    press(*m_window->findChild<desktop::ImportDialog *>(), "take");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(stages(), u"D1 connected, C1 connected, B1 connected, F1 connected"_s);

    // The technician disconnects all four with one signature, by key: choose, D, PIN, Return.
    QCOMPARE(choose({u"D1"_s, u"C1"_s, u"B1"_s, u"F1"_s}), u"4"_s);
    QTest::keyClick(named<QTableView>(page("list"), "interfaces"), Qt::Key_D);
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(stages(), u"D1 disconnected, C1 disconnected, B1 disconnected, F1 disconnected"_s);
    QCOMPARE(named<QTableView>(page("list"), "interfaces")->model()->index(3, desktop::InterfaceModel::Tag).data().toString(), u"4"_s);

    // And reconnects them, with what must be read and renewed.
    QTest::keyClick(named<QTableView>(page("list"), "interfaces"), Qt::Key_R);
    QTRY_VERIFY(sheet());
    for (int i = 0; i < 4; ++i) // each tag in the hand is read; none is filled in beforehand
        type(*sheet(), qPrintable(u"tag_recovered.%1"_s.arg(i)), QString::number(i + 1));
    type(*sheet(), "aircraft_half.1", u"P101"_s);
    type(*sheet(), "unit_half.1", u"J101"_s);
    type(*sheet(), "seal_batch.3", u"B-77"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(stages(), u"D1 reconnected, C1 secured, B1 reconnected, F1 reconnected"_s);

    choose({u"D1"_s});
    press(page("list"), "torque.applied");
    QTRY_VERIFY(sheet());
    type(*sheet(), "value.0", u"22"_s);
    type(*sheet(), "value.1", u"23.5"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    choose({u"B1"_s});
    press(page("list"), "bonding.measured");
    QTRY_VERIFY(sheet());
    type(*sheet(), "value", u"1.2"_s);
    type(*sheet(), "lead_zero", u"0.02 mohm"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    choose({u"F1"_s});
    press(page("list"), "safetying.applied");
    QCOMPARE(sign(u"ana"_s), QString());
    QCOMPARE(stages(), u"D1 secured, C1 secured, B1 secured, F1 secured"_s);

    // Whoever did it may not inspect it, and is told so.
    choose({u"D1"_s});
    QVERIFY(!named<QPushButton>(page("list"), "inspection.accepted")->isEnabled());

    // The inspector, item by item, by key.
    m_window->findChild<QPushButton *>(u"lock"_s)->click();
    go("inspect");
    for (int left = 4; left > 0; --left) {
        auto *queue = named<desktop::RowTable>(page("inspect"), "queue");
        QCOMPARE(queue->model().rowCount(), left);
        QTest::keyClick(&queue->view(), Qt::Key_A);
        QCOMPARE(sign(u"cho"_s), QString());
    }
    QCOMPARE(stages(), u"D1 inspected, C1 inspected, B1 inspected, F1 inspected"_s);

    // The release.
    m_window->findChild<QPushButton *>(u"lock"_s)->click();
    go("loose-ends");
    QCOMPARE(named<desktop::RowTable>(page("loose-ends"), "looseEnds")->model().rowCount(), 0);
    press(page("loose-ends"), "job.closed");
    QCOMPARE(sign(u"dara"_s), QString());
    QCOMPARE(named<QPushButton>(*m_window, "looseCount")->text(), u"Closed"_s);

    // The record holds together.
    go("record");
    press(page("record"), "verify");
    QVERIFY2(named<QLabel>(page("record"), "verdict")->text().startsWith(u'✓'), qPrintable(named<QLabel>(page("record"), "verdict")->text()));
    m_ask->savePath = m_bench->file(u"record.pdf"_s, {});
    press(page("record"), "exportRecord");
    QCOMPARE(m_ask->told.size(), 1);
    QVERIFY2(m_ask->told.front().startsWith(u"The record was exported"_s), qPrintable(m_ask->told.front()));
}

void TstWholeJob::refusedActionShowsItsReason()
{
    startWithList();
    choose({u"D1"_s});
    QVERIFY(!named<QPushButton>(page("list"), "interface.reconnected")->isEnabled());
    auto *reason = named<QLabel>(page("list"), "interface.reconnected.reason");
    QVERIFY(reason->isVisible());
    QVERIFY2(reason->text().contains(u"D1"_s), qPrintable(reason->text()));
}

void TstWholeJob::wrongPinSignsNothing()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "interface.disconnected");
    QVERIFY(!sign(u"ana"_s, u"not-the-pin"_s).isEmpty());
    QCOMPARE(named<QLineEdit>(*sheet(), "secret")->text(), QString());
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(stages().startsWith(u"D1 disconnected"_s));
}

/// A scanner ends its burst with Return.
void TstWholeJob::returnWithoutPinSignsNothing()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "interface.disconnected");
    QTRY_VERIFY(sheet());
    QTest::keyClick(named<QWidget>(*sheet(), "tag")->findChild<QLineEdit *>(), Qt::Key_Return);
    QTest::keyClick(named<QLineEdit>(*sheet(), "secret"), Qt::Key_Return);
    QTest::keyClick(sheet(), Qt::Key_Return);
    QVERIFY(sheet());
    QVERIFY(sheet()->isVisible());
    QVERIFY(stages().startsWith(u"D1 connected"_s));
}

void TstWholeJob::lockAsksForBoth()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "interface.disconnected");
    QTRY_VERIFY(sheet());
    QVERIFY(!named<desktop::PersonField>(*sheet(), "person")->isVisible());
    sheet()->reject();
    QTRY_VERIFY(!sheet());
    m_window->findChild<QPushButton *>(u"lock"_s)->click();
    press(page("list"), "interface.disconnected");
    QTRY_VERIFY(sheet());
    QVERIFY(named<desktop::PersonField>(*sheet(), "person")->isVisible());
}

void TstWholeJob::anotherProgramsEntryAppears()
{
    startWithList();
    const auto other = m_bench->another();
    QVERIFY(other);
    const auto jobs = other->jobs();
    QVERIFY(jobs);
    const core::LedgerId ledger = jobs->front().ledger;
    QVERIFY(other->openJob(ledger));
    choose({u"C1"_s});
    QCOMPARE(Bench::say(*other, ledger, u"ben"_s, u"interface.disconnected"_s, u"D1"_s, {{u"tag"_s, u"40"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}}), QString());
    QTRY_VERIFY(stages().startsWith(u"D1 disconnected"_s));
    // What was chosen stays chosen.
    QCOMPARE(named<QTableView>(page("list"), "interfaces")->selectionModel()->selectedRows().size(), 1);
}

void TstWholeJob::faultyListIsNotTaken()
{
    const auto other = m_bench->another();
    QVERIFY(other);
    const auto ledger = m_bench->openJob(*other);
    QVERIFY(ledger);
    m_window->openStore(m_bench->path());
    m_window->openJob(*ledger);
    QByteArray list = benchList();
    list.replace("duct,Left", "duct,Nowhere");
    list.replace("harness_connector", "no_such_kind");
    m_ask->openPath = m_bench->file(u"list.csv"_s, list);
    press(page("list"), "import");
    auto *dialog = m_window->findChild<desktop::ImportDialog *>();
    auto *faults = named<desktop::RowTable>(*dialog, "faults");
    QCOMPARE(faults->model().rowCount(), 2);
    QCOMPARE(faults->model().index(0, 0).data().toString(), u"2"_s);
    QCOMPARE(faults->model().index(1, 0).data().toString(), u"3"_s);
    QVERIFY(!dialog->findChild<QPushButton *>(u"take"_s));
    dialog->close();
    QCOMPARE(stages(), QString());
}

void TstWholeJob::photoIsShownOnTheCard()
{
    startWithList();
    QImage picture(40, 30, QImage::Format_RGB32);
    picture.fill(Qt::darkGreen);
    m_ask->openPath = m_bench->file(u"before.png"_s, {});
    QVERIFY(picture.save(*m_ask->openPath));
    choose({u"D1"_s});
    press(page("list"), "photo.attached");
    QTRY_VERIFY(sheet());
    press(*sheet(), "choosePhoto");
    QCOMPARE(sign(u"ana"_s), QString());
    const auto labels = page("list").findChildren<QLabel *>();
    QVERIFY(std::any_of(labels.begin(), labels.end(), [](const QLabel *label) { return !label->pixmap().isNull() && !label->isHidden(); }));
    // A file that is no picture is told, and cannot be signed.
    m_ask->openPath = m_bench->file(u"words.png"_s, "no picture");
    press(page("list"), "photo.attached");
    QTRY_VERIFY(sheet());
    press(*sheet(), "choosePhoto");
    QVERIFY(named<QLabel>(*sheet(), "photoProblem")->text().contains(u"words.png"));
    QVERIFY(!named<QPushButton>(*sheet(), "sign")->isEnabled());
}

void TstWholeJob::strikeTakesBack()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "interface.disconnected");
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(stages().startsWith(u"D1 disconnected"_s));
    go("record");
    auto *entries = named<desktop::RowTable>(page("record"), "entries");
    const QString newest = entries->model().rows().front().key;
    entries->choose(newest);
    press(page("record"), "entry.struck");
    QTRY_VERIFY(sheet());
    type(*sheet(), "reason", u"wrong item"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    QVERIFY(stages().startsWith(u"D1 connected"_s));
    QVERIFY(entries->model().rows()[1].isStruck);
    QVERIFY(entries->model().rows()[1].cells[3].contains(u"D1"_s));
}

void TstWholeJob::shiftIsHandedOver()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "interface.disconnected");
    QCOMPARE(sign(u"ana"_s), QString());
    go("handover");
    press(page("handover"), "handover.given");
    QTRY_VERIFY(sheet());
    pick(*sheet(), "to", u"ben"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    // Whoever gave it cannot accept it.
    QVERIFY(!named<QPushButton>(page("handover"), "handover.accepted")->isEnabled());
    m_window->findChild<QPushButton *>(u"lock"_s)->click();
    press(page("handover"), "handover.accepted");
    QCOMPARE(sign(u"ben"_s), QString());
    QVERIFY(!named<QPushButton>(page("handover"), "handover.accepted")->isEnabled());
}

void TstWholeJob::findingIsRaisedAndDisposedOf()
{
    startWithList();
    choose({u"D1"_s});
    press(page("list"), "finding.raised");
    QTRY_VERIFY(sheet());
    type(*sheet(), "description", u"chafed"_s);
    QCOMPARE(sign(u"ana"_s), QString());
    m_window->findChild<QPushButton *>(u"lock"_s)->click();
    go("findings");
    auto *findings = named<desktop::RowTable>(page("findings"), "findings");
    QCOMPARE(findings->model().rowCount(), 1);
    QCOMPARE(findings->model().rows().front().cells[1], u"open"_s);
    findings->choose(u"F1"_s);
    press(page("findings"), "finding.closed");
    QTRY_VERIFY(sheet());
    type(*sheet(), "authority", u"MM 20-10"_s);
    QCOMPARE(sign(u"cho"_s), QString());
    QCOMPARE(findings->model().rows().front().cells[1], u"closed"_s);
}

void TstWholeJob::newPersonSignsWithTheirOwnPin()
{
    m_window->openStore(m_bench->path());
    press(*m_window, "peopleAndTools");
    press(*m_window, "enrol");
    QTRY_VERIFY(sheet());
    type(*sheet(), "newId", u"eva"_s);
    type(*sheet(), "newName", u"Eva Roth"_s);
    type(*sheet(), "newIdentity", u"passport"_s);
    type(*sheet(), "newSecret", Bench::pinOf(u"eva"_s));
    type(*sheet(), "newSecretAgain", u"something else"_s);
    QVERIFY(!sign(u"ana"_s).isEmpty());
    type(*sheet(), "newSecretAgain", Bench::pinOf(u"eva"_s));
    named<QLineEdit>(*sheet(), "secret")->clear();
    QCOMPARE(sign(u"ana"_s), QString());
    auto *people = named<desktop::RowTable>(*m_window, "people");
    QVERIFY(people->model().rowOf(u"eva"_s) >= 0);
    const auto other = m_bench->another();
    QVERIFY(other->unlock({*core::PersonId::parse(u"eva"), Bench::pinOf(u"eva"_s)}));
}

void TstWholeJob::newKeySaysSinceWhenTheOldOneIsInDoubt()
{
    constexpr qint64 hour = 3'600'000;
    const core::Instant now = m_bench->clock()();
    const core::Instant before = core::Instant::fromMilliseconds(now.milliseconds() - hour);
    m_window->openStore(m_bench->path());
    press(*m_window, "peopleAndTools");
    press(*m_window, "newKey");
    QTRY_VERIFY(sheet());
    type(*sheet(), "whom", u"ben"_s);
    type(*sheet(), "reason", u"PIN seen by others"_s);
    for (const char *field : {"newSecret", "newSecretAgain"})
        type(*sheet(), field, u"another-secret"_s);
    for (const QString &refused : {u"yesterday"_s, core::Instant::fromMilliseconds(now.milliseconds() + hour).text()}) {
        type(*sheet(), "since", refused);
        QVERIFY2(!sign(u"ana"_s).isEmpty(), qPrintable(refused));
        named<QLineEdit>(*sheet(), "secret")->clear();
    }
    type(*sheet(), "since", before.text());
    QVERIFY(isShownAnywhere(u"in doubt"_s));
    QCOMPARE(sign(u"ana"_s), QString());
    const auto other = m_bench->another();
    const core::Person *ben = other->reg().person(*core::PersonId::parse(u"ben"));
    QVERIFY(ben && ben->keyDoubts.size() == 1u);
    QCOMPARE(ben->keyDoubts.front().since, before);
}

QTEST_MAIN(TstWholeJob)
#include "tst_whole_job.moc"
