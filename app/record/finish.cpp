// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/finish.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QtGlobal>

#include <algorithm>
#include <exception>

// Without its own old smart pointer the library warns of nothing.
#define POINTERHOLDER_TRANSITION 4
#include <qpdf/Buffer.hh>
#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>
#include <qpdf/QPDFPageDocumentHelper.hh>
#include <qpdf/QPDFWriter.hh>

namespace record {

namespace {

using namespace Qt::StringLiterals;

QDateTime timeOf(core::Instant at) { return QDateTime::fromMSecsSinceEpoch(at.milliseconds(), Qt::UTC); }

const QString producer = u"Qt"_s;
const QString creator = u"Remate"_s;

/// XML 1.0 section 2.2 has no place for control characters, and a ledger from elsewhere may hold any.
QString xmlText(QString text)
{
    text.removeIf([](QChar c) { return c.unicode() < 0x20 || c.unicode() >= 0xfffe || c.isSurrogate(); });
    return text.toHtmlEscaped();
}

/// The packet, ISO 19005-1 section 6.7.2: every line of the information dictionary, in its XMP property.
QByteArray packetOf(const Particulars &particulars)
{
    const QString author = particulars.author.isEmpty()
                               ? QString()
                               : u"<dc:creator><rdf:Seq><rdf:li>%1</rdf:li></rdf:Seq></dc:creator>"_s.arg(xmlText(particulars.author));
    const QString at = timeOf(particulars.at).toString(u"yyyy-MM-ddThh:mm:ss'Z'");
    const QString packet = uR"(<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" rdf:about=""><dc:title><rdf:Alt><rdf:li xml:lang="x-default">%1</rdf:li></rdf:Alt></dc:title>%2</rdf:Description>
<rdf:Description xmlns:xmp="http://ns.adobe.com/xap/1.0/" rdf:about="" xmp:CreatorTool="%3" xmp:CreateDate="%4" xmp:ModifyDate="%4"/>
<rdf:Description xmlns:pdf="http://ns.adobe.com/pdf/1.3/" rdf:about="" pdf:Producer="%5"/>
<rdf:Description xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/" rdf:about="" pdfaid:part="1" pdfaid:conformance="B"/>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>
)"_s.arg(xmlText(particulars.title), author, creator, at, producer);
    return packet.toUtf8();
}

QPDFObjectHandle textOf(const QString &text) { return QPDFObjectHandle::newUnicodeString(text.toStdString()); }

void setParticulars(QPDF &pdf, const Particulars &particulars)
{
    const QPDFObjectHandle at = QPDFObjectHandle::newString(timeOf(particulars.at).toString(u"'D:'yyyyMMddhhmmss'+00''00'''").toStdString());
    QPDFObjectHandle info = QPDFObjectHandle::newDictionary();
    info.replaceKey("/Title", textOf(particulars.title));
    if (!particulars.author.isEmpty())
        info.replaceKey("/Author", textOf(particulars.author));
    info.replaceKey("/Creator", textOf(creator));
    info.replaceKey("/Producer", textOf(producer));
    info.replaceKey("/CreationDate", at);
    info.replaceKey("/ModDate", at);
    pdf.getTrailer().replaceKey("/Info", pdf.makeIndirectObject(info));

    QPDFObjectHandle packet = QPDFObjectHandle::newStream(&pdf, packetOf(particulars).toStdString());
    packet.getDict().replaceKey("/Type", QPDFObjectHandle::newName("/Metadata"));
    packet.getDict().replaceKey("/Subtype", QPDFObjectHandle::newName("/XML"));
    pdf.getRoot().replaceKey("/Metadata", packet);

    // The second half is made by the writer, of all that the file holds.
    const QPDFObjectHandle identity = QPDFObjectHandle::newString(particulars.head.bytes().left(16).toStdString());
    pdf.getTrailer().replaceKey("/ID", QPDFObjectHandle::newArray({identity, identity}));
}

/// A bookmark with what stands under it. Siblings come one after the other, deeper ones in between.
class Outline {
public:
    Outline(QPDF &pdf, const std::vector<Bookmark> &bookmarks) : m_pdf(pdf), m_bookmarks(bookmarks), m_pages(QPDFPageDocumentHelper(pdf).getAllPages()) {}

