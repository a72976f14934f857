// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/ledgers.hpp"

#include "app/package/contents.hpp"
#include "app/session/linked_reader.hpp"
#include "core/ledger/canonical.hpp"
#include "core/package/signature_line.hpp"

namespace battery {

namespace {

using namespace Qt::StringLiterals;

/// What was forged, as if it were read from somewhere.
class InHand final : public session::Evidence {
public:
    explicit InHand(const Ledgers &ledgers) : m_ledgers(ledgers) {}
    core::Result<std::vector<db::StoredLedger>> ledgers() override { return std::vector<db::StoredLedger>(); }
    core::Result<void> forEach(const core::LedgerId &ledger, qint64 afterSeq, const db::EntryVisitor &visit) override
    {
        const auto at = m_ledgers.entries.find(ledger);
        qint64 place = 0;
        for (const core::Entry &entry : at == m_ledgers.entries.end() ? std::vector<core::Entry>() : at->second) {
            const QByteArray hash = entry.hash.bytes();
            if (++place > afterSeq && visit({place, entry.bytes, hash, entry.signature}) == db::Walk::Stop)
                break;
        }
        return {};
    }
    core::Result<void> forEachAttachment(const AttachmentVisitor &) override { return {}; }
    core::Result<std::vector<core::Fault>> faultsOfTheWhole() override { return std::vector<core::Fault>(); }

private:
    const Ledgers &m_ledgers;
};

} // namespace

QString nameOf(const core::LedgerId &ledger)
{
    return ledger == jobLedger() ? QString(package::names::job) : ledger == registerLedger() ? QString(package::names::reg) : package::names::linked + ledger.text();
}

void putLines(Bag &bag, const QString &name, const std::vector<core::Entry> &entries)
{
    QByteArray lines;
    QByteArray signatures;
    for (const core::Entry &entry : entries) {
        lines += entry.bytes + '\n';
        signatures += core::signatureLine({entry.hash, entry.said.seq, entry.signature}) + '\n';
    }
    bag.bytes(name + package::names::entries) = lines;
    bag.bytes(name + package::names::signatures) = signatures;
}

Ledgers Ledgers::of(const Bag &bag)
{
    Ledgers ledgers;
    for (const core::LedgerId &ledger : {registerLedger(), jobLedger(), shopLedger()}) {
        QList<QByteArray> lines = bag.bytes(nameOf(ledger) + package::names::entries).split('\n');
        const QList<QByteArray> beside = bag.bytes(nameOf(ledger) + package::names::signatures).split('\n');
        lines.removeLast();
        for (qsizetype at = 0; at < lines.size(); ++at) {
            const auto signature = core::parseSignatureLine(beside.at(at));
            ledgers.entries[ledger].push_back({*core::parseStatement(lines.at(at)), lines.at(at), signature->hash, signature->signature});
        }
    }
    return ledgers;
}

core::Digest Ledgers::digestOf(const core::LedgerId &ledger, qint64 seq, const core::Digest &otherwise)
{
    const auto found = entries.find(ledger);
    const auto at = static_cast<std::size_t>(seq - 1);
    if (found == entries.end() || seq < 1 || at >= found->second.size())
        return otherwise;
    rebuildOne(ledger, at);
    return found->second[at].hash;
}

void Ledgers::rebuildOne(const core::LedgerId &ledger, std::size_t at)
{
    if (!m_done.insert({ledger, at}).second)
        return; // done, or under way: a pin that leads round in a circle stays as it is
    core::Entry &entry = entries.at(ledger)[at];
    core::Statement &said = entry.said;
    said.prev = at == 0 ? said.prev : digestOf(ledger, static_cast<qint64>(at), said.prev);
    if (said.reg)
        said.reg->hash = digestOf(registerLedger(), said.reg->seq, said.reg->hash);
    for (core::LinkedHead &one : said.linked)
        one.head.hash = digestOf(one.ledger, one.head.seq, one.head.hash);
    const QByteArray bytes = core::canonicalBytes(said);
    if (bytes == entry.bytes)
        return;
    entry.bytes = bytes;
    entry.hash = core::Digest::of(bytes);
    if (const core::SigningKey *key = (*m_sign)(said))
        entry.signature = *key->sign(bytes);
}

void Ledgers::rebuild(const Sign &sign)
{
    m_sign = &sign;
    m_done.clear();
    for (const auto &[ledger, all] : entries) {
        for (std::size_t at = 0; at < all.size(); ++at)
            rebuildOne(ledger, at);
    }
    m_sign = nullptr;
}

void Ledgers::putInto(Bag &bag, const core::Kinds &kinds) const
{
    for (const auto &[ledger, all] : entries)
        putLines(bag, nameOf(ledger), all);
    core::JobRecord record(entries.at(jobLedger()), entries.at(registerLedger()), kinds);
    InHand inHand(*this);
    session::showLinked(record, inHand);
    bag.bytes(package::names::csv) = package::csvOf(record);
    package::Labels labels = package::labelsHere(record::PageSize::A4);
    labels.typeset = u"typefaces that are not here"_s; // as in the package that is altered, see Battery
    bag.bytes(package::names::info) = core::bag::info(package::labelsOf(record, labels, 0, 0));
    bag.repairDigests();
}

const core::SigningKey *nobody(const core::Statement &) { return nullptr; }

Ledgers::Sign everybody(const ClosedJob &job)
{
    return [&job](const core::Statement &said) {
        const auto key = job.byFingerprint.find(said.key);
        return key == job.byFingerprint.end() ? nullptr : &key->second;
    };
}

} // namespace battery
