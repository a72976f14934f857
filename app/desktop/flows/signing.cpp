// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/signing.hpp"

#include <QFormLayout>
#include <QLineEdit>
#include <QSet>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/begun/form_name.hpp"
#include "app/desktop/flows/carry_key.hpp"
#include "app/desktop/flows/look_up.hpp"
#include "app/desktop/flows/photo_picker.hpp"
#include "app/desktop/parts/entry_words.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/photo_words.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/session/rehearsal.hpp"
#include "core/acts/act.hpp"
#include "core/acts/voids.hpp"
#include "core/job/working_of.hpp"
#include "core/value/error_words.hpp"
#include "resources/resources.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

std::vector<core::Draft> draftsOf(QLatin1String kind, const std::vector<Seed> &seeds, const std::vector<core::json::Object> &bodies,
                                  const core::PersonId &author, const core::Instant &at)
{
    std::vector<core::Draft> drafts;
    for (std::size_t i = 0; i < seeds.size(); ++i)
        drafts.push_back({author, at, kind, seeds[i].subject, bodies[i]});
    return drafts;
}

/// What the rules say to drafts that are signed together; each refusal once.
core::Refusals refusalsOf(const session::Session &session, const std::vector<core::Draft> &drafts)
{
    if (drafts.size() == 1)
        return session.ask(drafts.front());
    session::Rehearsal rehearsal(session);
    core::Refusals all;
    for (const core::Draft &draft : drafts) {
        for (const core::Refusal &refusal : rehearsal.take(draft)) {
            if (std::find(all.begin(), all.end(), refusal) == all.end())
                all.push_back(refusal);
        }
    }
    return all;
}

/// Ticks are one person's look.
core::Refusal notTheirLook(const core::PersonId &looked, const core::Register &reg)
{
    return {u"look.another"_s, {}, Signing::tr("%1 looked at this. What %1 saw nobody else signs for: close this sheet, lock (Ctrl+L), and look for yourself.").arg(reg.nameOf(looked)), reg.nameOf(looked)};
}

/// What a disturbance voids. To work it out a copy of the job is disturbed, so it is done once for a state of the job and not at each key.
class GoesWith {
public:
    const QStringList &of(const std::shared_ptr<const core::JobState> &job, const std::optional<QString> &subject)
    {
        const auto id = core::InterfaceId::parse(subject.value_or(QString()));
        if (job == m_job)
            return m_lines;
        m_job = job;
        m_lines.clear();
        for (const core::Voided &one : job && id ? core::whatDisturbingVoids(*job, *id) : std::vector<core::Voided>())
            m_lines << one.sentence;
        return m_lines;
    }

private:
    std::shared_ptr<const core::JobState> m_job; ///< of which the lines are
    QStringList m_lines;
};

/// Which entry a strike names; nothing where it is no strike. A number alone is no name that anybody signs for.
QString struckInWords(const core::JobState &job, QLatin1String kind, const core::json::Object &body)
{
    const core::json::Value *entry = kind == "entry.struck"_L1 ? body.find(u"entry") : nullptr;
    const qint64 seq = entry && entry->integer() ? *entry->integer() : 0;
    if (seq < 1 || seq > static_cast<qint64>(job.lines.size()))
        return {};
    return Signing::tr("It strikes: %1").arg(entryInWords(job, job.lines[static_cast<std::size_t>(seq - 1)]));
}

/// What the entries are about, and which part of it.
QStringList partsOf(const std::vector<Seed> &seeds)
{
    QStringList parts;
    for (const Seed &seed : seeds)
        parts << seed.subject.value_or(QString()) + (seed.part.isEmpty() ? seed.part : u' ' + seed.part);
    return parts;
}

/// What tells two forms apart whose entries are about the same: an entry that is struck, a handover that is answered, a photo that is marked or attached.
QStringList besidesIn(const ActionLine &action, const Situation &situation, const std::vector<Seed> &seeds, const std::optional<photos::PhotoFile> &photo)
{
    QStringList besides;
    for (const Seed &seed : seeds) {
        if (seed.answers)
            besides << QString::number(*seed.answers);
    }
    if (action.over == Over::Subject && situation.subject)
        besides << *situation.subject;
    if (photo)
        besides << photos::digestOf(*photo).hex();
    return besides;
}

