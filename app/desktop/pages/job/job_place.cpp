// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/job/job_place.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QIcon>
#include <QKeySequence>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QStyle>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/import_dialog.hpp"
#include "app/desktop/flows/label_flow.hpp"
#include "app/desktop/flows/long_work.hpp"
#include "app/desktop/flows/record_flow.hpp"
#include "app/desktop/flows/sheet_export.hpp"
#include "app/desktop/flows/set_hold.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/desktop/parts/entry_words.hpp"
#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/seam.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/session/verify_store.hpp"
#include "core/job/last_own.hpp"
#include "core/reports/left_in_words.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

JobPlace::JobPlace(session::Session &session, JobFeed &feed, Signing &signing, const core::Kinds &kinds, Ask &ask, QWidget *parent)
    : QWidget(parent), m_session(session), m_feed(feed), m_signing(signing), m_kinds(kinds), m_ask(ask),
      m_tools{feed, signing, m_selection, ask, kinds, [&session](const core::Digest &digest) { return session.store().attachments().get(digest); }}
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(makeHead());
    auto *row = new QHBoxLayout;
    row->setSpacing(0);
    m_pages = new QStackedWidget(this);
    row->addWidget(makeRail());
    row->addWidget(m_pages, 1);
    column->addLayout(row, 1);

    m_built.resize(pages().size());
    connect(&feed, &JobFeed::changed, this, &JobPlace::refresh);
    connect(&feed, &JobFeed::jobChanged, this, [this] {
        m_selection.choose({});
        showPage(QString(pages().front().name));
        refresh();
    });
    showPage(QString(pages().front().name));
    refresh();
}

QWidget *JobPlace::makeHead()
{
    auto *head = new QFrame(this);
    head->setProperty("role", "band");
    auto *whole = new QVBoxLayout(head);
    auto *layout = new QHBoxLayout;
    const int gap = fontMetrics().height();
    whole->setContentsMargins(gap, gap / 2, gap, gap / 2);
    layout->setSpacing(gap);
    auto *words = new QVBoxLayout;
    m_title = makeLabel({}, "heading", head);
    m_facts = makeLabel({}, "quiet", head);
    m_facts->setObjectName(QStringLiteral("jobFacts"));
    m_seam = new Seam(head);
    words->addStretch(); // the two stand together beside the count, which is higher
    words->addWidget(m_title);
    words->addWidget(m_facts);
    words->addStretch();
    layout->addLayout(words, 1);
    m_loose = makeButton({}, "count", head);
    m_loose->setObjectName(QStringLiteral("looseCount"));
    m_loose->setMinimumHeight(touchHeight(fontMetrics()));
    layout->addWidget(m_loose);
    whole->addLayout(layout);
    whole->addWidget(m_seam);
    connect(m_loose, &QPushButton::clicked, this, [this] { showPage(QStringLiteral("loose-ends")); });
    connect(m_seam, &Seam::chosen, this, &JobPlace::showItem);
    return head;
}

QWidget *JobPlace::makeRail()
{
    auto *area = new QScrollArea(this); // a small screen is not as high as all the pages
    area->setProperty("role", "rail");
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *rail = new QWidget(area);
    auto *column = new QVBoxLayout(rail);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (const PageLine &line : pages()) {
        QPushButton *button = makeButton({}, "page", rail);
        button->setIcon(QIcon(QStringLiteral(":/icons/%1.svg").arg(line.icon)));
        button->setToolTip(tr("%1 (%2)").arg(QCoreApplication::translate("Page", line.says), QKeySequence(QString::fromLatin1(line.shortcut)).toString(QKeySequence::NativeText)));
        button->setCheckable(true);
        button->setAutoExclusive(true);
        button->setMinimumHeight(touchHeight(fontMetrics()));
        column->addWidget(button);
        m_rail.push_back(button);
        const QString name(line.name);
        connect(button, &QPushButton::clicked, this, [this, name] { showPage(name); });
        // Assistive tools do not click a button that stays down: they toggle it.
        connect(button, &QPushButton::toggled, this, [this, name](bool isDown) {
            if (isDown)
                showPage(name);
        });
    }
    column->addStretch();
    area->setWidget(rail);
    return m_railArea = area;
}

