// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFileInfo>
#include <QTest>

#include "app/session/carry.hpp"
#include "app/session/station.hpp"
#include "tests/app/session/hangar.hpp"
#include "tests/support/unbound_key.hpp"

using namespace Qt::StringLiterals;
using core::ErrorCode;
using session::readStation;

namespace {

/// A computer whose station secret is all one letter.
session::Station computer(char letter)
{
    return [letter](const QString &) { return core::SecondKey::ofStation(QByteArray(32, letter)); };
}

/// The same store, seen from another computer.
class Elsewhere {
public:
    Elsewhere(Hangar &hangar, char letter)
        : m_store(*db::Store::open(hangar.path(), db::Access::ReadWrite)), m_session(*m_store, hangar.clock(), {core::leastCost, computer(letter)})
    {
        if (!m_session.refresh())
            qFatal("the store cannot be read");
    }
    session::Session &session() { return m_session; }

private:
    std::unique_ptr<db::Store> m_store;
    session::Session m_session;
};

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size();
}

db::KeyPlace placeOf(session::Session &session, const char *id)
{
    return *session.store().credentials().placeOf(person(id), session.reg().person(person(id))->key.fingerprint(), session.station()->id());
}

} // namespace

class TstStation : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(core::readyCryptography()); }
    void theFileIsMadeOnce();
    void whoMayReadTheFile_data();
    void whoMayReadTheFile();
    void neverBesideTheStore();
    void aFileThatHoldsSomethingElse();
    void whereTheFileIs();
    void aPinOpensNothingElsewhere();
    void anOldKeyIsBoundAtItsFirstRightSecret();
    void aKeyIsCarriedOver();
    void aTransferWorksOnce();
    void aTransferThatDoesNotWork_data();
    void aTransferThatDoesNotWork();
    void aTransferOfAReplacedKey();
    void aChangedSecretLeavesNoOldOneElsewhere();
    void wrongTriesAreTold();
};

void TstStation::theFileIsMadeOnce()
{
    const QTemporaryDir folder;
    const session::StationFile file{folder.filePath(u"state/remate/station"_s), false};
    const auto first = readStation(file, u"/nowhere/a.remate"_s);
    QVERIFY2(first, first ? "" : qPrintable(first.error().message));
    QCOMPARE(QFileInfo(file.path).permissions() & 0x7777, QFile::ReadOwner | QFile::WriteOwner | QFile::ReadUser | QFile::WriteUser);
    const QByteArray content = contentOf(file.path);
    QCOMPARE(readStation(file, u"/nowhere/a.remate"_s)->id(), first->id());
    QCOMPARE(contentOf(file.path), content);
    QCOMPARE(QDir(QFileInfo(file.path).path()).entryList(QDir::Files | QDir::Hidden), QStringList{u"station"_s});
    // Another computer makes another.
    QVERIFY(readStation({folder.filePath(u"other/station"_s), false}, u"/nowhere/a.remate"_s)->id() != first->id());
}

void TstStation::whoMayReadTheFile_data()
{
    QTest::addColumn<int>("mode");
    QTest::addColumn<bool>("isShared");
    QTest::addColumn<bool>("good");
    QTest::newRow("its owner") << 0x6600 << false << true;
    QTest::newRow("its owner's group") << 0x6640 << false << false;
    QTest::newRow("the group of a shared one") << 0x6640 << true << true;
    QTest::newRow("everybody") << 0x6604 << true << false;
}

void TstStation::whoMayReadTheFile()
{
    QFETCH(int, mode);
    QFETCH(bool, isShared);
    QFETCH(bool, good);
    const QTemporaryDir folder;
    const session::StationFile file{folder.filePath(u"station"_s), isShared};
    QVERIFY(readStation(file, u"/nowhere/a.remate"_s));
    QVERIFY(QFile::setPermissions(file.path, QFile::Permissions(mode)));
    const auto read = readStation(file, u"/nowhere/a.remate"_s);
    QCOMPARE(read.has_value(), good);
    if (!read)
        QCOMPARE(read.error().code, ErrorCode::Refused);
}

void TstStation::neverBesideTheStore()
{
    const QTemporaryDir folder;
    const session::StationFile file{folder.filePath(u"station"_s), false};
    QCOMPARE(readStation(file, folder.filePath(u"a.remate"_s)).error().code, ErrorCode::BadInput);
    QVERIFY(!QFileInfo::exists(file.path));
    QVERIFY(readStation(file, folder.filePath(u"stores/a.remate"_s)));
}

void TstStation::aFileThatHoldsSomethingElse()
{
    const QTemporaryDir folder;
    const session::StationFile file{folder.filePath(u"station"_s), false};
    QVERIFY(readStation(file, u"/nowhere/a.remate"_s));
    const QByteArray whole = contentOf(file.path);
    const std::pair<QByteArray, bool> cases[] = {{whole, true}, {whole.chopped(3), false}, {QByteArray(), false}, {whole.mid(1), false}, {whole.left(whole.indexOf('\n')), false}};
    for (const auto &[content, good] : cases) {
        QVERIFY(write(file.path, content));
        const auto read = readStation(file, u"/nowhere/a.remate"_s);
        QCOMPARE(read.has_value(), good);
        if (!read)
            QCOMPARE(read.error().code, ErrorCode::Damaged);
    }
}

