// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/verdict/verify_dialog.hpp"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QVBoxLayout>

#include <algorithm>

#include "app/desktop/flows/long_work.hpp"
#include "app/desktop/parts/help_page.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/package/verify_package.hpp"
#include "app/record/safe_file.hpp"
#include "app/session/verdict_words.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

VerifyDialog::VerifyDialog(VerifyWhat what, Ask &ask, QWidget *parent) : QDialog(parent), m_what(std::move(what)), m_ask(ask)
{
    setWindowTitle(m_what.title);
    setAttribute(Qt::WA_DeleteOnClose);
    tellHelpPage(*this, QLatin1String("package"), QLatin1String("what-verifying-asks"));
    const int gap = fontMetrics().height();
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(gap, gap, gap, gap);
    column->setSpacing(gap * 2 / 3);
    m_sentence = makeLabel(tr("Not verified yet."), "title", this);
    m_sentence->setObjectName(u"verdict"_s);
    m_about = makeLabel({}, "heading", this);
    m_about->setObjectName(u"about"_s);
    m_limits = makeLabel({}, "caution", this);
    m_limits->setObjectName(u"limits"_s);
    column->addWidget(m_sentence);
    column->addWidget(m_about);
    m_name = makeLabel(m_what.name, "quiet", this);
    m_name->setObjectName(u"name"_s);
    column->addWidget(m_name);
    column->addWidget(m_limits);
    m_faults = new RowTable({{tr("Where"), 24}, {tr("Rule"), 24}, {tr("What is wrong"), 0}}, tr("Faults"), tr("No fault."), this);
    m_faults->setObjectName(u"faults"_s);
    m_faults->showAtLeast(4);
    connect(m_faults, &RowTable::heightChanged, this, &VerifyDialog::grow, Qt::QueuedConnection);
    column->addWidget(m_faults, 3);
    m_ledgers = new RowTable({{tr("Ledger"), 12}, {tr("Name"), 48}, {tr("Entries"), 10}, {tr("Hash of the last entry"), 0}}, tr("Ledgers"), tr("No ledger was read."), this);
    m_ledgers->setObjectName(u"ledgers"_s);
    m_ledgers->showAtLeast(4); // the register, the job and two that it is linked with
    connect(m_ledgers, &RowTable::heightChanged, this, &VerifyDialog::grow, Qt::QueuedConnection);
    column->addWidget(m_ledgers, 1);
    column->addWidget(makeKnown());
    column->addWidget(makeButtons());
    resize(std::max(parent->window()->width() * 8 / 10, fontMetrics().averageCharWidth() * 110), gap * 38);
}

QWidget *VerifyDialog::makeKnown()
{
    auto *box = new QWidget(this);
    auto *form = new QFormLayout(box);
    form->setContentsMargins(0, 0, 0, 0);
    m_root = new QLineEdit(box);
    m_root->setObjectName(u"root"_s);
    m_root->setPlaceholderText(tr("The fingerprint that the organisation publishes, 64 digits; may stay empty"));
    m_head = new QLineEdit(box);
    m_head->setObjectName(u"head"_s);
    m_head->setPlaceholderText(tr("From the foot of a page that was printed earlier, 64 digits; may stay empty"));
    addRow(form, tr("Known &root"), m_root);
    addRow(form, tr("Known &hash"), m_head);
    connect(m_root, &QLineEdit::returnPressed, this, &VerifyDialog::verify);
    connect(m_head, &QLineEdit::returnPressed, this, &VerifyDialog::verify);
    return box;
}

QWidget *VerifyDialog::makeButtons()
{
    auto *row = new QWidget(this);
    auto *layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    QPushButton *again = makeButton(tr("&Verify again"), "main", row);
    again->setObjectName(u"again"_s);
    m_import = makeButton(tr("&Import into this store …"), "", row);
    m_import->setObjectName(u"import"_s);
    m_import->setVisible(static_cast<bool>(m_what.import));
    m_write = makeButton(tr("&Save the verdict …"), "", row);
    m_write->setObjectName(u"write"_s);
    QPushButton *close = makeButton(tr("&Close"), "", row);
    for (QPushButton *button : {again, m_import, m_write, close})
        button->setMinimumHeight(touchHeight(fontMetrics()));
    layout->addWidget(again);
    layout->addWidget(m_import);
    layout->addWidget(m_write);
    layout->addStretch();
    layout->addWidget(close);
    m_import->setEnabled(false);
    m_write->setEnabled(false);
    connect(again, &QPushButton::clicked, this, &VerifyDialog::verify);
    connect(m_import, &QPushButton::clicked, this, [this] {
        if (const auto given = known())
            m_what.import(*given);
    });
    connect(m_write, &QPushButton::clicked, this, &VerifyDialog::write);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return row;
}

