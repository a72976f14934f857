// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QDir>
#include <QFile>
#include <QProcess>
#include <QTemporaryDir>
#include <QTest>

using namespace Qt::StringLiterals;

namespace {

QString sourceFolder() { return qEnvironmentVariable("REMATE_SOURCE_DIR"); }

/// Exit code, and what was said.
QString ran(const QString &script, const QStringList &arguments)
{
    QProcess process;
    process.setProcessChannelMode(QProcess::MergedChannels);
    process.start(u"python3"_s, QStringList{script} + arguments);
    if (!process.waitForFinished(60'000))
        return process.errorString();
    return QString::number(process.exitCode()) + u' ' + QString::fromUtf8(process.readAll()).trimmed();
}

void write(const QString &path, const QByteArray &bytes)
{
    QDir().mkpath(QFileInfo(path).path());
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        qFatal("%s cannot be written", qPrintable(path));
}

/// The script in a folder of its own, with nothing to translate yet.
void setUp(const QTemporaryDir &folder)
{
    QDir(folder.path()).mkpath(u"packaging"_s);
    if (!QFile::copy(sourceFolder() + u"/packaging/texts"_s, folder.filePath(u"packaging/texts"_s)))
        qFatal("packaging/texts cannot be copied");
    for (const QString &empty : {u"core"_s, u"db"_s, u"app"_s, u"resources/kinds"_s, u"resources/translations"_s})
        QDir(folder.path()).mkpath(empty);
}

void writeCode(const QTemporaryDir &folder, const QByteArray &code) { write(folder.filePath(u"core/a.cpp"_s), "class A { void f(int n); };\nvoid A::f(int n)\n{\n    " + code + "\n}\n"); }

} // namespace

/// That the screens are translated whole, and that the check of it sees what is not.
class TstTexts : public QObject {
    Q_OBJECT

private slots:
    void everythingIsTranslated();
    void faultsAreNamed_data();
    void faultsAreNamed();
    void countingIsAskedAnew_data();
    void countingIsAskedAnew();
};

void TstTexts::everythingIsTranslated()
{
    QCOMPARE(ran(sourceFolder() + u"/packaging/texts"_s, {u"--check"_s}), u"0 "_s);
}

void TstTexts::faultsAreNamed_data()
{
    QTest::addColumn<QByteArray>("code");
    QTest::addColumn<QByteArray>("taken"); // as --take reads it
    QTest::addColumn<QString>("said");     // part of it; empty: nothing is wrong
    QTest::addRow("whole") << QByteArray(R"(tr("Sign %1 of %2");)") << QByteArray(R"({"Sign %1 of %2": "%1 von %2 zeichnen"})") << QString();
    QTest::addRow("nothing") << QByteArray(R"(tr("Sign");)") << QByteArray("{}") << u"not translated"_s;
    QTest::addRow("a place is missing") << QByteArray(R"(tr("Sign %1 of %2");)") << QByteArray(R"({"Sign %1 of %2": "%1 zeichnen"})") << u"the places for values differ"_s;
    QTest::addRow("key kept") << QByteArray(R"(tr("&Sign");)") << QByteArray(R"({"&Sign": "&Zeichnen"})") << QString();
    QTest::addRow("key lost") << QByteArray(R"(tr("&Sign");)") << QByteArray(R"({"&Sign": "Zeichnen"})") << u"a key (&)"_s;
    QTest::addRow("blank lost") << QByteArray(R"(tr("Sign ");)") << QByteArray(R"({"Sign ": "Zeichnen"})") << u"blanks at the ends"_s;
    QTest::addRow("one and many") << QByteArray(R"(tr("%n entries", nullptr, n);)") << QByteArray(R"({"%n entries": ["1 Eintrag", "%n Einträge"]})") << QString();
    QTest::addRow("many without the number") << QByteArray(R"(tr("%n entries", nullptr, n);)") << QByteArray(R"({"%n entries": ["1 Eintrag", "Einträge"]})") << u"the places for values differ"_s;
    QTest::addRow("one form alone") << QByteArray(R"(tr("%n entries", nullptr, n);)") << QByteArray(R"({"%n entries": ["Einträge: %n"]})") << u"1 forms"_s;
    QTest::addRow("within braces") << QByteArray(R"(list = {tr(QT_TRANSLATE_NOOP("Any", "The hoist")), {}};)") << QByteArray("{}") << u"“The hoist”"_s;
    QTest::addRow("in pieces, with marks") << QByteArray("tr(\"Say \\\"yes\\\", \"\n   \"or no\");") << QByteArray(R"({"Say \"yes\", or no": "Ja oder nein"})") << QString();
}

void TstTexts::faultsAreNamed()
{
    QFETCH(QByteArray, code);
    QFETCH(QByteArray, taken);
    QFETCH(QString, said);
    const QTemporaryDir folder;
    const auto in = [&](const QString &name) { return folder.filePath(name); };
    setUp(folder);
    writeCode(folder, code);
    QCOMPARE(ran(in(u"packaging/texts"_s), {}), u"0 "_s);
    write(in(u"de.json"_s), taken);
    const QString took = ran(in(u"packaging/texts"_s), {u"--take"_s, u"de"_s, in(u"de.json"_s)});
    // French and English stand as German does: this is about one language.
    QStringList german = took.section(u' ', 1).split(u'\n', Qt::SkipEmptyParts);
    for (const QString &line : ran(in(u"packaging/texts"_s), {u"--check"_s}).section(u' ', 1).split(u'\n')) {
        if (line.startsWith(u"remate_de.ts"))
            german << line;
    }
    const QString all = german.join(u'\n');
    if (said.isEmpty())
        QCOMPARE(all, QString());
    else
        QVERIFY2(all.contains(said), qPrintable(all));
}

void TstTexts::countingIsAskedAnew_data()
{
    QTest::addColumn<QByteArray>("before");
    QTest::addColumn<QByteArray>("taken");
    QTest::addColumn<QByteArray>("after");
    QTest::addColumn<bool>("isAsked");
    const QByteArray plain = R"(tr("Off");)";
    const QByteArray counting = R"(tr("Off", nullptr, n);)";
    const QByteArray one = R"({"Off": "Ab"})";
    const QByteArray two = R"({"Off": ["Ab", "Alle ab"]})";
    QTest::addRow("begins to count") << plain << one << counting << true;
    QTest::addRow("counts no more") << counting << two << plain << true;
    QTest::addRow("counts as before") << counting << two << counting << false;
    QTest::addRow("counts as little as before") << plain << one << plain << false;
}

/// What was translated for a text that counted nothing says nothing of one and many, and the other way round.
void TstTexts::countingIsAskedAnew()
{
    QFETCH(QByteArray, before);
    QFETCH(QByteArray, taken);
    QFETCH(QByteArray, after);
    QFETCH(bool, isAsked);
    const QTemporaryDir folder;
    const QString texts = folder.filePath(u"packaging/texts"_s);
    setUp(folder);
    writeCode(folder, before);
    write(folder.filePath(u"de.json"_s), taken);
    QCOMPARE(ran(texts, {u"--take"_s, u"de"_s, folder.filePath(u"de.json"_s)}), u"0 "_s);
    writeCode(folder, after);
    QCOMPARE(ran(texts, {u"--missing"_s, u"de"_s}).contains(u"Off"), isAsked);
    QCOMPARE(ran(texts, {}), u"0 "_s);
    QCOMPARE(ran(texts, {u"--check"_s}).contains(u"remate_de.ts: not translated: “Off”"), isAsked);
    QCOMPARE(ran(texts, {u"--missing"_s, u"de"_s}).contains(u"Off"), isAsked);
}

QTEST_GUILESS_MAIN(TstTexts)

#include "tst_texts.moc"
