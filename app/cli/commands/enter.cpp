// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFile>

#include <cstdio>
#include <map>
#include <utility>

#include "app/cli/drafts_file.hpp"
#include "app/cli/opened.hpp"
#include "app/cli/secrets.hpp"
#include "app/cli/tell.hpp"
#include "app/session/rehearsal.hpp"
#include "core/acts/act.hpp"
#include "core/value/error_words.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

core::Result<QByteArray> bytesOf(const QString &path)
{
    QFile file(path);
    const bool isOpen = path == u"-" ? file.open(stdin, QIODevice::ReadOnly) : file.open(QIODevice::ReadOnly);
    if (!isOpen)
        return core::failure(core::ErrorCode::Io, tr("%1 cannot be read: %2").arg(path, file.errorString()));
    return file.readAll();
}

bool isForRegister(const core::Draft &draft)
{
    const core::Act *act = core::findAct(draft.kind);
    return act && act->ledger == core::LedgerSort::Register;
}

/// What became of each line, for the answer.
class Outcomes {
public:
    /// Told before what became of the line.
    void worked(const core::Act &act, const core::measure::Working &working)
    {
        m_working = act.cautions() + core::measure::linesOf(working);
        m_working << core::measure::dataGoverns();
    }
    void admitted(const DraftLine &line, const core::Entry *entry)
    {
        Object object = objectOf(line, true);
        if (entry) {
            object.set(u"ledger"_s, entry->said.ledger.text());
            object.set(u"seq"_s, entry->said.seq);
            object.set(u"hash"_s, entry->hash.hex());
        }
        m_json.emplace_back(std::move(object));
        m_text << tr("line %1: %2 %3: %4").arg(line.row).arg(line.draft.kind, line.draft.subject.value_or(QString()), entry ? tr("entry %1").arg(entry->said.seq) : tr("would be admitted"));
        for (const QString &step : std::exchange(m_working, {}))
            m_text << u"  "_s + step;
    }
    void refused(const DraftLine &line, const core::Refusals &refusals)
    {
        Object object = objectOf(line, false);
        object.set(u"refusals"_s, refusalsJson(refusals));
        m_json.emplace_back(std::move(object));
        m_trouble << tr("line %1: %2 %3: refused").arg(line.row).arg(line.draft.kind, line.draft.subject.value_or(QString())) << refusalsText(refusals);
        for (const QString &step : std::exchange(m_working, {}))
            m_trouble << u"  "_s + step;
        ++m_refused;
    }
    /// The world said no: nothing after this line was tried.
    void stopped(const DraftLine &line, const core::Error &error)
    {
        m_stop = error;
        m_trouble << tr("line %1: %2\nNothing from this line on was entered.").arg(line.row).arg(core::errorInWords(error));
    }
    Answer answer() &&
    {
        Object json{{u"lines"_s, std::move(m_json)}, {u"refused"_s, m_refused}};
        if (m_stop)
            json.set(u"error"_s, errorJson(*m_stop));
        const Exit exit = m_stop ? exitOf(m_stop->code) : m_refused ? Exit::No : Exit::Good;
        return {exit, m_text.join(u'\n'), std::move(json), m_trouble.join(u'\n')};
    }

private:
    Object objectOf(const DraftLine &line, bool admitted) const
    {
        Object object{{u"line"_s, line.row}, {u"kind"_s, line.draft.kind}, {u"subject"_s, line.draft.subject.value_or(QString())}, {u"admitted"_s, admitted}};
        if (!m_working.isEmpty())
            object.set(u"working"_s, core::json::arrayOf({m_working.begin(), m_working.end()}));
        return object;
    }
    QStringList m_working; ///< of the line that comes next
    Array m_json;
    QStringList m_text;
    QStringList m_trouble;
    qint64 m_refused = 0;
    std::optional<core::Error> m_stop;
};

/// Signs line by line; each author's key is unlocked once, and not before one of their drafts was admitted.
class Entering {
public:
    Entering(session::Session &session, const Secrets &secrets) : m_session(session), m_secrets(secrets) {}

