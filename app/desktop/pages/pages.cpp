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
        {"list"_L1, QT_TRANSLATE_NOOP("Page", "List"), "Ctrl+1", &ListPage::make, &nothing},
        {"perimeter"_L1, QT_TRANSLATE_NOOP("Page", "Perimeter"), "Ctrl+B", &PerimeterPage::make, &nothing},
        {"inspect"_L1, QT_TRANSLATE_NOOP("Page", "To inspect"), "Ctrl+2", &InspectPage::make, &InspectPage::waiting},
        {"loose-ends"_L1, QT_TRANSLATE_NOOP("Page", "Loose ends"), "Ctrl+3", &LooseEndsPage::make, &looseEnds},
        {"findings"_L1, QT_TRANSLATE_NOOP("Page", "Findings"), "Ctrl+4", &FindingsPage::make, &FindingsPage::waiting},
        {"handover"_L1, QT_TRANSLATE_NOOP("Page", "Handover"), "Ctrl+5", &HandoverPage::make, &HandoverPage::waiting},
        {"record"_L1, QT_TRANSLATE_NOOP("Page", "Record"), "Ctrl+6", &RecordPage::make, &nothing},
        {"figures"_L1, QT_TRANSLATE_NOOP("Page", "Lifts, fluids"), "Ctrl+7", &FiguresPage::make, &nothing},
        {"holds"_L1, QT_TRANSLATE_NOOP("Page", "Hold points"), "Ctrl+8", &HoldsPage::make, &HoldsPage::waiting},
        {"walk-round"_L1, QT_TRANSLATE_NOOP("Page", "Walk-round"), "Ctrl+9", &WalkRoundPage::make, &WalkRoundPage::waiting},
        {"temporaries"_L1, QT_TRANSLATE_NOOP("Page", "Applied"), "Ctrl+0", &TemporariesPage::make, &TemporariesPage::waiting},
        {"next"_L1, QT_TRANSLATE_NOOP("Page", "Next on"), "Ctrl+G", &NextPage::make, &nothing},
        {"unit"_L1, QT_TRANSLATE_NOOP("Page", "Unit, tests"), "Ctrl+U", &UnitPage::make, &UnitPage::waiting},
        {"parts-and-tools"_L1, QT_TRANSLATE_NOOP("Page", "Parts, tools"), "Ctrl+T", &PartsAndToolsPage::make, &PartsAndToolsPage::waiting},
        {"linked"_L1, QT_TRANSLATE_NOOP("Page", "Linked jobs"), "Ctrl+D", &LinkedPage::make, &LinkedPage::waiting},
    };
    return all;
}

} // namespace desktop
