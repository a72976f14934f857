// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <array>

#include "app/package/contents.hpp"
#include "core/package/signature_line.hpp"
#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

constexpr qsizetype half = 32;

/// The same number modulo the order of the group: S + L (RFC 8032, section 5.1.7 asks for 0 <= S < L). Little-endian.
QByteArray plusOrder(const QByteArray &sound)
{
    QByteArray signature = sound;
    const QByteArray order = QByteArray::fromHex("edd3f55c1a631258d69cf7a2def9de1400000000000000000000000000000010");
    int carry = 0;
    for (qsizetype at = 0; at < half; ++at) {
        const int sum = static_cast<uchar>(signature.at(half + at)) + static_cast<uchar>(order.at(at)) + carry;
        signature[half + at] = static_cast<char>(sum & 0xff);
        carry = sum >> 8;
    }
    return signature;
}

using Change = std::pair<const char *, QByteArray (*)(const QByteArray &)>;

const Change changes[] = {
    {"zeros", [](const QByteArray &) { return QByteArray(2 * half, '\0'); }},
    {"R alone is zeros", [](const QByteArray &signature) { return QByteArray(half, '\0') + signature.last(half); }},
    {"S alone is zeros", [](const QByteArray &signature) { return signature.first(half) + QByteArray(half, '\0'); }},
    {"S + L", &plusOrder},
    {"S + L, twice", [](const QByteArray &signature) { return plusOrder(plusOrder(signature)); }},
    {"R with its sign turned", [](const QByteArray &signature) {
         QByteArray other = signature;
         other[half - 1] = static_cast<char>(other.at(half - 1) ^ 0x80);
         return other;
     }},
    {"the neutral point for R, S zero", [](const QByteArray &) { return QByteArray(1, '\1') + QByteArray(2 * half - 1, '\0'); }},
    {"the neutral point for R, not in its one spelling", [](const QByteArray &) { return QByteArray::fromHex("eeffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f") + QByteArray(half, '\0'); }},
    {"halves swapped", [](const QByteArray &signature) { return signature.last(half) + signature.first(half); }},
};

using Spell = std::pair<const char *, QByteArray (*)(const QByteArray &)>;

/// Other texts of a signature's line.
const Spell spellings[] = {
    {"no padding", [](const QByteArray &line) { return QByteArray(line).replace("==\"", "\""); }},
    {"one sign of padding", [](const QByteArray &line) { return QByteArray(line).replace("==\"", "=\""); }},
    {"bits in the last digit that say nothing", [](const QByteArray &line) {
         QByteArray other = line;
         const qsizetype at = other.indexOf("==\"") - 1;
         other[at] = other.at(at) == 'A' ? 'B' : other.at(at) == 'Q' ? 'R' : other.at(at) == 'g' ? 'h' : 'x'; // 64 bytes leave A, Q, g or w
         return other;
     }},
    {"the alphabet for addresses", [](const QByteArray &line) { return QByteArray(line).replace('+', '-').replace('/', '_'); }},
    {"a blank in base64", [](const QByteArray &line) { return QByteArray(line).insert(line.size() - 20, ' '); }},
    {"an escaped letter", [](const QByteArray &line) { return QByteArray(line).replace("\"hash\"", "\"h\\u0061sh\""); }},
    {"an escaped slash", [](const QByteArray &line) { return QByteArray(line).replace("==\"", "==\\/\""); }},
    {"a blank", [](const QByteArray &line) { return QByteArray(line).replace(",\"seq\"", ", \"seq\""); }},
    {"a member more", [](const QByteArray &line) { return line.chopped(1) + ",\"x\":1}"; }},
    {"seq as a text", [](const QByteArray &line) { return QByteArray(line).replace("\"seq\":", "\"seq\":\"").replace(",\"signature\"", "\",\"signature\""); }},
    {"seq, one digit more", [](const QByteArray &line) { return QByteArray(line).replace(",\"signature\"", "0,\"signature\""); }},
    {"digest in capitals", [](const QByteArray &line) { return line.first(9) + line.sliced(9, 64).toUpper() + line.sliced(73); }},
    {"a byte more in the signature", [](const QByteArray &line) { return QByteArray(line).replace("==\"", "A=\""); }},
    {"another digest", [](const QByteArray &line) { return line.first(9) + QByteArray(64, '0') + line.sliced(73); }},
};

void entryBySignature(Battery &battery, const Ledgers &sound)
{
    battery.begin(u"a signature put for another, digests repaired"_s);
    battery.control(battery.bag().zip());
    const auto put = [&](const core::LedgerId &ledger, std::size_t at, const QString &what, const QByteArray &signature) {
        battery.bag(u"%1, entry %2: %3"_s.arg(nameOf(ledger)).arg(at + 1).arg(what), [&](Bag &bag) {
            std::vector<core::Entry> forged = sound.entries.at(ledger);
            forged[at].signature = signature;
            putLines(bag, nameOf(ledger), forged);
            bag.repairDigests();
        });
    };
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            for (const auto &[what, change] : changes)
                put(ledger, at, QString::fromLatin1(what), change(entries[at].signature));
            put(ledger, at, u"that of the next"_s, entries[(at + 1) % entries.size()].signature);
            for (const auto &[other, theirs] : sound.entries)
                put(ledger, at, u"that of one in "_s + nameOf(other), theirs[(at + 2) % theirs.size()].signature);
            for (const char *who : {"root", "lead", "tech", "insp", "insq", "idle"}) {
                const core::SigningKey &key = battery.job().keys.at(person(who));
                if (key.publicKey().fingerprint() != entries[at].said.key)
                    put(ledger, at, u"one by "_s + QString::fromLatin1(who), *key.sign(entries[at].bytes));
            }
            put(ledger, at, u"one by nobody who is enrolled"_s, *keyOf(77).sign(entries[at].bytes));
            constexpr qint64 flips = 6;
            for (qint64 time = 0; time < flips; ++time) {
                QByteArray flipped = entries[at].signature;
                const qint64 byte = battery.number(flipped.size());
                flipped[byte] = static_cast<char>(flipped.at(byte) ^ (1 << battery.number(8)));
                put(ledger, at, u"a bit in byte %1"_s.arg(byte), flipped);
            }
        }
    }
}

void linesOfSignatures(Battery &battery, const Ledgers &sound)
{
    battery.begin(u"another spelling of a signature, digests repaired"_s);
    battery.control(battery.bag().zip());
    for (const auto &[ledger, entries] : sound.entries) {
        const QString path = nameOf(ledger) + package::names::signatures;
        for (std::size_t at = 0; at < entries.size(); ++at) {
            for (const auto &[what, write] : spellings) {
                battery.bag(u"%1, line %2: %3"_s.arg(path).arg(at + 1).arg(QLatin1String(what)), [&, to = write](Bag &bag) {
                    QList<QByteArray> lines = bag.bytes(path).split('\n');
                    QByteArray &line = lines[static_cast<qsizetype>(at)];
                    line = to(line);
                    bag.bytes(path) = lines.join('\n');
                    bag.repairDigests();
                });
            }
        }
    }
}

} // namespace

void signatures(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    entryBySignature(battery, sound);
    linesOfSignatures(battery, sound);
}

} // namespace battery::classes
