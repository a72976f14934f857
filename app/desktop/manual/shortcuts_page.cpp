// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/manual/shortcuts_page.hpp"

#include <QCoreApplication>
#include <QMenu>
#include <QMenuBar>

#include "app/desktop/actions.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

struct Shortcuts {
    Q_DECLARE_TR_FUNCTIONS(Shortcuts)
};

QString line(const QString &keys, const QString &what) { return u"| "_s + keys + u" | "_s + what + u" |\n"_s; }

QString head() { return line(Shortcuts::tr("Keys"), Shortcuts::tr("What they do")) + u"| --- | --- |\n"_s; }

/// A menu's words without the mark of their mnemonic.
QString wordsOf(QString text) { return text.remove(u'&'); }

QString linesOf(const QMenu &menu)
{
    QString lines;
    for (const QAction *action : menu.actions()) {
        if (action->menu())
            lines += linesOf(*action->menu());
        else if (!action->shortcut().isEmpty())
            lines += line(action->shortcut().toString(QKeySequence::NativeText), wordsOf(action->text()));
    }
    return lines;
}

} // namespace

manual::Page shortcutsPage(const QMenuBar &menus)
{
    const QString title = Shortcuts::tr("Keys");
    QString text = u"# "_s + title + u"\n\n"_s + Shortcuts::tr("Everything can be done with the keyboard: Tab and the arrow keys lead on, Space and Enter choose, Esc leaves a window without signing. In every menu and on every button the underlined letter is its key, with Alt.") + u"\n\n"_s
        + Shortcuts::tr("F1 opens the page of this manual that tells of what is shown, in a sheet or dialog as well. The manual can be read while the sheet waits.") + u"\n\n## "_s
        + Shortcuts::tr("Anywhere") + u"\n\n"_s + head();
    for (const QAction *menu : menus.actions()) {
        if (menu->menu())
            text += linesOf(*menu->menu());
    }
    text += u"\n## "_s + Shortcuts::tr("With interfaces chosen in the list") + u"\n\n"_s + head();
    for (const ActionLine &action : actions()) {
        const core::Act *act = core::findAct(QString(action.kind));
        if (act && *action.shortcut != '\0')
            text += line(QString::fromLatin1(action.shortcut), verbOf(*act));
    }
    return {u"shortcuts"_s, title, text};
}

} // namespace desktop
