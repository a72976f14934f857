// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/first_run/found_page.hpp"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/flows/new_key.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

FoundPage::FoundPage(Found found, QWidget *parent) : QWidget(parent), m_found(std::move(found))
{
    auto *outer = new QHBoxLayout(this);
    auto *inner = new QWidget(this);
    inner->setFixedWidth(fontMetrics().averageCharWidth() * 84);
    outer->addStretch();
    outer->addWidget(inner);
    outer->addStretch();
    auto *column = new QVBoxLayout(inner);
    column->setSpacing(fontMetrics().height() * 2 / 3);
    column->addStretch(1);
    column->addWidget(makeLabel(tr("Found the register"), "title", inner));
    column->addWidget(makeLabel(tr("This store is empty. Its first entry names the organisation and its first administrator, who then enrols everybody else. The fingerprint of this entry is printed on every record."), "", inner));
    auto *form = new QFormLayout;
    const auto line = [&](const QString &label, const char *name) {
        auto *edit = new QLineEdit(inner);
        edit->setObjectName(QString::fromLatin1(name));
        edit->setAccessibleName(label);
        addRow(form, label, edit);
        connect(edit, &QLineEdit::textChanged, this, &FoundPage::judge);
        return edit;
    };
    m_organisation = line(tr("Organisation"), "organisation");
    setFocusProxy(m_organisation);
    m_id = line(tr("Your id (staff number, stamp)"), "rootId");
    m_name = line(tr("Your name"), "rootName");
    m_secret = std::make_unique<NewSecret>(form, inner);
    for (QLineEdit *edit : {m_secret->first(), m_secret->second()})
        connect(edit, &QLineEdit::textChanged, this, &FoundPage::judge);
    column->addLayout(form);
    column->addWidget(makeLabel(tr("Nobody can sign for you, and nobody can read your PIN back to you. A long passphrase protects you better than a short PIN if the file is ever copied."), "quiet", inner));
    m_problem = makeLabel({}, "refusal", inner);
    column->addWidget(m_problem);
    m_take = makeButton(tr("Found and &sign"), "main", inner);
    m_take->setObjectName(QStringLiteral("found"));
    m_take->setMinimumHeight(touchHeight(fontMetrics()));
    column->addWidget(m_take, 0, Qt::AlignRight);
    column->addStretch(2);
    connect(m_take, &QPushButton::clicked, this, &FoundPage::take);
    connect(m_secret->second(), &QLineEdit::returnPressed, this, &FoundPage::take);
    judge();
}

FoundPage::~FoundPage() = default;

void FoundPage::judge()
{
    const bool isFilled = !m_organisation->text().trimmed().isEmpty() && core::PersonId::parse(m_id->text().trimmed()) && !m_name->text().trimmed().isEmpty();
    const bool isBegun = !m_secret->first()->text().isEmpty();
    m_problem->setText(isBegun ? m_secret->fault() : QString());
    m_take->setEnabled(isFilled && m_secret->fault().isEmpty());
}

void FoundPage::take()
{
    if (!m_take->isEnabled())
        return;
    const auto done = m_found(m_organisation->text().trimmed(), {*core::PersonId::parse(m_id->text().trimmed()), m_name->text().trimmed(), m_secret->secret(), {}});
    m_secret->first()->clear();
    m_secret->second()->clear();
    if (done) {
        emit founded();
        return;
    }
    QStringList lines{done.error().error.message};
    for (const auto &[index, refusals] : done.error().refusals)
        lines << refusalsInWords(refusals);
    m_problem->setText(lines.join(u'\n'));
}

} // namespace desktop