/// A form with a line above it for what is marked on the thing.
struct Marked {
    QWidget *whole;
    QLineEdit *marking; ///< nullptr where the entry is about something that is known already
};

Marked withMarking(FieldForm *form, const QString &label)
{
    auto *whole = new QWidget;
    auto *rows = new QFormLayout(whole);
    rows->setContentsMargins(0, 0, 0, 0);
    auto *marking = new QLineEdit(whole);
    marking->setObjectName(u"newId"_s);
    marking->setAccessibleName(label);
    addRow(rows, label, marking);
    rows->addRow(form);
    return {whole, marking};
}

/// Each body with the photo as it is now.
std::vector<core::json::Object> withPhoto(std::vector<core::json::Object> bodies, const PhotoPicker &picker)
{
    if (!picker.photo())
        return bodies;
    const core::Digest digest = photos::digestOf(*picker.photo());
    for (core::json::Object &body : bodies) {
        body.set(u"sha256"_s, digest.hex());
        body.set(u"media_type"_s, picker.photo()->mediaType);
        if (const auto of = picker.copyOf())
            body.set(u"copy_of"_s, of->hex());
    }
    return bodies;
}

QWidget *above(QWidget *upper, QWidget *lower)
{
    auto *whole = new QWidget;
    auto *column = new QVBoxLayout(whole);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(upper);
    column->addWidget(lower);
    return whole;
}

} // namespace

Signing::Signing(session::Session &session, JobFeed &feed, const core::Kinds &kinds, Ask &ask, QWidget *window)
    : QObject(window), m_session(session), m_feed(feed), m_kinds(kinds), m_ask(ask), m_window(window)
{
    connect(&feed, &JobFeed::changed, this, [this] {
        if (m_sheet)
            m_sheet->judge();
    });
}

Situation Signing::situation(const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject) const
{
    return {*m_feed.state(), m_feed.reg(), items, m_session.currentSigner(), m_session.now(), subject, [this] { return otherJobs(); }};
}

std::vector<JobChoice> Signing::otherJobs() const
{
    std::vector<JobChoice> choices;
    const auto rows = m_session.jobs(); // a store that cannot be read just now offers none, and says so elsewhere
    for (const session::JobRow &row : rows ? *rows : std::vector<session::JobRow>()) {
        if (m_session.job() != row.ledger && !row.summary.isClosed && !row.trouble)
            choices.push_back({row.ledger.text(), row.summary.workOrder, tr("%1  %2").arg(row.summary.workOrder, row.summary.title)});
    }
    return choices;
}

core::Refusals Signing::refusalsFor(const core::PersonId &person, const ActionLine &action, Situation situation) const
{
    situation.person = person;
    std::vector<core::Draft> drafts;
    QSet<QString> asked; // of several entries on one item the first speaks for all
    for (const Seed &seed : action.seeds(situation)) {
        if (seed.subject && asked.contains(*seed.subject))
            continue;
        if (seed.subject)
            asked.insert(*seed.subject);
        drafts.push_back({person, m_session.now(), action.kind, seed.subject, probeOf(action.kind, seed, situation)});
    }
    return refusalsOf(m_session, drafts);
}

core::Refusals Signing::whyNot(const ActionLine &action, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject) const
{
    if (!m_feed.state())
        return {};
    const Situation now = situation(items, subject);
    if (now.person)
        return refusalsFor(*now.person, action, now);
    // Nobody is known yet: it may be begun when anybody could sign it, else the nearest no is shown.
    std::optional<core::Refusals> nearest;
    for (const auto &[id, person] : m_feed.reg().people) {
        core::Refusals refusals = refusalsFor(id, action, now);
        if (refusals.empty())
            return {};
        if (!nearest || refusals.size() < nearest->size())
            nearest = std::move(refusals);
    }
    return nearest.value_or(core::Refusals());
}

void Signing::begin(const ActionLine &action, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject)
{
    if (!m_feed.state() || !whyNot(action, items, subject).empty())
        return;
    open(planFor(action, situation(items, subject), {}));
}

