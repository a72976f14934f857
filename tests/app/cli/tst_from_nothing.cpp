// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QScopeGuard>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

/// A store is set up and a job run to its record without a window.
class TstFromNothing : public QObject {
    Q_OBJECT

private slots:
    void init();
    void wholeJob();
    void initLeavesNothingWhenItFails();
    void pinIsChanged();
    void keyIsReplaced();
    void keyIsCarriedToAnotherStation();
    void keyIsStopped();

private:
    QString at(const QString &name) const { return m_folder.filePath(name); }
    /// Runs a command on the store with everybody's PINs; what went wrong, or nothing.
    QString run(const QString &command, const QStringList &options, const QByteArray &input = {})
    {
        const Said said = remateCli(QStringList{command, at(u"store.remate"_s)} + options + QStringList{u"--pins"_s, at(u"pins"_s)}, input);
        return said.exit == 0 ? QString() : u"%1 exit %2: "_s.arg(command).arg(said.exit) + QString::fromUtf8(said.err);
    }
    QString makePeople();
    QTemporaryDir m_folder;
};

void TstFromNothing::init()
{
    QFile::remove(at(u"store.remate"_s));
    QVERIFY(writeFile(at(u"pins"_s), "root 100001\nlead 100002\ninsp 100003\nrel a longer passphrase\n"));
    QCOMPARE(run(u"init"_s, {u"--organisation"_s, u"Hangar"_s, u"--id"_s, u"root"_s, u"--name"_s, u"Root Person"_s}), QString());
}

QString TstFromNothing::makePeople()
{
    const std::pair<QString, QStringList> people[] = {{u"lead"_s, {u"lead"_s, u"work"_s}}, {u"insp"_s, {u"inspect"_s}}, {u"rel"_s, {u"release"_s}}};
    for (const auto &[id, authorities] : people) {
        QString trouble = run(u"enrol"_s, {u"--id"_s, id, u"--name"_s, id.toUpper(), u"--identity"_s, u"Seen"_s, u"--by"_s, u"root"_s});
        for (const QString &authority : authorities) {
            if (trouble.isEmpty())
                trouble = run(u"grant"_s, {u"--person"_s, id, u"--authority"_s, authority, u"--reference"_s, u"Letter"_s, u"--by"_s, u"root"_s});
        }
        if (!trouble.isEmpty())
            return trouble;
    }
    const QString today = QDateTime::currentDateTimeUtc().date().toString(Qt::ISODate);
    const QString later = QDateTime::currentDateTimeUtc().date().addDays(30).toString(Qt::ISODate);
    return run(u"tool"_s, {u"--id"_s, u"T1"_s, u"--name"_s, u"Wrench"_s, u"--min"_s, u"2"_s, u"--max"_s, u"20"_s, u"--unit"_s, u"N·m"_s, u"--torque-type"_s, u"indicating"_s, u"--calibrated"_s, today,
                           u"--due"_s, later, u"--certificate"_s, u"C1"_s, u"--by"_s, u"root"_s});
}

