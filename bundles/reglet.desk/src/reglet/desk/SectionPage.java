package reglet.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.comparing.Changing;
import reglet.drafting.BlockPart;
import reglet.drafting.LibraryMove;
import reglet.drafting.LibraryText;
import reglet.drafting.SpecifierNotes;
import reglet.drafting.Unprinted;
import reglet.model.Finding;
import reglet.model.Place;
import reglet.model.SectionChanges.Run;
import reglet.model.SectionDocument;
import reglet.model.SectionDocument.Paragraph;
import reglet.model.SectionDocument.Span;
import reglet.model.TextChange;
import reglet.model.TextChange.Kind;
import reglet.model.UnusableInput;
import reglet.store.SectionEdits;

/**
 * A drafted section as somebody writes in it: every paragraph that prints and, in their places, those that were struck, each with what a
 * person did to it.
 *
 * @param document as it prints
 */
public record SectionPage(SectionDocument document, List<Article> articles) {

    private static final Pattern SLOT = Pattern.compile("\\$\\{([^}]*)}");

    public SectionPage {
        articles = List.copyOf(articles);
    }

    /**
     * An article.
     *
     * @param id     by which references name it
     * @param part   1, 2 or 3
     * @param number "2.3"; "" when all of it is struck
     */
    public record Article(String id, int part, String partTitle, String number, String title, List<Line> lines) {
        public Article {
            lines = List.copyOf(lines);
        }
    }

    /** What stands in a paragraph. */
    public enum Standing {
        /** What the library says, filled from the choices; also what the program lists by itself. */
        LIBRARY,
        /** A person's text in place of the library's. */
        OWN,
        /** A paragraph that a person added. */
        ADDED,
        /** A paragraph that a person struck; it doesn't print. */
        STRUCK
    }

    /**
     * What the library made of a text since a person changed or struck it, each text with its values as they print.
     *
     * @param madeOn  the library's text that the person wrote on
     * @param today   the library's text of today
     * @param written the person's text as they wrote it; "" when struck
     * @param prints  the person's text as it prints; "" when struck
     * @param takenIn whether the library's new words are in what prints
     */
    public record LibraryMoved(String madeOn, String today, String written, String prints, boolean takenIn) {
    }

    /**
     * A paragraph.
     *
     * @param paragraph as it prints; a struck one as it would
     * @param written   the text as a person would write it, with its slots; of one that can't be told apart in its block, all of the block
     * @param moved     whether a person moved it to where it stands
     * @param block     the block that it was written or struck in; empty for the library's
     * @param library   the library's text of today as it would print here; empty for the library's own and where the library has none
     * @param move      what the library made of its text since the person wrote; empty when it is the same
     * @param leftOut   why what it stated is left out on purpose, a reason each
     * @param fixed     why nobody can write in it; "" when they can
     * @param notes     to whoever specifies
     * @param findings  what a check finds in the block
     */
    public record Line(Paragraph paragraph, Standing standing, String written, boolean moved, Optional<TextChange> block,
            List<Span> library, Optional<LibraryMoved> move, List<String> leftOut, String fixed, List<String> notes,
            List<Finding> findings) {

        public String id() {
            return paragraph.id();
        }

        /** What the slots print, by their names as a person writes them: "lath.weight". */
        public Map<String, String> printed() {
            return LibraryText.printed(paragraph);
        }

        /** Whether a person did something to it. */
        public boolean isOwn() {
            return standing != Standing.LIBRARY || moved;
        }

        /** What leads from the library's text to what prints, word by word; the library's alone for a struck one. */
        public List<Run> differences() {
            return library.isEmpty() ? List.of() : Changing.words(library, standing == Standing.STRUCK ? List.of() : paragraph.text());
        }
    }

    public List<Line> lines() {
        return articles.stream().flatMap(article -> article.lines().stream()).toList();
    }

    /** What the slots of all paragraphs print, by their names; of those that print several things the first. */
    public Map<String, String> printed() {
        Map<String, String> printed = new LinkedHashMap<>();
        lines().forEach(line -> line.printed().forEach(printed::putIfAbsent));
        return printed;
    }

    public Optional<Line> line(String id) {
        return lines().stream().filter(line -> line.id().equals(id)).findFirst();
    }

    /**
     * The page of a section; takes as long as drafting it up to three times.
     *
     * @throws UnusableInput when a text that the job changes can't be used
     */
    public static SectionPage of(OpenJob job, String section) throws UnusableInput {
        SectionDocument prints = job.section(section);
        List<TextChange> changes = job.job().changes().stream().filter(change -> change.section().equals(section)).toList();
        SectionDocument whole = changes.stream().anyMatch(change -> change.kind() == Kind.STRIKE)
            ? without(job, section, Set.of(Kind.STRIKE)) : prints;
        SectionDocument library = changes.isEmpty() ? prints : without(job, section, Set.of(Kind.values()));
        return new Builder(job, section, changes, prints, library).page(whole);
    }

    private static SectionDocument without(OpenJob job, String section, Set<Kind> kinds) throws UnusableInput {
        return job.with(job.job().changing(job.job().changes().stream().filter(change -> !change.section().equals(section)
            || !kinds.contains(change.kind())).toList())).section(section);
    }