void TstStation::whereTheFileIs()
{
    QProcessEnvironment environment;
    environment.insert(u"XDG_STATE_HOME"_s, u"/state"_s);
    QCOMPARE(session::stationFile(environment).path, u"/state/remate/station"_s);
    QVERIFY(!session::stationFile(environment).isShared);
    environment.insert(u"REMATE_STATION"_s, u"relative"_s);
    QCOMPARE(session::stationFile(environment).path, u"/state/remate/station"_s);
    environment.insert(u"REMATE_STATION"_s, u"/etc/remate/station"_s);
    QCOMPARE(session::stationFile(environment).path, u"/etc/remate/station"_s);
    QVERIFY(session::stationFile(environment).isShared);
}

void TstStation::aPinOpensNothingElsewhere()
{
    Hangar hangar;
    QCOMPARE(hangar.trouble(), QString());
    Elsewhere away(hangar, 'x');
    const auto key = away.session().unlock(signer("tech"));
    QVERIFY(!key);
    QCOMPARE(key.error().code, ErrorCode::NotFound);
    QVERIFY2(key.error().message.contains(u"not at this station"), qPrintable(key.error().message));
    QVERIFY(hangar.session().unlock(signer("tech")));
}

/// A store of an earlier version: signs on as before, and from the first right secret on a copy of it gives no PIN away.
void TstStation::anOldKeyIsBoundAtItsFirstRightSecret()
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"old.remate"_s);
    auto store = *db::Store::create(path);
    const auto key = *core::SigningKey::generate();
    const auto old = unbound::wrap(key, person("root"), u"root-secret"_s);
    {
        session::Session session(*store, session::systemClock(), {core::leastCost, computer('a')});
        QVERIFY(session.refresh());
        QVERIFY(session.sign(session::Session::newLedgerId(), {{person("root"), session.now(), u"register.founded"_s, u"root"_s, {{u"name"_s, u"Root"_s}, {u"public_key"_s, key.publicKey().hex()}, {u"organisation"_s, u"O"_s}}}}, key));
        QVERIFY(store->credentials().put(person("root"), key.publicKey().fingerprint(), old, db::Credentials::Others::Keep));
        QVERIFY(store->checkpoint());
        QCOMPARE(placeOf(session, "root"), db::KeyPlace::Unbound);
        QCOMPARE(session.unlock({person("root"), u"wrong-secret"_s}).error().code, ErrorCode::WrongSecret);
        QCOMPARE(placeOf(session, "root"), db::KeyPlace::Unbound);
    }
    QVERIFY(store->close());
    QVERIFY(contentOf(path).contains(old.sealed)); // what is looked for below can be found
    store = *db::Store::open(path, db::Access::ReadWrite);
    {
        session::Session session(*store, session::systemClock(), {core::leastCost, computer('a')});
        QVERIFY(session.refresh());
        QTest::ignoreMessage(QtInfoMsg, "The key of root was bound to this station.");
        QVERIFY(session.unlock(signer("root")));
        QCOMPARE(placeOf(session, "root"), db::KeyPlace::Here);
        QVERIFY(session.unlock(signer("root")));
        session::Session away(*store, session::systemClock(), {core::leastCost, computer('b')});
        QVERIFY(away.refresh());
        QCOMPARE(placeOf(away, "root"), db::KeyPlace::Elsewhere);
    }
    QVERIFY(store->close());
    QVERIFY(!contentOf(path).contains(old.sealed));
    QVERIFY(!contentOf(path + u"-wal"_s).contains(old.sealed));
}

void TstStation::aKeyIsCarriedOver()
{
    Hangar hangar;
    QCOMPARE(hangar.openJob(), QString());
    const auto offer = session::offerTransfer(hangar.session(), signer("tech"));
    QVERIFY(offer);
    QCOMPARE(offer->until.milliseconds() - hangar.session().now().milliseconds(), std::chrono::milliseconds(std::chrono::hours(24)).count());
    Elsewhere away(hangar, 'x');
    QCOMPARE(*session::takeTransfer(away.session(), offer->code, u"tech-secret"_s), person("tech"));
    QVERIFY(away.session().openJob(hangar.job()));
    QVERIFY(away.session().sign(hangar.job(), {undone("tech", u"E1"_s, u"1"_s)}, signer("tech")));
    QVERIFY(hangar.session().sign(hangar.job(), {undone("tech", u"E2"_s, u"2"_s)}, signer("tech")));
    // Nobody else came with it.
    QCOMPARE(away.session().unlock(signer("lead")).error().code, ErrorCode::NotFound);
}

