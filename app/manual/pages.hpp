// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QStringList>

#include <vector>

#include "core/value/result.hpp"

/// The manual that the program carries inside itself, for its window and as HTML.
namespace manual {

struct Page {
    QString name;  ///< as links to it have it, without a suffix: `hold_points`
    QString title;
    QString text;  ///< Markdown; links to other pages are `name.md`
    bool operator==(const Page &) const = default;
};

/// Every page, `index` first and the others in its order, and the rules as the rulebook has them. An error where a page is missing
/// that the index names.
core::Result<std::vector<Page>> loadPages();

const Page *findPage(const std::vector<Page> &pages, QStringView name);

/// The page that a link of the manual leads to: `record.md`, `record.md#x`; nothing for an address outside it.
std::optional<QString> pageOfLink(QStringView link);
/// The section there, as sectionName has it: `x`; empty where the link names none.
QString sectionOfLink(QStringView link);

/// The pages that hold every one of these words, whatever their case: those that have them in the title first, then by how often they
/// occur; equal ones in the order of the manual. All pages where no word is given.
std::vector<const Page *> pagesWith(const std::vector<Page> &pages, const QString &words);

} // namespace manual
