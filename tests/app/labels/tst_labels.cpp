// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/labels/labels.hpp"

#include <QFile>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QtTest>
#include <QXmlStreamReader>

#include "app/labels/layout.hpp"
#include "core/labels/label_text.hpp"
#include "tests/app/record/programs.hpp"

using namespace Qt::StringLiterals;

namespace {

constexpr double pointsPerInch = 72;
constexpr int dotsPerInch = 200; // less than any office printer

core::Label label(const QString &id, const QString &name, const QString &tag = {}, const QString &workOrder = u"WO-2207-14"_s)
{
    return {core::writeLabelText({workOrder, *core::InterfaceId::parse(id)}), workOrder, id, name, u"Left"_s, tag};
}

/// As a list has them: names of every length, tags on every third.
std::vector<core::Label> thirty()
{
    std::vector<core::Label> labels;
    for (int i = 1; i <= 30; ++i)
        labels.push_back(label(u"E%1"_s.arg(i), i % 2 ? u"Bleed duct, forward, station %1"_s.arg(i) : u"Drain %1"_s.arg(i), i % 3 ? QString() : QString::number(400 + i)));
    return labels;
}

/// A rectangle of a page, in points from its top left corner.
QRectF cellOf(const labels::LabelSize &size, const labels::Grid &grid, int number)
{
    const QSizeF cell = QSizeF(size.width, size.height) * pointsPerInch / 25.4;
    return {grid.origin / record::point + QPointF(number % grid.columns * cell.width(), number / grid.columns * cell.height()), cell};
}

/// The page as poppler draws it; null when that fails.
QImage drawn(const QString &pdf, int page, const QString &folder)
{
    const QString number = QString::number(page);
    const programs::Ran ran = programs::run(u"pdftoppm"_s, {u"-r"_s, QString::number(dotsPerInch), u"-gray"_s, u"-png"_s, u"-singlefile"_s, u"-f"_s, number, u"-l"_s, number, pdf, folder + u"/page"_s});
    return ran.code == 0 ? QImage(folder + u"/page.png"_s) : QImage();
}

/// What zbar reads on each picture, looked at by itself as with a scanner; empty where it reads nothing.
QStringList decode(const QList<QImage> &pictures, const QString &folder)
{
    QStringList files;
    for (const QImage &picture : pictures) {
        files << folder + u"/label%1.png"_s.arg(files.size());
        picture.save(files.last(), "PNG", 100); // not packed: quicker
    }
    const programs::Ran ran = programs::run(u"zbarimg"_s, QStringList{u"--quiet"_s, u"--nodbus"_s, u"--xml"_s, u"-Sdisable"_s, u"-Sqrcode.enable"_s} + files);
    QStringList texts(files.size());
    qsizetype number = -1;
    QXmlStreamReader xml(ran.output);
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (xml.name() == u"source")
            number = files.indexOf(xml.attributes().value(u"href"_s).toString());
        if (xml.name() == u"data" && number >= 0)
            texts[number] += xml.readElementText();
    }
    return texts;
}

struct Word {
    QString text;
    QRectF box; ///< in points
};

/// The words of a page as poppler finds them.
QList<Word> wordsOn(const QString &pdf, int page)
{
    const QString number = QString::number(page);
    const programs::Ran ran = programs::run(u"pdftotext"_s, {u"-bbox"_s, u"-f"_s, number, u"-l"_s, number, pdf, u"-"_s});
    static const QRegularExpression word(uR"x(<word xMin="([0-9.]+)" yMin="([0-9.]+)" xMax="([0-9.]+)" yMax="([0-9.]+)">([^<]*)</word>)x"_s);
    QList<Word> words;
    for (auto found = word.globalMatch(ran.output); found.hasNext();) {
        const auto match = found.next();
        const auto at = [&](int group) { return match.captured(group).toDouble(); };
        words.push_back({match.captured(5), QRectF(QPointF(at(1), at(2)), QPointF(at(3), at(4)))});
    }
    return words;
}

/// In points, from a length of record::Run.
QRectF inPoints(const QRectF &rect) { return {rect.topLeft() / record::point, rect.size() / record::point}; }

} // namespace

/// Sheets of labels, drawn, and read back by a decoder.
class TestLabels : public QObject {
    Q_OBJECT

private slots:
    void init() { QVERIFY(m_folder.isValid()); }
    void everyCodeIsReadBesideItsWords_data();
    void everyCodeIsReadBesideItsWords();
    void dirtyCodesAreRead_data();
    void dirtyCodesAreRead();
    void theManualTellsEachSize();
    void wordsKeepToTheirLabel_data();
    void wordsKeepToTheirLabel();
    void longNameIsCut();
    void longIdIsSetSmaller();
    void gridFillsThePaper_data();
    void gridFillsThePaper();
    void longCodeTakesLessCorrection();
    void tooLongForTheSize();
    void noLabels();
    void isArchivable();

private:
    QString path(const QString &name) const { return m_folder.filePath(name); }
    QTemporaryDir m_folder;
};

