// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QStringList>

class QTextDocument;

namespace manual {

struct Page;

/// The name by which a link leads to the section with that heading, `page.md#name`: "What is applied" is `what-is-applied`.
QString sectionName(QStringView heading);

/// The names of a page's sections, in its order; its title is none.
QStringList sectionsOf(const Page &page);

/// Makes each heading of a page that was read into a document an anchor of its section's name.
void anchorSections(QTextDocument &document);

} // namespace manual
