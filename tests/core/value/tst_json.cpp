// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTest>

#include "core/value/json.hpp"

using namespace Qt::StringLiterals;

/// Canonical JSON. RFC 8785 (June 2020), sections 3.2.2 and 3.2.3, and the test data of its author
/// (cyberphone/json-canonicalization, testdata/, 2024-12-13). A ledger holds no fractions, so those samples that contain
/// fractions must be refused, not rewritten.
class TestJson : public QObject {
    Q_OBJECT

private slots:
    void canonicalForm_data()
    {
        QTest::addColumn<QByteArray>("input");
        QTest::addColumn<QByteArray>("canonical");
        QTest::newRow("RFC 8785 3.2.3: names in UTF-16 order")
            << QByteArray(R"({"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One","\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"})")
            << QByteArray("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\xc2\x80\":\"Control\",\"\xc3\xb6\":\"Latin Small Letter O With Diaeresis\",\"\xe2\x82\xac\":\"Euro Sign\",\"\xf0\x9f\x98\x80\":\"Emoji: Grinning Face\",\"\xef\xac\xb3\":\"Hebrew Letter Dalet With Dagesh\"}");
        QTest::newRow("RFC 8785 3.2.2.2: shortest escapes")
            << QByteArray(R"({"string":"\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/"})")
            << QByteArray("{\"string\":\"\xe2\x82\xac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
        QTest::newRow("RFC 8785 3.2.2.2: the escapes of two characters, all of them") << QByteArray(R"({"s":"\u0008\u0009\u000a\u000c\u000d\u0022\u005c\u007f"})") << QByteArray("{\"s\":\"\\b\\t\\n\\f\\r\\\"\\\\\x7f\"}");
        QTest::newRow("testdata french: no locale") << QByteArray(R"({"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"})")
                                                    << QByteArray(R"({"peach":"This sorting order","péché":"is wrong according to French","pêche":"but canonicalization MUST","sin":"ignore locale"})");
        QTest::newRow("testdata unicode: not normalised") << QByteArray(R"({"Unnormalized Unicode":"A\u030a"})") << QByteArray("{\"Unnormalized Unicode\":\"A\xcc\x8a\"}");
        QTest::newRow("literals, nesting, blanks") << QByteArray("{ \"b\" : [ null , true , false , { } ] , \"a\" : { \"z\" : [ ] , \"y\" : -0 } }")
                                                   << QByteArray(R"({"a":{"y":0,"z":[]},"b":[null,true,false,{}]})");
        QTest::newRow("RFC 8785 appendix B: the largest integer") << QByteArray(R"({"n":9007199254740991,"m":-9007199254740991})") << QByteArray(R"({"m":-9007199254740991,"n":9007199254740991})");
    }
    void canonicalForm()
    {
        QFETCH(QByteArray, input);
        QFETCH(QByteArray, canonical);
        const auto object = core::json::parseObject(input);
        QVERIFY2(object.has_value(), object ? "" : qPrintable(object.error().message));
        QCOMPARE(core::json::canonical(*object), canonical);
        // What is canonical stays as it is.
        QCOMPARE(core::json::canonical(*core::json::parseObject(canonical)), canonical);
    }

    static QByteArray withMembers(int count)
    {
        QByteArray json("{");
        for (int n = count; n-- > 0;) // the last name first, which is the slowest to sort in
            json += "\"m" + QByteArray::number(n) + "\":1" + (n > 0 ? "," : "}");
        return json;
    }

    void asManyMembersAsMayBe() { QVERIFY(core::json::parseObject(withMembers(1000))); }

    void refused_data()
    {
        QTest::addColumn<QByteArray>("input");
        QTest::newRow("testdata structures: a fraction, though whole") << QByteArray(R"({"n":56.0})");
        QTest::newRow("testdata values: an exponent") << QByteArray(R"({"n":1E30})");
        QTest::newRow("RFC 8785 appendix B: 2^53") << QByteArray(R"({"n":9007199254740992})");
        QTest::newRow("RFC 8785 appendix B: −2^53") << QByteArray(R"({"n":-9007199254740992})");
        QTest::newRow("beyond 63 bits") << QByteArray(R"({"n":18446744073709551615})");
        QTest::newRow("a fault inside a list") << QByteArray(R"({"a":[1,{"b":[1.5]}]})");
        QTest::newRow("beyond 64 bits") << QByteArray(R"({"n":295147905179352830000})");
        QTest::newRow("RFC 8785 3.1 (I-JSON): a name twice") << QByteArray(R"({"a":1,"a":2})");
        QTest::newRow("a name twice, one escaped, unsorted") << QByteArray(R"({"b":1,"a":1,"\u0062":2})");
        QTest::newRow("RFC 8785 3.2.2.2: a lone surrogate") << QByteArray(R"({"a":"\ud800"})");
        QTest::newRow("bad UTF-8") << QByteArray("{\"a\":\"\xc3\x28\"}");
        QTest::newRow("NaN") << QByteArray(R"({"a":NaN})");
        QTest::newRow("a comma too many") << QByteArray(R"({"a":1,})");
        QTest::newRow("two documents") << QByteArray(R"({"a":1}{"a":1})");
        QTest::newRow("no object") << QByteArray(R"([1])");
        QTest::newRow("nothing") << QByteArray();
        QTest::newRow("deeper than any entry") << "{\"a\":" + QByteArray("[").repeated(40) + QByteArray("]").repeated(40) + "}";
        QTest::newRow("a member more than may be") << withMembers(1001);
        QTest::newRow("enough members to keep it busy for ever") << withMembers(200000);
        QTest::newRow("deep enough to break a stack") << "{\"a\":" + QByteArray("[").repeated(200000);
    }
    void refused()
    {
        QFETCH(QByteArray, input);
        const auto object = core::json::parseObject(input);
        QVERIFY(!object);
        QCOMPARE(object.error().code, core::ErrorCode::BadInput);
        QVERIFY(!object.error().message.isEmpty());
    }

    void membersBySetting()
    {
        core::json::Object object{{u"b"_s, 1}, {u"a"_s, u"x"_s}};
        object.set(u"a"_s, true);
        object.set(u"c"_s, core::json::arrayOf({u"p"_s, u"q"_s}));
        object.remove(u"b");
        QCOMPARE(core::json::canonical(object), QByteArray(R"({"a":true,"c":["p","q"]})"));
        QVERIFY(object.isTrue(u"a"));
        QVERIFY(!object.isTrue(u"c"));
        QCOMPARE(object.texts(u"c"), (std::vector<QString>{u"p"_s, u"q"_s}));
        QVERIFY(!object.integer(u"a"));
        object.set(u"d"_s, core::json::Array{u"p"_s, 7, false});
        object.set(u"n"_s, 7);
        QCOMPARE(object.texts(u"d"), std::vector{u"p"_s}); // what is no text is passed over
        QVERIFY(object.texts(u"n").empty() && object.texts(u"z").empty());
        QVERIFY(object.text(u"n").isNull() && object.text(u"z").isNull());
        QCOMPARE(object.integer(u"n"), std::optional<qint64>(7));
        QVERIFY(!object.integer(u"z"));
        QCOMPARE(object.take(u"n"), core::json::Value(7));
        QVERIFY(!object.contains(u"n"));
        QVERIFY(object.take(u"n").isNull());
        QVERIFY(!object.isTrue(u"z") && !core::json::Object({{u"e"_s, false}}).isTrue(u"e"));
        QVERIFY(core::json::Object() == core::json::Object() && !(core::json::Object() == object));
    }
};

QTEST_GUILESS_MAIN(TestJson)
#include "tst_json.moc"
