// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/new_key.hpp"

#include <QCoreApplication>
#include <QFormLayout>
#include <QLineEdit>

#include <memory>

#include "app/desktop/begun/form_name.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/person_field.hpp"
#include "app/session/people.hpp"
#include "core/acts/act.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

struct NewKey {
    Q_DECLARE_TR_FUNCTIONS(NewKey)
};

/// The rules are asked before the key is made; only its form counts for them.
QString anyKey() { return core::Digest().hex(); }

core::Refusals refusal(const QString &sentence) { return sentence.isEmpty() ? core::Refusals() : core::Refusals{{{}, {}, sentence, {}}}; }

session::Signed notSigned(const QString &why) { return tl::unexpected(session::NotSigned{{core::ErrorCode::BadInput, why}, {}}); }

QLineEdit *addLine(QFormLayout *form, const QString &label, const char *name, QWidget *parent)
{
    auto *line = new QLineEdit(parent);
    line->setObjectName(QString::fromLatin1(name));
    line->setAccessibleName(label);
    addRow(form, label, line);
    return line;
}

/// A form of its own inside a sheet.
class KeyForm : public QWidget {
public:
    explicit KeyForm(QWidget *parent) : QWidget(parent), form(new QFormLayout(this)) { form->setContentsMargins(0, 0, 0, 0); }
    QFormLayout *form;
};

/// Since when what was signed with the old key is in doubt; nothing where nothing, or no moment, was typed.
std::optional<core::Instant> sinceIn(const QString &typed) { return core::Instant::parse(typed.trimmed()); }

QWidget *firstEmpty(const std::vector<QLineEdit *> &lines)
{
    for (QLineEdit *line : lines) {
        if (line->text().trimmed().isEmpty())
            return line;
    }
    return nullptr;
}

} // namespace

NewSecret::NewSecret(QFormLayout *form, QWidget *parent)
    : m_first(addLine(form, NewKey::tr("New PIN or passphrase"), "newSecret", parent)), m_second(addLine(form, NewKey::tr("The same again"), "newSecretAgain", parent))
{
    for (QLineEdit *line : {m_first, m_second}) {
        line->setEchoMode(QLineEdit::Password);
        line->setInputMethodHints(Qt::ImhSensitiveData | Qt::ImhNoPredictiveText | Qt::ImhHiddenText);
    }
    m_first->setPlaceholderText(NewKey::tr("At least %1 characters, typed by its owner").arg(core::shortestSecret));
}

QString NewSecret::secret() const { return m_first->text(); }

QString NewSecret::fault() const
{
    if (m_first->text().size() < core::shortestSecret)
        return NewKey::tr("The new PIN or passphrase needs at least %1 characters.").arg(core::shortestSecret);
    return m_first->text() == m_second->text() ? QString() : NewKey::tr("The two PINs differ. Type both again.");
}

SheetPlan enrolPlan(session::Session &session, QWidget *parent)
{
    auto *area = new KeyForm(parent);
    QLineEdit *id = addLine(area->form, NewKey::tr("Id (staff number, stamp)"), "newId", area);
    QLineEdit *name = addLine(area->form, NewKey::tr("Name"), "newName", area);
    QLineEdit *identity = addLine(area->form, NewKey::tr("How the identity was proved"), "newIdentity", area);
    const auto secret = std::make_shared<NewSecret>(area->form, area);
    const auto person = [=]() -> std::optional<session::NewPerson> {
        const auto personId = core::PersonId::parse(id->text().trimmed());
        if (!personId)
            return std::nullopt;
        return session::NewPerson{*personId, name->text().trimmed(), secret->secret(), identity->text().trimmed()};
    };
    SheetPlan plan{NewKey::tr("Enrol a person"), QLatin1String("signatures"), core::meaningInWords(u"recorded"), NewKey::tr("Enrol and sign"), {}, area, {}, {}, {}, {}, {}, {}};
    plan.keptAs = formName(session, {}, "person.enrolled"_L1);
    plan.firstGap = [=] { return firstEmpty({id, name, identity, secret->first(), secret->second()}); };
    plan.words = [=] { return QStringList{NewKey::tr("%1 (%2) is enrolled with a key of their own, opened by their PIN.").arg(name->text(), id->text())}; };
    plan.whyNot = [=, &session](const core::PersonId &by) -> core::Refusals {
        const auto who = person();
        if (!who)
            return refusal(NewKey::tr("Give an id, a name, and how the identity was proved."));
        const core::Refusals refusals = session.ask({by, session.now(), u"person.enrolled"_s, who->id.text(),
                                                     {{u"name"_s, who->name}, {u"identity"_s, who->identity}, {u"public_key"_s, anyKey()}}});
        return refusals.empty() ? refusal(secret->fault()) : refusals;
    };
    plan.take = [=, &session](const session::Signer &signer) -> session::Signed {
        const auto who = person();
        return who ? session::enrol(session, *who, signer) : notSigned(NewKey::tr("Give an id."));
    };
    return plan;
}

