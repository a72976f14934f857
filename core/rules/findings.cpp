// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/findings.hpp"

#include "core/job/linked.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

const Finding *named(const Case &c)
{
    const auto id = FindingId::parse(c.draft.subject.value_or(QString()));
    return id ? c.job.finding(*id) : nullptr;
}

} // namespace

std::optional<Refusal> findingIsNew(const Case &c)
{
    const bool isItself = c.draft.kind == u"finding.raised";
    if (!isItself && !c.draft.body.contains(u"finding"))
        return std::nullopt; // it raises none
    const QString number = isItself ? c.draft.subject.value_or(QString()) : c.text(u"finding");
    const auto id = FindingId::parse(number);
    if (id && !c.job.finding(*id))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The finding number \"%1\" is taken or cannot be used. Take the next one.")).arg(number),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever raises the finding")));
}

std::optional<Refusal> findingsInterfaceIsListed(const Case &c)
{
    const auto id = InterfaceId::parse(c.text(u"interface"));
    if (!id || c.job.item(*id))
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "The list has no interface \"%1\".")).arg(id->text()), inWords(QT_TRANSLATE_NOOP("Rule", "whoever raises the finding")));
}

std::optional<Refusal> findingIsOpen(const Case &c)
{
    const Finding *finding = named(c);
    if (finding && !finding->closed)
        return std::nullopt;
    const QString sentence = finding ? inWords(QT_TRANSLATE_NOOP("Rule", "Finding %1 is closed already.")) : inWords(QT_TRANSLATE_NOOP("Rule", "There is no finding %1."));
    return refusal(c, sentence.arg(c.draft.subject.value_or(QString())), {});
}

std::optional<Refusal> findingIsClosedByInspector(const Case &c)
{
    const Finding *finding = named(c);
    const InterfaceState *item = finding && finding->item ? c.job.item(*finding->item) : nullptr;
    const Need need{.authority = Authority::Inspect,
                    .kind = item ? std::optional(item->listed.kind) : std::nullopt,
                    .aircraftType = c.job.facts.aircraftType,
                    .at = c.draft.at};
    const QString other = inWords(QT_TRANSLATE_NOOP("Rule", "another authorised inspector"));
    if (!authorisationFor(c.reg, c.draft.author, need))
        return refusal(c, whyNotAuthorised(c.reg, c.draft.author, need), other);
    if (const auto hand = item ? handOf(c.job, *item, c.draft.author) : std::nullopt)
        return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "%1 had a hand in %2 and cannot close a finding on it.")).arg(c.authorName(), itemInWords(*hand)), other);
    return std::nullopt;
}

std::optional<Refusal> deferralHasALimit(const Case &c)
{
    const bool isDeferred = c.text(u"disposition") == u"deferred";
    const QDate limit = QDate::fromString(c.text(u"limit"), Qt::ISODate);
    const QString inspector = inWords(QT_TRANSLATE_NOOP("Rule", "the inspector who disposes of it"));
    if (!isDeferred)
        return limit.isValid() ? std::optional(refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "Only what is deferred has a last day. Leave it out, or defer the finding.")), inspector)) : std::nullopt;
    if (limit.isValid() && limit >= c.draft.at.utcDate())
        return std::nullopt;
    return refusal(c, inWords(QT_TRANSLATE_NOOP("Rule", "A finding is deferred until a day at most, which its authority names, and which is not past.")), inspector);
}

std::optional<Refusal> photosFindingIsOnTheItem(const Case &c)
{
    const QString text = c.text(u"finding");
    const auto id = FindingId::parse(text);
    const Finding *finding = id ? c.job.finding(*id) : nullptr;
    if (text.isEmpty() || (finding && (!finding->item || (c.item && *finding->item == c.item->listed.id))))
        return std::nullopt;
    return refusal(c, finding ? inWords(QT_TRANSLATE_NOOP("Rule", "Finding %1 is on %2, not on %3.")).arg(text, finding->item->text(), c.itemName()) : inWords(QT_TRANSLATE_NOOP("Rule", "There is no finding %1.")).arg(text),
                   inWords(QT_TRANSLATE_NOOP("Rule", "whoever attaches the photo")));
}

const Rule findingOfPhoto{"finding.photo"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A picture of something else proves nothing."), &photosFindingIsOnTheItem};
const Rule findingDeferral{"finding.deferral"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What is deferred without end is forgotten."), &deferralHasALimit};
const Rule findingNew{"finding.number"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One number, one finding."), &findingIsNew};
const Rule findingItem{"finding.interface"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A finding on nothing is found by nobody."), &findingsInterfaceIsListed};
const Rule findingOpen{"finding.open"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A disposition is given once."), &findingIsOpen};
const Rule findingCloser{"finding.closed-by-inspector"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Whoever made the damage does not judge it."), &findingIsClosedByInspector};

} // namespace core::rules
