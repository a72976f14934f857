// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/ledger/canonical.hpp"
#include "core/ledger/seal.hpp"
#include "core/ledger/wrapped_key.hpp"

using namespace Qt::StringLiterals;

namespace {

core::SecondKey station() { return *core::SecondKey::ofStation(QByteArray(32, '\7')); }

} // namespace

class TestSeal : public QObject {
    Q_OBJECT

    static core::Statement statement(const core::SigningKey &key)
    {
        return {*core::LedgerId::parse(u"b6f0d2f4-0000-4000-8000-000000000001"), 17, *core::Instant::parse(u"2026-03-02T08:14:31.120Z"),
                *core::PersonId::parse(u"ana"), key.publicKey().fingerprint(), u"performed"_s, u"interface.disconnected"_s, u"E1"_s,
                {{u"tag"_s, u"7"_s}, {u"blanks_fitted"_s, 2}}, core::Head{41, core::Digest::of("r")}, core::Digest::of("p")};
    }

private slots:
    void initTestCase() { QVERIFY(core::readyCryptography()); }

    /// RFC 8032 (January 2017) section 7.1, pure Ed25519; the rows that must fail are built from TEST 2 by section 5.1.7.
    void rfc8032_data()
    {
        QTest::addColumn<QByteArray>("seed");
        QTest::addColumn<QByteArray>("publicKey");
        QTest::addColumn<QByteArray>("message");
        QTest::addColumn<QByteArray>("signature");
        QTest::addColumn<bool>("valid");
        QTest::newRow("TEST 1") << QByteArray::fromHex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60") << QByteArray::fromHex("d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a")
            << QByteArray()
            << QByteArray::fromHex("e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe2465514143"
                "8e7a100b") << true;
        QTest::newRow("TEST 2") << QByteArray::fromHex("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb") << QByteArray::fromHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray::fromHex("72")
            << QByteArray::fromHex("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d2916"
                "12bb0c00") << true;
        QTest::newRow("TEST 3") << QByteArray::fromHex("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7") << QByteArray::fromHex("fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025")
            << QByteArray::fromHex("af82")
            << QByteArray::fromHex("6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027bece"
                "ea1ec40a") << true;
        QTest::newRow("TEST 1024") << QByteArray::fromHex("f5e5767cf153319517630f226876b86c8160cc583bc013744c6bf255f5cc0ee5") << QByteArray::fromHex("278117fc144c72340f67d0f2316e8386ceffbf2b2428c9c51fef7c597f1d426e")
            << QByteArray::fromHex("08b8b2b733424243760fe426a4b54908632110a66c2f6591eabd3345e3e4eb98fa6e264bf09efe12ee50f8f54e9f77b1e355f6c50544e23fb1433ddf"
                "73be84d879de7c0046dc4996d9e773f4bc9efe5738829adb26c81b37c93a1b270b20329d658675fc6ea534e0810a4432826bf58c941efb65d57a338b"
                "bd2e26640f89ffbc1a858efcb8550ee3a5e1998bd177e93a7363c344fe6b199ee5d02e82d522c4feba15452f80288a821a579116ec6dad2b3b310da9"
                "03401aa62100ab5d1a36553e06203b33890cc9b832f79ef80560ccb9a39ce767967ed628c6ad573cb116dbefefd75499da96bd68a8a97b928a8bbc10"
                "3b6621fcde2beca1231d206be6cd9ec7aff6f6c94fcd7204ed3455c68c83f4a41da4af2b74ef5c53f1d8ac70bdcb7ed185ce81bd84359d44254d9562"
                "9e9855a94a7c1958d1f8ada5d0532ed8a5aa3fb2d17ba70eb6248e594e1a2297acbbb39d502f1a8c6eb6f1ce22b3de1a1f40cc24554119a831a9aad6"
                "079cad88425de6bde1a9187ebb6092cf67bf2b13fd65f27088d78b7e883c8759d2c4f5c65adb7553878ad575f9fad878e80a0c9ba63bcbcc2732e694"
                "85bbc9c90bfbd62481d9089beccf80cfe2df16a2cf65bd92dd597b0707e0917af48bbb75fed413d238f5555a7a569d80c3414a8d0859dc65a46128ba"
                "b27af87a71314f318c782b23ebfe808b82b0ce26401d2e22f04d83d1255dc51addd3b75a2b1ae0784504df543af8969be3ea7082ff7fc9888c144da2"
                "af58429ec96031dbcad3dad9af0dcbaaaf268cb8fcffead94f3c7ca495e056a9b47acdb751fb73e666c6c655ade8297297d07ad1ba5e43f1bca32301"
                "651339e22904cc8c42f58c30c04aafdb038dda0847dd988dcda6f3bfd15c4b4c4525004aa06eeff8ca61783aacec57fb3d1f92b0fe2fd1a85f672451"
                "7b65e614ad6808d6f6ee34dff7310fdc82aebfd904b01e1dc54b2927094b2db68d6f903b68401adebf5a7e08d78ff4ef5d63653a65040cf9bfd4aca7"
                "984a74d37145986780fc0b16ac451649de6188a7dbdf191f64b5fc5e2ab47b57f7f7276cd419c17a3ca8e1b939ae49e488acba6b965610b5480109c8"
                "b17b80e1b7b750dfc7598d5d5011fd2dcc5600a32ef5b52a1ecc820e308aa342721aac0943bf6686b64b2579376504ccc493d97e6aed3fb0f9cd71a4"
                "3dd497f01f17c0e2cb3797aa2a2f256656168e6c496afc5fb93246f6b1116398a346f1a641f3b041e989f7914f90cc2c7fff357876e506b50d334ba7"
                "7c225bc307ba537152f3f1610e4eafe595f6d9d90d11faa933a15ef1369546868a7f3a45a96768d40fd9d03412c091c6315cf4fde7cb68606937380d"
                "b2eaaa707b4c4185c32eddcdd306705e4dc1ffc872eeee475a64dfac86aba41c0618983f8741c5ef68d3a101e8a3b8cac60c905c15fc910840b94c00"
                "a0b9d0")
            << QByteArray::fromHex("0aab4c900501b3e24d7cdf4663326a3a87df5e4843b2cbdb67cbf6e460fec350aa5371b1508f9f4528ecea23c436d94b5e8fcd4f681e30a6ac00a970"
                "4a188a03") << true;
        QTest::newRow("TEST SHA(abc)") << QByteArray::fromHex("833fe62409237b9d62ec77587520911e9a759cec1d19755b7da901b96dca3d42") << QByteArray::fromHex("ec172b93ad5e563bf4932c70e1245034c35467ef2efd4d64ebf819683467e2bf")
            << QByteArray::fromHex("ddaf35a193617abacc417349ae20413112e6fa4e89a97ea20a9eeee64b55d39a2192992a274fc1a836ba3c23a3feebbd454d4423643ce80e2a9ac94f"
                "a54ca49f")
            << QByteArray::fromHex("dc2a4459e7369633a52b1bf277839a00201009a3efbf3ecb69bea2186c26b58909351fc9ac90b3ecfdfbc7c66431e0303dca179c138ac17ad9bef117"
                "7331a704") << true;
        QTest::newRow("NEG S>=L (built from TEST 2)") << QByteArray() << QByteArray::fromHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray::fromHex("72")
            << QByteArray::fromHex("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69daf52db7415978abc61b2c2eb6aeebfca0387b2eaeb4302aeeb00d2916"
                "12bb0c10") << false;
        QTest::newRow("NEG flipped byte (built from TEST 2)") << QByteArray() << QByteArray::fromHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray::fromHex("72")
            << QByteArray::fromHex("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d2916"
                "12bb0c01") << false;
        QTest::newRow("NEG other message (built from TEST 2)") << QByteArray() << QByteArray::fromHex("3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c")
            << QByteArray::fromHex("73")
            << QByteArray::fromHex("92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d2916"
                "12bb0c00") << false;
    }
    void rfc8032()
    {
        QFETCH(QByteArray, seed);
        QFETCH(QByteArray, publicKey);
        QFETCH(QByteArray, message);
        QFETCH(QByteArray, signature);
        QFETCH(bool, valid);
        const auto key = *core::PublicKey::fromBytes(publicKey);
        QCOMPARE(core::isSignedBy(key, message, signature), valid);
        if (seed.isEmpty())
            return;
        const auto signing = core::SigningKey::fromSeed(seed);
        QVERIFY(signing);
        QCOMPARE(signing->publicKey(), key);
        QCOMPARE(*signing->sign(message), signature);
        QCOMPARE(*signing->seed(), seed);
    }

