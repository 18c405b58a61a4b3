package reglet.drafting;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;

/**
 * What a PDF has to say of itself to be kept for long: ISO 19005-2 (PDF/A-2), level U. Fonts have to be embedded by whoever writes the
 * pages; this adds the description (XMP, ISO 16684-1) and what the colours mean.
 */
final class PdfA {
    /** Names of colour spaces in profiles' own registry, as output intents name them. */
    private static final String SRGB = "sRGB IEC61966-2.1";

    private PdfA() {
    }

    /** Adds the description made from the document's own information, and the output intent. */
    static void mark(PDDocument document) throws IOException {
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        PDMetadata metadata = new PDMetadata(document);
        // Not compressed, so that programs which know nothing of PDF find it.
        metadata.importXMPMetadata(description(document.getDocumentInformation()).getBytes(StandardCharsets.UTF_8));
        catalog.setMetadata(metadata);
        catalog.getCOSObject().removeItem(COSName.OUTPUT_INTENTS);
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(SRGB);
        intent.setOutputCondition(SRGB);
        intent.setOutputConditionIdentifier(SRGB);
        intent.setRegistryName("https://www.color.org");
        catalog.addOutputIntent(intent);
    }

    private static String description(PDDocumentInformation information) {
        Instant day = SameBytes.day().toInstant();
        return "<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n"
            + "<x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n"
            + "<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\""
            + " xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\""
            + " xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\">\n"
            + "<pdfaid:part>2</pdfaid:part><pdfaid:conformance>U</pdfaid:conformance>\n"
            + language("dc:title", information.getTitle()) + language("dc:description", information.getSubject())
            + "<dc:language><rdf:Bag><rdf:li>en-US</rdf:li></rdf:Bag></dc:language>\n"
            + "<pdf:Producer>" + Html.text(information.getProducer()) + "</pdf:Producer>\n"
            + "<xmp:CreatorTool>" + Html.text(information.getCreator()) + "</xmp:CreatorTool>\n"
            + "<xmp:CreateDate>" + day + "</xmp:CreateDate><xmp:ModifyDate>" + day + "</xmp:ModifyDate>\n"
            + "</rdf:Description></rdf:RDF></x:xmpmeta>\n<?xpacket end=\"r\"?>";
    }

    private static String language(String name, String text) {
        return text == null || text.isEmpty() ? "" : "<" + name + "><rdf:Alt><rdf:li xml:lang=\"x-default\">" + Html.text(text)
            + "</rdf:li></rdf:Alt></" + name + ">\n";
    }
}
