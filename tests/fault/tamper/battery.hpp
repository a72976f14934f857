// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QProcess>
#include <QRandomGenerator>
#include <QSet>

#include <functional>
#include <map>
#include <memory>

#include "app/package/verify_package.hpp"
#include "tests/fault/tamper/bag.hpp"
#include "tests/fault/tamper/closed_job.hpp"

namespace battery {

/// What tells of an alteration that leaves nothing to be seen in the package itself: a forger had every key that was needed.
enum class Elsewhere {
    Nothing, ///< the package alone has to tell
    Head,    ///< the last digest of the job, from a printed page
    Root,    ///< the root's fingerprint
};

/// A line of the table that the run ends with.
struct Class {
    QString name;
    Elsewhere elsewhere = Elsewhere::Nothing;
    qint64 made = 0;  ///< alterations, with those that the short form leaves out
    qint64 tried = 0;
    qint64 told = 0;  ///< by a rule, from what is altered alone
    qint64 notCompared = 0;    ///< not a fault; the verdict says that this file of another version was not compared, and not to rely on it
    qint64 knownElsewhere = 0; ///< told by the head or the root alone
    qint64 withoutMeaning = 0; ///< an independent reader finds the same names and bytes
    std::map<QString, qint64> rules{}; ///< alterations that each of them told of
    QStringList missed{};
    bool isOfPages = false; ///< the PDF is set anew and compared
    QString control{}; ///< what the nearest that is not altered gave; empty: nothing was said, as it must be
    QString remark{};
};

/// Alters, asks the program, and counts. Whatever is neither told nor without meaning is a miss; so is a crash, a wait, or more memory than allowed.
///
/// All but the class of pages alter a package whose labels name other typefaces. The program then says that the PDF cannot be compared, and does not set it: that
/// takes a hundred times as long as all the rest, and whoever forges would see to it anyway.
class Battery {
public:
    enum class Extent { Short, Full };
    Battery(const ClosedJob &job, Extent extent);
    ~Battery();

    const ClosedJob &job() const { return m_job; }
    const Bag &bag() const { return m_bag; }
    const QByteArray &zip() const { return m_zip; }

    /// The class that the following belong to.
    void begin(const QString &name, Elsewhere elsewhere = Elsewhere::Nothing, const QString &remark = {});
    /// The same for alterations of the PDF, in the package as it was exported.
    void beginPages(const QString &name);

    using Make = std::function<QByteArray()>;
    /// An altered package. What equals the original or another one that was tried is no alteration, and is not counted.
    void package(const QString &name, const Make &make);
    /// An altered bag, packed as the program packs.
    void bag(const QString &name, const std::function<void(Bag &)> &alter);
    /// A package that is as good as the original, though perhaps not the same bytes: the control of the class.
    void control(const QByteArray &zip);

    /// An altered store: `alter` changes the copy at the path and returns why it could not.
    void store(const QString &name, const std::function<QString(const QString &path)> &alter);
    void storeControl();
    /// Rows that no ledger vouches for: `ask` says what harm they do; empty for none. Verification must not call the rest faulty for them.
    void beside(const QString &name, const std::function<QString(const QString &path)> &alter, const std::function<QString(const QString &path)> &ask);

    /// Whether an alteration is among those that this run tries. The short form tries one in some.
    bool isTurn();
    /// A number below `bound`, the same in every run.
    qint64 number(qint64 bound) { return static_cast<qint64>(m_random.bounded(static_cast<quint64>(bound))); }
    quint8 anotherByte(char than);

    const std::vector<Class> &classes() const { return m_classes; }

private:
    Class &now() { return m_classes.back(); }
    QString freshStore();
    void judge(const QString &name, const QByteArray &zip);
    bool isSameInside(const QByteArray &zip);
    QByteArray readByOthers(const QString &path);
    void count(const QStringList &rules);
    void miss(const QString &name, const QString &why);
    void lookAtMemory(const QString &name);
    session::Known known() const;

    const ClosedJob &m_job;
    Extent m_extent;
    QByteArray m_zip;
    Bag m_bag;
    core::Digest m_head;
    core::Digest m_root;
    QSet<core::Digest> m_seen;
    std::vector<Class> m_classes;
    QRandomGenerator m_random;
    QTemporaryDir m_folder;
    std::unique_ptr<QProcess> m_otherReader;
    QByteArray m_others; ///< what another reader finds in the original
    bool m_isOverMemory = false;
};

/// Prints the table, what was missed, and what each rule told.
void print(QTextStream &out, const std::vector<Class> &classes);
bool isGood(const std::vector<Class> &classes);

} // namespace battery