void TstFromNothing::wholeJob()
{
    QCOMPARE(makePeople(), QString());
    QCOMPARE(run(u"enter"_s, {}, R"({"author":"lead","kind":"job.opened","body":{"title":"Change","work_order":"WO-1","aircraft":"No. 07","aircraft_type":"Ostrel 40F","maintenance_data":"Manual","revision":"1","unit":"Engine","outgoing_serial":"A","incoming_serial":"B","lead":"lead","crew":["lead"],"zones":[{"name":"Left"}]}})"),
             QString());
    QVERIFY(writeFile(at(u"list.csv"_s), "id;name;kind;zone;torque_fasteners;torque_min;torque_max;torque_unit\nE1;Clamp;clamp;Left;1;5;7;N·m\n"));
    const QStringList import{at(u"list.csv"_s), u"--by"_s, u"lead"_s};
    QCOMPARE(run(u"list-import"_s, import + QStringList{u"--dry-run"_s}), QString());
    QCOMPARE(run(u"list-import"_s, import), QString());
    QCOMPARE(run(u"enter"_s, {},
                 R"({"author":"lead","kind":"interface.disconnected","subject":"E1","body":{"tag":"1","blanks_fitted":0,"as_found":"sound"}})"
                 "\n"
                 R"({"author":"lead","kind":"interface.reconnected","subject":"E1","body":{"tag_recovered":"1","blanks_removed":0}})"
                 "\n"
                 R"({"author":"lead","kind":"torque.applied","subject":"E1","body":{"fastener":1,"value":"6.0","unit":"N·m","tool":"T1"}})"
                 "\n"
                 R"({"author":"insp","kind":"inspection.accepted","subject":"E1"})"
                 "\n"
                 R"({"author":"rel","kind":"job.closed","body":{"statement":"Released."}})"),
             QString());
    QCOMPARE(remateCli({u"loose-ends"_s, at(u"store.remate"_s)}).exit, 0);
    QCOMPARE(remateCli({u"verify"_s, at(u"store.remate"_s)}).exit, 0);
    QCOMPARE(remateCli({u"export"_s, at(u"store.remate"_s), u"--to"_s, at(u"record"_s)}).exit, 0);
}

void TstFromNothing::initLeavesNothingWhenItFails()
{
    QVERIFY(writeFile(at(u"short"_s), "root 12345\n"));
    const QStringList line{u"init"_s, at(u"new.remate"_s), u"--organisation"_s, u"Hangar"_s, u"--id"_s, u"root"_s, u"--name"_s, u"Root"_s, u"--pins"_s};
    QCOMPARE(remateCli(line + QStringList{at(u"short"_s)}).exit, 2);
    QVERIFY(!QFile::exists(at(u"new.remate"_s)));
    QCOMPARE(remateCli(line + QStringList{at(u"pins"_s)}).exit, 0);
    QCOMPARE(remateCli(line + QStringList{at(u"pins"_s)}).exit, 2);
}

void TstFromNothing::pinIsChanged()
{
    QVERIFY(writeFile(at(u"new"_s), "root 200001\n"));
    QCOMPARE(run(u"change-pin"_s, {u"--person"_s, u"root"_s, u"--new-pins"_s, at(u"new"_s)}), QString());
    const QStringList tool{u"tool"_s, at(u"store.remate"_s), u"--id"_s, u"T1"_s, u"--name"_s, u"Lamp"_s, u"--by"_s, u"root"_s, u"--pins"_s};
    QCOMPARE(remateCli(tool + QStringList{at(u"pins"_s)}).exit, 1);
    QCOMPARE(remateCli(tool + QStringList{at(u"new"_s)}).exit, 0);
}

void TstFromNothing::keyIsReplaced()
{
    QCOMPARE(makePeople(), QString());
    QCOMPARE(run(u"replace-key"_s, {u"--person"_s, u"lead"_s, u"--reason"_s, u"PIN forgotten"_s, u"--by"_s, u"root"_s}), QString());
    QCOMPARE(remateCli({u"verify"_s, at(u"store.remate"_s)}).exit, 0);
    // Only an administrator may.
    QVERIFY(run(u"replace-key"_s, {u"--person"_s, u"insp"_s, u"--reason"_s, u"Why not"_s, u"--by"_s, u"lead"_s}).contains(u"register.administrator"_s));
}