    void aSignatureOfAnotherLengthIsNone()
    {
        const auto key = *core::SigningKey::generate();
        const QByteArray signature = *key.sign("bytes");
        QVERIFY(core::isSignedBy(key.publicKey(), "bytes", signature));
        QVERIFY(!core::isSignedBy(key.publicKey(), "bytes", signature.chopped(1)));
        QVERIFY(!core::isSignedBy(key.publicKey(), "bytes", {}));
    }

    void canonicalBytesAreAsDescribed()
    {
        const auto key = *core::SigningKey::fromSeed(QByteArray(32, '\1'));
        core::Statement said = statement(key);
        const QByteArray bytes = core::canonicalBytes(said);
        const QString expected = u"{\"at\":\"2026-03-02T08:14:31.120Z\",\"author\":\"ana\",\"body\":{\"blanks_fitted\":2,\"tag\":\"7\"},\"key\":\"%1\","
                                 "\"kind\":\"interface.disconnected\",\"ledger\":\"b6f0d2f4-0000-4000-8000-000000000001\",\"meaning\":\"performed\",\"prev\":\"%2\","
                                 "\"register\":{\"hash\":\"%3\",\"seq\":41},\"seq\":17,\"subject\":\"E1\",\"v\":1}"_s
                                     .arg(said.key.hex(), said.prev.hex(), said.reg->hash.hex());
        QCOMPARE(QString::fromUtf8(bytes), expected);
        QCOMPARE(*core::parseStatement(bytes), said);
        said.reg.reset();
        said.subject.reset();
        QCOMPARE(*core::parseStatement(core::canonicalBytes(said)), said);
    }

