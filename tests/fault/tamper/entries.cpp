// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/contents.hpp"
#include "core/ledger/canonical.hpp"
#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;
using core::Statement;

const core::Digest otherDigest = core::Digest::of("another");

using Change = std::pair<const char *, void (*)(Statement &)>;

/// Every member of an entry, changed in one or several ways. `prev` and the digests of pins are made right again wherever an entry is found that
/// they could name.
const Change changes[] = {
    {"at, a millisecond later", [](Statement &said) { said.at = core::Instant::fromMilliseconds(said.at.milliseconds() + 1); }},
    {"at, a day earlier", [](Statement &said) { said.at = core::Instant::fromMilliseconds(said.at.milliseconds() - 86'400'000); }},
    {"author", [](Statement &said) { said.author = person(said.author == person("tech") ? "lead" : "tech"); }},
    {"author, nobody", [](Statement &said) { said.author = person("nobody"); }},
    {"key", [](Statement &said) { said.key = said.key == keyOf(2).publicKey().fingerprint() ? keyOf(3).publicKey().fingerprint() : keyOf(2).publicKey().fingerprint(); }},
    {"key, nobody's", [](Statement &said) { said.key = otherDigest; }},
    {"meaning", [](Statement &said) { said.meaning = said.meaning == u"performed" ? u"recorded"_s : u"performed"_s; }},
    {"kind", [](Statement &said) { said.kind = said.kind == u"interface.reconnected" ? u"interface.disconnected"_s : u"interface.reconnected"_s; }},
    {"kind, none", [](Statement &said) { said.kind = u"nothing.done"_s; }},
    {"subject", [](Statement &said) { said.subject = said.subject == u"E2" ? u"E3"_s : u"E2"_s; }},
    {"subject, none or some", [](Statement &said) { said.subject = said.subject ? std::nullopt : std::optional(u"E1"_s); }},
    {"body, one more", [](Statement &said) { said.body.set(u"remarks"_s, u"All is well"_s); }},
    {"body, empty", [](Statement &said) { said.body = said.body.isEmpty() ? core::json::Object{{u"x"_s, 1}} : core::json::Object(); }},
    {"ledger", [](Statement &said) { said.ledger = *core::LedgerId::parse(u"00000000-0000-4000-8000-000000000009"); }},
    {"seq, one more", [](Statement &said) { ++said.seq; }},
    {"seq, one less", [](Statement &said) { --said.seq; }},
    {"register, none or some", [](Statement &said) { said.reg = said.reg ? std::nullopt : std::optional(core::Head{1, otherDigest}); }},
    {"register, one back", [](Statement &said) { said.reg = core::Head{said.reg ? said.reg->seq - 1 : 1, otherDigest}; }},
    {"register, one on", [](Statement &said) { said.reg = core::Head{said.reg ? said.reg->seq + 1 : 2, otherDigest}; }},
    {"register, beyond the end", [](Statement &said) { said.reg = core::Head{99, otherDigest}; }},
    {"linked, none or some", [](Statement &said) { said.linked = said.linked.empty() ? std::vector<core::LinkedHead>{{shopLedger(), {1, otherDigest}}} : std::vector<core::LinkedHead>(); }},
    {"linked, another", [](Statement &said) { said.linked = {{*core::LedgerId::parse(u"other"), {1, otherDigest}}}; }},
    {"linked, one back", [](Statement &said) {
         for (core::LinkedHead &one : said.linked)
             --one.head.seq;
     }},
    {"linked, one on", [](Statement &said) {
         for (core::LinkedHead &one : said.linked)
             ++one.head.seq;
     }},
};

/// What stands in the body: each member another one of its type.
std::vector<std::pair<QString, core::json::Object>> otherBodies(const core::json::Object &body)
{
    std::vector<std::pair<QString, core::json::Object>> others;
    for (const auto &[name, value] : body.members()) {
        core::json::Object other = body;
        if (const QString *text = value.string())
            other.set(name, *text + u'x');
        else if (const qint64 *number = value.integer())
            other.set(name, *number + 1);
        else
            other.set(name, core::json::Value());
        others.emplace_back(name, other);
        core::json::Object shorter = body;
        shorter.remove(name);
        others.emplace_back(name + u" removed"_s, shorter);
    }
    return others;
}

/// Hands each entry, with a copy of all ledgers, to whoever changes it; `sign` afterwards signs what changed.
void eachChange(Battery &battery, const Ledgers &sound, const Ledgers::Sign &sign)
{
    const auto alter = [&](const core::LedgerId &ledger, std::size_t at, const QString &what, const std::function<void(Statement &)> &change) {
        battery.bag(u"%1, entry %2, %3"_s.arg(nameOf(ledger)).arg(at + 1).arg(what), [&](Bag &bag) {
            Ledgers forged = sound;
            change(forged.said(ledger, at));
            forged.rebuild(sign);
            forged.putInto(bag, battery.job().kinds);
        });
    };
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            for (const auto &[what, change] : changes)
                alter(ledger, at, QString::fromLatin1(what), change);
            for (const auto &[what, body] : otherBodies(entries[at].said.body))
                alter(ledger, at, u"body: "_s + what, [&other = body](Statement &said) { said.body = other; });
        }
    }
}

