// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/ledger/second_key.hpp"
#include "core/ledger/transfer_code.hpp"
#include "core/ledger/wrapped_key.hpp"
#include "tests/support/unbound_key.hpp"

using namespace Qt::StringLiterals;
using core::ErrorCode;

namespace {

core::SecondKey station(char filledWith) { return *core::SecondKey::ofStation(QByteArray(32, filledWith)); }
core::PersonId ana() { return *core::PersonId::parse(u"ana"); }

core::Instant noon() { return *core::Instant::parse(u"2026-03-02T12:00:00Z"); }
core::Instant later() { return *core::Instant::parse(u"2026-03-02T12:00:01Z"); }

/// The deterministic sequence of RFC 7693 appendix E.
QByteArray sequence(qsizetype length, quint32 seed)
{
    QByteArray out;
    quint32 a = 0xDEAD4BAD * seed;
    quint32 b = 1;
    for (qsizetype i = 0; i < length; ++i) {
        const quint32 t = a + b;
        a = b;
        b = t;
        out += static_cast<char>(t >> 24);
    }
    return out;
}

/// Tries every PIN of two figures behind a known beginning, as somebody with a copy of a store would try all of six.
QString guessed(const core::WrappedKey &wrapped, const core::SecondKey &second)
{
    for (int pin = 0; pin < 100; ++pin) {
        const QString guess = u"4829%1"_s.arg(pin, 2, 10, QChar(u'0'));
        if (core::unwrap(wrapped, ana(), guess, second))
            return guess;
    }
    return {};
}

} // namespace

