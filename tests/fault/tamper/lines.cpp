// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/contents.hpp"
#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

using Lines = QList<QByteArray>; ///< the last one is empty: what stands behind the last LF

/// Alters lines of a ledger: of its entries, of its signatures, or of both files alike. Digests are repaired.
void alter(Battery &battery, const core::LedgerId &ledger, const QString &name, const std::function<void(Lines &)> &change)
{
    const std::pair<const char *, std::vector<QLatin1String>> which[] = {
        {"entries", {package::names::entries}}, {"signatures", {package::names::signatures}}, {"both", {package::names::entries, package::names::signatures}}};
    for (const auto &[what, endings] : which) {
        battery.bag(u"%1, %2: %3"_s.arg(nameOf(ledger), QLatin1String(what), name), [&, files = endings](Bag &bag) {
            for (const QLatin1String ending : files) {
                Lines lines = bag.bytes(nameOf(ledger) + ending).split('\n');
                change(lines);
                bag.bytes(nameOf(ledger) + ending) = lines.join('\n');
            }
            bag.repairDigests();
        });
    }
}

void ofOne(Battery &battery, const core::LedgerId &ledger, qsizetype count)
{
    for (qsizetype at = 0; at < count; ++at) {
        const QString line = u"line %1 "_s.arg(at + 1);
        if (at + 1 < count) {
            alter(battery, ledger, line + u"removed"_s, [at](Lines &all) { all.removeAt(at); });
            alter(battery, ledger, line + u"one down"_s, [at](Lines &all) { all.swapItemsAt(at, at + 1); });
            alter(battery, ledger, line + u"to the end"_s, [at, count](Lines &all) { all.move(at, count - 1); });
        }
        alter(battery, ledger, line + u"twice"_s, [at](Lines &all) { all.insert(at, all.at(at)); });
        alter(battery, ledger, line + u"once more at the end"_s, [at, count](Lines &all) { all.insert(count, all.at(at)); });
        alter(battery, ledger, line + u"with CR"_s, [at](Lines &all) { all[at] += '\r'; });
        alter(battery, ledger, line + u"with a blank"_s, [at](Lines &all) { all[at] += ' '; });
        alter(battery, ledger, line + u"preceded by an empty one"_s, [at](Lines &all) { all.insert(at, QByteArray()); });
    }
    alter(battery, ledger, u"CR and LF throughout"_s, [](Lines &all) {
        for (qsizetype at = 0; at + 1 < all.size(); ++at)
            all[at] += '\r';
    });
    alter(battery, ledger, u"CR throughout"_s, [](Lines &all) { all = {all.join('\r')}; });
    alter(battery, ledger, u"no last LF"_s, [](Lines &all) { all.removeLast(); });
    alter(battery, ledger, u"an empty line at the end"_s, [](Lines &all) { all.append(QByteArray()); });
    alter(battery, ledger, u"blanks at the end"_s, [](Lines &all) { all.last() = "  "; });
    alter(battery, ledger, u"a byte order mark"_s, [](Lines &all) { all.first().prepend("\xef\xbb\xbf"); });
    alter(battery, ledger, u"a NUL at the end"_s, [](Lines &all) { all.last() = QByteArray(1, '\0'); });
    alter(battery, ledger, u"all in one array"_s, [](Lines &all) { all = {"[" + all.join(",") + "]", QByteArray()}; });
    alter(battery, ledger, u"turned round"_s, [](Lines &all) { std::reverse(all.begin(), all.end() - 1); });
    alter(battery, ledger, u"a line without end"_s, [](Lines &all) { all.insert(1, QByteArray(9 * 1024 * 1024, ' ')); });
}