void TestLabels::everyCodeIsReadBesideItsWords_data()
{
    QTest::addColumn<QString>("size");
    QTest::addColumn<record::PageSize>("paper");
    for (const labels::LabelSize &size : labels::labelSizes()) {
        QTest::addRow("%s on A4", size.name.data()) << QString(size.name) << record::PageSize::A4;
        QTest::addRow("%s on Letter", size.name.data()) << QString(size.name) << record::PageSize::Letter;
    }
}

void TestLabels::everyCodeIsReadBesideItsWords()
{
    QFETCH(QString, size);
    QFETCH(record::PageSize, paper);
    const labels::LabelSize &chosen = *labels::findLabelSize(size);
    const auto all = thirty();
    const auto written = labels::writeLabels(all, path(u"labels.pdf"_s), chosen, paper);
    QVERIFY2(written, written ? "" : qPrintable(written.error().message));
    QCOMPARE(written->labels, 30);

    const labels::Grid grid = labels::gridOf(chosen, paper);
    const int each = grid.columns * grid.rows;
    QCOMPARE(written->sheets, (30 + each - 1) / each);
    int number = 0;
    for (int page = 1; page <= written->sheets; ++page) {
        const QImage image = drawn(path(u"labels.pdf"_s), page, m_folder.path());
        QVERIFY2(!image.isNull(), "pdftoppm failed; packaging/check installs it");
        QList<QImage> pictures;
        for (int cell = 0; cell < each && number + cell < 30; ++cell) {
            const QRectF place = cellOf(chosen, grid, cell);
            pictures << image.copy(QRectF(place.topLeft() * dotsPerInch / pointsPerInch, place.size() * dotsPerInch / pointsPerInch).toRect());
        }
        const QStringList read = decode(pictures, m_folder.path());
        const QList<Word> words = wordsOn(path(u"labels.pdf"_s), page);
        for (int cell = 0; cell < read.size(); ++cell, ++number) {
            const core::Label &label = all[static_cast<std::size_t>(number)];
            QCOMPARE(read[cell], label.code);
            // On the same label stands that id, and no other's.
            QStringList here;
            for (const Word &word : words) {
                if (cellOf(chosen, grid, cell).contains(word.box.center()))
                    here << word.text;
            }
            QCOMPARE(here.filter(QRegularExpression(u"^E[0-9]+$"_s)), QStringList{label.id});
            QCOMPARE(here.contains(u"Tag"_s), !label.tag.isEmpty());
            QVERIFY(label.tag.isEmpty() || here.contains(label.tag));
            QVERIFY(here.contains(u"WO-2207-14"_s) && here.contains(u"Left"_s));
        }
    }
    QCOMPARE(number, 30);
}

void TestLabels::dirtyCodesAreRead_data()
{
    QTest::addColumn<int>("part");
    QTest::addColumn<QString>("read");
    QTest::addRow("clean") << 100 << u"remate:WO-2207-14/E12"_s;
    QTest::addRow("a spot over a quarter of the side") << 4 << u"remate:WO-2207-14/E12"_s;
    QTest::addRow("a spot over half of it") << 2 << QString();
}

/// Oil in the middle of the code, between the marks that a reader finds it by.
void TestLabels::dirtyCodesAreRead()
{
    QFETCH(int, part);
    QFETCH(QString, read);
    const auto code = labels::qrCodeFor(label(u"E12"_s, {}).code, 20 * record::millimetre);
    QVERIFY(code);
    QCOMPARE(code->correction, labels::Correction::Q);
    constexpr int dots = 8;
    const int side = (code->side + 2 * labels::quietModules) * dots;
    QImage image(side, side, QImage::Format_Grayscale8);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.translate(labels::quietModules * dots, labels::quietModules * dots);
    painter.fillPath(labels::pathOf(*code, dots), Qt::black);
    const int stain = code->side * dots / part;
    painter.fillRect(code->side * dots / 2 - stain / 2, code->side * dots / 2 - stain / 2, stain, stain, Qt::black);
    painter.end();
    QVERIFY(image.save(path(u"dirty.png"_s)));
    const programs::Ran ran = programs::run(u"zbarimg"_s, {u"--quiet"_s, u"--nodbus"_s, u"--raw"_s, path(u"dirty.png"_s)});
    QCOMPARE(ran.output.trimmed(), read);
}

