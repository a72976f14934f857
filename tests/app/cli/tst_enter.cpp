// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

namespace {

/// On the demo's job in its second shift: D6 was joined by novak and waits for its torque of 3.0 to 4.0 N·m.
constexpr const char *goodTorque = R"({"author":"novak","kind":"torque.applied","subject":"D6","body":{"fastener":1,"value":"3.5","unit":"N·m","tool":"TW-11"}})";
constexpr const char *tooMuch = R"({"author":"novak","kind":"torque.applied","subject":"D6","body":{"fastener":1,"value":"4.1","unit":"N·m","tool":"TW-11"}})";
constexpr const char *overdueTool = R"({"author":"novak","kind":"torque.applied","subject":"D6","body":{"fastener":1,"value":"3.5","unit":"N·m","tool":"TW-09"}})";
constexpr const char *ownWork = R"({"author":"novak","kind":"inspection.accepted","subject":"D6"})";
constexpr const char *inspection = R"({"author":"dufour","kind":"inspection.accepted","subject":"D6"})";
constexpr const char *closure = R"({"author":"castellan","kind":"job.closed","body":{"statement":"Done."}})";

QByteArray lines(std::initializer_list<const char *> list)
{
    QByteArray bytes;
    for (const char *line : list)
        bytes += QByteArray(line) + '\n';
    return bytes;
}

QStringList rulesIn(const core::json::Object &answer)
{
    QStringList rules;
    const core::json::Value *list = answer.find(u"lines");
    for (const core::json::Value &line : list && list->array() ? *list->array() : core::json::Array()) {
        const core::json::Value *refusals = line.object()->find(u"refusals");
        for (const core::json::Value &refusal : refusals ? *refusals->array() : core::json::Array())
            rules << QString::number(line.object()->integer(u"line").value_or(0)) + u' ' + refusal.object()->text(u"rule");
    }
    return rules;
}

} // namespace

class TstEnter : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void init();
    void admits();
    void names_data();
    void names();
    void laterLinesSeeEarlierOnes();
    void dryRunSignsNothing();
    void dryRunMissesAnAttachment();
    void nothingIsEnteredFromABadFile();
    void stopsAtAWrongPin();
    void refusedLineAsksForNoPin();
    void handsAnItemOn();
    void readsAFile();

