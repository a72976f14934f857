// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/sample_dialog.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRandomGenerator>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/audit_export.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/reports/sample.hpp"
#include "core/reports/timeline.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

constexpr int usualCount = 5;

} // namespace

SampleDialog::SampleDialog(const PageTools &tools, QWidget *parent) : QDialog(parent), m_tools(tools)
{
    setWindowTitle(tr("Sample"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("auditing"), QLatin1String("a-sample-with-all-its-evidence"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Sample of the work"), "title", this));
    column->addWidget(makeLabel(tr("Interfaces drawn at random, with every entry about them. The same seed draws the same again; choose it without looking at the work."), "quiet", this));
    auto *asked = new QHBoxLayout;
    m_many = new QSpinBox(this);
    m_many->setObjectName(u"many"_s);
    m_many->setAccessibleName(tr("How many interfaces"));
    const int listed = tools.feed.state() ? static_cast<int>(tools.feed.state()->items.size()) : 0;
    m_many->setRange(1, std::max(1, listed));
    m_many->setValue(usualCount);
    m_many->setSuffix(tr(" of %1").arg(listed));
    m_seed = new QLineEdit(QString::number(QRandomGenerator::system()->generate64(), 16).rightJustified(16, u'0'), this);
    m_seed->setObjectName(u"seed"_s);
    m_seed->setAccessibleName(tr("Seed"));
    m_seed->setPlaceholderText(tr("Seed: any text in one line"));
    m_draw = makeButton(tr("&Draw"), "main", this);
    m_draw->setObjectName(u"draw"_s);
    asked->addWidget(makeLabel(tr("Interfaces"), "label", this));
    asked->addWidget(m_many);
    asked->addWidget(makeLabel(tr("Seed"), "label", this));
    asked->addWidget(m_seed, 1);
    asked->addWidget(m_draw);
    column->addLayout(asked);
    m_said = makeLabel({}, "heading", this);
    m_said->setObjectName(u"said"_s);
    column->addWidget(m_said);
    m_rows = new RowTable({{tr("Interface"), 24}, {tr("No."), 7}, {tr("When"), 24}, {tr("Who"), 18}, {tr("What"), 0}, {tr("Standing"), 18}}, tr("Evidence"), tr("What is drawn comes here, with every entry about it."), this);
    m_rows->setObjectName(u"evidence"_s);
    column->addWidget(m_rows, 1);
    auto *buttons = new QHBoxLayout;
    m_lead = makeButton(tr("&Go to the entry"), "", this);
    m_lead->setObjectName(u"lead"_s);
    m_csv = makeButton(tr("&Export as CSV …"), "", this);
    m_csv->setObjectName(u"csv"_s);
    m_pdf = makeButton(tr("Export as &PDF …"), "", this);
    m_pdf->setObjectName(u"pdf"_s);
    QPushButton *close = makeButton(tr("&Close"), "", this);
    for (QPushButton *button : {m_draw, m_lead, m_csv, m_pdf, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    for (QPushButton *button : {m_lead, m_csv, m_pdf})
        buttons->addWidget(button);
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);
    const auto lead = [this] {
        emit entryWanted(m_rows->chosen().section(u'\n', 1));
        accept();
    };
    connect(m_draw, &QPushButton::clicked, this, &SampleDialog::draw);
    connect(m_seed, &QLineEdit::returnPressed, m_draw, &QPushButton::click);
    connect(m_seed, &QLineEdit::textChanged, this, &SampleDialog::offer);
    connect(m_rows, &RowTable::chosenChanged, this, &SampleDialog::offer);
    connect(m_rows, &RowTable::opened, this, lead);
    connect(m_lead, &QPushButton::clicked, this, lead);
    connect(m_csv, &QPushButton::clicked, this, [this] { exportAuditCsv(m_answer, tr("sample"), m_tools.ask); });
    connect(m_pdf, &QPushButton::clicked, this, [this] { exportAuditPdf(m_answer, tr("sample"), m_tools.ask); });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    resize(std::max(parent->window()->width() * 9 / 10, fontMetrics().averageCharWidth() * 110), gap * 40);
    m_many->setFocus(Qt::OtherFocusReason);
    offer();
}

void SampleDialog::draw()
{
    const auto &state = m_tools.feed.state();
    if (!state)
        return;
    const core::JobState &job = *state;
    const core::Register &reg = m_tools.feed.reg();
    const core::Sample sample = core::sampleOf(job, m_many->value(), m_seed->text());
    m_answer = [state, reg, sample, &kinds = m_tools.kinds] { return core::sampleTable(*state, reg, kinds, sample); };
    std::vector<Row> rows;
    for (const core::Drawn &drawn : sample.drawn) {
        const core::InterfaceState &item = *job.item(drawn.id);
        for (const qint64 seq : drawn.entries) {
            const auto index = static_cast<std::size_t>(seq - 1);
            const core::Statement &said = job.said[index];
            const core::Line &line = job.lines[index];
            rows.push_back({drawn.id.text() + u'\n' + QString::number(seq),
                            {itemInWords(item), QString::number(seq), core::momentText(job, seq, said.at), reg.nameOf(said.author), core::describe(said, reg, m_tools.kinds.find(item.listed.kind)), core::standingWord(line)},
                            line.standing != core::Standing::Stands});
        }
    }
    m_rows->take(rows);
    m_said->setText(tr("%1 of %2 interfaces, drawn by the seed %3; entries: %4").arg(QString::number(sample.drawn.size()), QString::number(sample.among), sample.seed, QString::number(rows.size())));
    offer();
}

void SampleDialog::offer()
{
    const bool isSeed = core::isIdText(m_seed->text());
    m_draw->setEnabled(isSeed);
    m_draw->setToolTip(isSeed ? QString() : tr("A seed is 1 to 128 characters in one line, each to be seen, and no blank at either end."));
    m_lead->setEnabled(!m_rows->chosen().isEmpty());
    m_lead->setToolTip(m_lead->isEnabled() ? QString() : tr("Choose a row first."));
    for (QPushButton *button : {m_csv, m_pdf}) {
        button->setEnabled(m_answer != nullptr);
        button->setToolTip(!m_answer ? tr("Draw a sample first.") : tr("The sample with its seed and every hash."));
    }
}

} // namespace desktop
