// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/loose_ends.hpp"
#include "core/reports/one_page.hpp"
#include "core/reports/open_items.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// What the sheets of one page say, line by line, and what they say where there is no room.
class TestSheets : public QObject {
    Q_OBJECT

    static core::OnePage page(const Story &story, core::SheetSort sort) { return core::sheetOf(sort, story.job(), story.reg(), core::Instant::fromMilliseconds(0)); }
    static const core::SheetPart *part(const core::OnePage &page, const QString &title)
    {
        for (const core::SheetPart &one : page.parts) {
            if (one.title == title)
                return &one;
        }
        return nullptr;
    }
    static QStringList lines(const core::SheetPart &part, qsizetype most = 1000)
    {
        QStringList texts;
        for (const core::SheetLine &line : core::linesOf(part, most))
            texts << line.under + u" | "_s + line.state + u" | "_s + line.what;
        return texts;
    }
    static QString fact(const core::OnePage &page, const QString &name)
    {
        for (const core::AuditFact &one : page.facts) {
            if (one.name == name)
                return one.value;
        }
        return {};
    }

private slots:
    void partSays_data();
    void partSays();
    void holdPointThatBecameVoid();
    void factsSayWhoLeadsAndOfWhen();
    void everythingHandedOverIsOnTheHandoverSheet();
    void noMoreThanThereIsRoomFor_data();
    void noMoreThanThereIsRoomFor();
    void longTextsSayThatTheyGoOn_data();
    void longTextsSayThatTheyGoOn();
};

void TestSheets::partSays_data()
{
    QTest::addColumn<bool>("wall");
    QTest::addColumn<QString>("title");
    QTest::addColumn<QString>("story");
    QTest::addColumn<QStringList>("said");

    const QString open = u"Open now, by zone"_s;
    const QString half = u"Ana disconnects D1; Ben reconnects D1; Ben torques D1 fastener=1"_s;
    QTest::addRow("nothing undone") << true << open << QString() << QStringList{};
    QTest::addRow("off") << true << open << u"Ana disconnects D1; Ana disconnects B1"_s << QStringList{u"left | OFF | D1; B1"_s};
    QTest::addRow("off, zone by zone") << true << open << u"Ana disconnects K1; Ana disconnects D1"_s << QStringList{u"left | OFF | D1"_s, u"right | OFF | K1"_s};
    QTest::addRow("of the first zone, though last in the list") << true << open << u"Ana lists X9 zone=left; Ana disconnects K1; Ana disconnects X9"_s << QStringList{u"left | OFF | X9"_s, u"right | OFF | K1"_s};
    QTest::addRow("back, and no fastener torqued") << true << open << u"Ana disconnects D1; Ben reconnects D1"_s << QStringList{u"left | BACK, NOT TORQUED | D1"_s};
    QTest::addRow("back, half torqued") << true << open << half << QStringList{u"left | BACK, NOT TORQUED | D1 (torqued 1 of 2)"_s};
    QTest::addRow("torqued, not safetied") << true << open << half + u"; Ben torques D1 fastener=2"_s << QStringList{u"left | BACK, NOT SECURED | D1"_s};
    QTest::addRow("to inspect") << true << open << u"Ana disconnects K1; Ben reconnects K1"_s << QStringList{u"right | TO INSPECT | K1"_s};
    QTest::addRow("inspected") << true << open << u"Ana disconnects K1; Ben reconnects K1; Cho accepts K1"_s << QStringList{};
    QTest::addRow("what is off stands first in its zone") << true << open << half + u"; Ana disconnects B1"_s << QStringList{u"left | OFF | B1"_s, u"left | BACK, NOT TORQUED | D1 (torqued 1 of 2)"_s};
    QTest::addRow("found still attached") << true << open << u"Ana disconnects K1; Ben finds-attached K1 what=one_clip"_s << QStringList{u"right | OFF | K1 (still attached: one clip)"_s};
    QTest::addRow("stopped") << true << open << half + u"; Ben stops D1 word=shift_over"_s << QStringList{u"left | BACK, NOT TORQUED | D1 (torqued 1 of 2, stopped: shift over)"_s};

    const QString holds = u"Hold points not passed"_s;
    const QString set = uR"(Ana sets free title=Free_to_go authority=work conditions=[{"what":"interfaces","stage":"disconnected","interfaces":["K1"]}] gates=[{"act":"interface.disconnected","kinds":["mount"]}])"_s;
    QTest::addRow("no hold point") << true << holds << QString() << QStringList{};
    QTest::addRow("hold point passed") << true << holds << set + u"; Ana disconnects K1; Ana passes free"_s << QStringList{};
    QTest::addRow("hold point to be passed") << true << holds << set + u"; Ana disconnects K1"_s << QStringList{u"Free to go | NOT PASSED | nothing: somebody with authority has to look and sign"_s};

    const QString applied = u"On, and must come off"_s;
    QTest::addRow("nothing on") << true << applied << u"Ben applies I1; Ben removes I1"_s << QStringList{};
    QTest::addRow("isolation of a person") << true << applied << u"Ben applies I1 sort=isolation name=fuel_valve_shut tag=L7 zone=right"_s << QStringList{u"right |  | isolation ON: I1 fuel valve shut, tag L7, lockout of Ben"_s};
    QTest::addRow("isolation handed over") << true << applied << u"Ben applies I1 sort=isolation name=fuel_valve_shut tag= zone=right; Ben gives I1 to=Dee"_s << QStringList{u"right |  | isolation ON: I1 fuel valve shut, lockout of Dee"_s};
    QTest::addRow("a stand is nobody's lock") << false << applied << u"Ben applies S1 sort=stand name=jury_strut tag="_s << QStringList{u"no zone |  | stand ON: S1 jury strut"_s};

    QTest::addRow("no handover") << false << u"The last handover"_s << QString() << QStringList{};
    QTest::addRow("stopped work") << false << u"Stopped half done"_s << half + u"; Ben stops D1 word=shift_over fastener=2 pass=1"_s << QStringList{u"left |  | Ben, 2026-03-02 06:04:00 UTC: D1 duct D1: shift over; next is fastener 2, pass 1"_s};
    QTest::addRow("taken up again") << false << u"Stopped half done"_s << half + u"; Ben stops D1 word=shift_over; Ben torques D1 fastener=2"_s << QStringList{};
    QTest::addRow("alike in one line") << false << u"Loose, by zone"_s << u"Ana disconnects D1; Ana disconnects C1; Ben reconnects C1; Ana disconnects B1"_s
                                       << QStringList{u"left |  | disconnected: D1; B1\nsecured: C1"_s};
    QTest::addRow("the next zone in a line of its own") << false << u"Loose, by zone"_s << u"Ana disconnects D1; Ana disconnects K1"_s << QStringList{u"left |  | disconnected: D1"_s, u"right |  | disconnected: K1"_s};
    QTest::addRow("tool out") << false << u"Tools and tags out"_s << u"Ben issues R-14 name=ratchet holder=Dee"_s << QStringList{u"Dee |  | tool OUT: R-14 ratchet"_s};
    QTest::addRow("tool back") << false << u"Tools and tags out"_s << u"Ben issues R-14 name=ratchet holder=Dee; Dee returns R-14"_s << QStringList{};
    QTest::addRow("finding open") << false << u"Findings open"_s << u"Ben raises F9 description=dent interface=D1"_s << QStringList{u"D1 |  | OPEN: F9 dent"_s};
    QTest::addRow("finding closed") << false << u"Findings open"_s << u"Ben raises F9 description=dent; Cho clears F9"_s << QStringList{};
}

