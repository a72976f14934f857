// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/timeline_bar.hpp"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>
#include <QSignalBlocker>

#include <algorithm>

#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

using Choice = std::pair<QString, QString>; ///< words, and what is meant

/// Fills a box anew without telling anybody, and keeps what was chosen where it is still there.
void fill(QComboBox &box, const QString &all, const std::vector<Choice> &choices)
{
    const QSignalBlocker quiet(box);
    const QString chosen = box.currentData().toString();
    box.clear();
    box.addItem(all, QString());
    for (const auto &[words, meant] : choices)
        box.addItem(words, meant);
    box.setCurrentIndex(std::max(0, box.findData(chosen)));
}

std::optional<QString> chosenIn(const QComboBox &box)
{
    const QString chosen = box.currentData().toString();
    return chosen.isEmpty() ? std::nullopt : std::optional(chosen);
}

} // namespace

TimelineBar::TimelineBar(QWidget *parent) : QWidget(parent)
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    m_words = new QLineEdit(this);
    m_words->setObjectName(u"words"_s);
    m_words->setPlaceholderText(tr("Filter: item, word … (Ctrl+F)"));
    m_words->setAccessibleName(tr("Filter the entries"));
    m_words->setClearButtonEnabled(true);
    m_words->setProperty(losesNothing, true);
    row->addWidget(m_words, 1);
    m_person = makeChoice("person", tr("Who signed or is named"));
    m_kind = makeChoice("kind", tr("Kind of entry"));
    m_zone = makeChoice("zone", tr("Zone"));
    for (QComboBox *box : {m_person, m_kind, m_zone})
        row->addWidget(box);
    m_struck = new QCheckBox(tr("&Struck only"), this);
    m_struck->setObjectName(u"struck"_s);
    m_struck->setToolTip(tr("What was struck, and what fell with it."));
    row->addWidget(m_struck);
    m_count = makeLabel({}, "heading", this);
    m_count->setObjectName(u"count"_s);
    m_count->setWordWrap(false);
    row->addWidget(m_count);
    m_clear = makeButton(tr("Show &all"), "", this);
    m_clear->setObjectName(u"clearFilter"_s);
    row->addWidget(m_clear);
    connect(m_words, &QLineEdit::textChanged, this, &TimelineBar::changed);
    connect(m_struck, &QCheckBox::toggled, this, &TimelineBar::changed);
    connect(m_clear, &QPushButton::clicked, this, &TimelineBar::clear);
    const auto *lead = new QShortcut(QKeySequence(u"Ctrl+F"_s), parent ? parent : this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    const auto *all = new QShortcut(QKeySequence(Qt::Key_Escape), parent ? parent : this, nullptr, nullptr, Qt::WidgetWithChildrenShortcut);
    connect(lead, &QShortcut::activated, this, [this] { m_words->setFocus(Qt::ShortcutFocusReason); });
    connect(all, &QShortcut::activated, this, &TimelineBar::clear);
}

QComboBox *TimelineBar::makeChoice(const char *name, const QString &accessible)
{
    auto *box = new QComboBox(this);
    box->setObjectName(QString::fromLatin1(name));
    tellName(*box, accessible);
    box->setToolTip(accessible);
    box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    box->setMinimumContentsLength(13);
    connect(box, &QComboBox::currentIndexChanged, this, &TimelineBar::changed);
    return box;
}

void TimelineBar::offer(const core::JobState &job, const core::Register &reg)
{
    core::TimelineChoices choices = core::timelineChoices(job);
    if (m_offered == choices)
        return;
    std::vector<Choice> people;
    for (const core::PersonId &person : choices.people)
        people.emplace_back(reg.nameOf(person), person.text());
    std::vector<Choice> kinds;
    for (const QString &kind : choices.kinds) {
        const core::Act *act = core::findAct(kind);
        kinds.emplace_back(act ? doneOf(*act) : kind, kind);
    }
    std::sort(people.begin(), people.end());
    std::sort(kinds.begin(), kinds.end());
    std::vector<Choice> zones;
    for (const QString &zone : choices.zones)
        zones.emplace_back(zone, zone);
    fill(*m_person, tr("All people"), people);
    fill(*m_kind, tr("All kinds"), kinds);
    fill(*m_zone, tr("All zones"), zones);
    m_offered = std::move(choices);
}

core::TimelineFilter TimelineBar::filter() const
{
    const auto person = chosenIn(*m_person);
    return {person ? core::PersonId::parse(*person) : std::nullopt, chosenIn(*m_kind), chosenIn(*m_zone), m_struck->isChecked() ? core::WhichStand::StruckOnly : core::WhichStand::All, m_words->text().trimmed()};
}

void TimelineBar::clear()
{
    if (filter() == core::TimelineFilter())
        return;
    {
        const QSignalBlocker quiet(this); // told once, below
        m_words->clear();
        m_struck->setChecked(false);
        for (QComboBox *box : {m_person, m_kind, m_zone})
            box->setCurrentIndex(0);
    }
    emit changed();
}

void TimelineBar::showCount(std::size_t fitting, std::size_t all)
{
    m_count->setText(tr("%1 of %2 entries").arg(fitting).arg(all));
    const bool isFiltered = filter() != core::TimelineFilter();
    m_clear->setEnabled(isFiltered);
    m_clear->setToolTip(isFiltered ? tr("Show every entry again (Escape).") : tr("Every entry is shown."));
}

} // namespace desktop
