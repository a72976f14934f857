// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/progress_dialog.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/pages/record/progress_view.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

ProgressDialog::ProgressDialog(const PageTools &tools, QWidget *parent) : QDialog(parent)
{
    setWindowTitle(tr("Progress"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("progress"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Progress"), "title", this));
    QLabel *pace = makeLabel({}, "", this);
    pace->setObjectName(u"pace"_s);
    column->addWidget(pace);
    auto *asked = new QHBoxLayout;
    m_beside = new QComboBox(this);
    m_beside->setObjectName(u"beside"_s);
    tellName(*m_beside, tr("Zone or person beside the whole job"));
    m_beside->setMinimumHeight(touchHeight(fontMetrics()));
    m_beside->addItem(tr("nothing"));
    QLabel *label = makeLabel(tr("Beside the whole job"), "label", this);
    label->setWordWrap(false);
    asked->addWidget(label);
    asked->addWidget(m_beside, 1);
    column->addLayout(asked);
    m_view = new ProgressView(this);
    m_view->setObjectName(u"progress"_s);
    column->addWidget(m_view, 1);
    m_said = makeLabel({}, "quiet", this);
    m_said->setObjectName(u"said"_s);
    column->addWidget(m_said);
    auto *buttons = new QHBoxLayout;
    QPushButton *close = makeButton(tr("&Close"), "", this);
    close->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    const auto &state = tools.feed.state();
    if (const auto progress = state ? core::progressOf(*state, tools.feed.reg()) : std::nullopt) {
        pace->setText(state->closed ? tr("The job is closed.") : core::paceInWords(core::paceOf(*state)));
        m_view->show(*progress);
        m_whole = core::progressInWords(progress->total);
        for (const core::ProgressLine &line : progress->zones) {
            m_lines.push_back(line);
            m_beside->addItem(tr("Zone: %1").arg(line.name));
        }
        for (const core::ProgressLine &line : progress->persons) {
            m_lines.push_back(line);
            m_beside->addItem(tr("Undone by: %1").arg(line.name));
        }
    }
    connect(m_beside, &QComboBox::currentIndexChanged, this, &ProgressDialog::showBeside);
    showBeside(0);
    resize(std::max(parent->window()->width() * 8 / 10, fontMetrics().averageCharWidth() * 100), gap * 36);
    m_beside->setFocus(Qt::OtherFocusReason);
}

void ProgressDialog::showBeside(int index)
{
    const bool isNone = index < 1 || static_cast<std::size_t>(index) > m_lines.size();
    m_view->showBeside(isNone ? std::nullopt : std::optional(m_lines[static_cast<std::size_t>(index - 1)]));
    m_said->setText(isNone ? m_whole : m_whole + u'\n' + core::progressInWords(m_lines[static_cast<std::size_t>(index - 1)]));
}

} // namespace desktop
