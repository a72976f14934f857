// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <random>

#include <rapidcheck.h>

#include "core/acts/act.hpp"
#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/job/twins.hpp"
#include "core/requirements/catalogue.hpp"
#include "core/requirements/torque.hpp"
#include "tests/support/index_of.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// A line that is tightened in two passes and crosswise, and then checked for leaks: what the world of the stories does not have.
const QString line = u"Ana lists L1 requirements=torque,leak torque_fasteners=3 torque_min=20 torque_max=25 torque_unit=N·m torque_passes=50,100 torque_order=2,3,1 leak_rate=1_mL/min"_s;

/// Look-alikes with their halves, nuts and pins that are counted, and two gates: before the mounts, and before the closure.
const QString surroundings = uR"(Ana lists W1 twin_group=sense aircraft_half=P7 unit_half=J7 requirements=mate; Ana lists W2 twin_group=sense aircraft_half=P8 unit_half=J8 requirements=mate hardware=[{"part":"N-6","quantity":2},{"part":"CP-2","quantity":1,"new":true}]; )"
                             uR"(Ana sets free authority=work conditions=[{"what":"interfaces","stage":"disconnected","interfaces":["K1"],"until":"whole"}] gates=[{"act":"interface.disconnected","kinds":["mount"]}]; )"
                             uR"(Ana sets whole conditions=[{"what":"interfaces","stage":"inspected"}] gates=[{"act":"job.closed"}])"_s;

/// One long history told from a seed. A small cast works on few items, so that the same hands meet the same joint again and
/// again (Ben may work and inspect), and mostly does what comes next, so that histories come far; else anything.
class Teller {
public:
    explicit Teller(unsigned seed) : m_random(seed)
    {
        m_people = {u"Ben"_s, anyOf({"Ana", "Ben", "Dee"}), anyOf({"Ana", "Dee", "Max"})};
        m_items = {anyOf({"D1", "B1", "F1", "M1", "A1", "K1", "L1", "X1", "W1"}), anyOf({"B1", "F1", "F2", "M1", "D2", "K1", "W2"})};
    }

    /// `look` is called after every sentence.
    template <class Look>
    Story tell(Look look)
    {
        Story story(line + u"; "_s + surroundings);
        const int length = number(150);
        for (int i = 0; i < length; ++i) {
            story.tell(sentence(story));
            look(story);
        }
        return story;
    }

private:
    int number(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_random); }
    QString anyOf(std::vector<const char *> words) { return QString::fromLatin1(words[static_cast<std::size_t>(number(static_cast<int>(words.size())))]); }
    QString oneOf(const std::vector<QString> &words) { return words[static_cast<std::size_t>(number(static_cast<int>(words.size())))]; }

    QString next(const Story &story, const QString &item)
    {
        const QString stage = story.stage(item);
        if (stage == u"disconnected")
            return u" reconnects "_s + item + anyOf({"", "", " helpers=Cho", " helpers=Eva"});
        if (stage == u"disconnected" && number(4) == 0)
            return u" passes free"_s;
        if (stage == u"secured" && item.startsWith(u'W') && number(2) == 0)
            return u" verifies "_s + item;
        if (stage == u"reconnected")
            return anyOf({" torques ", " torques ", " measures ", " safeties ", " checks "}) + item;
        if (stage == u"secured")
            return u" accepts "_s + item;
        return anyOf({" disconnects ", " disturbs ", " measures ", " safeties "}) + item;
    }

    /// What surrounds the connections: conditions, break points, what was on no list or never touched, tools, tags, isolations.
    QString around(const QString &item)
    {
        const QString condition = u" condition="_s + anyOf({"positioned", "hand-tight", "temporary", "slave_hardware", "damaged", "cannot_verify"});
        const std::vector<QString> said = {u" states "_s + item + condition, u" settles "_s + item + condition, u" stops "_s + item, u" resumes "_s + item, u" logs X1"_s, u" details X1"_s, u" finds-undisturbed "_s + item,
                                           u" finds-inapplicable "_s + item, u" agrees "_s + item, u" finds-attached "_s + item, u" frees "_s + item, u" confirms-free "_s + item, u" applies T1"_s, u" removes T1"_s,
                                           u" issues RT1"_s, u" returns RT1"_s, u" misses RT1"_s, u" counts"_s, u" issues-tags"_s, u" returns-tags"_s, u" replaces-tag "_s + item,
                                           u" passes free"_s, u" passes whole"_s, u" verifies "_s + item, u" relists "_s + item, u" relists "_s + item + u" inspections=2"_s, u" relists "_s + item + limits(item), u" relists "_s + item + limits(item), u" revises revision=%1 interfaces=%2"_s.arg(QString::number(number(20)), item),
                                           u" misses-blank "_s + item, u" exchanges-tag "_s + item + u" other=K1"_s, u" doubts"_s};
        return oneOf(said);
    }

    /// Another limit of what the item has one of: narrower and wider.
    QString limits(const QString &item)
    {
        if (item == u"B1")
            return anyOf({" bonding_max=2", " bonding_max=1", " bonding_max=4"});
        if (item.startsWith(u'D') || item.startsWith(u'F') || item.startsWith(u'M') || item == u"L1")
            return anyOf({" torque_max=24", " torque_min=22", " torque_max=30", " torque_fasteners=1", " torque_min=10"});
        return anyOf({" kind=drain", " critical=yes", " safetying=lockwire requirements=safetying", " requirements=", " access=K1", " independence_group=left", " twin_group=sense"});
    }

    QString sentence(const Story &story)
    {
        const QString item = oneOf(m_items);
        const int dice = number(11);
        if (dice == 10)
            return anyOf({"Ana", "Ben", "Eva", "Uma", "Cho"}) + around(item);
        QString what = next(story, item);
        if (dice >= 9)
            what = u" strikes entry=%1"_s.arg(number(static_cast<int>(story.job().lines.size())) + 1);
        else if (dice >= 6)
            what = anyOf({" disconnects ", " reconnects ", " torques ", " measures ", " safeties ", " checks ", " accepts ", " rejects ", " disturbs ", " finds-open ", " takes-over "}) + item;
        const bool inspects = what.startsWith(u" accepts") || what.startsWith(u" rejects");
        return (inspects ? anyOf({"Ben", "Cho", "Eva", "Uma"}) : oneOf(m_people)) + what;
    }

    std::mt19937 m_random;
    std::vector<QString> m_people;
    std::vector<QString> m_items;
};

