// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/ask_paper.hpp"

#include <QCoreApplication>

namespace desktop {

namespace {

struct AskPaper {
    Q_DECLARE_TR_FUNCTIONS(AskPaper)
};

} // namespace

std::optional<record::PageSize> askPaper(Ask &ask, const QString &title)
{
    const QString a4 = AskPaper::tr("A4");
    const auto size = ask.oneOf(title, AskPaper::tr("Paper size"), {a4, AskPaper::tr("Letter")});
    return size ? std::optional(*size == a4 ? record::PageSize::A4 : record::PageSize::Letter) : std::nullopt;
}

} // namespace desktop
