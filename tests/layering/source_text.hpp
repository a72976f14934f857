// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>
#include <QVector>

namespace layering {

/// One #include line. Line numbers start at 1.
struct Include {
    int line;
    QString name;
    bool quoted; ///< "name" rather than <name>

    bool operator==(const Include &) const = default;
};

/// A string literal and the line that it starts on.
struct Literal {
    int line;
    QString text;

    bool operator==(const Literal &) const = default;
};

/// C++ text taken apart far enough to ask questions about layers. Not a compiler: macros and trigraphs are not expanded.
struct SourceText {
    QString code; ///< comments and the insides of literals blanked, line breaks kept
    QVector<Include> includes;
    QVector<Literal> literals;
};

/// Takes C++ text apart. Knows both comment forms, raw strings, escapes and digit separators.
SourceText takeApart(const QString &text);

/// The line, from 1, of a position in the text.
int lineAt(const QString &text, qsizetype position);

} // namespace layering