void Signing::beginGiven(const QString &kind, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject, const Given &given)
{
    const auto at = std::find_if(actions().begin(), actions().end(), [&](const ActionLine &action) { return action.kind == kind; });
    if (at == actions().end() || !m_feed.state() || m_sheet || !whyNot(*at, items, subject).empty())
        return;
    open(planFor(*at, situation(items, subject), given));
    if (given.whenSigned)
        connect(m_sheet, &SignSheet::hasSigned, this, [whenSigned = given.whenSigned, sheet = m_sheet.data()] {
            const auto *picker = sheet->findChild<PhotoPicker *>();
            whenSigned(picker ? picker->original() : std::nullopt);
        });
}

SheetPlan Signing::planFor(const ActionLine &action, const Situation &situation, const Given &given)
{
    const core::Act &act = *core::findAct(QString(action.kind));
    std::vector<Seed> seeds = action.seeds(situation);
    for (Seed &seed : seeds) {
        for (const auto &[name, value] : given.body.members())
            seed.body.set(name, value);
    }
    FieldForm *form = makeForm({act.fields, seeds, action.each, m_feed.reg(), m_feed.state().get(), act.tables});
    const Marked marked = act.subject == core::SubjectSort::NewJobTool ? withMarking(form, tr("Marking on the tool")) : Marked{form, nullptr};
    PhotoPicker *picker = action.brings == Brings::File ? makePicker(given.photo, *form) : nullptr;
    const auto bodies = [form, picker] { return picker ? withPhoto(form->bodies(), *picker) : form->bodies(); };
    const auto drafts = [this, bodies, seeds, marking = marked.marking, kind = action.kind](const core::PersonId &author) {
        std::vector<core::Draft> all = draftsOf(kind, seeds, bodies(), author, m_session.now());
        if (marking)
            all.front().subject = marking->text().trimmed();
        return all;
    };
    SheetPlan plan;
    plan.manual = action.manual;
    plan.section = action.section;
    plan.keptAs = formName(m_session, m_session.job(), action.kind, partsOf(seeds) + besidesIn(action, situation, seeds, given.photo));
    plan.title = actionText(action, m_kinds, situation.job, situation.items, situation.subject);
    if (situation.items.size() == 1 && situation.job.item(situation.items.front()) && action.over != Over::Job)
        plan.title = tr("%1: %2").arg(plan.title, itemInWords(*situation.job.item(situation.items.front())));
    else if (action.over == Over::Subject && situation.subject)
        plan.title = tr("%1: %2").arg(plan.title, subjectInWords(act.subject, situation.subject, situation.job));
    else if (situation.items.size() > 1 && action.over != Over::Job)
        plan.title = tr("%1: %2 items").arg(plan.title).arg(situation.items.size());
    const core::JobFacts &facts = situation.job.facts;
    plan.about = tr("%1 · %2 · %3").arg(facts.aircraft, facts.unit, facts.workOrder);
    plan.meaning = core::meaningInWords(QString(act.meaning));
    plan.sign = seeds.size() == 1 ? tr("Sign") : tr("Sign %n entries", nullptr, static_cast<int>(seeds.size()));
    plan.cautions = cautionsFor(situation) + act.cautions();
    plan.form = picker ? above(picker, marked.whole) : marked.whole;
    plan.firstGap = [form, picker, marking = marked.marking]() -> QWidget * {
        if (picker && !picker->photo())
            return picker->chooseControl();
        return marking && marking->text().isEmpty() ? marking : form->firstGap();
    };
    plan.workings = [this, bodies, seeds, kind = action.kind] {
        std::vector<core::measure::Working> all;
        const auto now = bodies();
        // What a thing comes to does not depend on who signs it.
        const core::PersonId somebody = *core::PersonId::parse(u"-");
        for (std::size_t i = 0; m_feed.state() && i < seeds.size(); ++i) {
            if (auto working = core::workingOf(*m_feed.state(), m_feed.reg(), {somebody, m_session.now(), kind, seeds[i].subject, now[i]}))
                all.push_back(*std::move(working));
        }
        return all;
    };
    plan.takeOffer = [form](const core::measure::Offer &offer) { form->fill(offer.field, offer.value); };
    plan.words = [this, bodies, seeds, marking = marked.marking, &act, goesWith = std::make_shared<GoesWith>()] {
        QStringList lines;
        const auto now = bodies();
        for (std::size_t i = 0; i < seeds.size(); ++i) {
            const QString subject = marking ? marking->text().trimmed() : m_feed.state() ? subjectInWords(act.subject, seeds[i].subject, *m_feed.state()) : QString();
            const QString head = subject.isEmpty() ? doneOf(act) : tr("%1: %2").arg(subject, doneOf(act));
            const QString body = bodyInWords(act, now[i], m_feed.reg());
            lines << (body.isEmpty() ? head : head + u'\n' + body);
            if (const QString struck = m_feed.state() ? struckInWords(*m_feed.state(), act.kind, now[i]) : QString(); !struck.isEmpty())
                lines << struck;
            if (act.kind == "interface.disturbed"_L1)
                lines << goesWith->of(m_feed.state(), seeds[i].subject);
        }
        return lines;
    };
    const std::optional<core::PersonId> looked = action.signs == Signs::WhoLooked ? situation.person : std::nullopt;
    plan.whyNot = [this, drafts, looked, picker](const core::PersonId &author) {
        if (picker && !picker->whyNot().empty())
            return picker->whyNot();
        return looked && *looked != author ? core::Refusals{notTheirLook(*looked, m_feed.reg())} : refusalsOf(m_session, drafts(author));
    };
    plan.take = [this, drafts, picker, looked](const session::Signer &signer) -> session::Signed {
        if (looked && *looked != signer.person) {
            const core::Refusal no = notTheirLook(*looked, m_feed.reg());
            return tl::unexpected(session::NotSigned{{core::ErrorCode::Refused, no.sentence, {}}, {{0, {no}}}});
        }
        if (picker && picker->photo()) {
            if (const auto kept = m_session.store().attachments().put(picker->photo()->bytes, picker->photo()->mediaType); !kept)
                return tl::unexpected(session::NotSigned{kept.error(), {}});
        }
        return m_session.sign(*m_session.job(), drafts(signer.person), signer);
    };
    return plan;
}

