// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/kinds/kinds.hpp"

#include <QDir>
#include <QFile>
#include <QtTest>

#include "core/requirements/catalogue.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

class KindsTest : public QObject {
    Q_OBJECT

private slots:
    void everyKindOfTheTradeIsThere_data();
    void everyKindOfTheTradeIsThere();
    void everyFileIsInTheProgram();
    void cautionsDeferToTheMaintenanceData();
    void cautionsSayWhatToDoFirst_data();
    void cautionsSayWhatToDoFirst();
    void mountsAreReleasedAndFitted();
    void soundFileIsRead();
    void whatIsRefused_data();
    void whatIsRefused();
    void idsMayHoldDigits();
    void noKindAtAll();
    void twoOfOneName();

private:
    static QStringList filesIn(const QString &folder) { return QDir(folder).entryList({u"*.json"_s}, QDir::Files, QDir::Name); }
};

namespace {

const QByteArray soundFile = R"({"id":"duct","sort":"interface","name":"Duct",
    "verbs":{"off":"disconnect","off_done":"disconnected","on":"reconnect","on_done":"reconnected"},
    "requirements":["seal"],"look_at":["The seal is new."],"caution":"Hot."})";

} // namespace

void KindsTest::everyKindOfTheTradeIsThere_data()
{
    QTest::addColumn<QString>("id");
    for (const char *id : {"duct", "harness_connector", "power_cable", "bonding_lead", "fuel_line", "oil_line", "hydraulic_line",
                           "bleed_line", "drain", "sense_line", "clamp", "control_linkage", "mount", "access_panel"})
        QTest::addRow("%s", id) << QString::fromLatin1(id);
}

void KindsTest::everyKindOfTheTradeIsThere()
{
    QFETCH(QString, id);
    const auto kinds = resources::loadKinds();
    QVERIFY2(kinds, kinds ? "" : qPrintable(kinds.error().message));
    const core::Kind *kind = kinds->find(id);
    QVERIFY(kind);
    QVERIFY(!kind->lookAt.empty());
    for (const QString &name : kind->requirements)
        QVERIFY2(core::findRequirement(name), qPrintable(name));
    for (const QString &sentence : kind->lookAt)
        QVERIFY2(sentence.endsWith(u'.'), qPrintable(sentence));
}

void KindsTest::everyFileIsInTheProgram()
{
    resources::readyResources();
    const QStringList files = filesIn(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/kinds"_s);
    QVERIFY(!files.isEmpty());
    QCOMPARE(filesIn(u":/kinds"_s), files);
    QCOMPARE(static_cast<qsizetype>(resources::loadKinds()->all().size()), files.size());
}

void KindsTest::cautionsDeferToTheMaintenanceData()
{
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    // Whatever joins a unit to an aircraft can hurt somebody when it comes apart: by weight, edges, heat, pressure, power or fire.
    for (const core::Kind &kind : kinds->all()) {
        for (const QString &governing : {u"approved maintenance data"_s, u"local rules"_s})
            QVERIFY2(kind.caution.contains(governing), qPrintable(kind.id));
    }
}

void KindsTest::cautionsSayWhatToDoFirst_data()
{
    QTest::addColumn<QString>("id");
    QTest::addColumn<QStringList>("words");
    // common practice
    QTest::addRow("electrical power") << u"harness_connector"_s << QStringList{u"Isolate and tag"_s, u"electrical power"_s, u"authorised"_s, u"dead"_s};
    QTest::addRow("high current") << u"power_cable"_s << QStringList{u"Isolate and tag"_s, u"batteries"_s, u"authorised"_s, u"dead"_s};
    QTest::addRow("fuel") << u"fuel_line"_s << QStringList{u"Isolate and tag"_s, u"pressure"_s, u"ignition"_s, u"fire cover"_s};
    QTest::addRow("hydraulics") << u"hydraulic_line"_s << QStringList{u"Isolate and tag"_s, u"pressure"_s, u"accumulators"_s};
    QTest::addRow("bleed air") << u"bleed_line"_s << QStringList{u"Isolate and tag"_s, u"cool"_s, u"pressure"_s};
    QTest::addRow("what a line senses") << u"sense_line"_s << QStringList{u"Isolate"_s, u"cool"_s, u"pressure"_s};
    QTest::addRow("hot oil") << u"oil_line"_s << QStringList{u"cool"_s, u"pressure"_s};
    QTest::addRow("controls") << u"control_linkage"_s << QStringList{u"Isolate, tag and lock"_s, u"springs"_s};
    QTest::addRow("the load") << u"mount"_s << QStringList{u"hoist"_s, u"limits"_s, u"never stand"_s};
    QTest::addRow("cowls") << u"access_panel"_s << QStringList{u"heavy"_s, u"wind"_s, u"hold-open rods"_s, u"platform"_s};
    QTest::addRow("edges") << u"clamp"_s << QStringList{u"sharp edges"_s, u"moves when it is let go"_s};
}

void KindsTest::cautionsSayWhatToDoFirst()
{
    QFETCH(QString, id);
    QFETCH(QStringList, words);
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds && kinds->find(id));
    for (const QString &word : std::as_const(words))
        QVERIFY2(kinds->find(id)->caution.contains(word), qPrintable(word));
}

void KindsTest::mountsAreReleasedAndFitted()
{
    const core::Verbs expected{u"release"_s, u"released"_s, u"fit"_s, u"fitted"_s};
    QCOMPARE(resources::loadKinds()->find(u"mount")->verbs, expected);
}

void KindsTest::soundFileIsRead()
{
    const auto kind = core::parseKind(soundFile, u"kinds/duct.json"_s);
    QVERIFY2(kind, kind ? "" : qPrintable(kind.error().message));
    QCOMPARE(kind->name, u"Duct"_s);
    QCOMPARE(kind->requirements, std::vector{u"seal"_s});
}

