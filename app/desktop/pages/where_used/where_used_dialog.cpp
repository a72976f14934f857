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

#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/record/safe_file.hpp"
#include "core/list/csv.hpp"
#include "core/reports/timeline.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// More than anybody reads on a screen; the file has all.
constexpr std::size_t mostShown = 1000;

QString sortInWords(QLatin1String sort)
{
    if (sort == "person"_L1)
        return WhereUsedDialog::tr("Person");
    if (sort == "tool"_L1)
        return WhereUsedDialog::tr("Tool");
    if (sort == "part"_L1)
        return WhereUsedDialog::tr("Part number");
    if (sort == "batch"_L1)
        return WhereUsedDialog::tr("Batch");
    return sort == "serial"_L1 ? WhereUsedDialog::tr("Serial number") : WhereUsedDialog::tr("Certificate");
}

/// As people are known here: a name finds its id.
QString valueFor(const QString &sort, const QString &typed, const core::Register &reg)
{
    if (sort != u"person")
        return typed;
    const auto at = std::find_if(reg.people.begin(), reg.people.end(), [&](const auto &one) { return one.second.name.compare(typed, Qt::CaseInsensitive) == 0; });
    return at == reg.people.end() ? typed : at->first.text();
}

} // namespace

WhereUsedDialog::WhereUsedDialog(session::Session &session, Ask &ask, QWidget *parent) : QDialog(parent), m_session(session), m_ask(ask)
{
    setWindowTitle(tr("Where used"));
    setAttribute(Qt::WA_DeleteOnClose);
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Where used"), "title", this));
    column->addWidget(makeLabel(tr("Every entry of every job of this store, open or closed, that names it."), "quiet", this));

    auto *asked = new QHBoxLayout;
    m_sort = new QComboBox(this);
    m_sort->setObjectName(u"sort"_s);
    m_sort->setAccessibleName(tr("What is looked for"));
    for (const QLatin1String sort : session::wantedSorts())
        m_sort->addItem(sortInWords(sort), QString(sort));
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

    m_count = makeLabel({}, "heading", this);
    m_count->setObjectName(u"count"_s);
    column->addWidget(m_count);
    m_rows = new RowTable({{tr("Job"), 16}, {tr("No."), 7}, {tr("When"), 26}, {tr("Who"), 20}, {tr("What"), 0}}, tr("Uses"), tr("What is found comes here, the earliest first."), this);
    m_rows->setObjectName(u"uses"_s);
    column->addWidget(m_rows, 1);

    auto *buttons = new QHBoxLayout;
    m_lead = makeButton(tr("&Go to the entry"), "", this);
    m_lead->setObjectName(u"lead"_s);
    m_write = makeButton(tr("&Export as CSV …"), "", this);
    m_write->setObjectName(u"write"_s);
    QPushButton *close = makeButton(tr("&Close"), "", this);
    for (QPushButton *button : {m_lead, m_write, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(m_lead);
    buttons->addWidget(m_write);
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);

    connect(find, &QPushButton::clicked, this, &WhereUsedDialog::find);
    connect(m_value, &QLineEdit::returnPressed, this, &WhereUsedDialog::find);
    connect(m_rows, &RowTable::chosenChanged, this, &WhereUsedDialog::offer);
    connect(m_rows, &RowTable::opened, this, &WhereUsedDialog::lead);
    connect(m_lead, &QPushButton::clicked, this, [this] { lead(m_rows->chosen()); });
    connect(m_write, &QPushButton::clicked, this, &WhereUsedDialog::write);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(std::max(parent->window()->width() * 9 / 10, fontMetrics().averageCharWidth() * 110), gap * 40);
    m_value->setFocus(Qt::OtherFocusReason);
    offer();
}

void WhereUsedDialog::find()
{
    const QString sort = m_sort->currentData().toString();
    const QString typed = m_value->text().trimmed();
    m_uses.clear();
    if (!typed.isEmpty()) {
        auto uses = session::whereUsed(m_session, {sort, valueFor(sort, typed, m_session.reg())});
        if (!uses) {
            m_ask.tell(tr("The store was not looked through"), core::errorInWords(uses.error()));
            return;
        }
        m_uses = *std::move(uses);
    }
    std::vector<Row> rows;
    for (const session::UseOf &use : m_uses) {
        if (rows.size() == mostShown)
            break;
        const std::vector<QString> cells = cellsOf(use);
        rows.push_back({use.said.ledger.text() + u'\n' + QString::number(use.said.seq), QStringList(cells.begin(), cells.end())});
    }
    m_rows->take(rows);
    m_count->setText(typed.isEmpty()              ? tr("Type what is looked for.")
                     : m_uses.empty()             ? tr("Nothing names it.")
                     : m_uses.size() > mostShown ? tr("%1 entries; the first %2 are shown, the export has all.").arg(m_uses.size()).arg(mostShown)
                                                  : tr("%n entries", nullptr, static_cast<int>(m_uses.size())));
    offer();
}

std::vector<QString> WhereUsedDialog::cellsOf(const session::UseOf &use) const
{
    return {use.workOrder.value_or(tr("register")), QString::number(use.said.seq), momentInWords(use.said.at), m_session.reg().nameOf(use.said.author), core::describe(use.said, m_session.reg())};
}

void WhereUsedDialog::offer()
{
    const auto ledger = core::LedgerId::parse(m_rows->chosen().section(u'\n', 0, 0));
    const bool isOfRegister = ledger && ledger == m_session.reg().ledger;
    m_lead->setEnabled(ledger && !isOfRegister);
    m_lead->setToolTip(!ledger ? tr("Choose a row first.") : isOfRegister ? tr("Entries of the register stand under People and tools.") : QString());
    m_write->setEnabled(!m_uses.empty());
    m_write->setToolTip(m_uses.empty() ? tr("Find something first.") : QString());
}

void WhereUsedDialog::lead(const QString &key)
{
    const auto ledger = core::LedgerId::parse(key.section(u'\n', 0, 0));
    if (!ledger || ledger == m_session.reg().ledger)
        return;
    emit entryWanted(*ledger, key.section(u'\n', 1).toLongLong());
    accept();
}

void WhereUsedDialog::write()
{
    const auto path = m_ask.fileToSave(tr("Export where it was used"), tr("where-used.csv"), tr("CSV (*.csv)"));
    if (!path)
        return;
    std::vector<std::vector<QString>> records{{u"work_order"_s, u"seq"_s, u"at"_s, u"by"_s, u"kind"_s, u"subject"_s, u"what"_s}};
    for (const session::UseOf &use : m_uses) {
        std::vector<QString> record{use.workOrder.value_or(QString()), QString::number(use.said.seq), use.said.at.text(), m_session.reg().nameOf(use.said.author), use.said.kind, use.said.subject.value_or(QString()),
                                    core::describe(use.said, m_session.reg())};
        std::transform(record.begin(), record.end(), record.begin(), &core::csv::guarded);
        records.push_back(std::move(record));
    }
    const QByteArray bytes = core::csv::write(records);
    const auto done = record::writeSafely(*path, [&](QIODevice &file) -> core::Result<void> {
        if (file.write(bytes) != bytes.size())
            return core::failure(core::ErrorCode::Io, file.errorString());
        return {};
    });
    if (done)
        m_ask.tell(tr("The list was exported"), *path);
    else
        m_ask.tell(tr("The list was not exported"), core::errorInWords(done.error()));
}

} // namespace desktop
