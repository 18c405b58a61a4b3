package reglet.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;

import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionPlan.Made;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

/**
 * Finds the one change of a section's file that moves a paragraph by one place among those that stand below the same text, or past the
 * edge of its article into the next one. A paragraph goes along with those that a person added behind it. Several changes are tried on the
 * job in memory, the one first that leaves no trace.
 */
final class Moving {
    private static final Set<Made> LISTED = Set.of(Made.REFERENCES, Made.RELATED_SECTIONS, Made.ALTERNATES, Made.ALLOWANCES,
        Made.UNIT_PRICES);
    private final OpenJob job;
    private final String section;
    private final String paragraph;
    private final List<String> siblings;
    /** Of the paragraph, and of the first one that doesn't go along with it. */
    private final int first;
    private final int next;

    private Moving(OpenJob job, String section, String paragraph) throws UnusableInput {
        this.job = job;
        this.section = section;
        this.paragraph = paragraph;
        if (TextChange.alternate(paragraph) > 0) {
            throw refused("an alternate's paragraph stands behind the one that it would replace", "move that one");
        }
        this.siblings = siblings(job.section(section), paragraph);
        if (siblings.isEmpty()) {
            throw refused("section " + section + " prints no paragraph \"" + paragraph + "\"", "");
        }
        this.first = siblings.indexOf(paragraph);
        this.next = behind(first);
    }

    /**
     * A change of the file: a block that is taken away, or a paragraph moved behind another.
     *
     * @param block empty when a paragraph is moved
     * @param after id of a paragraph, or of an article to stand first in it
     */
    record Step(Optional<TextChange> block, String paragraph, String after) {
    }

    static Step up(OpenJob job, String section, String paragraph) throws UnusableInput {
        Moving moving = new Moving(job, section, paragraph);
        return moving.first == 0 ? moving.across(-1) : moving.up();
    }

    static Step down(OpenJob job, String section, String paragraph) throws UnusableInput {
        Moving moving = new Moving(job, section, paragraph);
        return moving.next == moving.siblings.size() ? moving.across(1) : moving.down();
    }

    private Step up() throws UnusableInput {
        int before = first - 1;
        while (before > 0 && isAddedTo(siblings.get(before), siblings.get(before - 1))
            && !isAddedTo(paragraph, head(siblings.get(before)))) {
            before--;
        }
        List<Step> steps = new ArrayList<>(own());
        if (before > 0) {
            steps.add(new Step(Optional.empty(), paragraph, siblings.get(before - 1)));
        } else {
            home(articles(job.section(section))).ifPresent(article -> steps.add(new Step(Optional.empty(), paragraph, article)));
        }
        steps.add(new Step(Optional.empty(), siblings.get(before), paragraph));
        return within(steps, order(before, first, next));
    }

    private Step down() throws UnusableInput {
        List<Step> steps = new ArrayList<>(own());
        steps.add(new Step(Optional.empty(), paragraph, siblings.get(next)));
        if (first > 0) {
            steps.add(new Step(Optional.empty(), siblings.get(next), siblings.get(first - 1)));
        }
        return within(steps, order(first, next, behind(next)));
    }

    /** The moves made before of this paragraph and of those around it: without one of them all may stand as wanted. */
    private List<Step> own() {
        return moves(Stream.of(first, first - 1, next).filter(i -> i >= 0 && i < siblings.size()).map(siblings::get));
    }

    private List<Step> moves(Stream<String> paragraphs) {
        return paragraphs.flatMap(id -> changes().stream().filter(change -> change.kind() == Kind.MOVE && change.paragraph().equals(id)))
            .map(block -> new Step(Optional.of(block), "", "")).toList();
    }

    private List<TextChange> changes() {
        return job.job().changes().stream().filter(change -> change.section().equals(section)).toList();
    }

    /** The siblings with two neighbouring stretches in the other order. */
    private List<String> order(int one, int two, int end) {
        return Stream.of(siblings.subList(0, one), siblings.subList(two, end), siblings.subList(one, two),
            siblings.subList(end, siblings.size())).flatMap(List::stream).toList();
    }

    private Step within(List<Step> steps, List<String> wanted) throws UnusableInput {
        return first(steps, section -> siblings(section, paragraph).equals(wanted));
    }

