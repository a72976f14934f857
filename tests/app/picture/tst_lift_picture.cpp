// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/picture/lift_picture.hpp"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QTest>

#include <algorithm>
#include <cmath>

using namespace Qt::StringLiterals;
using picture::Strain;

namespace {

core::Quantity mass(const QString &text) { return *core::Quantity::read(text, core::Dimension::Mass); }
core::Quantity length(const QString &text) { return *core::Quantity::read(text, core::Dimension::Length); }

/// What a lift is made of; all else is far from any limit.
struct Made {
    QString weight = u"360 kg"_s;
    QString hoistLimit = u"1000 kg"_s;
    QString slingLimit = u"600 kg"_s;
    QString angle = u"60"_s;
    qint64 legs = 1;
    QString centre{}; ///< of 1200 mm; empty for a single point
};

picture::Lift liftOf(const Made &made)
{
    const auto points = made.centre.isEmpty() ? std::nullopt : std::optional(core::measure::TwoPoints{length(u"1200 mm"_s), length(made.centre)});
    const QDate due(2026, 6, 30);
    return {{mass(made.weight), mass(u"40 kg"_s), mass(made.hoistLimit), due, mass(made.slingLimit), due, made.legs,
             core::measure::AngleFromHorizontal{*core::Decimal::parse(made.angle)}, points, QDate(2026, 3, 2)},
            u"Outgoing unit"_s, u"HO-1"_s, u"SL-3"_s};
}

QFont usualFont()
{
    QFont font;
    font.setPixelSize(13);
    return font;
}

picture::LiftLayout laid(const Made &made, QSizeF size = {900, 600}) { return picture::layLift(liftOf(made), QRectF(QPointF(0, 0), size), usualFont()); }

QStringList textsOf(const picture::LiftLayout &layout)
{
    QStringList texts;
    for (const picture::TextRun &run : layout.texts)
        texts << run.text;
    return texts;
}

/// What lies on a text, or where a text is cut; empty when all is well.
QString faultOf(const picture::LiftLayout &layout, const QRectF &area)
{
    for (std::size_t i = 0; i < layout.texts.size(); ++i) {
        const picture::TextRun &run = layout.texts[i];
        if (!area.contains(run.rect))
            return u"outside: "_s + run.text;
        if (QFontMetricsF(run.font).horizontalAdvance(run.text) > run.rect.width() + 0.01)
            return u"wider than its rectangle: "_s + run.text;
        if (run.text.contains(u'…'))
            return u"cut: "_s + run.text;
        for (std::size_t j = i + 1; j < layout.texts.size(); ++j) {
            if (run.rect.intersects(layout.texts[j].rect))
                return run.text + u" / "_s + layout.texts[j].text;
        }
        for (const QRectF &shape : {layout.hoist, layout.unit}) {
            if (run.rect.intersects(shape))
                return u"on the drawing: "_s + run.text;
        }
        for (const picture::Mark &mark : layout.marks) {
            if (run.rect.intersects(mark.rect))
                return u"on a mark: "_s + run.text;
        }
        for (const picture::Leg &leg : layout.legs) {
            if (run.rect.intersects(QRectF(leg.line.p1(), leg.line.p2()).normalized()))
                return u"on a leg: "_s + run.text;
        }
    }
    const QRectF drawn = QRectF(layout.hoist).united(layout.unit);
    return area.contains(drawn) ? QString() : u"the drawing leaves its area"_s;
}

qsizetype marksOf(const picture::LiftLayout &layout, Strain strain)
{
    return std::count_if(layout.marks.begin(), layout.marks.end(), [&](const picture::Mark &mark) { return mark.strain == strain; });
}

} // namespace

class TstLiftPicture : public QObject {
    Q_OBJECT

private slots:
    void nothingCollides_data();
    void nothingCollides();
    void textKeepsItsSizeWhereThereIsRoom();
    void longNamesAreCutAtTheirRoom();
    void legsLieAtTheirAngle_data();
    void legsLieAtTheirAngle();
    void pointsLieInProportion();
    void hookHangsOverTheCentre();
    void numbersOfTheCheck();
    void strainIsShapeAndWord_data();
    void strainIsShapeAndWord();
    void whatIsRefusedSaysSo();
    void everySizePaints_data();
    void everySizePaints();
};