FieldForm *Signing::makeForm(const FieldForm::Plan &plan)
{
    auto *form = new FieldForm(plan);
    connect(form, &FieldForm::tablesWanted, this, [this, form, fields = plan.fields, lines = plan.tables](const QString &name) {
        const auto tables = resources::loadTables();
        if (!tables) {
            m_ask.tell(tr("The table cannot be shown"), core::errorInWords(tables.error()));
            return;
        }
        const auto field = std::find_if(fields.begin(), fields.end(), [&](const core::Field &one) { return one.name == name; });
        lookUp(*tables, lines, *field, m_ask, form->window());
    });
    return form;
}

QStringList Signing::cautionsFor(const Situation &situation) const
{
    QStringList cautions;
    const auto temporaryId = core::TemporaryId::parse(situation.subject.value_or(QString()));
    const core::TemporaryItem *temporary = temporaryId ? situation.job.temporary(*temporaryId) : nullptr;
    if (const core::Kind *kind = temporary ? m_kinds.find(core::temporaryKindId(temporary->sort)) : nullptr)
        cautions << core::wordOfKind(kind->caution);
    for (const core::InterfaceId &id : situation.items) {
        const core::InterfaceState *item = m_feed.state()->item(id);
        const core::Kind *kind = item ? m_kinds.find(item->listed.kind) : nullptr;
        const QString caution = kind ? core::wordOfKind(kind->caution) : QString();
        if (!caution.isEmpty() && !cautions.contains(caution))
            cautions << caution;
    }
    return cautions;
}

/// Whatever is chosen there is judged at once, as if it had been typed.
PhotoPicker *Signing::makePicker(const std::optional<photos::PhotoFile> &photo, FieldForm &form)
{
    auto *picker = new PhotoPicker(m_ask, photo, [this](const core::Digest &digest) { return m_feed.state() ? attachedBefore(digest, *m_feed.state()) : QString(); });
    connect(picker, &PhotoPicker::changed, &form, &FieldForm::edited);
    connect(picker, &PhotoPicker::heightChanged, &form, &FieldForm::heightChanged);
    return picker;
}