    session::Signed enter(const core::Draft &draft)
    {
        const bool opens = draft.kind == u"job.opened";
        const auto ledger = isForRegister(draft) ? m_session.reg().ledger : opens ? session::Session::newLedgerId() : m_session.job();
        if (!ledger)
            return tl::unexpected(session::NotSigned{{core::ErrorCode::BadInput, tr("It is not clear which ledger this belongs in. Open a job first, or name one with --job.")}, {}});
        auto entries = m_session.sign(*ledger, {draft}, [&] { return keyOf(draft.author); });
        if (entries && opens) {
            if (const auto opened = m_session.openJob(*ledger); !opened)
                return tl::unexpected(session::NotSigned{opened.error(), {}});
        }
        return entries;
    }

private:
    core::Result<core::SigningKey> keyOf(const core::PersonId &person)
    {
        if (const auto at = m_keys.find(person); at != m_keys.end())
            return at->second;
        const auto secret = m_secrets.of(person);
        auto key = secret ? m_session.unlock({person, *secret}) : core::failure(secret.error());
        if (key)
            m_keys.insert({person, *key});
        return key;
    }
    session::Session &m_session;
    const Secrets &m_secrets;
    std::map<core::PersonId, core::SigningKey> m_keys;
};

Answer rehearse(const session::Session &session, const std::vector<DraftLine> &lines)
{
    session::Rehearsal rehearsal(session);
    Outcomes outcomes;
    for (const DraftLine &line : lines) {
        if (const auto missing = session.missingAttachment({line.draft})) {
            outcomes.stopped(line, *missing);
            break;
        }
        if (const auto working = rehearsal.workingOf(line.draft))
            outcomes.worked(*core::findAct(line.draft.kind), *working);
        if (const auto refusals = rehearsal.take(line.draft); !refusals.empty())
            outcomes.refused(line, refusals);
        else
            outcomes.admitted(line, nullptr);
    }
    return std::move(outcomes).answer();
}

Answer enterAll(session::Session &session, const Secrets &secrets, const std::vector<DraftLine> &lines)
{
    Entering entering(session, secrets);
    Outcomes outcomes;
    for (const DraftLine &line : lines) {
        const auto entries = entering.enter(line.draft);
        if (entries) {
            outcomes.admitted(line, &entries->front());
        } else if (!entries.error().refusals.empty()) {
            outcomes.refused(line, entries.error().refusals.front().second);
        } else {
            outcomes.stopped(line, entries.error().error);
            break;
        }
    }
    return std::move(outcomes).answer();
}

Answer faultsIn(const std::vector<core::Error> &faults)
{
    QStringList lines;
    Array json;
    for (const core::Error &fault : faults) {
        lines << core::errorInWords(fault);
        json.emplace_back(errorJson(fault));
    }
    lines << tr("Nothing was entered.");
    return {Exit::Misused, {}, {{u"lines"_s, Array()}, {u"faults"_s, std::move(json)}}, lines.join(u'\n')};
}

/// A job must be open only for drafts that belong in one and open none themselves.
bool needsJob(const std::vector<DraftLine> &lines)
{
    for (const DraftLine &line : lines) {
        if (line.draft.kind == u"job.opened")
            return false;
        if (!isForRegister(line.draft))
            return true;
    }
    return false;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const QString path = arguments.has(u"drafts"_s) ? arguments.text(u"drafts"_s) : u"-"_s;
    const auto bytes = bytesOf(path);
    if (!bytes)
        return core::failure(bytes.error());
    const auto lines = readDrafts(*bytes, path);
    if (!lines)
        return faultsIn(lines.error());
    const auto secrets = Secrets::of(arguments);
    if (!secrets)
        return core::failure(secrets.error());
    const bool dryRun = arguments.has(u"dry-run"_s);
    auto opened = openStore(arguments, context, dryRun ? db::Access::ReadOnly : db::Access::ReadWrite);
    if (!opened)
        return core::failure(opened.error());
    if (needsJob(*lines) || arguments.has(u"job"_s)) {
        if (const auto job = openNamedJob(*opened->session, arguments.textIfGiven(u"job"_s)); !job)
            return core::failure(job.error());
    }
    return dryRun ? rehearse(*opened->session, *lines) : enterAll(*opened->session, *secrets, *lines);
}

} // namespace

Command enterCommand()
{
    return {"enter"_L1,
            QT_TRANSLATE_NOOP("Cli", "Enter drafts, one JSON object a line: author, kind, subject, body. Each is admitted or refused with its rule."),
            {storeOption(), position("drafts"_L1, "DRAFTS", QT_TRANSLATE_NOOP("Cli", "The file of drafts; the standard input when left out or -."), Given::MayBe),
             jobOption(), pinFileOption(), flag("dry-run"_L1, QT_TRANSLATE_NOOP("Cli", "Ask the rules and show what is worked out; sign nothing."))},
            Fonts::NotNeeded,
            &run};
}

} // namespace cli
