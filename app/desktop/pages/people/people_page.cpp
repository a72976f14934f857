// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/people/people_page.hpp"

#include <QDate>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/new_key.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/session/doubtful.hpp"
#include "app/session/people.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

QString authoritiesOf(const core::Register &reg, const core::PersonId &person, const core::Instant &now)
{
    QStringList words;
    for (const core::Authority authority : core::allAuthorities()) {
        const bool may = std::any_of(reg.authorisations.begin(), reg.authorisations.end(), [&](const auto &at) {
            const core::Authorisation &one = at.second;
            return one.person == person && one.authority == authority && !one.withdrawn && one.from <= now.utcDate() && (!one.until || *one.until >= now.utcDate());
        });
        if (may || (authority == core::Authority::Administer && reg.root == person))
            words << choiceMidSentence(core::authorityText(authority));
    }
    return words.join(u", "_s);
}

/// `2 to 10 N·m, by 0.1, ± 6 %`
QString rangeInWords(const core::Tool &tool, QDate today)
{
    if (!tool.rangeMin || !tool.rangeMax)
        return {};
    QStringList parts{PeoplePage::tr("%1 to %2").arg(tool.rangeMin->value().text(), tool.rangeMax->text())};
    if (tool.graduation)
        parts << PeoplePage::tr("by %1").arg(tool.graduation->value().text());
    if (const auto deviation = core::deviationOn(tool, today))
        parts << PeoplePage::tr("± %1 %").arg(deviation->text());
    return parts.join(u", "_s);
}

QString placeInWords(db::KeyPlace place)
{
    switch (place) {
    case db::KeyPlace::Here: return PeoplePage::tr("Signs at this station.");
    case db::KeyPlace::Unbound: return PeoplePage::tr("The key is bound to no station yet: a copy of the store gives the PIN away. It is bound when they next sign.");
    case db::KeyPlace::Elsewhere: return PeoplePage::tr("Signs at other stations; here once the key was carried over.");
    case db::KeyPlace::Nowhere: return PeoplePage::tr("This store holds no key of them.");
    }
    return {};
}

QString orAll(const std::vector<QString> &some) { return some.empty() ? PeoplePage::tr("all") : QStringList(some.begin(), some.end()).join(u", "_s); }

} // namespace

PeoplePage::PeoplePage(session::Session &session, Signing &signing, QWidget *parent) : QWidget(parent), m_session(session), m_signing(signing)
{
    auto *column = new QVBoxLayout(this);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap * 2, gap, gap * 2, gap);
    column->addWidget(makeLabel(tr("People and tools"), "title", this));
    m_root = makeLabel({}, "quiet", this);
    column->addWidget(m_root);
    auto *splitter = new QSplitter(Qt::Vertical, this);
    splitter->setChildrenCollapsible(false);
    splitter->addWidget(makePeople());
    splitter->addWidget(makeTools());
    splitter->setStretchFactor(0, 3);
    splitter->setStretchFactor(1, 2);
    column->addWidget(splitter, 1);
    refresh();
}

QWidget *PeoplePage::makePeople()
{
    auto *area = new QWidget(this);
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(0, 0, 0, 0);
    m_people = new RowTable({{tr("Id"), 14}, {tr("Name"), 22}, {tr("May"), 0}, {tr("Key"), 20}}, tr("People"), tr("Nobody is enrolled."), area);
    m_people->setObjectName(u"people"_s);
    m_authorisations = new RowTable({{tr("Number"), 8}, {tr("Authority"), 12}, {tr("Kinds"), 0}, {tr("Aircraft types"), 16}, {tr("Days"), 17}, {tr("Approval"), 18}}, tr("Authorisations"), tr("Choose a person to see their authorisations."), area);
    m_authorisations->setObjectName(u"authorisations"_s);
    m_whose = makeLabel({}, "heading", area);
    auto *grid = new QGridLayout;
    grid->addWidget(makeLabel(tr("People"), "heading", area), 0, 0);
    grid->addWidget(m_people, 1, 0);
    grid->addWidget(m_whose, 0, 1);
    grid->addWidget(m_authorisations, 1, 1);
    m_keyNews = makeLabel({}, "quiet", area);
    m_keyNews->setObjectName(u"keyNews"_s);
    m_keyNews->setWordWrap(true);
    grid->addWidget(m_keyNews, 2, 0, 1, 2);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 1);
    column->addLayout(grid, 1);
    QWidget *buttons = makeButtons({{tr("Enrol &a person …"), [this] { m_signing.open(enrolPlan(m_session, this)); }},
                                   {tr("Grant an a&uthorisation …"), [this] { grant(); }},
                                   {tr("Withdraw the authorisation …"), [this] { withdrawAuthorisation(); }}});
    buttons->findChild<QPushButton *>()->setObjectName(u"enrol"_s);
    column->addWidget(buttons);
    QWidget *keys = makeButtons({{tr("&New key for a person …"), [this] { m_signing.open(replaceKeyPlan(m_session, this)); }},
                                {tr("&Stop the key …"), [this] { stopKey(); }},
                                {tr("Change your P&IN …"), [this] { m_signing.open(changeSecretPlan(m_session, this)); }},
                                {tr("Carry your key over …"), [this] { m_signing.carryKey(); }},
                                {tr("&Take your key over …"), [this] { m_signing.takeKey(); }}});
    keys->findChild<QPushButton *>()->setObjectName(u"newKey"_s);
    column->addWidget(keys);
    connect(m_people, &RowTable::chosenChanged, this, &PeoplePage::showAuthorisations);
    setFocusProxy(&m_people->view());
    return area;
}

