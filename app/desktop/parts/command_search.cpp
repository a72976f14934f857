// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/command_search.hpp"

#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QMenuBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/parts/help_page.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

QString withoutMnemonic(QString text) { return text.remove(u'&'); }

/// The key stands behind a tab where the action has it only to tell.
QString wordsOf(const QAction &action) { return withoutMnemonic(action.text()).section(u'\t', 0, 0); }
QString keyOf(const QAction &action)
{
    const QString told = action.text().section(u'\t', 1, 1);
    return told.isEmpty() ? action.shortcut().toString(QKeySequence::NativeText) : told;
}

template <class Take>
void walk(QMenu &menu, const QString &path, const Take &take)
{
    emit menu.aboutToShow();
    for (QAction *action : menu.actions()) {
        if (action->menu())
            walk(*action->menu(), path + u" › "_s + wordsOf(*action), take);
        else if (!action->isSeparator() && action->isVisible())
            take(action, path);
    }
}

bool hasAll(const QString &text, const QStringList &words)
{
    return std::all_of(words.begin(), words.end(), [&](const QString &word) { return text.contains(word, Qt::CaseInsensitive); });
}

} // namespace

CommandSearch::CommandSearch(const QMenuBar &menus, QWidget *parent) : QDialog(parent)
{
    setWindowTitle(tr("Find a command"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("shortcuts"));
    const int gap = fontMetrics().averageCharWidth();
    resize(gap * 90, fontMetrics().height() * 26);
    m_words = new QLineEdit(this);
    m_words->setObjectName(u"words"_s);
    m_words->setPlaceholderText(tr("Some letters of what you want to do"));
    m_words->setAccessibleName(m_words->placeholderText());
    m_words->installEventFilter(this);
    m_found = new QListWidget(this);
    m_found->setObjectName(u"found"_s);
    m_found->setProperty("role", "contents");
    m_found->setAccessibleName(tr("Commands"));
    auto *column = new QVBoxLayout(this);
    column->addWidget(m_words);
    column->addWidget(m_found, 1);
    for (QAction *top : menus.actions()) {
        if (top->menu() && top->isEnabled())
            walk(*top->menu(), wordsOf(*top), [this](QAction *action, const QString &path) { m_commands.push_back({action, path + u" › "_s + wordsOf(*action)}); });
    }
    connect(m_words, &QLineEdit::textChanged, this, &CommandSearch::narrow);
    connect(m_words, &QLineEdit::returnPressed, this, &CommandSearch::carryOut);
    connect(m_found, &QListWidget::itemActivated, this, &CommandSearch::carryOut);
    narrow({});
}

void CommandSearch::narrow(const QString &words)
{
    m_found->clear();
    const QStringList each = words.split(u' ', Qt::SkipEmptyParts);
    for (std::size_t i = 0; i < m_commands.size(); ++i) {
        const auto &[action, path] = m_commands[i];
        if (!action || !hasAll(path, each))
            continue;
        const QString key = keyOf(*action);
        auto *item = new QListWidgetItem(action->icon(), key.isEmpty() ? path : tr("%1   (%2)").arg(path, key), m_found);
        item->setData(Qt::UserRole, static_cast<int>(i));
        if (action->isEnabled())
            continue;
        item->setFlags(Qt::NoItemFlags);
        const QString why = action->toolTip();
        item->setToolTip(why);
        item->setText(tr("%1: not now").arg(path));
    }
    for (int row = 0; row < m_found->count(); ++row) {
        if (m_found->item(row)->flags() != Qt::NoItemFlags) {
            m_found->setCurrentRow(row);
            return;
        }
    }
    if (m_found->count() == 0)
        (new QListWidgetItem(tr("No command has these letters."), m_found))->setFlags(Qt::NoItemFlags);
}

bool CommandSearch::eventFilter(QObject *watched, QEvent *event)
{
    // The arrows choose while one goes on typing.
    const auto *key = event->type() == QEvent::KeyPress ? static_cast<QKeyEvent *>(event) : nullptr;
    if (watched == m_words && key && (key->key() == Qt::Key_Down || key->key() == Qt::Key_Up)) {
        const int step = key->key() == Qt::Key_Down ? 1 : -1;
        for (int row = m_found->currentRow() + step; row >= 0 && row < m_found->count(); row += step) {
            if (m_found->item(row)->flags() != Qt::NoItemFlags) {
                m_found->setCurrentRow(row);
                break;
            }
        }
        return true;
    }
    return QDialog::eventFilter(watched, event);
}

void CommandSearch::carryOut()
{
    const QListWidgetItem *item = m_found->currentItem();
    if (!item || item->flags() == Qt::NoItemFlags)
        return;
    const QPointer<QAction> action = m_commands[static_cast<std::size_t>(item->data(Qt::UserRole).toInt())].action;
    accept();
    // Once this window is gone, so that what the command opens stands before the main one.
    QTimer::singleShot(0, parent(), [action] {
        if (action)
            action->trigger();
    });
}

} // namespace desktop
