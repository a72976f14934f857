// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/verdict/packages_dialog.hpp"

#include <QHBoxLayout>
#include <QPushButton>
#include <QTemporaryDir>
#include <QVBoxLayout>

#include <memory>

#include "app/desktop/flows/long_work.hpp"
#include "app/desktop/pages/verdict/verify_dialog.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/package/import_package.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

PackagesDialog::PackagesDialog(session::Session &session, const core::Kinds &kinds, Ask &ask, QWidget *parent) : QDialog(parent), m_session(session), m_kinds(kinds), m_ask(ask)
{
    setWindowTitle(tr("Imported packages"));
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("package"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    column->addWidget(makeLabel(tr("Imported packages"), "title", this));
    column->addWidget(makeLabel(tr("Records of other stores, kept as they came: to be looked at, never worked on. Each hangs from its own root."), "quiet", this));
    m_rows = new RowTable({{tr("No."), 6}, {tr("Work order"), 16}, {tr("Job"), 0}, {tr("State"), 14}, {tr("Last entry"), 11}, {tr("Root"), 20}, {tr("Imported"), 26}}, tr("Imported packages"), tr("No package was imported."), this);
    m_rows->setObjectName(u"packages"_s);
    column->addWidget(m_rows, 1);
    auto *buttons = new QHBoxLayout;
    QPushButton *open = makeButton(tr("&Open a package file …"), "main", this);
    open->setObjectName(u"openFile"_s);
    m_verify = makeButton(tr("&Verify"), "", this);
    m_verify->setObjectName(u"verify"_s);
    m_save = makeButton(tr("&Save as a file …"), "", this);
    m_save->setObjectName(u"save"_s);
    QPushButton *close = makeButton(tr("&Close"), "", this);
    for (QPushButton *button : {open, m_verify, m_save, close}) {
        button->setMinimumHeight(touchHeight(fontMetrics()));
        buttons->addWidget(button);
    }
    buttons->insertStretch(3);
    column->addLayout(buttons);
    connect(open, &QPushButton::clicked, this, &PackagesDialog::openWanted);
    connect(m_verify, &QPushButton::clicked, this, &PackagesDialog::verify);
    connect(m_save, &QPushButton::clicked, this, &PackagesDialog::save);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_rows, &RowTable::chosenChanged, this, &PackagesDialog::offer);
    connect(m_rows, &RowTable::opened, this, &PackagesDialog::verify);
    resize(std::max(parent->window()->width() * 8 / 10, fontMetrics().averageCharWidth() * 110), gap * 26);
    refresh();
}

void PackagesDialog::refresh()
{
    const auto packages = m_session.store().packages().list();
    if (!packages) {
        m_ask.tell(tr("The packages were not listed"), core::errorInWords(packages.error()));
        return;
    }
    std::vector<Row> rows;
    for (const db::KeptPackage &package : *packages) {
        constexpr qsizetype enough = 16;
        rows.push_back({QString::number(package.number),
                        {QString::number(package.number), package.workOrder, package.title + u'\n' + package.aircraft, package.isClosed ? tr("closed") : tr("NOT CLOSED"), QString::number(package.head.seq), package.root.hex().first(enough) + u" …"_s, momentInWords(package.takenAt)},
                        false, !package.isClosed});
    }
    m_rows->take(rows);
    offer();
}

void PackagesDialog::offer()
{
    for (QPushButton *button : {m_verify, m_save}) {
        button->setEnabled(!m_rows->chosen().isEmpty());
        button->setToolTip(m_rows->chosen().isEmpty() ? tr("Choose a package first.") : QString());
    }
}

void PackagesDialog::verify()
{
    // Lives as long as the verdict is looked at: it may be asked again with what is known from elsewhere.
    const auto scratch = std::make_shared<QTemporaryDir>();
    const QString file = scratch->filePath(u"package.zip"_s);
    if (const auto taken = package::takeOut(m_session.store(), m_rows->chosen().toLongLong(), file); !taken) {
        m_ask.tell(tr("The package cannot be verified"), core::errorInWords(taken.error()));
        return;
    }
    VerifyWhat what = packageToVerify(file, m_kinds);
    what.name = tr("Imported package %1").arg(m_rows->chosen());
    auto *dialog = new VerifyDialog(std::move(what), m_ask, this);
    connect(dialog, &QObject::destroyed, this, [scratch] {});
    dialog->open();
    dialog->verify();
}

void PackagesDialog::save()
{
    const auto path = m_ask.fileToSave(tr("Save the package"), tr("package-%1.zip").arg(m_rows->chosen()), tr("Record package (*.zip)"));
    if (!path)
        return;
    const auto taken = package::takeOut(m_session.store(), m_rows->chosen().toLongLong(), *path);
    m_ask.tell(taken ? tr("The package was saved") : tr("The package was not saved"), taken ? tr("%1, byte for byte as it came.").arg(*path) : core::errorInWords(taken.error()));
}

void importPackage(session::Session &session, const QString &path, const session::Known &known, const core::Kinds &kinds, Ask &ask, QWidget *window)
{
    LongWork work(PackagesDialog::tr("Importing the package"), window);
    const auto imported = package::importPackage(session.store(), path, known, kinds, session.now(), work.progress());
    if (!imported) {
        if (imported.error().code != core::ErrorCode::Cancelled)
            ask.tell(PackagesDialog::tr("The package was not imported"), core::errorInWords(imported.error()));
        return;
    }
    QStringList lines{PackagesDialog::tr("Package %1: work order %2. It is kept apart from this store's jobs and never worked on.").arg(imported->number).arg(imported->about.workOrder),
                      imported->isOwnRoot ? PackagesDialog::tr("It hangs from this store's own root.") : PackagesDialog::tr("It hangs from another root: %1").arg(imported->root.hex())};
    for (const package::Relation &relation : imported->relations)
        lines << package::inWords(relation);
    ask.tell(PackagesDialog::tr("The package was imported"), lines.join(u'\n'));
}

} // namespace desktop
