// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTest>

#include "core/calculations/calculation.hpp"
#include "core/tables/catalogue.hpp"
#include "tests/app/cli/program.hpp"

using namespace Qt::StringLiterals;

namespace {

QStringList exampleOf(const core::Calculation &calculation)
{
    QStringList words{u"calc"_s, calculation.name};
    for (const core::ExampleValue &one : calculation.example)
        words << u"%1=%2"_s.arg(one.field, QString::fromUtf8(one.text));
    return words;
}

QByteArray governs() { return core::measure::dataGoverns().toUtf8() + '\n'; }

} // namespace

class TstCalc : public QObject {
    Q_OBJECT

private slots:
    void examplesAnswer_data()
    {
        QTest::addColumn<QString>("name");
        for (const core::Calculation &one : core::calculations())
            QTest::newRow(one.name.data()) << QString(one.name);
    }
    void examplesAnswer()
    {
        QFETCH(QString, name);
        const core::Calculation &calculation = *core::findCalculation(name);
        const Said told = remateCli({u"calc"_s, name});
        QCOMPARE(told.exit, 0);
        QVERIFY(told.out.endsWith(governs()));
        for (const core::Field &field : calculation.fields)
            QVERIFY2(told.out.contains(QString(field.name).toUtf8()), field.name.data());
        QVERIFY(told.out.contains("remate-cli calc " + name.toUtf8() + ' '));

        const Said worked = remateCli(exampleOf(calculation));
        QVERIFY2(worked.exit == 0, worked.err);
        QVERIFY(worked.out.endsWith(governs()));
        for (const QString &caution : calculation.cautions())
            QCOMPARE(worked.out.count(caution.toUtf8()), 1);
        const core::json::Object json = remateCli(exampleOf(calculation) + QStringList{u"--json"_s}).json();
        QVERIFY(json.isTrue(u"is_answered"));
        QCOMPARE(json.text(u"calculation"), name);
        QCOMPARE(json.text(u"data_governs"), core::measure::dataGoverns());
        QVERIFY(!json.text(u"answer").isEmpty() && worked.out.contains(json.text(u"answer").toUtf8()));
        QVERIFY(!json.find(u"steps")->array()->empty());
        QVERIFY(!json.texts(u"sources").empty());
    }

    void tablesArePrinted_data()
    {
        QTest::addColumn<QString>("id");
        for (const core::TableForm &form : core::tableForms())
            QTest::newRow(form.id) << QString::fromLatin1(form.id);
    }
    void tablesArePrinted()
    {
        QFETCH(QString, id);
        const Said said = remateCli({u"calc"_s, u"--table"_s, id});
        QCOMPARE(said.exit, 0);
        QVERIFY(said.out.endsWith(governs()));
        QVERIFY(said.out.contains(core::tableCaution().toUtf8()));
        const core::json::Object json = remateCli({u"calc"_s, u"--table"_s, id, u"--json"_s}).json();
        const core::json::Array *rows = json.find(u"rows")->array();
        QVERIFY(rows && !rows->empty());
        for (const core::json::Value &row : *rows) {
            const QByteArray source = row.object()->text(u"source").toUtf8();
            QVERIFY(!source.isEmpty() && said.out.contains(source + " (" + row.object()->text(u"seen").toUtf8() + ')'));
        }
    }

    void listsEverything()
    {
        const Said said = remateCli({u"calc"_s});
        QCOMPARE(said.exit, 0);
        QVERIFY(said.out.endsWith(governs()));
        for (const core::Calculation &one : core::calculations())
            QVERIFY2(said.out.contains('\n' + QByteArray(one.name.data()) + ' '), one.name.data());
        for (const core::TableForm &form : core::tableForms())
            QVERIFY2(said.out.contains('\n' + QByteArray(form.id) + ' '), form.id);
        QCOMPARE(remateCli({u"calc"_s, u"--json"_s}).json().find(u"calculations")->array()->size(), core::calculations().size());
    }

