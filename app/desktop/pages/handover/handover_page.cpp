// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/handover/handover_page.hpp"

#include <QCoreApplication>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/mid_sentence.hpp"
#include "app/desktop/parts/words.hpp"
#include "core/holds/standing.hpp"
#include "core/job/loose_ends.hpp"
#include "core/job/stage.hpp"
#include "core/reports/open_items.hpp"
#include "core/requirements/catalogue.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(HandoverPage)
};

/// An interface that is open or half done, with what is still to show.
Row itemRow(const core::json::Object &open, const core::InterfaceState &item, const core::JobState &job, const core::Register &reg)
{
    QStringList missing;
    if (open.contains(u"torqued"))
        missing << Words::tr("torqued %1 of %2").arg(open.integer(u"torqued").value_or(0)).arg(open.integer(u"of").value_or(0));
    for (const auto &[requirement, sentence] : item.restoration ? core::stillToShow(item) : decltype(core::stillToShow(item))())
        missing << midSentence(QCoreApplication::translate("Requirement", requirement->title));
    if (item.stillAttached)
        missing << walkRoundInWords(item);
    for (const core::ConditionStated &stated : item.conditions)
        missing << core::inWordsOf(stated);
    if (item.stopped)
        missing << Words::tr("stopped: %1").arg(item.stopped->word);
    if (core::isWithoutDetails(item))
        missing << Words::tr("details to follow");
    if (item.toLookUp)
        missing << Words::tr("row to look up");
    if (item.sent)
        missing << Words::tr("sent to a linked job, not taken on there yet");
    const core::Mark mark = core::lastWorkOn(item).value_or(item.listedBy);
    return {item.listed.id.text(), {item.listed.id.text(), item.listed.name, item.listed.zone, core::stageWord(core::stageOf(item)), missing.join(QStringLiteral(", ")), markInWords(mark, job, reg)}, false, item.stillAttached.has_value()};
}

/// Anything else that is open: its name, and by whom it came to be so.
struct Other {
    QString name;
    QString zone;
    QString note;
    std::optional<core::Mark> mark;
};

std::optional<Other> otherOf(const core::json::Object &open, const core::JobState &job, const core::Register &reg)
{
    const auto temporaryId = core::TemporaryId::parse(open.text(u"temporary"));
    if (const core::TemporaryItem *one = temporaryId ? job.temporary(*temporaryId) : nullptr)
        return Other{one->name, one->zone, core::isLockout(one->sort) ? Words::tr("whose: %1").arg(reg.nameOf(one->owner)) : QString(), one->applied};
    const auto findingId = core::FindingId::parse(open.text(u"finding"));
    if (const core::Finding *one = findingId ? job.finding(*findingId) : nullptr)
        return Other{one->description, one->item ? one->item->text() : QString(), {}, one->raised};
    const auto holdId = core::HoldId::parse(open.text(u"hold_point"));
    if (const core::HoldPoint *one = holdId ? job.hold(*holdId) : nullptr)
        return Other{one->title, {}, core::standingOf(job, *one).undermined, one->passed};
    for (const core::JobTest &one : job.tests) {
        if (one.id.text() == open.text(u"test"))
            return Other{one.name, {}, core::whyVoid(job, one).value_or(QString()), one.mark};
    }
    const auto toolId = core::ToolId::parse(open.text(u"tool"));
    if (const core::JobTool *one = toolId ? job.tools.last(*toolId) : nullptr)
        return Other{one->name, {}, one->holder ? Words::tr("who has it: %1").arg(reg.nameOf(*one->holder)) : QString(), one->issued};
    for (const core::TagBlock &one : job.tags.blocks) {
        if (core::blockText(one) == open.text(u"tags"))
            return Other{Words::tr("%n tags", nullptr, static_cast<int>(one.size())), {}, {}, one.issued};
    }
    const auto accessoryId = core::AccessoryId::parse(open.text(u"accessory"));
    if (const core::Accessory *one = accessoryId ? job.accessory(*accessoryId) : nullptr)
        return Other{one->name, {}, {}, one->listed};
    return std::nullopt;
}

Row rowOf(const core::json::Object &open, const core::JobState &job, const core::Register &reg)
{
    const auto id = core::InterfaceId::parse(open.text(u"interface"));
    if (const core::InterfaceState *item = id ? job.item(*id) : nullptr)
        return itemRow(open, *item, job, reg);
    const Other other = otherOf(open, job, reg).value_or(Other{});
    const QStringView member = core::openMember(open);
    const QString name = open.text(member);
    return {member.toString() + u' ' + name, {name, other.name, other.zone, core::openStateInWords(open), other.note, other.mark ? markInWords(*other.mark, job, reg) : QString()}, false, open.contains(u"state")};
}

} // namespace

qsizetype HandoverPage::waiting(const PageTools &tools) { return tools.feed.state() && tools.feed.state()->pendingHandover() ? 1 : 0; }

HandoverPage::HandoverPage(const PageTools &tools, QWidget *parent) : Page(tools, parent)
{
    auto *column = new QVBoxLayout(this);
    m_state = makeLabel({}, "heading", this);
    m_open = new RowTable({{tr("Item"), 10}, {tr("Name"), 0}, {tr("Zone"), 14}, {tr("Stage"), 20}, {tr("Still to show, and conditions"), 30}, {tr("By"), 46}},
                          tr("Open and half done"), tr("Nothing is open or half done."), this);
    m_open->setObjectName(u"open"_s);
    m_past = new RowTable({{tr("Given", "a handover"), 50}, {tr("To", "a person"), 24}, {tr("Accepted"), 50}, {tr("Remarks"), 0}}, tr("Handovers so far"), tr("No shift has been handed over in this job."), this);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, {"handover.accepted"_L1, "handover.refused"_L1, "handover.given"_L1}, this);
    column->addWidget(makeLabel(tr("Handover"), "title", this));
    column->addWidget(m_state);
    column->addWidget(m_open, 3);
    column->addWidget(makeLabel(tr("Handovers so far"), "heading", this));
    column->addWidget(m_past, 1);
    column->addWidget(m_actions);
    setFocusProxy(&m_open->view());
    follow(&HandoverPage::refresh);
    refresh();
}

void HandoverPage::refresh()
{
    std::vector<Row> open, past;
    if (const auto &job = feed().state()) {
        const core::Handover *pending = job->pendingHandover();
        const QString lead = job->lead ? feed().reg().nameOf(*job->lead) : tr("nobody");
        m_state->setText(pending ? tr("%1 handed over to %2, who has not accepted yet. %1 still answers for the job.").arg(feed().reg().nameOf(pending->given.by), feed().reg().nameOf(pending->to))
                                 : tr("%1 leads. These items would be handed over now:").arg(lead));
        for (const core::json::Value &value : core::openAtHandover(*job))
            open.push_back(rowOf(*value.object(), *job, feed().reg()));
        for (const core::Handover &handover : job->handovers)
            past.push_back({QString::number(handover.given.seq), {markInWords(handover.given, *feed().state(), feed().reg()), feed().reg().nameOf(handover.to), handover.accepted ? markInWords(*handover.accepted, *feed().state(), feed().reg()) : handover.refused ? tr("refused: %1").arg(handover.refusedBecause) : tr("not yet"), handover.remarks}, false, false});
    }
    m_open->take(open);
    m_past->take(past);
    m_actions->show({});
}

} // namespace desktop