    /** Into the article before, as its last paragraph, or into the next one, as its first. */
    private Step across(int by) throws UnusableInput {
        SectionDocument document = job.section(section);
        Map<String, List<String>> articles = articles(document);
        List<String> ids = List.copyOf(articles.keySet());
        String edge = by < 0 ? "first" : "last";
        String here = home(articles).orElseThrow(() -> refused("the paragraph stands " + edge + " below the one that it belongs to",
            "what stands below a paragraph moves among its like"));
        int place = ids.indexOf(here) + by;
        while (place >= 0 && place < ids.size() && isListed(ids.get(place))) {
            place += by;
        }
        if (place < 0 || place >= ids.size()) {
            throw refused("the paragraph stands " + edge + " in the section", "no article that a paragraph can be moved into lies further");
        }
        String there = ids.get(place);
        List<String> moved = siblings.subList(first, next);
        List<String> others = articles.get(there);
        Map<String, List<String>> wanted = new LinkedHashMap<>(articles);
        wanted.put(here, siblings.stream().filter(id -> !moved.contains(id)).toList());
        wanted.put(there, (by < 0 ? Stream.of(others, moved) : Stream.of(moved, others)).flatMap(List::stream).toList());
        wanted.values().removeIf(List::isEmpty);
        List<Step> steps = new ArrayList<>(moves(Stream.of(paragraph)));
        steps.add(new Step(Optional.empty(), paragraph, by < 0 ? others.get(others.size() - 1) : there));
        return first(steps, section -> articles(section).equals(wanted));
    }

    /** The article in which the paragraph stands first in rank. */
    private Optional<String> home(Map<String, List<String>> articles) {
        return articles.keySet().stream().filter(article -> articles.get(article).contains(paragraph)).findFirst();
    }

    /** Whether the program lists what stands in an article, so that nothing is moved there. */
    private boolean isListed(String article) {
        return job.pack().plan(section).stream().flatMap(plan -> plan.articles().stream()).anyMatch(one -> one.id().equals(article)
            && LISTED.contains(one.made()));
    }

    /** The ids of what stands first in rank in each article. */
    private static Map<String, List<String>> articles(SectionDocument document) {
        Map<String, List<String>> articles = new LinkedHashMap<>();
        document.parts().forEach(part -> part.articles().forEach(article -> articles.put(article.id(), article.paragraphs().stream()
            .map(Paragraph::id).toList())));
        articles.values().removeIf(List::isEmpty);
        return articles;
    }

    private Step first(List<Step> steps, Predicate<SectionDocument> wanted) throws UnusableInput {
        for (Step step : steps) {
            if (wanted.test(job.with(job.job().changing(after(step))).section(section))) {
                return step;
            }
        }
        throw refused("the paragraph can't be moved there", "what was added behind a paragraph goes along with it");
    }

    /** The changes of the job as they will be read after a step. */
    private List<TextChange> after(Step step) {
        List<TextChange> after = new ArrayList<>(job.job().changes());
        if (step.block().isPresent()) {
            after.remove(step.block().get());
            return after;
        }
        TextChange move = new TextChange(section, step.paragraph(), Kind.MOVE, "", "", step.after(), Place.of(SectionEdits.file(section)),
            Place.of(SectionEdits.file(section)));
        for (int i = 0; i < after.size(); i++) {
            TextChange change = after.get(i);
            if (change.section().equals(section) && change.kind() == Kind.MOVE && change.paragraph().equals(step.paragraph())) {
                after.set(i, move);
                return after;
            }
        }
        after.add(move);
        return after;
    }

    /** The first place behind a paragraph and what goes along with it. */
    private int behind(int place) {
        int end = place + 1;
        while (end < siblings.size() && isAddedTo(siblings.get(end), siblings.get(place))) {
            end++;
        }
        return end;
    }

    private static boolean isAddedTo(String id, String to) {
        return id.startsWith(to + "+") || id.contains("+") && to.contains("+") && head(id).equals(head(to));
    }

    /** "mortar.water" of "mortar.water+2". */
    private static String head(String id) {
        return id.contains("+") ? id.substring(0, id.lastIndexOf('+')) : id;
    }

    private static List<String> siblings(SectionDocument document, String paragraph) {
        return document.parts().stream().flatMap(part -> part.articles().stream()).map(SectionDocument.Article::paragraphs)
            .flatMap(Moving::groups).map(group -> group.stream().map(Paragraph::id).toList()).filter(group -> group.contains(paragraph))
            .findFirst().orElse(List.of());
    }

    private static Stream<List<Paragraph>> groups(List<Paragraph> paragraphs) {
        return Stream.concat(Stream.of(paragraphs), paragraphs.stream().flatMap(one -> groups(one.children())));
    }

    private UnusableInput refused(String what, String expected) {
        return new UnusableInput(new Problem(Place.of(SectionEdits.file(section)), what, expected));
    }
}
