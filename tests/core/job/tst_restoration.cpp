// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/job/stage.hpp"
#include "tests/support/story.hpp"

using namespace Qt::StringLiterals;
using story::Story;

/// A restoration stands on the disconnection and on the row of the list that it was signed for. When a strike puts others under it, it falls,
/// and the interface is open again.
class TestRestoration : public QObject {
    Q_OBJECT

private slots:
    void whatItStandsOn_data()
    {
        QTest::addColumn<QString>("told");
        QTest::addColumn<QString>("id");
        QTest::addColumn<QString>("stage");
        const auto row = [](const char *name, const QString &told, const char *id, const char *stage) { QTest::newRow(name) << told << QString::fromLatin1(id) << QString::fromLatin1(stage); };
        const QString seal = u"Ana disconnects D1; Cho relists D1 seal_part=S-101; Ben reconnects D1"_s;
        row("its seal, the correction stands", seal, "D1", "reconnected");
        const QString half = u"Ana disconnects C1; Cho relists C1 unit_half=J2; Ben reconnects C1"_s;
        row("its mate, the correction stands", half, "C1", "secured");
        const QString bolts = uR"(Ana lists L1 hardware=[{"part":"B-3","quantity":2}]; Ana disconnects L1; Cho relists L1 hardware=[{"part":"B-3","quantity":1}]; Ben reconnects L1)"_s;
        row("its bolts, the correction stands", bolts, "L1", "secured");
        const QString tag = u"Ana disconnects K1 tag=7; Cho replaces-tag K1 tag=8; Ana reconnects K1; "_s;
        row("its tag, the loss stands", tag, "K1", "secured");
        row("its tag, the loss struck", tag + u"Cho strikes entry=13"_s, "K1", "disconnected");
        const QString blank = u"Ana disconnects K1 blanks_fitted=2; Ben misses-blank K1; Cho clears F1; Ana reconnects K1; "_s;
        row("its blanks, the loss stands", blank, "K1", "secured");
        row("its blanks, the loss struck", blank + u"Ove strikes entry=13"_s, "K1", "disconnected");
        const QString unitEnd = u"Ana disconnects K1 unit_blanks_fitted=2; Ben misses-blank K1 end=unit; Cho clears F1; Ana reconnects K1; "_s;
        row("the unit's blanks, the loss struck", unitEnd + u"Ove strikes entry=13"_s, "K1", "disconnected");
        const QString again = u"Ana disconnects K1 tag=7; Ana reconnects K1; Ben disconnects K1 tag=8; Ben reconnects K1; "_s;
        row("the last disconnection stands", again, "K1", "secured");
        // The first restoration stands again then, and the second has nothing to stand on.
        row("the last disconnection struck", again + u"Ove strikes entry=14"_s, "K1", "secured");
        row("the first restoration struck after the last disconnection", again + u"Ove strikes entry=14; Ana strikes entry=13"_s, "K1", "disconnected");
    }
    void whatItStandsOn()
    {
        QFETCH(QString, told);
        QFETCH(QString, id);
        QFETCH(QString, stage);
        const Story story(told);
        QVERIFY2(story.refusedSentence().isEmpty(), qPrintable(story.refusedSentence() + story.refusedBy()));
        QCOMPARE(story.stage(id), stage);
    }
};

QTEST_GUILESS_MAIN(TestRestoration)
#include "tst_restoration.moc"