private:
    QString store() const { return m_folder.filePath(u"now.remate"_s); }
    QString pins() const { return pinsOf(m_folder.filePath(u"demo.remate"_s)); }
    Said enter(const QByteArray &drafts, const QStringList &options = {})
    {
        return remateCli(QStringList{u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--pins"_s, pins(), u"--json"_s} + options, drafts);
    }
    qint64 entries() const
    {
        const core::json::Object json = remateCli({u"show"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--entries"_s, u"--json"_s}).json();
        const core::json::Value *list = json.find(u"entries");
        return list ? static_cast<qint64>(list->array()->size()) : -1;
    }
    QTemporaryDir m_folder;
    qint64 m_before = 0;
};

void TstEnter::initTestCase() { QCOMPARE(makeQuickDemo(m_folder.filePath(u"demo.remate"_s)), QString()); }

/// Each test has the story's store as the second shift left it.
void TstEnter::init()
{
    QFile::remove(store());
    QVERIFY(QFile::copy(m_folder.filePath(u"demo.remate"_s), store()));
    m_before = entries();
    QVERIFY(m_before > 0);
}

void TstEnter::admits()
{
    const Said said = enter(lines({goodTorque, inspection}));
    QVERIFY2(said.exit == 0, said.err.constData());
    QCOMPARE(entries(), m_before + 2);
    QCOMPARE(remateCli({u"verify"_s, store()}).exit, 0);
}

void TstEnter::names_data()
{
    QTest::addColumn<QByteArray>("draft");
    QTest::addColumn<QString>("rule");
    QTest::addRow("too much torque") << QByteArray(tooMuch) << u"1 torque.band"_s;
    QTest::addRow("a tool out of date") << QByteArray(overdueTool) << u"1 tool.calibration"_s;
    QTest::addRow("own work, unfinished") << QByteArray(ownWork) << u"1 independence.own-work"_s;
    QTest::addRow("not yet secured") << QByteArray(inspection) << u"1 inspection.secured"_s;
    QTest::addRow("closing what is loose") << QByteArray(closure) << u"1 closure.nothing-loose"_s;
    QTest::addRow("unknown kind") << QByteArray(R"({"author":"novak","kind":"job.forgotten"})") << u"1 form.kind"_s;
    QTest::addRow("not an administrator")
        << QByteArray(R"({"author":"novak","kind":"tool.withdrawn","subject":"TW-11","body":{"reason":"Dropped"}})") << u"1 register.administrator"_s;
}

void TstEnter::names()
{
    QFETCH(QByteArray, draft);
    QFETCH(QString, rule);
    const Said said = enter(draft);
    QCOMPARE(said.exit, 1);
    QVERIFY2(rulesIn(said.json()).contains(rule), said.out.constData());
    QVERIFY(said.err.contains(rule.mid(2).toUtf8()));
    QCOMPARE(entries(), m_before);
}

void TstEnter::laterLinesSeeEarlierOnes()
{
    const Said said = enter(lines({goodTorque, goodTorque, inspection}));
    QCOMPARE(said.exit, 1);
    QCOMPARE(rulesIn(said.json()), QStringList{u"2 torque.fastener-once"_s});
    QCOMPARE(entries(), m_before + 2);
}

void TstEnter::dryRunSignsNothing()
{
    const Said said = remateCli({u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--dry-run"_s, u"--json"_s}, lines({goodTorque, goodTorque, inspection}));
    QCOMPARE(said.exit, 1);
    QCOMPARE(rulesIn(said.json()), QStringList{u"2 torque.fastener-once"_s});
    QCOMPARE(entries(), m_before);
    const Said good = remateCli({u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--dry-run"_s}, lines({goodTorque, inspection}));
    QCOMPARE(good.exit, 0);
    // What a reading works out to is shown before anybody signs.
    QVERIFY2(good.out.contains("Torque asked for: 3 to 4 N·m") && good.out.contains("3.5 N·m is accepted."), good.out.constData());
}

/// What would stop the signing stops the rehearsal at the same line.
void TstEnter::dryRunMissesAnAttachment()
{
    const auto photo = [](const QString &digest) {
        return uR"({"author":"novak","kind":"photo.attached","subject":"D1","body":{"sha256":"%1","media_type":"image/png","moment":"after"}})"_s.arg(digest).toUtf8();
    };
    const auto named = [&](const QByteArray &draft, const QStringList &also) {
        const Said said = remateCli(QStringList{u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--json"_s} + also, lines({draft.constData(), goodTorque}));
        return said.json().find(u"error") ? said.json().find(u"error")->object()->text(u"code") : QString::number(said.exit);
    };
    const QByteArray unknown = photo(QString(64, u'0'));
    QCOMPARE(named(unknown, {u"--dry-run"_s}), u"not_found"_s);
    QCOMPARE(named(unknown, {u"--pins"_s, pins()}), u"not_found"_s);
    QCOMPARE(entries(), m_before);
    // One that the store holds.
    const Said all = remateCli({u"show"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--entries"_s, u"--json"_s});
    const auto held = QRegularExpression(u"\"sha256\":\"([0-9a-f]{64})\""_s).match(QString::fromUtf8(all.out));
    QVERIFY(held.hasMatch());
    QCOMPARE(named(photo(held.captured(1)), {u"--dry-run"_s}), u"0"_s);
}

void TstEnter::nothingIsEnteredFromABadFile()
{
    const Said said = enter(lines({goodTorque, "{\"author\":\"novak\""}));
    QCOMPARE(said.exit, 2);
    QVERIFY(said.err.contains("-:2: "));
    QCOMPARE(entries(), m_before);
}

void TstEnter::stopsAtAWrongPin()
{
    const QString wrong = m_folder.filePath(u"wrong.pins"_s);
    QVERIFY(writeFile(wrong, "# nobody's PIN\nnovak 000000\ndufour 190635\n"));
    const Said said = remateCli({u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--pins"_s, wrong, u"--json"_s}, lines({goodTorque, closure}));
    QCOMPARE(said.exit, 1);
    const core::json::Object json = said.json();
    QVERIFY2(json.find(u"error"), said.out.constData());
    QCOMPARE(json.find(u"error")->object()->text(u"code"), u"wrong_secret"_s);
    QVERIFY(!said.out.contains("000000") && !said.err.contains("000000"));
    QCOMPARE(entries(), m_before);
}

/// W05 is off when the story pauses: it goes to the shop, is taken on there as it is, and the wing's tag comes back.
void TstEnter::handsAnItemOn()
{
    const auto ledgerOf = [this](const QString &job) { return remateCli({u"show"_s, store(), u"--job"_s, job, u"--json"_s}).json().find(u"job"_s)->object()->text(u"ledger"); };
    const QString wing = ledgerOf(u"WO-2207-14"_s);
    const QString shop = ledgerOf(u"WO-2207-15"_s);
    const auto rulesOf = [this](const QString &job, const QByteArray &draft) {
        const Said said = remateCli({u"enter"_s, store(), u"--job"_s, job, u"--pins"_s, pins(), u"--json"_s}, draft);
        return said.exit == 0 ? QStringList() : rulesIn(said.json()) + QStringList{QString::fromUtf8(said.err)};
    };
    QCOMPARE(rulesOf(wing, R"({"author":"okafor","kind":"job.linked","body":{"ledger":")" + wing.toUtf8() + R"(","work_order":"WO-2207-14"}})").value(0), u"1 crew.lead"_s); // handed over
    QCOMPARE(rulesOf(wing, R"({"author":"tanaka","kind":"job.linked","body":{"ledger":")" + shop.toUtf8() + R"(","work_order":"WO-2207-15"}})").value(0), u"1 link.once"_s);
    QCOMPARE(rulesOf(wing, R"({"author":"tanaka","kind":"interface.sent","subject":"W05","body":{"to":")" + shop.toUtf8() + R"("}})"), QStringList());
    const core::json::Object shown = remateCli({u"show"_s, store(), u"--job"_s, wing, u"--interface"_s, u"W05"_s, u"--json"_s}).json();
    const QString tag = shown.find(u"interfaces"_s)->array()->front().object()->text(u"tag");
    core::json::Object listing;
    for (const core::json::Value &one : *shown.find(u"entries"_s)->array()) {
        if (one.object()->text(u"kind") == u"interface.listed")
            listing = *one.object()->find(u"body"_s)->object();
    }
    listing.set(u"zone"_s, u"Stand"_s);
    listing.set(u"from"_s, wing);
    listing.set(u"comes"_s, u"disconnected"_s);
    listing.set(u"tag"_s, tag);
    listing.set(u"tag_instead"_s, u"S-77"_s);
    listing.set(u"as_found"_s, u"sound"_s);
    core::json::Object draft{{u"author"_s, u"brandt"_s}, {u"kind"_s, u"interface.taken_on"_s}, {u"subject"_s, u"W05"_s}, {u"body"_s, listing}};
    const QStringList without = rulesOf(shop, core::json::canonical(draft));
    // What came off, the entry of the wing tells; here every blank has to be said. Those of the unit left with the unit.
    QCOMPARE(without.value(0), u"1 taken-on.same"_s);
    listing.set(u"blanks_fitted"_s, 1);
    draft.set(u"body"_s, listing);
    const QStringList refused = rulesOf(shop, core::json::canonical(draft));
    QVERIFY2(refused.isEmpty(), qPrintable(refused.join(u' ')));
    QCOMPARE(remateCli({u"verify"_s, store()}).exit, 0);
}

void TstEnter::refusedLineAsksForNoPin()
{
    const QString none = m_folder.filePath(u"none.pins"_s);
    QVERIFY(writeFile(none, "\n"));
    const Said said = remateCli({u"enter"_s, store(), u"--job"_s, u"WO-2207-14"_s, u"--pins"_s, none, u"--json"_s}, tooMuch);
    QCOMPARE(said.exit, 1);
    QCOMPARE(rulesIn(said.json()), QStringList{u"1 torque.band"_s});
}

void TstEnter::readsAFile()
{
    const QString file = m_folder.filePath(u"drafts.jsonl"_s);
    QVERIFY(writeFile(file, goodTorque));
    QCOMPARE(remateCli({u"enter"_s, store(), file, u"--job"_s, u"WO-2207-14"_s, u"--pins"_s, pins()}).exit, 0);
    QCOMPARE(entries(), m_before + 1);
}

QTEST_GUILESS_MAIN(TstEnter)
#include "tst_enter.moc"