void TstLiftPicture::nothingCollides_data()
{
    QTest::addColumn<Made>("made");
    QTest::addColumn<QSizeF>("size");
    // 504 × 220 points: as wide as the text of an A4 page.
    const QSizeF sizes[] = {{320, 240}, {504, 220}, {640, 480}, {900, 600}, {1600, 900}};
    const std::tuple<const char *, QString, QString, QString> weights[] = {
        {"light", u"360 kg"_s, u"1000 kg"_s, u"600 kg"_s},
        {"six digits", u"123456 lb"_s, u"987654 lb"_s, u"345678 lb"_s},
        {"six digits, over", u"987654 lb"_s, u"123456 lb"_s, u"123456 lb"_s},
        {"six digits, uneven", u"123456.7 lb"_s, u"145000.5 lb"_s, u"123457.9 lb"_s},
    };
    for (const QSizeF &size : sizes) {
        for (const auto &[name, weight, hoist, sling] : weights) {
            for (const QString &angle : {u"30"_s, u"45"_s, u"60"_s, u"80"_s, u"90"_s}) {
                for (const QString &centre : {QString(), u"600 mm"_s, u"417.35 mm"_s, u"1100 mm"_s, u"0 mm"_s}) {
                    for (const qint64 legs : {1, 2, 4})
                        QTest::addRow("%g x %g, %s, %s°, centre %s, %lld legs", size.width(), size.height(), name, qPrintable(angle), qPrintable(centre), static_cast<long long>(legs))
                            << Made{weight, hoist, sling, angle, legs, centre} << size;
                }
            }
        }
    }
}

void TstLiftPicture::nothingCollides()
{
    QFETCH(Made, made);
    QFETCH(QSizeF, size);
    QCOMPARE(faultOf(laid(made, size), QRectF(QPointF(0, 0), size)), QString());
}

void TstLiftPicture::textKeepsItsSizeWhereThereIsRoom()
{
    QCOMPARE(laid({.centre = u"400 mm"_s}).em, 13);
    QVERIFY(laid({.weight = u"123456.7 lb"_s, .hoistLimit = u"145000.5 lb"_s, .slingLimit = u"123457.9 lb"_s, .centre = u"400 mm"_s}, {320, 240}).em >= 7);
}

void TstLiftPicture::longNamesAreCutAtTheirRoom()
{
    picture::Lift lift = liftOf({.centre = u"400 mm"_s});
    lift.hoist = u"of the hangar's second bay, the one that was overhauled after the winter, with the long chain"_s;
    const QRectF area(0, 0, 320, 240);
    const picture::LiftLayout layout = picture::layLift(lift, area, usualFont());
    const QStringList cut = textsOf(layout).filter(u"…"_s);
    QCOMPARE(cut.size(), 1);
    QVERIFY2(cut.front().startsWith(u"Hoist of the"), qPrintable(cut.front()));
    QVERIFY(faultOf(layout, area).startsWith(u"cut: Hoist"));
}

void TstLiftPicture::legsLieAtTheirAngle_data()
{
    QTest::addColumn<Made>("made");
    for (const char *angle : {"30", "45", "60", "75", "80", "90"}) {
        for (const QString &centre : {QString(), u"600 mm"_s, u"300 mm"_s, u"1000 mm"_s}) {
            for (const qint64 legs : {1, 2, 3})
                QTest::addRow("%s°, centre %s, %lld legs", angle, qPrintable(centre), static_cast<long long>(legs)) << Made{.angle = QString::fromLatin1(angle), .legs = legs, .centre = centre};
        }
    }
}

