// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <random>

#include "core/acts/act.hpp"
#include "core/job/linked.hpp"
#include "core/job/stage.hpp"
#include "core/job/untouched.hpp"
#include "tests/support/index_of.hpp"
#include "tests/support/story.hpp"
#include "tests/support/world.hpp"

using namespace Qt::StringLiterals;
using story::Story;

namespace {

/// Long histories of two jobs, told from a seed. Few people work on few items in both, and mostly do what leads on.
class Teller {
public:
    explicit Teller(unsigned seed) : m_random(seed) {}

    /// What is left to be done, for histories that should come to their end; somebody tries to close in the middle of it.
    std::vector<QString> ending()
    {
        std::vector<QString> told = {u"Ana links ledger=shop"_s, u"shop: Lee links ledger=here"_s};
        for (const char *id : {"C1", "K1", "Z1", "S1"}) {
            const QString item = QString::fromLatin1(id);
            const QString tag = QString::number(500 + ++m_tag);
            told.insert(told.end(), {u"shop: Lee takes-on "_s + item + u" from=here tag_instead="_s + tag, u"shop: Lee takes-on "_s + item + u" from=here"_s, u"Ana takes-on "_s + item + u" from=shop tag_instead="_s + tag, u"Ana takes-on "_s + item + u" from=shop"_s});
            for (const QString &in : {QString(), u"shop: "_s}) {
                const QString lead = in.isEmpty() ? u"Ana"_s : u"Lee"_s;
                told.insert(told.end(), {in + lead + u" reconnects "_s + item, in + u"Uma accepts "_s + item, in + u"Uma finds-undisturbed "_s + item});
            }
            told.push_back(number(2) == 0 ? u"Rae closes"_s : u"shop: Rae closes"_s);
        }
        told.insert(told.end(), {u"shop: Rae closes"_s, u"Rae closes"_s, u"shop: Rae closes"_s});
        return told;
    }

    QString sentence()
    {
        const bool inShop = number(2) == 0;
        const QString item = inShop ? oneOf({"S1", "C1", "K1", "Z1"}) : oneOf({"C1", "K1", "Z1", "K1"});
        const QString worker = inShop ? oneOf({"Max", "Dee", "Cho", "Lee"}) : oneOf({"Ana", "Ben", "Dee"});
        const QString prefix = inShop ? u"shop: "_s : QString();
        switch (number(12)) {
        case 0:
            return inShop ? u"shop: Lee links ledger=here"_s : u"Ana links ledger=shop"_s;
        case 1:
        case 2: return prefix + worker + u" sends "_s + item + (inShop ? u" to=here"_s : u" to=shop"_s);
        case 3:
        case 4: return prefix + worker + u" takes-on "_s + item + (inShop ? u" from=here tag_instead=%1"_s : u" from=shop tag_instead=%1"_s).arg(100 + ++m_tag);
        case 5: return prefix + worker + u" disconnects "_s + item;
        case 6:
        case 7: return prefix + worker + u" reconnects "_s + item;
        case 8:
        case 9: return prefix + oneOf({"Ben", "Cho", "Eva"}) + u" accepts "_s + item;
        case 10: return prefix + (number(3) == 0 ? u"Rae closes"_s : oneOf({"Ben", "Eva"}) + u" finds-undisturbed "_s + item);
        default: return prefix + worker + u" strikes entry=%1"_s.arg(number(inShop ? 20 : 40) + 1);
        }
    }

private:
    int number(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_random); }
    QString oneOf(std::vector<const char *> words) { return QString::fromLatin1(words[static_cast<std::size_t>(number(static_cast<int>(words.size())))]); }

    std::mt19937 m_random;
    int m_tag = 0;
};

/// What is not part of these histories is let alone from the beginning.
const QString before = u"Ana lists Z1; Ben finds-undisturbed D1; Ben finds-undisturbed B1; Ben finds-undisturbed F1; Ben finds-undisturbed F2; Ben finds-undisturbed M1; "
                       "Ben finds-undisturbed M2; Ben finds-undisturbed A1; Ben finds-undisturbed D2"_s;

/// Of the items in both jobs, the first that is neither restored and inspected nor let alone, where it was not sent on; empty when there is none.
QString notDone(const core::JobState &job)
{
    for (const core::InterfaceState &item : job.items) {
        if (!item.sent && core::stageOf(item) != core::Stage::Inspected && !core::letAloneWith(item))
            return item.listed.id.text();
    }
    return {};
}

/// Sent, and not on the other list.
QString onItsWay(const core::JobState &from, const core::JobState &to)
{
    for (const core::InterfaceState &item : from.items) {
        if (item.sent && !to.item(item.listed.id))
            return item.listed.id.text();
    }
    return {};
}

