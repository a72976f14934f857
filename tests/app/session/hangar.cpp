// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/session/hangar.hpp"

using namespace Qt::StringLiterals;
using core::json::Object;

namespace {

const QString everySecret = u"-secret"_s;

session::NewPerson newPerson(const char *id)
{
    const QString text = QString::fromLatin1(id);
    return {person(id), text.toUpper(), text + everySecret, u"Seen"_s};
}

} // namespace

core::PersonId person(const char *id) { return *core::PersonId::parse(QString::fromLatin1(id)); }

session::Signer signer(const char *id) { return {person(id), QString::fromLatin1(id) + everySecret}; }

core::Draft draft(const char *author, const QString &kind, const std::optional<QString> &subject, Object body)
{
    return {person(author), core::Instant::fromMilliseconds(0), kind, subject, std::move(body)};
}

core::Draft undone(const char *author, const QString &item, const QString &tag)
{
    return draft(author, u"interface.disconnected"_s, item, {{u"tag"_s, tag}, {u"blanks_fitted"_s, 0}, {u"as_found"_s, u"sound"_s}});
}

core::Draft openedBy(const char *lead)
{
    const QString id = QString::fromLatin1(lead);
    return draft(lead, u"job.opened"_s, std::nullopt,
                 {{u"title"_s, u"Engine change"_s}, {u"work_order"_s, u"WO-1"_s}, {u"aircraft"_s, u"No. 07"_s}, {u"aircraft_type"_s, u"Ostrel 40F"_s},
                  {u"maintenance_data"_s, u"Manual"_s}, {u"revision"_s, u"14"_s}, {u"unit"_s, u"Engine"_s}, {u"outgoing_serial"_s, u"A"_s},
                  {u"incoming_serial"_s, u"B"_s}, {u"lead"_s, id}, {u"crew"_s, core::json::arrayOf({id, u"tech"_s})},
                  {u"zones"_s, core::json::Array{core::json::Value(Object{{u"name"_s, u"Left"_s}})}}});
}

QStringList rulesOf(const session::NotSigned &no)
{
    QStringList rules;
    for (const auto &[index, refusals] : no.refusals) {
        for (const core::Refusal &refusal : refusals)
            rules << QString::number(index) + u' ' + refusal.rule;
    }
    return rules;
}

Hangar::Hangar() : m_now(*core::Instant::parseLedger(u"2026-03-02T08:00:00.000Z"))
{
    auto made = db::Store::create(path());
    if (!made) {
        m_trouble = made.error().message;
        return;
    }
    m_store = *std::move(made);
    m_session = std::make_unique<session::Session>(*m_store, clock(), core::leastCost);
    m_trouble = makePeople();
}

QString Hangar::makePeople()
{
    if (const auto founded = session::found(*m_session, u"Hangar"_s, newPerson("root")); !founded)
        return founded.error().error.message;
    for (const char *id : {"lead", "tech"}) {
        if (const auto enrolled = session::enrol(*m_session, newPerson(id), signer("root")); !enrolled)
            return enrolled.error().error.message;
    }
    const std::pair<const char *, core::Authority> grants[] = {{"lead", core::Authority::Lead}, {"lead", core::Authority::Work}, {"tech", core::Authority::Work}};
    for (const auto &[id, authority] : grants) {
        const session::Grant grant{.id = session::nextAuthorisation(m_session->reg()), .person = person(id), .authority = authority, .kinds = {}, .aircraftTypes = {},
                                   .from = QDate(2026, 1, 1), .until = {}, .reference = u"Letter"_s};
        if (const auto granted = m_session->sign(*m_session->reg().ledger, {session::grantDraft(person("root"), grant)}, signer("root")); !granted)
            return granted.error().error.message;
    }
    return {};
}

session::Session &Hangar::another()
{
    auto store = db::Store::open(path(), db::Access::ReadWrite);
    Q_ASSERT(store);
    auto session = std::make_unique<session::Session>(**store, clock(), core::leastCost);
    m_others.push_back({*std::move(store), std::move(session)});
    const auto read = m_others.back().session->refresh();
    Q_ASSERT(read);
    return *m_others.back().session;
}

QString Hangar::openJob()
{
    if (!m_trouble.isEmpty())
        return m_trouble;
    const auto opened = m_session->newJob(openedBy("lead"), signer("lead"));
    if (!opened)
        return opened.error().error.message;
    m_job = opened->front().said.ledger;
    std::vector<core::Draft> list;
    for (const QString &id : {u"E1"_s, u"E2"_s})
        list.push_back(draft("lead", u"interface.listed"_s, id, {{u"name"_s, u"Clamp"_s}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}));
    if (const auto listed = m_session->sign(*m_job, list, signer("lead")); !listed)
        return listed.error().error.message;
    const auto open = m_session->openJob(*m_job);
    return open ? QString() : open.error().message;
}