Story anyStory()
{
    return Teller(*rc::gen::arbitrary<unsigned>()).tell([](const Story &) {});
}

/// Restores and inspects whatever is left, so that closure is reached as well.
void finish(Story &story)
{
    for (const core::LooseEnd &end : core::looseEnds(story.job(), story.reg())) {
        if (end.rule == u"loose.finding")
            story.tell(u"Uma clears "_s + end.subject);
    }
    story.tell(u"Eva details X1"_s);
    for (const core::LooseEnd &end : core::looseEnds(story.job(), story.reg())) {
        if (end.rule == u"loose.temporary")
            story.tell(story.job().temporary(*core::TemporaryId::parse(end.subject))->owner.text() + u" removes "_s + end.subject);
        if (end.rule == u"loose.tool")
            story.tell(u"Ana returns "_s + end.subject);
    }
    for (const char *id : {"A1", "D1", "C1", "B1", "F1", "F2", "D2", "K1", "L1", "X1", "W1", "W2", "M1", "M2"}) {
        const QString item = QString::fromLatin1(id);
        story.tell(u"Ana passes free"_s);
        story.tell(u"Ana relists "_s + item);
        story.tell(u"Ana resumes "_s + item);
        story.tell(u"Ana frees "_s + item);
        for (const char *condition : {"temporary", "slave_hardware", "damaged", "cannot_verify"})
            story.tell(u"Ana settles "_s + item + u" condition="_s + QString::fromLatin1(condition));
        if (story.stage(item) == u"connected" || story.stage(item) == u"reconnected")
            story.tell(u"Ana disconnects "_s + item);
    }
    for (const core::InterfaceState &item : core::Series(story.job().items)) {
        if (item.left.undoing && !item.removal)
            story.tell(u"Uma finds-undisturbed "_s + item.listed.id.text());
    }
    for (const char *mount : {"M1", "M2"}) {
        if (story.stage(QString::fromLatin1(mount)) == u"connected")
            story.tell(u"Uma finds-undisturbed "_s + QString::fromLatin1(mount));
    }
    for (const char *id : {"W1", "W2"})
        story.tell(u"Ana reconnects "_s + QString::fromLatin1(id));
    for (const char *id : {"D2", "D1", "C1", "B1", "F1", "F2", "M1", "M2", "K1", "L1", "X1", "W1", "W2", "A1"}) {
        const QString item = QString::fromLatin1(id);
        for (const char *verb : {"reconnects ", "torques ", "torques ", "measures ", "safeties ", "checks "})
            story.tell(u"Ana "_s + QString::fromLatin1(verb) + item);
        story.tell(u"Uma verifies "_s + item);
        for (const char *who : {"Uma", "Eva", "Cho"})
            story.tell(QString::fromLatin1(who) + u" accepts "_s + item);
    }
    story.tell(u"Ana passes free"_s);
    story.tell(u"Ana passes whole"_s);
    story.tell(u"Ana returns-tags"_s);
}