    /// Every line of one answer, so that nobody changes what scripts and eyes know without noticing.
    void tellsTheWholeWorking()
    {
        const Said said = remateCli({u"calc"_s, u"wrench-setting"_s, u"least=130 lbf.in"_s, u"most=140 lbf*in"_s, u"wrench_length=10 in"_s, u"extension=1.5 in"_s, u"extension_angle=180 deg"_s,
                                     u"range_min=30 lbf.in"_s, u"range_max=200 lbf.in"_s, u"graduation=1 lbf.in"_s});
        QCOMPARE(said.exit, 0);
        for (const char *line : {"  Least torque                  130 lbf·in\n", "  Adapter's angle               180 °\n", "  Torque at the fastener, T: 130 to 140 lbf·in\n",
                                 "  Setting, Y: Y = T · L / (L + E · cos a)  →  L = 10 in, E = 1.5 in, a = 180°; T = 130 to 140 lbf·in  →  ≈ 152.9412 to ≈ 164.7059 lbf·in\n",
                                 "Answer:\n  Set the wrench to 159 lbf·in.\n", "  TM 9-254 par. 4-1 d\n"})
            QVERIFY2(said.out.contains(line), said.out);
    }

    void exits_data()
    {
        QTest::addColumn<QStringList>("words");
        QTest::addColumn<int>("exit");
        QTest::addColumn<QString>("says"); // on the standard output for yes and no, else on the standard error
        const auto row = [](const char *title, const QStringList &words, int exit, const QString &says) { QTest::newRow(title) << (QStringList{u"calc"_s} + words) << exit << says; };
        row("at the limit", {u"nut-drag"_s, u"prevailing=8 lbf.in"_s, u"least=8 lbf.in"_s}, 0, u"8 lbf·in is enough drag"_s);
        row("below it", {u"nut-drag"_s, u"prevailing=7.9 lbf.in"_s, u"least=8 lbf.in"_s}, 1, u"No:\n  The nut turns with 7.9 lbf·in"_s);
        row("no answer at all", {u"convert"_s, u"quantity=1 in"_s, u"unit=kg"_s}, 1, u"1 in is a length"_s);
        row("a field missing", {u"nut-drag"_s, u"prevailing=8 lbf.in"_s}, 2, u"(least) is missing."_s);
        row("a field of the wrong kind", {u"nut-drag"_s, u"prevailing=8 kg"_s, u"least=8 lbf.in"_s}, 2, u"(prevailing): \"8 kg\" is a weight; a torque is needed"_s);
        row("an unknown field", {u"nut-drag"_s, u"drag=8 kg"_s}, 2, u"nut-drag has no field \"drag\"; it has prevailing, least."_s);
        row("a field twice", {u"nut-drag"_s, u"least=8 lbf.in"_s, u"least=9 lbf.in"_s}, 2, u"\"least\" is given twice."_s);
        row("no field", {u"nut-drag"_s, u"8"_s}, 2, u"Type FIELD=VALUE"_s);
        row("forty digits", {u"convert"_s, u"quantity=1234567890123456789012345678901234567890 in"_s, u"unit=m"_s}, 2, u"at most 18 digits"_s);
        row("an unknown calculation", {u"nut_drag"_s}, 2, u"There is no calculation \"nut_drag\"."_s);
        row("an unknown table", {u"--table"_s, u"nuts"_s}, 2, u"There is no look-up table \"nuts\"."_s);
        row("a calculation and a table", {u"nut-drag"_s, u"--table"_s, u"locknut_drag"_s}, 2, u"either for a calculation or for a table"_s);
    }
    void exits()
    {
        QFETCH(QStringList, words);
        QFETCH(int, exit);
        QFETCH(QString, says);
        const Said said = remateCli(words);
        QCOMPARE(said.exit, exit);
        const QByteArray &told = exit < 2 ? said.out : said.err;
        QVERIFY2(told.contains(says.toUtf8()), told);
        QCOMPARE(said.out.endsWith(governs()), exit < 2);
        const Said json = remateCli(words + QStringList{u"--json"_s});
        QCOMPARE(json.exit, exit);
        if (exit < 2)
            QCOMPARE(json.json().isTrue(u"is_answered"), exit == 0);
        else
            QCOMPARE(json.errorJson().find(u"error")->object()->text(u"code"), u"bad_input"_s);
    }
};

QTEST_GUILESS_MAIN(TstCalc)
#include "tst_calc.moc"
