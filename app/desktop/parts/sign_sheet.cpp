// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/sign_sheet.hpp"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QScrollBar>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/begun/begun_band.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/keyboard.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/words.hpp"

namespace desktop {

namespace {

QString problemOf(const session::NotSigned &no)
{
    QStringList lines;
    for (const auto &[index, refusals] : no.refusals) {
        const QString sentences = refusalsInWords(refusals);
        if (!lines.contains(sentences))
            lines << sentences;
    }
    return lines.isEmpty() ? no.error.message : lines.join(u'\n');
}

int heightAt(const QWidget &widget, int width)
{
    const QLayout *inside = widget.layout();
    return inside->hasHeightForWidth() ? inside->totalHeightForWidth(width) : inside->totalSizeHint().height();
}

} // namespace

SignSheet::SignSheet(session::Session &session, SheetPlan plan, QWidget *parent)
    : QDialog(parent), m_session(session), m_plan(std::move(plan)), m_known(session.currentSigner())
{
    setWindowTitle(m_plan.title);
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, m_plan.manual, m_plan.section);
    auto *column = new QVBoxLayout(this);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    addHead(column);
    addBegun(column);
    addBody(column);
    addWords(column);
    addWho(column);
    addButtons(column);
    judge();
    QTimer::singleShot(0, this, &SignSheet::start);
}

