package reglet.drafting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;

/** The addresses of a section, step by step, so that each step can be a field that follows the numbering. */
final class Addresses {

    /** One part of an address: an article "2.1", a paragraph "A". */
    record Step(String id, String number) {
    }

    private Addresses() {
    }

    /** By id of an article or paragraph: its article first, then the paragraphs down to it. */
    static Map<String, List<Step>> of(SectionDocument section) {
        Map<String, List<Step>> addresses = new LinkedHashMap<>();
        section.parts().forEach(part -> part.articles().forEach(article -> {
            List<Step> above = List.of(new Step(article.id(), article.number()));
            addresses.put(article.id(), above);
            article.paragraphs().forEach(paragraph -> address(paragraph, above, addresses));
        }));
        return addresses;
    }

    private static void address(Paragraph paragraph, List<Step> above, Map<String, List<Step>> addresses) {
        List<Step> address = new ArrayList<>(above);
        address.add(new Step(paragraph.id(), paragraph.number()));
        addresses.put(paragraph.id(), address);
        paragraph.children().forEach(child -> address(child, address, addresses));
    }
}
