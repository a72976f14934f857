// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>
#include <map>

#include "core/acts/act.hpp"
#include "core/reports/comparison.hpp"
#include "core/reports/sample.hpp"
#include "core/reports/signings.hpp"
#include "core/reports/timeline_filter.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What an auditor asks of a job.
class TestAudit : public QObject {
    Q_OBJECT

private slots:
    void everybodyWhoIsNamedIsFound();
    void whoIsFound_data();
    void whoIsFound();
    void zoneOfWhatItIsAbout();
    void struckListingKeepsItsZone();
    void ranksAreThoseOfAnyOtherProgram_data();
    void ranksAreThoseOfAnyOtherProgram();
    void smallestRanksAreDrawn();
    void eachInterfaceIsEquallyLikely();
    void evidenceIsEveryEntryAboutIt();
    void whatCameBetween();
    void nothingCameBetween();
    void headIsMeantByNumberOrHash();
    void everySignatureHasItsMark();
    void shiftsBeginWithAcceptedHandovers();
};

/// A field that names a person is looked through by who looks for a person.
void TestAudit::everybodyWhoIsNamedIsFound()
{
    int fields = 0;
    for (const core::Act &act : core::acts()) {
        for (const core::Field &field : act.fields) {
            if (field.type != core::FieldType::Person && field.type != core::FieldType::People)
                continue;
            ++fields;
            QVERIFY2(field.refersTo == u"person", qPrintable(QString(act.kind) + u' ' + field.name));
        }
    }
    QVERIFY(fields > 10);
}

void TestAudit::whoIsFound_data()
{
    QTest::addColumn<QString>("story");
    QTest::addColumn<QString>("person");
    QTest::addColumn<QString>("kind");
    QTest::addColumn<int>("entries");
    QTest::addRow("who signed") << u"Ana disconnects D1; Ben disconnects C1"_s << u"Ana"_s << u"interface.disconnected"_s << 1;
    QTest::addRow("who helped") << u"Ana disconnects D1; Ana disconnects B1 helpers=Ben"_s << u"Ben"_s << u"interface.disconnected"_s << 1;
    QTest::addRow("who had no hand in it") << u"Ana disconnects D1; Ana disconnects B1 helpers=Ben"_s << u"Cho"_s << u"interface.disconnected"_s << 0;
}

void TestAudit::whoIsFound()
{
    QFETCH(QString, story);
    QFETCH(QString, person);
    QFETCH(QString, kind);
    QFETCH(int, entries);
    const Story told(story);
    QCOMPARE(told.refusedBy(), QString());
    const core::TimelineFilter filter{.person = core::PersonId::parse(person), .kind = kind};
    const auto &said = told.job().said;
    QCOMPARE(std::count_if(said.begin(), said.end(), [&](const core::Statement &one) { return core::fits(filter, told.job(), one, {}); }), entries);
}

void TestAudit::zoneOfWhatItIsAbout()
{
    const Story told(u"Ana disconnects D1; Ana raises F1 interface=D1"_s);
    QCOMPARE(told.refusedBy(), QString());
    const QSet<QString> zone{told.item(u"D1"_s).listed.zone};
    QVERIFY(!zone.values().front().isEmpty());
    QCOMPARE(core::zonesOf(told.job(), told.job().said.back()), zone); // the finding's interface
    QCOMPARE(core::zonesOf(told.job(), told.job().said[told.job().said.size() - 2]), zone);
    QCOMPARE(core::zonesOf(told.job(), told.job().said.front()), QSet<QString>()); // the job as a whole
}

/// Its row is struck, so that the job does not know it any more: what was said of it was said in that zone all the same.
void TestAudit::struckListingKeepsItsZone()
{
    Story told(u"Ana lists X9 zone=right"_s);
    QCOMPARE(told.refusedBy(), QString());
    const qint64 seq = told.job().said.back().seq;
    told.tell(u"Ana strikes entry=%1"_s.arg(seq));
    QCOMPARE(told.refusedBy(), QString());
    QVERIFY(!told.job().item(*core::InterfaceId::parse(u"X9")));
    const core::Statement &listed = told.job().said[static_cast<std::size_t>(seq - 1)];
    QCOMPARE(core::zonesOf(told.job(), listed), QSet<QString>{u"right"_s});
    QVERIFY(core::fits({.which = core::WhichStand::StruckOnly}, told.job(), listed, {}));
    QVERIFY(!core::fits({.which = core::WhichStand::StruckOnly}, told.job(), told.job().said.back(), {}));
}