void TestSheets::partSays()
{
    QFETCH(bool, wall);
    QFETCH(QString, title);
    QFETCH(QString, story);
    QFETCH(QStringList, said);
    const Story told(story);
    QCOMPARE(told.refusedBy() + told.refusedSentence(), QString());
    const core::OnePage sheet = page(told, wall ? core::SheetSort::Wall : core::SheetSort::Handover);
    const core::SheetPart *found = part(sheet, title);
    QVERIFY(found);
    QCOMPARE(lines(*found), said);
    QVERIFY(!found->whenEmpty.isEmpty());
}

/// It was passed, and what it rests on is gone: the wall says so, and why, and the next shift is told.
void TestSheets::holdPointThatBecameVoid()
{
    const Story story(uR"(Ana sets free title=Free_to_go authority=work conditions=[{"what":"interfaces","stage":"disconnected","interfaces":["K1"]}] gates=[{"act":"interface.disconnected","kinds":["mount"]}]; Ana disconnects K1; Ana passes free; Ben reconnects K1)"_s);
    QCOMPARE(story.refusedBy() + story.refusedSentence(), QString());
    const core::OnePage wall = page(story, core::SheetSort::Wall);
    const auto &waiting = part(wall, u"Hold points not passed"_s)->things;
    QCOMPARE(waiting.size(), std::size_t(1));
    QCOMPARE(waiting.front().state, u"VOID"_s);
    QVERIFY2(waiting.front().what.contains(u"K1"_s), qPrintable(waiting.front().what));
    const core::OnePage handover = page(story, core::SheetSort::Handover);
    QCOMPARE(lines(*part(handover, u"Else open"_s)), QStringList{u"the job |  | hold point, void: free Free to go"_s});
}