Page *JobPlace::pageAt(std::size_t line)
{
    if (m_built[line])
        return m_built[line];
    Page *page = pages()[line].make(m_tools, m_pages);
    page->setObjectName(QString(pages()[line].name));
    m_pages->addWidget(page);
    connect(page, &Page::pageWanted, this, &JobPlace::showPage);
    connect(page, &Page::importWanted, this, &JobPlace::askImport);
    connect(page, &Page::exportListWanted, this, &JobPlace::exportListAsked);
    connect(page, &Page::exportPackageWanted, this, &JobPlace::exportPackageAsked);
    connect(page, &Page::exportRecordWanted, this, &JobPlace::exportRecordAsked);
    connect(page, &Page::verifyWanted, this, &JobPlace::verify);
    connect(page, &Page::backupWanted, this, &JobPlace::backUpAsked);
    connect(page, &Page::holdWanted, this, [this] { m_signing.open(setHoldPlan(m_session, this)); });
    connect(page, &Page::sheetWanted, this, [this](const QString &kind, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject, const Given &given) {
        m_signing.beginGiven(kind, items, subject, given);
    });
    return m_built[line] = page;
}

void JobPlace::showPage(const QString &name, const QString &row)
{
    for (std::size_t i = 0; i < pages().size(); ++i) {
        if (pages()[i].name != name)
            continue;
        m_rail[i]->setChecked(true);
        m_railArea->ensureWidgetVisible(m_rail[i], 0, 0);
        m_pages->setCurrentWidget(pageAt(i));
        if (!row.isEmpty())
            m_built[i]->chooseRow(row);
        giveKeyboard(*m_pages->currentWidget()); // keys act at once, without a click
    }
}

QString JobPlace::shownPage() const { return m_pages->currentWidget()->objectName(); }

bool JobPlace::isAnythingUnsigned() const
{
    return std::any_of(m_built.begin(), m_built.end(), [](const Page *page) { return page && page->isAnythingUnsigned(); });
}

QString JobPlace::manualPage() const
{
    for (std::size_t i = 0; i < pages().size(); ++i) {
        if (m_built[i] && m_built[i] == m_pages->currentWidget())
            return QString(pages()[i].manual);
    }
    return {};
}

void JobPlace::showItem(const core::InterfaceId &item)
{
    m_selection.choose({item});
    showPage(QStringLiteral("list"));
}

void JobPlace::fillMenu(QMenu &menu)
{
    menu.clear();
    menu.setToolTipsVisible(true);
    if (!m_feed.state())
        return;
    for (const ActionLine &line : desktop::actions()) {
        if (!comesIntoQuestion(line, *m_feed.state(), m_selection.items(), false))
            continue;
        const QString key = QString::fromLatin1(line.shortcut);
        const QString text = actionText(line, m_kinds, *m_feed.state(), m_selection.items());
        // The key is handled by the lists alone, where no text is typed; here it is only told.
        QAction *action = menu.addAction(QIcon(iconPath(line)), key.isEmpty() ? text : text + u'\t' + key);
        const QString reason = refusalsInWords(m_signing.whyNot(line, m_selection.items()));
        action->setEnabled(reason.isEmpty());
        action->setToolTip(reason);
        connect(action, &QAction::triggered, this, [this, &line] { m_signing.begin(line, m_selection.items()); });
    }
}

void JobPlace::refresh()
{
    for (std::size_t i = 0; i < pages().size(); ++i) {
        const qsizetype waiting = pages()[i].waiting(m_tools);
        const QString title = QCoreApplication::translate("Page", pages()[i].title);
        m_rail[i]->setText(waiting > 0 ? tr("%1   %2").arg(title).arg(waiting) : title);
    }
    fitRail();
    const auto &job = m_feed.state();
    m_seam->show(job);
    if (!job)
        return;
    const core::JobFacts &facts = job->facts;
    m_title->setText(facts.title);
    m_facts->setText(tr("%1 · %2 · %3 · %4 rev. %5").arg(facts.workOrder, facts.aircraft, facts.unit, facts.maintenanceData, facts.revision));
    const int loose = static_cast<int>(m_feed.looseEnds().size());
    m_loose->setText(job->closed ? tr("Closed") : core::looseEndsInWords(loose));
    m_loose->setProperty("isLoose", loose > 0);
    m_loose->style()->unpolish(m_loose);
    m_loose->style()->polish(m_loose);
}