/// Two computers on one store: each has a station of its own, told by the environment.
void TstFromNothing::keyIsCarriedToAnotherStation()
{
    QCOMPARE(makePeople(), QString());
    const auto tool = [&] { return remateCli({u"tool"_s, at(u"store.remate"_s), u"--id"_s, u"LAMP"_s, u"--name"_s, u"Lamp"_s, u"--by"_s, u"root"_s, u"--pins"_s, at(u"pins"_s)}); };
    const Said offered = remateCli({u"carry-key"_s, at(u"store.remate"_s), u"--person"_s, u"root"_s, u"--pins"_s, at(u"pins"_s), u"--json"_s});
    QCOMPARE(offered.exit, 0);
    QVERIFY(writeFile(at(u"code"_s), offered.json().text(u"code").toUtf8()));
    const auto back = qScopeGuard([] { qunsetenv("REMATE_STATION"); });
    qputenv("REMATE_STATION", at(u"elsewhere/station"_s).toLocal8Bit());
    const Said refused = tool();
    QCOMPARE(refused.exit, 3);
    QVERIFY2(refused.err.contains("not at this station"), refused.err.constData());
    QVERIFY(remateCli({u"station"_s, at(u"store.remate"_s)}).out.contains("signs at other stations"));
    const QStringList take{u"--person"_s, u"root"_s, u"--code-file"_s, at(u"code"_s)};
    QCOMPARE(run(u"take-key"_s, take), QString());
    QCOMPARE(tool().exit, 0);
    QVERIFY(run(u"take-key"_s, take).contains(u"No transfer with this code is open"_s));
    QVERIFY(remateCli({u"station"_s, at(u"store.remate"_s)}).out.contains("signs here"));
    // And beside the store it is refused.
    qputenv("REMATE_STATION", at(u"station"_s).toLocal8Bit());
    QVERIFY(remateCli({u"station"_s, at(u"store.remate"_s)}).err.contains("lies in the folder of the store"));
}

/// Whoever signed while somebody else may have had the key is listed; from the stop on nothing more is signed with it.
void TstFromNothing::keyIsStopped()
{
    QCOMPARE(makePeople(), QString());
    QCOMPARE(run(u"grant"_s, {u"--person"_s, u"lead"_s, u"--authority"_s, u"administer"_s, u"--reference"_s, u"Letter"_s, u"--by"_s, u"root"_s}), QString());
    const QStringList lamp{u"--name"_s, u"Lamp"_s, u"--by"_s, u"lead"_s, u"--id"_s};
    QCOMPARE(run(u"tool"_s, lamp + QStringList{u"LAMP-1"_s}), QString());
    QCOMPARE(remateCli({u"doubtful"_s, at(u"store.remate"_s)}).exit, 0);
    const QStringList stop{u"--person"_s, u"lead"_s, u"--since"_s, u"2026-01-01T00:00:00Z"_s, u"--reason"_s, u"PIN seen"_s, u"--by"_s, u"root"_s};
    QCOMPARE(run(u"stop-key"_s, stop), QString());
    QVERIFY(run(u"tool"_s, lamp + QStringList{u"LAMP-2"_s}).contains(u"key.stands"_s));
    const Said doubtful = remateCli({u"doubtful"_s, at(u"store.remate"_s)});
    QCOMPARE(doubtful.exit, 1);
    QVERIFY2(doubtful.out.contains("LAMP-1") && doubtful.out.contains("PIN seen") && doubtful.out.contains("Signatures in doubt: 1"), doubtful.out.constData());
    QCOMPARE(remateCli({u"doubtful"_s, at(u"store.remate"_s), u"--person"_s, u"root"_s}).exit, 0);
    QCOMPARE(run(u"replace-key"_s, {u"--person"_s, u"lead"_s, u"--reason"_s, u"PIN seen"_s, u"--by"_s, u"root"_s}), QString());
    QCOMPARE(run(u"tool"_s, lamp + QStringList{u"LAMP-2"_s}), QString());
    QVERIFY(remateCli({u"doubtful"_s, at(u"store.remate"_s)}).out.contains("Signatures in doubt: 1"));
    QCOMPARE(remateCli({u"verify"_s, at(u"store.remate"_s)}).exit, 0);
}

QTEST_GUILESS_MAIN(TstFromNothing)
#include "tst_from_nothing.moc"