/// Worked out by sha256sum (GNU coreutils): printf '%s\n%s' "$seed" "$id" | sha256sum
void TestAudit::ranksAreThoseOfAnyOtherProgram_data()
{
    QTest::addColumn<QString>("seed");
    QTest::addColumn<QString>("id");
    QTest::addColumn<QString>("rank");
    QTest::addRow("audit-7, D1") << u"audit-7"_s << u"D1"_s << u"8b475510abb7a699bcfd45e08ea4288d132e41b70ee255accecf03b903e1cb52"_s;
    QTest::addRow("audit-7, C1") << u"audit-7"_s << u"C1"_s << u"b769d25fa7a81877e04cb4e81ac3f9aaf79e7bf21ccf07653335d95182df2b29"_s;
    QTest::addRow("Pruefung 3, D1") << u"Pr\u00fcfung 3"_s << u"D1"_s << u"7d8b758fbea19564a76cf5d57d3687742c3468ba2151718fd6f1d7fb51801cda"_s;
}

void TestAudit::ranksAreThoseOfAnyOtherProgram()
{
    QFETCH(QString, seed);
    QFETCH(QString, id);
    QFETCH(QString, rank);
    QCOMPARE(core::rankOf(*core::InterfaceId::parse(id), seed).hex(), rank);
}

void TestAudit::smallestRanksAreDrawn()
{
    const Story told;
    const auto all = core::sampleOf(told.job(), 1000, u"audit-7"_s);
    QCOMPARE(all.drawn.size(), told.job().items.size());
    for (std::size_t i = 1; i < all.drawn.size(); ++i)
        QVERIFY(all.drawn[i - 1].rank.hex() < all.drawn[i].rank.hex());
    const auto two = core::sampleOf(told.job(), 2, u"audit-7"_s);
    QCOMPARE(two.drawn, std::vector<core::Drawn>(all.drawn.begin(), all.drawn.begin() + 2));
    QCOMPARE(two.among, static_cast<qsizetype>(told.job().items.size()));
    QVERIFY(core::sampleOf(told.job(), 0, u"audit-7"_s).drawn.empty());
    QVERIFY(core::sampleOf(told.job(), 1000, u"audit-8"_s).drawn != all.drawn);
}

/// Of ten interfaces one is drawn, by 5000 seeds. The statistic is chi-square with 9 degrees of freedom: 21.666 is passed by one fair draw in a
/// hundred. The seeds are fixed, so the answer is always the same.
/// Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values, 9 degrees, 0.01; from memory.
void TestAudit::eachInterfaceIsEquallyLikely()
{
    core::JobState job;
    const Story told(u"Ana disconnects D1"_s);
    std::map<QString, int> times;
    for (int i = 0; i < 10; ++i) {
        core::InterfaceState item = told.item(u"D1"_s);
        item.listed.id = *core::InterfaceId::parse(u"E%1"_s.arg(i));
        times[item.listed.id.text()] = 0;
        job.itemAt.insert(item.listed.id, i);
        job.items.push_back(item);
    }
    constexpr int seeds = 5000;
    for (int seed = 0; seed < seeds; ++seed)
        ++times[core::sampleOf(job, 1, u"seed %1"_s.arg(seed)).drawn.front().id.text()];
    const auto statistic = [&](const std::map<QString, int> &counted) {
        constexpr double fair = seeds / 10.0;
        double sum = 0;
        for (const auto &[id, count] : counted)
            sum += (count - fair) * (count - fair) / fair;
        return sum;
    };
    constexpr double critical = 21.666;
    QCOMPARE(times.size(), 10U);
    QVERIFY2(statistic(times) < critical, qPrintable(QString::number(statistic(times))));
    times[u"E0"_s] += 110; // the nearest that must not pass: one interface drawn a little too often, at another's cost
    times[u"E1"_s] -= 110;
    QVERIFY(statistic(times) > critical);
}