/// The plan's angle is that of the flattest leg.
void TstLiftPicture::legsLieAtTheirAngle()
{
    QFETCH(Made, made);
    for (const QSizeF &size : {QSizeF(320, 240), QSizeF(900, 600)}) {
        const picture::LiftLayout layout = laid(made, size);
        double flattest = 90;
        for (const picture::Leg &leg : layout.legs)
            flattest = std::min(flattest, std::atan2(std::abs(leg.line.dy()), std::abs(leg.line.dx())) * 180 / 3.14159265358979);
        QVERIFY2(std::abs(flattest - made.angle.toDouble()) < 0.01, qPrintable(QString::number(flattest)));
        for (const picture::Leg &leg : layout.legs)
            QVERIFY(leg.line.y2() > leg.line.y1());
    }
}

void TstLiftPicture::pointsLieInProportion()
{
    for (const QString &angle : {u"45"_s, u"90"_s}) {
        const picture::LiftLayout layout = laid({.angle = angle, .centre = u"400 mm"_s});
        const double span = layout.points[1].x() - layout.points[0].x();
        QVERIFY(std::abs((layout.centre.x() - layout.points[0].x()) / span - 400.0 / 1200.0) < 1e-6);
        QCOMPARE(layout.points[0].y(), layout.points[1].y());
    }
    QCOMPARE(laid({}).points.size(), 1U);
}

void TstLiftPicture::hookHangsOverTheCentre()
{
    for (const QString &centre : {u"0 mm"_s, u"400 mm"_s, u"1100 mm"_s}) {
        const picture::LiftLayout layout = laid({.centre = centre});
        QCOMPARE(layout.hook.x(), layout.centre.x());
        QVERIFY(layout.unit.contains(layout.centre));
    }
}

/// W · (L − x) / L at the left, W · x / L at the right, times 1 / sin 30° = 2 on a leg, and the whole on the hoist: sling makers' pages.
void TstLiftPicture::numbersOfTheCheck()
{
    const QStringList texts = textsOf(laid({.angle = u"30"_s, .centre = u"400 mm"_s}));
    for (const QString &expected : {u"Hoist HO-1"_s, u"400 kg of 1000 kg"_s, u"margin 60 %"_s, u"Sling SL-3"_s, u"rigging 40 kg"_s, u"30° from level"_s, u"1 leg a point"_s,
                                    u"Outgoing unit, 360 kg"_s, u"400 mm"_s, u"800 mm"_s, u"1200 mm between the points"_s, u"carries 240 kg"_s, u"carries 120 kg"_s, u"leg 480 kg"_s,
                                    u"leg 240 kg"_s, u"limit 600 kg"_s, u"margin 20 %"_s})
        QVERIFY2(texts.contains(expected), qPrintable(expected + u" in "_s + texts.join(u" | "_s)));
    // As in the working and on paper: 240 / sin 60° is 277.128….
    const Made uneven{.centre = u"400 mm"_s};
    const QString leg = core::measure::liftWorking(liftOf(uneven).plan).steps[4].result;
    QCOMPARE(leg, u"≈ 277.13 kg"_s);
    QVERIFY(textsOf(laid(uneven)).contains(u"leg "_s + leg));
    QVERIFY(textsOf(laid({.legs = 2})).contains(u"2 legs a point"_s));
    QVERIFY(textsOf(laid({.legs = 4})).contains(u"4 legs a point, 2 carrying"_s));
    // With two points one leg of each is reckoned with, however many there are: 240 / sin 30° again.
    const QStringList four = textsOf(laid({.angle = u"30"_s, .legs = 2, .centre = u"400 mm"_s}));
    QVERIFY2(four.contains(u"2 legs a point, 1 carrying"_s) && four.contains(u"leg 480 kg"_s), qPrintable(four.join(u" | "_s)));
}