void TestSheets::factsSayWhoLeadsAndOfWhen()
{
    Story story(u"Ana disconnects D1; Ben raises F9; Ben issues R-14; Ana hands-over to=Lee crew=Max remarks=mind_the_duct"_s);
    QCOMPARE(story.refusedBy(), QString());
    const core::OnePage wall = page(story, core::SheetSort::Wall);
    QCOMPARE(fact(wall, u"Leads"_s), u"Ana"_s);
    QCOMPARE(fact(wall, u"Handover"_s), u"given to Lee, NOT ACCEPTED yet"_s);
    QCOMPARE(fact(wall, u"Also open"_s), u"findings: 1, tools out: 1"_s);
    QCOMPARE(fact(wall, u"As it was at"_s), u"%1, entry %2"_s.arg(story.job().lastAt->spoken()).arg(story.job().said.size()));
    QCOMPARE(fact(wall, u"Printed"_s), u"1970-01-01 00:00:00 UTC"_s);
    QVERIFY(wall.foot.endsWith(core::hashesOf(story.job().said).back().hex()));
    const core::OnePage pending = page(story, core::SheetSort::Handover);
    const core::SheetThing before = part(pending, u"The last handover"_s)->things.front();
    QCOMPARE(before.under, u"NOT ACCEPTED yet"_s);
    QCOMPARE(before.what, u"mind the duct"_s);

    story.tell(u"Lee takes-shift"_s);
    QCOMPARE(story.refusedBy(), QString());
    const core::OnePage taken = page(story, core::SheetSort::Handover);
    QCOMPARE(fact(taken, u"Leads"_s), u"Lee"_s);
    QCOMPARE(fact(taken, u"Handover"_s), QString());
    QCOMPARE(part(taken, u"The last handover"_s)->things.front().under, u"accepted by Lee"_s);
}

/// What the outgoing lead would sign and no part tells of would be lost between two shifts.
void TestSheets::everythingHandedOverIsOnTheHandoverSheet()
{
    const Story story(u"Ana issues-tags first=1 last=40; Ana disconnects D1; Ana disconnects K1; Ben finds-attached K1; Ben applies I1; Ben issues R-14; Ben raises F9; Ana lists-accessory A7"_s);
    QCOMPARE(story.refusedBy() + story.refusedSentence(), QString());
    QString all;
    for (const core::SheetPart &one : page(story, core::SheetSort::Handover).parts)
        all += lines(one).join(u'\n') + u'\n';
    const auto open = core::openAtHandover(story.job());
    QVERIFY(open.size() >= 7);
    for (const core::json::Value &value : open) {
        const QString name = value.object()->text(core::openMember(*value.object()));
        QVERIFY2(!name.isEmpty() && all.contains(name), qPrintable(name + u" is not in\n"_s + all));
    }
}

void TestSheets::noMoreThanThereIsRoomFor_data()
{
    QTest::addColumn<int>("most");
    QTest::addColumn<QStringList>("said");
    QTest::addColumn<QString>("leftOut");
    QTest::addRow("room for one more") << 4 << QStringList{u"left | OFF | D1; B1"_s, u"right | OFF | K1"_s} << QString();
    QTest::addRow("just room") << 3 << QStringList{u"left | OFF | D1; B1"_s, u"right | OFF | K1"_s} << QString();
    QTest::addRow("one too many") << 2 << QStringList{u"left | OFF | D1; B1"_s} << u"and 1 more; see the program"_s;
    QTest::addRow("no room") << 0 << QStringList{} << u"and 3 more; see the program"_s;
}

void TestSheets::noMoreThanThereIsRoomFor()
{
    QFETCH(int, most);
    QFETCH(QStringList, said);
    QFETCH(QString, leftOut);
    const Story story(u"Ana disconnects D1; Ana disconnects B1; Ana disconnects K1"_s);
    const core::OnePage sheet = page(story, core::SheetSort::Wall);
    const core::SheetPart &open = sheet.parts.front();
    QCOMPARE(lines(open, most), said);
    QCOMPARE(core::leftOutInWords(open, most), leftOut);
}

void TestSheets::longTextsSayThatTheyGoOn_data()
{
    QTest::addColumn<int>("length");
    QTest::addColumn<bool>("goesOn");
    QTest::addRow("just fits") << 60 << false;
    QTest::addRow("one too long") << 61 << true;
}

void TestSheets::longTextsSayThatTheyGoOn()
{
    QFETCH(int, length);
    QFETCH(bool, goesOn);
    const QString text(length, u'x');
    const QString shown = core::shortened(text, 60);
    QVERIFY(shown.size() <= 60);
    QCOMPARE(shown != text, goesOn);
    QCOMPARE(shown.endsWith(u"(goes on; see the program)"_s), goesOn);
}

QTEST_GUILESS_MAIN(TestSheets)
#include "tst_sheets.moc"