SheetPlan replaceKeyPlan(session::Session &session, QWidget *parent)
{
    auto *area = new KeyForm(parent);
    auto *whom = new PersonField(session.reg(), NewKey::tr("For whom"), area);
    whom->setObjectName(QStringLiteral("whom"));
    addRow(area->form, NewKey::tr("For whom"), whom);
    QLineEdit *reason = addLine(area->form, NewKey::tr("Reason"), "reason", area);
    QLineEdit *since = addLine(area->form, NewKey::tr("In doubt since"), "since", area);
    since->setPlaceholderText(NewKey::tr("Only if somebody else may have had the old key: 2026-03-02T08:14:00Z"));
    const auto secret = std::make_shared<NewSecret>(area->form, area);
    SheetPlan plan{NewKey::tr("New key for a person"), QLatin1String("threats"), core::meaningInWords(u"recorded"), NewKey::tr("Replace and sign"), {}, area, {}, {}, {}, {}, {}, {}};
    plan.section = QLatin1String("a-pin-was-seen-a-key-may-be-in-other-hands");
    plan.firstGap = [=] { return static_cast<QWidget *>(whom); };
    plan.words = [=, &session] {
        const QString name = whom->person() ? session.reg().nameOf(*whom->person()) : NewKey::tr("The person");
        const auto doubt = sinceIn(since->text());
        return QStringList{doubt ? NewKey::tr("%1 gets a new key. What was signed with the old one since %2 is in doubt, and is listed for somebody to look at.").arg(name, doubt->spoken())
                                 : NewKey::tr("%1 gets a new key. What they signed before stays valid.").arg(name)};
    };
    plan.whyNot = [=, &session](const core::PersonId &by) -> core::Refusals {
        if (!whom->person())
            return refusal(NewKey::tr("Say for whom, and why."));
        const QString typed = since->text().trimmed();
        const auto doubt = sinceIn(typed);
        if (!typed.isEmpty() && !doubt)
            return refusal(NewKey::tr("\"%1\" is no moment. Give it with its time zone, such as 2026-03-02T08:14:00Z, or leave it out.").arg(typed));
        core::json::Object body{{u"reason"_s, reason->text().trimmed()}, {u"public_key"_s, anyKey()}};
        if (doubt)
            body.set(u"since"_s, doubt->text());
        const core::Refusals refusals = session.ask({by, session.now(), u"key.replaced"_s, whom->person()->text(), body});
        return refusals.empty() ? refusal(secret->fault()) : refusals;
    };
    plan.take = [=, &session](const session::Signer &signer) -> session::Signed {
        return whom->person() ? session::replaceKey(session, *whom->person(), secret->secret(), reason->text().trimmed(), signer, sinceIn(since->text())) : notSigned(NewKey::tr("Say for whom."));
    };
    return plan;
}

SheetPlan changeSecretPlan(session::Session &session, QWidget *parent)
{
    auto *area = new KeyForm(parent);
    const auto secret = std::make_shared<NewSecret>(area->form, area);
    SheetPlan plan{NewKey::tr("Change your PIN"), QLatin1String("threats"), NewKey::tr("Your old PIN opens your key once more; from then on the new one does."), NewKey::tr("Change"), {}, area, {}, {}, {}, {}, {}, {}};
    plan.section = QLatin1String("a-pin-was-seen-a-key-may-be-in-other-hands");
    plan.firstGap = [=] { return firstEmpty({secret->first(), secret->second()}); };
    plan.words = [] { return QStringList{NewKey::tr("Your key stays the same; only the PIN that opens it changes.")}; };
    plan.whyNot = [=](const core::PersonId &) { return refusal(secret->fault()); };
    plan.take = [=, &session](const session::Signer &signer) -> session::Signed {
        if (const auto changed = session::changeSecret(session, signer, secret->secret()); !changed)
            return tl::unexpected(session::NotSigned{changed.error(), {}});
        return std::vector<core::Entry>();
    };
    return plan;
}

} // namespace desktop
