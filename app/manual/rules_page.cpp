// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/manual/rules_page.hpp"

#include <QCoreApplication>

#include <map>

#include "core/rules/rulebook.hpp"

namespace manual {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Manual", text); }

/// By family (what stands before the dot), then by name.
using Families = std::map<QString, std::map<QString, QString>>;

template <class Rules>
void gather(Families &families, const Rules &rules)
{
    for (const auto *rule : rules) {
        const QString name(rule->name);
        families[name.section(u'.', 0, 0)].emplace(name, QCoreApplication::translate("RuleWhy", rule->why));
    }
}

void write(QString &text, const Families &families)
{
    for (const auto &[family, rules] : families) {
        text += u"\n### "_s + family + u"\n\n"_s;
        for (const auto &[name, why] : rules)
            text += u"- `"_s + name + u"`: "_s + why + u'\n';
    }
}

} // namespace

Page rulesPage()
{
    Families job;
    Families reg;
    gather(job, core::allRules());
    gather(reg, core::allRegisterRules());
    QString text = u"# "_s + tr("The rules, by name") + u"\n\n"_s
        + tr("Every entry is asked all the rules that concern its kind before it is signed, and again whenever a store or a record package is verified. What is refused says which rule refused it; here is why each of them exists.") + u'\n';
    text += u"\n## "_s + tr("Rules of a job") + u'\n';
    write(text, job);
    text += u"\n## "_s + tr("Rules of the register") + u'\n';
    write(text, reg);
    return {u"rules"_s, tr("The rules, by name"), text};
}

} // namespace manual
