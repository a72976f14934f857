// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/acts/voids.hpp"

#include <QCoreApplication>

#include <algorithm>

#include "core/acts/reopen.hpp"
#include "core/holds/standing.hpp"
#include "core/job/fold.hpp"

namespace core {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Voided", text); }

QString nameOf(const Listing &listed) { return listed.id.text() + u" ("_s + listed.name + u')'; }

bool isAnyGone(const std::vector<TorqueReading> &before, const std::vector<TorqueReading> &after)
{
    return std::any_of(before.begin(), before.end(), [&](const TorqueReading &one) {
        return std::none_of(after.begin(), after.end(), [&](const TorqueReading &other) { return other.mark.seq == one.mark.seq; });
    });
}

/// Whether that very test is the last of its id, and good.
bool isPassedIn(const JobState &job, const JobTest &test)
{
    const auto last = lastTests(job);
    const auto at = std::find_if(last.begin(), last.end(), [&](const JobTest *one) { return one->mark.seq == test.mark.seq; });
    return at != last.end() && (*at)->hasPassed && !whyVoid(job, **at);
}

class Comparison {
public:
    std::vector<Voided> found;

    void ofItem(const InterfaceState &before, const InterfaceState &after)
    {
        const Listing &listed = before.listed;
        addIf(before.restoration && (!after.restoration || after.restoration->mark.seq != before.restoration->mark.seq), listed, "joint"_L1, QT_TRANSLATE_NOOP("Voided", "%1: it is not joined as it was."));
        addIf(isAnyGone(before.torque, after.torque), listed, "torque"_L1, QT_TRANSLATE_NOOP("Voided", "%1: its torque is void."));
        addIf(before.bonding && !after.bonding, listed, "bonding"_L1, QT_TRANSLATE_NOOP("Voided", "%1: its bonding reading is void."));
        addIf(before.safetying && !after.safetying, listed, "safetying"_L1, QT_TRANSLATE_NOOP("Voided", "%1: its safetying is void."));
        addIf(before.leak && !after.leak, listed, "leak"_L1, QT_TRANSLATE_NOOP("Voided", "%1: its leak check is void."));
        addIf(std::any_of(before.acceptances.begin(), before.acceptances.end(), [&](const Mark &mark) { return std::find(after.acceptances.begin(), after.acceptances.end(), mark) == after.acceptances.end(); }), listed, "inspection"_L1, QT_TRANSLATE_NOOP("Voided", "%1: its inspection is void."));
        addIf(before.twinsVerified && !after.twinsVerified, listed, "twins"_L1, QT_TRANSLATE_NOOP("Voided", "%1: it has to be verified against its twin again."));
    }
    void ofTest(const JobState &before, const JobState &after, const JobTest &test)
    {
        if (test.hasPassed && !whyVoid(before, test) && !isPassedIn(after, test))
            found.push_back({test.id.text(), "test"_L1, tr(QT_TRANSLATE_NOOP("Voided", "The %1 of %2 (%3) covered it and is void.")).arg(test.what, test.name, test.id.text())});
    }
    void ofHold(const JobState &before, const JobState &after, const HoldPoint &hold)
    {
        const HoldPoint *later = after.hold(hold.id);
        if (later && standingOf(before, hold).state == HoldState::Passed && standingOf(after, *later).state != HoldState::Passed)
            found.push_back({hold.id.text(), "hold"_L1, tr(QT_TRANSLATE_NOOP("Voided", "The hold point %1 (%2) has to be passed again.")).arg(hold.id.text(), hold.title)});
    }

private:
    void addIf(bool isGone, const Listing &listed, QLatin1String what, const char *sentence)
    {
        if (isGone)
            found.push_back({listed.id.text(), what, tr(sentence).arg(nameOf(listed))});
    }
};

} // namespace

std::vector<Voided> whatWasVoided(const JobState &before, const JobState &after)
{
    Comparison comparison;
    for (const InterfaceState &item : before.items) {
        if (const InterfaceState *later = after.item(item.listed.id))
            comparison.ofItem(item, *later);
    }
    for (const JobTest *test : lastTests(before))
        comparison.ofTest(before, after, *test);
    for (const HoldPoint &hold : before.holds)
        comparison.ofHold(before, after, hold);
    return comparison.found;
}

std::vector<Voided> whatDisturbingVoids(const JobState &job, const InterfaceId &id)
{
    const InterfaceState *item = job.item(id);
    if (!item || !item->restoration)
        return {};
    JobState after = job;
    const Mark &last = item->restoration->mark;
    disturb(after, id, {static_cast<qint64>(job.lines.size()) + 1, last.by, job.lastAt.value_or(last.at)});
    std::vector<Voided> voided = whatWasVoided(job, after);
    std::stable_partition(voided.begin(), voided.end(), [&](const Voided &one) { return one.subject == id.text(); });
    return voided;
}

std::map<qint64, std::vector<Voided>> voidedByDisturbing(const Series<Statement> &said)
{
    std::map<qint64, std::vector<Voided>> voided;
    const auto isDisturbance = [](const Statement &one) { return one.kind == u"interface.disturbed"; };
    if (std::none_of(said.begin(), said.end(), isDisturbance))
        return voided;
    JobFold fold;
    for (const Statement &one : said) {
        if (!isDisturbance(one)) {
            fold.take(one, {});
            continue;
        }
        const JobState before = fold.state();
        fold.take(one, {});
        voided.emplace(one.seq, whatWasVoided(before, fold.state()));
    }
    return voided;
}

} // namespace core
