// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>

#include "core/ledger/canonical.hpp"
#include "db/store.hpp"
#include "tests/app/cli/raw_sql.hpp"
#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/ledgers.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

QString where(const core::LedgerId &ledger, std::size_t seq) { return u" WHERE seq = %1 AND ledger = (SELECT id FROM ledgers WHERE uuid = '%2')"_s.arg(seq).arg(ledger.text()); }

/// One change to a row of the record, its triggers put back behind it.
void row(Battery &battery, const QString &name, const QString &sql, const std::vector<QByteArray> &bytes = {})
{
    battery.store(name, [&](const QString &path) { return tamper(path, sql, bytes); });
}

QByteArray flipped(QByteArray bytes, qint64 bit)
{
    bytes[bit / 8] = static_cast<char>(bytes.at(bit / 8) ^ (1 << (bit % 8)));
    return bytes;
}

void entryRows(Battery &battery, const Ledgers &sound)
{
    battery.begin(u"store: a row of an entry"_s);
    battery.storeControl();
    const QString update = u"UPDATE entries SET %1 = ?1"_s;
    for (const auto &[ledger, entries] : sound.entries) {
        for (std::size_t at = 0; at < entries.size(); ++at) {
            const core::Entry &entry = entries[at];
            const QString here = where(ledger, at + 1);
            const QString name = u"%1, entry %2: "_s.arg(nameOf(ledger)).arg(at + 1);
            const std::pair<QString, QByteArray> columns[] = {{u"bytes"_s, entry.bytes}, {u"hash"_s, entry.hash.bytes()}, {u"signature"_s, entry.signature}};
            for (const auto &[column, value] : columns) {
                constexpr qint64 times = 3;
                for (qint64 time = 0; time < times; ++time) {
                    const qint64 bit = battery.number(value.size() * 8);
                    row(battery, u"%1%2, bit %3"_s.arg(name, column).arg(bit), update.arg(column) + here, {flipped(value, bit)});
                }
            }
            row(battery, name + u"no bytes"_s, update.arg(u"bytes"_s) + here, {QByteArray("")});
            row(battery, name + u"the next one's bytes"_s, update.arg(u"bytes"_s) + here, {entries[(at + 1) % entries.size()].bytes});
            row(battery, name + u"the next one's signature"_s, update.arg(u"signature"_s) + here, {entries[(at + 1) % entries.size()].signature});
            core::Statement said = entry.said;
            said.body.set(u"remarks"_s, u"All is well"_s);
            const QByteArray bytes = core::canonicalBytes(said);
            row(battery, name + u"another story, its digest made right"_s, u"UPDATE entries SET bytes = ?1, hash = ?2"_s + here, {bytes, core::Digest::of(bytes).bytes()});
            row(battery, name + u"moved to the end"_s, u"UPDATE entries SET seq = 9000"_s + here);
            if (at + 1 < entries.size())
                row(battery, name + u"removed"_s, u"DELETE FROM entries"_s + here);
            row(battery, name + u"once more at the end"_s,
                u"INSERT INTO entries (ledger, seq, bytes, hash, signature) "
                "SELECT ledger, (SELECT max(last.seq) + 1 FROM entries AS last WHERE last.ledger = entries.ledger), bytes, hash, signature FROM entries"_s + here);
            for (const auto &[other, theirs] : sound.entries) {
                if (other != ledger)
                    row(battery, name + u"moved into "_s + nameOf(other), u"UPDATE entries SET ledger = (SELECT id FROM ledgers WHERE uuid = '%1'), seq = 9000"_s.arg(other.text()) + here);
            }
        }
    }
    battery.begin(u"store: the last rows gone"_s, Elsewhere::Head, u"as in a package: a digest from elsewhere tells"_s);
    battery.storeControl();
    for (const auto &[ledger, entries] : sound.entries) {
        if (ledger == registerLedger() || ledger == shopLedger())
            continue;
        for (std::size_t left = 0; left < entries.size(); ++left)
            row(battery, u"%1 after entry %2"_s.arg(nameOf(ledger)).arg(left), u"DELETE FROM entries WHERE seq > %1 AND ledger = (SELECT id FROM ledgers WHERE uuid = '%2')"_s.arg(left).arg(ledger.text()));
    }
}

