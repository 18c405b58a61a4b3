package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Clause;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Scope;
import reglet.model.SectionDocument.Plain;
import reglet.model.SectionDocument.Span;
import reglet.model.SectionDocument.Strong;
import reglet.model.TextChange;

/** Puts a person's changes into the drafted paragraphs. The person's wording stands as it is; its slots are filled as everywhere. */
final class TextChanges {
    static final String KEPT = "+kept";
    private final Pack pack;
    private final Slots slots;
    private final List<Problem> problems;

    TextChanges(Pack pack, Slots slots, List<Problem> problems) {
        this.pack = pack;
        this.slots = slots;
        this.problems = problems;
    }

    /**
     * Applies the changes whose paragraphs exist and returns the others. Texts change first, then paragraphs are added (and these changed
     * in turn), then moved, then struck, so that in whatever order blocks stand, none takes away what another needs; blocks of one kind
     * go in the order written.
     */
    List<TextChange> apply(Map<String, List<Draft>> articles, List<TextChange> changes) {
        List<TextChange> left = changes;
        int before;
        do {
            before = left.size();
            left = texts(articles, texts(articles, left, TextChange.Kind.CHANGE), TextChange.Kind.ADD);
        } while (left.size() < before);
        return texts(articles, Moves.apply(articles, left), TextChange.Kind.STRIKE);
    }

    private List<TextChange> texts(Map<String, List<Draft>> articles, List<TextChange> changes, TextChange.Kind kind) {
        List<TextChange> left = new ArrayList<>();
        for (TextChange change : changes) {
            Optional<Draft> target = articles.values().stream().flatMap(List::stream).flatMap(draft -> draft.all().stream())
                .filter(draft -> draft.id().equals(change.paragraph())).findFirst();
            if (change.kind() != kind || target.isEmpty()) {
                left.add(change);
                continue;
            }
            List<Draft> own = change.kind() == TextChange.Kind.STRIKE ? List.of() : own(change, target.get());
            if (!own.isEmpty() || change.kind() == TextChange.Kind.STRIKE) {
                articles.replaceAll((article, drafts) -> replace(drafts, change, own));
            }
            if (articles.values().stream().flatMap(List::stream).anyMatch(draft -> depth(draft) > 1 + ClauseText.DEEPEST)) {
                problems.add(new Problem(change.at(), "your text for '" + change.paragraph()
                    + "' is nested deeper than a section has marks for",
                    "expected at most " + (1 + ClauseText.DEEPEST) + " levels, counted from A."));
            }
        }
        return left;
    }

    private static int depth(Draft draft) {
        return 1 + draft.children().stream().mapToInt(TextChanges::depth).max().orElse(0);
    }

    /**
     * What a person wrote for a paragraph that isn't drafted, to be printed all the same; nothing for a block without a text. It says
     * what it is, so that it can't be taken for a paragraph in its place.
     *
     * @param article in which it is put, at the end
     */
    void keep(Map<String, List<Draft>> articles, String article, TextChange change) {
        if (change.text().isEmpty()) {
            return;
        }
        Draft nowhere = Draft.of(change.paragraph(), List.of());
        int more = (int) articles.get(article).stream().filter(draft -> draft.id().startsWith(change.paragraph() + KEPT)).count();
        List<Draft> kept = new ArrayList<>(articles.get(article));
        for (Draft draft : own(change, nowhere)) {
            List<Span> text = new ArrayList<>(List.of(new Strong("Kept text, its paragraph " + change.paragraph() + " is not drafted:"),
                new Plain(" ")));
            text.addAll(draft.text());
            kept.add(draft.with(text).named(change.paragraph() + KEPT + ++more, true, List.of()));
        }
        articles.put(article, kept);
    }

    private List<Draft> own(TextChange change, Draft target) {
        Optional<Clause> clause = pack.clauses().stream().filter(found -> found.id().equals(target.id().replaceFirst("[@~/+].*", "")))
            .findFirst();
        Optional<Body> body = Body.check(pack, change.section(), clause.map(Clause::each).orElse(Scope.JOB),
            clause.map(Clause::subject).orElse(""), "your text for '" + change.paragraph() + "'",
            LibraryMove.of(pack, change).map(LibraryMove::text).orElse(change.text()), change.at(), problems);
        if (body.isEmpty()) {
            return List.of();
        }
        List<Setting> settings = target.settings().isEmpty() ? List.of(new Setting("", "", Map.of())) : target.settings();
        List<Setting> all = settings.stream().flatMap(setting -> slots.settings(setting, body.get().slots()).stream()).distinct().toList();
        try {
            return named(change, target, body.get().fill(slots, all));
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(change.at(), "your text for '" + change.paragraph() + "': " + e.getMessage(), ""));
            return List.of();
        }
    }

    /** A changed text stands in place; further paragraphs are counted: "lath.metal+1". */
    private static List<Draft> named(TextChange change, Draft target, List<Draft> texts) {
        List<Draft> named = new ArrayList<>();
        for (Draft text : texts) {
            if (change.kind() == TextChange.Kind.ADD || !named.isEmpty()) {
                named.add(text.named(target.id() + "+" + (named.size() + (change.kind() == TextChange.Kind.ADD ? 1 : 0)), true,
                    target.settings()));
            } else if (text.children().isEmpty()) {
                // A changed text without a list of its own keeps what stands below it.
                named.add(new Draft(target.id(), true, text.text(), target.children(), target.settings()));
            } else {
                named.add(text.named(target.id(), true, target.settings()));
            }
        }
        return named;
    }

    private static List<Draft> replace(List<Draft> drafts, TextChange change, List<Draft> own) {
        List<Draft> replaced = new ArrayList<>();
        for (Draft draft : drafts) {
            if (!draft.id().equals(change.paragraph())) {
                replaced.add(draft.withChildren(replace(draft.children(), change, own)));
            } else if (change.kind() == TextChange.Kind.ADD) {
                replaced.add(draft);
            } else {
                replaced.addAll(own);
            }
        }
        return change.kind() == TextChange.Kind.ADD ? add(replaced, change.paragraph(), own) : replaced;
    }

    /** Puts paragraphs after another and those already added to it. */
    private static List<Draft> add(List<Draft> drafts, String after, List<Draft> own) {
        List<String> ids = drafts.stream().map(Draft::id).toList();
        if (!ids.contains(after)) {
            return drafts;
        }
        int place = ids.indexOf(after) + 1;
        int before = (int) ids.stream().filter(id -> id.startsWith(after + "+")).count();
        List<Draft> added = new ArrayList<>(drafts);
        for (int i = 0; i < own.size(); i++) {
            added.add(place + before + i, own.get(i).named(after + "+" + (before + i + 1), true, own.get(i).settings()));
        }
        return added;
    }
}
