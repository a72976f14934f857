// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/theme.hpp"

namespace desktop {

// Colours come from the palette or from the shade; lengths in em follow the font, so that 200 % and large fonts hold.
// Buttons come to 44 px at the usual size of font (WCAG 2.2, 2.5.5): gloves. Widgets choose their shape by the dynamic property "role".
QString styleSheetFor(Shade shade)
{
    static const QString rules = QStringLiteral(R"(
QToolTip { background: palette(base); color: palette(text); border: 1px solid palette(mid); padding: 0.4em; }
QPushButton, QToolButton[role="action"] { background: palette(button); color: palette(button-text);
    border: 1px solid palette(mid); border-radius: 0.25em; padding: 0.55em 1.1em; min-height: 1.95em; min-width: 1.2em; }
QPushButton:hover, QToolButton[role="action"]:hover { border-color: palette(text); }
QPushButton:pressed, QToolButton[role="action"]:pressed { background: palette(mid); }
QPushButton:focus, QToolButton:focus { border: 2px solid palette(highlight); padding: 0.5em 1.05em; }
QPushButton:disabled { background: transparent; color: @faint; border: 1px dashed @faint; }
QPushButton[role="main"] { background: palette(highlight); color: palette(highlighted-text); border: 1px solid palette(highlight);
    font-weight: 600; }
QPushButton[role="main"]:focus { border: 2px solid palette(text); }
QPushButton[role="main"]:disabled { background: transparent; color: @faint; border: 1px dashed @faint; }
QPushButton[role="link"] { background: transparent; border: 1px solid transparent; color: palette(link); text-align: left;
    padding: 0.3em 0.4em; min-height: 2.45em; min-width: 2.4em; }
QPushButton[role="link"]:hover { text-decoration: underline; }
QPushButton[role="link"]:focus { border: 2px solid palette(highlight); }
QPushButton[role="page"] { background: transparent; border: none; border-left: 0.3em solid transparent; border-radius: 0;
    text-align: left; padding: 0.65em 1em 0.65em 0.8em; min-height: 1.85em; }
QPushButton[role="page"]:hover { background: palette(button); }
QPushButton[role="page"]:checked { background: palette(base); border-left: 0.3em solid palette(highlight); font-weight: 600; }
QPushButton[role="page"]:focus { background: palette(button); border: 2px solid palette(highlight); border-left: 0.3em solid palette(highlight); }
QLineEdit, QComboBox, QSpinBox, QDateEdit, QPlainTextEdit { background: palette(base);
    border: 1px solid palette(mid); border-radius: 0.2em; padding: 0.4em 0.5em; min-height: 1.5em;
    selection-background-color: palette(highlight); selection-color: palette(highlighted-text); }
QLineEdit:focus, QComboBox:focus, QSpinBox:focus, QDateEdit:focus, QPlainTextEdit:focus { border: 2px solid palette(highlight); }
QLineEdit:disabled, QComboBox:disabled { color: @faint; background: palette(window); }
QComboBox::drop-down { border: none; width: 2em; }
QComboBox::down-arrow { image: url(:/desktop/look/open_list.svg); width: 1.2em; height: 1.2em; }
QTableView::item { padding: 0 0.5em; }
QListWidget::item { padding: 0.35em 0.4em; }
QListWidget[role="contents"]::item { padding: 0.95em 0.6em; }
QScrollBar:vertical { background: transparent; width: 1em; margin: 0; border: none; }
QScrollBar:horizontal { background: transparent; height: 1em; margin: 0; border: none; }
QFrame[role="rail"] QScrollBar:vertical { width: 0.6em; }
QFrame[role="rail"] QScrollBar::handle { margin: 0.15em; border-radius: 0.15em; }
QScrollBar::handle { background: palette(mid); border-radius: 0.3em; margin: 0.2em; }
QScrollBar::handle:vertical { min-height: 2.5em; } QScrollBar::handle:horizontal { min-width: 2.5em; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; border: none; background: none; }
QScrollBar::add-page, QScrollBar::sub-page { background: none; }
QComboBox QAbstractItemView { background: palette(base); border: 1px solid palette(mid); }
QComboBox QAbstractItemView::item { min-height: 2.2em; }
QTableView, QTreeView, QListWidget, QListView { background: palette(base); alternate-background-color: palette(alternate-base);
    border: 1px solid palette(mid); padding: 1px; gridline-color: transparent;
    selection-background-color: palette(highlight); selection-color: palette(highlighted-text); }
QTableView:focus, QTreeView:focus, QListWidget:focus, QListView:focus { border: 2px solid palette(highlight); padding: 0; }
QHeaderView { background: palette(base); }
QHeaderView::section { background: palette(base); color: @quiet; border: none; border-bottom: 1px solid palette(mid);
    padding: 0.5em 0.25em; font-weight: 600; }
QPushButton[role="count"] { font-size: 15pt; font-weight: 600; color: @good; background: palette(base); border: 2px solid @good;
    padding: 0.4em 0.9em; }
QPushButton[role="count"][isLoose="true"] { color: @alarm; border-color: @alarm; }
QPushButton[role="count"]:focus { border-width: 4px; padding: 0.3em 0.8em; }
QListView[role="cards"] { background: transparent; border: none; padding: 0; }
QListView[role="cards"]:focus { border: none; }
QFrame[role="top"] { background: palette(window); border: none; border-bottom: 1px solid palette(mid); }
QLabel[role="title"] { font-size: 20pt; font-weight: 600; }
QLabel[outcome="good"] { color: @good; }
QLabel[outcome="partly"] { color: @caution; }
QLabel[outcome="bad"] { color: @alarm; }
QLabel[role="heading"] { font-size: 13pt; font-weight: 600; }
QLabel[role="answer"] { font-size: 16pt; font-weight: 600; }
QLabel[role="answer"][isRefused="true"] { color: @alarm; }
QLabel[role="quiet"] { color: @quiet; }
QLabel[role="label"] { color: @quiet; }
QLabel[role="alarm"] { color: @alarm; }
QLabel[role="caution"] { color: palette(text); background: transparent; border: 1px solid @caution; border-left: 0.4em solid @caution;
    padding: 0.6em 0.8em; }
QLabel[role="refusal"] { color: @alarm; padding: 0 0 0 0.3em; }
QLabel[role="count"] { font-size: 26pt; font-weight: 600; }
QFrame[role="card"] { background: palette(base); border: 1px solid palette(mid); border-radius: 0.3em; }
QFrame[role="band"] { background: palette(base); border: none; border-bottom: 1px solid palette(mid); }
QFrame[role="rail"] { background: palette(window); border: none; border-right: 1px solid palette(mid); }
QScrollArea { border: none; background: transparent; }
QScrollArea > QWidget > QWidget { background: transparent; }
QSplitter::handle { background: palette(window); }
QMenuBar { background: palette(window); } QMenuBar::item { padding: 1.15em 0.8em; } QMenuBar::item:selected { background: palette(highlight); color: palette(highlighted-text); }
QMenu { background: palette(base); border: 1px solid palette(mid); } QMenu::item { padding: 0.5em 1.6em 0.5em 2.6em; } QMenu::icon { padding-left: 0.7em; }
QMenu::item:selected { background: palette(highlight); color: palette(highlighted-text); } QMenu::item:disabled { color: @faint; }
QMenu::separator { height: 1px; background: palette(mid); margin: 0.3em 0; }
QCheckBox { spacing: 0.6em; min-height: 1.8em; }
QCheckBox::indicator, QListWidget::indicator { width: 1.2em; height: 1.2em; border: 1px solid palette(mid); border-radius: 0.15em; background: palette(base); }
QCheckBox::indicator:checked, QListWidget::indicator:checked { background: palette(highlight); border-color: palette(highlight); image: url(:/desktop/look/check_@shade.svg); }
QCheckBox::indicator:focus { border: 2px solid palette(highlight); }
QProgressBar { border: 1px solid palette(mid); border-radius: 0.2em; text-align: center; min-height: 1.4em; background: palette(base); }
QProgressBar::chunk { background: palette(highlight); }
QStatusBar { background: palette(window); } QStatusBar::item { border: none; }
)");
    QString sheet = rules;
    sheet.replace(QStringLiteral("@shade"), isDark(shade) ? QStringLiteral("dark") : QStringLiteral("light"));
    sheet.replace(QStringLiteral("@faint"), paletteFor(shade).color(QPalette::Disabled, QPalette::Text).name());
    sheet.replace(QStringLiteral("@quiet"), quietColour(shade).name());
    sheet.replace(QStringLiteral("@good"), stageColour(core::Stage::Inspected, shade).name());
    sheet.replace(QStringLiteral("@alarm"), alarmColour(shade).name());
    sheet.replace(QStringLiteral("@caution"), cautionColour(shade).name());
    return sheet;
}

} // namespace desktop