void Signing::open(SheetPlan plan)
{
    if (m_sheet) {
        delete plan.form;
        m_sheet->raise();
        return;
    }
    plan.begun = m_begun;
    m_sheet = new SignSheet(m_session, std::move(plan), m_window);
    connect(m_sheet, &SignSheet::hasSigned, this, &Signing::hasSigned);
    connect(m_sheet, &SignSheet::keyWanted, this, [this] {
        auto *over = new SignSheet(m_session, takeKeyPlan(m_session, m_sheet), m_sheet);
        connect(over, &QDialog::accepted, m_sheet, &SignSheet::judge);
        over->open();
    });
    m_sheet->open();
}

void Signing::carryKey()
{
    open(carryKeyPlan(m_session, [this](const session::TransferOffer &offer) {
        // Told once the sheet is gone.
        const QString sentence = tr("%1\n\nIt works once, until %2, beside your PIN. It is not shown again.").arg(offer.code, offer.until.spoken());
        QTimer::singleShot(0, this, [this, sentence] { m_ask.tell(tr("Transfer code"), sentence); });
    }));
}

void Signing::takeKey() { open(takeKeyPlan(m_session, m_window)); }

void Signing::beginFixed(const QString &title, const std::vector<core::Draft> &drafts)
{
    const core::Act &act = *core::findAct(drafts.front().kind);
    const auto signedBy = [drafts](const core::PersonId &author) {
        std::vector<core::Draft> own = drafts;
        for (core::Draft &draft : own)
            draft.author = author;
        return own;
    };
    SheetPlan plan{title, "interface_list"_L1, core::meaningInWords(QString(act.meaning)), tr("Sign %n entries", nullptr, static_cast<int>(drafts.size())), {}, nullptr, {}, {}, {}, {}, {}, {}};
    plan.words = [this, drafts, &act] {
        QStringList lines;
        for (const core::Draft &draft : drafts)
            lines << tr("%1: %2").arg(draft.subject.value_or(QString()), doneOf(act)) + u'\n' + bodyInWords(act, draft.body, m_feed.reg());
        return lines;
    };
    plan.whyNot = [this, signedBy](const core::PersonId &author) { return m_session.ask(signedBy(author).front()); };
    plan.take = [this, signedBy](const session::Signer &signer) { return m_session.sign(*m_session.job(), signedBy(signer.person), signer); };
    open(std::move(plan));
}

void Signing::beginRegister(QLatin1String kind, const std::vector<Seed> &seeds, QLatin1String manual, QLatin1String section)
{
    const core::Act &act = *core::findAct(QString(kind));
    FieldForm *form = makeForm({act.fields, seeds, {}, m_session.reg(), nullptr, act.tables});
    const auto [whole, id] = act.subject == core::SubjectSort::NewTool ? withMarking(form, tr("Id, as marked on it")) : Marked{form, nullptr};
    const auto subject = [id = id, seeds]() -> std::optional<QString> { return id ? id->text().trimmed() : seeds.front().subject; };
    const auto drafts = [this, form, subject, kind](const core::PersonId &author) {
        return std::vector<core::Draft>{{author, m_session.now(), kind, subject(), form->bodies().front()}};
    };
    SheetPlan plan{verbOf(act), manual, core::meaningInWords(QString(act.meaning)), tr("Sign"), {}, whole, {}, {}, {}, {}, {}, {}};
    plan.section = section;
    plan.keptAs = formName(m_session, {}, kind, partsOf(seeds));
    plan.firstGap = [form, id = id]() -> QWidget * { return id && id->text().isEmpty() ? id : form->firstGap(); };
    plan.words = [this, form, subject, &act] {
        return QStringList{tr("%1: %2").arg(subject().value_or(QString()), doneOf(act)) + u'\n' + bodyInWords(act, form->bodies().front(), m_session.reg())};
    };
    plan.whyNot = [this, drafts](const core::PersonId &author) { return m_session.ask(drafts(author).front()); };
    plan.take = [this, drafts](const session::Signer &signer) { return m_session.sign(*m_session.reg().ledger, drafts(signer.person), signer); };
    open(std::move(plan));
}

} // namespace desktop