/// Whoever signed work on that item in this job, by its standing entries, not by its actor set.
bool workedOn(const core::JobState &job, const core::InterfaceId &id, const core::PersonId &person)
{
    return std::any_of(job.lines.begin(), job.lines.end(), [&](const core::Line &line) {
        const core::Act *act = core::findAct(line.kind);
        return line.standing == core::Standing::Stands && line.subject == id.text() && line.author == person && act->meaning == "performed"_L1;
    });
}

/// An item that was accepted by somebody who worked on it in either job; empty when there is none.
QString ownWorkIn(const core::JobState &job, const core::JobState &other)
{
    for (const core::InterfaceState &item : job.items) {
        for (const core::Mark &mark : item.acceptances) {
            if (workedOn(job, item.listed.id, mark.by) || workedOn(other, item.listed.id, mark.by))
                return item.listed.id.text();
        }
    }
    return {};
}

/// Work on an item after it was sent on from there.
QString workedOnAfterSending(const core::JobState &job)
{
    for (const core::InterfaceState &item : job.items) {
        for (const core::Line &line : job.lines) {
            const core::Act *act = core::findAct(line.kind);
            if (item.sent && line.seq > item.sent->mark.seq && line.standing == core::Standing::Stands && line.subject == item.listed.id.text() && act->subject == core::SubjectSort::Interface)
                return item.listed.id.text();
        }
    }
    return {};
}

} // namespace

/// Over long histories of two linked jobs: neither closes while the other has a loose end, nobody's own work is accepted by them in either,
/// nothing is worked on in two jobs, and what a job saw of the other is no part of what its ledger says.
class TestLinkedHistories : public QObject {
    Q_OBJECT

private slots:
    void neitherClosesAlone()
    {
        int closedBoth = 0, handedOn = 0;
        for (unsigned seed = 1; seed <= 250; ++seed) {
            Teller teller(seed);
            Story story(before);
            QCOMPARE(story.refusedBy(), QString());
            bool hereWas = false, shopWas = false;
            std::vector<QString> sentences;
            for (int i = 0; i < 100; ++i)
                sentences.push_back(teller.sentence());
            for (const QString &last : teller.ending())
                sentences.push_back(last);
            for (std::size_t i = 0; i < sentences.size(); ++i) {
                const QString &told = sentences[i];
                story.tell(told);
                const core::JobState here = story.job(QString());
                const core::JobState shop = story.job(u"shop"_s);
                const bool areLinked = here.ledger && core::isLinkedWith(here, story::ledgerOf(u"shop"_s)) && core::isLinkedWith(shop, story::ledgerOf());
                const QString where = u"seed %1, sentence %2: %3"_s.arg(seed).arg(i).arg(told);
                if (areLinked && (bool(here.closed) != hereWas || bool(shop.closed) != shopWas)) {
                    QVERIFY2(notDone(here).isEmpty() && notDone(shop).isEmpty(), qPrintable(where));
                    QVERIFY2(onItsWay(here, shop).isEmpty() && onItsWay(shop, here).isEmpty(), qPrintable(where));
                    QVERIFY2(ownWorkIn(here, shop).isEmpty() && ownWorkIn(shop, here).isEmpty(), qPrintable(where));
                }
                QVERIFY2(here.index == story::indexOf(here) && shop.index == story::indexOf(shop), qPrintable(where));
                QVERIFY2(workedOnAfterSending(here).isEmpty() && workedOnAfterSending(shop).isEmpty(), qPrintable(where));
                hereWas = here.closed.has_value();
                shopWas = shop.closed.has_value();
                if (areLinked && hereWas && shopWas)
                    break;
            }
            const core::JobState here = story.job(QString());
            closedBoth += hereWas && shopWas && !here.links.empty() ? 1 : 0;
            handedOn += std::any_of(here.items.begin(), here.items.end(), [](const core::InterfaceState &item) { return item.sent || item.takenOn; }) ? 1 : 0;
            core::JobFold alone;
            for (const core::Statement &said : story.fold().said())
                alone.take(said, core::Digest::of(QByteArray::number(said.seq)));
            QVERIFY2(alone.state() == story.job(), qPrintable(u"seed %1"_s.arg(seed)));
        }
        // Histories that get nowhere prove nothing.
        QVERIFY2(closedBoth >= 20 && handedOn >= 100, qPrintable(u"%1 closed both, %2 handed on"_s.arg(closedBoth).arg(handedOn)));
    }
};

QTEST_GUILESS_MAIN(TestLinkedHistories)
#include "tst_linked_histories.moc"