void ledgerRows(Battery &battery)
{
    battery.begin(u"store: rows of ledgers and attachments"_s);
    battery.storeControl();
    for (const core::LedgerId &ledger : {registerLedger(), jobLedger(), shopLedger()}) {
        const QString name = nameOf(ledger) + u": "_s;
        const QString here = u" WHERE uuid = '%1'"_s.arg(ledger.text());
        row(battery, name + u"another name"_s, u"UPDATE ledgers SET uuid = 'other'"_s + here);
        row(battery, name + u"a name that is none"_s, u"UPDATE ledgers SET uuid = ' '"_s + here);
        row(battery, name + u"not the register, or the register"_s, u"DROP INDEX one_register; CREATE UNIQUE INDEX one_register ON ledgers (is_register) WHERE is_register = 2; UPDATE ledgers SET is_register = 1 - is_register"_s + here);
        row(battery, name + u"its row removed"_s, u"PRAGMA foreign_keys = OFF; DELETE FROM ledgers"_s + here);
        row(battery, name + u"its row and entries removed"_s, u"DELETE FROM entries WHERE ledger = (SELECT id FROM ledgers%1); DELETE FROM ledgers%1"_s.arg(here));
    }
    row(battery, u"a ledger without entries"_s, u"INSERT INTO ledgers (uuid, is_register) VALUES ('empty', 0)"_s);
    for (int id : {1, 2}) {
        const QString here = u" WHERE id = %1"_s.arg(id);
        row(battery, u"attachment %1: other bytes"_s.arg(id), u"UPDATE attachments SET bytes = x'00'"_s + here);
        row(battery, u"attachment %1: one byte more"_s.arg(id), u"UPDATE attachments SET bytes = CAST(bytes || x'00' AS BLOB)"_s + here);
        row(battery, u"attachment %1: removed"_s.arg(id), u"DELETE FROM attachments"_s + here);
        row(battery, u"attachment %1: another digest"_s.arg(id), u"UPDATE attachments SET digest = zeroblob(32)"_s + here);
        row(battery, u"attachment %1: bytes and digest"_s.arg(id), u"UPDATE attachments SET bytes = ?1, digest = ?2"_s + here, {"another", core::Digest::of("another").bytes()});
    }
    row(battery, u"attachments swapped"_s, u"UPDATE attachments SET bytes = (SELECT other.bytes FROM attachments AS other WHERE other.id = 3 - attachments.id)"_s);
}

} // namespace

void storeRows(Battery &battery)
{
    const Ledgers sound = Ledgers::of(battery.bag());
    entryRows(battery, sound);
    ledgerRows(battery);
}

void storeGuard(Battery &battery)
{
    battery.begin(u"store: its triggers, tables and indexes"_s);
    battery.storeControl();
    const auto run = [&](const QString &sql) { battery.store(sql, [&](const QString &path) { return runRaw(path, sql); }); };
    for (const char *table : {"entries", "ledgers", "attachments"}) {
        for (const char *what : {"changed", "deleted", "replaced"}) {
            const QString trigger = u"%1_are_never_%2"_s.arg(QLatin1String(table), QLatin1String(what));
            run(u"DROP TRIGGER "_s + trigger);
            run(u"DROP TRIGGER %1; CREATE TRIGGER %1 BEFORE UPDATE ON %2 BEGIN SELECT 1; END"_s.arg(trigger, QLatin1String(table)));
        }
        run(u"CREATE TRIGGER helpful AFTER INSERT ON %1 BEGIN SELECT 1; END"_s.arg(QLatin1String(table)));
        run(u"CREATE VIEW v_%1 AS SELECT * FROM %1"_s.arg(QLatin1String(table)));
    }
    run(u"DROP INDEX one_register"_s);
    run(u"ALTER TABLE entries ADD COLUMN note TEXT"_s);
    run(u"PRAGMA user_version = 99"_s);
    run(u"PRAGMA user_version = 0"_s);
    run(u"PRAGMA application_id = 1"_s);
    run(u"DROP TABLE entries"_s);
    run(u"DROP TABLE attachments"_s);
    run(u"DROP TABLE credentials"_s);
}

