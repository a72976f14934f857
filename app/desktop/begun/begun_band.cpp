// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/begun/begun_band.hpp"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/begun/typed_in.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

BegunBand::BegunBand(const BegunForms &forms, FormName name, QWidget &form, session::Clock clock, QWidget *parent)
    : QFrame(parent), m_forms(forms), m_name(std::move(name)), m_form(form), m_clock(std::move(clock)), m_before(typedIn(form))
{
    setProperty("role", "card");
    setObjectName(QStringLiteral("begun"));
    auto *column = new QVBoxLayout(this);
    m_words = makeLabel({}, "", this);
    m_words->setObjectName(QStringLiteral("begunText"));
    m_takeUp = makeButton(tr("Take it &up"), "main", this);
    m_takeUp->setObjectName(QStringLiteral("takeUp"));
    m_discard = makeButton(tr("&Discard it"), "", this);
    m_discard->setObjectName(QStringLiteral("discard"));
    auto *row = new QHBoxLayout;
    for (QPushButton *button : {m_takeUp, m_discard}) {
        button->setMinimumHeight(touchHeight(fontMetrics()));
        row->addWidget(button);
    }
    row->addStretch();
    column->addWidget(m_words);
    column->addLayout(row);
    connect(m_takeUp, &QPushButton::clicked, this, [this] {
        const Begun begun = *m_offered;
        answer();
        typeInto(m_form, begun.typed);
        emit answered();
    });
    connect(m_discard, &QPushButton::clicked, this, [this] {
        answer();
        if (const auto dropped = m_forms.drop(m_name); !dropped)
            say(core::errorInWords(dropped.error()));
        emit answered();
    });
    m_wait.setSingleShot(true);
    m_wait.setInterval(waitMilliseconds);
    connect(&m_wait, &QTimer::timeout, this, &BegunBand::keep);

    auto found = m_forms.find(m_name);
    m_takeUp->setVisible(found && *found);
    m_discard->setVisible(found && *found);
    if (!found) {
        say(core::errorInWords(found.error()));
    } else if (*found) {
        m_offered = *std::move(found);
        m_form.setEnabled(false);
        say(tr("This was begun at this computer and not signed; the last of it was typed on %1. Take it up where it was left and look through all of it, or discard it.").arg(momentInWords(m_offered->at)));
    } else {
        hide();
    }
}

QWidget *BegunBand::firstControl() const { return m_takeUp; }

void BegunBand::say(const QString &text)
{
    m_words->setText(text);
    setVisible(!text.isEmpty());
}

void BegunBand::answer()
{
    m_offered.reset();
    m_takeUp->hide();
    m_discard->hide();
    m_form.setEnabled(true);
    say({});
}

void BegunBand::typed()
{
    // Not started anew at each key: whoever types without a pause is kept as well.
    if (!m_offered && !m_isFinished && !m_wait.isActive())
        m_wait.start();
}

void BegunBand::keep()
{
    // All of it once anything is otherwise: what was set back to how the form began may be filled in anew by what else was chosen.
    core::json::Object now = typedIn(m_form);
    if (now == m_before)
        now = {};
    if (now == m_kept)
        return;
    const auto done = now.isEmpty() ? m_forms.drop(m_name) : m_forms.keep(m_name, {m_clock(), now});
    if (done) {
        m_kept = now;
        return;
    }
    say(core::errorInWords(done.error()));
}

void BegunBand::finish()
{
    if (m_offered)
        return;
    m_isFinished = true;
    m_wait.stop();
    (void)m_forms.drop(m_name); // what stays is offered once more, and drops out when it is old
}

} // namespace desktop
