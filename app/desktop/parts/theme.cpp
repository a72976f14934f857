// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/theme.hpp"

#include <QApplication>
#include <QFontMetrics>
#include <QStyle>
#include <QStyleFactory>
#include <QWidget>

#include <algorithm>
#include <array>
#include <cmath>

namespace desktop {

namespace {

struct Inks {
    const char *window, *base, *raised, *button, *text, *quiet, *edge, *accent, *onAccent, *faint, *alarm, *caution;
    std::array<const char *, 5> stages; ///< in the order of core::Stage
};

constexpr Inks lightInks{"#f2f0ea", "#ffffff", "#f8f6f1", "#e7e3d9", "#1a2024", "#565d60", "#80837f", "#0a5566",
                         "#ffffff", "#747977", "#a82a18", "#7a4c00", {"#565d60", "#a82a18", "#7a4c00", "#1d55a0", "#17663a"}};
constexpr Inks darkInks{"#14181a", "#1b2023", "#20262a", "#2b3338", "#e9ebe8", "#aab2b4", "#7b8588", "#7fcbd8",
                        "#0c1416", "#8a9295", "#ff8d75", "#f0bb52", {"#aab2b4", "#ff8d75", "#f0bb52", "#8fbaff", "#7fd49e"}};

constexpr Inks starkLightInks{"#ffffff", "#ffffff", "#f0f0f0", "#ffffff", "#000000", "#333333", "#000000", "#00309a",
                              "#ffffff", "#4d4d4d", "#8a0000", "#5c3a00", {"#333333", "#8a0000", "#5c3a00", "#00309a", "#004d1a"}};
constexpr Inks starkDarkInks{"#000000", "#000000", "#161616", "#000000", "#ffffff", "#d0d0d0", "#ffffff", "#7fe3ff",
                             "#000000", "#b0b0b0", "#ff9c8a", "#ffd257", {"#d0d0d0", "#ff9c8a", "#ffd257", "#a9c8ff", "#86f0ad"}};

const Inks &inksOf(Shade shade)
{
    switch (shade) {
    case Shade::Light: return lightInks;
    case Shade::Dark: return darkInks;
    case Shade::StarkLight: return starkLightInks;
    case Shade::StarkDark: return starkDarkInks;
    }
    return lightInks;
}

/// What the platform's palette says, or the person.
Shade shadeFor(Appearance appearance, const QPalette &platform)
{
    switch (appearance) {
    case Appearance::System: return shadeOf(platform);
    case Appearance::Light: return Shade::Light;
    case Appearance::Dark: return Shade::Dark;
    case Appearance::StarkLight: return Shade::StarkLight;
    case Appearance::StarkDark: return Shade::StarkDark;
    }
    return Shade::Light;
}

double luminance(const QColor &colour)
{
    const auto linear = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

} // namespace

double contrast(const QColor &a, const QColor &b)
{
    const double one = luminance(a);
    const double two = luminance(b);
    return (std::max(one, two) + 0.05) / (std::min(one, two) + 0.05);
}

bool isDark(Shade shade) { return shade == Shade::Dark || shade == Shade::StarkDark; }

Shade shadeOf(const QPalette &palette)
{
    constexpr double blackOnWhite = 20.9; // 21 but for rounding
    const QColor paper = palette.color(QPalette::Window);
    const QColor ink = palette.color(QPalette::WindowText);
    const bool isStark = contrast(paper, ink) >= blackOnWhite;
    if (luminance(paper) < luminance(ink))
        return isStark ? Shade::StarkDark : Shade::Dark;
    return isStark ? Shade::StarkLight : Shade::Light;
}

Shade shadeAround(const QWidget *widget) { return widget ? shadeOf(widget->window()->palette()) : Shade::Light; }

QPalette paletteFor(Shade shade)
{
    const Inks &ink = inksOf(shade);
    QPalette palette;
    const auto set = [&](QPalette::ColorRole role, const char *colour) { palette.setColor(QPalette::All, role, QColor(colour)); };
    set(QPalette::Window, ink.window);
    set(QPalette::WindowText, ink.text);
    set(QPalette::Base, ink.base);
    set(QPalette::AlternateBase, ink.raised);
    set(QPalette::Text, ink.text);
    set(QPalette::PlaceholderText, ink.quiet);
    set(QPalette::Button, ink.button);
    set(QPalette::ButtonText, ink.text);
    set(QPalette::BrightText, ink.onAccent);
    set(QPalette::ToolTipBase, ink.base);
    set(QPalette::ToolTipText, ink.text);
    set(QPalette::Highlight, ink.accent);
    set(QPalette::HighlightedText, ink.onAccent);
    set(QPalette::Link, ink.accent);
    set(QPalette::LinkVisited, ink.accent);
    set(QPalette::Light, ink.base);
    set(QPalette::Midlight, ink.raised);
    set(QPalette::Mid, ink.edge);
    set(QPalette::Dark, ink.edge);
    set(QPalette::Shadow, ink.text);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, QColor(ink.faint));
    return palette;
}

QColor stageColour(core::Stage stage, Shade shade) { return inksOf(shade).stages[static_cast<std::size_t>(stage)]; }
QColor alarmColour(Shade shade) { return inksOf(shade).alarm; }
QColor cautionColour(Shade shade) { return inksOf(shade).caution; }
QColor quietColour(Shade shade) { return inksOf(shade).quiet; }

int touchHeight(const QFontMetrics &metrics) { return std::max(44, metrics.height() * 2 + metrics.height() / 2); }

void applyAppearance(QApplication &app, Appearance appearance)
{
    app.setPalette(QPalette());
    const Shade shade = shadeFor(appearance, app.palette());
    if (!app.style() || app.style()->objectName() != QLatin1String("fusion"))
        app.setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    app.setPalette(paletteFor(shade));
    app.setStyleSheet(styleSheetFor(shade));
}

} // namespace desktop
