// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/mark_panel.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/parts/labels.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

constexpr int mostRows = 4; ///< in sight at once

bool isDraft(const MarkRow &row) { return row.signedBy.isEmpty(); }

/// A draft may have made way for a mark that was signed meanwhile: then it is known by its place.
qint64 numberNow(const MarkRow &before, const std::vector<MarkRow> &rows)
{
    const auto isThere = [&](const MarkRow &row) { return isDraft(row) && row.mark.across == before.mark.across && row.mark.down == before.mark.down; };
    const auto isStill = [&](const MarkRow &row) { return isThere(row) && row.mark.number == before.mark.number; };
    if (!isDraft(before) || std::any_of(rows.begin(), rows.end(), isStill))
        return before.mark.number;
    const auto at = std::find_if(rows.begin(), rows.end(), isThere);
    return at == rows.end() ? before.mark.number : at->mark.number;
}

QString wordsOf(const MarkRow &row)
{
    const QString number = QString::number(row.mark.number);
    const QString what = row.mark.what.isEmpty() ? MarkPanel::tr("(what is to be looked at?)") : row.mark.what;
    return isDraft(row) ? MarkPanel::tr("%1  %2 – not signed").arg(number, what) : MarkPanel::tr("%1  %2 – %3").arg(number, what, row.signedBy);
}

} // namespace

MarkPanel::MarkPanel(QWidget *parent) : QFrame(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    m_list = new QListWidget(this);
    m_list->setObjectName(u"marks"_s);
    m_list->setAccessibleName(tr("Marks on the photo"));
    m_list->setWordWrap(true);
    m_place = makeButton(tr("Pla&ce marks"), "", this);
    m_place->setObjectName(u"place"_s);
    m_place->setCheckable(true);
    m_place->setToolTip(tr("Tap the photo where to look, or move the cross with the arrow keys and press Return."));
    m_words = new QLineEdit(this);
    m_words->setObjectName(u"markWords"_s);
    m_words->setAccessibleName(tr("What to look at, for the chosen mark"));
    m_words->setPlaceholderText(tr("What to look at"));
    m_words->setProperty(losesNothing, true); // the page has them with its marks
    m_remove = makeButton(tr("Re&move the mark"), "", this);
    m_remove->setObjectName(u"removeMark"_s);
    m_sign = makeButton(tr("&Sign the marks …"), "main", this);
    m_sign->setObjectName(u"photo.marked"_s);
    m_reason = makeLabel({}, "quiet", this);
    m_reason->setObjectName(u"photo.marked.reason"_s);
    auto *line = new QHBoxLayout;
    line->addWidget(m_place);
    line->addWidget(m_words, 1);
    line->addWidget(m_remove);
    line->addWidget(m_sign);
    column->addWidget(m_list);
    column->addLayout(line);
    column->addWidget(m_reason);
    connect(m_place, &QPushButton::toggled, this, &MarkPanel::markingToggled);
    connect(m_list, &QListWidget::currentRowChanged, this, &MarkPanel::judge);
    connect(m_words, &QLineEdit::textEdited, this, [this](const QString &text) {
        if (const MarkRow *row = current(); row && isDraft(*row))
            emit worded(row->mark.number, text.trimmed());
    });
    connect(m_words, &QLineEdit::returnPressed, this, &MarkPanel::wordsDone);
    connect(m_remove, &QPushButton::clicked, this, [this] {
        if (const MarkRow *row = current())
            emit removeWanted(row->mark.number);
    });
    connect(m_sign, &QPushButton::clicked, this, &MarkPanel::signWanted);
}

const MarkRow *MarkPanel::current() const
{
    const int row = m_list->currentRow();
    return row < 0 || row >= static_cast<int>(m_rows.size()) ? nullptr : &m_rows[static_cast<std::size_t>(row)];
}

void MarkPanel::show(const QString &photo, const std::vector<MarkRow> &rows, const QString &whyNot)
{
    const auto before = current() ? std::optional(*current()) : std::nullopt;
    m_rows = rows;
    m_whyNot = whyNot;
    m_list->setAccessibleDescription(photo);
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        for (const MarkRow &row : rows)
            m_list->addItem(wordsOf(row));
    }
    // No higher than it has to be: the photos need the room.
    int height = m_list->frameWidth() * 2 + 4;
    for (int row = 0; row < m_list->count() && row < mostRows; ++row)
        height += m_list->sizeHintForRow(row);
    m_list->setFixedHeight(height);
    m_list->setVisible(!rows.empty());
    m_place->setEnabled(!photo.isEmpty());
    if (before)
        chooseNumber(numberNow(*before, rows));
    judge();
}

void MarkPanel::chooseNumber(qint64 number)
{
    const auto at = std::find_if(m_rows.begin(), m_rows.end(), [&](const MarkRow &row) { return row.mark.number == number; });
    if (at != m_rows.end())
        m_list->setCurrentRow(static_cast<int>(at - m_rows.begin()));
}

void MarkPanel::judge()
{
    const MarkRow *row = current();
    const bool isDraftChosen = row && isDraft(*row);
    m_words->setEnabled(isDraftChosen);
    m_remove->setEnabled(isDraftChosen);
    const QString words = row ? row->mark.what : QString();
    if (m_words->text().trimmed() != words)
        m_words->setText(words);
    const auto isBare = [](const MarkRow &one) { return isDraft(one) && one.mark.what.isEmpty(); };
    const bool hasDraft = std::any_of(m_rows.begin(), m_rows.end(), isDraft);
    const bool isWorded = std::none_of(m_rows.begin(), m_rows.end(), isBare);
    m_sign->setEnabled(hasDraft && isWorded && m_whyNot.isEmpty());
    m_reason->setText(!m_whyNot.isEmpty() ? m_whyNot : !isWorded ? tr("Say for each mark what is to be looked at.") : QString());
    m_reason->setVisible(!m_reason->text().isEmpty());
}

bool MarkPanel::isMarking() const { return m_place->isChecked(); }
void MarkPanel::stopMarking() { m_place->setChecked(false); }

void MarkPanel::askWords(qint64 number)
{
    chooseNumber(number);
    m_words->setFocus(Qt::OtherFocusReason);
}

} // namespace desktop