/// What it is the subject of, a finding on it, what names it, and what struck any of these; nothing else.
void TestAudit::evidenceIsEveryEntryAboutIt()
{
    Story told(u"Ana disconnects D1; Ben disconnects C1"_s);
    const auto other = static_cast<qint64>(told.job().said.size());
    told.tell(u"Ana strikes entry=%1; Ana raises F1 interface=D1"_s.arg(other - 1));
    QCOMPARE(told.refusedBy(), QString());
    const auto about = core::entriesAbout(told.job(), *core::InterfaceId::parse(u"D1"));
    const auto isIn = [&](qint64 seq) { return std::find(about.begin(), about.end(), seq) != about.end(); };
    QVERIFY(isIn(other - 1)); // struck, and evidence all the same
    QVERIFY(!isIn(other));
    QVERIFY(isIn(other + 1)); // what struck it
    QVERIFY(isIn(other + 2)); // the finding
    QVERIFY(std::is_sorted(about.begin(), about.end()));
}

namespace {

core::Head headAt(const core::JobState &job, qint64 seq) { return *core::headMeant(job, QString::number(seq)); }

/// `D1 connected>disconnected`
QStringList stages(const core::Comparison &comparison)
{
    const auto word = [](const std::optional<core::Stage> &stage) { return stage ? core::stageName(*stage) : u"-"_s; };
    QStringList all;
    for (const core::ItemChange &item : comparison.items)
        all << item.id.text() + u' ' + word(item.stageBefore) + u'>' + word(item.stageAfter);
    return all;
}

} // namespace

void TestAudit::whatCameBetween()
{
    Story told(u"Ana disconnects D1; Ben disconnects C1"_s);
    const auto from = static_cast<qint64>(told.job().said.size());
    told.tell(u"Ana strikes entry=%1; Ben reconnects C1; Ana lists X9 zone=right"_s.arg(from - 1));
    QCOMPARE(told.refusedBy(), QString());
    const core::JobState &job = told.job();
    const auto comparison = core::compareHeads(job, told.reg(), headAt(job, from), headAt(job, from + 3));
    QCOMPARE(comparison.added, (std::vector<qint64>{from + 1, from + 2, from + 3}));
    QCOMPARE(comparison.noLonger, std::vector<qint64>{from - 1});
    QCOMPARE(stages(comparison), (QStringList{u"D1 disconnected>connected"_s, u"C1 disconnected>"_s + told.stage(u"C1"_s), u"X9 ->connected"_s}));
    const auto isOf = [](const core::LooseEnds &ends, const QString &subject) { return std::any_of(ends.begin(), ends.end(), [&](const core::LooseEnd &end) { return end.subject == subject; }); };
    QVERIFY(isOf(comparison.gone, u"D1"_s) && isOf(comparison.gone, u"C1"_s));
    QVERIFY(isOf(comparison.appeared, u"X9"_s) && !isOf(comparison.gone, u"X9"_s));
    // Up to the strike alone: what came after it is not told.
    const auto sooner = core::compareHeads(job, told.reg(), headAt(job, from), headAt(job, from + 1));
    QCOMPARE(stages(sooner), QStringList{u"D1 disconnected>connected"_s});
    // From before it was disconnected: what was said and struck since did not count then.
    QVERIFY(core::compareHeads(job, told.reg(), headAt(job, from - 2), headAt(job, from + 1)).noLonger.empty());
}

void TestAudit::nothingCameBetween()
{
    const Story told(u"Ana disconnects D1"_s);
    const core::Head head = headAt(told.job(), static_cast<qint64>(told.job().said.size()));
    const auto comparison = core::compareHeads(told.job(), told.reg(), head, head);
    QCOMPARE(comparison, (core::Comparison{head, head, {}, {}, {}, {}, {}, {}}));
    QVERIFY(core::comparisonTable(told.job(), told.reg(), comparison).rows.empty());
}