    /// The heads of linked jobs stand in an entry only where there are some, so that those of a job without links stay what they were.
    void linkedHeadsAreAsDescribed()
    {
        const auto key = *core::SigningKey::fromSeed(QByteArray(32, '\1'));
        core::Statement said = statement(key);
        QVERIFY(!core::canonicalBytes(said).contains("linked"));
        said.linked = {{*core::LedgerId::parse(u"a-job"), {3, core::Digest::of("3")}}, {*core::LedgerId::parse(u"b-job"), {12, core::Digest::of("12")}}};
        const QByteArray bytes = core::canonicalBytes(said);
        const QString expected = u"\"ledger\":\"b6f0d2f4-0000-4000-8000-000000000001\",\"linked\":[{\"hash\":\"%1\",\"ledger\":\"a-job\",\"seq\":3},"
                                 "{\"hash\":\"%2\",\"ledger\":\"b-job\",\"seq\":12}],\"meaning\":"_s.arg(core::Digest::of("3").hex(), core::Digest::of("12").hex());
        QVERIFY2(QString::fromUtf8(bytes).contains(expected), bytes.constData());
        QCOMPARE(*core::parseStatement(bytes), said);
    }

    void otherSpellingsOfLinkedHeads_data()
    {
        QTest::addColumn<QString>("find");
        QTest::addColumn<QString>("put");
        const QString one = u"{\"hash\":\"%1\",\"ledger\":\"a-job\",\"seq\":3}"_s.arg(core::Digest::of("3").hex());
        const QString other = u"{\"hash\":\"%1\",\"ledger\":\"b-job\",\"seq\":12}"_s.arg(core::Digest::of("12").hex());
        const QString both = u"["_s + one + u","_s + other + u"]"_s;
        QTest::newRow("an empty list") << both << u"[]"_s;
        QTest::newRow("nothing for a list") << both << u"null"_s;
        QTest::newRow("another order") << both << u"["_s + other + u","_s + one + u"]"_s;
        QTest::newRow("one of them twice") << both << u"["_s + one + u","_s + one + u"]"_s;
        QTest::newRow("one ledger with two heads") << u"b-job"_s << u"a-job"_s;
        QTest::newRow("one without its number") << u",\"seq\":12"_s << QString();
        QTest::newRow("one with more in it") << u"\"seq\":12"_s << u"\"seq\":12,\"x\":1"_s;
        QTest::newRow("a digest that is none") << u"[{\"hash\":\""_s << u"[{\"hash\":\"x"_s;
        QTest::newRow("a ledger that is none") << u"b-job"_s << u" "_s;
        QTest::newRow("a text for a head") << both << u"[\"a-job\"]"_s;
    }
    void otherSpellingsOfLinkedHeads()
    {
        QFETCH(QString, find);
        QFETCH(QString, put);
        const auto key = *core::SigningKey::fromSeed(QByteArray(32, '\1'));
        core::Statement said = statement(key);
        said.linked = {{*core::LedgerId::parse(u"a-job"), {3, core::Digest::of("3")}}, {*core::LedgerId::parse(u"b-job"), {12, core::Digest::of("12")}}};
        QString text = QString::fromUtf8(core::canonicalBytes(said));
        QVERIFY2(text.contains(find), qPrintable(text));
        const auto parsed = core::parseStatement(text.replace(find, put).toUtf8());
        QVERIFY(!parsed);
        QCOMPARE(parsed.error().code, core::ErrorCode::Damaged);
    }

