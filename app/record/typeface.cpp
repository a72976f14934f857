// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/typeface.hpp"

#include <QCoreApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QRawFont>
#include <QTextLayout>

#include <utility>

#include "core/measure/working.hpp"
#include "core/value/digest.hpp"

namespace record {

namespace {

struct FaceRow {
    Face face;
    double size; ///< in points
    bool isBold;
    bool isMono;
};

constexpr FaceRow faceRows[] = {
    {Face::Title, 18, true, false},  {Face::Heading, 11.5, true, false}, {Face::Group, 7.5, true, false},
    {Face::Text, 8.5, false, false}, {Face::Bold, 8.5, true, false},     {Face::Cell, 7, false, false},
    {Face::CellBold, 7, true, false}, {Face::Small, 6.5, false, false},  {Face::Mono, 6.3, false, true},
};

const FaceRow &rowOf(Face face)
{
    for (const FaceRow &row : faceRows) {
        if (row.face == face)
            return row;
    }
    Q_UNREACHABLE();
}

QString firstInstalled(const QString &preferred, QFontDatabase::SystemFont otherwise)
{
    return QFontDatabase::families().contains(preferred) ? preferred : QFontDatabase::systemFont(otherwise).family();
}

/// As core::measure::unbroken(), a time with its zone, and a page with its number.
QString unbroken(const QString &text)
{
    static const QString zone = QStringLiteral(" UTC");
    QString kept = core::measure::unbroken(text);
    kept.replace(zone, QChar(QChar::Nbsp) + zone.mid(1));
    return kept.replace(QStringLiteral("(p. "), QStringLiteral("(p.") + QChar(QChar::Nbsp));
}

} // namespace

QStringList Typefaces::unbrokenParts(const QString &text)
{
    QStringList parts;
    QString part;
    for (const QChar c : unbroken(text)) {
        const bool isBetween = c.isSpace() && c != QChar(QChar::Nbsp);
        if (!isBetween)
            part += c;
        if (isBetween && !part.isEmpty())
            parts << std::exchange(part, {});
    }
    if (!part.isEmpty())
        parts << part;
    return parts;
}

core::Result<Typefaces> Typefaces::find()
{
    // Without a QGuiApplication the font database asserts, so it is asked for first.
    const bool canAsk = qobject_cast<QGuiApplication *>(QCoreApplication::instance()) != nullptr;
    if (!canAsk || QFontDatabase::families().isEmpty())
        return core::failure(core::ErrorCode::NotFound,
                             QCoreApplication::translate("Record", "There is no font to write the record with. Install the package fonts-dejavu-core."));
    return Typefaces(firstInstalled(QStringLiteral("DejaVu Sans"), QFontDatabase::GeneralFont),
                     firstInstalled(QStringLiteral("DejaVu Sans Mono"), QFontDatabase::FixedFont));
}

QFont Typefaces::font(Face face) const
{
    const FaceRow &row = rowOf(face);
    QFont font(row.isMono ? m_mono : m_sans);
    font.setPixelSize(qRound(row.size * point));
    font.setBold(row.isBold);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setKerning(false);
    // Any spacing of letters switches ligatures off: "ﬁ" as one sign would hide "rectified" from a search of the file.
    // In percent: an absolute one is scaled with the device, so lines would come out longer on paper than they were laid.
    font.setLetterSpacing(QFont::PercentageSpacing, 100.2);
    return font;
}

double Typefaces::ascent(Face face) const { return QFontMetricsF(font(face)).ascent(); }

double Typefaces::lineHeight(Face face) const { return rowOf(face).size * point * 1.28; }

double Typefaces::width(const QString &text, Face face) const { return QFontMetricsF(font(face)).horizontalAdvance(text); }

QStringList Typefaces::wrapped(const QString &text, Face face, double width) const
{
    QStringList lines;
    for (const QString &paragraph : text.split(u'\n')) {
        // Broken as with no-break spaces, and written as it is, so that a search of the file finds "22.5 N·m".
        QTextLayout layout(unbroken(paragraph), font(face));
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        // The writer spaces letters as the font was designed; rounded to whole pixels, a line would come out too long.
        option.setUseDesignMetrics(true);
        layout.setTextOption(option);
        layout.beginLayout();
        for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
            line.setLineWidth(width);
            lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return lines.isEmpty() ? QStringList{QString()} : lines;
}

QString typefaceName()
{
    const auto faces = Typefaces::find();
    if (!faces)
        return QStringLiteral("no typeface");
    QStringList names;
    for (const Face face : {Face::Text, Face::Bold, Face::Mono}) {
        constexpr qsizetype enough = 8;
        const QRawFont font = QRawFont::fromFont(faces->font(face));
        names << QStringLiteral("%1 %2 %3").arg(font.familyName(), font.styleName(), core::Digest::of(font.fontTable("head")).hex().first(enough));
    }
    return names.join(QStringLiteral(", "));
}

} // namespace record