    /** What prints of each paragraph, and what the library would print. */
    private record Builder(OpenJob job, String section, List<TextChange> changes, SectionDocument document, Map<String, Paragraph> prints,
            Map<String, Paragraph> library, Map<String, List<String>> leftOut, Map<String, List<String>> notes, List<Finding> found) {

        Builder(OpenJob job, String section, List<TextChange> changes, SectionDocument prints, SectionDocument library)
                throws UnusableInput {
            this(job, section, changes, prints, byId(prints), byId(library), leftOut(job, changes, prints),
                SpecifierNotes.byParagraph(job.assembly(), prints), changes.isEmpty() ? List.of() : job.paper().stream()
                    .filter(finding -> finding.at().file().equals(SectionEdits.file(section))).toList());
        }

        private static Map<String, Paragraph> byId(SectionDocument document) {
            return document.paragraphs().stream().collect(Collectors.toMap(Paragraph::id, one -> one, (one, other) -> one,
                LinkedHashMap::new));
        }

        /** By the library's paragraphs that stated it. */
        private static Map<String, List<String>> leftOut(OpenJob job, List<TextChange> changes, SectionDocument prints)
                throws UnusableInput {
            Map<String, List<String>> reasons = new LinkedHashMap<>();
            if (changes.stream().anyMatch(change -> change.kind() == Kind.LEAVE_OUT)) {
                for (Unprinted one : Unprinted.of(job.assembly(), prints)) {
                    one.leftOut().map(TextChange::text).ifPresent(why -> one.paragraphs().stream()
                        .map(paragraph -> reasons.computeIfAbsent(paragraph.id(), id -> new ArrayList<>()))
                        .filter(known -> !known.contains(why)).forEach(known -> known.add(why)));
                }
            }
            return reasons;
        }

        SectionPage page(SectionDocument whole) {
            Map<String, String> numbers = new LinkedHashMap<>();
            document.parts().forEach(part -> part.articles().forEach(article -> numbers.put(article.id(), article.number())));
            List<Article> articles = new ArrayList<>();
            whole.parts().forEach(part -> part.articles().forEach(article -> articles.add(new Article(article.id(), part.number(),
                part.title(), numbers.getOrDefault(article.id(), ""), article.title(), article.paragraphs().stream()
                    .flatMap(SectionPage::all).map(this::line).toList()))));
            return new SectionPage(document, articles);
        }

        private Line line(Paragraph drafted) {
            Paragraph paragraph = prints.getOrDefault(drafted.id(), drafted);
            boolean struck = !prints.containsKey(drafted.id());
            Optional<TextChange> block = struck ? struck(drafted.id())
                : paragraph.own() ? LibraryText.block(job.assembly(), section, paragraph) : Optional.empty();
            Standing standing = struck ? Standing.STRUCK : !paragraph.own() ? Standing.LIBRARY
                : library.containsKey(paragraph.id()) ? Standing.OWN : Standing.ADDED;
            boolean moved = changes.stream().anyMatch(change -> change.kind() == Kind.MOVE && change.paragraph().equals(drafted.id()));
            String written = block.filter(change -> !struck).map(change -> BlockPart.of(change, document, paragraph).map(BlockPart::text)
                .orElse(change.text())).orElseGet(() -> LibraryText.written(paragraph));
            return new Line(paragraph, standing, written, moved, block, standing == Standing.LIBRARY || standing == Standing.ADDED
                || !library.containsKey(drafted.id()) ? List.of() : library.get(drafted.id()).text(),
                block.flatMap(change -> moved(change, LibraryText.printed(paragraph))), leftOut.getOrDefault(drafted.id(), List.of()),
                fixed(drafted.id()),
                notes.getOrDefault(drafted.id(), List.of()), block.map(this::found).orElse(List.of()));
        }

        /** The block that struck a paragraph, or one that it stands below. */
        private Optional<TextChange> struck(String id) {
            List<TextChange> strikes = changes.stream().filter(change -> change.kind() == Kind.STRIKE).toList();
            return strikes.stream().filter(change -> change.paragraph().equals(id)).findFirst()
                .or(() -> strikes.stream().filter(change -> !prints.containsKey(change.paragraph()) && id.startsWith(change.paragraph()))
                    .findFirst());
        }

        private Optional<LibraryMoved> moved(TextChange block, Map<String, String> printed) {
            return LibraryMove.of(job.pack(), block).map(move -> new LibraryMoved(filled(move.madeOn(), printed),
                filled(move.now(), printed), filled(block.text(), printed), filled(move.text(), printed),
                    move.kind() == LibraryMove.Kind.TAKEN_IN));
        }

        /** A slot of which nobody knows what it prints stands by its name. */
        private static String filled(String text, Map<String, String> printed) {
            return SLOT.matcher(text).replaceAll(slot -> Matcher.quoteReplacement(printed.getOrDefault(slot.group(1), slot.group(1))));
        }

        private static String fixed(String id) {
            if (id.startsWith("references.")) {
                return "The standards that the section cites are listed here by themselves: cite one in a paragraph, and it stands here.";
            }
            return "";
        }

        private List<Finding> found(TextChange block) {
            int end = changes.stream().map(TextChange::at).mapToInt(Place::line).filter(line -> line > block.at().line()).min()
                .orElse(Integer.MAX_VALUE);
            return found.stream().filter(finding -> finding.at().line() >= block.at().line() && finding.at().line() < end).toList();
        }
    }

    private static Stream<Paragraph> all(Paragraph paragraph) {
        return Stream.concat(Stream.of(paragraph), paragraph.children().stream().flatMap(SectionPage::all));
    }
}
