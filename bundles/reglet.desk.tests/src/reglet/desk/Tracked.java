package reglet.desk;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Takes or refuses all tracked changes of a word processor's file, as ECMA-376, part 1, 17.13.5 says, and lists the paragraphs that
 * remain: style, list level and text, where a reference stands as the bookmark that it leads to.
 */
final class Tracked {
    private final boolean take;
    private final List<String> paragraphs = new ArrayList<>();
    /** Text of paragraphs whose end is gone, which the next one takes in. */
    private final StringBuilder open = new StringBuilder();

    private Tracked(boolean take) {
        this.take = take;
    }

    static List<String> taken(byte[] docx) throws Exception {
        return paragraphs(docx, true);
    }

    static List<String> refused(byte[] docx) throws Exception {
        return paragraphs(docx, false);
    }

    private static List<String> paragraphs(byte[] docx, boolean take) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        Element root = factory.newDocumentBuilder().parse(new ByteArrayInputStream(part(docx))).getDocumentElement();
        Tracked tracked = new Tracked(take);
        for (Element paragraph : children(child(root, "body"))) {
            if (paragraph.getLocalName().equals("p")) {
                tracked.paragraph(paragraph);
            }
        }
        if (!tracked.open.isEmpty()) {
            throw new IllegalStateException("text without an end: " + tracked.open);
        }
        return tracked.paragraphs;
    }

    private static byte[] part(byte[] docx) throws IOException {
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(docx))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (entry.getName().equals("word/document.xml")) {
                    return zip.readAllBytes();
                }
            }
        }
        throw new IOException("no document");
    }

    private void paragraph(Element paragraph) {
        Element properties = child(paragraph, "pPr");
        Element mark = properties == null ? null : child(properties, "rPr");
        StringBuilder text = new StringBuilder();
        runs(paragraph, text, new int[] {0});
        open.append(text);
        // The end of a paragraph goes with its mark; what is left of it belongs to the next paragraph.
        if (mark != null && child(mark, take ? "del" : "ins") != null) {
            return;
        }
        paragraphs.add(value(properties, "pStyle") + "|" + level(properties) + "|" + open);
        open.setLength(0);
    }

    /** @param field 0 outside a field, 1 in its code, 2 in its result */
    private void runs(Element in, StringBuilder text, int[] field) {
        for (Element child : children(in)) {
            switch (child.getLocalName()) {
                case "ins" -> {
                    if (take) {
                        runs(child, text, field);
                    }
                }
                case "del" -> {
                    if (!take) {
                        runs(child, text, field);
                    }
                }
                case "hyperlink" -> text.append('{').append(attribute(child, "anchor")).append('}');
                case "r", "sdt", "sdtContent" -> runs(child, text, field);
                case "fldChar" -> field[0] = switch (attribute(child, "fldCharType")) {
                    case "begin" -> 1;
                    case "separate" -> 2;
                    default -> 0;
                };
                case "instrText", "delInstrText" -> text.append('{').append(child.getTextContent().strip().split("\\s+")[1]).append('}');
                case "t", "delText" -> text.append(field[0] == 0 ? child.getTextContent() : "");
                default -> { }
            }
        }
    }

    private static String level(Element properties) {
        Element list = properties == null ? null : child(properties, "numPr");
        return list == null ? "" : value(list, "numId") + "." + value(list, "ilvl");
    }

    private static String value(Element in, String name) {
        Element child = in == null ? null : child(in, name);
        return child == null ? "" : attribute(child, "val");
    }

    private static String attribute(Element element, String name) {
        return element.getAttributeNS(element.getNamespaceURI(), name);
    }

    private static Element child(Element in, String name) {
        return children(in).stream().filter(child -> child.getLocalName().equals(name)).findFirst().orElse(null);
    }

    private static List<Element> children(Element in) {
        List<Element> children = new ArrayList<>();
        for (Node node = in.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element) {
                children.add(element);
            }
        }
        return children;
    }
}