    /// Hangs bookmarks under `parent` from `m_at` on, as long as they are as deep as the first of them, and answers how many those are.
    int hangUnder(QPDFObjectHandle parent) // NOLINT(misc-no-recursion): a tree, as deep as headings are
    {
        const int depth = m_bookmarks[m_at].depth;
        int count = 0;
        QPDFObjectHandle last = QPDFObjectHandle::newNull();
        while (m_at < m_bookmarks.size() && m_bookmarks[m_at].depth >= depth) {
            QPDFObjectHandle item = itemFor(m_bookmarks[m_at], parent);
            if (last.isNull()) {
                parent.replaceKey("/First", item);
            } else {
                item.replaceKey("/Prev", last);
                last.replaceKey("/Next", item);
            }
            last = item;
            ++count;
            ++m_at;
            // Folded, as the minus says: a job has hundreds of interfaces.
            if (m_at < m_bookmarks.size() && m_bookmarks[m_at].depth > depth)
                item.replaceKey("/Count", QPDFObjectHandle::newInteger(-hangUnder(item)));
        }
        parent.replaceKey("/Last", last);
        return count;
    }

private:
    QPDFObjectHandle itemFor(const Bookmark &bookmark, const QPDFObjectHandle &parent)
    {
        QPDFObjectHandle page = m_pages.at(bookmark.page).getObjectHandle();
        const double height = page.getKey("/MediaBox").getArrayItem(3).getNumericValue();
        const QPDFObjectHandle top = QPDFObjectHandle::newReal(height - bookmark.y / point, 1);
        QPDFObjectHandle item = m_pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
        item.replaceKey("/Title", textOf(bookmark.title));
        item.replaceKey("/Parent", parent);
        item.replaceKey("/Dest", QPDFObjectHandle::newArray({page, QPDFObjectHandle::newName("/XYZ"), QPDFObjectHandle::newNull(), top, QPDFObjectHandle::newNull()}));
        return item;
    }

    QPDF &m_pdf;
    const std::vector<Bookmark> &m_bookmarks;
    std::vector<QPDFPageObjectHelper> m_pages;
    std::size_t m_at = 0;
};

void setBookmarks(QPDF &pdf, const std::vector<Bookmark> &bookmarks)
{
    if (bookmarks.empty())
        return;
    QPDFObjectHandle outlines = pdf.makeIndirectObject(QPDFObjectHandle::newDictionary());
    outlines.replaceKey("/Type", QPDFObjectHandle::newName("/Outlines"));
    outlines.replaceKey("/Count", QPDFObjectHandle::newInteger(Outline(pdf, bookmarks).hangUnder(outlines)));
    pdf.getRoot().replaceKey("/Outlines", outlines);
    pdf.getRoot().replaceKey("/PageMode", QPDFObjectHandle::newName("/UseOutlines"));
}

QByteArray written(QPDF &pdf)
{
    QPDFWriter writer(pdf);
    writer.setOutputMemory();
    writer.setObjectStreamMode(qpdf_o_disable);
    writer.setDecodeLevel(qpdf_dl_none);
    writer.forcePDFVersion("1.4");
    writer.setNewlineBeforeEndstream(true); // ISO 19005-1 section 6.1.7
    writer.setDeterministicID(true);
    writer.write();
    const std::shared_ptr<Buffer> bytes = writer.getBufferSharedPointer();
    return {reinterpret_cast<const char *>(bytes->getBuffer()), static_cast<qsizetype>(bytes->getSize())};
}

} // namespace

core::Result<QByteArray> finished(const QByteArray &drawn, const Particulars &particulars, const std::vector<Bookmark> &bookmarks)
{
    try {
        QPDF pdf;
        pdf.setSuppressWarnings(true);
        pdf.setAttemptRecovery(false);
        pdf.processMemoryFile("record", drawn.constData(), static_cast<std::size_t>(drawn.size()));
        setParticulars(pdf, particulars);
        setBookmarks(pdf, bookmarks);
        return written(pdf);
    } catch (const std::exception &fault) {
        return core::failure(core::ErrorCode::Damaged,
                             QCoreApplication::translate("Record", "The pages were drawn and could not be put together (%1). Export again; if it happens again, restart the program.")
                                 .arg(QString::fromUtf8(fault.what())));
    }
}

} // namespace record
