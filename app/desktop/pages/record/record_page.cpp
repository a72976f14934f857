// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/record_page.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/pages/record/audit_buttons.hpp"
#include "app/desktop/pages/record/timeline_bar.hpp"
#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/acts/act.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

RecordPage::RecordPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_bar = new TimelineBar(this);
    m_verdict = makeLabel({}, "heading", this);
    m_verdict->setObjectName(u"verdict"_s);
    m_verdict->hide();
    m_rows = new RowTable({{tr("No."), 7}, {tr("When"), 31}, {tr("Who"), 20}, {tr("What"), 0}, {tr("Standing"), 22}}, tr("Entries"), tr("No entry fits."), this);
    m_rows->setObjectName(u"entries"_s);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"entry.struck"_L1, "time.doubted"_L1, "job.revised"_L1, "job.closed"_L1}, this);
    auto *head = new QHBoxLayout;
    head->addWidget(makeLabel(tr("Record"), "title", this), 1);
    auto *audit = new AuditButtons(tools, this);
    head->addWidget(audit);
    column->addLayout(head);
    column->addWidget(makeButtons());
    column->addWidget(m_verdict);
    column->addWidget(m_bar);
    column->addWidget(m_rows, 1);
    column->addWidget(m_actions);
    setFocusProxy(&m_rows->view());
    connect(audit, &AuditButtons::entryWanted, this, &RecordPage::chooseRow);
    connect(m_bar, &TimelineBar::changed, this, &RecordPage::refresh);
    connect(m_rows, &RowTable::chosenChanged, this, &RecordPage::showActions);
    connect(&feed(), &JobFeed::changed, this, &RecordPage::takeFeed);
    connect(&feed(), &JobFeed::jobChanged, this, [this] {
        m_verdict->hide();
        m_worked = 0;
        takeFeed();
    });
    takeFeed();
}

/// The job is folded again to know what each disturbance voided: once for each entry that came, and not at each key of the filter.
void RecordPage::takeFeed()
{
    if (m_worked != feed().said().size()) {
        m_worked = feed().said().size();
        m_voided = core::voidedByDisturbing(feed().said());
    }
    if (feed().state())
        m_bar->offer(*feed().state(), feed().reg());
    refresh();
}

void RecordPage::chooseRow(const QString &key)
{
    m_bar->clear(); // what is filtered away cannot be chosen
    m_rows->choose(key);
}

QWidget *RecordPage::makeButtons()
{
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString &text, const char *name, void (Page::*wanted)()) {
        QPushButton *button = makeButton(text, "", row);
        button->setObjectName(QString::fromLatin1(name));
        button->setMinimumHeight(touchHeight(fontMetrics()));
        layout->addWidget(button);
        connect(button, &QPushButton::clicked, this, wanted);
    };
    add(tr("&Verify"), "verify", &Page::verifyWanted);
    add(tr("Export &the record package …"), "exportPackage", &Page::exportPackageWanted);
    add(tr("Export PDF a&nd CSV …"), "exportRecord", &Page::exportRecordWanted);
    add(tr("E&xport the list …"), "exportList", &Page::exportListWanted);
    add(tr("&Back up the store …"), "backUp", &Page::backupWanted);
    layout->addStretch();
    return row;
}

void RecordPage::showVerdict(const QString &sentence, bool isGood)
{
    m_verdict->setText(isGood ? tr("✓ %1").arg(sentence) : tr("✗ %1").arg(sentence));
    colourAs(m_verdict, isGood ? "good" : "bad");
    m_verdict->setVisible(!sentence.isEmpty());
}

void RecordPage::refresh()
{
    std::vector<Row> rows;
    const auto &job = feed().state();
    const core::TimelineFilter filter = m_bar->filter();
    for (std::size_t i = feed().said().size(); job && i-- > 0;) { // the newest first
        const core::Statement &said = feed().said()[i];
        const core::Act *act = core::findAct(said.kind);
        const core::Line &line = job->lines[i];
        const QString subject = subjectInWords(act ? act->subject : core::SubjectSort::Nothing, said.subject, *job);
        const QString done = act ? doneOf(*act) : said.kind;
        const QString body = act ? bodyInWords(*act, said.body, feed().reg()) : QString();
        QString what = (subject.isEmpty() ? done : tr("%1: %2").arg(subject, done)) + (body.isEmpty() ? QString() : u'\n' + body);
        if (const auto at = m_voided.find(said.seq); at != m_voided.end()) {
            for (const core::Voided &one : at->second)
                what += u'\n' + one.sentence;
        }
        const QString standing = line.standing == core::Standing::Stands   ? QString()
                                 : line.standing == core::Standing::Struck ? tr("struck by no. %1").arg(line.struckBy.value_or(0))
                                                                           : tr("fell with what it rested on");
        const QStringList cells{QString::number(said.seq), momentInWords(*feed().state(), said.seq, said.at), feed().reg().nameOf(said.author), what, standing};
        if (core::fits(filter, *job, said, cells.join(u'\n')))
            rows.push_back({QString::number(said.seq), cells, line.standing != core::Standing::Stands, false});
    }
    m_rows->take(rows);
    m_bar->showCount(rows.size(), feed().said().size());
    showActions();
}

void RecordPage::showActions()
{
    m_actions->showSubject(m_rows->chosen());
}

} // namespace desktop