QWidget *PeoplePage::makeTools()
{
    auto *area = new QWidget(this);
    auto *column = new QVBoxLayout(area);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(makeLabel(tr("Tools that measure"), "heading", area));
    m_tools = new RowTable({{tr("Id"), 16}, {tr("Name"), 0}, {tr("Usable range"), 34}, {tr("Calibrated"), 30}, {tr("Certificate"), 22}, {tr("State"), 22}}, tr("Tools"), tr("No tool is registered. Torque and bonding are measured with registered tools in calibration alone."), area);
    m_tools->setObjectName(u"tools"_s);
    column->addWidget(m_tools, 1);
    column->addWidget(makeButtons({{tr("&Register a tool …"), [this] { registerTool(); }}, {tr("Record a &calibration …"), [this] { calibrate(); }}, {tr("Found out of tolerance …"), [this] { doubtTool(); }},
                                   {tr("Withdraw the tool …"), [this] { withdrawTool(); }}}));
    return area;
}

QWidget *PeoplePage::makeButtons(const std::vector<std::pair<QString, std::function<void()>>> &buttons)
{
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    for (const auto &[text, go] : buttons) {
        QPushButton *button = makeButton(text, "", row);
        button->setMinimumHeight(touchHeight(fontMetrics()));
        layout->addWidget(button);
        connect(button, &QPushButton::clicked, this, go);
    }
    layout->addStretch();
    return row;
}

void PeoplePage::refresh()
{
    const core::Register &reg = m_session.reg();
    m_root->setText(reg.root ? tr("%1 · root: %2 · fingerprint %3").arg(reg.organisation, reg.nameOf(*reg.root), reg.fingerprint.hex()) : QString());
    std::vector<Row> people, tools;
    for (const auto &[id, person] : reg.people)
        people.push_back({id.text(), {id.text(), person.name, authoritiesOf(reg, id, m_session.now()), person.key.fingerprint().hex().left(16)}, false, person.keyStopped.has_value()});
    const QDate today = m_session.now().utcDate();
    for (const auto &[id, tool] : reg.tools) {
        const bool isGood = core::calibrationOn(tool, today);
        const QString range = rangeInWords(tool, m_session.now().utcDate());
        const QString calibrated = tool.calibrations.empty() ? tr("never") : tr("%1, due %2").arg(tool.calibrations.back().on.toString(Qt::ISODate), tool.calibrations.back().due.toString(Qt::ISODate));
        const QString state = tool.withdrawn ? tr("withdrawn") : isGood ? tr("in calibration") : tr("not in calibration");
        tools.push_back({id.text(), {id.text(), tool.name, range, calibrated, tool.calibrations.empty() ? QString() : tool.calibrations.back().certificate, state}, tool.withdrawn.has_value(), !isGood});
    }
    m_people->take(people);
    m_tools->take(tools);
    showAuthorisations();
}

std::vector<Row> PeoplePage::authorisationRows() const
{
    std::vector<Row> rows;
    const QString chosen = m_people->chosen();
    for (const auto &[id, one] : m_session.reg().authorisations) {
        if (one.person.text() != chosen)
            continue;
        const QString days = one.until ? tr("%1\nto %2").arg(one.from.toString(Qt::ISODate), one.until->toString(Qt::ISODate)) : tr("from %1").arg(one.from.toString(Qt::ISODate));
        rows.push_back({id.text(), {id.text(), choiceInWords(core::authorityText(one.authority)), orAll(one.kinds), orAll(one.aircraftTypes), days, one.reference}, one.withdrawn.has_value()});
    }
    return rows;
}