/// What it comes to stands beside the form where the screen is wide enough, else below it. As high as all of it needs, as far as the
/// screen goes; then the form scrolls, and who signs what stays in sight. Where not even that has room, what is signed scrolls with the form.
void SignSheet::fit()
{
    const QSize room = screen()->availableGeometry().size();
    const int line = fontMetrics().height();
    const int narrow = fontMetrics().averageCharWidth() * 89;
    const int broad = fontMetrics().averageCharWidth() * 150;
    const bool isBroad = m_worked->isVisibleTo(this) && room.width() > broad;
    m_bodyColumns->setDirection(isBroad ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    const QMargins margins = layout()->contentsMargins();
    const int around = margins.left() + margins.right();
    const int beside = around + m_body->verticalScrollBar()->sizeHint().width() + 2 * m_body->frameWidth();
    // What scrolls up and down does not scroll sideways, so the sheet is as wide as it has to be.
    const int wide = std::max({width(), isBroad ? broad : narrow, layout()->totalSizeHint().width(), m_body->widget()->minimumSizeHint().width() + beside});
    const int inner = wide - beside;

    const int words = layWords(inner);
    m_words->setFixedHeight(words);
    const int head = heightAt(*m_head, wide - around);
    const int said = heightAt(*m_said, wide - around);
    const int form = heightAt(*m_content, inner);
    const int rest = heightOfRest(wide - around);
    const int highest = room.height() - line * 3;
    const int most = std::max(highest - rest, line * 6);
    const int leastForm = std::min(form, line * 6);
    const int leastWords = std::min(words, line * 4);
    stack(head + said - words + leastWords + leastForm > most);
    int body = std::min(head + form + said + 2 * m_body->widget()->layout()->spacing(), most);
    int shown = 0;
    if (!m_isTight) {
        const int left = most - head - (said - words);
        const int wordsMost = std::min(line * 18, std::max(left - form, std::min(line * 9, left - leastForm)));
        m_words->setFixedHeight(std::clamp(words, leastWords, std::max(leastWords, wordsMost)));
        body = std::min(form, left - m_words->height());
        shown = head + said - words + m_words->height();
    }
    m_body->setMinimumHeight(body);
    const int needed = rest + shown + body;
    m_said->layout()->activate();
    layout()->activate(); // or it holds on to the least size that it had before
    resize(wide, std::min(std::max(height(), needed), std::max(needed, highest)));
}

/// Of who signs, the buttons and whatever else always stays in sight, at that width.
int SignSheet::heightOfRest(int width) const
{
    const QMargins margins = layout()->contentsMargins();
    int height = margins.top() + margins.bottom() + layout()->spacing() * 2; // beside the head and what is signed
    for (int at = 0; at < layout()->count(); ++at) {
        QLayoutItem *item = layout()->itemAt(at);
        const QWidget *widget = item->widget();
        if (item->isEmpty() || widget == m_head || widget == m_said || widget == m_body)
            continue;
        height += (item->hasHeightForWidth() ? item->heightForWidth(width) : item->sizeHint().height()) + layout()->spacing();
    }
    return height;
}

/// Gives each line of what is signed the height that it takes at that width; all of them together. The view itself forgets the room that
/// the style leaves around a text, and cuts what wraps because of it.
int SignSheet::layWords(int width)
{
    const int beside = 2 * m_words->frameWidth() + fontMetrics().height() * 3 / 2 + m_words->verticalScrollBar()->sizeHint().width();
    int height = 2 * m_words->frameWidth() + 2;
    for (int row = 0; row < m_words->count(); ++row) {
        QListWidgetItem *item = m_words->item(row);
        const int text = m_words->fontMetrics().boundingRect(0, 0, width - beside, 0, Qt::TextWordWrap, item->text()).height();
        item->setSizeHint({0, text + fontMetrics().height()});
        height += item->sizeHint().height();
    }
    return height;
}

/// What is signed for and in what words: around the body, or in it and scrolled with it.
void SignSheet::stack(bool isTight)
{
    if (m_isTight == isTight)
        return;
    m_isTight = isTight;
    auto *outside = qobject_cast<QBoxLayout *>(layout());
    auto *inside = qobject_cast<QBoxLayout *>(m_body->widget()->layout());
    QBoxLayout *to = isTight ? inside : outside;
    QBoxLayout *from = isTight ? outside : inside;
    from->removeWidget(m_head);
    from->removeWidget(m_said);
    to->insertWidget(0, m_head);
    to->insertWidget(to->indexOf(isTight ? m_content : m_body) + 1, m_said);
}

void SignSheet::start()
{
    resize(0, 0); // before anybody sized it, it is as small as what it holds
    fit();
    goToFirst();
}

void SignSheet::goToFirst()
{
    if (m_begun && m_begun->isOffering()) {
        giveKeyboard(*m_begun->firstControl());
        return;
    }
    QWidget *gap = m_plan.firstGap ? m_plan.firstGap() : nullptr;
    QWidget *first = gap ? gap : m_known ? static_cast<QWidget *>(m_secret) : m_person;
    giveKeyboard(*first);
}

void SignSheet::addHead(QVBoxLayout *column)
{
    m_head = new QWidget(this);
    auto *inside = new QVBoxLayout(m_head);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(column->spacing());
    inside->addWidget(makeLabel(m_plan.title, "title", m_head));
    if (!m_plan.about.isEmpty())
        inside->addWidget(makeLabel(m_plan.about, "quiet", m_head));
    column->addWidget(m_head);
}

void SignSheet::addBegun(QVBoxLayout *column)
{
    if (!m_plan.form || !m_plan.keptAs || !m_plan.begun)
        return;
    m_begun = new BegunBand(*m_plan.begun, *m_plan.keptAs, *m_plan.form, m_session.clock(), this);
    column->addWidget(m_begun);
    connect(m_begun, &BegunBand::answered, this, [this] {
        judge();
        goToFirst();
    });
}

/// What to mind, the form, and what it comes to.
void SignSheet::addBody(QVBoxLayout *column)
{
    m_body = new QScrollArea(this);
    m_body->setAccessibleName(tr("What is signed"));
    m_body->setWidgetResizable(true);
    m_body->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    auto *inside = new QWidget(m_body);
    auto *whole = new QVBoxLayout(inside);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->setSpacing(column->spacing());
    m_content = new QWidget(inside);
    whole->addWidget(m_content);
    whole->addStretch();
    auto *body = new QVBoxLayout(m_content);
    body->setContentsMargins(0, 0, 0, 0);
    body->setSpacing(column->spacing());
    if (!m_plan.cautions.isEmpty())
        body->addWidget(makeLabel(cautionsText(m_plan.cautions), "caution", m_content));
    m_bodyColumns = new QBoxLayout(QBoxLayout::TopToBottom);
    m_bodyColumns->setSpacing(fontMetrics().height());
    body->addLayout(m_bodyColumns);
    addForm();
    addWorking();
    m_body->setWidget(inside);
    column->addWidget(m_body, 1);
    connect(qApp, &QApplication::focusChanged, this, [this, inside](QWidget *, QWidget *now) {
        if (now && inside->isAncestorOf(now))
            m_body->ensureWidgetVisible(now);
    });
    // What is typed into stays in sight when the form takes another size.
    connect(m_body->verticalScrollBar(), &QScrollBar::rangeChanged, this, [this, inside] {
        if (QWidget *at = focusWidget(); at && inside->isAncestorOf(at))
            m_body->ensureWidgetVisible(at);
    });
}

void SignSheet::addForm()
{
    if (!m_plan.form)
        return;
    m_bodyColumns->addWidget(m_plan.form, 1, Qt::AlignTop);
    // A form of fields tells of each change by itself; whatever stands beside one is watched here. Each change is judged at once.
    const auto *whole = qobject_cast<FieldForm *>(m_plan.form);
    const auto *form = whole ? whole : m_plan.form->findChild<FieldForm *>();
    const auto isBeside = [&](const QWidget *one) { return one != form && !(form && form->isAncestorOf(one)); };
    const auto watch = [&](const auto &controls, auto changed) {
        for (auto *control : controls) {
            if (isBeside(control))
                connect(control, changed, this, &SignSheet::judge);
        }
    };
    watch(m_plan.form->findChildren<QLineEdit *>(), &QLineEdit::textChanged);
    watch(m_plan.form->findChildren<QComboBox *>(), &QComboBox::currentIndexChanged);
    watch(m_plan.form->findChildren<QListWidget *>(), &QListWidget::itemChanged);
    watch(m_plan.form->findChildren<QPlainTextEdit *>(), &QPlainTextEdit::textChanged);
    watch(m_plan.form->findChildren<QCheckBox *>(), &QCheckBox::toggled);
    if (!form)
        return;
    connect(form, &FieldForm::edited, this, &SignSheet::judge);
    connect(form, &FieldForm::heightChanged, this, [this] { QTimer::singleShot(0, this, &SignSheet::fit); });
    connect(form, &FieldForm::finished, this, [this] { giveKeyboard(m_known ? static_cast<QWidget &>(*m_secret) : *m_person, Qt::TabFocusReason); });
}

void SignSheet::addWorking()
{
    m_worked = new QFrame(this);
    m_worked->setProperty("role", "card");
    auto *inside = new QVBoxLayout(m_worked);
    m_answer = makeLabel({}, "heading", m_worked);
    m_answer->setObjectName(QStringLiteral("answer"));
    m_working = makeLabel({}, "", m_worked);
    m_working->setObjectName(QStringLiteral("working"));
    m_working->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_offer = makeButton({}, "link", m_worked);
    m_offer->setObjectName(QStringLiteral("offer"));
    inside->addWidget(m_answer);
    inside->addWidget(m_working);
    inside->addWidget(m_offer, 0, Qt::AlignLeft);
    inside->addWidget(makeLabel(core::measure::dataGoverns(), "quiet", m_worked));
    m_bodyColumns->addWidget(m_worked, 1, Qt::AlignTop);
    connect(m_offer, &QPushButton::clicked, this, [this] {
        const auto workings = m_plan.workings();
        if (!workings.empty() && workings.front().offer)
            m_plan.takeOffer(*workings.front().offer);
    });
}

/// Every answer once, and below them how the first came about: the others differ by their readings alone.
void SignSheet::showWorking()
{
    const auto workings = m_plan.workings ? m_plan.workings() : std::vector<core::measure::Working>();
    QStringList answers;
    for (const core::measure::Working &working : workings) {
        if (!answers.contains(working.answer))
            answers << working.answer;
    }
    m_worked->setVisible(!workings.empty());
    m_answer->setText(answers.join(u'\n'));
    const QStringList steps = workings.empty() ? QStringList() : core::measure::stepsOf(workings.front()) + workings.front().notes;
    m_working->setText(steps.join(u'\n'));
    m_working->setVisible(!steps.isEmpty());
    const bool isOffered = !workings.empty() && workings.front().offer && m_plan.takeOffer;
    m_offer->setVisible(isOffered);
    if (isOffered)
        m_offer->setText(tr("Record %1 as the &setting").arg(workings.front().offer->value));
}

void SignSheet::addWords(QVBoxLayout *column)
{
    m_said = new QWidget(this);
    auto *inside = new QVBoxLayout(m_said);
    inside->setContentsMargins(0, 0, 0, 0);
    inside->setSpacing(column->spacing());
    inside->addWidget(makeLabel(tr("What you sign"), "heading", m_said));
    m_words = new QListWidget(m_said);
    m_words->setAccessibleName(tr("What you sign"));
    m_words->setWordWrap(true);
    m_words->setTextElideMode(Qt::ElideNone);
    m_words->setSelectionMode(QAbstractItemView::NoSelection);
    m_words->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_words->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel); // one line may be higher than the list
    m_words->setObjectName(QStringLiteral("words"));
    inside->addWidget(m_words);
    inside->addWidget(makeLabel(m_plan.meaning, "quiet", m_said));
    column->addWidget(m_said);
}