void TstStation::aTransferWorksOnce()
{
    Hangar hangar;
    const auto offer = session::offerTransfer(hangar.session(), signer("tech"));
    QVERIFY(offer);
    Elsewhere first(hangar, 'x');
    Elsewhere second(hangar, 'y');
    QVERIFY(session::takeTransfer(first.session(), offer->code, u"tech-secret"_s));
    QCOMPARE(session::takeTransfer(second.session(), offer->code, u"tech-secret"_s).error().code, ErrorCode::NotFound);
    QVERIFY(!second.session().unlock(signer("tech")));
}

void TstStation::aTransferThatDoesNotWork_data()
{
    QTest::addColumn<QString>("code"); // empty: the right one
    QTest::addColumn<QString>("secret");
    QTest::addColumn<qint64>("after"); // minutes
    QTest::addColumn<int>("outcome");  // an ErrorCode, or -1
    const QString right = u"tech-secret"_s;
    const QString another = u"ABCD-EFGH-IJKL-MNOP-QRST-UVWX-YZ23-4567"_s;
    QTest::newRow("all right") << QString() << right << qint64(59) << -1;
    QTest::newRow("after its time") << QString() << right << qint64(61) << static_cast<int>(ErrorCode::NotFound);
    QTest::newRow("another code") << another << right << qint64(1) << static_cast<int>(ErrorCode::NotFound);
    QTest::newRow("a letter is missing") << another.chopped(1) << right << qint64(1) << static_cast<int>(ErrorCode::BadInput);
    QTest::newRow("another PIN") << QString() << u"tech-secrets"_s << qint64(1) << static_cast<int>(ErrorCode::WrongSecret);
}

void TstStation::aTransferThatDoesNotWork()
{
    QFETCH(QString, code);
    QFETCH(QString, secret);
    QFETCH(qint64, after);
    QFETCH(int, outcome);
    Hangar hangar;
    const auto offer = session::offerTransfer(hangar.session(), signer("tech"), std::chrono::minutes(60));
    QVERIFY(offer);
    hangar.pass(std::chrono::minutes(after));
    Elsewhere away(hangar, 'x');
    const auto taken = session::takeTransfer(away.session(), code.isEmpty() ? offer->code : code, secret);
    QCOMPARE(taken ? -1 : static_cast<int>(taken.error().code), outcome);
    QCOMPARE(away.session().unlock(signer("tech")).has_value(), outcome == -1);
}

void TstStation::aTransferOfAReplacedKey()
{
    Hangar hangar;
    const auto offer = session::offerTransfer(hangar.session(), signer("tech"));
    QVERIFY(offer);
    QVERIFY(session::replaceKey(hangar.session(), person("tech"), u"new-secret"_s, u"PIN seen"_s, signer("root")));
    Elsewhere away(hangar, 'x');
    QCOMPARE(session::takeTransfer(away.session(), offer->code, u"tech-secret"_s).error().code, ErrorCode::NotFound);
    QVERIFY(!session::offerTransfer(hangar.session(), signer("lead"), std::chrono::minutes(0)));
    QVERIFY(!session::offerTransfer(hangar.session(), signer("lead"), std::chrono::hours(24 * 8)));
    QVERIFY(session::offerTransfer(hangar.session(), signer("lead"), std::chrono::hours(24 * 7)));
}

void TstStation::aChangedSecretLeavesNoOldOneElsewhere()
{
    Hangar hangar;
    const auto offer = session::offerTransfer(hangar.session(), signer("tech"));
    const auto unused = session::offerTransfer(hangar.session(), signer("tech"));
    QVERIFY(offer && unused);
    Elsewhere away(hangar, 'x');
    QVERIFY(session::takeTransfer(away.session(), offer->code, u"tech-secret"_s));
    QVERIFY(away.session().unlock(signer("tech")));
    QVERIFY(session::changeSecret(hangar.session(), signer("tech"), u"new-secret"_s));
    QCOMPARE(away.session().unlock(signer("tech")).error().code, ErrorCode::NotFound);
    QCOMPARE(session::takeTransfer(away.session(), unused->code, u"tech-secret"_s).error().code, ErrorCode::NotFound);
    QVERIFY(hangar.session().unlock({person("tech"), u"new-secret"_s}));
}

void TstStation::wrongTriesAreTold()
{
    Hangar hangar;
    QStringList told;
    hangar.session().setTell([&](const QString &sentence) { told << sentence; });
    QVERIFY(hangar.session().unlock(signer("tech")));
    QCOMPARE(told, QStringList());
    for (int i = 0; i < 2; ++i)
        QVERIFY(!hangar.session().unlock({person("tech"), u"wrong-secret"_s}));
    QCOMPARE(told, QStringList());
    QVERIFY(hangar.session().unlock(signer("tech")));
    QCOMPARE(told.size(), 1);
    QVERIFY2(told.front().contains(u"2 times in a row, the last time on 2026-03-02 08:00:00 UTC"), qPrintable(told.front()));
    QVERIFY(hangar.session().unlock(signer("tech")));
    QCOMPARE(told.size(), 1);
}

QTEST_GUILESS_MAIN(TstStation)
#include "tst_station.moc"
