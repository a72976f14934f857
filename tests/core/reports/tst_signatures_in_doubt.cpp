// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include <algorithm>

#include "core/reports/report.hpp"
#include "core/reports/signatures.hpp"
#include "tests/core/reports/scene.hpp"

using namespace Qt::StringLiterals;
using namespace core;

namespace {

QString cell(const JobRecord &record, QStringView report, std::size_t row, QLatin1String name)
{
    const Report *found = findReport(report);
    const auto at = std::find_if(found->columns.begin(), found->columns.end(), [&](const ReportColumn &column) { return column.name == name; });
    return found->rows(record).at(row).cells[static_cast<std::size_t>(at - found->columns.begin())];
}

QString signedBy(const JobRecord &record, const Entry &entry) { return cell(record, u"entries", static_cast<std::size_t>(entry.said.seq - 1), "signed_by"_L1); }

/// What stands beside the person's signatures.
QString count(const JobRecord &record, const QString &person)
{
    const std::vector<PersonSigned> people = signatures(record);
    const auto at = std::find_if(people.begin(), people.end(), [&](const PersonSigned &one) { return one.person.text() == person; });
    return cell(record, u"signatures", static_cast<std::size_t>(at - people.begin()), "signatures"_L1);
}

} // namespace

/// A key that somebody else may have had: what it signed since then stands on the record as doubtful.
class TstSignaturesInDoubt : public QObject {
    Q_OBJECT

private slots:
    void theRecordNamesThem()
    {
        scene::Scene scene;
        scene.open(5);
        scene.work();
        const JobRecord before = scene.record();
        std::vector<const Entry *> hers;
        for (const Entry &entry : before.entries()) {
            if (entry.said.author.text() == u"ana")
                hers.push_back(&entry);
        }
        QVERIFY(hers.size() > 3);
        const Entry *first = hers[hers.size() - 2]; // the last but one of hers, and what follows
        scene.sayOnRegister(u"key.stopped"_s, u"ana"_s, {{u"since"_s, first->said.at.text()}, {u"reason"_s, u"PIN seen by others"_s}});

        // A record that ends before does not change: it was signed when nobody knew.
        QVERIFY(!count(scene.record(), u"ana"_s).contains(u"IN DOUBT"_s));

        scene.say(u"lee"_s, u"time.doubted"_s, {}, {{u"first"_s, 1}, {u"last"_s, 1}, {u"reason"_s, u"The clock had stopped."_s}});
        const JobRecord after = scene.record();
        QVERIFY2(count(after, u"ana"_s).endsWith(u"IN DOUBT since %1, entries %2, %3: PIN seen by others"_s.arg(first->said.at.spoken()).arg(first->said.seq).arg(hers.back()->said.seq)), qPrintable(count(after, u"ana"_s)));
        QVERIFY(!count(after, u"ben"_s).contains(u"IN DOUBT"_s));
        QVERIFY(entriesInDoubt(scene.record()) == (std::vector<qint64>{first->said.seq, hers.back()->said.seq}));
        QVERIFY(entriesInDoubt(before).empty());
        for (const Entry *entry : hers)
            QCOMPARE(signedBy(after, *entry).endsWith(u"(signature in doubt)"_s), entry->said.at >= first->said.at);
    }
};

QTEST_GUILESS_MAIN(TstSignaturesInDoubt)
#include "tst_signatures_in_doubt.moc"
