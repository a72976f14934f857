// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QTextStream>

#include <algorithm>

#include "tests/fault/tamper/battery.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;

QString rulesIn(const Class &one)
{
    std::vector<std::pair<qint64, QString>> rules;
    for (const auto &[rule, times] : one.rules)
        rules.emplace_back(-times, rule);
    std::sort(rules.begin(), rules.end());
    QStringList texts;
    constexpr std::size_t most = 6;
    for (std::size_t at = 0; at < std::min(most, rules.size()); ++at)
        texts << u"%1 %2"_s.arg(rules[at].second).arg(-rules[at].first);
    if (rules.size() > most)
        texts << u"%1 more"_s.arg(rules.size() - most);
    return texts.join(u", "_s);
}

QString elsewhereIn(const Class &one)
{
    if (one.elsewhere == Elsewhere::Nothing)
        return {};
    return u"%1 by the %2"_s.arg(one.knownElsewhere).arg(one.elsewhere == Elsewhere::Head ? u"head"_s : u"root"_s);
}

void printRow(QTextStream &out, const Class &one)
{
    out << "| " << one.name << " | " << one.tried << " | " << one.told << ": " << rulesIn(one) << " | " << one.notCompared << " | " << elsewhereIn(one) << " | " << one.withoutMeaning << " | "
        << one.missed.size() << " | " << (one.control.isEmpty() ? u"good"_s : u"**%1**"_s.arg(one.control)) << " | " << one.remark << " |\n";
}

} // namespace

void print(QTextStream &out, const std::vector<Class> &classes)
{
    out << "| class | tried | told, by which rules | not compared | told only by what is known from elsewhere | without meaning | MISSED | control | remark |\n"
           "|---|---:|---|---:|---|---:|---:|---|---|\n";
    Class all{.name = u"all"_s};
    for (const Class &one : classes) {
        printRow(out, one);
        all.tried += one.tried;
        all.told += one.told;
        all.notCompared += one.notCompared;
        all.knownElsewhere += one.knownElsewhere;
        all.withoutMeaning += one.withoutMeaning;
        all.missed += one.missed;
    }
    out << "| all | " << all.tried << " | " << all.told << " | " << all.notCompared << " | " << all.knownElsewhere << " | " << all.withoutMeaning << " | " << all.missed.size() << " | | |\n";
    constexpr qsizetype mostMisses = 12;
    for (const Class &one : classes) {
        for (const QString &missed : one.missed.first(std::min(one.missed.size(), mostMisses)))
            out << "\nMISSED " << one.name << ": " << missed;
        if (one.missed.size() > mostMisses)
            out << "\nMISSED " << one.name << ": " << one.missed.size() - mostMisses << " more";
    }
    out << '\n';
}

bool isGood(const std::vector<Class> &classes)
{
    // A class in which nothing was tried proves nothing.
    return !classes.empty() && std::all_of(classes.begin(), classes.end(), [](const Class &one) { return one.missed.isEmpty() && one.control.isEmpty() && one.tried > 0; });
}

} // namespace battery
