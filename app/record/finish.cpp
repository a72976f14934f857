// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/record/finish.hpp"

#include <QCoreApplication>
#include <QDateTime>

#include <initializer_list>
#include <memory>
#include <type_traits>

#include "app/record/pdf_library.hpp"

namespace record {

namespace {

using namespace Qt::StringLiterals;

/// Six capitals that follow from the name of a font.
QByteArray tagOf(const QByteArray &font)
{
    const QByteArray hash = core::Digest::of(font).bytes();
    QByteArray tag;
    for (qsizetype i = 0; i < 6; ++i)
        tag += static_cast<char>('A' + static_cast<quint8>(hash[i]) % 26);
    return tag;
}

/// The pages with subsets of fonts named after the font (ISO 32000-1 section 9.6.4 leaves their six letters free): Qt numbers them in the order of
/// a hash, so they would change from run to run. Of as many bytes, so that no offset moves.
QByteArray withSteadyFontNames(QByteArray pdf)
{
    static const QByteArray before = "/FontName /";
    for (qsizetype at = pdf.indexOf(before); at >= 0; at = pdf.indexOf(before, at + 1)) {
        const qsizetype tag = at + before.size();
        const qsizetype end = pdf.indexOf('\n', tag);
        if (end > tag + 7 && pdf.at(tag + 6) == '+')
            pdf.replace(tag, 6, tagOf(pdf.mid(tag + 7, end - tag - 7).trimmed()));
    }
    return pdf;
}

QDateTime timeOf(core::Instant at) { return QDateTime::fromMSecsSinceEpoch(at.milliseconds(), Qt::UTC); }

const QString producer = u"Qt"_s;
const QString creator = u"Remate"_s;

/// XML 1.0 section 2.2 has no place for control characters, and a ledger from elsewhere may hold any. Left out in both places, which have to agree.
QString plain(QString text) { return text.removeIf([](QChar c) { return c.unicode() < 0x20 || c.unicode() >= 0xfffe; }); }

/// The packet, ISO 19005-1 section 6.7.2: every line of the information dictionary, in its XMP property.
QByteArray packetOf(const Particulars &particulars)
{
    const QString author = particulars.author.isEmpty()
                               ? QString()
                               : u"<dc:creator><rdf:Seq><rdf:li>%1</rdf:li></rdf:Seq></dc:creator>"_s.arg(particulars.author.toHtmlEscaped());
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
)"_s.arg(particulars.title.toHtmlEscaped(), author, creator, at, producer);
    return packet.toUtf8();
}

/// A document in the library's hands. Errors stay in it until they are asked for, and what is done after one does nothing.
class Document {
public:
    Document(const PdfLibrary &library, const QByteArray &pdf) : m_pdf(library), m_data(library.init(), {library.cleanup})
    {
        m_pdf.silence_errors(get());
        m_pdf.set_suppress_warnings(get(), QPDF_TRUE);
        m_pdf.set_attempt_recovery(get(), QPDF_FALSE);
        m_pdf.read_memory(get(), "record", pdf.constData(), static_cast<unsigned long long>(pdf.size()), nullptr);
    }

    /// Why it cannot be gone on with, or nothing. Told once.
    QString fault() const
    {
        return m_pdf.has_error(get()) != QPDF_FALSE ? QString::fromUtf8(m_pdf.get_error_full_text(get(), m_pdf.get_error(get()))) : QString();
    }

    qpdf_oh trailer() const { return m_pdf.get_trailer(get()); }
    qpdf_oh root() const { return m_pdf.get_root(get()); }
    qpdf_oh page(std::size_t index) const { return m_pdf.get_page_n(get(), index); }