void TstLiftPicture::strainIsShapeAndWord_data()
{
    QTest::addColumn<QString>("hoistLimit");
    QTest::addColumn<qsizetype>("little");
    QTest::addColumn<qsizetype>("over");
    // 400 kg hang on the hoist. A mark stands in the hoist and before the word.
    QTest::addRow("a fifth left") << u"500 kg"_s << qsizetype(0) << qsizetype(0);
    QTest::addRow("a touch less") << u"499.9 kg"_s << qsizetype(2) << qsizetype(0);
    QTest::addRow("nothing left") << u"400 kg"_s << qsizetype(2) << qsizetype(0);
    QTest::addRow("over by a touch") << u"399.9 kg"_s << qsizetype(0) << qsizetype(3); // and before "Do not lift"
}

void TstLiftPicture::strainIsShapeAndWord()
{
    QFETCH(QString, hoistLimit);
    QFETCH(qsizetype, little);
    QFETCH(qsizetype, over);
    const picture::LiftLayout layout = laid({.hoistLimit = hoistLimit, .centre = u"400 mm"_s});
    QCOMPARE(marksOf(layout, Strain::Little), little);
    QCOMPARE(marksOf(layout, Strain::Over), over);
    const QStringList texts = textsOf(layout);
    QCOMPARE(texts.contains(u"little margin"_s), little > 0);
    QCOMPARE(texts.contains(u"over its limit"_s), over > 0);
    QCOMPARE(texts.contains(u"Do not lift"_s), over > 0);
}

/// What cannot be: it is still drawn, without the numbers that there are not.
void TstLiftPicture::whatIsRefusedSaysSo()
{
    const QRectF area(0, 0, 320, 240);
    for (const Made &made : {Made{.centre = u"1500 mm"_s}, Made{.centre = u"-10 mm"_s}, Made{.angle = u"10"_s, .centre = u"400 mm"_s}, Made{.legs = 0}, Made{.hoistLimit = u"0 kg"_s}}) {
        const picture::LiftLayout layout = picture::layLift(liftOf(made), area, usualFont());
        QVERIFY(textsOf(layout).contains(u"Do not lift"_s));
        QCOMPARE(faultOf(layout, area), QString());
    }
}

void TstLiftPicture::everySizePaints_data()
{
    QTest::addColumn<QSize>("size");
    QTest::addColumn<double>("scale");
    QTest::addRow("small") << QSize(320, 240) << 1.0;
    QTest::addRow("small, twice the scale") << QSize(320, 240) << 2.0;
    QTest::addRow("large") << QSize(900, 600) << 1.0;
    QTest::addRow("of no use") << QSize(20, 10) << 1.0;
}

/// What is painted is what was laid out: each text leaves ink in its rectangle, and nothing is see-through.
void TstLiftPicture::everySizePaints()
{
    QFETCH(QSize, size);
    QFETCH(double, scale);
    QImage image(size * scale, QImage::Format_ARGB32);
    image.setDevicePixelRatio(scale);
    image.fill(Qt::white);
    const picture::LiftLayout layout = laid({.slingLimit = u"250 kg"_s, .centre = u"400 mm"_s}, size);
    QPainter painter(&image);
    picture::paintLift(painter, layout, {Qt::black, Qt::darkGray, Qt::lightGray, Qt::white, Qt::darkYellow, Qt::red});
    painter.end();
    if (size.width() < 100)
        return; // only that it comes to an end
    for (const picture::TextRun &run : layout.texts) {
        const QRect rect = QRectF(run.rect.topLeft() * scale, run.rect.size() * scale).toAlignedRect() & image.rect();
        const QImage part = image.copy(rect);
        bool hasInk = false;
        for (int y = 0; y < part.height() && !hasInk; ++y) {
            for (int x = 0; x < part.width() && !hasInk; ++x)
                hasInk = part.pixelColor(x, y).lightness() < 160;
        }
        QVERIFY2(hasInk, qPrintable(run.text));
    }
    if (const QString folder = qEnvironmentVariable("REMATE_KEEP_PICTURES"); !folder.isEmpty())
        image.save(folder + u"/%1x%2-%3.png"_s.arg(size.width()).arg(size.height()).arg(scale));
}

QTEST_MAIN(TstLiftPicture)
#include "tst_lift_picture.moc"
