// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTest>

#include "app/desktop/parts/theme.hpp"

using desktop::Shade;

Q_DECLARE_METATYPE(desktop::Shade)

struct NamedShade {
    Shade shade;
    const char *name;
    desktop::Appearance appearance;
    double leastOfText; ///< WCAG 2.2: 4.5:1 (1.4.3), and 7:1 (1.4.6) where more contrast was asked for
};

constexpr NamedShade everyShade[] = {{Shade::Light, "light", desktop::Appearance::Light, 4.5},
                                     {Shade::Dark, "dark", desktop::Appearance::Dark, 4.5},
                                     {Shade::StarkLight, "stark light", desktop::Appearance::StarkLight, 7.0},
                                     {Shade::StarkDark, "stark dark", desktop::Appearance::StarkDark, 7.0}};

const NamedShade &named(Shade shade) { return everyShade[static_cast<std::size_t>(shade)]; }

/// Limits from WCAG 2.2: for text see NamedShade; 3:1 for edges of controls (1.4.11).
class TstTheme : public QObject {
    Q_OBJECT

private slots:
    void contrastIsTheStandards();
    void textCanBeRead_data();
    void textCanBeRead();
    void stagesCanBeRead_data() { shades(); }
    void stagesCanBeRead();
    void placeholdersCanBeRead_data() { shades(); }
    void placeholdersCanBeRead();
    void shadeIsTold_data() { shades(); }
    void shadeIsTold();

private:
    void shades();
};

void TstTheme::shades()
{
    QTest::addColumn<Shade>("shade");
    for (const NamedShade &one : everyShade)
        QTest::addRow("%s", one.name) << one.shade;
}

/// Black on white is 21:1, the same colour 1:1: the ends of the scale that WCAG 2.2 gives in "contrast ratio".
void TstTheme::contrastIsTheStandards()
{
    QCOMPARE(qRound(desktop::contrast(Qt::black, Qt::white) * 100), 2100);
    QCOMPARE(desktop::contrast(Qt::gray, Qt::gray), 1.0);
}

void TstTheme::textCanBeRead_data()
{
    QTest::addColumn<Shade>("shade");
    QTest::addColumn<int>("ink");
    QTest::addColumn<int>("paper");
    QTest::addColumn<double>("least");
    const std::tuple<const char *, QPalette::ColorRole, QPalette::ColorRole, double> pairs[] = {
        {"text on base", QPalette::Text, QPalette::Base, 4.5},
        {"text on every other row", QPalette::Text, QPalette::AlternateBase, 4.5},
        {"text on window", QPalette::WindowText, QPalette::Window, 4.5},
        {"button", QPalette::ButtonText, QPalette::Button, 4.5},
        {"selected", QPalette::HighlightedText, QPalette::Highlight, 4.5},
        {"placeholder", QPalette::PlaceholderText, QPalette::Base, 4.5},
        {"link", QPalette::Link, QPalette::Window, 4.5},
        {"link on base", QPalette::Link, QPalette::Base, 4.5},
        {"tool tip", QPalette::ToolTipText, QPalette::ToolTipBase, 4.5},
        {"edge on base", QPalette::Mid, QPalette::Base, 3.0},
        {"edge on window", QPalette::Mid, QPalette::Window, 3.0},
        {"focus on window", QPalette::Highlight, QPalette::Window, 3.0},
    };
    for (const NamedShade &one : everyShade) {
        for (const auto &[name, ink, paper, least] : pairs)
            QTest::addRow("%s, %s", name, one.name) << one.shade << int(ink) << int(paper) << (least == 4.5 ? one.leastOfText : least);
    }
}

void TstTheme::textCanBeRead()
{
    QFETCH(Shade, shade);
    QFETCH(int, ink);
    QFETCH(int, paper);
    QFETCH(double, least);
    const QPalette palette = desktop::paletteFor(shade);
    const double ratio = desktop::contrast(palette.color(QPalette::ColorRole(ink)), palette.color(QPalette::ColorRole(paper)));
    QVERIFY2(ratio >= least, qPrintable(QString::number(ratio)));
}

void TstTheme::stagesCanBeRead()
{
    QFETCH(Shade, shade);
    const QPalette palette = desktop::paletteFor(shade);
    QList<QColor> inks{desktop::alarmColour(shade), desktop::cautionColour(shade), desktop::quietColour(shade)};
    for (const core::Stage stage : {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected})
        inks << desktop::stageColour(stage, shade);
    for (const QColor &ink : inks) {
        for (const auto role : {QPalette::Base, QPalette::AlternateBase, QPalette::Window}) {
            const double ratio = desktop::contrast(ink, palette.color(role));
            QVERIFY2(ratio >= named(shade).leastOfText, qPrintable(ink.name() + QStringLiteral(" on ") + palette.color(role).name() + QStringLiteral(": ") + QString::number(ratio)));
        }
    }
}

/// A style sheet makes placeholders half transparent where it colours a field's text.
void TstTheme::placeholdersCanBeRead()
{
    QFETCH(Shade, shade);
    desktop::applyAppearance(*qApp, named(shade).appearance);
    QLineEdit line;
    QPlainTextEdit text;
    for (QWidget *field : std::initializer_list<QWidget *>{&line, &text}) {
        field->ensurePolished();
        const QColor ink = field->palette().color(QPalette::PlaceholderText);
        QCOMPARE(ink.alpha(), 255);
        QVERIFY(desktop::contrast(ink, field->palette().color(QPalette::Base)) >= 4.5);
        QVERIFY(desktop::contrast(field->palette().color(QPalette::Text), field->palette().color(QPalette::Base)) >= 4.5);
    }
}

void TstTheme::shadeIsTold()
{
    QFETCH(Shade, shade);
    QVERIFY(desktop::shadeOf(desktop::paletteFor(shade)) == shade);
    QCOMPARE(desktop::isDark(shade), shade == Shade::Dark || shade == Shade::StarkDark);
    desktop::applyAppearance(*qApp, named(shade).appearance);
    QVERIFY(desktop::shadeOf(qApp->palette()) == shade);
}

QTEST_MAIN(TstTheme)
#include "tst_theme.moc"
