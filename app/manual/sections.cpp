// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/manual/sections.hpp"

#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>

#include "app/manual/pages.hpp"

namespace manual {

namespace {

bool isSection(const QTextBlock &block) { return block.blockFormat().headingLevel() > 1; }

} // namespace

QString sectionName(QStringView heading)
{
    QString name;
    for (const QChar one : heading) {
        if (one.isLetterOrNumber())
            name += one.toLower();
        else if (one != u'\'' && !name.isEmpty() && !name.endsWith(u'-'))
            name += u'-';
    }
    return name.endsWith(u'-') ? name.chopped(1) : name;
}

QStringList sectionsOf(const Page &page)
{
    QTextDocument document;
    document.setMarkdown(page.text);
    QStringList names;
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (isSection(block))
            names << sectionName(block.text());
    }
    return names;
}

void anchorSections(QTextDocument &document)
{
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (!isSection(block))
            continue;
        QTextCharFormat anchor;
        anchor.setAnchor(true);
        anchor.setAnchorNames({sectionName(block.text())});
        QTextCursor heading(block);
        heading.select(QTextCursor::BlockUnderCursor);
        heading.mergeCharFormat(anchor);
    }
}

} // namespace manual
