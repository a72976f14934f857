// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/measure/working.hpp"

using namespace Qt::StringLiterals;

class TestWorkingText : public QObject {
    Q_OBJECT

private slots:
    /// A unit stays on the line of its number: common practice. Written here: `_` for a no-break space.
    void unitsStayWithTheirNumbers_data()
    {
        QTest::addColumn<QString>("text");
        for (const QString &text : {u"22.5_N·m"_s, u"154.3_kg / 126.25_kg"_s, u"≈_26.7_%"_s, u"60_° from the horizontal"_s, u"2.3_US_gal of oil"_s, u"12_drops/min"_s, u"+780_lb·in. Not negligible"_s,
                                    u"(1000_kg − 525_kg) / 1000_kg · 100"_s, u"20 to 25_N·m"_s, u"entry 12 of 40"_s, u"2 inspections"_s, u"1 kgx"_s, u"50 000_lb"_s, u"N·m alone"_s, u" kg"_s, u"6.5 "_s, QString()})
            QTest::newRow(qPrintable(text)) << text;
    }
    void unitsStayWithTheirNumbers()
    {
        QFETCH(QString, text);
        const QString plain = QString(text).replace(u'_', u' ');
        const QString laid = core::measure::unbroken(plain);
        QCOMPARE(QString(laid).replace(QChar(QChar::Nbsp), u'_'), text);
        QCOMPARE(laid.size(), plain.size());
        QCOMPARE(core::measure::unbroken(laid), laid);
    }

    /// What is signed and exported has plain blanks.
    void valuesKeepTheirText()
    {
        QCOMPARE(core::Quantity::parse(u"22.5", u"N·m")->text(), u"22.5 N·m"_s);
        QCOMPARE(core::measure::shown(core::Rational(1) / 3, u"kg"_s), u"≈ 0.3333 kg"_s);
    }
};

QTEST_GUILESS_MAIN(TestWorkingText)
#include "tst_working_text.moc"
