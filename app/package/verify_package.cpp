// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/verify_package.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>

#include "app/package/package_evidence.hpp"
#include "app/session/linked_reader.hpp"
#include "app/session/read_on.hpp"
#include "core/ledger/canonical.hpp"

namespace package {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Package", text); }

/// Compares what is made of the entries with what they give here.
class Derived {
public:
    Derived(PackageEvidence &package, session::VerifyReport &report) : m_package(package), m_report(report) {}

    core::Result<void> compare(const core::JobRecord &job, const Going &going)
    {
        const auto labels = labelsIn(m_package.labels());
        if (!labels) {
            fault(u"package.labels"_s, tr("bag-info.txt lacks a label that a package has, or is of a format that this program does not know."));
            return {};
        }
        if (!is(names::info, core::bag::info(labelsOf(job, *labels, m_package.payloadBytes(), m_package.payloadFiles()))))
            fault(u"package.labels"_s, tr("bag-info.txt says something else than the entries do."));
        compareInstructions(*labels);
        if (!is(names::csv, csvOf(job)))
            unlike(*labels, u"package.csv"_s, names::csv);
        // Setting the pages takes longer than all the rest, and what is faulty is not made good by them.
        return m_report.faults.empty() ? comparePdf(job, *labels, going) : core::Result<void>();
    }

private:
    void fault(const QString &rule, const QString &sentence) { m_report.faults.push_back({m_package.job().value_or(session::noLedger()), 0, rule, sentence}); }

    /// Never unpacks more than what is wanted: what is longer is another file.
    bool is(const QString &path, const core::Result<QByteArray> &wanted) const { return wanted && m_package.file(path, wanted->size()) == wanted; }

    bool isOurs(const Labels &labels) const { return labels.version == labelsHere(labels.paper).version; }

    /// What this program makes of the entries differs: a fault, unless another version made it, which may set it out otherwise.
    void unlike(const Labels &labels, const QString &rule, const QString &path)
    {
        if (isOurs(labels))
            fault(rule, tr("%1 is not what these entries give: it was changed.").arg(path));
        else
            m_report.reservations.push_back(tr("%1 was written by version %2 and could not be compared by this version: do not rely on it. Make it anew from the entries.").arg(path, labels.version));
    }

    void compareInstructions(const Labels &labels)
    {
        if (!is(names::instructions, instructions()))
            unlike(labels, u"package.instructions"_s, names::instructions);
        if (!is(names::script, script()))
            unlike(labels, u"package.instructions"_s, names::script);
    }

    core::Result<void> comparePdf(const core::JobRecord &job, const Labels &labels, const Going &going)
    {
        const Labels here = labelsHere(labels.paper);
        if (labels.version != here.version || labels.typeset != here.typeset) {
            m_report.reservations.push_back(tr("%1 was set with %2 and could not be compared here (%3): do not rely on it. Make it anew from the entries.").arg(names::pdf, labels.typeset, here.typeset));
            return {};
        }
        const record::Progress paging = [&](int page, int pages) { return !going || going(page, std::max(page, pages)) ? record::Going::On : record::Going::Cancel; };
        const auto pdf = pdfOf(job, labels.paper, [this](const core::Digest &digest) { return m_package.attachment(digest); }, paging);
        if (!pdf && pdf.error().code == core::ErrorCode::Cancelled)
            return core::failure(core::ErrorCode::Cancelled, tr("Verifying was stopped; nothing was said about the rest."));
        if (!pdf)
            m_report.reservations.push_back(tr("%1 could not be compared: %2").arg(names::pdf, pdf.error().message));
        else if (!is(names::pdf, pdf))
            fault(u"package.pdf"_s, tr("%1 is not what these entries give: it was changed.").arg(names::pdf));
        return {};
    }

    PackageEvidence &m_package;
    session::VerifyReport &m_report;
};

/// Ledgers reach exactly as far as they are pinned, and no ledger is there that nobody pins: so one job at one head has one package.
void lookAtReach(PackageEvidence &package, session::VerifyReport &report)
{
    Reach reach;
    for (const session::VerifyReport::Ledger &ledger : report.ledgers) {
        const auto id = core::LedgerId::parse(ledger.name);
        if (ledger.isRegister || !id)
            continue;
        (void)package.forEach(*id, 0, [&](const db::StoredEntryView &row) {
            if (const auto said = core::parseStatement(row.bytes))
                reach.take(*said, *package.job());
            return db::Walk::On;
        });
    }
    for (const session::VerifyReport::Ledger &ledger : report.ledgers) {
        const auto id = core::LedgerId::parse(ledger.name);
        if (!id || id == package.job())
            continue;
        const auto at = reach.linked.find(*id);
        const qint64 wanted = ledger.isRegister ? reach.reg : at == reach.linked.end() ? 0 : at->second;
        if (ledger.entries != wanted)
            report.faults.push_back({*id, wanted + 1, u"package.reach"_s, tr("The ledger is there up to entry %1; the job's entries pin it up to entry %2.").arg(ledger.entries).arg(wanted)});
    }
}

About aboutOf(const core::JobRecord &job)
{
    const core::JobFacts &facts = job.job().facts;
    return {facts.workOrder, facts.aircraft, facts.title, job.isClosed(), job.entries().back().said.ledger, job.head()};
}

} // namespace

bool looksLikePackage(const QString &path)
{
    // A pipe would be waited for until somebody writes into it.
    if (!QFileInfo(path).isFile())
        return false;
    QFile file(path);
    constexpr qint64 signature = 4;
    return file.open(QIODevice::ReadOnly) && file.read(signature) == "PK\x03\x04";
}

core::Result<PackageVerdict> verifyPackage(const QString &path, const session::Known &known, const core::Kinds &kinds, const Going &going)
{
    auto package = PackageEvidence::open(path, going);
    if (!package && package.error().code == core::ErrorCode::Damaged)
        return PackageVerdict{{.faults = {{session::noLedger(), 0, u"package.zip"_s, package.error().message}}, .rootFingerprint = {}, .ledgers = {}}, {}};
    if (!package)
        return core::failure(package.error());
    auto report = session::verify(**package, known, going);
    if (!report)
        return core::failure(report.error());
    PackageVerdict verdict{*std::move(report), {}};
    if (!(*package)->job() || !(*package)->reg())
        return verdict;
    lookAtReach(**package, verdict.report);
    auto job = session::readEntries(**package, *(*package)->job());
    const auto reg = session::readEntries(**package, *(*package)->reg());
    if (!job || !reg || job->empty()) {
        verdict.report.reservations.push_back(tr("PDF, CSV and labels were not compared, since the entries that they are made of do not hold together."));
        return verdict;
    }
    core::JobRecord record(*std::move(job), *reg, kinds);
    session::showLinked(record, **package);
    verdict.about = aboutOf(record);
    if (const auto compared = Derived(**package, verdict.report).compare(record, going); !compared)
        return core::failure(compared.error());
    return verdict;
}

} // namespace package
