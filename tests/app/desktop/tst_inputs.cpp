// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QRegularExpression>
#include <QTest>
#include <QWindow>

#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::arrayOf;
using core::json::Object;

namespace {

constexpr int digitsOfPin = 6; // as the manual counts

/// A row of the manual's table: what is pressed, and how many presses that is.
struct Row {
    QString act;
    QStringList inputs;
    int number = 0;
};

std::vector<Row> rowsOfManual()
{
    QFile file(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/manual/inputs.md"_s);
    if (!file.open(QIODevice::ReadOnly))
        return {};
    static const QRegularExpression line(u"^\\| (.+?) \\| (`.+`) \\| (\\d+) \\|$"_s);
    static const QRegularExpression input(u"`([^`]+)`"_s);
    std::vector<Row> rows;
    for (const QString &text : QString::fromUtf8(file.readAll()).split(u'\n')) {
        const auto match = line.match(text);
        if (!match.hasMatch())
            continue;
        Row row{match.captured(1), {}, match.captured(3).toInt()};
        for (auto each = input.globalMatch(match.captured(2)); each.hasNext();)
            row.inputs << each.next().captured(1);
        rows.push_back(row);
    }
    return rows;
}

/// What stood in the job before, told by other programs, and what is in it afterwards.
struct Story {
    const char *act; ///< as the manual's table says it
    const char *signs;
    const char *kind; ///< of the last entry afterwards
    int entries;
};
constexpr Story stories[] = {
    {"Undo one", "ana", "interface.disconnected", 1},
    {"Undo three, one signature", "ana", "interface.disconnected", 3},
    {"Put one back", "ana", "interface.reconnected", 1},
    {"Torque", "ana", "torque.applied", 1},
    {"Safetying", "ana", "safetying.applied", 1},
    {"Accept what was put back", "cho", "inspection.accepted", 1},
    {"Reject it", "cho", "inspection.rejected", 1},
    {"Say that it was disturbed", "ana", "interface.disturbed", 1},
    {"Raise a finding", "ana", "finding.raised", 1},
    {"Log what is not on the list", "ana", "interface.unlisted", 1},
};

} // namespace

/// How many keys the commonest acts take from the list to the signature: counted in the real window, from the manual's own table.
class TstInputs : public QObject {
    Q_OBJECT

private slots:
    void manualTellsOfAll();
    void asManyAsTheManualSays_data();
    void asManyAsTheManualSays();

private:
    void prepare(const QString &act);
    void say(const QString &who, const QString &kind, const QString &subject, Object body)
    {
        QCOMPARE(Bench::say(*m_other, *m_ledger, who, kind, subject, std::move(body)), QString());
    }
    void undo(const QString &id, const QString &tag) { say(u"ana"_s, u"interface.disconnected"_s, id, {{u"tag"_s, tag}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}}); }
    void putBack(const QString &id, const QString &tag) { say(u"ana"_s, u"interface.reconnected"_s, id, {{u"tag_recovered"_s, tag}, {u"blanks_removed"_s, 0}}); }
    /// How many presses it was.
    int press(const QString &input, const QString &signer);
    std::size_t entries();
    QString lastKind();

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_other;
    std::optional<core::LedgerId> m_ledger;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<desktop::MainWindow> m_window;
};

void TstInputs::manualTellsOfAll()
{
    const auto rows = rowsOfManual();
    QCOMPARE(rows.size(), std::size(stories));
    for (const Story &story : stories)
        QVERIFY2(std::any_of(rows.begin(), rows.end(), [&](const Row &row) { return row.act == QLatin1String(story.act); }), story.act);
}

void TstInputs::prepare(const QString &act)
{
    const auto list = [&](const QString &id, const QString &kind, Object more) {
        Object body{{u"name"_s, kind + u" "_s + id}, {u"kind"_s, kind}, {u"zone"_s, u"Left"_s}};
        for (const auto &[name, value] : more.members())
            body.set(name, value);
        say(u"ana"_s, u"interface.listed"_s, id, std::move(body));
    };
    for (const QString &id : {u"D1"_s, u"D2"_s, u"D3"_s})
        list(id, u"drain"_s, {});
    list(u"T1"_s, u"clamp"_s, {{u"requirements"_s, arrayOf({u"torque"_s})}, {u"torque_fasteners"_s, 1}, {u"torque_min"_s, u"20"_s}, {u"torque_max"_s, u"25"_s}, {u"torque_unit"_s, u"N·m"_s}});
    list(u"S1"_s, u"clamp"_s, {{u"requirements"_s, arrayOf({u"safetying"_s})}, {u"safetying"_s, u"lockwire"_s}});
    const QString id = act == u"Torque" ? u"T1"_s : act == u"Safetying" ? u"S1"_s : u"D1"_s;
    if (act.startsWith(u"Undo"))
        return;
    undo(id, u"4021"_s);
    if (act != u"Put one back")
        putBack(id, u"4021"_s);
}

