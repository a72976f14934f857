// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/first_run/welcome_page.hpp"

#include <QFileInfo>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

WelcomePage::WelcomePage(QWidget *parent) : QWidget(parent)
{
    auto *outer = new QHBoxLayout(this);
    outer->addStretch();
    auto *inner = new QWidget(this);
    const int width = fontMetrics().averageCharWidth();
    inner->setFixedWidth(width * 104);
    outer->addWidget(inner);
    outer->addStretch();
    auto *column = new QVBoxLayout(inner);
    column->setSpacing(fontMetrics().height());
    column->addStretch(1);
    column->addWidget(makeLabel(tr("Remate"), "title", inner));
    column->addWidget(makeLabel(tr("Keeps every loose end of a unit change: what was disconnected, who did it, who put it back, what was measured, and who inspected it. A job cannot be closed while anything is loose."), "", inner));

    auto *way = new QHBoxLayout;
    way->setSpacing(width * 2);
    for (const core::Stage stage : {core::Stage::Connected, core::Stage::Disconnected, core::Stage::Reconnected, core::Stage::Secured, core::Stage::Inspected}) {
        auto *mark = new StageMark(inner);
        mark->setStage(stage);
        way->addWidget(mark);
    }
    way->addStretch();
    column->addLayout(way);

    auto *grid = new QGridLayout;
    grid->setHorizontalSpacing(width * 2);
    grid->setVerticalSpacing(fontMetrics().height() / 2);
    grid->setColumnStretch(1, 1);
    const auto add = [&](int row, const QString &text, const char *role, const char *name, const QString &words, void (WelcomePage::*wanted)()) {
        QPushButton *button = makeButton(text, role, inner);
        button->setObjectName(QString::fromLatin1(name));
        button->setMinimumHeight(touchHeight(fontMetrics()));
        button->setMinimumWidth(width * 26);
        grid->addWidget(button, row, 0);
        if (row == 0)
            setFocusProxy(button);
        grid->addWidget(makeLabel(words, "quiet", inner), row, 1);
        connect(button, &QPushButton::clicked, this, wanted);
    };
    add(0, tr("&New store …"), "main", "newStore", tr("One file holds the people, the tools and all jobs of an organisation. You become its first administrator."), &WelcomePage::newStoreWanted);
    add(1, tr("&Open a store …"), "", "openStore", tr("Or drop its file onto this window."), &WelcomePage::openStoreWanted);
    add(2, tr("Tr&y the demo …"), "", "demo", tr("An engine change in the middle of its second shift, with invented people whose PINs are shown."), &WelcomePage::demoWanted);
    add(3, tr("&Verify a record package …"), "", "verifyPackage", tr("For an auditor: whether a record that came from elsewhere is as it was signed. Needs no store."), &WelcomePage::packageWanted);
    column->addLayout(grid);
    m_recent = new QVBoxLayout;
    m_recent->setSpacing(0);
    column->addLayout(m_recent);
    column->addStretch(2);
}

void WelcomePage::show(const QStringList &recentStores)
{
    clearLayout(m_recent);
    if (recentStores.isEmpty())
        return;
    m_recent->addWidget(makeLabel(tr("Recent stores"), "heading", this));
    for (const QString &path : recentStores) {
        QPushButton *button = makeButton(tr("%1   %2").arg(QFileInfo(path).completeBaseName(), path), "link", this);
        m_recent->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, path] { emit recentChosen(path); });
    }
}

} // namespace desktop