/// As wide as its widest line, which differs from language to language.
void JobPlace::fitRail()
{
    int widest = fontMetrics().averageCharWidth() * 27;
    for (const QPushButton *button : m_rail)
        widest = std::max(widest, button->sizeHint().width() + m_railArea->verticalScrollBar()->sizeHint().width() + 2 * fontMetrics().averageCharWidth());
    m_railArea->setFixedWidth(widest);
}

void JobPlace::strikeLastAsked()
{
    const auto person = m_signing.person();
    if (!person) {
        m_ask.tell(tr("Whose entry?"), tr("Nobody is signed in, so nobody's last entry is meant. Choose the entry on the page Record (Ctrl+6), and strike it there."));
        return;
    }
    const core::Line *line = core::lastOwnEntry(*m_feed.state(), *person);
    if (!line) {
        m_ask.tell(tr("There is nothing to strike"), tr("%1 has no entry in this job that stands.").arg(m_feed.reg().nameOf(*person)));
        return;
    }
    const ActionLine &strike = actionFor(QLatin1String("entry.struck"));
    const QString subject = QString::number(line->seq);
    const core::Refusals refusals = m_signing.whyNot(strike, {}, subject);
    if (refusals.empty())
        m_signing.begin(strike, {}, subject);
    else
        m_ask.tell(tr("The last entry is not struck"), tr("%1\n\n%2").arg(entryInWords(*m_feed.state(), *line), refusalsInWords(refusals)));
}

void JobPlace::askImport()
{
    if (const auto path = m_ask.fileToOpen(tr("Import the interface list"), tr("Interface list (*.csv)")))
        importList(*path);
}

void JobPlace::offerPhotos(const QMimeData &offered)
{
    showPage(QStringLiteral("photos"));
    m_pages->findChild<PhotosPage *>()->offer(offered);
}

void JobPlace::importList(const QString &path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        m_ask.tell(tr("The list cannot be read"), tr("%1: %2").arg(path, file.errorString()));
        return;
    }
    const auto list = core::readInterfaceList(file.readAll(), {QFileInfo(path).fileName(), m_kinds, *m_feed.state()});
    auto *dialog = new ImportDialog(path, list, m_kinds, window());
    if (list) {
        connect(dialog, &QDialog::accepted, this, [this, rows = *list] {
            std::vector<core::Draft> drafts;
            for (const core::ListedRow &row : rows)
                drafts.push_back({*m_feed.state()->lead, m_session.now(), QStringLiteral("interface.listed"), row.id.text(), row.body});
            if (!drafts.empty())
                m_signing.beginFixed(tr("Take the interface list"), drafts);
        });
    }
    dialog->open();
}

void JobPlace::exportListAsked() { exportList(*m_feed.state(), m_ask); }
void JobPlace::exportLabelsAsked() { exportLabels(*m_feed.state(), m_selection.items(), m_ask); }
void JobPlace::exportPackageAsked() { exportPackage(m_session, m_kinds, m_ask, window()); }
void JobPlace::exportRecordAsked() { exportRecord(m_session, m_kinds, m_ask, window()); }
void JobPlace::exportSheetAsked(core::SheetSort sort) { exportSheet(m_session, sort, m_ask); }
void JobPlace::backUpAsked() { backUp(m_session, m_ask, window()); }

void JobPlace::verify()
{
    const auto verify = [&store = m_session.store()](const session::Known &known, const Progress &progress) -> core::Result<Verdict> {
        auto report = session::verifyStore(store, known, progress);
        if (!report)
            return core::failure(report.error());
        return Verdict{*std::move(report), {}};
    };
    auto *dialog = new VerifyDialog({tr("Verify the store"), m_session.store().path(), verify}, m_ask, this);
    connect(dialog, &VerifyDialog::verified, findChild<RecordPage *>(), &RecordPage::showVerdict);
    dialog->open();
    dialog->verify();
}

} // namespace desktop