class TestStationKey : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(core::readyCryptography()); }

    /// RFC 7693 (November 2015) appendix A: BLAKE2b-512 of "abc".
    void blake2bOfAbc()
    {
        QCOMPARE(core::blake2b("abc", {}, 64).toHex(), "ba80a53f981c4d0d6a2797b69f12f6e94c212f14685ac4b74b12bb6fdbffa2d17d87c5392aab792dc252d5de4533cc9518d38aa8dbf1925ab92386edd4009923");
    }

    /// RFC 7693 (November 2015) appendix E: the hash of 48 hashes, keyed and not, of 20 to 64 bytes, over 0 to 1024 bytes.
    void blake2bOfManyLengths()
    {
        QByteArray all;
        for (const qsizetype size : {20, 32, 48, 64}) {
            for (const qsizetype length : {0, 3, 128, 129, 255, 1024}) {
                const QByteArray message = sequence(length, static_cast<quint32>(length));
                all += core::blake2b(message, {}, size);
                all += core::blake2b(message, sequence(size, static_cast<quint32>(size)), size);
            }
        }
        QCOMPARE(core::blake2b(all, {}, 32).toHex(), "c23a7800d98123bd10f506c61e29da5603d763b8bbad2e737f5e765a7bccd475");
        all[7] = static_cast<char>(all[7] ^ 1);
        QVERIFY(core::blake2b(all, {}, 32).toHex() != "c23a7800d98123bd10f506c61e29da5603d763b8bbad2e737f5e765a7bccd475");
    }

    /// RFC 4648 (October 2006) section 10, the test vector of whole groups; the second row is its alphabet (section 6) in order.
    void base32()
    {
        QCOMPARE(core::base32("fooba"), "MZXW6YTB");
        QCOMPARE(core::base32(QByteArray::fromHex("00443214c74254b635cf84653a56d7c675be77df")), "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567");
        QCOMPARE(core::base32({}), "");
    }

    void aCodeIsReadAsItWasShown()
    {
        const QByteArray code = core::newTransferCode();
        const QString shown = core::spelledCode(code);
        QCOMPARE(shown.size(), 39);
        QCOMPARE(shown.count(u'-'), 7);
        QCOMPARE(*core::typedCode(shown), code);
        QCOMPARE(*core::typedCode(u"  "_s + shown.toLower().replace(u'-', u' ')), code);
        QVERIFY(core::newTransferCode() != code);
    }

    void aCodeThatIsNone_data()
    {
        QTest::addColumn<QString>("typed");
        QTest::addColumn<bool>("good");
        const QString whole = u"ABCD-EFGH-IJKL-MNOP-QRST-UVWX-YZ23-4567"_s;
        QTest::newRow("whole") << whole << true;
        QTest::newRow("one short") << whole.chopped(1) << false;
        QTest::newRow("one too many") << whole + u'A' << false;
        QTest::newRow("a nought for an O") << QString(whole).replace(u'O', u'0') << false;
        QTest::newRow("nothing") << QString() << false;
    }
    void aCodeThatIsNone()
    {
        QFETCH(QString, typed);
        QFETCH(bool, good);
        const auto code = core::typedCode(typed);
        QCOMPARE(code.has_value(), good);
        if (!code)
            QCOMPARE(code.error().code, ErrorCode::BadInput);
    }

    void aSecretHasItsLength()
    {
        QVERIFY(core::SecondKey::ofStation(core::newStationSecret()));
        QCOMPARE(core::SecondKey::ofStation(QByteArray(31, 'a')).error().code, ErrorCode::BadInput);
        QCOMPARE(core::SecondKey::ofStation({}).error().code, ErrorCode::BadInput);
        QCOMPARE(core::SecondKey::ofTransfer(QByteArray(19, 'a'), noon()).error().code, ErrorCode::BadInput);
    }

    /// The public id is the same each time, another for another secret, and not the secret.
    void theIdTellsNothing()
    {
        QCOMPARE(station('a').id(), station('a').id());
        QVERIFY(station('a').id() != station('b').id());
        QVERIFY(station('a').id().bytes() != QByteArray(32, 'a'));
        QVERIFY(station('a').id() != core::Digest::of(QByteArray(32, 'a')));
    }

    void aKeyOpensAtItsStationAlone()
    {
        const auto key = *core::SigningKey::generate();
        const auto wrapped = *core::wrap(key, ana(), u"482913"_s, station('a'), core::leastCost);
        QCOMPARE(wrapped.boundTo, std::optional(station('a').id()));
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, station('a'))->publicKey(), key.publicKey());
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, station('b')).error().code, ErrorCode::BadInput);
        QCOMPARE(core::unwrap(wrapped, ana(), u"482914"_s, station('a')).error().code, ErrorCode::WrongSecret);
    }

    /// The name of the station beside the key opens nothing: neither another one's with its name, nor no name at all.
    void aForgedNameOpensNothing()
    {
        const auto key = *core::SigningKey::generate();
        auto wrapped = *core::wrap(key, ana(), u"482913"_s, station('a'), core::leastCost);
        wrapped.boundTo = station('b').id();
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, station('b')).error().code, ErrorCode::WrongSecret);
        wrapped.boundTo.reset();
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, station('b')).error().code, ErrorCode::WrongSecret);
    }

    /// A copied store alone: all PINs are tried and none is found out. With the secret of the station it is a matter of counting.
    void allPinsOfACopy()
    {
        const auto key = *core::SigningKey::generate();
        auto copied = *core::wrap(key, ana(), u"482937"_s, station('a'), core::leastCost);
        QCOMPARE(guessed(copied, station('a')), "482937");
        copied.boundTo = station('b').id(); // or each try would be refused before it is made
        QCOMPARE(guessed(copied, station('b')), QString());
        copied.boundTo.reset();
        QCOMPARE(guessed(copied, station('b')), QString());
    }

    /// Stores from before: the PIN alone opens the key, so the PIN is found out from a copy.
    void aKeyFromBeforeThereWereStations()
    {
        const auto key = *core::SigningKey::generate();
        const auto old = unbound::wrap(key, ana(), u"482937"_s);
        QCOMPARE(core::unwrap(old, ana(), u"482937"_s, station('a'))->publicKey(), key.publicKey());
        QCOMPARE(core::unwrap(old, ana(), u"482938"_s, station('a')).error().code, ErrorCode::WrongSecret);
        QCOMPARE(guessed(old, station('b')), "482937");
    }

    /// Code, moment and PIN: all three as they were.
    void aTransferOpensWithAllOfIt()
    {
        const auto key = *core::SigningKey::generate();
        const QByteArray code(20, 'c');
        const auto second = *core::SecondKey::ofTransfer(code, noon());
        const auto wrapped = *core::wrap(key, ana(), u"482913"_s, second, core::leastCost);
        QVERIFY(core::unwrap(wrapped, ana(), u"482913"_s, *core::SecondKey::ofTransfer(code, noon())));
        QCOMPARE(core::unwrap(wrapped, ana(), u"482914"_s, second).error().code, ErrorCode::WrongSecret);
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, *core::SecondKey::ofTransfer(QByteArray(20, 'd'), noon())).error().code, ErrorCode::BadInput);
        QCOMPARE(core::unwrap(wrapped, ana(), u"482913"_s, *core::SecondKey::ofTransfer(code, later())).error().code, ErrorCode::BadInput);
    }
};

QTEST_GUILESS_MAIN(TestStationKey)
#include "tst_station_key.moc"
