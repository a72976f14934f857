// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/session/verdict_words.hpp"

#include <QCoreApplication>
#include <QSet>

#include <algorithm>

namespace session {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Verdict", text); }

/// Whether the fault is that what was signed is not what is there; the others are that it was not allowed.
bool isAboutBytes(const core::Fault &fault)
{
    const QString family = fault.rule.section(u'.', 0, 0);
    const bool isOfRules = fault.rule == u"ledger.clock" || fault.rule == u"register.none";
    return !isOfRules && (family == u"ledger" || family == u"package" || family == u"attachment" || family == u"store" || fault.rule == u"register.root");
}

} // namespace

QString verdictSentence(const VerifyReport &report)
{
    const auto bytes = std::count_if(report.faults.begin(), report.faults.end(), &isAboutBytes);
    if (bytes > 0)
        return tr("It does not hold: something was changed, removed or put in. Faults: %1.").arg(report.faults.size());
    if (!report.faults.empty()) {
        QSet<std::pair<QString, qint64>> entries;
        for (const core::Fault &fault : report.faults)
            entries.insert({fault.ledger.text(), fault.seq});
        return tr("All of it is as it was signed, but entries were not allowed, as the rules of this program have it. Entries: %1.").arg(entries.size());
    }
    if (!report.reservations.empty())
        return tr("Everything that was signed is as it was signed, and each entry was allowed; not everything beside it could be compared here (entries: %1, attachments: %2).").arg(report.entries()).arg(report.attachments);
    return tr("It holds: everything is as it was signed, and each entry was allowed (entries: %1, attachments: %2).").arg(report.entries()).arg(report.attachments);
}

QStringList verdictLimits(const VerifyReport &report, const Known &known)
{
    QStringList limits(report.reservations.begin(), report.reservations.end());
    if (!known.rootFingerprint)
        limits << tr("Nobody said which root it must hang from: compare the fingerprint with the one that the organisation publishes.");
    if (known.entries.empty())
        limits << tr("No hash was given that must be in it: whether its end was cut off cannot be told without one, from a page that was printed earlier, say.");
    return limits;
}

QString placeInWords(const core::Fault &fault, const VerifyReport &report)
{
    const auto at = std::find_if(report.ledgers.begin(), report.ledgers.end(), [&](const VerifyReport::Ledger &ledger) { return ledger.name == fault.ledger.text(); });
    const QString where = at == report.ledgers.end() ? tr("the whole") : at->isRegister ? tr("register") : tr("job %1").arg(at->name.first(std::min<qsizetype>(at->name.size(), 8)));
    return fault.seq > 0 ? tr("%1, entry %2").arg(where).arg(fault.seq) : where;
}

} // namespace session