/// The table that somebody reads who buys paper.
void TestLabels::theManualTellsEachSize()
{
    QFile page(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/manual/labels.md"_s);
    QVERIFY2(page.open(QIODevice::ReadOnly), qPrintable(page.fileName()));
    const QStringList lines = QString::fromUtf8(page.readAll()).split(u'\n');
    QStringList told;
    std::copy_if(lines.begin(), lines.end(), std::back_inserter(told), [](const QString &line) { return QRegularExpression(u"^\\| \\d"_s).match(line).hasMatch(); });
    const auto fits = [](const labels::LabelSize &size, record::PageSize paper) {
        const labels::Grid grid = labels::gridOf(size, paper);
        return u"%1 × %2"_s.arg(grid.columns).arg(grid.rows);
    };
    QStringList so;
    for (const labels::LabelSize &size : labels::labelSizes())
        so << u"| %1 × %2 | %3 | %4 |"_s.arg(size.width).arg(size.height).arg(fits(size, record::PageSize::A4), fits(size, record::PageSize::Letter));
    QCOMPARE(told, so);
}

void TestLabels::wordsKeepToTheirLabel_data()
{
    QTest::addColumn<QString>("size");
    for (const labels::LabelSize &size : labels::labelSizes())
        QTest::addRow("%s", size.name.data()) << QString(size.name);
}

void TestLabels::wordsKeepToTheirLabel()
{
    QFETCH(QString, size);
    const labels::LabelSize &chosen = *labels::findLabelSize(size);
    const QString endless = u"Harness connector behind the lower cowl at the accessory gearbox, second from the left, under the bracket of the oil line, which is freed first"_s;
    const QString one(90, u'W');
    const std::vector<core::Label> all{label(u"E1"_s, endless, u"40"_s), label(u"E2"_s, one, one), label(u"E3"_s, {}), label(u"E4"_s, u"Drain"_s),
                                       label(u"HARNESS-CONNECTOR-P101-J101"_s, endless, u"41"_s)};
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    const auto sheets = labels::layOut(all, chosen, record::PageSize::A4, *faces);
    QVERIFY(sheets);
    QCOMPARE(sheets->front().size(), all.size());
    for (const labels::PlacedLabel &placed : sheets->front()) {
        QVERIFY(placed.place.contains(placed.code.place));
        QVERIFY(placed.code.module >= labels::leastModule * record::millimetre);
        double lastBase = 0;
        for (const record::Run &run : placed.words) {
            const QFont font = faces->font(run.face);
            QVERIFY2(font.pixelSize() >= 6 * record::point, qPrintable(run.text));
            const QRectF box(run.baseline.x(), run.baseline.y() - faces->ascent(run.face), faces->width(run.text, run.face), faces->ascent(run.face));
            QVERIFY2(placed.place.contains(box), qPrintable(run.text));
            QVERIFY2(!box.intersects(placed.code.place), qPrintable(run.text));
            QVERIFY(run.baseline.y() >= lastBase + 6 * record::point);
            lastBase = run.baseline.y();
        }
    }
    // And as poppler sees it on paper.
    QVERIFY(labels::writeLabels(all, path(u"long.pdf"_s), chosen, record::PageSize::A4));
    const QList<Word> words = wordsOn(path(u"long.pdf"_s), 1);
    QVERIFY(words.size() > 10);
    for (const Word &word : words) {
        for (const labels::PlacedLabel &placed : sheets->front())
            QVERIFY2(!inPoints(placed.code.place).intersects(word.box), qPrintable(word.text));
    }
}

void TestLabels::longNameIsCut()
{
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    const auto lines = [&](const QString &name) {
        QStringList texts;
        const auto sheets = labels::layOut({label(u"E1"_s, name, u"40"_s)}, *labels::findLabelSize(u"50x25"), record::PageSize::A4, *faces);
        for (const record::Run &run : sheets->front().front().words)
            texts << run.text;
        return texts;
    };
    QCOMPARE(lines(u"Drain, forward"_s), (QStringList{u"E1"_s, u"Drain, forward"_s, u"Tag 40"_s, u"Zone Left"_s, u"WO-2207-14"_s}));
    const QStringList cut = lines(u"Drain of the forward accessory gearbox, behind the bracket of the oil line that is freed first of all"_s);
    QCOMPARE(cut.first(), u"E1"_s);
    QCOMPARE(cut.sliced(cut.size() - 3), (QStringList{u"Tag 40"_s, u"Zone Left"_s, u"WO-2207-14"_s}));
    QVERIFY2(cut[cut.size() - 4].endsWith(u'…'), qPrintable(cut.join(u'|')));
    QVERIFY(cut[1].startsWith(u"Drain of"_s));
}

void TestLabels::longIdIsSetSmaller()
{
    const auto faces = record::Typefaces::find();
    QVERIFY(faces);
    const auto first = [&](const QString &id) { return labels::layOut({label(id, u"Drain"_s)}, *labels::findLabelSize(u"50x25"), record::PageSize::A4, *faces)->front().front().words.front(); };
    QCOMPARE(first(u"E12"_s).face, record::Face::Heading);
    const record::Run small = first(u"P101-J101-FWD"_s);
    QVERIFY(small.face != record::Face::Heading);
    QCOMPARE(small.text, u"P101-J101-FWD"_s);
    QVERIFY(first(QString(60, u'W')).text.endsWith(u'…'));
}

void TestLabels::gridFillsThePaper_data()
{
    QTest::addColumn<QString>("size");
    QTest::addColumn<record::PageSize>("paper");
    QTest::addColumn<int>("columns");
    QTest::addColumn<int>("rows");

    // ISO 216 A4: 210 × 297 mm. ANSI/ASME Y14.1 Letter: 215.9 × 279.4 mm.
    QTest::addRow("70x37 on A4: 210 × 296") << u"70x37"_s << record::PageSize::A4 << 3 << 8;
    QTest::addRow("50x25 on A4: 200 × 275") << u"50x25"_s << record::PageSize::A4 << 4 << 11;
    QTest::addRow("105x74 on A4: 210 × 296") << u"105x74"_s << record::PageSize::A4 << 2 << 4;
    QTest::addRow("70x37 on Letter: 210 × 259") << u"70x37"_s << record::PageSize::Letter << 3 << 7;
    QTest::addRow("50x25 on Letter: 200 × 275") << u"50x25"_s << record::PageSize::Letter << 4 << 11;
    QTest::addRow("105x74 on Letter: 210 × 222") << u"105x74"_s << record::PageSize::Letter << 2 << 3;
}

void TestLabels::gridFillsThePaper()
{
    QFETCH(QString, size);
    QFETCH(record::PageSize, paper);
    QFETCH(int, columns);
    QFETCH(int, rows);
    const labels::LabelSize &chosen = *labels::findLabelSize(size);
    const labels::Grid grid = labels::gridOf(chosen, paper);
    QCOMPARE(grid.columns, columns);
    QCOMPARE(grid.rows, rows);
    const QSizeF page = record::frameOf(paper).size;
    QVERIFY(qAbs(2 * grid.origin.x() + columns * chosen.width * record::millimetre - page.width()) < 0.01);
    QVERIFY(qAbs(2 * grid.origin.y() + rows * chosen.height * record::millimetre - page.height()) < 0.01);
}

void TestLabels::longCodeTakesLessCorrection()
{
    // 98 bytes: with Q version 8 (108 bytes), 49 modules a side; with M version 6 (106 bytes), 41 modules. ISO/IEC 18004, capacities of the versions.
    const QString text = u"remate:"_s + QString(91, u'e');
    const auto fits = [&](int modules) { return labels::qrCodeFor(text, modules * 0.43 * record::millimetre); };
    QVERIFY(fits(57));
    QCOMPARE(fits(57)->correction, labels::Correction::Q);
    QCOMPARE(fits(57)->side, 49);
    QVERIFY(fits(56));
    QCOMPARE(fits(56)->correction, labels::Correction::M);
    QCOMPARE(fits(56)->side, 41);
    QVERIFY(fits(49));
    QVERIFY(!fits(48));
}

void TestLabels::tooLongForTheSize()
{
    const std::vector<core::Label> all{label(u"E1"_s, u"Drain"_s), label(QString(128, u'e'), u"Drain"_s)};
    const auto no = labels::writeLabels(all, path(u"none.pdf"_s), *labels::findLabelSize(u"50x25"), record::PageSize::A4);
    QVERIFY(!no);
    QCOMPARE(no.error().code, core::ErrorCode::BadInput);
    QVERIFY(no.error().message.contains(all[1].code));
    QVERIFY(!QFile::exists(path(u"none.pdf"_s)));
    QVERIFY(labels::writeLabels(all, path(u"large.pdf"_s), *labels::findLabelSize(u"105x74"), record::PageSize::A4));
}

void TestLabels::noLabels()
{
    const auto no = labels::writeLabels({}, path(u"none.pdf"_s), labels::labelSizes().front(), record::PageSize::A4);
    QVERIFY(!no);
    QCOMPARE(no.error().code, core::ErrorCode::BadInput);
    QVERIFY(!QFile::exists(path(u"none.pdf"_s)));
}

void TestLabels::isArchivable()
{
    QVERIFY(labels::writeLabels(thirty(), path(u"archive.pdf"_s), labels::labelSizes().front(), record::PageSize::A4));
    const programs::Ran ran = programs::validateArchive(path(u"archive.pdf"_s));
    QVERIFY2(ran.code == 0, qPrintable(ran.output));
}

QTEST_MAIN(TestLabels)
#include "tst_labels.moc"
