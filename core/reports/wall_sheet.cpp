// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QStringList>

#include <algorithm>

#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/reports/open_items.hpp"
#include "core/reports/sheet_parts.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;
using namespace sheets;

bool isToTorque(const json::Object &open)
{
    const std::vector<QString> missing = open.texts(u"missing");
    return std::find(missing.begin(), missing.end(), u"torque"_s) != missing.end();
}

/// In the words of somebody who walks past and sees it so.
QString stateOf(const json::Object &open)
{
    if (open.contains(u"sent"))
        return inWords(QT_TRANSLATE_NOOP("Sheet", "SENT AWAY, not taken on"));
    const QString stage = open.text(u"stage");
    if (stage == stageName(Stage::Disconnected))
        return inWords(QT_TRANSLATE_NOOP("Sheet", "OFF"));
    if (stage == stageName(Stage::Secured))
        return inWords(QT_TRANSLATE_NOOP("Sheet", "TO INSPECT"));
    if (stage != stageName(Stage::Reconnected))
        return stage == stageName(Stage::Inspected) ? inWords(QT_TRANSLATE_NOOP("Sheet", "INSPECTED, but")) : inWords(QT_TRANSLATE_NOOP("Sheet", "CONNECTED, but"));
    return isToTorque(open) ? inWords(QT_TRANSLATE_NOOP("Sheet", "BACK, NOT TORQUED")) : inWords(QT_TRANSLATE_NOOP("Sheet", "BACK, NOT SECURED"));
}

/// Its id, and what makes it more than its state says: `E12 (torqued 2 of 4, trial fit)`.
QString whatOf(const json::Object &open)
{
    QStringList more;
    if (open.contains(u"torqued"))
        more << inWords(QT_TRANSLATE_NOOP("Sheet", "torqued %1 of %2")).arg(open.integer(u"torqued").value_or(0)).arg(open.integer(u"of").value_or(0));
    if (open.contains(u"attached"))
        more << inWords(QT_TRANSLATE_NOOP("Sheet", "still attached: %1")).arg(open.text(u"attached"));
    for (const QString &condition : open.texts(u"conditions"))
        more << condition;
    if (open.contains(u"stopped"))
        more << inWords(QT_TRANSLATE_NOOP("Sheet", "stopped: %1")).arg(open.text(u"stopped"));
    if (open.contains(u"details"))
        more << inWords(QT_TRANSLATE_NOOP("Sheet", "details to follow"));
    if (open.contains(u"revision"))
        more << inWords(QT_TRANSLATE_NOOP("Sheet", "row to look up"));
    const QString id = open.text(u"interface");
    return shortened(more.isEmpty() ? id : inWords(QT_TRANSLATE_NOOP("Sheet", "%1 (%2)")).arg(id, more.join(u", "_s)), mostOfAThing);
}

/// Within a zone what is off first, then what is back, then what waits for an inspector.
int rankOf(const json::Object &open)
{
    const Stage order[] = {Stage::Disconnected, Stage::Reconnected, Stage::Secured};
    const auto at = std::find_if(std::begin(order), std::end(order), [&](Stage stage) { return open.text(u"stage") == stageName(stage); });
    return static_cast<int>(at - std::begin(order)) * 2 + (isToTorque(open) ? 0 : 1);
}

SheetPart openPart(const JobState &job)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Open now, by zone")),
                   {inWords(QT_TRANSLATE_NOOP("Sheet", "How it stands")), inWords(QT_TRANSLATE_NOOP("Sheet", "Which"))},
                   {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "No interface is open."))};
    struct Ranked {
        int rank;
        SheetThing thing;
    };
    std::vector<Ranked> all;
    for (const json::Value &value : openAtHandover(job)) {
        const json::Object &open = *value.object();
        const auto id = InterfaceId::parse(open.text(u"interface"));
        if (const InterfaceState *item = id ? job.item(*id) : nullptr)
            all.push_back({rankOf(open), {zoneText(item->listed.zone), stateOf(open), whatOf(open)}});
    }
    std::stable_sort(all.begin(), all.end(), [](const Ranked &a, const Ranked &b) { return a.rank < b.rank; });
    for (Ranked &one : all)
        part.things.push_back(std::move(one.thing));
    sortByZone(part.things, job);
    return part;
}

SheetPart holdPart(const JobState &job)
{
    SheetPart part{inWords(QT_TRANSLATE_NOOP("Sheet", "Hold points not passed")),
                   {inWords(QT_TRANSLATE_NOOP("Sheet", "How it stands")), inWords(QT_TRANSLATE_NOOP("Sheet", "What is missing first"))},
                   {},
                   inWords(QT_TRANSLATE_NOOP("Sheet", "None waits."))};
    for (const HoldPoint &hold : job.holds) {
        const HoldStanding standing = standingOf(job, hold);
        if (standing.state == HoldState::Passed || !isStillAsked(job, hold))
            continue;
        const bool isVoid = standing.state == HoldState::Void;
        const QString missing = isVoid ? standing.undermined : standing.areConditionsMet() ? inWords(QT_TRANSLATE_NOOP("Sheet", "nothing: somebody with authority has to look and sign")) : standing.firstMissing();
        part.things.push_back({shortened(hold.title, mostOfATitle), isVoid ? inWords(QT_TRANSLATE_NOOP("Sheet", "VOID")) : inWords(QT_TRANSLATE_NOOP("Sheet", "NOT PASSED")), shortened(missing, mostOfAThing)});
    }
    return part;
}

/// What the sheet does not list and is open all the same: nobody shall take the sheet for all.
AuditFact alsoOpen(const JobState &job)
{
    const auto findings = std::count_if(job.findings.begin(), job.findings.end(), [](const Finding &finding) { return !finding.closed; });
    return {inWords(QT_TRANSLATE_NOOP("Sheet", "Also open")), inWords(QT_TRANSLATE_NOOP("Sheet", "findings: %1, tools out: %2")).arg(findings).arg(job.tools.out().size())};
}

} // namespace

OnePage wallSheet(const JobState &job, const Register &reg, Instant printed)
{
    OnePage page{inWords(QT_TRANSLATE_NOOP("Sheet", "Wall sheet: what is open")), factsOf(job, reg, printed), {openPart(job), holdPart(job), appliedPart(job, reg)}, footOf(job)};
    page.facts.push_back(alsoOpen(job));
    return page;
}

} // namespace core
