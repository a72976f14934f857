// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QSet>
#include <QString>

#include "tests/support/story.hpp"

namespace story {

/// Words of a row, however the row has them: UTF-8 or a QString.
struct Words {
    Words() = default;
    Words(const char *utf8) : text(QString::fromUtf8(utf8)) {}
    Words(const QByteArray &utf8) : text(QString::fromUtf8(utf8)) {}
    Words(const QString &words) : text(words) {}
    QString text;
};

/// A table of rules: what was told before, the act, and the names of the rules that refuse it, empty where it is admitted. It remembers
/// which rules were seen refusing.
class RuleTable {
public:
    /// `topic` is the test's line in rulesShown().
    explicit RuleTable(QLatin1String topic) : m_topic(topic) {}

    static void columns();
    static void row(const char *name, const Words &before, const Words &act, const char *refusedBy);
    /// Asks the row that is under way. `facts` are further members of the entry that opens the job.
    void ask(const core::json::Object &facts = {});
    /// Tells the act of a test that fetches columns of its own, and compares.
    void tell(Story &story, const QString &act, const QString &refusedBy);

    const QSet<QString> &seenRefusing() const { return m_seen; }
    /// To be asked last: fails for a rule of the topic that nothing has refused by.
    void everyRuleWasSeen() const;

private:
    QLatin1String m_topic;
    QSet<QString> m_seen;
};

/// The rules that have to be seen refusing in the tests of a topic of their own: a new rule is written into one line.
QSet<QString> rulesShown(QLatin1String topic);
/// The rules of all topics.
QSet<QString> rulesShown();

} // namespace story
