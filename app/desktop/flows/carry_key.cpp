// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/carry_key.hpp"

#include <QCoreApplication>
#include <QFormLayout>
#include <QLineEdit>

#include "app/desktop/parts/labels.hpp"
#include "core/ledger/transfer_code.hpp"

namespace desktop {

namespace {

struct CarryKey {
    Q_DECLARE_TR_FUNCTIONS(CarryKey)
};

core::Refusals refusal(const QString &sentence) { return {{{}, {}, sentence, {}}}; }

} // namespace

SheetPlan carryKeyPlan(session::Session &session, const std::function<void(const session::TransferOffer &)> &show)
{
    SheetPlan plan{CarryKey::tr("Carry your key over to another station"), QLatin1String("threats"), CarryKey::tr("Your PIN opens your key once more; a copy is left in the store, sealed with your PIN and a code."), CarryKey::tr("Show the code"), {}, nullptr, {}, {}, {}, {}, {}, {}};
    plan.section = QLatin1String("another-station-another-computer");
    plan.words = [] {
        return QStringList{CarryKey::tr("The code is shown once, works once, and for a day."), CarryKey::tr("At the other station: this store or a copy made from now on, \"Take your key over\", the code, your PIN.")};
    };
    plan.whyNot = [](const core::PersonId &) { return core::Refusals(); };
    plan.take = [&session, show](const session::Signer &signer) -> session::Signed {
        const auto offer = session::offerTransfer(session, signer);
        if (!offer)
            return tl::unexpected(session::NotSigned{offer.error(), {}});
        show(*offer);
        return std::vector<core::Entry>();
    };
    return plan;
}

SheetPlan takeKeyPlan(session::Session &session, QWidget *parent)
{
    auto *area = new QWidget(parent);
    auto *form = new QFormLayout(area);
    form->setContentsMargins(0, 0, 0, 0);
    auto *code = new QLineEdit(area);
    code->setObjectName(QStringLiteral("code"));
    code->setAccessibleName(CarryKey::tr("Transfer code"));
    code->setPlaceholderText(CarryKey::tr("32 letters and digits, as the other station shows them"));
    code->setInputMethodHints(Qt::ImhNoPredictiveText | Qt::ImhPreferUppercase);
    addRow(form, CarryKey::tr("Transfer code"), code);
    SheetPlan plan{CarryKey::tr("Take your key over at this station"), QLatin1String("threats"), CarryKey::tr("From then on you sign here with the same PIN. Nobody else's key comes with it."), CarryKey::tr("Take over"), {}, area, {}, {}, {}, {}, {}, {}};
    plan.section = QLatin1String("another-station-another-computer");
    plan.needsKeyHere = false;
    plan.firstGap = [code] { return static_cast<QWidget *>(code); };
    plan.words = [] {
        return QStringList{CarryKey::tr("At a station where you sign: People and tools, \"Carry your key over\". Type here the code that it shows."),
                           CarryKey::tr("Without such a station an administrator registers a new key for you. What you signed stays valid.")};
    };
    plan.whyNot = [code](const core::PersonId &) {
        const auto typed = core::typedCode(code->text());
        return typed ? core::Refusals() : refusal(code->text().trimmed().isEmpty() ? CarryKey::tr("Type the code.") : typed.error().message);
    };
    plan.take = [&session, code](const session::Signer &signer) -> session::Signed {
        const auto taken = session::takeTransfer(session, code->text(), signer.secret);
        if (!taken)
            return tl::unexpected(session::NotSigned{taken.error(), {}});
        return std::vector<core::Entry>();
    };
    return plan;
}

} // namespace desktop
