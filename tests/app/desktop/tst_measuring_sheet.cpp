// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTest>

#include "app/desktop/flows/signing.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/parts/table_dialog.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/on_screen.hpp"
#include "tests/app/desktop/scripted_ask.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

/// The sheet on which something measured is signed: what it works out before anybody signs, and what it refuses.
class TestMeasuringSheet : public QObject {
    Q_OBJECT

private slots:
    void init();
    void cleanup();
    void settingIsShownAndTakenOver();
    void adapterChangesTheSetting();
    void readingsAreJudgedAsTyped();
    void onePassAtATime();
    void leakIsClassedByWhatWasSeen();
    void liftOverItsLimitIsNotSigned();
    void unitTypedWithTheNumber();
    void leadsAreInTheUnitOfTheReading();
    void whatToMindStandsThereFromTheStart_data();
    void whatToMindStandsThereFromTheStart();
    void tableIsThereToBeRead();

private:
    void begin(QLatin1String kind, const char *id = nullptr);
    void type(const QString &field, const QString &text);
    QString working() const { return named<QLabel>(*m_sheet, u"answer"_s)->text() + u'\n' + named<QLabel>(*m_sheet, u"working"_s)->text(); }
    QString problem() const { return named<QLabel>(*m_sheet, u"problem"_s)->text(); }
    QString value(const QString &field) const { return named<QWidget>(*m_sheet, field)->findChild<QLineEdit *>()->text(); }
    /// Signs as Ana; the body of the last entry.
    Object sign();

    std::unique_ptr<Bench> m_bench;
    std::unique_ptr<session::Session> m_session;
    std::unique_ptr<ScriptedAsk> m_ask;
    std::unique_ptr<QWidget> m_window;
    std::unique_ptr<desktop::JobFeed> m_feed;
    desktop::Signing *m_signing = nullptr;
    desktop::SignSheet *m_sheet = nullptr;
};

