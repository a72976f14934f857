// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QGuiApplication>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include "app/demo/scenario.hpp"
#include "app/language/in_record_words.hpp"
#include "app/package/package_writer.hpp"
#include "app/package/verify_package.hpp"
#include "app/record/audit_sheet.hpp"
#include "app/session/session.hpp"
#include "app/session/sound.hpp"
#include "app/session/verify_store.hpp"
#include "core/list/interface_list.hpp"
#include "core/list/lessons.hpp"
#include "core/reports/comparison.hpp"
#include "core/reports/report.hpp"
#include "core/reports/sample.hpp"
#include "core/reports/signings.hpp"
#include "resources/resources.hpp"
#include "tests/app/language/marked_words.hpp"

using namespace Qt::StringLiterals;

namespace {

const QDate day(2026, 3, 2);

/// A store in which the demo was played.
struct Store {
    std::unique_ptr<db::Store> store;
    std::optional<demo::Played> played;
    QString trouble;

    Store(const QString &path, const core::Kinds &kinds, demo::Until until)
    {
        auto made = db::Store::create(path);
        if (!made) {
            trouble = made.error().message;
            return;
        }
        store = std::move(*made);
        auto told = demo::play(*store, kinds, day, until, core::leastCost);
        if (told)
            played = *told;
        else
            trouble = u"story.csv:%1: %2"_s.arg(told.error().where.row.value_or(0)).arg(told.error().message);
    }
};

/// Keys and the ledgers' names are made of chance, and with them every hash; all else is what was said.
QString withoutChance(QByteArray bytes, const Store &store)
{
    QString text = QString::fromUtf8(bytes);
    int number = 0;
    for (const core::LedgerId &ledger : {store.played->job, store.played->shop, store.played->reg})
        text.replace(ledger.text(), u"ledger %1"_s.arg(++number));
    static const QRegularExpression digests(u"\"(hash|key|prev|public_key|fingerprint|root|head)\":\"[0-9a-f]{64}\""_s);
    return text.replace(digests, u"\"\\1\":…"_s);
}

QStringList entriesOf(const Store &store)
{
    QStringList lines;
    for (const core::LedgerId &ledger : {store.played->reg, store.played->job, store.played->shop}) {
        const auto walked = store.store->forEach(ledger, 0, [&](const db::StoredEntryView &entry) {
            lines << withoutChance(QByteArray(entry.bytes.data(), entry.bytes.size()), store);
            return db::Walk::On;
        });
        if (!walked)
            lines << walked.error().message;
    }
    return lines;
}

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

/// Nothing that is signed, stored or exported depends on the language of the screens: done once in English, and once in a language in
/// which every text is another.
class TstRecordWords : public QObject {
    Q_OBJECT

private slots:
    void initTestCase();
    void entriesAreTheSame();
    void foldsToTheSame();
    void packageIsTheSame();
    void recordIsTheSame();
    void screensGoOnInTheirWords();
    void whatWentWrongIsToldInTheScreensWords_data();
    void whatWentWrongIsToldInTheScreensWords();
    void listIsTheSame();
    void auditsAreTheSame();
    void storeIsSound();

private:
    QString file(const QString &name) const { return m_folder.filePath(name); }
    QTemporaryDir m_folder;
    std::optional<core::Kinds> m_kinds;
    std::unique_ptr<Store> m_english;
};

void TstRecordWords::initTestCase()
{
    QVERIFY(core::readyCryptography());
    auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    m_kinds = *std::move(kinds);
    m_english = std::make_unique<Store>(file(u"english.remate"_s), *m_kinds, demo::Until::Closed);
    QCOMPARE(m_english->trouble, QString());
}

/// The story signs with every kind of act; what it does not sign, the forms of the screens do: see app.desktop.language.
void TstRecordWords::entriesAreTheSame()
{
    const MarkedWords words;
    const auto kinds = resources::loadKinds();
    QVERIFY(kinds);
    QVERIFY(*kinds == *m_kinds);
    const Store marked(file(u"marked.remate"_s), *kinds, demo::Until::Closed);
    QCOMPARE(marked.trouble, QString());
    const QStringList plain = entriesOf(*m_english);
    const QStringList same = entriesOf(marked);
    QVERIFY(plain.size() > 600);
    for (qsizetype i = 0; i < std::min(plain.size(), same.size()); ++i)
        QCOMPARE(same.at(i), plain.at(i));
    QCOMPARE(same.size(), plain.size());
    QVERIFY(!words.said().empty());
}

void TstRecordWords::foldsToTheSame()
{
    const auto stateNow = [&]() -> std::shared_ptr<const core::JobState> {
        session::Session session(*m_english->store, [] { return *core::Instant::parse(u"2026-03-03T08:00:00Z"); }, core::leastCost);
        if (!session.refresh() || !session.openJob(m_english->played->job))
            return nullptr;
        return session.state();
    };
    const auto plain = stateNow();
    const MarkedWords words;
    const auto marked = stateNow();
    QVERIFY(plain && marked);
    QVERIFY(*plain == *marked);
}

void TstRecordWords::packageIsTheSame()
{
    QVERIFY(package::writePackage(*m_english->store, m_english->played->job, *m_kinds, file(u"plain.zip"_s)));
    const auto verifiedAs = [&](const QString &path) {
        const auto verdict = package::verifyPackage(path, {}, *m_kinds);
        return !verdict ? verdict.error().message : !verdict->report.reservations.empty() ? verdict->report.reservations.front() : verdict->report.faults.empty() ? QString() : verdict->report.faults.front().sentence;
    };
    const MarkedWords words;
    QVERIFY(package::writePackage(*m_english->store, m_english->played->job, *m_kinds, file(u"marked.zip"_s)));
    QVERIFY(contentOf(file(u"plain.zip"_s)) == contentOf(file(u"marked.zip"_s)));
    QCOMPARE(verifiedAs(file(u"plain.zip"_s)), QString());
}

void TstRecordWords::recordIsTheSame()
{
    const auto written = [&](const QString &name) {
        const auto job = session::soundRecordOf(*m_english->store, m_english->played->job, *m_kinds);
        return job && record::writeRecord(*job, file(name + u".pdf"_s), {.pageSize = record::PageSize::Letter}) && record::writeInterfacesCsv(*job, file(name + u".csv"_s));
    };
    QVERIFY(written(u"plain"_s));
    const MarkedWords words;
    QVERIFY(written(u"marked"_s));
    QVERIFY(contentOf(file(u"plain.pdf"_s)) == contentOf(file(u"marked.pdf"_s)));
    QCOMPARE(contentOf(file(u"marked.csv"_s)), contentOf(file(u"plain.csv"_s)));
}

/// While a record is written the screens are drawn and refreshed in the same thread, whenever it tells how far it is.
void TstRecordWords::screensGoOnInTheirWords()
{
    const auto job = session::soundRecordOf(*m_english->store, m_english->played->job, *m_kinds);
    QVERIFY(job);
    const auto plain = record::recordPdf(*job);
    QVERIFY(plain);
    const MarkedWords words;
    QStringList seen;
    const auto look = [&seen] {
        if (const QString said = QCoreApplication::translate("Page", "Disconnect"); !seen.contains(said))
            seen << said;
    };
    bool isLaid = false;
    bool isDrawn = false;
    const auto watched = record::recordPdf(*job, {.progress = [&](int, int pages) {
                                                      (pages > 0 ? isDrawn : isLaid) = true;
                                                      look();
                                                      return record::Going::On;
                                                  }});
    QVERIFY(watched && isLaid && isDrawn);
    QVERIFY(*watched == *plain);
    QCOMPARE(seen, QStringList{u"⟦Disconnect⟧"_s});
    seen.clear();
    QVERIFY(package::writePackage(*m_english->store, m_english->played->job, *m_kinds, file(u"watched.zip"_s), {record::PageSize::A4, record::WhenOpen::Refuse, [&](qint64, qint64) {
                                                                                                                    look();
                                                                                                                    return true;
                                                                                                                }}));
    QCOMPARE(seen, QStringList{u"⟦Disconnect⟧"_s});
}

void TstRecordWords::whatWentWrongIsToldInTheScreensWords_data()
{
    QTest::addColumn<bool>("isDrawn");
    QTest::addRow("stopped while the pages are laid out") << false;
    QTest::addRow("stopped while they are drawn") << true;
}

void TstRecordWords::whatWentWrongIsToldInTheScreensWords()
{
    QFETCH(bool, isDrawn);
    const auto job = session::soundRecordOf(*m_english->store, m_english->played->job, *m_kinds);
    QVERIFY(job);
    const MarkedWords words;
    const auto stopped = record::recordPdf(*job, {.progress = [&](int, int pages) { return isDrawn == (pages > 0) ? record::Going::Cancel : record::Going::On; }});
    QVERIFY(!stopped);
    QCOMPARE(stopped.error().code, core::ErrorCode::Cancelled);
    QVERIFY2(stopped.error().message.startsWith(u'⟦'), qPrintable(stopped.error().message));
}

/// Out, and in again.
void TstRecordWords::listIsTheSame()
{
    const auto record = session::soundRecordOf(*m_english->store, m_english->played->job, *m_kinds);
    QVERIFY(record);
    core::JobState empty;
    empty.facts = record->job().facts;
    const auto next = [&] {
        const language::InRecordWords english;
        return core::writeInterfaceList(core::listForNextJob(record->job()));
    };
    const QByteArray list = core::writeInterfaceList(record->job());
    const QByteArray lessons = next();
    const auto plain = core::readInterfaceList(list, {u"list.csv"_s, *m_kinds, empty});
    QVERIFY(plain);
    const MarkedWords words;
    QCOMPARE(core::writeInterfaceList(record->job()), list);
    QCOMPARE(next(), lessons);
    const auto marked = core::readInterfaceList(list, {u"list.csv"_s, *m_kinds, empty});
    QVERIFY(marked);
    QVERIFY(*marked == *plain);
}

void TstRecordWords::auditsAreTheSame()
{
    const auto record = session::soundRecordOf(*m_english->store, m_english->played->job, *m_kinds);
    QVERIFY(record);
    const core::JobState &job = record->job();
    const core::Register &reg = record->reg();
    const auto heads = std::pair(core::headMeant(job, u"100"_s), core::headMeant(job, u"300"_s));
    QVERIFY(heads.first && heads.second);
    const auto tables = [&] {
        const language::InRecordWords english;
        return std::vector{core::sampleTable(job, reg, *m_kinds, core::sampleOf(job, 7, u"seed"_s)), core::signingsTable(job, reg), core::comparisonTable(job, reg, core::compareHeads(job, reg, *heads.first, *heads.second))};
    };
    const auto plain = tables();
    const MarkedWords words;
    const auto marked = tables();
    for (std::size_t i = 0; i < plain.size(); ++i) {
        QVERIFY(record::writeAuditCsv(marked[i], file(u"marked.csv"_s)));
        QCOMPARE(contentOf(file(u"marked.csv"_s)), core::auditCsv(plain[i]));
        QVERIFY(record::writeAuditPdf(marked[i], file(u"marked.pdf"_s), record::PageSize::A4));
        QVERIFY(!contentOf(file(u"marked.pdf"_s)).isEmpty());
        QCOMPARE(marked[i].title, plain[i].title);
        QVERIFY(marked[i].facts == plain[i].facts);
    }
}

/// Every rule is asked again, so a rule that read a translated text would refuse what was admitted.
void TstRecordWords::storeIsSound()
{
    const MarkedWords words;
    const auto report = session::verifyStore(*m_english->store, {});
    QVERIFY(report);
    for (const core::Fault &fault : report->faults)
        QFAIL(qPrintable(fault.sentence));
}

QTEST_MAIN(TstRecordWords)

#include "tst_record_words.moc"