    /// Anything but the one spelling is refused.
    void otherSpellings_data()
    {
        QTest::addColumn<QString>("find");
        QTest::addColumn<QString>("put");
        QTest::newRow("a blank") << u"\"v\":1"_s << u"\"v\": 1"_s;
        QTest::newRow("an escape that is not needed") << u"\"ana\""_s << u"\"\\u0061na\""_s;
        QTest::newRow("an escape in capitals") << u"\"tag\":\"7\""_s << u"\"tag\":\"\\u001F\""_s;
        QTest::newRow("a long escape where there is a short one") << u"\"tag\":\"7\""_s << u"\"tag\":\"\\u000a\""_s;
        QTest::newRow("an escaped slash") << u"\"tag\":\"7\""_s << u"\"tag\":\"\\/\""_s;
        QTest::newRow("members in another order") << u"\"blanks_fitted\":2,\"tag\":\"7\""_s << u"\"tag\":\"7\",\"blanks_fitted\":2"_s;
        QTest::newRow("minus nought") << u"\"blanks_fitted\":2"_s << u"\"blanks_fitted\":-0"_s;
        QTest::newRow("a later form") << u"\"v\":1"_s << u"\"v\":2"_s;
        QTest::newRow("a member too many") << u"\"v\":1"_s << u"\"v\":1,\"x\":1"_s;
        QTest::newRow("a member missing") << u",\"v\":1"_s << QString();
        QTest::newRow("a number for a text") << u"\"author\":\"ana\""_s << u"\"author\":7"_s;
        QTest::newRow("a time in another form") << u"31.120Z"_s << u"31.12Z"_s;
        QTest::newRow("a pin with more in it") << u"\"seq\":41"_s << u"\"seq\":41,\"x\":1"_s;
        QTest::newRow("no number for the form") << u"\"v\":1"_s << u"\"v\":\"1\""_s;
        QTest::newRow("no author") << u"\"author\":\"ana\","_s << QString();
        QTest::newRow("an author that is no name") << u"\"author\":\"ana\""_s << u"\"author\":\" ana\""_s;
        QTest::newRow("two faults, the first is told") << u"\"kind\":\"interface.disconnected\""_s << u"\"kind\":7,\"x\":1"_s;
        QTest::newRow("a sequence number in words") << u"\"seq\":17"_s << u"\"seq\":\"17\""_s;
        QTest::newRow("no subject member") << u"\"subject\":\"E1\","_s << QString();
        QTest::newRow("a subject that is a number") << u"\"subject\":\"E1\""_s << u"\"subject\":1"_s;
        QTest::newRow("no body") << u"\"body\":{\"blanks_fitted\":2,\"tag\":\"7\"},"_s << QString();
        QTest::newRow("a pin that is none") << u"\"register\":{"_s << u"\"register\":[],\"x\":{"_s;
        QTest::newRow("a pin without its number") << u",\"seq\":41"_s << QString();
        QTest::newRow("a pin whose digest is none") << u"\"register\":{\"hash\":\""_s << u"\"register\":{\"hash\":\"x"_s;
        QTest::newRow("a body that is none") << u"{\"blanks_fitted\":2,\"tag\":\"7\"}"_s << u"[]"_s;
    }
    void otherSpellings()
    {
        QFETCH(QString, find);
        QFETCH(QString, put);
        const auto key = *core::SigningKey::fromSeed(QByteArray(32, '\1'));
        QString text = QString::fromUtf8(core::canonicalBytes(statement(key)));
        QVERIFY(text.contains(find));
        QVERIFY(core::parseStatement(text.toUtf8()));
        const auto parsed = core::parseStatement(text.replace(find, put).toUtf8());
        QVERIFY(!parsed);
        QCOMPARE(parsed.error().code, core::ErrorCode::Damaged);
    }