/// What no ledger vouches for: wrapped keys, counted attempts, and what is computed from the entries. Whoever can write the file can keep somebody from signing,
/// and cannot sign for them: a key that is not the one that the register names signs nothing.
void storeBeside(Battery &battery)
{
    battery.begin(u"store: wrapped keys and what is computed"_s, Elsewhere::Nothing, u"no ledger vouches for these: they can keep people from signing, not sign for them"_s);
    battery.storeControl();
    // Opens the store as the program does, and asks for everybody's key: it is the one that the register names, or none.
    const auto onlyTrueKeys = [&battery](const QString &path) -> QString {
        auto store = db::Store::open(path, db::Access::ReadWrite);
        if (!store)
            return store.error().message;
        for (const auto &[who, key] : battery.job().keys) {
            for (const QString &secret : {who.text() + u"-secret"_s, u"forged-secret"_s}) {
                const auto unlocked = (*store)->credentials().unlock(who, key.publicKey().fingerprint(), secret, station(), core::Instant::fromMilliseconds(2'000'000'000'000));
                if (!unlocked || unlocked->publicKey() == key.publicKey())
                    continue;
                // A key of somebody else's under this name: sealing refuses it.
                core::Statement said{jobLedger(), 1, core::Instant::fromMilliseconds(0), who, key.publicKey().fingerprint(), u"x"_s, u"x"_s, std::nullopt, {}, std::nullopt, {}};
                if (core::seal(said, *unlocked))
                    return who.text() + u" signs with a key that is not theirs"_s;
            }
        }
        return {};
    };
    const auto alter = [&](const QString &name, const QString &sql, const std::vector<QByteArray> &bytes = {}) {
        battery.beside(name, [&](const QString &path) { return tamper(path, sql, bytes); }, onlyTrueKeys);
    };
    const auto forged = core::wrap(keyOf(66), person("tech"), u"forged-secret"_s, station(), core::leastCost);
    for (const char *who : {"root", "lead", "tech", "insp", "insq", "idle"}) {
        const QString name = QString::fromLatin1(who);
        const QString here = u" WHERE person = '%1'"_s.arg(name);
        alter(name + u": no key"_s, u"DELETE FROM credentials"_s + here);
        for (const char *column : {"salt", "nonce", "sealed"})
            alter(u"%1: another %2"_s.arg(name, QLatin1String(column)), u"UPDATE credentials SET %1 = randomblob(length(%1))"_s.arg(QLatin1String(column)) + here);
        alter(name + u": the work of each guess lowered"_s, u"UPDATE credentials SET passes = passes + 1"_s + here);
        alter(name + u": a key of somebody else's"_s, u"UPDATE credentials SET sealed = ?1, salt = ?2, nonce = ?3, passes = 1, memory_bytes = 8192"_s + here,
              {forged->sealed, forged->salt, forged->nonce});
        alter(name + u": a key of somebody else's, with its fingerprint"_s,
              u"INSERT INTO credentials (person, fingerprint, station, passes, memory_bytes, salt, nonce, sealed) VALUES ('%1', ?4, ?5, 1, 8192, ?2, ?3, ?1)"_s.arg(name),
              {forged->sealed, forged->salt, forged->nonce, keyOf(66).publicKey().fingerprint().bytes(), station().id().bytes()});
        alter(name + u": the administrator's row"_s, u"UPDATE credentials SET (salt, nonce, sealed) = (SELECT salt, nonce, sealed FROM credentials WHERE person = 'root')"_s + here);
        alter(name + u": attempts"_s, u"INSERT OR REPLACE INTO attempts (person, fingerprint, wrong_in_a_row, last_at) SELECT person, fingerprint, 10, 0 FROM credentials"_s + here);
    }
    alter(u"where-used emptied"_s, u"DELETE FROM uses"_s);
    alter(u"where-used of another entry"_s, u"UPDATE uses SET seq = seq + 1000"_s);
}

} // namespace battery::classes