int TstInputs::press(const QString &input, const QString &signer)
{
    QWindow *window = m_window->windowHandle();
    if (auto *sheet = m_window->findChild<desktop::SignSheet *>()) {
        QTest::qWait(1); // it chooses its first field by itself
        window = sheet->windowHandle();
    }
    const auto press = [&](const QString &text) {
        for (const QChar c : text)
            QTest::keyClick(window, c.toLatin1(), c.isUpper() ? Qt::ShiftModifier : Qt::NoModifier);
    };
    const auto type = [&](const QString &text) {
        press(text);
        QTest::qWait(50); // a scanner would have gone on by now
    };
    static const QRegularExpression scanned(u"^scan (\\w+)$"_s);
    if (const auto match = scanned.match(input); match.hasMatch()) {
        press(u"remate:WO-1/"_s + match.captured(1));
        QTest::keyClick(window, Qt::Key_Return);
        QTest::qWait(50);
        return 1;
    }
    static const QHash<QString, std::pair<Qt::Key, Qt::KeyboardModifiers>> keys = {
        {u"Return"_s, {Qt::Key_Return, Qt::NoModifier}}, {u"Tab"_s, {Qt::Key_Tab, Qt::NoModifier}}, {u"Down"_s, {Qt::Key_Down, Qt::NoModifier}},
        {u"Space"_s, {Qt::Key_Space, Qt::NoModifier}},   {u"Shift+Down"_s, {Qt::Key_Down, Qt::ShiftModifier}}, {u"Alt+P"_s, {Qt::Key_P, Qt::AltModifier}},
    };
    if (const auto key = keys.constFind(input); key != keys.constEnd()) {
        QTest::keyClick(window, key->first, key->second);
        QTest::qWait(1);
        return 1;
    }
    if (input == u"PIN") {
        type(Bench::pinOf(signer));
        return digitsOfPin;
    }
    type(input.size() == 1 ? input.toLower() : input); // a key is called by its capital
    return static_cast<int>(input.size());
}

std::size_t TstInputs::entries()
{
    if (!m_other->refresh() || !m_other->openJob(*m_ledger))
        return 0;
    return m_other->state()->said.size();
}

QString TstInputs::lastKind() { return m_other->state()->said.back().kind; }

void TstInputs::asManyAsTheManualSays_data()
{
    QTest::addColumn<int>("row");
    const auto rows = rowsOfManual();
    for (std::size_t i = 0; i < rows.size(); ++i)
        QTest::newRow(qPrintable(rows[i].act)) << static_cast<int>(i);
}

void TstInputs::asManyAsTheManualSays()
{
    QFETCH(int, row);
    const Row said = rowsOfManual()[static_cast<std::size_t>(row)];
    const auto story = std::find_if(std::begin(stories), std::end(stories), [&](const Story &one) { return said.act == QLatin1String(one.act); });
    QVERIFY(story != std::end(stories));
    const QString signer = QString::fromLatin1(story->signs);

    m_window.reset();
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_other = m_bench->another();
    QVERIFY(m_other);
    m_ledger = m_bench->openJob(*m_other);
    QVERIFY2(m_ledger, qPrintable(m_bench->trouble()));
    prepare(said.act);
    if (QTest::currentTestFailed())
        return;
    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<desktop::MainWindow>(*m_ask, m_bench->kinds(), desktop::SessionMaker{m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->show();
    m_window->openStore(m_bench->path());
    m_window->openJob(*m_ledger);
    m_window->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    m_window->findChild<desktop::JobPlace *>()->showPage(u"list"_s);
    for (const QString &input : {u"F"_s, u"chafed"_s, u"Return"_s, signer, u"Return"_s, u"PIN"_s, u"Return"_s}) // so that they are signed on
        press(input, signer);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_window->activateWindow(); // a window manager does so when a sheet closes
    QVERIFY(QTest::qWaitForWindowActive(m_window.get()));
    const std::size_t before = entries();

    int pressed = 0;
    QStringList trail;
    for (const QString &input : said.inputs) {
        pressed += press(input, signer);
        const QWidget *focus = QApplication::focusWidget();
        trail << input + u" → "_s + (focus ? focus->accessibleName() + u'/' + focus->objectName() : QString());
    }
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto *open = m_window->findChild<desktop::SignSheet *>();
    const QString why = open ? u"The sheet is still open: "_s + open->findChild<QLabel *>(u"problem"_s)->text() + u'\n' + trail.join(u'\n') : QString();
    QCOMPARE(why, QString());
    QVERIFY2(entries() == before + static_cast<std::size_t>(story->entries), qPrintable(trail.join(u'\n')));
    QCOMPARE(lastKind(), QString::fromLatin1(story->kind));
    QCOMPARE(pressed, said.number);
}

QTEST_MAIN(TstInputs)
#include "tst_inputs.moc"
