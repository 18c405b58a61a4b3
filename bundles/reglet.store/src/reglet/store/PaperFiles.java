package reglet.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import reglet.model.Clause;
import reglet.model.Pack.Caution;
import reglet.model.Plausible;
import reglet.model.PropertyType;
import reglet.model.PropertyType.Kind;
import reglet.model.Range;
import reglet.model.RegisterEntry;
import reglet.model.RegisterItem;
import reglet.model.Scope;
import reglet.model.SectionPlan;
import reglet.model.SectionPlan.Article;
import reglet.model.SectionPlan.Made;
import reglet.model.Standard;
import reglet.model.Synonym;
import reglet.model.Unit;

/** Reads the files that say what is printed: plans of sections, clauses, standards, register entries, cautions; and how sheets are read. */
final class PaperFiles {

    private PaperFiles() {
    }

    static SectionPlan plan(Cursor file) {
        Fields fields = file.fields("number", "title", "articles");
        List<Article> articles = new ArrayList<>();
        int part = 1;
        for (Cursor item : fields.items("articles")) {
            Fields article = item.fields("id", "part", "title", "made");
            int number = article.number("part", 0);
            if (number < part || number > 3) {
                item.wrong("part " + number + " comes after part " + part, "expected part 1, 2 or 3, in order");
            }
            part = Math.max(part, number);
            articles.add(new Article(article.text("id"), number, article.text("title"),
                article.oneOf("made", Words.MADE).orElse(Made.NOTHING)));
        }
        return new SectionPlan(fields.text("number"), fields.text("title"), articles, fields.at());
    }

    /** A clause: YAML between two lines of three hyphens, then Markdown. */
    static Optional<Clause> clause(String file, String text, Problems problems) {
        Optional<FrontMatter> matter = FrontMatter.of(file, text, problems);
        if (matter.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = matter.get().yaml().fields("id", "section", "article", "each", "subject", "order", "when", "note", "basis");
        Scope each = fields.oneOf("each", Words.SUBJECT_SCOPE, Scope.JOB);
        if (matter.get().body().isBlank()) {
            matter.get().yaml().wrong("the clause has no text", "write its Markdown below the second ---");
        }
        return Optional.of(new Clause(fields.text("id"), fields.text("section"), fields.text("article"), each,
            RuleFiles.subject(fields, each), fields.number("order", 0), fields.text("when", ""), matter.get().body(),
            fields.text("note", ""), Knowledge.basis(fields), fields.at()));
    }

    static List<Standard> standards(Cursor file) {
        List<Standard> standards = new ArrayList<>();
        file.members().forEach((id, cursor) -> {
            Fields fields = cursor.fields("title", "editions", "basis");
            standards.add(new Standard(id, fields.text("title"), fields.textsByName("editions"), Knowledge.basis(fields), cursor.at()));
        });
        return standards;
    }

    static List<RegisterEntry> register(Cursor file) {
        List<RegisterEntry> entries = new ArrayList<>();
        file.members().forEach((id, cursor) -> {
            Fields fields = cursor.fields("section", "component", "kind", "sort", "sends", "when", "text");
            entries.add(new RegisterEntry(id, fields.text("section"), fields.text("component", ""),
                fields.oneOf("kind", Words.REGISTER, RegisterItem.Kind.ACTION),
                fields.oneOf("sort", Words.SORT).orElse(RegisterItem.Sort.NONE), fields.text("sends"), fields.text("when", ""),
                fields.text("text"), cursor.at()));
        });
        return entries;
    }

    static List<Caution> cautions(Cursor file) {
        List<Caution> cautions = new ArrayList<>();
        file.members().forEach((id, cursor) -> {
            Fields fields = cursor.fields("text", "when", "basis");
            cautions.add(new Caution(id, fields.text("text").strip(), fields.text("when", ""), Knowledge.basis(fields), cursor.at()));
        });
        return cautions;
    }

    static List<Synonym> synonyms(Cursor file) {
        List<Synonym> synonyms = new ArrayList<>();
        file.members().forEach((property, labels) -> synonyms.add(new Synonym(property, labels.texts(), labels.at())));
        return synonyms;
    }

    /** @param types of the pack's properties, by their paths */
    static List<Plausible> plausible(Cursor file, Function<String, Optional<PropertyType>> types) {
        List<Plausible> all = new ArrayList<>();
        file.members().forEach((property, cursor) -> {
            Fields fields = cursor.fields("range", "basis");
            Optional<Unit> unit = types.apply(property).flatMap(PropertyType::unit);
            if (unit.isEmpty()) {
                cursor.wrong("\"" + property + "\" is no amount that the pack knows",
                    "expected a property with a unit, such as lath.weight");
            }
            if (fields.find("range").isEmpty() || fields.items("basis").isEmpty()) {
                cursor.wrong("\"range\" or \"basis\" is missing", "write \"range: 1 to 6 lb/yd2\" and where that is known from");
            }
            unit.flatMap(found -> fields.find("range").flatMap(range -> Values.read(range, new PropertyType(Kind.RANGE, unit, List.of()))))
                .ifPresent(range -> all.add(new Plausible(property, (Range) range, Knowledge.basis(fields), cursor.at())));
        });
        return all;
    }
}