/// What surrounds the connections and is still as it was for the work.
QString leftOver(const core::JobState &job)
{
    QStringList left;
    for (const core::TemporaryItem &item : job.temporaries) {
        if (!item.removed)
            left << item.id.text();
    }
    for (const core::TagBlock &block : job.tags.blocks) {
        if (!block.returned)
            left << core::blockText(block);
    }
    for (const core::JobTool *tool : job.tools.out())
        left << tool->marking.text();
    for (const core::InterfaceState &item : job.items) {
        for (const core::ConditionStated &stated : item.conditions)
            left << item.listed.id.text() + u' ' + core::inWordsOf(stated);
        if (item.stopped && item.stopped->seenBy.empty())
            left << item.listed.id.text() + u" stopped"_s;
        if (item.stillAttached)
            left << item.listed.id.text() + u" attached"_s;
        if (core::isWithoutDetails(item))
            left << item.listed.id.text() + u" without details"_s;
        if (item.toLookUp)
            left << item.listed.id.text() + u" to look up"_s;
        if (item.restoration && !item.twinsVerified && core::asksForTwinCheck(job, item))
            left << item.listed.id.text() + u" not read against its twin"_s;
        for (const core::HardwareBalance &one : item.restoration ? core::hardwareBalance(item.listed.hardware, item.removal->hardware, item.restoration->hardware) : std::vector<core::HardwareBalance>()) {
            if (!one.isAccountedFor() || !one.isComplete())
                left << item.listed.id.text() + u" hardware"_s;
        }
    }
    for (const core::HoldPoint &hold : job.holds) {
        if (core::standingOf(job, hold).state != core::HoldState::Passed)
            left << hold.id.text();
    }
    return left.join(u", "_s);
}

bool isInspectedByOthers(const core::InterfaceState &item)
{
    if (core::letAloneWith(item))
        return !item.removal;
    const auto byOther = [&](const core::Mark &mark) { return !item.actors.contains(mark.by); };
    return core::stageOf(item) == core::Stage::Inspected && std::all_of(item.acceptances.begin(), item.acceptances.end(), byOther);
}

/// Whoever is named in any entry as having worked on it: those that do not count any more too, for hands were there.
std::set<core::PersonId> everyHandOn(const Story &story, const core::InterfaceId &id)
{
    std::set<core::PersonId> hands;
    for (const core::Statement &one : story.fold().said()) {
        const core::Act *act = core::findAct(one.kind);
        if (one.subject != id.text() || !act || act->subject == core::SubjectSort::Nothing)
            continue;
        if (one.kind == u"interface.disturbed")
            hands.insert(core::PersonId::parse(one.body.text(u"disturbed_by")).value_or(one.author));
        if (act->meaning != "performed"_L1)
            continue;
        hands.insert(one.author);
        for (const core::PersonId &helper : core::peopleIn(one.body, u"helpers"))
            hands.insert(helper);
    }
    return hands;
}

/// Where an item was said to be undone, in whatever entry, somebody without a hand in it has looked.
bool isLookedAtByAnother(const Story &story, const core::InterfaceState &item)
{
    const std::set<core::PersonId> hands = everyHandOn(story, item.listed.id);
    const auto isAnother = [&](const core::Mark &mark) { return !hands.contains(mark.by); };
    const auto &said = story.fold().said();
    const bool wasUndone = std::any_of(said.begin(), said.end(), [&](const core::Statement &one) { return one.subject == item.listed.id.text() && (one.kind == u"interface.disconnected" || one.kind == u"interface.found_open" || one.kind == u"interface.unlisted"); });
    if (!wasUndone)
        return true;
    if (item.removal)
        return !item.acceptances.empty() && std::all_of(item.acceptances.begin(), item.acceptances.end(), isAnother);
    return (item.undisturbed && isAnother(*item.undisturbed)) || (item.notApplicable && item.notApplicable->agreed && isAnother(*item.notApplicable->agreed));
}

/// What stands was shown within what the list asks for now.
bool isWithinItsLimits(const core::InterfaceState &item)
{
    const auto &spec = item.listed.torque;
    for (const core::TorqueReading &reading : item.torque) {
        const bool isLast = spec && (spec->passes.empty() || reading.pass == static_cast<qint64>(spec->passes.size()));
        if (!spec || (isLast && !(reading.value >= spec->min && reading.value <= spec->max)))
            return false;
    }
    if (spec && item.restoration && core::asksFor(item.listed, "torque"_L1) && !core::torqueStepsLeft(item).empty())
        return false;
    return !item.bonding || !item.listed.bondingMax || item.bonding->value <= *item.listed.bondingMax;
}

