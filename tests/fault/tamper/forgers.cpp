// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/contents.hpp"
#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;
using core::Statement;

constexpr const char *people[] = {"root", "lead", "tech", "insp", "insq", "idle"};

/// Alters one statement of each entry, has it signed by `mine` where it is the altered one and by `others` behind it.
struct Forger {
    Battery &battery;
    const Ledgers &sound;

    void forge(const QString &what, const core::LedgerId &ledger, std::size_t at, const std::function<void(Statement &)> &change, const core::SigningKey &mine, const Ledgers::Sign &others) const
    {
        battery.bag(u"%1, entry %2: %3"_s.arg(nameOf(ledger)).arg(at + 1).arg(what), [&](Bag &bag) {
            Ledgers forged = sound;
            change(forged.said(ledger, at));
            const Statement &altered = forged.said(ledger, at);
            const Ledgers::Sign sign = [&](const Statement &said) { return &said == &altered ? &mine : others(said); };
            forged.rebuild(sign);
            forged.putInto(bag, battery.job().kinds);
        });
    }
};

/// Somebody enrolled signs what another one did, under that one's name or under their own.
void another(Battery &battery, const Ledgers &sound)
{
    const Forger forger{battery, sound};
    const Ledgers::Sign all = everybody(battery.job());
    battery.begin(u"an entry signed with another's true key, later authors help"_s, Elsewhere::Head, u"under one's own name it is one's own signature: sound where the rules let them do it"_s);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            for (const char *who : people) {
                const core::SigningKey &key = battery.job().keys.at(person(who));
                const QString name = QString::fromLatin1(who);
                if (key.publicKey().fingerprint() == entries[at].said.key)
                    continue;
                forger.forge(u"in their name, by "_s + name, ledger, at, [](Statement &said) { said.body.set(u"remarks"_s, u"As told"_s); }, key, all);
                forger.forge(u"in their name with the key of "_s + name, ledger, at, [&](Statement &said) { said.key = key.publicKey().fingerprint(); }, key, all);
                forger.forge(u"in the name of "_s + name, ledger, at,
                             [&](Statement &said) {
                                 said.author = person(who);
                                 said.key = key.publicKey().fingerprint();
                             },
                             key, all);
                forger.forge(u"by "_s + name + u", and nobody helps"_s, ledger, at,
                             [&](Statement &said) {
                                 said.author = person(who);
                                 said.key = key.publicKey().fingerprint();
                             },
                             key, &nobody);
            }
            const core::SigningKey stranger = keyOf(88);
            forger.forge(u"by somebody who is not enrolled"_s, ledger, at, [&](Statement &said) { said.key = stranger.publicKey().fingerprint(); }, stranger, all);
            forger.forge(u"by somebody who is not enrolled, by name"_s, ledger, at,
                         [&](Statement &said) {
                             said.author = person("stranger");
                             said.key = stranger.publicKey().fingerprint();
                         },
                         stranger, all);
        }
    }
}

/// An inspection by one who may not, truly signed.
void unauthorised(Battery &battery, const Ledgers &sound)
{
    const Forger forger{battery, sound};
    battery.begin(u"inspected or released by one who may not, truly signed, everybody helps"_s);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            const QString kind = entries[at].said.kind;
            if (kind != u"inspection.accepted" && kind != u"job.closed") // that nothing was disturbed, the crew may say as well
                continue;
            for (const char *who : {"root", "lead", "tech", "idle"}) {
                const core::SigningKey &key = battery.job().keys.at(person(who));
                forger.forge(u"by "_s + QString::fromLatin1(who), ledger, at,
                             [&](Statement &said) {
                                 said.author = person(who);
                                 said.key = key.publicKey().fingerprint();
                             },
                             key, everybody(battery.job()));
            }
        }
    }
}

/// Moments and pins, moved by the author with all the later ones in it.
void moved(Battery &battery, const Ledgers &sound)
{
    const Forger forger{battery, sound};
    const Ledgers::Sign all = everybody(battery.job());
    const auto each = [&](const std::function<void(const core::LedgerId &, std::size_t, const core::SigningKey &)> &forge) {
        for (const auto &[ledger, entries] : sound.entries) {
            for (std::size_t at = 0; at < entries.size(); ++at)
                forge(ledger, at, battery.job().byFingerprint.at(entries[at].said.key));
        }
    };
    battery.begin(u"dated back or on by its author, everybody helps"_s, Elsewhere::Head, u"between its neighbours, nothing in the package tells; beyond them, the clock's rule does"_s);
    battery.control(battery.bag().zip());
    each([&](const core::LedgerId &ledger, std::size_t at, const core::SigningKey &key) {
        for (qint64 ms : {-1, -1'000, -30'000, -60'001, -600'000, -86'400'000, 1, 30'000, 61'000, 3'600'000, 86'400'000})
            forger.forge(u"by %1 ms"_s.arg(ms), ledger, at, [ms](Statement &said) { said.at = core::Instant::fromMilliseconds(said.at.milliseconds() + ms); }, key, all);
    });
    battery.begin(u"pins moved by its author, everybody helps"_s, Elsewhere::Head, u"no further back than the entry before: that much an author may say"_s);
    battery.control(battery.bag().zip());
    each([&](const core::LedgerId &ledger, std::size_t at, const core::SigningKey &key) {
        for (qint64 by : {-12, -6, -2, -1, 1, 2, 6}) {
            forger.forge(u"register by %1"_s.arg(by), ledger, at,
                         [by](Statement &said) {
                             if (said.reg)
                                 said.reg->seq += by;
                         },
                         key, all);
            forger.forge(u"linked by %1"_s.arg(by), ledger, at,
                         [by](Statement &said) {
                             for (core::LinkedHead &one : said.linked)
                                 one.head.seq += by;
                         },
                         key, all);
        }
    });
}