void SignSheet::addWho(QVBoxLayout *column)
{
    m_name = makeLabel({}, "title", this);
    m_name->setObjectName(QStringLiteral("signer"));
    auto *known = new QHBoxLayout;
    m_knownRow = new QWidget(this);
    m_knownRow->setLayout(known);
    known->setContentsMargins(0, 0, 0, 0);
    known->addWidget(m_name, 1);
    QPushButton *other = makeButton(tr("S&omebody else"), "link", this);
    other->setObjectName(QStringLiteral("somebodyElse"));
    known->addWidget(other);
    column->addWidget(m_knownRow);
    other->setVisible(m_known.has_value());
    connect(other, &QPushButton::clicked, this, [this, other] {
        other->hide();
        askWho();
    });

    m_whoForm = new QFormLayout;
    m_person = new PersonField(m_session.reg(), tr("Who signs"), this);
    m_person->setObjectName(QStringLiteral("person"));
    m_secret = new QLineEdit(this);
    m_secret->setObjectName(QStringLiteral("secret"));
    m_secret->setEchoMode(QLineEdit::Password);
    m_secret->setPlaceholderText(tr("PIN or passphrase"));
    m_secret->setAccessibleName(tr("PIN or passphrase"));
    m_secret->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText | Qt::ImhHiddenText);
    addRow(m_whoForm, tr("&Who"), m_person);
    addRow(m_whoForm, tr("&PIN"), m_secret);
    column->addLayout(m_whoForm);
    m_whoForm->setRowVisible(m_person, !m_known);
    connect(m_person, &PersonField::edited, this, &SignSheet::judge);
    connect(m_person, &PersonField::finished, m_secret, qOverload<>(&QWidget::setFocus));
    connect(m_secret, &QLineEdit::textChanged, this, &SignSheet::judge);
    connect(m_secret, &QLineEdit::returnPressed, this, &SignSheet::sign);
}