/// What somebody does at one interface that rests on no other.
QString actOn(const QString &item, const QString &number)
{
    const int which = *rc::gen::inRange(0, 12);
    const QString who = *rc::gen::element(u"Ana"_s, u"Ben"_s, u"Dee"_s, u"Cho"_s, u"Eva"_s) + u' ';
    const std::vector<QString> acts = {u"disconnects %1 tag=%2"_s, u"reconnects %1"_s, u"torques %1"_s, u"measures %1"_s, u"safeties %1"_s, u"accepts %1"_s, u"rejects %1"_s, u"disturbs %1"_s,
                                       u"states %1 condition=cannot_verify"_s, u"settles %1 condition=cannot_verify"_s, u"stops %1"_s, u"states %1 condition=damaged finding=F%2"_s};
    return who + (acts[static_cast<std::size_t>(which)].contains(u"%2") ? acts[static_cast<std::size_t>(which)].arg(item, number) : acts[static_cast<std::size_t>(which)].arg(item));
}

/// What a person can see of a job, without the numbers and times of its entries.
QString outlookOf(const Story &story)
{
    QStringList lines = story.looseEnds().split(u'\n');
    lines.sort();
    for (const core::InterfaceState &item : story.job().items) {
        QStringList actors;
        for (const core::PersonId &actor : item.actors)
            actors << actor.text();
        lines << item.listed.id.text() + u' ' + core::stageName(core::stageOf(item)) + u' ' + actors.join(u',') + u' ' + QString::number(item.acceptances.size());
    }
    lines << QString::fromUtf8(core::json::canonical(core::json::Object{{u"open"_s, core::openAtHandover(story.job())}}));
    return lines.join(u'\n');
}

} // namespace

/// What must hold after any history whatever.
class TestHistories : public QObject {
    Q_OBJECT

private slots:
    void closureMeansThatEverythingIsInspectedByOthers()
    {
        int closed = 0;
        QVERIFY(rc::check("closure", [&closed] {
            Story story = anyStory();
            if (*rc::gen::arbitrary<bool>())
                finish(story);
            story.tell(u"Rae closes"_s);
            RC_ASSERT(story.job().closed.has_value() == story.refusals().empty());
            if (!story.job().closed)
                return;
            ++closed;
            for (const core::InterfaceState &item : story.job().items) {
                RC_ASSERT(isInspectedByOthers(item));
                RC_ASSERT(isLookedAtByAnother(story, item));
                RC_ASSERT(isWithinItsLimits(item));
            }
            RC_ASSERT(leftOver(story.job()).toStdString() == "");
            for (const core::Finding &finding : story.job().findings)
                RC_ASSERT(finding.closed.has_value());
        }));
        QVERIFY2(closed > 0, "no history reached closure, so nothing was shown");
    }

    void nobodyInTheActorSetStandsAsInspector()
    {
        qsizetype accepted = 0;
        const auto look = [&accepted](const Story &story) {
            for (const core::InterfaceState &item : story.job().items) {
                for (const core::Mark &mark : item.acceptances) {
                    ++accepted;
                    RC_ASSERT(!item.actors.contains(mark.by));
                }
            }
        };
        QVERIFY(rc::check("independence", [&look] {
            for (int history = 0; history < 4; ++history) // the deep ones are rare
                Teller(*rc::gen::arbitrary<unsigned>()).tell(look);
        }));
        QVERIFY2(accepted > 100, "the histories hardly ever came to an inspection, so nothing was shown");
    }

    void foldingAgainGivesTheSameState()
    {
        QVERIFY(rc::check("fold", [] {
            const Story story = anyStory();
            core::JobFold again;
            for (const core::Statement &said : story.fold().said())
                again.take(said, core::Digest::of(QByteArray::number(said.seq)));
            RC_ASSERT(again.state() == story.job());
        }));
    }

    void theIndexSaysWhatTheListSays()
    {
        QVERIFY(rc::check("index", [] {
            (void)Teller(*rc::gen::arbitrary<unsigned>()).tell([](const Story &story) { RC_ASSERT(story.job().index == story::indexOf(story.job())); });
        }));
    }

