// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/value/digest.hpp"
#include "core/value/id.hpp"
#include "core/value/instant.hpp"
#include "core/value/quantity.hpp"

using namespace Qt::StringLiterals;
using core::Decimal;
using core::Quantity;

class TestValues : public QObject {
    Q_OBJECT

private slots:
    /// RFC 3339 (July 2002) section 5.8; the strings as read in test data that follows the RFC. Rows marked `from memory` were
    /// not read anywhere.
    void instants_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("valid");
        QTest::addColumn<qint64>("milliseconds");
        QTest::newRow("RFC 3339 5.8, UTC") << u"1985-04-12T23:20:50.52Z"_s << true << qint64(482196050520);
        QTest::newRow("RFC 3339 5.8, eight hours behind") << u"1996-12-19T16:39:57-08:00"_s << true << qint64(851042397000);
        QTest::newRow("RFC 3339 5.8, leap second: refused here") << u"1990-12-31T23:59:60Z"_s << false << qint64(0);
        QTest::newRow("RFC 3339 5.8, leap second with offset (from memory)") << u"1990-12-31T15:59:60-08:00"_s << false << qint64(0);
        QTest::newRow("RFC 3339 5.8, twenty minutes ahead") << u"1937-01-01T12:00:27.87+00:20"_s << true << qint64(-1041337172130);
        QTest::newRow("RFC 3339 5.6, small letters (from memory)") << u"1985-04-12t23:20:50.52z"_s << true << qint64(482196050520);
        QTest::newRow("RFC 3339 5.6, a blank for the T (from memory)") << u"1985-04-12 23:20:50.52Z"_s << false << qint64(0);
        QTest::newRow("month 13") << u"1990-13-31T23:59:00Z"_s << false << qint64(0);
        QTest::newRow("30 February") << u"2026-02-30T00:00:00Z"_s << false << qint64(0);
        QTest::newRow("29 February 2024") << u"2024-02-29T00:00:00Z"_s << true << qint64(1709164800000);
        QTest::newRow("a date alone") << u"2017-01-01"_s << false << qint64(0);
        QTest::newRow("no offset") << u"2017-01-01T00:00:00"_s << false << qint64(0);
        QTest::newRow("the ledger's form") << u"2026-03-02T08:14:31.120Z"_s << true << qint64(1772439271120);
        QTest::newRow("four decimals would be rounded") << u"2026-03-02T08:14:31.1201Z"_s << false << qint64(0);
        QTest::newRow("no decimals after the point") << u"2026-03-02T08:14:31.Z"_s << false << qint64(0);
        QTest::newRow("hour 24") << u"2026-03-02T24:00:00Z"_s << false << qint64(0);
        QTest::newRow("something behind it") << u"2026-03-02T08:14:31Z "_s << false << qint64(0);
        QTest::newRow("the first moment") << u"0001-01-01T00:00:00.000Z"_s << true << qint64(-62135596800000);
        QTest::newRow("year nought") << u"0000-12-31T23:59:59.999Z"_s << false << qint64(0);
        QTest::newRow("the first day, in a zone ahead: year nought in UTC") << u"0001-01-01T00:00:00+00:01"_s << false << qint64(0);
        QTest::newRow("the last moment") << u"9999-12-31T23:59:59.999Z"_s << true << qint64(253402300799999);
        QTest::newRow("the last day, in a zone behind: year 10000 in UTC") << u"9999-12-31T23:59:59-00:01"_s << false << qint64(0);
        QTest::newRow("the widest offset") << u"2026-03-02T23:59:00+23:59"_s << true << qint64(1772409600000);
        QTest::newRow("an offset of 24 hours") << u"2026-03-02T23:59:00+24:00"_s << false << qint64(0);
        QTest::newRow("an offset of 60 minutes") << u"2026-03-02T23:59:00+01:60"_s << false << qint64(0);
        QTest::newRow("an offset without its colon") << u"2026-03-02T23:59:00+01-00"_s << false << qint64(0);
        QTest::newRow("an offset of hours alone") << u"2026-03-02T23:59:00+01"_s << false << qint64(0);
        QTest::newRow("an offset with letters") << u"2026-03-02T23:59:00+ab:00"_s << false << qint64(0);
        QTest::newRow("something behind the offset") << u"2026-03-02T23:59:00+01:000"_s << false << qint64(0);
        QTest::newRow("slashes in the date") << u"2026/03/02T08:14:31Z"_s << false << qint64(0);
        QTest::newRow("slashes in half the date") << u"2026-03/02T08:14:31Z"_s << false << qint64(0);
        QTest::newRow("points in the time") << u"2026-03-02T08.14.31Z"_s << false << qint64(0);
        QTest::newRow("a point in half the time") << u"2026-03-02T08:14.31Z"_s << false << qint64(0);
        QTest::newRow("minute 60") << u"2026-03-02T08:60:31Z"_s << false << qint64(0);
        QTest::newRow("letters for a year") << u"MMXX-03-02T08:14:31Z"_s << false << qint64(0);
        QTest::newRow("signs for digits") << u"2026-+3-02T08:14:31Z"_s << false << qint64(0);
    }
    void instants()
    {
        QFETCH(QString, text);
        QFETCH(bool, valid);
        QFETCH(qint64, milliseconds);
        const auto instant = core::Instant::parse(text);
        QCOMPARE(instant.has_value(), valid);
        if (valid) {
            QCOMPARE(instant->milliseconds(), milliseconds);
            QCOMPARE(core::Instant::parseLedger(instant->text()), instant);
        }
    }

    void onlyOneFormStandsInALedger()
    {
        QVERIFY(core::Instant::parseLedger(u"2026-03-02T08:14:31.120Z"));
        for (const QString &text : {u"2026-03-02T08:14:31.12Z"_s, u"2026-03-02T08:14:31.120+00:00"_s, u"2026-03-02t08:14:31.120Z"_s, u"2026-03-02T08:14:31Z"_s, u"2026-03-02T08:14:31.120z"_s,
                                    u"2026-03-02T08:14:31+00:0"_s, u"2026-03-02T08:14:31,120Z"_s})
            QVERIFY2(!core::Instant::parseLedger(text), qPrintable(text));
    }

    /// FIPS 180-4, digests of the example messages (FIPS 180-2 appendix B.1, B.2; NIST CAVP length 0; B.3 from memory).
    void sha256_data()
    {
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QString>("digest");
        QTest::newRow("B.1 abc") << QByteArray("abc") << u"ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"_s;
        QTest::newRow("B.2 448 bits") << QByteArray("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq") << u"248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"_s;
        QTest::newRow("B.3 a million a") << QByteArray(1'000'000, 'a') << u"cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"_s;
        QTest::newRow("nothing") << QByteArray() << u"e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"_s;
    }
    void sha256()
    {
        QFETCH(QByteArray, message);
        QFETCH(QString, digest);
        QCOMPARE(core::Digest::of(message).hex(), digest);
        QCOMPARE(core::Digest::parse(digest), core::Digest::of(message));
        QVERIFY(!core::Digest::parse(digest.toUpper()));
        QVERIFY(!core::Digest::parse(QStringView(digest).chopped(1)));
        for (const QChar near : {u'/', u':', u'`', u'g'}) // what stands beside the digits
            QVERIFY(!core::Digest::parse(digest.chopped(1) + near));
        QVERIFY(!core::Digest::fromBytes(core::Digest::of(message).bytes().chopped(1)));
        QCOMPARE(core::Digest::fromBytes(core::Digest::of(message).bytes()), core::Digest::of(message));
    }

    /// The same messages in two pieces, cut at every place, and read while more is to come.
    void sha256InPieces()
    {
        const QByteArray message = "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
        for (qsizetype cut = 0; cut <= message.size(); ++cut) {
            core::DigestStream stream;
            stream.add(message.first(cut));
            QCOMPARE(stream.soFar(), core::Digest::of(message.first(cut)));
            stream.add(message.sliced(cut));
            QCOMPARE(stream.soFar(), core::Digest::of(message));
            core::DigestStream moved = std::move(stream);
            moved.add("!");
            QCOMPARE(moved.soFar(), core::Digest::of(message + '!'));
        }
    }

    void decimals_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("valid");
        QTest::newRow("whole") << u"12"_s << true;
        QTest::newRow("zeros kept") << u"12.50"_s << true;
        QTest::newRow("negative") << u"-0.3"_s << true;
        QTest::newRow("eighteen digits") << u"123456789012345678"_s << true;
        QTest::newRow("nineteen digits") << u"1234567890123456789"_s << false;
        QTest::newRow("forty digits") << QString(40, u'9') << false;
        QTest::newRow("leading zeros do not count") << u"0000000000000000000000012"_s << true;
        QTest::newRow("comma") << u"12,5"_s << false;
        QTest::newRow("no whole part") << u".5"_s << false;
        QTest::newRow("nothing after the point") << u"5."_s << false;
        QTest::newRow("two points") << u"1.2.3"_s << false;
        QTest::newRow("plus") << u"+5"_s << false;
        QTest::newRow("exponent") << u"5e2"_s << false;
        QTest::newRow("blank") << u" 5"_s << false;
        QTest::newRow("sign alone") << u"-"_s << false;
        QTest::newRow("empty") << QString() << false;
        QTest::newRow("eighteen places") << u"0.000000000000000001"_s << true;
        QTest::newRow("nineteen places") << u"0.0000000000000000001"_s << false;
        QTest::newRow("digits of another script") << u"٣"_s << false;
    }
    void decimals()
    {
        QFETCH(QString, text);
        QFETCH(bool, valid);
        const auto decimal = Decimal::parse(text);
        QCOMPARE(decimal.has_value(), valid);
        if (decimal)
            QCOMPARE(decimal->text(), text);
    }

    void decimalsCompareExactly_data()
    {
        QTest::addColumn<QString>("a");
        QTest::addColumn<QString>("b");
        QTest::addColumn<int>("order");
        QTest::newRow("zeros behind") << u"12.5"_s << u"12.500"_s << 0;
        QTest::newRow("the last place") << u"12.500000000000001"_s << u"12.5"_s << 1;
        QTest::newRow("one tenth and two tenths") << u"0.30"_s << u"0.3"_s << 0;
        QTest::newRow("negative") << u"-2"_s << u"-1.9"_s << -1;
        QTest::newRow("minus nought") << u"-0"_s << u"0"_s << 0;
        QTest::newRow("across nought") << u"-0.001"_s << u"0"_s << -1;
        QTest::newRow("length is not size") << u"0.9"_s << u"10"_s << -1;
        QTest::newRow("below nought, both") << u"-1.5"_s << u"-1.50"_s << 0;
        QTest::newRow("one of them below nought") << u"0.001"_s << u"-0.001"_s << 1;
        QTest::newRow("nought and something") << u"0"_s << u"0.001"_s << -1;
        QTest::newRow("largest") << u"999999999999999999"_s << u"999999999999999998"_s << 1;
    }
    void decimalsCompareExactly()
    {
        QFETCH(QString, a);
        QFETCH(QString, b);
        QFETCH(int, order);
        const auto left = *Decimal::parse(a);
        const auto right = *Decimal::parse(b);
        QCOMPARE(left < right, order < 0);
        QCOMPARE(left == right, order == 0);
        QCOMPARE(right < left, order > 0);
    }

    /// NIST SP 811 (2008) appendix B: 1 lbf·in = 0.1129848290276167 N·m, 1 lbf·ft = 1.3558179483314004 N·m, 1 kgf·m = 9.80665 N·m;
    /// exact by the definitions of pound (0.45359237 kg), inch (0.0254 m) and standard gravity.
    void quantitiesCompareAcrossUnits_data()
    {
        QTest::addColumn<QString>("a");
        QTest::addColumn<QString>("unitA");
        QTest::addColumn<QString>("b");
        QTest::addColumn<QString>("unitB");
        QTest::addColumn<int>("order");
        QTest::newRow("a pound-force inch") << u"1"_s << u"lbf·in"_s << u"0.1129848290276167"_s << u"N·m"_s << 0;
        QTest::newRow("and one unit in the last place less") << u"1"_s << u"lbf·in"_s << u"0.1129848290276166"_s << u"N·m"_s << 1;
        QTest::newRow("twelve inches to the foot") << u"12"_s << u"lbf·in"_s << u"1"_s << u"lbf·ft"_s << 0;
        QTest::newRow("kilogram-force metre") << u"1"_s << u"kgf·m"_s << u"9.80665"_s << u"N·m"_s << 0;
        QTest::newRow("milliohms") << u"2.5"_s << u"mΩ"_s << u"0.0025"_s << u"Ω"_s << 0;
        QTest::newRow("spelling of the newton metre") << u"5"_s << u"Nm"_s << u"5"_s << u"N.m"_s << 0;
    }
    void quantitiesCompareAcrossUnits()
    {
        QFETCH(QString, a);
        QFETCH(QString, unitA);
        QFETCH(QString, b);
        QFETCH(QString, unitB);
        QFETCH(int, order);
        const auto left = *Quantity::parse(a, unitA);
        const auto right = *Quantity::parse(b, unitB);
        QCOMPARE(left == right, order == 0);
        QCOMPARE(left > right, order > 0);
    }

    void decimalsAreDrawn()
    {
        QCOMPARE(Decimal::parse(u"-12.50")->approximate(), -12.5);
        QCOMPARE(Decimal::parse(u"0.000000000000000001")->approximate(), 1e-18);
    }

    void torqueIsNoResistance()
    {
        const auto torque = *Quantity::parse(u"5", u"N·m");
        const auto resistance = *Quantity::parse(u"5", u"mΩ");
        QVERIFY(!(torque < resistance) && !(torque > resistance) && !(torque == resistance));
        QVERIFY(!Quantity::parse(u"5", u"in-lb"));
        QVERIFY(!Quantity::parse(u"5", u""));
        QVERIFY(!Quantity::parse(u"five", u"N·m"));
        QCOMPARE(Quantity::parse(u"2.50", QString(QChar(0x2126)))->text(), u"2.50 Ω"_s);
    }

    void names_data()
    {
        QTest::addColumn<QString>("text");
        QTest::addColumn<bool>("valid");
        QTest::newRow("a word") << u"E12"_s << true;
        QTest::newRow("blanks inside") << u"left upper"_s << true;
        QTest::newRow("empty") << QString() << false;
        QTest::newRow("blank before") << u" E12"_s << false;
        QTest::newRow("blank behind") << u"E12 "_s << false;
        QTest::newRow("a line break") << u"E\n12"_s << false;
        QTest::newRow("unseen direction mark") << QString(u"E"_s + QChar(0x202E) + u"12"_s) << false;
        QTest::newRow("128 characters") << QString(128, u'x') << true;
        QTest::newRow("129 characters") << QString(129, u'x') << false;
    }
    void names()
    {
        QFETCH(QString, text);
        QFETCH(bool, valid);
        QCOMPARE(core::InterfaceId::parse(text).has_value(), valid);
    }
};

QTEST_GUILESS_MAIN(TestValues)
#include "tst_values.moc"
