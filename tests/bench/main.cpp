// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QCommandLineParser>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <cstdio>

#include "core/ledger/seal.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/measure/report.hpp"
#include "tests/bench/rows/row.hpp"
#include "tests/bench/rows/writer.hpp"

// The speed of the program against the bare machine: every figure is a ratio, program and bare side in turn in one run.
//   remate_bench [--smoke | --full] [--only ROW] [--repetitions N] [--json FILE] [--folder FOLDER]
// See --help. Nothing fails for being slow; rows fail only when they cannot be measured.

namespace {

using namespace Qt::StringLiterals;
using namespace bench;

void print(const QString &text)
{
    std::fputs(qPrintable(text), stdout);
    std::fflush(stdout);
}

void read(QCommandLineParser &parser, const QCoreApplication &application)
{
    parser.setApplicationDescription(u"Times the program against the bare machine. Figures of a build that is not Release, and of a machine that "
                                     "is busy, say nothing about the goals."_s);
    parser.addHelpOption();
    parser.addOptions({{u"smoke"_s, u"Runs every row for a moment, on small jobs: shows that they run, no more."_s},
                       {u"full"_s, u"Also what takes minutes to make: 100,000 entries to verify, a million to look things up in."_s},
                       {u"only"_s, u"Runs one row."_s, u"row"_s},
                       {u"list"_s, u"Lists the rows."_s},
                       {u"repetitions"_s, u"How often each side is measured."_s, u"n"_s},
                       {u"json"_s, u"Writes the figures to a file."_s, u"file"_s},
                       {u"folder"_s, u"Where stores are made and kept; on the disk that is to be measured."_s, u"folder"_s,
                        QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation) + u"/remate-bench"_s}});
    parser.process(application);
}

std::vector<Row> chosen(const QCommandLineParser &parser)
{
    std::vector<Row> all;
    for (const Row &row : rows())
        if (!parser.isSet(u"only"_s) || parser.values(u"only"_s).contains(row.name))
            all.push_back(row);
    if (all.empty())
        giveUp(u"There is no such row; --list names them."_s);
    return all;
}

void list()
{
    for (const Row &row : rows())
        print(u"%1\t%2\n"_s.arg(row.name, QString::fromUtf8(row.about)));
}

void writeJson(const QString &path, const QJsonObject &object)
{
    QFile file(path);
    const QByteArray bytes = QJsonDocument(object).toJson();
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size())
        giveUp(u"%1 cannot be written: %2"_s.arg(path, file.errorString()));
}

} // namespace

int main(int argc, char **argv)
{
    if (argc > 1 && qstrcmp(argv[1], "--writer") == 0) {
        const QCoreApplication writer(argc, argv);
        return writeBesideOthers(QCoreApplication::arguments().mid(2));
    }
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    if (!qEnvironmentVariableIsSet("QT_LOGGING_RULES"))
        qputenv("QT_LOGGING_RULES", "qt.qpa.*=false"); // the windows' home has no use for size hints, and says so
    const QApplication application(argc, argv);
    QCommandLineParser parser;
    read(parser, application);
    if (parser.isSet(u"list"_s)) {
        list();
        return 0;
    }
    const Size size = parser.isSet(u"smoke"_s) ? Size::Smoke : parser.isSet(u"full"_s) ? Size::Full : Size::Usual;
    const QString folder = parser.value(u"folder"_s);
    QDir().mkpath(folder);
    const QTemporaryDir scratch(folder + u"/scratch-XXXXXX"_s);
    if (!scratch.isValid())
        giveUp(u"%1: %2"_s.arg(folder, scratch.errorString()));
    const int given = parser.value(u"repetitions"_s).toInt();
    const Settings settings{size, given > 0 ? given : size == Size::Smoke ? 1 : 5, folder, scratch.path()};
    must(core::readyCryptography());

    const Machine machine = machineWith(folder);
    print(headOf(machine) + (size == Size::Smoke ? u"This is a smoke run: its figures mean nothing.\n\n"_s : u"\n"_s) + tableHead());
    std::vector<RowReport> reports;
    for (const Row &row : chosen(parser)) {
        const double before = load();
        std::vector<Figure> figures = row.measure(settings);
        reports.push_back({row.name, std::move(figures), before, load()});
        print(tableOf(reports.back()));
    }
    if (parser.isSet(u"json"_s))
        writeJson(parser.value(u"json"_s), jsonOf(machine, reports));
    return 0;
}