/// The register's public keys.
void keys(Battery &battery, const Ledgers &sound)
{
    const QString publicKey = u"public_key"_s;
    const auto &reg = sound.entries.at(registerLedger());
    const auto swapKeys = [&](Ledgers &forged, const std::map<QString, core::SigningKey> &given, const core::SigningKey *root) {
        // Whoever has a new key in the register signs with it from there on.
        std::map<core::Digest, core::SigningKey> now;
        for (std::size_t at = 0; at < reg.size(); ++at) {
            Statement &said = forged.said(registerLedger(), at);
            const auto mine = given.find(said.subject.value_or(QString()));
            const auto old = core::PublicKey::parse(said.body.text(publicKey));
            const bool isRoot = root && said.kind == u"register.founded";
            if (!old || (!isRoot && mine == given.end()))
                continue;
            const core::SigningKey &key = isRoot ? *root : mine->second;
            now.insert_or_assign(old->fingerprint(), key);
            said.body.set(publicKey, key.publicKey().hex());
        }
        for (auto &[ledger, entries] : forged.entries) {
            for (core::Entry &entry : entries) {
                if (const auto at = now.find(entry.said.key); at != now.end())
                    entry.said.key = at->second.publicKey().fingerprint();
            }
        }
        return now;
    };
    const auto signWith = [&battery](const std::map<core::Digest, core::SigningKey> &now, bool othersHelp) {
        return [&battery, now, othersHelp](const Statement &said) -> const core::SigningKey * {
            for (const auto &[old, key] : now) {
                if (key.publicKey().fingerprint() == said.key)
                    return &key;
            }
            return othersHelp ? everybody(battery.job())(said) : nullptr;
        };
    };
    const auto forge = [&](const QString &name, const std::map<QString, core::SigningKey> &given, const core::SigningKey *root, bool othersHelp) {
        battery.bag(name, [&](Bag &bag) {
            Ledgers forged = sound;
            const auto now = swapKeys(forged, given, root);
            const Ledgers::Sign sign = signWith(now, othersHelp);
            forged.rebuild(sign);
            forged.putInto(bag, battery.job().kinds);
        });
    };
    battery.begin(u"a public key replaced in the register, chain made right, the forger alone signs"_s);
    battery.control(battery.bag().zip());
    int number = 100;
    for (const char *who : people)
        forge(QString::fromLatin1(who), {{QString::fromLatin1(who), keyOf(++number)}}, nullptr, false);
    const core::SigningKey newRoot = keyOf(99);
    forge(u"the root's"_s, {}, &newRoot, false);
    battery.begin(u"a public key replaced in the register, root and crew help"_s, Elsewhere::Head, u"the root may enrol any key; the digest of what was signed before differs"_s);
    battery.control(battery.bag().zip());
    for (const char *who : people) {
        if (person(who) != person("root"))
            forge(QString::fromLatin1(who), {{QString::fromLatin1(who), keyOf(++number)}}, nullptr, true);
    }
    battery.begin(u"all of it told anew under another root"_s, Elsewhere::Root, u"a wholly forged package is sound in itself; only the root's fingerprint tells"_s);
    battery.control(battery.bag().zip());
    std::map<QString, core::SigningKey> allNew;
    for (int version = 0; version < 4; ++version) {
        for (const char *who : people)
            allNew.insert_or_assign(QString::fromLatin1(who), keyOf(++number));
        const core::SigningKey root = keyOf(++number);
        forge(u"version %1"_s.arg(version), allNew, &root, false);
        // Only the root's own key is another one, and the crew plays along.
        forge(u"version %1, with the crew"_s.arg(version), {}, &root, true);
    }
}

} // namespace

void forgers(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    unauthorised(battery, sound); // before the wider class, which counts no alteration twice
    another(battery, sound);
    moved(battery, sound);
    keys(battery, sound);
}

} // namespace battery::classes