void TestMeasuringSheet::init()
{
    m_bench = std::make_unique<Bench>();
    QCOMPARE(m_bench->trouble(), QString());
    m_session = m_bench->another();
    QVERIFY(m_session);
    const auto ledger = m_bench->openJob(*m_session, {{u"leak_scheme"_s, u"FAA-H-8083-31 ch. 14"_s},
                                                      {u"leak_classes"_s, core::json::arrayOf({u"stain"_s, u"seep"_s, u"heavy seep"_s, u"running leak"_s})},
                                                      {u"leak_up_to"_s, core::json::arrayOf({u"under 0.75 in"_s, u"under 1.5 in"_s, u"4 in"_s})},
                                                      {u"leak_minutes"_s, 30}});
    QVERIFY2(ledger, qPrintable(m_bench->trouble()));
    const auto say = [&](const QString &kind, const QString &subject, Object body) { QCOMPARE(Bench::say(*m_session, *ledger, u"ana"_s, kind, subject, std::move(body)), QString()); };
    const auto list = [&](const QString &id, Object more) {
        Object body{{u"name"_s, id}, {u"kind"_s, u"duct"_s}, {u"zone"_s, u"Left"_s}, {u"requirements"_s, core::json::arrayOf({u"torque"_s})},
                    {u"torque_min"_s, u"20"_s}, {u"torque_max"_s, u"25"_s}, {u"torque_unit"_s, u"N·m"_s}};
        for (const auto &[name, value] : more.members())
            body.set(name, value);
        say(u"interface.listed"_s, id, std::move(body));
        say(u"interface.disconnected"_s, id, {{u"tag"_s, id}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
        say(u"interface.reconnected"_s, id, {{u"tag_recovered"_s, id}, {u"blanks_removed"_s, 0}});
    };
    list(u"D1"_s, {{u"torque_fasteners"_s, 1}});
    list(u"D2"_s, {{u"torque_fasteners"_s, 3}, {u"torque_passes"_s, core::json::arrayOf({u"50"_s, u"100"_s})}, {u"torque_order"_s, core::json::arrayOf({u"2"_s, u"3"_s, u"1"_s})}});
    list(u"D3"_s, {{u"requirements"_s, core::json::arrayOf({u"leak"_s})}, {u"torque_fasteners"_s, 1}, {u"leak_class"_s, u"seep"_s}});
    list(u"B1"_s, {{u"requirements"_s, core::json::arrayOf({u"bonding"_s})}, {u"torque_fasteners"_s, 1}, {u"bonding_max"_s, u"2.5"_s}, {u"bonding_unit"_s, u"mΩ"_s}});
    QVERIFY(m_session->openJob(*ledger));

    m_ask = std::make_unique<ScriptedAsk>();
    m_window = std::make_unique<QWidget>();
    m_window->show();
    m_feed = std::make_unique<desktop::JobFeed>();
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    m_signing = new desktop::Signing(*m_session, *m_feed, m_bench->kinds(), *m_ask, m_window.get());
}

void TestMeasuringSheet::cleanup()
{
    m_window.reset();
    m_feed.reset();
    m_session.reset();
    m_bench.reset();
}

void TestMeasuringSheet::begin(QLatin1String kind, const char *id)
{
    m_signing->begin(desktop::actionFor(kind), id ? std::vector{item(id)} : std::vector<core::InterfaceId>());
    QTRY_VERIFY((m_sheet = m_window->findChild<desktop::SignSheet *>()) != nullptr);
    type(u"person"_s, u"ana"_s);
}

void TestMeasuringSheet::type(const QString &field, const QString &text)
{
    auto *editor = named<QWidget>(*m_sheet, field);
    auto *line = qobject_cast<QLineEdit *>(editor);
    if (!line)
        line = editor->findChild<QLineEdit *>();
    line->setText(text);
}

Object TestMeasuringSheet::sign()
{
    named<QLineEdit>(*m_sheet, u"secret"_s)->setText(Bench::pinOf(u"ana"_s));
    named<QPushButton>(*m_sheet, u"sign"_s)->click();
    if (!problem().isEmpty())
        qWarning() << problem();
    return m_session->said().back().body;
}

void TestMeasuringSheet::settingIsShownAndTakenOver()
{
    begin("torque.applied"_L1, "D1");
    // The wrench has marks half a newton metre apart, and nobody has typed anything yet.
    QVERIFY2(working().contains(u"Set the wrench to 22.5 N·m."), qPrintable(working()));
    QCOMPARE(value(u"setting"_s), QString());
    named<QPushButton>(*m_sheet, u"offer"_s)->click();
    QCOMPARE(value(u"setting"_s), u"22.5"_s);
    type(u"value"_s, u"22.5"_s);
    const Object body = sign();
    QCOMPARE(body.text(u"setting"), u"22.5 N·m"_s);
    QCOMPARE(body.text(u"value"), u"22.5"_s);
}

/// 22.5 · 320 / 350 = 20.57…: the mark below is 20.5, and 20.5 · 350 / 320 = 22.42… arrives.
void TestMeasuringSheet::adapterChangesTheSetting()
{
    begin("torque.applied"_L1, "D1");
    type(u"value"_s, u"20.5"_s);
    type(u"wrench_length"_s, u"320 mm"_s);
    QVERIFY2(problem().contains(u"three figures"), qPrintable(problem()));
    type(u"extension"_s, u"30 mm"_s);
    type(u"extension_angle"_s, u"0 deg"_s);
    QVERIFY2(problem().contains(u"what it was set to"), qPrintable(problem()));
    QVERIFY2(working().contains(u"Y = T · L / (L + E · cos a)") && working().contains(u"≈ 22.4219 N·m"), qPrintable(working()));
    named<QPushButton>(*m_sheet, u"offer"_s)->click();
    QCOMPARE(value(u"setting"_s), u"20.5"_s);
    QCOMPARE(problem(), QString());
    const Object body = sign();
    QCOMPARE(body.text(u"setting"), u"20.5 N·m"_s);
    QCOMPARE(body.text(u"extension"), u"30 mm"_s);
    QCOMPARE(body.text(u"extension_angle"), u"0 °"_s);
}

void TestMeasuringSheet::readingsAreJudgedAsTyped()
{
    begin("torque.applied"_L1, "D1");
    type(u"value"_s, u"25.1"_s);
    QVERIFY2(problem().contains(u"too much"), qPrintable(problem()));
    QVERIFY2(working().contains(u"too much"), qPrintable(working()));
    type(u"value"_s, u"25"_s);
    QCOMPARE(problem(), QString());
    // 4 % of 25 N·m is 1 N·m: shown as margin, and said that it reaches beyond the edge.
    QVERIFY2(working().contains(u"± 1 N·m") && working().contains(u"beyond the edge"), qPrintable(working()));
    type(u"value"_s, u"19,9"_s);
    QVERIFY(!problem().isEmpty());
    QVERIFY(!named<QPushButton>(*m_sheet, u"sign"_s)->isEnabled());
}

void TestMeasuringSheet::onePassAtATime()
{
    begin("torque.applied"_L1, "D2");
    QCOMPARE(value(u"pass"_s), u"1"_s);
    QVERIFY2(working().contains(u"10 to 12.5 N·m"), qPrintable(working()));
    for (const QString &field : {u"value.0"_s, u"value.1"_s, u"value.2"_s})
        type(field, u"11"_s);
    QCOMPARE(problem(), QString());
    QCOMPARE(sign().integer(u"fastener"), std::optional<qint64>(1)); // the last of the order 2, 3, 1
    QCOMPARE(m_session->state()->item(item("D2"))->torque.size(), 3U);
    m_feed->take(m_session->state(), m_session->said(), m_session->reg());
    QTRY_VERIFY(m_window->findChild<desktop::SignSheet *>() == nullptr);
    m_signing->begin(desktop::actionFor("torque.applied"_L1), {item("D2")});
    QTRY_VERIFY((m_sheet = m_window->findChild<desktop::SignSheet *>()) != nullptr);
    QCOMPARE(value(u"pass"_s), u"2"_s);
    QVERIFY2(working().contains(u"20 to 25 N·m"), qPrintable(working()));
}

/// FAA-H-8083-31 ch. 14: 3/4 to 1 1/2 in is a seep, what drips runs; looked at 30 minutes after wiping dry.
void TestMeasuringSheet::leakIsClassedByWhatWasSeen()
{
    begin("leak.checked"_L1, "D3");
    type(u"how"_s, u"boost pump on"_s);
    type(u"size"_s, u"1 in"_s);
    auto *flow = named<QWidget>(*m_sheet, u"flow"_s)->findChild<QComboBox *>();
    if (!flow)
        flow = named<QComboBox>(*m_sheet, u"flow"_s);
    flow->setCurrentIndex(flow->findData(u"still"_s));
    QVERIFY2(problem().contains(u"30 minutes"), qPrintable(problem()));
    type(u"minutes"_s, u"29"_s);
    QVERIFY2(problem().contains(u"look again"), qPrintable(problem()));
    type(u"minutes"_s, u"30"_s);
    QCOMPARE(problem(), QString());
    QVERIFY2(working().contains(u"\"seep\" is within the limit."), qPrintable(working()));
    flow->setCurrentIndex(flow->findData(u"drips or pools"_s));
    QVERIFY2(problem().contains(u"running leak"), qPrintable(problem()));
    QVERIFY2(working().contains(u"worse than the limit"), qPrintable(working()));
    flow->setCurrentIndex(flow->findData(u"still"_s));
    type(u"class"_s, u"stain"_s);
    QVERIFY2(problem().contains(u"follows from the size"), qPrintable(problem()));
    type(u"class"_s, QString());
    const Object body = sign();
    QCOMPARE(body.text(u"size"), u"1 in"_s);
    QVERIFY(!body.contains(u"class"));
    QCOMPARE(m_session->state()->item(item("D3"))->leak->leakClass, u"seep"_s);
}

void TestMeasuringSheet::liftOverItsLimitIsNotSigned()
{
    begin("lift.planned"_L1);
    const std::pair<const char16_t *, const char16_t *> fields[] = {{u"unit_weight", u"486 kg"}, {u"rigging_weight", u"38 kg"}, {u"hoist", u"HO-2"}, {u"hoist_limit", u"500 kg"},
                                                                   {u"hoist_due", u"2099-01-01"}, {u"sling", u"SL-7"}, {u"sling_limit", u"400 kg"}, {u"sling_due", u"2099-01-01"},
                                                                   {u"points", u"2"}, {u"legs", u"2"}, {u"angle_from_horizontal", u"60 °"}, {u"span", u"1200 mm"}, {u"centre", u"540 mm"}, {u"reference", u"71-00"}};
    auto *unit = named<QWidget>(*m_sheet, u"unit"_s)->findChild<QComboBox *>();
    unit->setCurrentIndex(unit->findData(u"outgoing"_s));
    for (const auto &[field, text] : fields)
        type(QString::fromUtf16(field), QString::fromUtf16(text));
    QVERIFY2(problem().contains(u"524 kg"), qPrintable(problem()));
    named<QLineEdit>(*m_sheet, u"secret"_s)->setText(Bench::pinOf(u"ana"_s));
    QVERIFY(!named<QPushButton>(*m_sheet, u"sign"_s)->isEnabled());
    type(u"hoist_limit"_s, u"1000 kg"_s);
    QCOMPARE(problem(), QString());
    QCOMPARE(sign().text(u"hoist_limit"), u"1000 kg"_s);
    QCOMPARE(m_session->state()->figures.size(), 1U);
}

/// A number alone is not taken; the unit may be chosen in its box or typed behind the number.
void TestMeasuringSheet::unitTypedWithTheNumber()
{
    begin("torque.applied"_L1, "D1");
    type(u"value"_s, u"22.5"_s);
    type(u"prevailing"_s, u"8"_s);
    QVERIFY2(problem().contains(u"has no unit"), qPrintable(problem()));
    auto *unit = named<QWidget>(*m_sheet, u"prevailing"_s)->findChild<QComboBox *>();
    QCOMPARE(unit->currentData().toString(), QString());
    unit->setCurrentIndex(unit->findData(u"lbf·in"_s));
    QCOMPARE(problem(), QString());
    type(u"prevailing"_s, u"0.9 N.m"_s);
    QCOMPARE(value(u"prevailing"_s), u"0.9"_s);
    QCOMPARE(unit->currentData().toString(), u"N·m"_s);
    QCOMPARE(sign().text(u"prevailing"), u"0.9 N·m"_s);
}

/// One meter shows both. What is signed has number and unit, and says so before anybody signs.
void TestMeasuringSheet::leadsAreInTheUnitOfTheReading()
{
    begin("bonding.measured"_L1, "B1");
    type(u"value"_s, u"1.5"_s);
    type(u"lead_zero"_s, u"0.2"_s);
    auto *unit = named<QWidget>(*m_sheet, u"lead_zero"_s)->findChild<QComboBox *>();
    QCOMPARE(unit->currentData().toString(), u"mΩ"_s);
    const auto words = [this] { return named<QListWidget>(*m_sheet, u"words"_s)->item(0)->text(); };
    QVERIFY2(words().contains(u"0.2 mΩ"), qPrintable(words()));
    QCOMPARE(problem(), QString());
    // It goes with the reading's unit ...
    auto *reading = named<QWidget>(*m_sheet, u"unit"_s)->findChild<QComboBox *>();
    reading->setCurrentIndex(reading->findData(u"Ω"_s));
    QVERIFY2(words().contains(u"0.2 Ω"), qPrintable(words()));
    reading->setCurrentIndex(reading->findData(u"mΩ"_s));
    // ... until somebody says another one.
    type(u"lead_zero"_s, u"0.0002 ohm"_s);
    QVERIFY2(words().contains(u"0.0002 Ω"), qPrintable(words()));
    reading->setCurrentIndex(reading->findData(u"Ω"_s));
    reading->setCurrentIndex(reading->findData(u"mΩ"_s));
    QVERIFY2(words().contains(u"0.0002 Ω"), qPrintable(words()));
    type(u"lead_zero"_s, u"0.2 mohm"_s);
    QCOMPARE(sign().text(u"lead_zero"), u"0.2 mΩ"_s);
}

void TestMeasuringSheet::whatToMindStandsThereFromTheStart_data()
{
    QTest::addColumn<QString>("kind");
    QTest::addColumn<QString>("words");
    QTest::newRow("a wrench slips") << u"torque.applied"_s << u"pull, with a firm stand"_s;
    QTest::newRow("a load falls") << u"lift.planned"_s << u"under the load"_s;
    QTest::newRow("fuel burns") << u"servicing.recorded"_s << u"fire cover"_s;
}

void TestMeasuringSheet::whatToMindStandsThereFromTheStart()
{
    QFETCH(QString, kind);
    QFETCH(QString, words);
    const QByteArray name = kind.toLatin1();
    begin(QLatin1String(name), kind == u"torque.applied" ? "D1" : nullptr);
    QStringList cautions;
    for (const QLabel *label : m_sheet->findChildren<QLabel *>()) {
        if (label->property("role") == u"caution"_s && label->isVisible())
            cautions << label->text();
    }
    QVERIFY2(cautions.join(u' ').contains(words), qPrintable(cautions.join(u' ')));
}

/// Table 7-2 of AC 43.13-1B (9/8/98) stands beside the drag of a nut. What is signed was read at the nut, so nothing is taken over.
void TestMeasuringSheet::tableIsThereToBeRead()
{
    begin("torque.applied"_L1, "D1");
    named<QPushButton>(*m_sheet, u"table.prevailing"_s)->click();
    auto *dialog = m_window->findChild<desktop::TableDialog *>();
    QVERIFY(dialog);
    auto *rows = named<desktop::RowTable>(*dialog, u"lookUp"_s);
    QVERIFY(!rows->model().rows().empty());
    rows->choose(rows->model().rows().front().key);
    QVERIFY(named<QLabel>(*dialog, u"detail"_s)->text().contains(u"table 7-2"));
    for (const QPushButton *button : dialog->findChildren<QPushButton *>())
        QVERIFY2(!button->objectName().startsWith(u"take."_s), qPrintable(button->objectName()));
    dialog->close();
    QCOMPARE(value(u"prevailing"_s), QString());
}

QTEST_MAIN(TestMeasuringSheet)
#include "tst_measuring_sheet.moc"