void between(Battery &battery, const Ledgers &sound)
{
    battery.begin(u"lines of one ledger in another, digests repaired"_s);
    battery.control(battery.bag().zip());
    for (const auto &[from, ours] : sound.entries) {
        for (const auto &[to, theirs] : sound.entries) {
            if (from == to)
                continue;
            for (std::size_t at = 0; at < std::min(ours.size(), theirs.size()); ++at) {
                const auto swap = [&, entries = &ours, others = &theirs, fromName = nameOf(from), toName = nameOf(to)](Bag &bag, bool isBoth) {
                    std::vector<core::Entry> one = *entries;
                    std::vector<core::Entry> other = *others;
                    if (isBoth)
                        std::swap(one[at], other[at]);
                    else
                        other.insert(other.begin() + static_cast<std::ptrdiff_t>(at), one[at]);
                    putLines(bag, fromName, one);
                    putLines(bag, toName, other);
                    bag.repairDigests();
                };
                battery.bag(u"line %1 of %2 and %3 swapped"_s.arg(at + 1).arg(nameOf(from), nameOf(to)), [&](Bag &bag) { swap(bag, true); });
                battery.bag(u"line %1 of %2 put into %3"_s.arg(at + 1).arg(nameOf(from), nameOf(to)), [&](Bag &bag) { swap(bag, false); });
            }
        }
    }
}

/// Everything behind the cut is gone, and labels and CSV are made anew: an open job that looks sound.
void endCutOff(Battery &battery, const Ledgers &sound)
{
    battery.begin(u"the last entries cut off, everything repaired"_s, Elsewhere::Head, u"a job without its end looks like an open one"_s);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t left = 1; left < entries.size(); ++left) {
            battery.bag(u"%1 ends with entry %2"_s.arg(nameOf(ledger)).arg(left), [&, cut = ledger](Bag &bag) {
                Ledgers ledgers = sound;
                auto &shorter = ledgers.entries.at(cut);
                shorter.erase(shorter.begin() + static_cast<std::ptrdiff_t>(left), shorter.end());
                ledgers.putInto(bag, battery.job().kinds);
            });
        }
    }
    // The others cut to what is still pinned, as the program itself would have exported it then.
    const auto &job = sound.entries.at(jobLedger());
    for (std::size_t left = 1; left < job.size(); ++left) {
        battery.bag(u"the job ends with entry %1, the others where it pins them"_s.arg(left), [&](Bag &bag) {
            Ledgers ledgers = sound;
            auto &own = ledgers.entries.at(jobLedger());
            own.erase(own.begin() + static_cast<std::ptrdiff_t>(left), own.end());
            package::Reach reach;
            for (bool isFurther = true; isFurther;) {
                isFurther = false;
                for (const core::Entry &entry : own)
                    isFurther = reach.take(entry.said, jobLedger()) || isFurther;
                const auto &shop = sound.entries.at(shopLedger());
                for (std::size_t at = 0; at < shop.size() && static_cast<qint64>(at) < reach.linked[shopLedger()]; ++at)
                    isFurther = reach.take(shop[at].said, jobLedger()) || isFurther;
            }
            const auto cutTo = [&](const core::LedgerId &ledger, qint64 seq) {
                auto &entries = ledgers.entries.at(ledger);
                entries.erase(entries.begin() + std::min<std::ptrdiff_t>(seq, std::ssize(entries)), entries.end());
            };
            cutTo(registerLedger(), reach.reg);
            cutTo(shopLedger(), reach.linked[shopLedger()]);
            // What no entry names any more goes as well.
            QSet<QString> named;
            for (const core::Entry &entry : own)
                named.insert(entry.said.body.text(u"sha256"));
            for (const Bag::File &file : battery.bag().files) {
                if (file.path.startsWith(package::names::attachments) && !named.contains(file.path.section(u'/', -1).section(u'.', 0, 0)))
                    bag.remove(file.path);
            }
            ledgers.putInto(bag, battery.job().kinds);
            if (ledgers.entries.at(shopLedger()).empty()) {
                bag.remove(nameOf(shopLedger()) + package::names::entries);
                bag.remove(nameOf(shopLedger()) + package::names::signatures);
                bag.repairDigests();
            }
        });
    }
}

} // namespace

void lines(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    battery.begin(u"lines moved, removed, doubled, respelled; digests repaired"_s);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries)
        ofOne(battery, ledger, std::ssize(entries));
    between(battery, sound);
    endCutOff(battery, sound);
}

} // namespace battery::classes