    qpdf_oh dictionary() const { return m_pdf.make_indirect_object(get(), m_pdf.oh_new_dictionary(get())); }
    qpdf_oh name(const char *text) const { return m_pdf.oh_new_name(get(), text); }
    qpdf_oh number(int value) const { return m_pdf.oh_new_integer(get(), value); }
    qpdf_oh real(double value) const { return m_pdf.oh_new_real_from_double(get(), value, 1); }
    qpdf_oh nothing() const { return m_pdf.oh_new_null(get()); }
    qpdf_oh bytes(const QByteArray &value) const { return m_pdf.oh_new_binary_string(get(), value.constData(), static_cast<std::size_t>(value.size())); }
    qpdf_oh text(const QString &value) const
    {
        const QByteArray utf8 = value.toUtf8();
        return m_pdf.oh_new_binary_unicode_string(get(), utf8.constData(), static_cast<std::size_t>(utf8.size()));
    }
    qpdf_oh array(std::initializer_list<qpdf_oh> items) const
    {
        const qpdf_oh made = m_pdf.oh_new_array(get());
        for (const qpdf_oh item : items)
            m_pdf.oh_append_item(get(), made, item);
        return made;
    }
    qpdf_oh stream(const QByteArray &data) const
    {
        const qpdf_oh made = m_pdf.oh_new_stream(get());
        m_pdf.oh_replace_stream_data(get(), made, reinterpret_cast<const unsigned char *>(data.constData()), static_cast<std::size_t>(data.size()), nothing(), nothing());
        return made;
    }
    void set(qpdf_oh dictionary, const char *key, qpdf_oh value) const { m_pdf.oh_replace_key(get(), dictionary, key, value); }
    qpdf_oh dictionaryOf(qpdf_oh stream) const { return m_pdf.oh_get_dict(get(), stream); }
    double heightOf(qpdf_oh page) const { return m_pdf.oh_get_numeric_value(get(), m_pdf.oh_get_array_item(get(), m_pdf.oh_get_key(get(), page, "/MediaBox"), 3)); }

    /// Nothing when it cannot be written; fault() tells why.
    QByteArray written() const
    {
        m_pdf.init_write_memory(get());
        m_pdf.set_object_stream_mode(get(), qpdf_o_disable);
        m_pdf.set_decode_level(get(), qpdf_dl_none);
        m_pdf.force_pdf_version(get(), "1.4");
        m_pdf.set_newline_before_endstream(get(), QPDF_TRUE); // ISO 19005-1 section 6.1.7
        m_pdf.set_deterministic_ID(get(), QPDF_TRUE);
        m_pdf.write(get());
        if (m_pdf.has_error(get()) != QPDF_FALSE)
            return {};
        return {reinterpret_cast<const char *>(m_pdf.get_buffer(get())), static_cast<qsizetype>(m_pdf.get_buffer_length(get()))};
    }

private:
    qpdf_data get() const { return m_data.get(); }

