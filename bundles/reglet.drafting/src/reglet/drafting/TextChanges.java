package reglet.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Clause;
import reglet.model.Pack;
import reglet.model.Problem;
import reglet.model.Scope;
import reglet.model.TextChange;

/** Puts a person's changes into the drafted paragraphs. The person's wording stands as it is; its slots are filled as everywhere. */
final class TextChanges {
    private final Pack pack;
    private final Slots slots;
    private final List<Problem> problems;

    TextChanges(Pack pack, Slots slots, List<Problem> problems) {
        this.pack = pack;
        this.slots = slots;
        this.problems = problems;
    }

    /** Applies, in order, the changes whose paragraph exists and returns the others. */
    List<TextChange> apply(Map<String, List<Draft>> articles, List<TextChange> changes) {
        List<TextChange> left = new ArrayList<>();
        for (TextChange change : changes) {
            Optional<Draft> target = articles.values().stream().flatMap(List::stream).flatMap(draft -> draft.all().stream())
                .filter(draft -> draft.id().equals(change.paragraph())).findFirst();
            if (target.isEmpty()) {
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

    private List<Draft> own(TextChange change, Draft target) {
        Optional<Clause> clause = pack.clauses().stream().filter(found -> found.id().equals(target.id().replaceFirst("[@~/+].*", "")))
            .findFirst();
        Optional<Body> body = Body.check(pack, change.section(), clause.map(Clause::each).orElse(Scope.JOB),
            clause.map(Clause::subject).orElse(""), "your text for '" + change.paragraph() + "'", change.text(), change.at(), problems);
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
                named.add(text.named(target.id() + "+" + (named.size() + 1), true, target.settings()));
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
