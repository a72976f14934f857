// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/photo_marks.hpp"
#include "tests/support/rule_table.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::RuleTable;
using story::Story;

namespace {

/// `marks` as the story language takes it: no blanks.
QString markAt(int number, int across, int down, const QString &what = u"chafe"_s)
{
    return uR"({"number":%1,"across":%2,"down":%3,"what":"%4"})"_s.arg(number).arg(across).arg(down).arg(what);
}

QString marksOf(const QStringList &lines) { return u" marks=["_s + lines.join(u',') + u']'; }

/// The marks of an item's photos: number, places and words, a photo a line.
QString marksShown(const std::vector<core::Photo> &photos)
{
    QStringList lines;
    for (const core::Photo &photo : photos) {
        QStringList marks;
        for (const core::PhotoMark &mark : photo.marks)
            marks << u"%1 at %2,%3 %4 (entry %5)"_s.arg(mark.number).arg(mark.across).arg(mark.down).arg(mark.what).arg(mark.mark.seq);
        lines << marks.join(u"; "_s);
    }
    return lines.join(u'\n');
}

} // namespace

/// A mark says where on a photo to look, and at what. That a photo is spoken of by numbered marks with a list of what each is: common practice.
class TestPhotos : public QObject {
    Q_OBJECT

private slots:
    void eachRule_data()
    {
        RuleTable::columns();
        const auto row = &RuleTable::row;
        const QString photo = u"Ben photographs D1"_s;
        const QString marked = photo + u"; Ana marks D1"_s;
        row("a mark", photo, "Ana marks D1", "");
        row("by an inspector", photo, "Cho marks D1", "");
        row("by a stranger", photo, "Rae marks D1", "crew.takes-part");
        row("on an item without a photo", "", "Ana marks D1", "photo.there");
        row("on the photo of another item", "Ben photographs K1", "Ana marks D1", "photo.there");
        row("on another photo of the item", photo + u" sha256="_s + core::Digest::of("other").hex(), "Ana marks D1", "photo.there");
        row("on a photo that was struck", photo + u"; Ben strikes entry=12"_s, "Ana marks D1", "photo.there");
        row("a second mark", marked, u"Ben marks D1"_s + marksOf({markAt(2, 0, 0)}), "");
        row("a number twice", marked, u"Ben marks D1"_s + marksOf({markAt(1, 0, 0)}), "photo.marks");
        row("two marks in one entry", photo, u"Ana marks D1"_s + marksOf({markAt(1, 10, 20), markAt(2, 30, 40)}), "");
        row("two of one number in one entry", photo, u"Ana marks D1"_s + marksOf({markAt(1, 10, 20), markAt(1, 30, 40)}), "photo.marks");
        row("the number 0", photo, u"Ana marks D1"_s + marksOf({markAt(0, 10, 20)}), "photo.marks");
        row("in the far corner", photo, u"Ana marks D1"_s + marksOf({markAt(1, 1000, 1000)}), "");
        row("beside the photo", photo, u"Ana marks D1"_s + marksOf({markAt(1, 1001, 1000)}), "photo.marks");
        row("below the photo", photo, u"Ana marks D1"_s + marksOf({markAt(1, 1000, 1001)}), "photo.marks");
        row("no mark", photo, u"Ana marks D1"_s + marksOf({}), "photo.marks");
        row("the number of a mark that was struck", marked + u"; Ana strikes entry=13"_s, "Ben marks D1", "");
        row("on the photo attached again, the next number", marked + u"; Ben photographs D1"_s, u"Ana marks D1"_s + marksOf({markAt(2, 0, 0)}), "");
        row("on the photo attached again, a number that stands", marked + u"; Ben photographs D1"_s, u"Ana marks D1"_s + marksOf({markAt(1, 0, 0)}), "photo.marks");
        row("a mark without words", photo, u"Ana marks D1 marks=[{\"number\":1,\"across\":1,\"down\":1}]"_s, "form.value");
        row("a copy", "", photo + u" copy_of="_s + core::Digest::of("as the camera wrote it").hex(), "");
        row("a copy of itself", "", photo + u" sha256="_s + core::Digest::of("same").hex() + u" copy_of="_s + core::Digest::of("same").hex(), "photo.copy");
        row("a copy of what is no digest", "", photo + u" copy_of=the-original"_s, "form.value");
        row("a photo of a finding on it", "Ben raises F9 interface=D1", "Ben photographs D1 finding=F9", "");
        row("a photo of a finding on another", "Ben raises F9 interface=K1", "Ben photographs D1 finding=F9", "finding.photo");
    }
    void eachRule() { m_table.ask(); }