void SignSheet::addButtons(QVBoxLayout *column)
{
    m_problem = makeLabel({}, "refusal", this);
    m_problem->setObjectName(QStringLiteral("problem"));
    column->addWidget(m_problem);
    m_takeKey = makeButton(tr("&Take the key over at this station …"), "link", this);
    m_takeKey->setObjectName(QStringLiteral("takeKey"));
    m_takeKey->hide();
    column->addWidget(m_takeKey, 0, Qt::AlignLeft);
    connect(m_takeKey, &QPushButton::clicked, this, &SignSheet::keyWanted);
    auto *row = new QHBoxLayout;
    QPushButton *cancel = makeButton(tr("Cancel"), "", this);
    m_sign = makeButton(m_plan.sign, "main", this);
    m_sign->setObjectName(QStringLiteral("sign"));
    row->addWidget(cancel);
    row->addStretch();
    row->addWidget(m_sign);
    column->addLayout(row);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_sign, &QPushButton::clicked, this, &SignSheet::sign);
}

void SignSheet::askWho()
{
    m_known.reset();
    m_secret->clear();
    m_whoForm->setRowVisible(m_person, true);
    giveKeyboard(*m_person);
    judge();
}

/// That the person's key is at other stations only: told before they type a PIN that opens nothing here.
core::Refusals SignSheet::whyNotHere(const core::PersonId &person)
{
    const auto place = m_plan.needsKeyHere ? m_session.keyPlace(person) : db::KeyPlace::Here;
    const bool isElsewhere = place && *place == db::KeyPlace::Elsewhere;
    m_takeKey->setVisible(isElsewhere);
    if (!isElsewhere)
        return {}; // trouble with the station's secret is told in full when something is signed
    return {{{}, {}, tr("The key of %1 is not at this station. Take it over with a code from a station where they sign, or have a new key registered.").arg(m_session.reg().nameOf(person)), {}}};
}

