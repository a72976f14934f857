// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/compare_dialog.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/audit_export.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "core/reports/comparison.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

CompareDialog::CompareDialog(const PageTools &tools, QWidget *parent) : QDialog(parent), m_tools(tools)
{
    setWindowTitle(tr("Compare"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("auditing"), QLatin1String("what-came-between"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("What came between"), "title", this));
    column->addWidget(makeLabel(tr("The foot of a printed record names its last entry and the hash of it. Either says what to compare with."), "quiet", this));
    auto *asked = new QHBoxLayout;
    m_from = new QLineEdit(this);
    m_from->setObjectName(u"from"_s);
    tellName(*m_from, tr("The earlier entry"));
    m_from->setPlaceholderText(tr("Number or hash of the earlier entry"));
    m_to = new QLineEdit(this);
    m_to->setObjectName(u"to"_s);
    tellName(*m_to, tr("The later entry"));
    m_to->setPlaceholderText(tr("Number or hash of the later one; empty: the last"));
    m_compare = makeButton(tr("C&ompare"), "main", this);
    m_compare->setObjectName(u"doCompare"_s);
    asked->addWidget(makeLabel(tr("From"), "label", this));
    asked->addWidget(m_from, 1);
    asked->addWidget(makeLabel(tr("To"), "label", this));
    asked->addWidget(m_to, 1);
    asked->addWidget(m_compare);
    column->addLayout(asked);
    m_said = makeLabel({}, "heading", this);
    m_said->setObjectName(u"said"_s);
    m_refused = makeLabel({}, "refusal", this);
    m_refused->setObjectName(u"refused"_s);
    m_refused->hide();
    column->addWidget(m_said);
    column->addWidget(m_refused);
    m_rows = new RowTable({{tr("Part"), 22}, {tr("No."), 7}, {tr("About"), 12}, {tr("Before"), 20}, {tr("After"), 20}, {tr("What"), 0}}, tr("Differences"), tr("What came between comes here."), this);
    m_rows->setObjectName(u"differences"_s);
    column->addWidget(m_rows, 1);
    auto *buttons = new QHBoxLayout;
    m_csv = makeButton(tr("&Export as CSV …"), "", this);
    m_csv->setObjectName(u"csv"_s);
    m_pdf = makeButton(tr("Export as &PDF …"), "", this);
    m_pdf->setObjectName(u"pdf"_s);
    QPushButton *close = makeButton(tr("&Close"), "", this);
    for (QPushButton *button : {m_compare, m_csv, m_pdf, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(m_csv);
    buttons->addWidget(m_pdf);
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);
    connect(m_compare, &QPushButton::clicked, this, &CompareDialog::compare);
    connect(m_from, &QLineEdit::returnPressed, m_compare, &QPushButton::click);
    connect(m_to, &QLineEdit::returnPressed, m_compare, &QPushButton::click);
    connect(m_from, &QLineEdit::textChanged, this, &CompareDialog::offer);
    connect(m_csv, &QPushButton::clicked, this, [this] { exportAuditCsv(m_answer, tr("compared"), m_tools.ask); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { exportAuditPdf(m_answer, tr("compared"), m_tools.ask); });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(std::max(parent->window()->width() * 9 / 10, fontMetrics().averageCharWidth() * 110), gap * 40);
    m_from->setFocus(Qt::OtherFocusReason);
    offer();
}

void CompareDialog::say(const QString &sentence, const char *role)
{
    const bool isRefusal = QLatin1String(role) == "refusal"_L1;
    m_said->setText(isRefusal ? QString() : sentence);
    m_refused->setText(isRefusal ? sentence : QString());
    m_said->setVisible(!isRefusal);
    m_refused->setVisible(isRefusal);
}

void CompareDialog::compare()
{
    const auto &state = m_tools.feed.state();
    if (!state)
        return;
    const core::JobState &job = *state;
    const QString later = m_to->text().trimmed();
    const auto from = core::headMeant(job, m_from->text().trimmed());
    const auto to = core::headMeant(job, later.isEmpty() ? QString::number(job.said.size()) : later);
    m_answer = {};
    m_rows->take({});
    if (!from || !to) {
        say(core::errorInWords(from ? to.error() : from.error()), "refusal");
    } else if (from->seq > to->seq) {
        say(tr("Entry %1 is later than entry %2: name the earlier one first.").arg(from->seq).arg(to->seq), "refusal");
    } else {
        m_answer = [state, reg = m_tools.feed.reg(), from = *from, to = *to] { return core::comparisonTable(*state, reg, core::compareHeads(*state, reg, from, to)); };
        const core::AuditTable table = m_answer();
        std::vector<Row> rows;
        for (const core::ReportRow &row : table.rows)
            rows.push_back({QString::number(rows.size()), {row.group, row.cells[1], row.cells[2], row.cells[3], row.cells[4], row.cells[5]}});
        m_rows->take(rows);
        say(rows.empty() ? table.whenEmpty : tr("From entry %1 to entry %2: differences %3").arg(QString::number(from->seq), QString::number(to->seq), QString::number(rows.size())), "heading");
    }
    offer();
}

void CompareDialog::offer()
{
    const bool isAsked = !m_from->text().trimmed().isEmpty();
    m_compare->setEnabled(isAsked);
    m_compare->setToolTip(isAsked ? QString() : tr("Type the number or the hash of the earlier entry first."));
    for (QPushButton *button : {m_csv, m_pdf}) {
        button->setEnabled(m_answer != nullptr);
        button->setToolTip(!m_answer ? tr("Compare something first.") : tr("All differences, with the hashes of the entries."));
    }
}

} // namespace desktop