    struct CleanUp {
        decltype(PdfLibrary::cleanup) cleanUp;
        void operator()(qpdf_data data) const { cleanUp(&data); }
    };
    const PdfLibrary &m_pdf;
    std::unique_ptr<std::remove_pointer_t<qpdf_data>, CleanUp> m_data;
};

void setParticulars(const Document &pdf, const Particulars &particulars)
{
    // ISO 32000-1 section 7.9.4
    const qpdf_oh at = pdf.bytes("D:" + timeOf(particulars.at).toString(u"yyyyMMddhhmmss").toLatin1() + "+00'00'");
    const qpdf_oh info = pdf.dictionary();
    pdf.set(info, "/Title", pdf.text(particulars.title));
    if (!particulars.author.isEmpty())
        pdf.set(info, "/Author", pdf.text(particulars.author));
    pdf.set(info, "/Creator", pdf.text(creator));
    pdf.set(info, "/Producer", pdf.text(producer));
    pdf.set(info, "/CreationDate", at);
    pdf.set(info, "/ModDate", at);
    pdf.set(pdf.trailer(), "/Info", info);

    const qpdf_oh packet = pdf.stream(packetOf(particulars));
    pdf.set(pdf.dictionaryOf(packet), "/Type", pdf.name("/Metadata"));
    pdf.set(pdf.dictionaryOf(packet), "/Subtype", pdf.name("/XML"));
    pdf.set(pdf.root(), "/Metadata", packet);

    // The second half is made by the writer, of all that the file holds.
    const qpdf_oh identity = pdf.bytes(particulars.head.bytes().left(16));
    pdf.set(pdf.trailer(), "/ID", pdf.array({identity, identity}));
}

qpdf_oh bookmarkFor(const Document &pdf, const Bookmark &bookmark, qpdf_oh parent)
{
    const qpdf_oh page = pdf.page(bookmark.page);
    const qpdf_oh item = pdf.dictionary();
    pdf.set(item, "/Title", pdf.text(bookmark.title));
    pdf.set(item, "/Parent", parent);
    pdf.set(item, "/Dest", pdf.array({page, pdf.name("/XYZ"), pdf.nothing(), pdf.real(pdf.heightOf(page) - bookmark.y / point), pdf.nothing()}));
    return item;
}

/// Hangs bookmarks under `parent`, from `at` on, as long as they are as deep as the first of them, each with what is deeper under it.
/// Answers how many those are, and moves `at` behind the last. Calls itself as deep as headings are.
int hangUnder(const Document &pdf, qpdf_oh parent, const std::vector<Bookmark> &bookmarks, std::size_t &at)
{
    const int depth = bookmarks[at].depth;
    int count = 0;
    for (qpdf_oh last = 0; at < bookmarks.size() && bookmarks[at].depth >= depth; ++count) {
        const qpdf_oh item = bookmarkFor(pdf, bookmarks[at++], parent);
        if (count == 0) {
            pdf.set(parent, "/First", item);
        } else {
            pdf.set(item, "/Prev", last);
            pdf.set(last, "/Next", item);
        }
        // Folded, as the minus says: a job has hundreds of interfaces.
        if (at < bookmarks.size() && bookmarks[at].depth > depth)
            pdf.set(item, "/Count", pdf.number(-hangUnder(pdf, item, bookmarks, at)));
        pdf.set(parent, "/Last", item);
        last = item;
    }
    return count;
}

void setBookmarks(const Document &pdf, const std::vector<Bookmark> &bookmarks)
{
    if (bookmarks.empty())
        return;
    const qpdf_oh outlines = pdf.dictionary();
    std::size_t at = 0;
    pdf.set(outlines, "/Type", pdf.name("/Outlines"));
    pdf.set(outlines, "/Count", pdf.number(hangUnder(pdf, outlines, bookmarks, at)));
    pdf.set(pdf.root(), "/Outlines", outlines);
    pdf.set(pdf.root(), "/PageMode", pdf.name("/UseOutlines"));
}

tl::unexpected<core::Error> cannotBePutTogether(const QString &fault)
{
    return core::failure(core::ErrorCode::Damaged,
                         QCoreApplication::translate("Record", "The pages were drawn and could not be put together (%1). Export again; if it happens again, restart the program.").arg(fault));
}

} // namespace

core::Result<QByteArray> finished(const QByteArray &drawn, const Particulars &particulars, const std::vector<Bookmark> &bookmarks)
{
    const auto library = PdfLibrary::load();
    if (!library)
        return core::failure(library.error());
    const QByteArray steady = withSteadyFontNames(drawn);
    const Document pdf(*library, steady);
    if (const QString fault = pdf.fault(); !fault.isEmpty())
        return cannotBePutTogether(fault);
    setParticulars(pdf, {plain(particulars.title), plain(particulars.author), particulars.at, particulars.head});
    setBookmarks(pdf, bookmarks);
    QByteArray bytes = pdf.written();
    if (bytes.isEmpty())
        return cannotBePutTogether(pdf.fault());
    return bytes;
}

} // namespace record