std::optional<core::PersonId> SignSheet::who() const { return m_known ? m_known : m_person->person(); }

void SignSheet::sayProblem(const QString &problem)
{
    m_problem->setText(problem);
    m_problem->setVisible(!problem.isEmpty());
}

void SignSheet::judge()
{
    if (!m_sign || m_isDone)
        return; // still being built, or signed: what follows is no longer about this sheet
    // The lock may have fallen while the sheet was open.
    if (m_known && m_session.asksOf(*m_known) == session::Asks::IdentityAndSecret) {
        askWho();
        return;
    }
    const bool isOffering = m_begun && m_begun->isOffering();
    if (m_begun)
        m_begun->typed();
    showWorking();
    const QStringList words = m_plan.words();
    m_words->clear();
    m_words->addItems(words);

    const auto person = who();
    setProperty("signer", person ? person->text() : QString());
    m_name->setText(person ? tr("%1 signs").arg(m_session.reg().nameOf(*person)) : tr("Who signs?"));
    core::Refusals refusals = person ? whyNotHere(*person) : core::Refusals();
    if (person && refusals.empty())
        refusals = m_plan.whyNot(*person);
    if (!person)
        m_takeKey->hide();
    sayProblem(isOffering ? tr("Say above first whether you take up what was begun or discard it.") : refusalsInWords(refusals));
    m_sign->setEnabled(person && !isOffering && refusals.empty() && !m_secret->text().isEmpty());
    if (isVisible())
        QTimer::singleShot(0, this, &SignSheet::fit); // what was said may need more room than before
}

void SignSheet::sign()
{
    const auto person = who();
    if (!person || m_secret->text().isEmpty() || !m_sign->isEnabled())
        return;
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const auto done = m_plan.take({*person, m_secret->text()});
    QGuiApplication::restoreOverrideCursor();
    m_isDone = done.has_value();
    m_secret->clear();
    if (done) {
        if (m_begun)
            m_begun->finish();
        emit hasSigned(*done);
        accept();
        return;
    }
    m_secret->setFocus(Qt::OtherFocusReason);
    sayProblem(problemOf(done.error()));
}

void SignSheet::reject()
{
    if (m_begun)
        m_begun->finish();
    QDialog::reject();
}

} // namespace desktop
