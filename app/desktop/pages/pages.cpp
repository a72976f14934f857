// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/pages.hpp"

#include <QCoreApplication>

#include "app/desktop/pages/figures/figures_page.hpp"
#include "app/desktop/pages/findings/findings_page.hpp"
#include "app/desktop/pages/handover/handover_page.hpp"
#include "app/desktop/pages/holds/holds_page.hpp"
#include "app/desktop/pages/inspect/inspect_page.hpp"
#include "app/desktop/pages/linked/linked_page.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/pages/loose_ends/loose_ends_page.hpp"
#include "app/desktop/pages/next/next_page.hpp"
#include "app/desktop/pages/parts_and_tools/parts_and_tools_page.hpp"
#include "app/desktop/pages/perimeter/perimeter_page.hpp"
#include "app/desktop/pages/photos/photos_page.hpp"
#include "app/desktop/pages/record/record_page.hpp"
#include "app/desktop/pages/temporaries/temporaries_page.hpp"
#include "app/desktop/pages/unit/unit_page.hpp"
#include "app/desktop/pages/walk_round/walk_round_page.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;

qsizetype nothing(const PageTools &) { return 0; }
qsizetype looseEnds(const PageTools &tools) { return static_cast<qsizetype>(tools.feed.looseEnds().size()); }

} // namespace

const std::vector<PageLine> &pages()
{
    static const std::vector<PageLine> all = {
        {"list"_L1, QT_TRANSLATE_NOOP("Page", "List"), QT_TRANSLATE_NOOP("Page", "Every interface as a row"), "actions/list"_L1, "Ctrl+1", &ListPage::make, &nothing, "interface_list"_L1},
        {"perimeter"_L1, QT_TRANSLATE_NOOP("Page", "Perimeter"), QT_TRANSLATE_NOOP("Page", "The job at a glance: every interface across the boundary of the unit"), "actions/perimeter"_L1, "Ctrl+B", &PerimeterPage::make, &nothing, "perimeter"_L1},
        {"inspect"_L1, QT_TRANSLATE_NOOP("Page", "To inspect"), QT_TRANSLATE_NOOP("Page", "What waits for an inspector"), "actions/inspect"_L1, "Ctrl+2", &InspectPage::make, &InspectPage::waiting, "start_inspector"_L1},
        {"loose-ends"_L1, QT_TRANSLATE_NOOP("Page", "Loose ends"), QT_TRANSLATE_NOOP("Page", "What stops closure"), "actions/loose_end"_L1, "Ctrl+3", &LooseEndsPage::make, &looseEnds, "conditions"_L1},
        {"findings"_L1, QT_TRANSLATE_NOOP("Page", "Findings"), QT_TRANSLATE_NOOP("Page", "What was found, and what became of it"), "actions/finding"_L1, "Ctrl+4", &FindingsPage::make, &FindingsPage::waiting, "conditions"_L1},
        {"handover"_L1, QT_TRANSLATE_NOOP("Page", "Handover"), QT_TRANSLATE_NOOP("Page", "What the next shift has to know"), "actions/handover"_L1, "Ctrl+5", &HandoverPage::make, &HandoverPage::waiting, "hold_points"_L1},
        {"record"_L1, QT_TRANSLATE_NOOP("Page", "Record"), QT_TRANSLATE_NOOP("Page", "Every entry, what is exported, and whether all of it holds"), "actions/record"_L1, "Ctrl+6", &RecordPage::make, &nothing, "record"_L1},
        {"figures"_L1, QT_TRANSLATE_NOOP("Page", "Lifts, fluids"), QT_TRANSLATE_NOOP("Page", "Lifts, servicing and weight, as they were worked out"), "acts/lift.planned"_L1, "Ctrl+7", &FiguresPage::make, &nothing, "measuring"_L1},
        {"holds"_L1, QT_TRANSLATE_NOOP("Page", "Hold points"), QT_TRANSLATE_NOOP("Page", "What may not go on before something was looked at"), "acts/hold.set"_L1, "Ctrl+8", &HoldsPage::make, &HoldsPage::waiting, "hold_points"_L1},
        {"walk-round"_L1, QT_TRANSLATE_NOOP("Page", "Walk-round"), QT_TRANSLATE_NOOP("Page", "Before the unit moves: whether everything is free"), "acts/walkround.free"_L1, "Ctrl+9", &WalkRoundPage::make, &WalkRoundPage::waiting, "hold_points"_L1},
        {"temporaries"_L1, QT_TRANSLATE_NOOP("Page", "Applied"), QT_TRANSLATE_NOOP("Page", "What was put on for the job and has to come off"), "acts/temporary.applied"_L1, "Ctrl+0", &TemporariesPage::make, &TemporariesPage::waiting, "hold_points"_L1},
        {"next"_L1, QT_TRANSLATE_NOOP("Page", "Next on"), QT_TRANSLATE_NOOP("Page", "What goes on next, and what stands in its way"), "acts/interface.reconnected"_L1, "Ctrl+G", &NextPage::make, &nothing, "hold_points"_L1},
        {"unit"_L1, QT_TRANSLATE_NOOP("Page", "Unit, tests"), QT_TRANSLATE_NOOP("Page", "The unit itself, its accessories and the tests"), "acts/unit.positioned"_L1, "Ctrl+U", &UnitPage::make, &UnitPage::waiting, "hold_points"_L1},
        {"parts-and-tools"_L1, QT_TRANSLATE_NOOP("Page", "Parts, tools"), QT_TRANSLATE_NOOP("Page", "Hardware, tags and tools that are counted"), "actions/tools"_L1, "Ctrl+T", &PartsAndToolsPage::make, &PartsAndToolsPage::waiting, "parts_and_tools"_L1},
        {"linked"_L1, QT_TRANSLATE_NOOP("Page", "Linked jobs"), QT_TRANSLATE_NOOP("Page", "Other jobs that are parts of this work"), "acts/job.linked"_L1, "Ctrl+D", &LinkedPage::make, &LinkedPage::waiting, "linked_jobs"_L1},
        {"photos"_L1, QT_TRANSLATE_NOOP("Page", "Photos"), QT_TRANSLATE_NOOP("Page", "Before and after side by side, and what came in"), "acts/photo.attached"_L1, "Ctrl+M", &PhotosPage::make, &nothing, "photos"_L1},
    };
    return all;
}

} // namespace desktop
