// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/record/signings_dialog.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/audit_export.hpp"
#include "app/desktop/pages/record/signings_view.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/picture/signings_picture.hpp"
#include "core/reports/signings.hpp"
#include "core/reports/timeline.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

/// One mark as it stands in the picture.
QPixmap markPicture(const QWidget &on, core::SignedAs as, bool counts, bool inBurst)
{
    const int side = on.fontMetrics().height() * 3 / 2;
    const double ratio = on.devicePixelRatioF();
    QPixmap pixmap(QSize(side, side) * ratio);
    pixmap.setDevicePixelRatio(ratio);
    pixmap.fill(Qt::transparent);
    QPainter painter(&pixmap);
    painter.setRenderHint(QPainter::Antialiasing);
    const Shade shade = shadeAround(&on);
    const QPalette colours = on.window()->palette();
    picture::paintSigningMark(painter, {0, QPointF(side / 2.0, side * 0.45), as, counts, inBurst}, on.fontMetrics().height() * 0.7,
                              {colours.color(QPalette::WindowText), quietColour(shade), colours.color(QPalette::Window), cautionColour(shade)});
    return pixmap;
}

} // namespace

SigningsDialog::SigningsDialog(const PageTools &tools, QWidget *parent) : QDialog(parent), m_tools(tools)
{
    setWindowTitle(tr("Who signed what when"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("auditing"), QLatin1String("who-signed-what-when"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Who signed what when"), "title", this));
    m_view = new SigningsView(this);
    m_view->setObjectName(u"signings"_s);
    auto *scroll = new QScrollArea(this);
    scroll->setWidget(m_view);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    column->addWidget(scroll, 3);
    column->addWidget(makeLegend());
    m_said = makeLabel({}, "heading", this);
    m_said->setObjectName(u"said"_s);
    column->addWidget(m_said);
    m_rows = new RowTable({{tr("Name"), 0}, {tr("Shift"), 7}, {tr("Work"), 7}, {tr("Look"), 7}, {tr("Record"), 8}, {tr("Release"), 8}, {tr("Struck"), 8}, {tr("Many at once"), 13}, {tr("First"), 31}, {tr("Last"), 31}}, tr("The same as a table"), tr("Nobody signed anything."), this);
    m_rows->setObjectName(u"table"_s);
    column->addWidget(m_rows, 2);
    column->addWidget(makeButtons());
    if (const auto &job = tools.feed.state()) {
        m_view->show(core::signingsOf(*job, tools.feed.reg()));
        m_answer = [job, reg = tools.feed.reg()] { return core::signingsTable(*job, reg); };
    }
    std::vector<Row> rows;
    const core::AuditTable table = m_answer ? m_answer() : core::AuditTable{};
    for (const core::ReportRow &row : table.rows) {
        const QStringList cells(row.cells.begin() + 1, row.cells.end());
        rows.push_back({QString::number(rows.size()), cells, false, !cells.at(7).isEmpty()});
    }
    m_rows->take(rows);
    connect(m_view, &SigningsView::chosenChanged, this, &SigningsDialog::say);
    connect(m_view, &SigningsView::opened, this, [this](qint64 seq) {
        emit entryWanted(QString::number(seq));
        accept();
    });
    resize(std::max(parent->window()->width() * 9 / 10, fontMetrics().averageCharWidth() * 110), gap * 42);
    m_view->setFocus(Qt::OtherFocusReason);
    say();
}

QWidget *SigningsDialog::makeLegend()
{
    auto *legend = new QWidget(this);
    auto *row = new QHBoxLayout(legend);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](core::SignedAs as, bool counts, bool inBurst, const QString &text) {
        auto *mark = new QLabel(legend);
        mark->setPixmap(markPicture(*this, as, counts, inBurst));
        row->addWidget(mark);
        QLabel *words = makeLabel(text, "quiet", legend);
        words->setWordWrap(false);
        row->addWidget(words);
    };
    for (const core::SignedAs as : {core::SignedAs::Work, core::SignedAs::Look, core::SignedAs::Record, core::SignedAs::Release})
        add(as, true, false, core::signedAsWord(as));
    add(core::SignedAs::Work, false, false, tr("struck"));
    add(core::SignedAs::Work, true, true, tr("many in a short time"));
    row->addStretch();
    return legend;
}

QWidget *SigningsDialog::makeButtons()
{
    auto *bar = new QWidget(this);
    auto *buttons = new QHBoxLayout(bar);
    buttons->setContentsMargins(0, 0, 0, 0);
    m_lead = makeButton(tr("&Go to the entry"), "", bar);
    m_lead->setObjectName(u"lead"_s);
    QPushButton *csv = makeButton(tr("&Export as CSV …"), "", bar);
    csv->setObjectName(u"csv"_s);
    QPushButton *pdf = makeButton(tr("Export as &PDF …"), "", bar);
    pdf->setObjectName(u"pdf"_s);
    QPushButton *close = makeButton(tr("&Close"), "", bar);
    for (QPushButton *button : {m_lead, csv, pdf, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    buttons->addWidget(m_lead);
    buttons->addWidget(csv);
    buttons->addWidget(pdf);
    buttons->addStretch();
    buttons->addWidget(close);
    connect(m_lead, &QPushButton::clicked, this, [this] {
        emit entryWanted(QString::number(*m_view->chosen()));
        accept();
    });
    connect(csv, &QPushButton::clicked, this, [this] { exportAuditCsv(m_answer, tr("signed"), m_tools.ask); });
    connect(pdf, &QPushButton::clicked, this, [this] { exportAuditPdf(m_answer, tr("signed"), m_tools.ask); });
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return bar;
}

void SigningsDialog::say()
{
    const auto seq = m_view->chosen();
    const auto &job = m_tools.feed.state();
    m_lead->setEnabled(seq.has_value());
    m_lead->setToolTip(seq ? QString() : tr("Choose a mark first: click it, or use the arrow keys."));
    if (!seq || !job) {
        m_said->setText(tr("Choose a mark: click it, or use the arrow keys."));
        return;
    }
    const core::Statement &said = job->said[static_cast<std::size_t>(*seq - 1)];
    m_said->setText(tr("No. %1, %2, %3: %4").arg(QString::number(*seq), core::momentText(*job, *seq, said.at), m_tools.feed.reg().nameOf(said.author), core::describe(said, m_tools.feed.reg()).section(u". "_s, 0, 0)));
}

} // namespace desktop