    /// What was written is read again, whatever stands in a text: each character below a blank, both quotes and the backslash,
    /// and what UTF-8 makes of one to four bytes (RFC 8785 section 3.2.2.2).
    void everyCharacterIsReadAgain()
    {
        const auto key = *core::SigningKey::fromSeed(QByteArray(32, '\1'));
        core::Statement said = statement(key);
        QString all;
        for (char16_t c = 0; c < 0x80; ++c)
            all += QChar(c);
        all += u"é€🔧"_s;
        for (const QChar c : all) {
            if (c.isSurrogate())
                continue;
            said.body.set(u"remarks"_s, QString(u"a"_s + c));
            QVERIFY2(core::parseStatement(core::canonicalBytes(said)), qPrintable(QString::number(c.unicode(), 16)));
        }
        said.body = {{u"remarks"_s, all}, {all, 7}, {u"yes"_s, true}, {u"no"_s, false}, {u"nothing"_s, core::json::Value()},
                     {u"least"_s, -core::json::largestInteger}, {u"list"_s, core::json::Array{all, core::json::Array{}, core::json::Object{}}}};
        const auto again = core::parseStatement(core::canonicalBytes(said));
        QVERIFY2(again, again ? "" : qPrintable(again.error().message));
        QCOMPARE(*again, said);
    }

    void onlyTheNamedKeySeals()
    {
        const auto key = *core::SigningKey::generate();
        const auto entry = core::seal(statement(key), key);
        QVERIFY(entry);
        QCOMPARE(entry->hash, core::Digest::of(entry->bytes));
        QVERIFY(core::isSignedBy(key.publicKey(), entry->bytes, entry->signature));
        QCOMPARE(core::seal(statement(key), *core::SigningKey::generate()).error().code, core::ErrorCode::WrongSecret);
    }

    void aWrappedKeyOpensForItsOwnerAlone()
    {
        const auto ana = *core::PersonId::parse(u"ana");
        const auto key = *core::SigningKey::generate();
        const auto wrapped = core::wrap(key, ana, u"482913"_s, station(), core::leastCost);
        QVERIFY(wrapped);
        QCOMPARE(core::unwrap(*wrapped, ana, u"482913"_s, station())->publicKey(), key.publicKey());
        QCOMPARE(core::unwrap(*wrapped, ana, u"482914"_s, station()).error().code, core::ErrorCode::WrongSecret);
        QCOMPARE(core::unwrap(*wrapped, *core::PersonId::parse(u"ben"), u"482913"_s, station()).error().code, core::ErrorCode::WrongSecret);
        core::WrappedKey moved = *wrapped;
        moved.sealed[0] = static_cast<char>(moved.sealed[0] ^ 1);
        QCOMPARE(core::unwrap(moved, ana, u"482913"_s, station()).error().code, core::ErrorCode::WrongSecret);
        moved.salt.chop(1);
        QCOMPARE(core::unwrap(moved, ana, u"482913"_s, station()).error().code, core::ErrorCode::Damaged);
        QVERIFY(!wrapped->sealed.contains(*key.seed()));
    }

