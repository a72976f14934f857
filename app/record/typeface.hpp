// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QFont>
#include <QString>
#include <QStringList>

#include "core/value/result.hpp"

namespace record {

/// Lengths on paper count in tenths of a point, 1/720 inch: the resolution that the document is written with.
constexpr double unitsPerInch = 720;
constexpr double millimetre = unitsPerInch / 25.4;
constexpr double point = 10;

enum class Face { Title, Heading, Group, Text, Bold, Cell, CellBold, Small, Mono };

/// The faces that a record is set in: DejaVu Sans where it is installed, else the system's own sans-serif. Every face is
/// embedded, so the record looks the same in fifty years.
class Typefaces {
public:
    /// NotFound when the system has no font at all: the pages would come out empty.
    static core::Result<Typefaces> find();

    QFont font(Face face) const;
    double ascent(Face face) const;
    double lineHeight(Face face) const;
    double width(const QString &text, Face face) const;
    /// The text in lines of at most that width, broken between words, and within one that is too long. Line breaks in the
    /// text are kept. At least one line.
    QStringList wrapped(const QString &text, Face face, double width) const;

    /// What of a text stays on one line in a place wide enough for it: its words, and numbers with their units.
    static QStringList unbrokenParts(const QString &text);

private:
    Typefaces(QString sans, QString mono) : m_sans(std::move(sans)), m_mono(std::move(mono)) {}
    QString m_sans;
    QString m_mono;
};

/// The typefaces of find() and which issue of them, so that it can be told whether a record was set with the same: a family's name and a digest of
/// the font's head table (OpenType, `head`: revision, check sum, dates).
QString typefaceName();

} // namespace record