using Respell = std::pair<const char *, QByteArray (*)(const QByteArray &)>;

QByteArray replaced(const QByteArray &bytes, const QByteArray &from, const QByteArray &to) { return QByteArray(bytes).replace(from, to); }

/// Other JSON texts that say the same (RFC 8259), none of them canonical (RFC 8785).
const Respell respellings[] = {
    {"a blank behind a colon", [](const QByteArray &bytes) { return replaced(bytes, "\"author\":", "\"author\": "); }},
    {"a blank before the end", [](const QByteArray &bytes) { return bytes.chopped(1) + " }"; }},
    {"a blank behind the end", [](const QByteArray &bytes) { return bytes + ' '; }},
    {"a tab at the beginning", [](const QByteArray &bytes) { return '\t' + bytes; }},
    {"v as 1.0", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":1.0}"); }},
    {"v as 1e0", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":1e0}"); }},
    {"v as a text", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":\"1\"}"); }},
    {"v twice", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":1,\"v\":1}"); }},
    {"v first", [](const QByteArray &bytes) { return "{\"v\":1," + replaced(bytes, ",\"v\":1}", "}").sliced(1); }},
    {"an escaped letter", [](const QByteArray &bytes) { return replaced(bytes, "\"author\":", "\"\\u0061uthor\":"); }},
    {"an escaped slash", [](const QByteArray &bytes) { return replaced(bytes, "\"meaning\":\"", "\"meaning\":\"\\/"); }},
    {"another author in front, the name twice", [](const QByteArray &bytes) { return replaced(bytes, "\"author\":", "\"author\":\"root\",\"author\":"); }},
    {"a member more", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":1,\"w\":1}"); }},
    {"v 2", [](const QByteArray &bytes) { return replaced(bytes, "\"v\":1}", "\"v\":2}"); }},
    {"half a surrogate pair", [](const QByteArray &bytes) { return replaced(bytes, "\"meaning\":\"", "\"meaning\":\"\\ud800"); }},
    {"a byte that is no UTF-8", [](const QByteArray &bytes) { return replaced(bytes, "\"meaning\":\"", "\"meaning\":\"\xff"); }},
    {"an array around it", [](const QByteArray &bytes) { return '[' + bytes + ']'; }},
    {"a comment", [](const QByteArray &bytes) { return bytes + "//"; }},
};

/// The digest follows, and the author signs the other spelling with their true key, or does not.
void respell(Battery &battery, const Ledgers &sound, const QString &name, const Ledgers::Sign &sign)
{
    battery.begin(name);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            for (const auto &[what, write] : respellings) {
                battery.bag(u"%1, entry %2: %3"_s.arg(nameOf(ledger)).arg(at + 1).arg(QLatin1String(what)), [&, to = write, &own = entries, file = nameOf(ledger)](Bag &bag) {
                    std::vector<core::Entry> forged = own;
                    core::Entry &entry = forged[at];
                    entry.bytes = to(entry.bytes);
                    entry.hash = core::Digest::of(entry.bytes);
                    if (const core::SigningKey *key = sign(entry.said))
                        entry.signature = *key->sign(entry.bytes);
                    putLines(bag, file, forged);
                    bag.repairDigests();
                });
            }
        }
    }
}

} // namespace

void members(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    Ledgers again = sound;
    again.rebuild(&nobody);
    Bag written = battery.bag();
    again.putInto(written, battery.job().kinds);
    battery.begin(u"a member of an entry; chain, pins, digests, labels, CSV made right; nobody signs"_s);
    battery.control(written.zip()); // the forger's tools change nothing where nothing is to be changed
    eachChange(battery, sound, &nobody);
    // All of the crew are in it and sign again: only what the rules forbid is seen. The rest is sound, and is not what was printed.
    battery.begin(u"the same, and everybody signs again"_s, Elsewhere::Head, u"when all signers agree on another story, only a digest from elsewhere tells"_s);
    for (auto &[ledger, entries] : again.entries) {
        for (core::Entry &entry : entries)
            entry.signature = *everybody(battery.job())(entry.said)->sign(entry.bytes);
    }
    again.putInto(written, battery.job().kinds);
    battery.control(written.zip());
    eachChange(battery, sound, everybody(battery.job()));
}

void spellings(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    respell(battery, sound, u"another spelling of an entry, digest made right, not signed"_s, &nobody);
    respell(battery, sound, u"another spelling of an entry, signed by its author"_s, everybody(battery.job()));
}

} // namespace battery::classes
