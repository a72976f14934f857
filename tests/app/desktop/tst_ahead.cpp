// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QFontDatabase>
#include <QTemporaryDir>
#include <QtTest>

#include "app/desktop/ahead.hpp"
#include "app/demo/scenario.hpp"
#include "app/session/clock.hpp"
#include "resources/resources.hpp"

using namespace Qt::StringLiterals;

/// What is done beside the making of the window comes to the same as doing it afterwards.
class TstAhead : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        auto store = db::Store::create(m_folder.filePath(u"demo.remate"_s));
        QVERIFY(store);
        const auto kinds = resources::loadKinds();
        QVERIFY(kinds);
        QVERIFY(demo::play(**store, *kinds, QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost));
    }

    void aStoreIsOpenedAsItWouldBeHere()
    {
        const QString path = m_folder.filePath(u"demo.remate"_s);
        const auto here = desktop::openPlace(path, maker());
        QVERIFY(here);
        const auto rows = here->session->jobs();
        auto ahead = desktop::openAhead(path, maker());
        QVERIFY(ahead.valid());
        const auto place = ahead.get();
        QVERIFY(place);
        QVERIFY(place->session->reg().head == here->session->reg().head);
        const auto sameRows = place->session->jobs();
        QVERIFY(rows && sameRows);
        QCOMPARE(sameRows->size(), rows->size());
        for (std::size_t i = 0; i < rows->size(); ++i)
            QVERIFY(sameRows->at(i).ledger == rows->at(i).ledger && sameRows->at(i).summary == rows->at(i).summary);
        // It belongs to this thread now.
        QVERIFY(place->session->openJob(rows->front().ledger));
        QVERIFY(place->session->refresh());
    }

    void whyItWasNotOpenedIsTold_data()
    {
        QTest::addColumn<QByteArray>("bytes");
        QTest::addColumn<core::ErrorCode>("code");
        QTest::addRow("nothing is there") << QByteArray() << core::ErrorCode::NotFound;
        QTest::addRow("something else") << QByteArray("zone;interface;kind\n") << core::ErrorCode::NotAStore;
    }

    void whyItWasNotOpenedIsTold()
    {
        QFETCH(QByteArray, bytes);
        QFETCH(core::ErrorCode, code);
        QFile file(m_folder.filePath(u"other.remate"_s));
        file.remove();
        if (!bytes.isEmpty())
            QVERIFY(file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size());
        file.close();
        const auto place = desktop::openAhead(file.fileName(), maker()).get();
        QVERIFY(!place);
        QCOMPARE(place.error().code, code);
    }

    void aRecordPackageIsLeftToTheWindow()
    {
        QFile file(m_folder.filePath(u"record.zip"_s));
        QVERIFY(file.open(QIODevice::WriteOnly));
        file.write("PK\x03\x04");
        file.close();
        QVERIFY(!desktop::openAhead(file.fileName(), maker()).valid());
    }

    void fontsAreThereOnceItIsDone()
    {
        desktop::readFontsAhead().get();
        QVERIFY(!QFontDatabase::families().isEmpty());
    }

private:
    static desktop::SessionMaker maker() { return {session::systemClock(), core::leastCost, std::chrono::minutes(5)}; }

    QTemporaryDir m_folder;
};

QTEST_MAIN(TstAhead)
#include "tst_ahead.moc"
