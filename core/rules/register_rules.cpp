// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/rules/register_rules.hpp"

#include <algorithm>

#include "core/acts/act.hpp"
#include "core/measure/acceptance.hpp"
#include "core/rules/words.hpp"

namespace core::rules {

using namespace Qt::StringLiterals;

namespace {

QString administrator() { return inWords(QT_TRANSLATE_NOOP("Rule", "an administrator of the register")); }

std::optional<Refusal> refuse(const Draft &draft, const QString &sentence)
{
    return Refusal{{}, draft.subject.value_or(QString()), sentence, administrator()};
}

template <class AnyId>
std::optional<AnyId> subjectOf(const Draft &draft)
{
    return AnyId::parse(draft.subject.value_or(QString()));
}

} // namespace

std::optional<Refusal> registerIsNotFounded(const Register &reg, const Draft &draft)
{
    return reg.root ? refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "This register was founded already, by %1.")).arg(reg.nameOf(*reg.root))) : std::nullopt;
}

std::optional<Refusal> founderFoundsForThemselves(const Register &, const Draft &draft)
{
    return draft.subject == draft.author.text() ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The founder of a register enrols themselves, nobody else.")));
}

std::optional<Refusal> registerIsFounded(const Register &reg, const Draft &draft)
{
    return reg.root ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The register has no root person yet. Found it first.")));
}

std::optional<Refusal> registerClockDoesNotRunBack(const Register &reg, const Draft &draft)
{
    const auto last = std::max(reg.lastAt, reg.jobsLastAt);
    if (!last || draft.at >= *last)
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "This computer's clock says %1, which is before the last entry (%2). Set the clock right and sign again.")).arg(draft.at.spoken(), last->spoken()));
}

std::optional<Refusal> authorAdministers(const Register &reg, const Draft &draft)
{
    if (reg.person(draft.author) && mayAdminister(reg, draft.author, draft.at))
        return std::nullopt;
    return refuse(draft, whyNotAuthorised(reg, draft.author, {.authority = Authority::Administer, .at = draft.at}));
}

std::optional<Refusal> personIsNew(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<PersonId>(draft);
    return id && !reg.person(*id) ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The id \"%1\" belongs to somebody already. An id is never given twice.")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> personIsEnrolled(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<PersonId>(draft);
    return id && reg.person(*id) ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody is enrolled as \"%1\".")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> keyIsNobodysYet(const Register &reg, const Draft &draft)
{
    const auto key = PublicKey::parse(draft.body.text(u"public_key"));
    for (const auto &[id, person] : reg.people) {
        const auto &former = person.formerKeys;
        if (key && (person.key == *key || std::find(former.begin(), former.end(), *key) != former.end()))
            return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "This key is or was %1's. Make a new one.")).arg(person.name));
    }
    return std::nullopt;
}

std::optional<Refusal> authorsKeyStands(const Register &reg, const Draft &draft)
{
    const Person *author = reg.person(draft.author);
    if (!author || !author->keyStopped)
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The key of %1 was stopped on %2. They sign again once they have a new one.")).arg(author->name, author->keyStopped->spoken()));
}

std::optional<Refusal> keyIsStoppedOnce(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<PersonId>(draft);
    const Person *person = id ? reg.person(*id) : nullptr;
    if (!person || !person->keyStopped)
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The key of %1 is stopped already. Give them a new one.")).arg(person->name));
}

std::optional<Refusal> ownKeyIsReplaced(const Register &, const Draft &draft)
{
    if (draft.subject != draft.author.text())
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "Whoever stops their own key can sign nothing any more. Replace it instead, and say since when its signatures are in doubt.")));
}

std::optional<Refusal> doubtOfKeyIsPast(const Register &, const Draft &draft)
{
    const auto since = Instant::parseLedger(draft.body.text(u"since"));
    if (!since || *since <= draft.at)
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "Signatures cannot be in doubt since a moment that is still to come (%1).")).arg(since->spoken()));
}

std::optional<Refusal> authorisationIsNew(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<AuthorisationId>(draft);
    return id && !reg.authorisations.contains(*id) ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "There is an authorisation \"%1\" already.")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> granteeIsEnrolled(const Register &reg, const Draft &draft)
{
    const auto id = PersonId::parse(draft.body.text(u"person"));
    return id && reg.person(*id) ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "Nobody is enrolled as \"%1\".")).arg(draft.body.text(u"person")));
}

std::optional<Refusal> datesRunForward(const Register &, const Draft &draft)
{
    const bool isCalibration = draft.body.contains(u"due");
    const QString first = draft.body.text(isCalibration ? u"on" : u"from");
    const QString last = draft.body.text(isCalibration ? u"due" : u"until");
    // ISO dates sort as text.
    return last.isEmpty() || first <= last ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The last day (%1) lies before the first (%2).")).arg(last, first));
}

std::optional<Refusal> authorisationStands(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<AuthorisationId>(draft);
    const auto at = id ? reg.authorisations.find(*id) : reg.authorisations.end();
    return at != reg.authorisations.end() && !at->second.withdrawn
               ? std::nullopt
               : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "There is no authorisation \"%1\" that could be withdrawn.")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> toolIsNew(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<ToolId>(draft);
    return id && !reg.tool(*id) ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The register has a tool \"%1\" already.")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> toolIsInUse(const Register &reg, const Draft &draft)
{
    const auto id = subjectOf<ToolId>(draft);
    const Tool *tool = id ? reg.tool(*id) : nullptr;
    return tool && !tool->withdrawn ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The register has no tool \"%1\" in use.")).arg(draft.subject.value_or(QString())));
}

