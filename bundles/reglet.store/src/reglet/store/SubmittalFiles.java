package reglet.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Pack;
import reglet.model.ProductData;
import reglet.model.RegisterFile;
import reglet.model.Review;
import reglet.model.SectionPlan;
import reglet.model.Submittal;

/** Reads what was handed in, and what was answered. */
final class SubmittalFiles {
    private static final String FOLDER = "submittals";

    private final Pack pack;
    private final Folder folder;
    private final RegisterFile register;
    private final Problems problems;

    SubmittalFiles(Pack pack, Folder folder, RegisterFile register, Problems problems) {
        this.pack = pack;
        this.folder = folder;
        this.register = register;
        this.problems = problems;
    }

    List<Submittal> submittals(List<ProductData> products) throws IOException {
        List<Submittal> all = new ArrayList<>();
        List<String> ids = products.stream().map(ProductData::id).toList();
        List<String> places = folder.folders(FOLDER);
        List<String> names = places.stream().map(SubmittalFiles::id).toList();
        for (String place : places) {
            String file = place + "/submittal.yaml";
            folder.text(file).flatMap(text -> Cursor.parse(file, text, 0, problems))
                .ifPresent(cursor -> all.add(submittal(id(place), cursor, ids, names)));
        }
        return all;
    }

    private static String id(String place) {
        return place.substring(FOLDER.length() + 1);
    }

    private Submittal submittal(String id, Cursor cursor, List<String> products, List<String> names) {
        Fields fields = cursor.fields("section", "items", "products", "from", "date", "statement", "deviations", "notes", "with",
            "papers", "colours", "substitutions", "replaces", "review");
        String section = fields.text("section");
        if (pack.plan(section).isEmpty() && !section.isEmpty()) {
            problems.unknown(fields.find("section").orElseThrow().at(), "the pack has no section", section,
                pack.plans().stream().map(SectionPlan::number).toList());
        }
        for (Cursor item : fields.items("with")) {
            known(item, "this can't go in", Submittal.BY_CHOICE);
        }
        for (Cursor item : fields.items("products")) {
            known(item, "there is no product data", products);
        }
        List<String> others = names.stream().filter(name -> !name.equals(id)).toList();
        fields.find("replaces").ifPresent(found -> known(found, "there is no other submittal", others));
        return new Submittal(id, section, fields.texts("items"), fields.texts("products"), fields.text("from", ""),
            fields.text("date", ""), fields.text("statement", ""), fields.texts("deviations"), fields.text("notes", ""),
            fields.texts("with"), fields.text("replaces", ""), new EnclosureFiles(pack, folder, problems).read(fields),
            fields.find("review").map(this::review), fields.at());
    }

    private void known(Cursor word, String what, List<String> allowed) {
        if (!allowed.contains(word.text())) {
            problems.unknown(word.at(), what, word.text(), allowed);
        }
    }

    private Review review(Cursor cursor) {
        Fields fields = cursor.fields("action", "by", "received", "due", "returned", "recommends", "remark", "notes");
        String action = action(fields);
        if (!action.isEmpty() && fields.find("by").isEmpty()) {
            cursor.wrong("nobody acts", "add a line \"by: …\" with who chose the action");
        }
        Optional<Review.Recommendation> recommends = fields.find("recommends").map(found -> {
            Fields one = found.fields("action", "by");
            one.text("action");
            return new Review.Recommendation(action(one), one.text("by"));
        });
        Map<String, Review.Note> notes = new LinkedHashMap<>();
        fields.members("notes").forEach((row, text) -> notes.put(row, new Review.Note(text.text(), text.at())));
        return new Review(action, fields.text("by", ""), fields.date("received"), fields.date("due"), fields.date("returned"), recommends,
            fields.text("remark", ""), notes, cursor.at());
    }

    /** One of the office's words; it is chosen by a person, and only from the list in the job. */
    private String action(Fields fields) {
        Optional<Cursor> word = fields.find("action");
        if (word.isPresent() && register.actions().isEmpty()) {
            word.get().wrong("the job lists no words for actions", "add the office's own under \"actions\" in " + RegisterFile.NAME);
        } else {
            word.ifPresent(found -> known(found, "this is none of the office's words:", List.copyOf(register.actions().keySet())));
        }
        return fields.text("action", "");
    }
}
