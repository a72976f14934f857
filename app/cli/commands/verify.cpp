// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/commands/all.hpp"

#include <QCoreApplication>
#include <QFileInfo>
#include <QProcessEnvironment>

#include "app/cli/known.hpp"
#include "app/cli/tell.hpp"
#include "app/cli/terminal_progress.hpp"
#include "app/logging/state_folder.hpp"
#include "app/package/verify_package.hpp"
#include "app/session/evidence.hpp"
#include "app/session/verdict_words.hpp"
#include "core/value/counted.hpp"
#include "resources/resources.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;
using core::json::Array;
using core::json::Object;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

/// One line, and nothing that a terminal would take for a command: what an unsound package says of itself is anybody's.
QString harmless(QString text)
{
    for (QChar &c : text) {
        if (c.category() == QChar::Other_Control || c.category() == QChar::Other_Format || c == QChar::LineSeparator || c == QChar::ParagraphSeparator)
            c = QChar::ReplacementCharacter;
    }
    return text;
}

/// Nothing of what there is not: a fault of a whole file is of no entry, and of no ledger.
QString placeText(const core::Fault &fault)
{
    if (fault.ledger == session::noLedger())
        return {};
    return fault.seq > 0 ? tr("ledger %1, entry %2: ").arg(fault.ledger.text()).arg(fault.seq) : tr("ledger %1: ").arg(fault.ledger.text());
}

QString faultsText(const session::VerifyReport &report)
{
    QStringList lines;
    for (const core::Fault &fault : report.faults)
        lines << placeText(fault) + tr("%1: %2").arg(fault.rule, harmless(fault.sentence));
    return lines.join(u'\n');
}

QString textOf(const session::VerifyReport &report, const session::Known &known)
{
    std::vector<std::vector<QString>> rows;
    for (const session::VerifyReport::Ledger &ledger : report.ledgers)
        rows.push_back({ledger.isRegister ? tr("register") : tr("job"), ledger.name, core::counted(ledger.entries, tr("1 entry"), tr("%1 entries")), tr("last hash %1").arg(ledger.head.hash.hex())});
    QString text = columns(rows) + u'\n' + tr("Attachments: %1").arg(report.attachments);
    if (const qint64 taken = report.entriesTakenFromBefore())
        text += u'\n' + tr("Verified on this computer before, and unchanged since: %1 of %2 entries").arg(taken).arg(report.entries());
    if (report.rootFingerprint)
        text += u'\n' + tr("Root fingerprint: %1").arg(report.rootFingerprint->hex());
    for (const QString &limit : session::verdictLimits(report, known))
        text += u'\n' + tr("Not said by this: %1").arg(harmless(limit));
    return session::verdictSentence(report) + u'\n' + text;
}

/// Who reads the exit code alone must not take for good what nobody compared.
Exit exitOf(const session::VerifyReport &report)
{
    if (!report.faults.empty())
        return Exit::No;
    return report.reservations.empty() ? Exit::Good : Exit::Partly;
}

Object jsonOf(const session::VerifyReport &report)
{
    Array faults;
    for (const core::Fault &fault : report.faults)
        faults.emplace_back(Object{{u"ledger"_s, fault.ledger.text()}, {u"seq"_s, fault.seq}, {u"rule"_s, fault.rule}, {u"sentence"_s, fault.sentence}});
    Array ledgers;
    for (const session::VerifyReport::Ledger &ledger : report.ledgers)
        ledgers.emplace_back(Object{{u"ledger"_s, ledger.name}, {u"register"_s, ledger.isRegister}, {u"entries"_s, ledger.entries}, {u"head"_s, ledger.head.hash.hex()}});
    return {{u"good"_s, exitOf(report) == Exit::Good}, {u"faults"_s, std::move(faults)}, {u"ledgers"_s, std::move(ledgers)}, {u"attachments"_s, report.attachments}, {u"entries"_s, report.entries()},
            {u"verified_before"_s, report.entriesTakenFromBefore()},
            {u"reservations"_s, core::json::arrayOf(report.reservations)},
            {u"root_fingerprint"_s, report.rootFingerprint ? report.rootFingerprint->hex() : QString()}};
}

QString verifiedFile() { return logging::stateFolder(QProcessEnvironment::systemEnvironment()) + u"/verified.json"_s; }

Answer answerOf(const session::VerifyReport &report, const session::Known &known)
{
    return {exitOf(report), textOf(report, known), jsonOf(report), faultsText(report)};
}

core::Result<Answer> verifyPackage(const QString &path, const session::Known &known)
{
    const auto kinds = resources::loadKinds();
    if (!kinds)
        return core::failure(kinds.error());
    const auto verdict = package::verifyPackage(path, known, *kinds, terminalProgress(tr("Verifying")));
    if (!verdict)
        return core::failure(verdict.error());
    Answer answer = answerOf(verdict->report, known);
    const package::About &about = verdict->about;
    if (about.ledger)
        answer.text = tr("Work order %1, %2, %3: %4").arg(harmless(about.workOrder), harmless(about.aircraft), harmless(about.title), about.isClosed ? tr("closed") : tr("NOT CLOSED")) + u'\n' + answer.text;
    answer.json.set(u"work_order"_s, about.workOrder);
    answer.json.set(u"closed"_s, about.isClosed);
    answer.json.set(u"head"_s, about.head.hash.hex());
    return answer;
}

core::Result<Answer> run(const Arguments &arguments, const Context &context)
{
    const auto known = knownIn(arguments);
    if (!known)
        return core::failure(known.error());
    const QString path = arguments.text(u"evidence"_s);
    if (QFileInfo(path).isDir())
        return core::failure(core::ErrorCode::NotAStore,
                             tr("%1 is a folder, and this command reads files. If it is a record package that was unpacked, verify the ZIP file that it came from; or check the folder by its own data/VERIFY.txt, or with "
                                "python3 data/verify.py . within it.").arg(path));
    if (package::looksLikePackage(path))
        return verifyPackage(path, *known);
    auto store = db::Store::open(path, db::Access::ReadOnly);
    if (!store)
        return core::failure(store.error());
    auto before = session::VerifiedBefore::load(verifiedFile());
    const auto report = session::verifyStore(**store, *known, terminalProgress(tr("Verifying")), arguments.has(u"since-last"_s) ? &before : nullptr);
    if (!report)
        return core::failure(report.error());
    if (!report->faults.empty())
        return answerOf(*report, *known);
    session::remember(before, *report, context.clock());
    const auto saved = before.save();
    return Answer{exitOf(*report), textOf(*report, *known), jsonOf(*report), saved ? QString() : saved.error().message};
}

} // namespace

Command verifyCommand()
{
    return {"verify"_L1,
            QT_TRANSLATE_NOOP("Cli", "Verify a store or a record package: chain, signatures, keys, clock, attachments, and whether each entry was allowed."),
            {position("evidence"_L1, "STORE|PACKAGE", QT_TRANSLATE_NOOP("Cli", "The store's file, or a record package.")), rootOption(), headOption(),
             flag("since-last"_L1, QT_TRANSLATE_NOOP("Cli", "Take entries that this computer verified before and that are unchanged to the last bit as verified; verify what is new. Without it everything is verified."))},
            Fonts::Needed,
            &run};
}

} // namespace cli