    void aMarkStaysWithItsPhoto()
    {
        Story story(u"Ben photographs D1; Ana marks D1; Cho marks D1"_s + marksOf({markAt(2, 900, 100, u"rivet"_s)}));
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(marksShown(story.job().item(*core::InterfaceId::parse(u"D1"))->photos), u"1 at 500,250 chafe mark (entry 13); 2 at 900,100 rivet (entry 14)"_s);
        // A photo that is struck takes its marks along.
        story.tell(u"Ben strikes entry=12"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(marksShown(story.job().item(*core::InterfaceId::parse(u"D1"))->photos), QString());
        QCOMPARE(story.job().lines.back().standing, core::Standing::Stands);
        QCOMPARE(story.job().lines[12].standing, core::Standing::Fallen);
    }

    void attachedAgainItHasItsMarks()
    {
        Story story(u"Ben photographs D1; Ana marks D1; Ben photographs D1; Ben photographs D1 sha256="_s + core::Digest::of("other").hex());
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(marksShown(story.job().item(*core::InterfaceId::parse(u"D1"))->photos), u"1 at 500,250 chafe mark (entry 13)\n1 at 500,250 chafe mark (entry 13)\n"_s);
        // On the same picture on another item are marks of its own.
        story.tell(u"Ben photographs K1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(story.job().item(*core::InterfaceId::parse(u"K1"))->photos.size(), 1u);
        QCOMPARE(marksShown(story.job().item(*core::InterfaceId::parse(u"K1"))->photos), QString());
    }

    void aFindingsPhotoHasItsMarks()
    {
        Story story(u"Ben raises F9 interface=D1; Ben photographs D1 finding=F9; Ana marks D1"_s);
        QCOMPARE(story.refusedBy(), QString());
        QCOMPARE(marksShown(story.job().finding(*core::FindingId::parse(u"F9"))->photos), u"1 at 500,250 chafe mark (entry 14)"_s);
    }

    void theNextNumber()
    {
        QCOMPARE(core::nextMarkNumber({}), 1);
        const core::Mark entry{1, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0)};
        QCOMPARE(core::nextMarkNumber({{entry, 4, 0, 0, u"a"_s}, {entry, 2, 0, 0, u"b"_s}}), 5);
    }

    /// Drafts that stand while another station signs.
    void draftsMakeWay_data()
    {
        QTest::addColumn<QList<int>>("standing");
        QTest::addColumn<QList<int>>("drafts");
        QTest::addColumn<QList<int>>("numbers");
        QTest::newRow("none") << QList<int>{1} << QList<int>{} << QList<int>{};
        QTest::newRow("nothing signed") << QList<int>{} << QList<int>{1, 2} << QList<int>{1, 2};
        QTest::newRow("another number signed") << QList<int>{1} << QList<int>{2, 3} << QList<int>{2, 3};
        QTest::newRow("the first signed") << QList<int>{1} << QList<int>{1, 2} << QList<int>{2, 3};
        QTest::newRow("both signed") << QList<int>{1, 2} << QList<int>{1, 2} << QList<int>{3, 4};
        QTest::newRow("the second signed") << QList<int>{2} << QList<int>{1, 2} << QList<int>{1, 3};
    }
    void draftsMakeWay()
    {
        const core::Mark entry{1, *core::PersonId::parse(u"ana"), core::Instant::fromMilliseconds(0)};
        const auto marks = [&](const QList<int> &numbers) {
            std::vector<core::PhotoMark> all;
            for (const int number : numbers)
                all.push_back({entry, number, 0, 0, u"a"_s});
            return all;
        };
        QFETCH(QList<int>, standing);
        QFETCH(QList<int>, drafts);
        QFETCH(QList<int>, numbers);
        QVERIFY(core::numberedBeside(marks(standing), marks(drafts)) == marks(numbers));
    }

    void zEveryRuleWasSeenRefusing() { m_table.everyRuleWasSeen(); }

private:
    RuleTable m_table{"photos"_L1};
};

QTEST_GUILESS_MAIN(TestPhotos)
#include "tst_photos.moc"