    /// Cost and lengths stand beside the sealed key and are not secret, so they are looked at before they are used.
    void aDamagedKeyIsNotTried_data()
    {
        QTest::addColumn<QString>("member");
        QTest::addColumn<qint64>("value"); // length or cost
        QTest::newRow("salt too short") << u"salt"_s << qint64(15);
        QTest::newRow("nonce too long") << u"nonce"_s << qint64(25);
        QTest::newRow("sealed key too short") << u"sealed"_s << qint64(47);
        QTest::newRow("no pass") << u"passes"_s << qint64(0);
        QTest::newRow("65 passes") << u"passes"_s << qint64(65);
        QTest::newRow("less memory than the function takes") << u"memory"_s << qint64(8191);
        QTest::newRow("more memory than 4 GiB") << u"memory"_s << (qint64(1) << 32) + 1;
    }
    void aDamagedKeyIsNotTried()
    {
        QFETCH(QString, member);
        QFETCH(qint64, value);
        const auto ana = *core::PersonId::parse(u"ana");
        core::WrappedKey wrapped = *core::wrap(*core::SigningKey::generate(), ana, u"482913"_s, station(), core::leastCost);
        QVERIFY(core::unwrap(wrapped, ana, u"482913"_s, station()));
        for (auto &[name, bytes] : {std::pair{u"salt"_s, &wrapped.salt}, std::pair{u"nonce"_s, &wrapped.nonce}, std::pair{u"sealed"_s, &wrapped.sealed}}) {
            if (name == member)
                bytes->resize(value);
        }
        if (member == u"passes")
            wrapped.cost.passes = value;
        if (member == u"memory")
            wrapped.cost.memoryBytes = value;
        QCOMPARE(core::unwrap(wrapped, ana, u"482913"_s, station()).error().code, core::ErrorCode::Damaged);
    }

    void aKeyHasItsLength()
    {
        QVERIFY(core::SigningKey::fromSeed(QByteArray(32, '\1')));
        QCOMPARE(core::SigningKey::fromSeed(QByteArray(31, '\1')).error().code, core::ErrorCode::Crypto);
        QVERIFY(core::PublicKey::fromBytes(QByteArray(32, '\1')));
        QVERIFY(!core::PublicKey::fromBytes(QByteArray(33, '\1')));
        QVERIFY(!core::PublicKey::parse(u"ab"));
    }

    /// What the machine cannot give is said, not tried: 5 TiB to stretch one secret.
    void moreMemoryThanThereIs()
    {
        const auto wrapped = core::wrap(*core::SigningKey::generate(), *core::PersonId::parse(u"ana"), u"482913"_s, station(), {core::leastCost.passes, qint64(5) << 40});
        QVERIFY(!wrapped);
        QCOMPARE(wrapped.error().code, core::ErrorCode::Crypto);
        QVERIFY2(wrapped.error().message.contains(u"memory"), qPrintable(wrapped.error().message));
    }

    void aShortSecretIsNotTaken()
    {
        const auto key = *core::SigningKey::generate();
        const auto ana = *core::PersonId::parse(u"ana");
        QCOMPARE(core::wrap(key, ana, u"48291"_s, station(), core::leastCost).error().code, core::ErrorCode::BadInput);
        QVERIFY(core::wrap(key, ana, u"482913"_s, station(), core::leastCost));
    }

    void wrongSecretsAreSlowedDownThenLocked()
    {
        QCOMPARE(core::waitMilliseconds(0), 0);
        QCOMPARE(core::waitMilliseconds(2), 0);
        QCOMPARE(core::waitMilliseconds(3), 5'000);
        QCOMPARE(core::waitMilliseconds(4), 10'000);
        QCOMPARE(core::waitMilliseconds(9), 300'000);
        QCOMPARE(core::waitMilliseconds(1000), 300'000);
        QVERIFY(!core::isLockedOut(9));
        QVERIFY(core::isLockedOut(10));
    }
};

QTEST_GUILESS_MAIN(TestSeal)
#include "tst_seal.moc"
