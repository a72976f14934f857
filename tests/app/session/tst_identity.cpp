// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "app/session/identity_rule.hpp"

using namespace std::chrono_literals;
using session::Asks;
using session::IdentityRule;

namespace {

/// What happens at the computer, one after the other.
struct Deed {
    char what; ///< s signs, t touches, w waits, l locks, b the clock is set back
    const char *who;
    int seconds;
};

using Deeds = QList<Deed>;

Asks asksAfter(const Deeds &deeds, const char *asked)
{
    core::Instant now = core::Instant::fromMilliseconds(1'000'000'000);
    IdentityRule rule([&now] { return now; });
    const auto id = [](const char *text) { return *core::PersonId::parse(QString::fromLatin1(text)); };
    for (const Deed &deed : deeds) {
        const auto span = std::chrono::milliseconds(std::chrono::seconds(deed.seconds)).count();
        switch (deed.what) {
        case 's': rule.signedBy(id(deed.who)); break;
        case 't': rule.touch(); break;
        case 'w': now = core::Instant::fromMilliseconds(now.milliseconds() + span); break;
        case 'b': now = core::Instant::fromMilliseconds(now.milliseconds() - span); break;
        case 'l': rule.lock(); break;
        default: qFatal("no such deed");
        }
    }
    return rule.asksOf(id(asked));
}

} // namespace

Q_DECLARE_METATYPE(Deeds)

class TstIdentity : public QObject {
    Q_OBJECT

private slots:
    void whatIsAsked_data();
    void whatIsAsked();
    void limitMayBeSet();
};

void TstIdentity::whatIsAsked_data()
{
    QTest::addColumn<Deeds>("deeds");
    QTest::addColumn<QByteArray>("who");
    QTest::addColumn<bool>("secretAlone");
    QTest::addRow("nobody has signed yet") << Deeds{} << QByteArray("ana") << false;
    QTest::addRow("signed just now") << Deeds{{'s', "ana", 0}} << QByteArray("ana") << true;
    QTest::addRow("another person") << Deeds{{'s', "ana", 0}} << QByteArray("ben") << false;
    QTest::addRow("away for less than five minutes") << Deeds{{'s', "ana", 0}, {'w', "", 299}} << QByteArray("ana") << true;
    QTest::addRow("away for five minutes") << Deeds{{'s', "ana", 0}, {'w', "", 300}} << QByteArray("ana") << false;
    QTest::addRow("working without signing") << Deeds{{'s', "ana", 0}, {'w', "", 299}, {'t', "", 0}, {'w', "", 299}} << QByteArray("ana") << true;
    QTest::addRow("touched too late") << Deeds{{'s', "ana", 0}, {'w', "", 300}, {'t', "", 0}} << QByteArray("ana") << false;
    QTest::addRow("locked") << Deeds{{'s', "ana", 0}, {'l', "", 0}} << QByteArray("ana") << false;
    QTest::addRow("back after another") << Deeds{{'s', "ana", 0}, {'s', "ben", 0}} << QByteArray("ana") << false;
    QTest::addRow("clock set back") << Deeds{{'s', "ana", 0}, {'b', "", 60}} << QByteArray("ana") << false;
}

void TstIdentity::whatIsAsked()
{
    QFETCH(Deeds, deeds);
    QFETCH(QByteArray, who);
    QFETCH(bool, secretAlone);
    QCOMPARE(asksAfter(deeds, who.constData()) == Asks::SecretAlone, secretAlone);
}

void TstIdentity::limitMayBeSet()
{
    core::Instant now = core::Instant::fromMilliseconds(0);
    IdentityRule rule([&now] { return now; });
    rule.setIdleLimit(1min);
    rule.signedBy(*core::PersonId::parse(u"ana"));
    now = core::Instant::fromMilliseconds(59'999);
    QCOMPARE(rule.timeLeft(), IdentityRule::Span(1));
    QVERIFY(rule.currentSigner());
    now = core::Instant::fromMilliseconds(60'000);
    QCOMPARE(rule.timeLeft(), IdentityRule::Span(0));
    QVERIFY(!rule.currentSigner());
}

QTEST_GUILESS_MAIN(TstIdentity)
#include "tst_identity.moc"