void PeoplePage::showAuthorisations()
{
    const auto person = core::PersonId::parse(m_people->chosen());
    m_whose->setText(person ? tr("Authorisations of %1").arg(m_session.reg().nameOf(*person)) : tr("Authorisations"));
    m_authorisations->take(authorisationRows());
    const core::Person *chosen = person ? m_session.reg().person(*person) : nullptr;
    m_keyNews->setText(chosen ? keyNews(*chosen).join(u' ') : QString());
}

/// Where the key is, whether it was stopped, wrong PINs, and what is in doubt.
QStringList PeoplePage::keyNews(const core::Person &person)
{
    QStringList news;
    const auto place = m_session.keyPlace(person.id);
    if (!place)
        news << place.error().message;
    else
        news << placeInWords(*place);
    if (person.keyStopped)
        news << tr("The key was stopped on %1.").arg(person.keyStopped->spoken());
    const auto tries = m_session.store().credentials().tries(person.id, person.key.fingerprint());
    if (tries && tries->wrongInARow > 0)
        news << tr("Wrong PINs since the last right one: %1, the last on %2.").arg(QString::number(tries->wrongInARow), tries->last.spoken());
    if (person.keyDoubts.empty())
        return news;
    for (const core::KeyDoubt &doubt : person.keyDoubts)
        news << tr("Signatures are in doubt from %1 to %2: %3").arg(doubt.since.spoken(), doubt.until.spoken(), doubt.reason);
    const auto doubtful = session::doubtfulSignatures(m_session, person.id);
    if (!doubtful)
        return news << doubtful.error().message;
    QStringList lines;
    constexpr std::size_t most = 8;
    for (std::size_t i = 0; i < std::min(doubtful->size(), most); ++i) {
        const session::UseOf &use = (*doubtful)[i];
        lines << tr("%1, entry %2").arg(use.workOrder.value_or(tr("register"))).arg(use.said.seq);
    }
    if (doubtful->size() > most)
        lines << tr("and %1 more, listed by remate-cli doubtful").arg(doubtful->size() - most);
    return news << tr("In doubt: %1").arg(lines.isEmpty() ? tr("nothing was signed in that time") : lines.join(u"; "_s));
}

void PeoplePage::stopKey()
{
    if (m_people->chosen().isEmpty())
        return;
    m_signing.beginRegister("key.stopped"_L1, {{m_people->chosen(), {{u"since"_s, m_session.now().text()}}, {}}}, "threats"_L1, "a-pin-was-seen-a-key-may-be-in-other-hands"_L1);
}

void PeoplePage::grant()
{
    Seed seed{session::nextAuthorisation(m_session.reg()).text(), {{u"from"_s, m_session.now().utcDate().toString(Qt::ISODate)}}, {}};
    if (!m_people->chosen().isEmpty())
        seed.body.set(u"person"_s, m_people->chosen());
    // The scope is seldom left open, so it is shown at once.
    seed.probe = {{u"kinds"_s, core::json::Array()}, {u"aircraft_types"_s, core::json::Array()}, {u"until"_s, QString()}};
    m_signing.beginRegister("authorisation.granted"_L1, {seed}, "signatures"_L1);
}

void PeoplePage::withdrawAuthorisation()
{
    if (!m_authorisations->chosen().isEmpty())
        m_signing.beginRegister("authorisation.withdrawn"_L1, {{m_authorisations->chosen(), {}, {}}}, "signatures"_L1);
}

void PeoplePage::registerTool()
{
    m_signing.beginRegister("tool.registered"_L1, {{{}, {}, {{u"range_min"_s, QString()}, {u"range_max"_s, QString()}, {u"unit"_s, QString()}, {u"graduation"_s, QString()}, {u"deviation"_s, QString()}}}}, "measuring"_L1);
}

void PeoplePage::calibrate()
{
    if (!m_tools->chosen().isEmpty())
        m_signing.beginRegister("tool.calibrated"_L1, {{m_tools->chosen(), {{u"on"_s, m_session.now().utcDate().toString(Qt::ISODate)}}, {}}}, "measuring"_L1);
}

void PeoplePage::doubtTool()
{
    const auto id = core::ToolId::parse(m_tools->chosen());
    const core::Tool *tool = id ? m_session.reg().tool(*id) : nullptr;
    if (!tool)
        return;
    // It was right when it was last calibrated, if nothing else is known.
    core::json::Object body;
    if (!tool->calibrations.empty())
        body.set(u"after"_s, tool->calibrations.back().on.toString(Qt::ISODate));
    m_signing.beginRegister("tool.doubted"_L1, {{tool->id.text(), body, {}}}, "parts_and_tools"_L1, "tools"_L1);
}

void PeoplePage::withdrawTool()
{
    if (!m_tools->chosen().isEmpty())
        m_signing.beginRegister("tool.withdrawn"_L1, {{m_tools->chosen(), {}, {}}}, "measuring"_L1);
}

} // namespace desktop
