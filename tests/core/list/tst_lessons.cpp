// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/list/interface_list.hpp"
#include "core/list/lessons.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// A list is as good as what the last job taught. That lessons go back into the list for the next job: common practice.
class TestLessons : public QObject {
    Q_OBJECT

    static QString told(const core::JobState &job)
    {
        QStringList lines;
        for (const core::Lesson &lesson : core::lessonsOf(job))
            lines << lesson.item.text() + u": "_s + lesson.what;
        return lines.join(u'\n');
    }

private slots:
    void eachLesson_data()
    {
        QTest::addColumn<QString>("story");
        QTest::addColumn<QString>("taught");
        const auto row = [](const char *name, const QString &story, const QString &taught) { QTest::newRow(name) << story << taught; };

        row("a job after its list", u"Ana disconnects K1; Ana reconnects K1; Cho accepts K1"_s, {});
        row("undone, and on no list", u"Ben logs X1"_s, u"X1: undone, and on no list"_s);
        row("and struck as a mistake", u"Ben logs X1; Eva strikes entry=12"_s, {});
        row("listed before anything came off", u"Ana lists P1"_s, {});
        row("listed after", u"Ana disconnects K1; Ana lists P1"_s, u"P1: listed after work had begun"_s);
        row("found open", u"Ana finds-open K1"_s, u"K1: found open, and logged by nobody\nK1: finding F1: hanging free"_s);
        row("rejected", u"Ana disconnects K1; Ana reconnects K1; Cho rejects K1 reason=loose"_s, u"K1: rejected by the inspector"_s);
        row("disturbed", u"Ana disconnects K1; Ana reconnects K1; Ana disturbs K1"_s, u"K1: disturbed after it was restored"_s);
        row("never touched", u"Cho finds-undisturbed K1"_s, u"K1: listed, and never touched"_s);
        row("not there", u"Ana finds-inapplicable K1"_s, u"K1: listed, and not applicable"_s);
    }
    void eachLesson()
    {
        QFETCH(QString, story);
        QFETCH(QString, taught);
        const Story told(story);
        QVERIFY2(told.refusedSentence().isEmpty(), qPrintable(told.refusedSentence() + u' ' + told.refusedBy()));
        QCOMPARE(TestLessons::told(told.job()), taught);
    }

    /// The list for the next job has what this one came upon, and says of each why it is marked; the rest is as it was.
    void marksTheListForTheNextJob()
    {
        const Story story(u"Ben logs X1; Eva details X1 kind=drain note=Behind_the_duct; Ben reconnects X1; Cho rejects X1; Cho rejects X1"_s);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + u' ' + story.refusedBy()));
        const std::vector<core::Listing> next = core::listForNextJob(story.job());
        QCOMPARE(static_cast<qsizetype>(next.size()), static_cast<qsizetype>(story.job().items.size()));
        for (const core::Listing &listing : next) {
            if (listing.id.text() != u"X1")
                QVERIFY(listing == story.item(listing.id.text()).listed);
        }
        QVERIFY(next.back().note.endsWith(u"Work order %1: undone, and on no list; rejected by the inspector."_s.arg(story.job().facts.workOrder)));
        QVERIFY(core::writeInterfaceList(next).contains("undone, and on no list"));
    }
};

QTEST_APPLESS_MAIN(TestLessons)
#include "tst_lessons.moc"
