package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Component;
import reglet.model.Enclosures;
import reglet.model.Enclosures.Paper;
import reglet.model.Enclosures.Substitution;
import reglet.model.Evidence;
import reglet.model.Pack;

/** Reads what a submittal carries besides product data. */
final class EnclosureFiles {
    private static final Map<String, Evidence> KINDS = new LinkedHashMap<>();

    static {
        Enclosures.KINDS.forEach(kind -> KINDS.put(kind.text(), kind));
    }

    private final Pack pack;
    private final Folder folder;
    private final Problems problems;

    EnclosureFiles(Pack pack, Folder folder, Problems problems) {
        this.pack = pack;
        this.folder = folder;
        this.problems = problems;
    }

    /** Reads the members "papers", "colours" and "substitutions" of a submittal. */
    Enclosures read(Fields submittal) {
        List<String> products = submittal.texts("products");
        List<Paper> papers = new ArrayList<>();
        submittal.items("papers").forEach(cursor -> papers.add(paper(cursor)));
        Map<String, String> colours = new LinkedHashMap<>();
        submittal.members("colours").forEach((product, colour) -> {
            known(colour, "the submittal carries no product", product, products);
            colours.put(product, colour.text());
        });
        List<Substitution> substitutions = new ArrayList<>();
        submittal.items("substitutions").forEach(cursor -> substitutions.add(substitution(cursor, products)));
        return new Enclosures(papers, colours, substitutions);
    }

    private Paper paper(Cursor cursor) {
        Fields fields = cursor.fields("file", "kind", "for", "title");
        String file = fields.text("file");
        if (!file.isEmpty() && (!folder.holds(file) || !folder.exists(file))) {
            fields.find("file").orElseThrow().wrong("there is no file " + file + " in the job folder",
                "expected a file such as sheets/report.pdf");
        }
        Evidence kind = fields.oneOf("kind", KINDS, Evidence.CERTIFICATE);
        String component = component(fields);
        String usual = pack.component(component).map(found -> found.title() + ", " + kind.text()).orElse(file);
        return new Paper(file, kind, component, fields.text("title", usual), cursor.at());
    }

    private Substitution substitution(Cursor cursor, List<String> products) {
        Fields fields = cursor.fields("product", "for", "cost", "time", "work", "reason");
        String product = fields.text("product");
        fields.find("product").ifPresent(found -> known(found, "the submittal carries no product", product, products));
        return new Substitution(product, component(fields), fields.text("cost", ""), fields.text("time", ""), fields.text("work", ""),
            fields.text("reason", ""), cursor.at());
    }

    private String component(Fields fields) {
        Optional<Cursor> component = fields.find("for");
        component.ifPresent(found -> known(found, "unknown component", found.text(),
            pack.components().stream().map(Component::id).toList()));
        return component.map(Cursor::text).orElse("");
    }

    private void known(Cursor at, String what, String word, List<String> allowed) {
        if (!allowed.contains(word)) {
            problems.unknown(at.at(), what, word, allowed);
        }
    }
}