core::Result<session::Known> VerifyDialog::known() const
{
    session::Known known;
    const auto digestIn = [](const QLineEdit &field) -> core::Result<std::optional<core::Digest>> {
        // Copied from paper it comes with blanks and capitals.
        const QString typed = field.text().remove(u' ').toLower();
        if (typed.isEmpty())
            return std::nullopt;
        if (auto digest = core::Digest::parse(typed))
            return digest;
        return core::failure(core::ErrorCode::BadInput, tr("What is typed as known has to be 64 digits, 0 to 9 and a to f; these are %1.").arg(typed.size()));
    };
    const auto root = digestIn(*m_root);
    const auto head = digestIn(*m_head);
    if (!root || !head)
        return core::failure(root ? head.error() : root.error());
    known.rootFingerprint = *root;
    if (*head)
        known.entries.push_back(**head);
    return known;
}

void VerifyDialog::verify()
{
    const auto given = known();
    if (!given) {
        m_ask.tell(tr("Nothing was verified"), core::errorInWords(given.error()));
        return;
    }
    LongWork work(m_what.title, this);
    const auto verdict = m_what.verify(*given, work.progress());
    if (verdict)
        show(*verdict, *given);
    else
        say(tr("✗ Not verified: %1").arg(core::errorInWords(verdict.error())), "bad");
}

/// Told by the sign and the words; the colour says the same once more.
void VerifyDialog::say(const QString &sentence, const char *outcome)
{
    m_sentence->setText(sentence);
    colourAs(m_sentence, outcome);
}

void VerifyDialog::show(const Verdict &verdict, const session::Known &known)
{
    const bool isGood = verdict.report.faults.empty();
    const QString sentence = session::verdictSentence(verdict.report);
    if (!isGood)
        say(tr("✗ %1").arg(sentence), "bad");
    else if (!verdict.report.reservations.empty())
        say(tr("! %1").arg(sentence), "partly");
    else
        say(tr("✓ %1").arg(sentence), "good");
    m_about->setText(verdict.about);
    m_about->setVisible(!verdict.about.isEmpty());
    m_name->setText(verdict.report.rootFingerprint ? tr("%1\nRoot fingerprint: %2").arg(m_what.name, verdict.report.rootFingerprint->hex()) : m_what.name);
    m_limits->setText(session::verdictLimits(verdict.report, known).join(u'\n'));
    m_limits->setVisible(!m_limits->text().isEmpty());
    std::vector<Row> faults;
    for (const core::Fault &fault : verdict.report.faults)
        faults.push_back({QString::number(faults.size()), {session::placeInWords(fault, verdict.report), fault.rule, fault.sentence}, false, true});
    m_faults->take(faults);
    std::vector<Row> ledgers;
    for (const session::VerifyReport::Ledger &ledger : verdict.report.ledgers)
        ledgers.push_back({ledger.name, {ledger.isRegister ? tr("register") : tr("job"), ledger.name, QString::number(ledger.entries), ledger.head.hash.hex()}});
    m_ledgers->take(ledgers);
    m_import->setEnabled(isGood);
    m_import->setToolTip(isGood ? QString() : tr("Only what holds is imported."));
    m_write->setEnabled(true);
    emit verified(sentence, isGood);
}

/// Sentences wrap, and Qt asks a window's least height without them: so the tables would be cut off below.
void VerifyDialog::grow()
{
    const int wanted = std::min(layout()->minimumHeightForWidth(width()), screen()->availableGeometry().height());
    if (height() < wanted)
        resize(width(), wanted);
}

QString VerifyDialog::asText() const
{
    QStringList lines{m_what.title, m_sentence->text()};
    for (const QLabel *label : {m_about, m_name, m_limits}) {
        if (!label->text().isEmpty())
            lines << label->text();
    }
    for (const RowTable *table : {m_ledgers, m_faults}) {
        lines << QString();
        const auto &model = const_cast<RowTable *>(table)->model();
        for (int row = 0; row < model.rowCount(); ++row) {
            QStringList cells;
            for (int at = 0; at < model.columnCount(); ++at)
                cells << model.index(row, at).data().toString();
            lines << cells.join(u"  "_s);
        }
    }
    return lines.join(u'\n') + u'\n';
}

void VerifyDialog::write()
{
    const auto path = m_ask.fileToSave(tr("Save the verdict"), tr("verdict.txt"), tr("Text (*.txt)"));
    if (!path)
        return;
    const QByteArray bytes = asText().toUtf8();
    const auto done = record::writeSafely(*path, [&](QIODevice &file) -> core::Result<void> {
        if (file.write(bytes) != bytes.size())
            return core::failure(core::ErrorCode::Io, file.errorString());
        return {};
    });
    m_ask.tell(done ? tr("The verdict was saved") : tr("The verdict was not saved"), done ? *path : core::errorInWords(done.error()));
}

VerifyWhat packageToVerify(const QString &path, const core::Kinds &kinds)
{
    const auto verify = [path, kinds](const session::Known &known, const Progress &progress) -> core::Result<Verdict> {
        const auto verdict = package::verifyPackage(path, known, kinds, progress);
        if (!verdict)
            return core::failure(verdict.error());
        const package::About &about = verdict->about;
        const QString state = about.isClosed ? VerifyDialog::tr("closed") : VerifyDialog::tr("NOT CLOSED");
        return Verdict{verdict->report, about.ledger ? VerifyDialog::tr("Work order %1, %2, %3: %4").arg(about.workOrder, about.aircraft, about.title, state) : QString()};
    };
    return {VerifyDialog::tr("Verify a record package"), path, verify};
}

} // namespace desktop