void KindsTest::whatIsRefused_data()
{
    QTest::addColumn<QByteArray>("part");
    QTest::addColumn<QByteArray>("instead");
    QTest::addColumn<QString>("named");
    QTest::addRow("not JSON") << QByteArray("{\"id\"") << QByteArray("{id") << u"not an object"_s;
    QTest::addRow("id is not the file's name") << QByteArray("\"duct\"") << QByteArray("\"ducts\"") << u"\"id\""_s;
    QTest::addRow("id in capitals") << QByteArray("\"duct\"") << QByteArray("\"Duct\"") << u"\"id\""_s;
    QTest::addRow("no id") << QByteArray("\"duct\"") << QByteArray("\"\"") << u"\"id\""_s;
    QTest::addRow("id with a hyphen") << QByteArray("\"duct\"") << QByteArray("\"bleed-duct\"") << u"\"id\""_s;
    QTest::addRow("id that is a number") << QByteArray("\"duct\"") << QByteArray("7") << u"\"id\""_s;
    QTest::addRow("unknown sort") << QByteArray("\"interface\"") << QByteArray("\"interfaces\"") << u"\"sort\""_s;
    QTest::addRow("no name") << QByteArray("\"name\":\"Duct\",") << QByteArray() << u"\"name\""_s;
    QTest::addRow("blank name") << QByteArray("\"name\":\"Duct\"") << QByteArray("\"name\":\" \"") << u"\"name\""_s;
    QTest::addRow("a name with a blank behind") << QByteArray("\"name\":\"Duct\"") << QByteArray("\"name\":\"Duct \"") << u"\"name\""_s;
    QTest::addRow("verbs are no object") << QByteArray("\"verbs\":{") << QByteArray("\"verbs\":[],\"words\":{") << u"\"words\""_s;
    QTest::addRow("no verbs") << QByteArray("\"verbs\":{\"off\":\"disconnect\",\"off_done\":\"disconnected\",\"on\":\"reconnect\",\"on_done\":\"reconnected\"},") << QByteArray() << u"\"verbs\""_s;
    QTest::addRow("a verb is missing") << QByteArray("\"on\":\"reconnect\",") << QByteArray() << u"\"on\""_s;
    QTest::addRow("a verb too many") << QByteArray("\"on\":") << QByteArray("\"again\":\"again\",\"on\":") << u"\"again\""_s;
    QTest::addRow("unknown requirement") << QByteArray("[\"seal\"]") << QByteArray("[\"seals\"]") << u"\"seals\""_s;
    QTest::addRow("requirement twice") << QByteArray("[\"seal\"]") << QByteArray("[\"seal\",\"seal\"]") << u"twice"_s;
    QTest::addRow("requirements are no list") << QByteArray("[\"seal\"]") << QByteArray("\"seal\"") << u"\"requirements\""_s;
    QTest::addRow("no requirements member") << QByteArray("\"requirements\":[\"seal\"],") << QByteArray() << u"\"requirements\""_s;
    QTest::addRow("a requirement that is a number") << QByteArray("[\"seal\"]") << QByteArray("[1]") << u"\"requirements\""_s;
    QTest::addRow("a blank sentence to look at") << QByteArray("[\"The seal is new.\"]") << QByteArray("[\" \"]") << u"\"look_at\""_s;
    QTest::addRow("nothing to look at") << QByteArray("[\"The seal is new.\"]") << QByteArray("[]") << u"\"look_at\""_s;
    QTest::addRow("blank caution") << QByteArray("\"Hot.\"") << QByteArray("\"\"") << u"\"caution\""_s;
    QTest::addRow("unknown member") << QByteArray("\"caution\"") << QByteArray("\"warning\"") << u"\"warning\""_s;
}

void KindsTest::whatIsRefused()
{
    QFETCH(QByteArray, part);
    QFETCH(QByteArray, instead);
    QFETCH(QString, named);
    QByteArray json = soundFile;
    QVERIFY(json.contains(part));
    const auto kind = core::parseKind(json.replace(part, instead), u"kinds/duct.json"_s);
    QVERIFY(!kind);
    QCOMPARE(kind.error().code, core::ErrorCode::BadInput);
    QCOMPARE(kind.error().where.file, u"kinds/duct.json"_s);
    QVERIFY2(kind.error().message.contains(named), qPrintable(kind.error().message));
}

void KindsTest::idsMayHoldDigits()
{
    const auto kind = core::parseKind(QByteArray(soundFile).replace("\"duct\"", "\"duct_2\""), u"kinds/duct_2.json"_s);
    QVERIFY2(kind, kind ? "" : qPrintable(kind.error().message));
    const auto kinds = core::Kinds::of({*kind});
    QCOMPARE(kinds->nameOf(u"duct_2"_s), u"Duct"_s);
    QCOMPARE(kinds->nameOf(u"hose"_s), u"hose"_s); // a job of another house keeps its own word
    QVERIFY(!kinds->find(u"hose"));
}

void KindsTest::noKindAtAll() { QVERIFY(!core::Kinds::of({})); }

void KindsTest::twoOfOneName()
{
    core::Kind duct = *core::parseKind(soundFile, u"duct.json"_s);
    core::Kind other = duct;
    other.id = u"other"_s;
    QVERIFY(!core::Kinds::of({duct, other}));
    other = duct;
    other.name = u"Other"_s;
    QVERIFY(!core::Kinds::of({duct, other}));
    other.id = u"other"_s;
    QVERIFY(core::Kinds::of({duct, other}));
}

QTEST_GUILESS_MAIN(KindsTest)
#include "tst_kinds.moc"
