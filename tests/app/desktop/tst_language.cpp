// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

#include <algorithm>
#include <functional>
#include <set>

#include "app/demo/scenario.hpp"
#include "app/desktop/actions.hpp"
#include "app/desktop/flows/record_flow.hpp"
#include "app/desktop/main_window.hpp"
#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/pages/page.hpp"
#include "app/desktop/pages/pages.hpp"
#include "app/desktop/parts/field_form.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/parts/sign_sheet.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/language/spoken.hpp"
#include "core/acts/act.hpp"
#include "core/calculations/calculation.hpp"
#include "core/holds/condition.hpp"
#include "core/list/interface_list.hpp"
#include "tests/app/desktop/bench.hpp"
#include "tests/app/desktop/scripted_ask.hpp"
#include "tests/app/language/marked_words.hpp"

using namespace Qt::StringLiterals;
using language::Language;

namespace {

template <class Widget>
Widget *named(const QWidget &in, const char *name)
{
    auto *found = in.findChild<Widget *>(QString::fromLatin1(name));
    if (!found)
        qFatal("no widget %s", name);
    return found;
}

/// A program with its window, as main makes it.
class Program {
public:
    Program(Bench &bench, ScriptedAsk &ask, const desktop::Preferences &preferences = {})
        : m_words(QLocale::c()), m_window(ask, bench.kinds(), {bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, (m_words.speak(preferences.spoken(QLocale::c())), preferences))
    {
        QObject::connect(&m_window, &desktop::MainWindow::languageChosen, &m_window, [this](Language language) { m_words.speak(language); });
        m_window.show();
    }
    ~Program() { m_words.speak(Language::English); }
    Program(const Program &) = delete;
    Program &operator=(const Program &) = delete;

    desktop::MainWindow &window() { return m_window; }
    desktop::JobPlace &place() { return *m_window.findChild<desktop::JobPlace *>(); }
    /// Through the menu, as a person does.
    void speak(const char *code)
    {
        m_window.findChild<QAction *>(u"language."_s + QLatin1String(code))->trigger();
        QCoreApplication::processEvents();
    }
    bool isSpoken(const char *code) { return m_window.findChild<QAction *>(u"language."_s + QLatin1String(code))->isChecked(); }

private:
    language::Spoken m_words;
    desktop::MainWindow m_window;
};

/// All texts that packaging/texts found.
enum class Uses { All, Plain };

/// The English of the catalogue; plain: of what has no comment that says which use is meant, so is found without one.
std::set<QString> catalogue(Uses uses = Uses::All)
{
    std::set<QString> sources;
    QString source;
    QFile file(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/translations/remate_de.ts"_s);
    if (!file.open(QIODevice::ReadOnly))
        return sources;
    QXmlStreamReader reader(&file);
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (reader.name() == u"source")
            source = reader.readElementText();
        else if (reader.name() == u"comment" && uses == Uses::Plain)
            source.clear();
        else if (reader.name() == u"translation")
            sources.insert(source);
    }
    return sources;
}

QString verbNow(Program &program) { return named<QPushButton>(program.place(), "interface.disconnected")->text(); }

} // namespace

/// The screens in other languages, and that nothing but the screens is.
class TstLanguage : public QObject {
    Q_OBJECT

private slots:
    void menuSwitches_data();
    void menuSwitches();
    void isRemembered();
    void notUnderAnOpenSheet();
    void signsTheSame();
    void formsStartTheSame();
    void choosersKeepTheRecordsWords();
    void exportsTheSameList();
    void everyTextIsInTheCatalogue();
    void choicesAreInTheCatalogue();
    void unitsAreOfTwoSorts();
    void figuresHaveAPointInEveryLanguage_data();
    void figuresHaveAPointInEveryLanguage();
    void oneWordForEachThing_data();
    void oneWordForEachThing();

private:
    /// A store with a job and its list.
    core::LedgerId withList(Bench &bench);
};

core::LedgerId TstLanguage::withList(Bench &bench)
{
    const auto other = bench.another();
    const auto ledger = bench.openJob(*other);
    if (!ledger)
        qFatal("%s", qPrintable(bench.trouble()));
    if (!other->openJob(*ledger))
        qFatal("the job does not open");
    const auto list = core::readInterfaceList(benchList(), {u"list.csv"_s, bench.kinds(), *other->state()});
    for (const core::ListedRow &row : *list) {
        if (const QString no = Bench::say(*other, *ledger, u"ana"_s, u"interface.listed"_s, row.id.text(), row.body); !no.isEmpty())
            qFatal("%s", qPrintable(no));
    }
    return *ledger;
}

void TstLanguage::menuSwitches_data()
{
    QTest::addColumn<QString>("code");
    QTest::addColumn<QString>("verb");
    QTest::addRow("German") << u"de"_s << u"Trennen"_s;
    QTest::addRow("French") << u"fr"_s << u"Débrancher"_s;
}

void TstLanguage::menuSwitches()
{
    QFETCH(QString, code);
    Bench bench;
    ScriptedAsk ask;
    Program program(bench, ask);
    const core::LedgerId job = withList(bench);
    program.window().openStore(bench.path());
    program.window().openJob(job);
    const core::InterfaceId duct = *core::InterfaceId::parse(u"D1");
    program.place().showItem(duct);
    // What is refused says why, by its rule.
    const auto reasons = [&] {
        std::set<QString> all;
        for (const QPushButton *button : program.place().findChildren<QPushButton *>()) {
            if (!button->isEnabled() && !button->toolTip().isEmpty())
                all.insert(button->toolTip());
        }
        return all;
    };
    const QString english = verbNow(program);
    const std::set<QString> inEnglish = reasons();
    QVERIFY(!inEnglish.empty());
    const QSize size = program.window().size();

    program.speak(code.toLatin1().constData());
    QVERIFY(program.isSpoken(code.toLatin1().constData()));
    QCOMPARE(program.place().shownPage(), u"list"_s);
    QCOMPARE(program.place().chosen(), std::vector{duct});
    QCOMPARE(program.window().size(), size);
    QFETCH(QString, verb);
    QVERIFY2(verbNow(program).startsWith(verb), qPrintable(verbNow(program)));
    const std::set<QString> now = reasons();
    QCOMPARE(now.size(), inEnglish.size());
    for (const QString &reason : now)
        QVERIFY2(!inEnglish.contains(reason), qPrintable(reason));
    program.place().showPage(u"loose-ends"_s);
    program.speak("en");
    QCOMPARE(program.place().shownPage(), u"loose-ends"_s);
    QCOMPARE(program.place().chosen(), std::vector{duct});
    program.place().showPage(u"list"_s);
    QCOMPARE(verbNow(program), english);
    const std::set<QString> again = reasons(); // and those of the page that was made meanwhile
    QVERIFY(std::includes(again.begin(), again.end(), inEnglish.begin(), inEnglish.end()));
}

void TstLanguage::isRemembered()
{
    const QTemporaryDir folder;
    QSettings settings(folder.filePath(u"remate.conf"_s), QSettings::IniFormat);
    Bench bench;
    ScriptedAsk ask;
    {
        Program program(bench, ask);
        QVERIFY(program.isSpoken("en"));
        program.speak("de");
        desktop::writePreferences(settings, program.window().preferences());
    }
    Program again(bench, ask, desktop::readPreferences(settings));
    QVERIFY(again.isSpoken("de"));
}

void TstLanguage::notUnderAnOpenSheet()
{
    Bench bench;
    ScriptedAsk ask;
    Program program(bench, ask);
    const core::LedgerId job = withList(bench);
    program.window().openStore(bench.path());
    program.window().openJob(job);
    program.place().showItem(*core::InterfaceId::parse(u"D1"));
    named<desktop::Page>(program.window(), "list")->findChild<QPushButton *>(u"interface.disconnected"_s)->click();
    QVERIFY(program.window().findChild<desktop::SignSheet *>());
    program.speak("de");
    QCOMPARE(ask.told.size(), 1);
    QVERIFY(program.isSpoken("en"));
    QVERIFY(program.window().findChild<desktop::SignSheet *>());
}

/// The same taps and keys, in three languages.
void TstLanguage::signsTheSame()
{
    QStringList entries;
    for (const char *code : {"en", "de", "fr"}) {
        Bench bench;
        ScriptedAsk ask;
        Program program(bench, ask);
        const core::LedgerId job = withList(bench);
        program.window().openStore(bench.path());
        program.window().openJob(job);
        program.speak(code);
        program.place().showItem(*core::InterfaceId::parse(u"D1"));
        named<desktop::Page>(program.window(), "list")->findChild<QPushButton *>(u"interface.disconnected"_s)->click();
        auto *sheet = program.window().findChild<desktop::SignSheet *>();
        QVERIFY(sheet);
        const auto found = named<QWidget>(*sheet, "as_found")->findChild<QComboBox *>();
        found->setCurrentIndex(found->findData(u"damaged"_s) >= 0 ? found->findData(u"damaged"_s) : found->count() - 1);
        QTest::keyClicks(named<desktop::PersonField>(*sheet, "person")->findChild<QLineEdit *>(), u"ana"_s);
        QTest::keyClicks(named<QLineEdit>(*sheet, "secret"), Bench::pinOf(u"ana"_s));
        QTest::keyClick(named<QLineEdit>(*sheet, "secret"), Qt::Key_Return);
        const QString problem = named<QLabel>(*sheet, "problem")->text();
        QVERIFY2(QTest::qWaitFor([&] { return program.window().findChild<desktop::SignSheet *>() == nullptr; }), qPrintable(problem));
        const auto reader = bench.another();
        QVERIFY(reader->openJob(job));
        const core::Statement last = reader->said().back();
        QCOMPARE(last.kind, u"interface.disconnected"_s);
        // All that is signed and not made of chance or of the moment.
        entries << QStringList{last.kind, last.meaning, last.subject.value_or(QString()), QString::fromUtf8(core::json::canonical(last.body))}.join(u' ');
    }
    QVERIFY(!entries.front().isEmpty());
    QCOMPARE(entries.at(1), entries.front());
    QCOMPARE(entries.at(2), entries.front());
}

/// What every form of every act would sign before anybody typed, on each item of the demo's second shift: in English, and in a language
/// in which every text is another.
void TstLanguage::formsStartTheSame()
{
    const QTemporaryDir folder;
    const Bench bench;
    auto store = db::Store::create(folder.filePath(u"demo.remate"_s));
    QVERIFY(store);
    const auto played = demo::play(**store, bench.kinds(), QDate(2026, 3, 2), demo::Until::SecondShift, core::leastCost);
    QVERIFY(played);
    session::Session session(**store, [] { return *core::Instant::parse(u"2026-03-02T18:00:00Z"); }, core::leastCost);
    QVERIFY(session.refresh());
    QVERIFY(session.openJob(played->job));
    const core::JobState &job = *session.state();
    const core::Register &reg = session.reg();
    std::vector<std::optional<QString>> subjects{std::nullopt};
    for (const core::Finding &one : job.findings)
        subjects.push_back(one.id.text());
    for (const core::HoldPoint &one : job.holds)
        subjects.push_back(one.id.text());
    for (const core::TemporaryItem &one : job.temporaries)
        subjects.push_back(one.id.text());
    for (const core::JobTool *one : job.tools.out())
        subjects.push_back(one->marking.text());
    const auto bodies = [&] {
        QStringList all;
        const auto start = [&](const desktop::ActionLine &action, const desktop::Situation &at) {
            const core::Act &act = *core::findAct(QString(action.kind));
            const auto seeds = action.seeds(at);
            if (seeds.empty())
                return;
            const desktop::FieldForm form({act.fields, seeds, action.each, reg, &job, act.tables});
            for (const core::json::Object &body : form.bodies())
                all << QString(action.kind) + u' ' + QString::fromUtf8(core::json::canonical(body));
            for (const desktop::Seed &seed : seeds) {
                all << QString::fromUtf8(core::json::canonical(desktop::probeOf(action.kind, seed, at)));
                for (const QString &statement : seed.statements)
                    all << statement;
            }
        };
        for (const desktop::ActionLine &action : desktop::actions()) {
            if (action.kind == "photo.marked"_L1) { // about a photo of an interface
                for (const core::InterfaceState &item : job.items) {
                    for (const core::Photo &photo : item.photos)
                        start(action, {job, reg, {item.listed.id}, {}, session.now(), photo.digest.hex()});
                }
                continue;
            }
            if (action.over == desktop::Over::Subject) {
                for (const auto &subject : subjects)
                    start(action, {job, reg, {}, {}, session.now(), subject});
                continue;
            }
            for (const core::InterfaceState &item : job.items)
                start(action, {job, reg, {item.listed.id}, {}, session.now()});
        }
        return all;
    };
    const QStringList plain = bodies();
    QVERIFY(plain.size() > 1000);
    QVERIFY(std::any_of(plain.begin(), plain.end(), [](const QString &line) { return line.startsWith(u"photo.marked "); }));
    const MarkedWords words;
    const QStringList marked = bodies();
    QCOMPARE(marked.size(), plain.size());
    for (qsizetype i = 0; i < plain.size(); ++i)
        QCOMPARE(marked.at(i), plain.at(i));
}

/// What is chosen from a list of words is signed by the word of the record behind it.
void TstLanguage::choosersKeepTheRecordsWords()
{
    Bench bench;
    const auto session = bench.another();
    const auto chosen = [&] {
        QStringList all;
        for (const core::Act &act : core::acts()) {
            const desktop::FieldForm form({act.fields, {desktop::Seed{}}, {}, session->reg(), nullptr, act.tables});
            for (QComboBox *box : form.findChildren<QComboBox *>()) {
                for (int i = 0; i < box->count(); ++i) {
                    box->setCurrentIndex(i);
                    all << QString::fromUtf8(core::json::canonical(form.bodies().front()));
                }
            }
        }
        return all;
    };
    const QStringList plain = chosen();
    QVERIFY(plain.size() > 100);
    const MarkedWords words;
    QCOMPARE(chosen(), plain);
}

/// The list for the next job has notes on what was learnt, which the program words itself.
void TstLanguage::exportsTheSameList()
{
    const QTemporaryDir folder;
    const Bench bench;
    auto store = db::Store::create(folder.filePath(u"demo.remate"_s));
    QVERIFY(store);
    const auto played = demo::play(**store, bench.kinds(), QDate(2026, 3, 2), demo::Until::Closed, core::leastCost);
    QVERIFY(played);
    session::Session session(**store, bench.clock(), core::leastCost);
    QVERIFY(session.refresh());
    QVERIFY(session.openJob(played->job));
    struct ForTheNext final : ScriptedAsk {
        std::optional<QString> oneOf(const QString &, const QString &, const QStringList &choices) override { return choices.back(); }
    } ask;
    const auto exported = [&](const QString &name) {
        ask.savePath = folder.filePath(name);
        desktop::exportList(*session.state(), ask);
        QFile file(*ask.savePath);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    };
    const QByteArray plain = exported(u"plain.csv"_s);
    QVERIFY(plain != core::writeInterfaceList(*session.state()));
    const MarkedWords words;
    QCOMPARE(exported(u"marked.csv"_s), plain);
}

/// What the pages say is what packaging/texts finds: a text that reaches the screen by a way that it does not see is not translated.
void TstLanguage::everyTextIsInTheCatalogue()
{
    Bench bench;
    ScriptedAsk ask;
    const MarkedWords words;
    {
        desktop::MainWindow window(ask, bench.kinds(), {bench.clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, {});
        window.show();
        const core::LedgerId job = withList(bench);
        window.openStore(bench.path());
        window.openJob(job);
        auto *place = window.findChild<desktop::JobPlace *>();
        for (const desktop::PageLine &page : desktop::pages()) {
            place->showPage(QString(page.name));
            QCoreApplication::processEvents();
        }
        for (const char *item : {"D1", "C1", "B1", "F1"})
            place->showItem(*core::InterfaceId::parse(QString::fromLatin1(item)));
    }
    const std::set<QString> known = catalogue();
    QVERIFY(words.said().size() > 300);
    for (const QString &text : words.said())
        QVERIFY2(known.contains(text), qPrintable(text));
}

/// The words of the record that a form offers to choose from are said in words of the screen.
void TstLanguage::choicesAreInTheCatalogue()
{
    const std::set<QString> known = catalogue(Uses::Plain);
    std::set<QString> missing;
    const std::function<void(const std::vector<core::Field> &)> look = [&](const std::vector<core::Field> &fields) {
        for (const core::Field &field : fields) {
            for (const QLatin1String choice : field.choices) {
                if (!known.contains(choice))
                    missing.insert(choice);
            }
            look(field.columns);
        }
    };
    for (const core::Act &act : core::acts())
        look(act.fields);
    for (const core::Calculation &calculation : core::calculations())
        look(calculation.fields);
    for (const core::ConditionKind &kind : core::conditionKinds()) {
        std::vector<QLatin1String> words = kind.stages;
        words.push_back(kind.what);
        for (const QLatin1String word : words) {
            if (!known.contains(word))
                missing.insert(word);
        }
    }
    QCOMPARE(QStringList(missing.begin(), missing.end()), QStringList());
}

/// Newton metres are one sort of unit, an engine is another: German and French have two words.
void TstLanguage::unitsAreOfTwoSorts()
{
    language::Spoken words(QLocale::c());
    const auto labelled = [](core::FieldType type) { return desktop::labelOf({"unit"_L1, type, core::Needed::Always, "Unit", {}, {}}); };
    words.speak(Language::German);
    QCOMPARE(labelled(core::FieldType::Unit), u"Einheit"_s);
    QCOMPARE(labelled(core::FieldType::Text), u"Aggregat"_s);
    words.speak(Language::French);
    QCOMPARE(labelled(core::FieldType::Unit), u"Unité"_s);
    words.speak(Language::English);
    QCOMPARE(labelled(core::FieldType::Unit), u"Unit"_s);
}

void TstLanguage::figuresHaveAPointInEveryLanguage_data()
{
    QTest::addColumn<QString>("code");
    QTest::addRow("German") << u"de"_s;
    QTest::addRow("French") << u"fr"_s;
}

/// Beside "≈ 0.0003 %", which is worked out, a limit of "0,05 %" would be read as another sort of figure; see the manual, Languages.
void TstLanguage::figuresHaveAPointInEveryLanguage()
{
    QFETCH(QString, code);
    static const QRegularExpression decimals(u"\\d+[.,]\\d+"_s);
    const auto figures = [](const QString &text) {
        QStringList found;
        for (auto at = decimals.globalMatch(text); at.hasNext();)
            found << at.next().captured();
        found.sort();
        return found;
    };
    QFile file(qEnvironmentVariable("REMATE_SOURCE_DIR") + u"/resources/translations/remate_%1.ts"_s.arg(code));
    QVERIFY(file.open(QIODevice::ReadOnly));
    QXmlStreamReader reader(&file);
    QString source;
    int met = 0;
    while (!reader.atEnd()) {
        if (reader.readNext() != QXmlStreamReader::StartElement)
            continue;
        if (reader.name() == u"source") {
            source = reader.readElementText();
        } else if (reader.name() == u"translation") {
            const QString translation = reader.readElementText(QXmlStreamReader::IncludeChildElements);
            QVERIFY2(figures(source) == figures(translation), qPrintable(translation));
            met += figures(source).isEmpty() ? 0 : 1;
        }
    }
    QVERIFY(met > 3);
}

void TstLanguage::oneWordForEachThing_data()
{
    QTest::addColumn<QString>("english");
    QTest::addColumn<QString>("use"); ///< its comment
    QTest::addColumn<QString>("german");
    QTest::addColumn<QString>("french");
    QTest::addRow("what is measured in") << u"Unit …"_s << u"of measurement"_s << u"Einheit …"_s << u"Unité …"_s;
    QTest::addRow("what hangs on the aircraft") << u"Unit"_s << QString() << u"Aggregat"_s << u"Ensemble"_s;
    QTest::addRow("whose authority") << u"Authority"_s << QString() << u"Befugnis"_s << u"Habilitation"_s;
    QTest::addRow("by which authority a finding was closed") << u"Authority reference"_s << QString() << QString() << u"Référence de l'autorité"_s;
    QTest::addRow("the aircraft's weights, no record of a job") << u"For the weight record"_s << QString() << u"Für die Gewichtsübersicht"_s << QString();
}

/// By what the words mean where the trade uses them, from memory; empty: not looked at here.
void TstLanguage::oneWordForEachThing()
{
    QFETCH(QString, english);
    QFETCH(QString, use);
    QFETCH(QString, german);
    QFETCH(QString, french);
    language::Spoken words(QLocale::c());
    for (const auto &[language, expectedWords] : {std::pair(Language::German, german), std::pair(Language::French, french)}) {
        words.speak(language);
        const QString now = QCoreApplication::translate("Remate", english.toUtf8().constData(), use.isEmpty() ? nullptr : use.toUtf8().constData());
        words.speak(Language::English);
        if (!expectedWords.isEmpty())
            QCOMPARE(now, expectedWords);
    }
}

QTEST_MAIN(TstLanguage)

#include "tst_language.moc"
