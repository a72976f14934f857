// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/where_used/where_used_dialog.hpp"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/audit_export.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/acts/act.hpp"
#include "core/reports/timeline.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// More than anybody reads on a screen; the file has all.
constexpr std::size_t mostShown = 1000;

/// Nothing for a field that was left empty.
std::optional<QString> typedIn(const QLineEdit &field)
{
    const QString typed = field.text().trimmed();
    return typed.isEmpty() ? std::nullopt : std::optional(typed);
}

} // namespace

WhereUsedDialog::WhereUsedDialog(session::Session &session, Ask &ask, QWidget *parent) : QDialog(parent), m_session(session), m_ask(ask)
{
    setWindowTitle(tr("Where used"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("auditing"), QLatin1String("where-something-was-used"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Where used"), "title", this));
    column->addWidget(makeLabel(tr("Every entry of every job of this store, open or closed, that names it."), "quiet", this));

    auto *asked = new QHBoxLayout;
    m_sort = new QComboBox(this);
    m_sort->setObjectName(u"sort"_s);
    tellName(*m_sort, tr("What is looked for"));
    for (const QLatin1String sort : session::wantedSorts())
        m_sort->addItem(session::sortInWords(QString(sort)), QString(sort));
    m_value = new QLineEdit(this);
    m_value->setObjectName(u"value"_s);
    m_value->setAccessibleName(tr("Its id, name or number"));
    m_value->setPlaceholderText(tr("Its id, name or number, whole as it was entered"));
    QPushButton *find = makeButton(tr("&Find"), "main", this);
    find->setObjectName(u"find"_s);
    find->setMinimumHeight(touchHeight(fontMetrics()));
    asked->addWidget(m_sort);
    asked->addWidget(m_value, 1);
    asked->addWidget(find);
    column->addLayout(asked);
    column->addLayout(makeNarrowing());

    m_count = makeLabel({}, "heading", this);
    m_count->hide(); // until something was looked for: a screen reader would come to a text that says nothing
    m_count->setObjectName(u"count"_s);
    column->addWidget(m_count);
    m_nothing = makeLabel({}, "caution", this);
    m_nothing->setObjectName(u"nothing"_s);
    m_nothing->hide();
    column->addWidget(m_nothing);
    m_jobs = new RowTable({{tr("Job"), 18}, {tr("Aircraft"), 0}, {tr("State"), 12}, {tr("Entries"), 12}}, tr("Jobs that name it"), tr("What is found comes here, job by job."), this);
    m_jobs->setObjectName(u"jobs"_s);
    m_jobs->setFixedHeight(gap * 9);
    column->addWidget(m_jobs);
    m_rows = new RowTable({{tr("Job"), 16}, {tr("No."), 7}, {tr("When"), 31}, {tr("Who"), 24}, {tr("What"), 0}, {tr("Standing"), 18}}, tr("Uses"), tr("The entries come here, the earliest first."), this);
    m_rows->setObjectName(u"uses"_s);
    column->addWidget(m_rows, 1);

    auto *buttons = new QHBoxLayout;
    m_lead = makeButton(tr("&Go to the entry"), "", this);
    m_lead->setObjectName(u"lead"_s);
    m_all = makeButton(tr("&All jobs"), "", this);
    m_all->setObjectName(u"allJobs"_s);
    m_csv = makeButton(tr("&Export as CSV …"), "", this);
    m_csv->setObjectName(u"csv"_s);
    m_pdf = makeButton(tr("Export as &PDF …"), "", this);
    m_pdf->setObjectName(u"pdf"_s);
    QPushButton *close = makeButton(tr("&Close"), "", this);
    for (QPushButton *button : {m_lead, m_all, m_csv, m_pdf, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(m_lead);
    buttons->addWidget(m_all);
    buttons->addWidget(m_csv);
    buttons->addWidget(m_pdf);
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);

    connect(find, &QPushButton::clicked, this, &WhereUsedDialog::find);
    connect(m_value, &QLineEdit::returnPressed, this, &WhereUsedDialog::find);
    connect(m_rows, &RowTable::chosenChanged, this, &WhereUsedDialog::offer);
    connect(m_rows, &RowTable::opened, this, &WhereUsedDialog::lead);
    connect(m_lead, &QPushButton::clicked, this, [this] { lead(m_rows->chosen()); });
    connect(m_jobs, &RowTable::chosenChanged, this, &WhereUsedDialog::showUses);
    connect(m_all, &QPushButton::clicked, this, [this] { m_jobs->view().clearSelection(); });
    connect(m_csv, &QPushButton::clicked, this, [this] { exportAuditCsv([this] { return table(); }, tr("where-used"), m_ask); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { exportAuditPdf([this] { return table(); }, tr("where-used"), m_ask); });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(std::max(parent->window()->width() * 9 / 10, fontMetrics().averageCharWidth() * 110), gap * 40);
    m_value->setFocus(Qt::OtherFocusReason);
    offer();
}

/// Of which kind, and from which day to which: both narrow the answer, so both are on its paper.
QLayout *WhereUsedDialog::makeNarrowing()
{
    auto *row = new QHBoxLayout;
    m_kind = new QComboBox(this);
    m_kind->setObjectName(u"kind"_s);
    tellName(*m_kind, tr("Kind of entry"));
    m_kind->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_kind->setMinimumContentsLength(24);
    m_kind->addItem(tr("All kinds of entries"), QString());
    std::vector<std::pair<QString, QString>> kinds;
    for (const core::Act &act : core::acts())
        kinds.emplace_back(doneOf(act), act.kind);
    std::sort(kinds.begin(), kinds.end());
    for (const auto &[words, kind] : kinds)
        m_kind->addItem(words, kind);
    row->addWidget(m_kind, 2);
    const auto addDay = [&](const char *name, const QString &label) {
        auto *field = new QLineEdit(this);
        field->setObjectName(QString::fromLatin1(name));
        field->setPlaceholderText(tr("such as 2026-03-02"));
        auto *words = new QLabel(label, this);
        words->setBuddy(field);
        row->addWidget(words);
        row->addWidget(field, 1);
        connect(field, &QLineEdit::returnPressed, this, &WhereUsedDialog::find);
        return field;
    };
    m_from = addDay("from", tr("F&rom day"));
    m_until = addDay("until", tr("&Until day"));
    return row;
}

session::UsesQuestion WhereUsedDialog::question() const
{
    const QString kind = m_kind->currentData().toString();
    return {m_sort->currentData().toString(), m_value->text().trimmed(), kind.isEmpty() ? std::nullopt : std::optional(kind), typedIn(*m_from), typedIn(*m_until)};
}

void WhereUsedDialog::find()
{
    m_answer.reset();
    m_count->show();
    std::optional<core::Error> refused;
    if (auto answer = session::answerTo(m_session, question()))
        m_answer = *std::move(answer);
    else
        refused = answer.error();
    if (refused && refused->code != core::ErrorCode::BadInput)
        m_ask.tell(tr("The store was not looked through"), core::errorInWords(*refused));
    showJobs();
    showUses();
    m_nothing->setText(refused ? core::errorInWords(*refused) : m_answer->nothing ? m_answer->nothing->sentences : damageInWords());
    m_nothing->setVisible(!m_nothing->text().isEmpty());
    if (refused)
        m_count->setText(tr("Nothing was looked for."));
    else if (m_answer->nothing)
        m_count->setText(tr("Nothing was found."));
}

/// What is found is not all where an entry could not be read.
QString WhereUsedDialog::damageInWords() const
{
    const QStringList &damaged = m_answer->looked.damaged;
    return damaged.isEmpty() ? QString() : tr("Damaged, so that something may not have been found: %1. Verify the store.").arg(damaged.join(u", "_s));
}

std::span<const session::UseOf> WhereUsedDialog::uses() const { return m_answer ? std::span<const session::UseOf>(m_answer->uses) : std::span<const session::UseOf>(); }

void WhereUsedDialog::showJobs()
{
    std::vector<Row> rows;
    for (const session::UsesInJob &job : session::byJob(uses())) {
        const QString state = !job.workOrder ? QString() : job.isClosed ? tr("closed") : tr("open");
        rows.push_back({job.ledger.text(), {job.workOrder.value_or(tr("register")), job.aircraft, state, QString::number(job.uses.size())}});
    }
    m_jobs->take({}); // whatever was chosen is of the question before
    m_jobs->take(rows);
    m_jobs->view().clearSelection();
}

void WhereUsedDialog::showUses()
{
    std::vector<Row> rows;
    std::size_t fitting = 0;
    const QString job = m_jobs->chosen();
    for (const session::UseOf &use : uses()) {
        if (!job.isEmpty() && use.said.ledger.text() != job)
            continue;
        if (++fitting > mostShown)
            continue;
        rows.push_back({use.said.ledger.text() + u'\n' + QString::number(use.said.seq),
                        {use.workOrder.value_or(tr("register")), QString::number(use.said.seq), use.moment, signedBy(use), core::describe(use.said, m_session.reg()),
                         session::standingWordOf(use, m_session.reg())},
                        use.line && use.line->standing != core::Standing::Stands, !use.doubt.isEmpty()});
    }
    m_rows->take(rows);
    m_count->setText(fitting > mostShown     ? tr("%1 of %2 entries; the first %3 are shown, the export has all.").arg(fitting).arg(uses().size()).arg(mostShown)
                     : job.isEmpty() ? tr("%n entries", nullptr, static_cast<int>(uses().size()))
                                     : tr("%1 of %2 entries").arg(fitting).arg(uses().size()));
    offer();
}

QString WhereUsedDialog::signedBy(const session::UseOf &use) const
{
    const QString name = m_session.reg().nameOf(use.said.author);
    return use.doubt.isEmpty() ? name : tr("%1 (signature in doubt: %2)").arg(name, use.doubt);
}

core::AuditTable WhereUsedDialog::table() const { return session::usesTable(m_session, *m_answer); }

void WhereUsedDialog::offer()
{
    const auto ledger = core::LedgerId::parse(m_rows->chosen().section(u'\n', 0, 0));
    const bool isOfRegister = ledger && ledger == m_session.reg().ledger;
    m_lead->setEnabled(ledger && !isOfRegister);
    m_lead->setToolTip(!ledger ? tr("Choose a row first.") : isOfRegister ? tr("Entries of the register stand under People and tools.") : QString());
    m_all->setEnabled(!m_jobs->chosen().isEmpty());
    m_all->setToolTip(m_all->isEnabled() ? QString() : tr("The entries of all jobs are shown."));
    for (QPushButton *button : {m_csv, m_pdf}) {
        button->setEnabled(m_answer.has_value());
        button->setToolTip(!m_answer ? tr("Look for something first.") : m_answer->nothing ? tr("That nothing was found, and what was looked through.") : tr("All entries of all jobs, with their hashes."));
    }
}

void WhereUsedDialog::lead(const QString &key)
{
    const auto ledger = core::LedgerId::parse(key.section(u'\n', 0, 0));
    if (!ledger || ledger == m_session.reg().ledger)
        return;
    emit entryWanted(*ledger, key.section(u'\n', 1).toLongLong());
    accept();
}

} // namespace desktop