    void theIndexFollowsARowThatBecomesAnother()
    {
        Story story(surroundings);
        const auto told = [&story](const QString &sentence) {
            story.tell(sentence);
            return story.job().index == story::indexOf(story.job()) ? story.refusedBy() : u"the index is another"_s;
        };
        const core::InterfaceId inFront = *core::InterfaceId::parse(u"K1");
        const auto places = [&] { return std::pair(story.job().index.twins(u"sense"_s).size(), story.job().index.under(inFront).size()); };
        QCOMPARE(told(u"Ana lists W3 aircraft_half=P9 unit_half=J9 requirements=mate"_s), QString());
        const auto before = places();
        QCOMPARE(told(u"Ana relists W3 twin_group=sense aircraft_half=P9 unit_half=J9 requirements=mate access=K1"_s), QString());
        QCOMPARE(places(), std::pair(before.first + 1, before.second + 1));
    }

    /// The mounts wait for their gate, whatever else is done.
    void noMountIsUndoneBeforeItsGate()
    {
        int undone = 0;
        QVERIFY(rc::check("gate", [&undone] {
            Story story = anyStory();
            if (*rc::gen::arbitrary<bool>())
                finish(story);
            if (!story.job().hold(*core::HoldId::parse(u"free"))) // the lead may take it back as long as nothing is behind it
                return;
            for (const core::InterfaceState &mount : story.job().items) {
                if (mount.listed.kind != u"mount" || !mount.removal || mount.removal->foundOpen)
                    continue;
                ++undone;
                const auto &said = story.fold().said();
                const auto passed = std::any_of(said.begin(), said.end(), [&](const core::Statement &one) { return one.kind == u"hold.passed" && one.subject == u"free" && one.seq < mount.removal->mark.seq; });
                RC_ASSERT(passed);
            }
        }));
        QVERIFY2(undone > 0, "no mount was ever undone, so nothing was shown");
    }

    /// Two people work at two interfaces that have nothing to do with each other: who signs first makes no difference.
    void theOrderOfIndependentEntriesIsNothing()
    {
        int both = 0;
        QVERIFY(rc::check("order", [&both] {
            const Story base = anyStory();
            const auto pair = *rc::gen::element(std::pair(u"D1"_s, u"K1"_s), std::pair(u"B1"_s, u"C1"_s), std::pair(u"F1"_s, u"D1"_s), std::pair(u"K1"_s, u"B1"_s));
            const QString first = actOn(pair.first, u"901"_s);
            const QString second = actOn(pair.second, u"902"_s);
            const auto tell = [&](const QString &one, const QString &other) {
                Story story = base;
                story.tell(one);
                const QString refusedOne = story.refusedBy();
                story.tell(other);
                return std::tuple(refusedOne, story.refusedBy(), outlookOf(story));
            };
            const auto [a, b, ab] = tell(first, second);
            const auto [d, c, ba] = tell(second, first);
            RC_ASSERT(a.toStdString() == c.toStdString());
            RC_ASSERT(b.toStdString() == d.toStdString());
            RC_ASSERT(ab.toStdString() == ba.toStdString());
            both += a.isEmpty() && b.isEmpty() ? 1 : 0;
        }));
        QVERIFY2(both > 0, "no two acts were ever admitted together, so nothing was shown");
    }

    /// The items without what strikes leave behind: hands, counts, and that somebody has to look.
    static core::Series<core::InterfaceState> asSaid(core::Series<core::InterfaceState> items)
    {
        for (std::size_t at = 0; at < items.size(); ++at) {
            core::InterfaceState &item = items.edit(at);
            item.left = {};
            item.actors.clear();
            item.undisturbed.reset();
            item.notApplicable.reset();
        }
        return items;
    }

    void struckOrNeverSaidIsTheSame()
    {
        QVERIFY(rc::check("strike", [] {
            Story story = anyStory();
            story.tell(u"Ana disconnects K1"_s);
            RC_PRE(story.refusals().empty());
            const qint64 seq = story.fold().head().seq;
            const core::Series<core::InterfaceState> with = story.job().items;
            story.tell(u"Ana strikes entry=%1"_s.arg(seq));
            // Where an inspection would come back with it, the named level alone may.
            if (story.refusedBy() == u"strike.back")
                story.tell(u"Ove strikes entry=%1"_s.arg(seq));
            RC_ASSERT(story.refusals().empty());
            core::JobFold without;
            for (const core::Statement &said : story.fold().said()) {
                if (said.seq < seq)
                    without.take(said, core::Digest::of(QByteArray::number(said.seq)));
            }
            RC_ASSERT(asSaid(without.state().items) == asSaid(story.job().items));
            RC_ASSERT(story.item(u"K1"_s).left.undoing.has_value() || without.state().item(*core::InterfaceId::parse(u"K1"))->removal);
            RC_ASSERT(without.state().items != with);
        }));
    }
};

QTEST_GUILESS_MAIN(TestHistories)
#include "tst_histories.moc"
