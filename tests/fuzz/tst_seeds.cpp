// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QTest>

#include "core/ledger/seal.hpp"
#include "tests/fuzz/targets.hpp"

using namespace Qt::StringLiterals;

/// What fuzzing began with, and what it found, once each: no crash, no promise broken.
class TstSeeds : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() { QVERIFY(core::readyCryptography()); }
    void seed_data()
    {
        QTest::addColumn<int>("target");
        QTest::addColumn<QString>("path");
        const QString folder = qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/tests/fuzz/seeds/"_s;
        for (std::size_t at = 0; at < fuzz::targets().size(); ++at) {
            const QDir seeds(folder + QLatin1String(fuzz::targets()[at].name));
            const QStringList names = seeds.entryList(QDir::Files);
            QVERIFY2(!names.isEmpty(), qPrintable(seeds.path() + u" has no seed"_s));
            for (const QString &name : names)
                QTest::addRow("%s/%s", fuzz::targets()[at].name, qPrintable(name)) << static_cast<int>(at) << seeds.filePath(name);
        }
    }
    void seed()
    {
        QFETCH(int, target);
        QFETCH(QString, path);
        QFile file(path);
        QVERIFY(file.open(QIODevice::ReadOnly));
        fuzz::targets()[static_cast<std::size_t>(target)].feed(file.readAll());
    }
};

QTEST_GUILESS_MAIN(TstSeeds)
#include "tst_seeds.moc"