void TestAudit::headIsMeantByNumberOrHash()
{
    const Story told(u"Ana disconnects D1"_s);
    const auto last = static_cast<qint64>(told.job().said.size());
    const core::Head head = headAt(told.job(), last);
    QCOMPARE(core::headMeant(told.job(), head.hash.hex())->seq, last);
    QCOMPARE(core::headMeant(told.job(), head.hash.hex().toUpper())->seq, last); // as somebody may type it from paper
    const auto unknown = core::headMeant(told.job(), core::Digest::of("another job").hex());
    QVERIFY(!unknown);
    QVERIFY2(unknown.error().message.startsWith(u"The record with that hash is not part of this job's history."), qPrintable(unknown.error().message));
    for (const QString &wrong : {u"0"_s, QString::number(last + 1), u"first"_s, head.hash.hex().chopped(1)})
        QVERIFY2(!core::headMeant(told.job(), wrong), qPrintable(wrong));
}

/// One lane a person, one mark a signature; struck ones stay, hollow. The table counts the same.
void TestAudit::everySignatureHasItsMark()
{
    Story told(u"Ana disconnects D1; Ben disconnects C1"_s);
    const qint64 struck = static_cast<qint64>(told.job().said.size());
    told.tell(u"Ben strikes entry=%1"_s.arg(struck));
    QCOMPARE(told.refusedBy(), QString());
    const core::JobState &job = told.job();
    const core::Signings signings = core::signingsOf(job, told.reg());
    std::size_t marks = 0;
    for (const core::SigningLane &lane : signings.lanes) {
        marks += lane.marks.size();
        for (const core::SigningMark &mark : lane.marks) {
            const core::Statement &said = job.said[static_cast<std::size_t>(mark.seq - 1)];
            QCOMPARE(said.author, lane.person);
            QCOMPARE(mark.as, core::signedAs(said.meaning));
            QCOMPARE(mark.counts, mark.seq != struck);
        }
    }
    QCOMPARE(marks, job.said.size());
    QCOMPARE(core::signedAs(u"performed"), core::SignedAs::Work);
    QCOMPARE(core::signedAs(u"inspected"), core::SignedAs::Look);
    QCOMPARE(core::signedAs(u"released"), core::SignedAs::Release);
    QCOMPARE(core::signedAs(u"recorded"), core::SignedAs::Record);
    const core::AuditTable table = core::signingsTable(job, told.reg());
    std::size_t counted = 0;
    for (const core::ReportRow &row : table.rows) {
        for (std::size_t sort = 3; sort < 7; ++sort)
            counted += row.cells[sort].toULongLong();
    }
    QCOMPARE(counted, marks);
}

/// A shift that was offered and not accepted is none: who worked on worked in the old one.
void TestAudit::shiftsBeginWithAcceptedHandovers()
{
    Story told(u"Ana disconnects D1"_s);
    QCOMPARE(core::signingsOf(told.job(), told.reg()).shifts.size(), std::size_t(1));
    QCOMPARE(core::signingsOf(told.job(), told.reg()).shifts.front().first, qint64(1));
    told.tell(u"Ana hands-over"_s);
    QCOMPARE(core::signingsOf(told.job(), told.reg()).shifts.size(), std::size_t(1));
    told.tell(u"Lee takes-shift"_s);
    QCOMPARE(told.refusedBy(), QString());
    const auto shifts = core::signingsOf(told.job(), told.reg()).shifts;
    QCOMPARE(shifts.size(), std::size_t(2));
    QCOMPARE(shifts.back().first, static_cast<qint64>(told.job().said.size()));
    QCOMPARE(shifts.front().until, shifts.back().from);
    const core::Signings none = core::signingsOf(core::JobState(), told.reg());
    QVERIFY(none.lanes.empty() && none.shifts.empty());
}

QTEST_GUILESS_MAIN(TestAudit)
#include "tst_audit.moc"