std::optional<Refusal> toolRangeIsSound(const Register &, const Draft &draft)
{
    const json::Object &body = draft.body;
    const bool none = !body.contains(u"range_min") && !body.contains(u"range_max") && !body.contains(u"unit");
    const auto min = Quantity::parse(body.text(u"range_min"), body.text(u"unit"));
    const auto max = Quantity::parse(body.text(u"range_max"), body.text(u"unit"));
    const bool sound = min && max && *min <= *max && !min->value().isNegative();
    return none || sound ? std::nullopt : refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "A usable range needs its lower and upper end and a unit, from less to more; a tool that measures nothing has none of the three.")));
}

std::optional<Refusal> toolFiguresAreSound(const Register &, const Draft &draft)
{
    const json::Object &body = draft.body;
    const Decimal none = *Decimal::parse(u"0");
    const auto graduation = Decimal::parse(body.text(u"graduation"));
    if (graduation && (*graduation <= none || !body.contains(u"unit")))
        return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "A graduation is one step of the tool's scale, above 0, in the unit of its range; not %1.")).arg(graduation->text()));
    const auto deviation = Decimal::parse(body.text(u"deviation"));
    if (const auto why = deviation ? measure::whyNoDeviation(*deviation) : std::nullopt)
        return refuse(draft, *why);
    const auto length = quantityIn(body, u"length", Dimension::Length);
    if (length && length->coherent() <= 0)
        return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "A wrench is longer than %1: measure from the middle of its grip to the drive.")).arg(length->text()));
    return std::nullopt;
}

std::optional<Refusal> torqueToolIsTold(const Register &, const Draft &draft)
{
    const Unit *unit = findUnit(draft.body.text(u"unit"));
    const QString type = draft.body.text(u"torque_type");
    if ((unit && unit->dimension == Dimension::Torque) == type.isEmpty())
        return refuse(draft, type.isEmpty() ? inWords(QT_TRANSLATE_NOOP("Rule", "Say whether this torque tool shows what it gives (indicating) or clicks at what it was set to (setting)."))
                                            : inWords(QT_TRANSLATE_NOOP("Rule", "A torque tool has its usable range in a unit of torque.")));
    if (type == torqueToolTypeText(TorqueToolType::Setting) && !draft.body.contains(u"graduation"))
        return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "A tool that is set needs its graduation, or nobody can tell whether it was set to one of its marks.")));
    return std::nullopt;
}

const RegisterRule notFounded{"register.founded-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One store, one root of trust."), &registerIsNotFounded};
const RegisterRule founder{"register.founder"_L1, QT_TRANSLATE_NOOP("RuleWhy", "The root signs its own enrolment; everything else hangs from it."), &founderFoundsForThemselves};
const RegisterRule founded{"register.founded"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Without a root nobody can vouch for anybody."), &registerIsFounded};
const RegisterRule registerClock{"ledger.clock"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who was authorised and which tool was in date is asked for the moment of the entry."), &registerClockDoesNotRunBack};
const RegisterRule administers{"register.administrator"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Who enrolled whom, and on whose word, stands on the record."), &authorAdministers};
const RegisterRule personNew{"person.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An id that was given twice would make two people sign as one."), &personIsNew};
const RegisterRule personKnown{"person.enrolled"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A key belongs to somebody."), &personIsEnrolled};
const RegisterRule keyNew{"key.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "One key under two names would let one person inspect their own work."), &keyIsNobodysYet};
const RegisterRule keyStands{"key.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A key that somebody else may have signs nothing."), &authorsKeyStands};
const RegisterRule keyStoppedOnce{"key.stopped-once"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A key is stopped at one moment."), &keyIsStoppedOnce};
const RegisterRule keyNotOwn{"key.not-own"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A register without anybody who can sign could never be mended."), &ownKeyIsReplaced};
const RegisterRule keyDoubtPast{"key.doubt"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was signed in between has to be found again."), &doubtOfKeyIsPast};
const RegisterRule authorisationNew{"authorisation.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "An authorisation's number names one authorisation for ever."), &authorisationIsNew};
const RegisterRule granteeKnown{"authorisation.person"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Only a person can be authorised."), &granteeIsEnrolled};
const RegisterRule dates{"register.dates"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A period that ends before it begins covers nothing."), &datesRunForward};
const RegisterRule authorisationOpen{"authorisation.stands"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was withdrawn stays withdrawn from that moment."), &authorisationStands};
const RegisterRule toolNew{"tool.new"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A reading must lead to one tool."), &toolIsNew};
const RegisterRule toolKnown{"tool.in-use"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A calibration belongs to a tool that is used."), &toolIsInUse};
const RegisterRule toolRangeSound{"tool.range-sound"_L1, QT_TRANSLATE_NOOP("RuleWhy", "Readings are checked against the range, so it must be one."), &toolRangeIsSound};

std::optional<Refusal> doubtIsAboutThePast(const Register &, const Draft &draft)
{
    const QDate after = QDate::fromString(draft.body.text(u"after"), Qt::ISODate);
    if (after < draft.at.utcDate())
        return std::nullopt;
    return refuse(draft, inWords(QT_TRANSLATE_NOOP("Rule", "The last day on which the tool was known to be right lies before today; usually it is that of its last good calibration.")));
}

const RegisterRule doubtPast{"tool.doubt"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What was measured in between has to be found again."), &doubtIsAboutThePast};
const RegisterRule torqueToolTold{"tool.torque-type"_L1, QT_TRANSLATE_NOOP("RuleWhy", "What a tool clicks at and what it shows are two things to check."), &torqueToolIsTold};
const RegisterRule toolFiguresSound{"tool.figures-sound"_L1, QT_TRANSLATE_NOOP("RuleWhy", "A wrong length or deviation makes every reading wrong."), &toolFiguresAreSound};

} // namespace core::rules
