// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/record.hpp"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QHashFunctions>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtTest>

#include <sys/resource.h>

#include <csignal>

#include "app/record/flow.hpp"
#include "core/acts/act.hpp"
#include "core/reports/report.hpp"
#include "core/reports/timeline.hpp"
#include "tests/app/record/programs.hpp"
#include "tests/core/reports/scene.hpp"

using namespace Qt::StringLiterals;

namespace {

/// What a program that packaging/check installs prints, or nothing when it fails.
std::optional<QString> outputOf(const QString &program, const QStringList &arguments)
{
    const programs::Ran ran = programs::run(program, arguments);
    return ran.code == 0 ? std::optional(ran.output) : std::nullopt;
}

/// Each bookmark on a line, with its page, those under another indented.
QStringList bookmarkLines(const QJsonArray &outlines, int depth = 0)
{
    QStringList lines;
    for (const QJsonValue &one : outlines) {
        lines << QString(2 * depth, u' ') + one[u"title"_s].toString() + u", page "_s + QString::number(one[u"destpageposfrom1"_s].toInt());
        lines += bookmarkLines(one[u"kids"_s].toArray(), depth + 1);
    }
    return lines;
}

/// All blanks and line breaks as one blank: cells are broken into lines.
QString flat(QString text) { return text.replace(QRegularExpression(u"\\s+"_s), u" "_s); }

QByteArray contentOf(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class RecordTest : public QObject {
    Q_OBJECT

private slots:
    void everythingIsOnPaper();
    void everyEntryIsOnPaper();
    void everyPageSaysWhereItBelongs();
    void paperSizes_data();
    void paperSizes();
    void isArchivable();
    void sameBytesTwice();
    void datesAreThoseOfTheRecord();
    void bookmarksLeadToTheirHeadings();
    void linesEndWithinThePage();
    void indexLeadsToEveryEntry();
    void signaturesStandBesideTheVerdict();
    void theCoverSaysWhatIsStillDue();
    void theCoverSaysThatNothingIsDue();
    void theCoverCountsSignaturesInDoubt();
    void openJobIsRefused();
    void draftSaysSoOnEveryPage();
    void cancelledWhileLayingOut();
    void cancelledWhileDrawing();
    void whatWasThereStaysWhenCancelled();
    void folderIsMissing();
    void somethingElseIsThere();
    void diskIsFull();
    void figuresAreOnPaper();
    void narrowColumnsStandUnderTheirRow();
    void oneCellLongerThanAPage();
    void headingStandsOverItsFirstRow();
    void unitsStayWithTheirNumbers();
    void interfacesAsCsv();

private:
    QString path(const QString &name) const { return m_folder.filePath(name); }
    /// The first page, all blanks as one.
    QString coverOf(const core::JobRecord &job)
    {
        if (!record::writeRecord(job, path(u"first.pdf"_s), {.whenOpen = record::WhenOpen::MarkAsDraft}))
            return {};
        return flat(outputOf(u"pdftotext"_s, {u"-raw"_s, u"-l"_s, u"1"_s, path(u"first.pdf"_s), u"-"_s}).value_or(QString()));
    }
    QTemporaryDir m_folder;
};

void RecordTest::everythingIsOnPaper()
{
    const core::JobRecord job = scene::closedRecord(25);
    QVERIFY(record::writeRecord(job, path(u"record.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-layout"_s, path(u"record.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    const QString all = flat(*text);
    for (const QString &expected : {u"WO-2026-0117"_s, u"CLOSED"_s, u"Released by Rae Holt"_s, job.reg().fingerprint.hex(), job.head().hash.hex(),
                                    u"The approved maintenance data governs"_s, u"Olga Brandt"_s, u"CC-1188"_s, u"Zone Inboard"_s, u"Zone Outboard"_s,
                                    u"Bleed duct, station 1"_s, u"26.5 N·m"_s, u"0.84 mΩ"_s, u"Coupling not seated"_s, u"rectified"_s, u"Mia Sand"_s,
                                    u"Struck by entry"_s, u"QM-4/cho"_s, u"A mount carries the unit"_s})
        QVERIFY2(all.contains(expected), qPrintable(expected));
    QVERIFY(!all.contains(u"NOT CLOSED"_s));
    for (const core::Report &report : core::reports()) {
        // The life of the interfaces is told zone by zone.
        if (report.name != "life"_L1 && !report.rows(job).empty())
            QVERIFY2(all.contains(QCoreApplication::translate("Report", report.title)), report.name.data());
    }
}

void RecordTest::everyEntryIsOnPaper()
{
    const core::JobRecord job = scene::closedRecord(10);
    QVERIFY(record::writeRecord(job, path(u"entries.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, path(u"entries.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    QString together = *text;
    together.remove(QRegularExpression(u"\\s"_s));
    for (const core::Entry &entry : job.entries()) {
        QVERIFY2(together.contains(entry.hash.hex()), qPrintable(QString::number(entry.said.seq)));
        QString moment = core::momentText(entry.said.at);
        QVERIFY2(together.contains(moment.remove(u' ')), qPrintable(moment));
        QString meaning = core::meaningInWords(entry.said.meaning);
        QVERIFY2(together.contains(meaning.remove(u' ')), qPrintable(meaning));
    }
}

void RecordTest::everyPageSaysWhereItBelongs()
{
    const core::JobRecord job = scene::closedRecord(25);
    QVERIFY(record::writeRecord(job, path(u"pages.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-layout"_s, path(u"pages.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    QStringList pages = text->split(u'\f');
    pages.removeLast();
    QVERIFY(pages.size() > 5);
    for (qsizetype i = 0; i < pages.size(); ++i) {
        QVERIFY2(flat(pages[i]).contains(u"Page %1 of %2"_s.arg(i + 1).arg(pages.size())), qPrintable(pages[i]));
        QVERIFY(pages[i].contains(job.head().hash.hex()));
        QVERIFY(pages[i].contains(u"WO-2026-0117"_s));
    }
}

void RecordTest::paperSizes_data()
{
    QTest::addColumn<record::PageSize>("size");
    QTest::addColumn<QString>("points");
    // ISO 216: A4 is 210 × 297 mm; ANSI/ASME Y14.1: A (letter) is 8.5 × 11 in. A point is 1/72 in.
    QTest::addRow("A4") << record::PageSize::A4 << u"595 x 842"_s;
    QTest::addRow("Letter") << record::PageSize::Letter << u"612 x 792"_s;
}

void RecordTest::paperSizes()
{
    QFETCH(record::PageSize, size);
    QFETCH(QString, points);
    QVERIFY(record::writeRecord(scene::closedRecord(5), path(u"size.pdf"_s), {.pageSize = size}));
    const auto info = outputOf(u"pdfinfo"_s, {path(u"size.pdf"_s)});
    QVERIFY2(info, "pdfinfo failed; packaging/check installs it");
    QVERIFY2(info->contains(points), qPrintable(*info));
}

void RecordTest::isArchivable()
{
    QVERIFY(record::writeRecord(scene::closedRecord(5), path(u"archive.pdf"_s)));
    const QByteArray pdf = contentOf(path(u"archive.pdf"_s));
    QVERIFY(pdf.startsWith("%PDF-1.4"));
    // ISO 19005-1 section 6.7.11: the metadata name part 1, conformance B; section 6.4: nothing see-through.
    QVERIFY(pdf.contains("<pdfaid:part>1</pdfaid:part>") || pdf.contains("pdfaid:part=\"1\""));
    QVERIFY(pdf.contains("<pdfaid:conformance>B</pdfaid:conformance>") || pdf.contains("pdfaid:conformance=\"B\""));
    QVERIFY(pdf.contains("/OutputIntents"));
    // A graphics state may name constant alphas, but only the opaque one.
    static const QRegularExpression alpha(u"/(CA|ca) ([0-9.]+)"_s);
    for (auto found = alpha.globalMatch(QString::fromLatin1(pdf)); found.hasNext();)
        QCOMPARE(found.next().captured(2).toDouble(), 1.0);
}

void RecordTest::sameBytesTwice()
{
    const core::JobRecord job = scene::closedRecord(10);
    const auto first = record::recordPdf(job);
    QTest::qWait(1100); // a date in the file would have moved on
    const auto second = record::recordPdf(job);
    QVERIFY(first && second);
    QVERIFY(*first == *second);
    // In every run of the program hashes are ordered otherwise.
    for (int run = 0; run < 12; ++run) {
        QHashSeed::resetRandomGlobalSeed();
        QVERIFY(*record::recordPdf(job) == *first);
    }
    QVERIFY(record::writeRecord(job, path(u"twice.pdf"_s)));
    QVERIFY(contentOf(path(u"twice.pdf"_s)) == *first);
    // Another record is another file.
    QVERIFY(*record::recordPdf(scene::closedRecord(9)) != *first);
    QVERIFY(*record::recordPdf(job, {.pageSize = record::PageSize::Letter}) != *first);
}

void RecordTest::datesAreThoseOfTheRecord()
{
    const core::JobRecord job = scene::closedRecord(5);
    const QByteArray pdf = *record::recordPdf(job);
    const QDateTime at = QDateTime::fromMSecsSinceEpoch(job.entries().back().said.at.milliseconds(), Qt::UTC);
    // ISO 32000-1 section 7.9.4: a date in the information dictionary. ISO 19005-1 section 6.7.3: the same in the metadata.
    const QByteArray inInfo = "D:" + at.toString(u"yyyyMMddhhmmss").toLatin1() + "+00'00'";
    const QByteArray inPacket = at.toString(u"yyyy-MM-ddThh:mm:ss").toLatin1() + 'Z';
    QCOMPARE(pdf.count('(' + inInfo + ')'), 2);
    QCOMPARE(pdf.count('"' + inPacket + '"'), 2);
    QVERIFY(pdf.contains("WO-2026-0117</rdf:li>"));
    QVERIFY(pdf.contains("<rdf:li>Hangar 3, Nordfeld</rdf:li>"));
    // ISO 32000-1 section 14.4: the first of the two identifiers is permanent. It begins as the last entry's hash does.
    QVERIFY(pdf.contains("/ID [<" + job.head().hash.hex().left(32).toLatin1() + '>'));
}

void RecordTest::bookmarksLeadToTheirHeadings()
{
    QVERIFY(record::writeRecord(scene::closedRecord(12), path(u"marks.pdf"_s)));
    const programs::Ran told = programs::run(u"qpdf"_s, {u"--json"_s, u"--json-key=outlines"_s, path(u"marks.pdf"_s)});
    QCOMPARE(told.code, 0);
    const QJsonArray outlines = QJsonDocument::fromJson(told.output.toUtf8())[u"outlines"_s].toArray();
    const QStringList lines = bookmarkLines(outlines);
    const programs::Ran text = programs::run(u"pdftotext"_s, {u"-layout"_s, path(u"marks.pdf"_s), u"-"_s});
    QCOMPARE(text.code, 0);
    const QStringList pages = text.output.split(u'\f');
    // The words stand in more places than one; only a section's heading is a line of its own, and after an interface's comes its kind.
    const std::pair<QString, QString> bookmarkAndLine[] = {
        {u"The job"_s, u"The job$"_s},
        {u"What this record rests on"_s, u"What this record rests on$"_s},
        {u"Torque"_s, u"Torque$"_s},
        {u"All entries, in order"_s, u"All entries, in order$"_s},
        {u"  Zone Inboard"_s, u"Zone Inboard$"_s},
        {u"  Zone Outboard"_s, u"Zone Outboard$"_s},
        {u"    E001 Bleed duct, station 1"_s, u"E001 +Bleed duct, station 1 +· +Duct"_s},
        {u"    E010 Access panel 10"_s, u"E010 +Access panel 10 +· +Access"_s},
    };
    for (const auto &[bookmark, line] : bookmarkAndLine) {
        const QRegularExpression printed(u"^ *"_s + line, QRegularExpression::MultilineOption);
        const auto page = std::find_if(pages.begin(), pages.end(), [&](const QString &one) { return printed.match(one).hasMatch(); });
        QVERIFY2(page != pages.end(), qPrintable(line));
        const QString wanted = bookmark + u", page "_s + QString::number(page - pages.begin() + 1);
        QVERIFY2(lines.contains(wanted), qPrintable(wanted + u'\n' + lines.join(u'\n')));
    }
    QCOMPARE(lines.filter(QRegularExpression(u"^    E0"_s)).size(), 12);
    // Readers open the tree beside the pages, and its sections alone.
    const QByteArray pdf = contentOf(path(u"marks.pdf"_s));
    QVERIFY(pdf.contains("/PageMode /UseOutlines"));
    QVERIFY(pdf.contains("/Count " + QByteArray::number(outlines.size()) + ' '));
}

/// A line that was laid narrower than it is drawn runs into the margin.
void RecordTest::linesEndWithinThePage()
{
    QVERIFY(record::writeRecord(scene::closedRecord(10), path(u"lines.pdf"_s)));
    const programs::Ran boxes = programs::run(u"pdftotext"_s, {u"-bbox"_s, path(u"lines.pdf"_s), u"-"_s});
    QCOMPARE(boxes.code, 0);
    const double right = record::frameOf(record::PageSize::A4).body.right() / record::point;
    static const QRegularExpression word(u"xMax=\"([0-9.]+)\"[^>]*>([^<]*)<"_s);
    qsizetype words = 0;
    for (auto found = word.globalMatch(boxes.output); found.hasNext(); ++words) {
        const auto one = found.next();
        QVERIFY2(one.captured(1).toDouble() <= right + 0.3, qPrintable(one.captured(0)));
    }
    QVERIFY(words > 1000);
}

/// Every entry stands in the index under its signer, with the page that its hash is printed on.
void RecordTest::indexLeadsToEveryEntry()
{
    const core::JobRecord job = scene::closedRecord(10);
    QVERIFY(record::writeRecord(job, path(u"index.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, path(u"index.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    const QStringList pages = text->split(u'\f');
    const QString index = flat(text->mid(text->indexOf(u"Index of persons"_s)));
    for (const core::Entry &entry : job.entries()) {
        // The foot of each page bears the last hash, so its own place is where it stands twice.
        const bool isLast = entry.hash == job.head().hash;
        const auto page = std::find_if(pages.begin(), pages.end(), [&](const QString &one) { return one.contains(u"All entries, in order"_s) || one.contains(u"Signed by Statement"_s) ? one.count(entry.hash.hex()) > (isLast ? 1 : 0) : false; });
        QVERIFY2(page != pages.end(), qPrintable(QString::number(entry.said.seq)));
        const QString wanted = u"%1 %2(, struck)? \\(p\\. %3\\)"_s.arg(QString::number(entry.said.seq), entry.said.subject ? QRegularExpression::escape(*entry.said.subject) : u"[^;(]+?"_s, QString::number(page - pages.begin() + 1));
        QVERIFY2(QRegularExpression(u"(^| )"_s + wanted).match(index).hasMatch(), qPrintable(wanted + u'\n' + index));
    }
    // By name, with the meaning of what was signed.
    static const QRegularExpression order(u"Ana Ruiz \\(ana\\) .*performed: I did this work.*Ben Ortiz \\(ben\\).*Cho Min \\(cho\\) inspected: I inspected this myself.*Rae Holt \\(rae\\) released: I release this job"_s);
    QVERIFY2(order.match(index).hasMatch(), qPrintable(index));
}

/// Who signed, under which authorisation, with which key, how often, from when to when.
void RecordTest::signaturesStandBesideTheVerdict()
{
    const core::JobRecord job = scene::closedRecord(5);
    QVERIFY(record::writeRecord(job, path(u"cover.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, u"-l"_s, u"1"_s, path(u"cover.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    const QString cover = flat(*text);
    const core::Entry &release = job.entries().back();
    const QString when = release.said.at.spoken();
    const QString row = u"Rae Holt (rae) release: rae-release (QM-4/rae) %1… 1 %2 %2"_s.arg(release.said.key.hex().left(16), when);
    QVERIFY2(cover.contains(row), qPrintable(row + u'\n' + cover));
}

/// 14 CFR 43.9 and UK/EU 145.A.50(e) let work be put off with the record saying so (from memory); that it stands where the release is read: common practice.
void RecordTest::theCoverSaysWhatIsStillDue()
{
    scene::Scene scene;
    scene.open(5);
    scene.work();
    scene.say(u"ben"_s, u"finding.raised"_s, u"F7"_s, {{u"description"_s, u"Paint chipped at the cowl latch."_s}});
    scene.say(u"cho"_s, u"finding.closed"_s, u"F7"_s, {{u"disposition"_s, u"deferred"_s}, {u"authority"_s, u"task 51-20"_s}, {u"limit"_s, u"2026-05-01"_s}});
    QVERIFY2(!coverOf(scene.record()).contains(u"Still due"_s), "an open job has loose ends, and nothing after its record");
    scene.say(u"rae"_s, u"job.closed"_s, {}, {{u"statement"_s, u"Carried out as the maintenance data asks."_s}, {u"limitation"_s, u"F7 is open."_s}});
    const QString cover = coverOf(scene.record());
    QVERIFY2(cover.contains(u"CLOSED, LIMITED"_s) && cover.contains(u"Still due after this record"_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"2026-05-01 Finding F7, deferred: Paint chipped at the cowl latch."_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"2026-04-01 Look at the clamps of the bleed duct. E001 Mia Sand"_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"5 interfaces: 5 reconnected and inspected."_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"Hangar 3, Nordfeld"_s), qPrintable(cover));
    QVERIFY2(!cover.contains(u"leaves nothing due"_s), qPrintable(cover));
}

void RecordTest::theCoverSaysThatNothingIsDue()
{
    scene::Scene scene;
    scene.open(1);
    scene.work();
    scene.say(u"ben"_s, u"followup.done"_s, {}, {{u"entry"_s, core::json::Value(scene.job().followUps.front().mark.seq)}, {u"how"_s, u"Looked at, all tight."_s}});
    scene.close();
    const QString cover = coverOf(scene.record());
    QVERIFY2(cover.contains(u"This record leaves nothing due: no follow-up, no deferred finding."_s) && !cover.contains(u"Still due"_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"1 interface: 1 reconnected and inspected."_s), qPrintable(cover));
}

void RecordTest::theCoverCountsSignaturesInDoubt()
{
    scene::Scene scene;
    scene.open(5);
    scene.work();
    const core::JobRecord before = scene.record();
    QVERIFY(!coverOf(before).contains(u"IN DOUBT"_s));
    std::vector<const core::Entry *> hers;
    for (const core::Entry &entry : before.entries()) {
        if (entry.said.author.text() == u"ana")
            hers.push_back(&entry);
    }
    const core::Entry &first = *hers.at(hers.size() - 2);
    scene.sayOnRegister(u"key.stopped"_s, u"ana"_s, {{u"since"_s, first.said.at.text()}, {u"reason"_s, u"PIN seen by others"_s}});
    scene.say(u"lee"_s, u"time.doubted"_s, {}, {{u"first"_s, 1}, {u"last"_s, 1}, {u"reason"_s, u"The clock had stopped."_s}});
    const QString cover = coverOf(scene.record());
    QVERIFY2(cover.contains(u"2 SIGNATURES IN DOUBT"_s), qPrintable(cover));
    QVERIFY2(cover.contains(u"Entries: %1, %2."_s.arg(first.said.seq).arg(hers.back()->said.seq)), qPrintable(cover));
}

void RecordTest::openJobIsRefused()
{
    const auto written = record::writeRecord(scene::openRecord(5), path(u"refused.pdf"_s));
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::Refused);
    QVERIFY(!QFile::exists(path(u"refused.pdf"_s)));
}

void RecordTest::draftSaysSoOnEveryPage()
{
    QVERIFY(record::writeRecord(scene::openRecord(10), path(u"draft.pdf"_s), {.whenOpen = record::WhenOpen::MarkAsDraft}));
    const auto text = outputOf(u"pdftotext"_s, {u"-layout"_s, path(u"draft.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    QStringList pages = text->split(u'\f');
    pages.removeLast();
    for (const QString &page : pages)
        QVERIFY2(page.contains(u"NOT CLOSED"_s), qPrintable(page));
}

void RecordTest::cancelledWhileLayingOut()
{
    const auto atOnce = [](int, int) { return record::Going::Cancel; };
    const auto written = record::writeRecord(scene::closedRecord(5), path(u"cancelled/record.pdf"_s), {.progress = atOnce});
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::Cancelled);
}

void RecordTest::cancelledWhileDrawing()
{
    QDir(m_folder.path()).mkdir(u"empty"_s);
    int told = 0;
    const auto onSecondPage = [&](int page, int pages) {
        told = std::max(told, pages);
        return pages > 0 && page == 2 ? record::Going::Cancel : record::Going::On;
    };
    const auto written = record::writeRecord(scene::closedRecord(10), path(u"empty/record.pdf"_s), {.progress = onSecondPage});
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::Cancelled);
    QVERIFY(told > 2);
    QCOMPARE(QDir(path(u"empty"_s)).entryList(QDir::NoDotAndDotDot | QDir::AllEntries | QDir::Hidden), QStringList());
}

void RecordTest::whatWasThereStaysWhenCancelled()
{
    QFile before(path(u"kept.pdf"_s));
    QVERIFY(before.open(QIODevice::WriteOnly));
    before.write("yesterday's record");
    before.close();
    const auto onLastPage = [](int page, int pages) { return page == pages ? record::Going::Cancel : record::Going::On; };
    QVERIFY(!record::writeRecord(scene::closedRecord(5), path(u"kept.pdf"_s), {.progress = onLastPage}));
    QCOMPARE(contentOf(path(u"kept.pdf"_s)), QByteArray("yesterday's record"));
}

void RecordTest::folderIsMissing()
{
    const auto written = record::writeRecord(scene::closedRecord(5), path(u"no/such/record.pdf"_s));
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::Io);
    QCOMPARE(written.error().where.file, path(u"no/such/record.pdf"_s));
}

void RecordTest::somethingElseIsThere()
{
    // Renamed over, a device would become a plain file.
    const auto written = record::writeInterfacesCsv(scene::closedRecord(5), u"/dev/null"_s);
    QVERIFY(!written);
    QCOMPARE(written.error().code, core::ErrorCode::Io);
    QVERIFY(!QFileInfo(u"/dev/null"_s).isFile());
}

void RecordTest::diskIsFull()
{
    // A limit on the size of files stands in for a full disk: the same system call fails.
    const core::JobRecord job = scene::closedRecord(10);
    QDir(m_folder.path()).mkdir(u"full"_s);
    rlimit limit = {};
    QCOMPARE(getrlimit(RLIMIT_FSIZE, &limit), 0);
    const auto signalBefore = std::signal(SIGXFSZ, SIG_IGN);
    const rlimit narrow = {4096, limit.rlim_max};
    QCOMPARE(setrlimit(RLIMIT_FSIZE, &narrow), 0);
    const auto written = record::writeRecord(job, path(u"full/record.pdf"_s));
    setrlimit(RLIMIT_FSIZE, &limit);
    std::signal(SIGXFSZ, signalBefore);
    QVERIFY(!written);
    QVERIFY(written.error().code == core::ErrorCode::NoSpace || written.error().code == core::ErrorCode::Io);
    QCOMPARE(QDir(path(u"full"_s)).entryList(QDir::NoDotAndDotDot | QDir::AllEntries | QDir::Hidden), QStringList());
}

void RecordTest::figuresAreOnPaper()
{
    QVERIFY(record::writeRecord(scene::closedRecord(5), path(u"figures.pdf"_s)));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, path(u"figures.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    const QString all = flat(*text);
    for (const QString &expected : {u"Lifts as planned"_s, u"Servicing"_s, u"Weight and balance"_s, u"Leak checks"_s, u"6 drops/min, 12 to the millilitre"_s, u"Turbine oil"_s, u"within"_s,
                                    // The picture of the lift that stands, in text that can be searched.
                                    u"outgoing unit, hoist HO-1"_s, u"carries 240 kg"_s, u"carries 120 kg"_s, u"400 kg of 1000 kg"_s, u"1200 mm between the points"_s, u"little margin"_s,
                                    u"Nobody stands, walks or reaches under the load"_s,
                                    u"For the weight record"_s, u"Difference in weight: +6 kg"_s, u"Difference in moment: +39 kg·m"_s})
        QVERIFY2(all.contains(expected), qPrintable(expected));
    // The lift that was struck stands in its table and has no picture.
    QVERIFY(all.contains(u"370 kg"_s));
    QVERIFY(!all.contains(u"carries 220 kg"_s));
}

/// A page is too narrow for all that a torque entry may tell.
void RecordTest::narrowColumnsStandUnderTheirRow()
{
    scene::Scene scene;
    scene.sayOnRegister(u"tool.registered"_s, u"TW2"_s, {{u"name"_s, u"Torque wrench"_s}, {u"range_min"_s, u"20"_s}, {u"range_max"_s, u"100"_s}, {u"unit"_s, u"N·m"_s}, {u"torque_type"_s, u"indicating"_s}, {u"graduation"_s, u"0.5"_s}, {u"length"_s, u"300 mm"_s}});
    scene.sayOnRegister(u"tool.calibrated"_s, u"TW2"_s, {{u"on"_s, u"2025-09-01"_s}, {u"due"_s, u"2026-08-31"_s}, {u"certificate"_s, u"CC-1003"_s}});
    scene.open(1);
    scene.say(u"ana"_s, u"interface.disconnected"_s, u"E001"_s, {{u"tag"_s, u"1"_s}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
    scene.say(u"ana"_s, u"interface.reconnected"_s, u"E001"_s, {{u"tag_recovered"_s, u"1"_s}, {u"blanks_removed"_s, 0}, {u"seal_part"_s, u"SL-2204"_s}, {u"seal_batch"_s, u"B-1"_s}});
    scene.say(u"ana"_s, u"torque.applied"_s, u"E001"_s,
              {{u"fastener"_s, 1}, {u"value"_s, u"21"_s}, {u"unit"_s, u"N·m"_s}, {u"tool"_s, u"TW2"_s}, {u"setting"_s, u"21 N·m"_s},
               {u"wrench_length"_s, u"300 mm"_s}, {u"extension"_s, u"50 mm"_s}, {u"extension_angle"_s, u"0 °"_s}});
    QVERIFY(record::writeRecord(scene.record(), path(u"narrow.pdf"_s), {.whenOpen = record::WhenOpen::MarkAsDraft}));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, path(u"narrow.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    // 21 · (300 + 50) / 300: TM 9-254 par. 4-1 d, fig. 4-5.
    QVERIFY2(flat(*text).contains(u"Wrench set to: 21 N·m · Adapter: arm 300 mm + 50 mm at 0 ° · At the fastener: 24.5 N·m"_s), qPrintable(*text));
}

void RecordTest::oneCellLongerThanAPage()
{
    scene::Scene scene;
    scene.open(5);
    QString essay;
    for (int i = 0; i < 380; ++i)
        essay += u"Look %1 at the cushion. "_s.arg(i, 4, 10, QLatin1Char('0'));
    scene.say(u"ben"_s, u"finding.raised"_s, u"F1"_s, {{u"description"_s, essay}});
    QVERIFY(record::writeRecord(scene.record(), path(u"essay.pdf"_s), {.whenOpen = record::WhenOpen::MarkAsDraft}));
    const auto text = outputOf(u"pdftotext"_s, {u"-raw"_s, path(u"essay.pdf"_s), u"-"_s});
    QVERIFY2(text, "pdftotext failed; packaging/check installs it");
    // Each sentence is on paper in the loose ends, the findings and the entries, wherever lines break. One that the end of a
    // page cuts has foot and head in its middle.
    QString together = *text;
    together.remove(QRegularExpression(u"\\s"_s));
    qsizetype whole = 0;
    for (int i = 0; i < 380; ++i)
        whole += together.count(u"Look%1atthecushion"_s.arg(i, 4, 10, QLatin1Char('0')));
    const qsizetype pages = text->count(u'\f');
    QVERIFY2(whole <= 1140 && whole >= 1140 - pages, qPrintable(QString::number(whole)));
    QVERIFY(pages < 40);
}

/// However far down the page it begins, and however high the first row is.
void RecordTest::headingStandsOverItsFirstRow()
{
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    for (int lines = 0; lines < 70; ++lines) {
        record::Flow flow(record::frameOf(record::PageSize::A4), *faces, {});
        for (int i = 0; i < lines; ++i)
            flow.paragraph(u"Filler."_s);
        const record::Table table{{{u"What"_s, 1}}, {{u"Group"_s, {u"Row of\nmany\nlines\nat\nonce"_s}}}};
        flow.table(u"Heading"_s, table);
        for (const record::Sheet &sheet : flow.takeSheets()) {
            const auto has = [&](const QString &text) { return std::any_of(sheet.runs.begin(), sheet.runs.end(), [&](const record::Run &run) { return run.text == text; }); };
            QCOMPARE(has(u"Heading"_s), has(u"Group"_s));
            QVERIFY(!has(u"Heading"_s) || std::any_of(sheet.runs.begin(), sheet.runs.end(), [](const record::Run &run) { return run.text.startsWith(u"Row of"); }));
        }
    }
}

/// At every width that holds the longest figure; and what is written has plain blanks, so that it is found.
void RecordTest::unitsStayWithTheirNumbers()
{
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    const QString text = u"154.3 kg / 126.25 kg left with ≈ 26.7 % of 2.3 US gal"_s;
    const double least = faces->width(u"126.25 kg "_s, record::Face::Cell);
    for (double width = least; width < 6 * least; width += 1) {
        const QStringList lines = faces->wrapped(text, record::Face::Cell, width);
        QCOMPARE(lines.join(u' '), text);
        for (const QString &line : lines) {
            const bool endsInHalf = line.back().isDigit() || line.endsWith(u'≈') || line.endsWith(u"US"_s);
            QVERIFY2(!endsInHalf, qPrintable(lines.join(u'|')));
        }
    }
}

void RecordTest::interfacesAsCsv()
{
    QVERIFY(record::writeInterfacesCsv(scene::closedRecord(10), path(u"interfaces.csv"_s)));
    const QList<QByteArray> lines = contentOf(path(u"interfaces.csv"_s)).split('\n');
    QVERIFY(lines[0].startsWith("id,name,kind,zone,stage,"));
    QCOMPARE(lines.size(), 12);
    QVERIFY2(lines[1].contains("E001,\"Bleed duct, station 1\",Duct,Inboard,Inspected,"), lines[1].constData());
    QVERIFY2(lines[1].contains("Cho Min"), lines[1].constData());
}

QTEST_MAIN(RecordTest)
#include "tst_record.moc"
