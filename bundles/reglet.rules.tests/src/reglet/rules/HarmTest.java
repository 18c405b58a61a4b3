package reglet.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import reglet.model.Finding;
import reglet.model.Job;
import reglet.model.Remedies;
import reglet.model.Remedy;
import reglet.model.UnusableInput;

/**
 * Every sound sample is changed in every way that it has: other options, values past what is plausible, things taken away. What is
 * harmful is found and what is harmless is left alone; {@code harm.yaml} says which is which, from the trade's facts and not from the
 * rules. The counts stand in {@code target/confusion.txt}.
 */
class HarmTest {
    private static final List<Judgement> JUDGEMENTS = new ArrayList<>();
    private static final List<Judged> ALL = new ArrayList<>();

    private enum Verdict {
        HARMFUL, HARMLESS, OPEN;

        private String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What is judged of the kinds of change that the patterns take in. */
    private record Judgement(Verdict verdict, Pattern where, List<Pattern> what, String because) {

        static Judgement of(JsonNode entry) {
            Verdict verdict = Stream.of(Verdict.values()).filter(one -> entry.has(one.text())).findFirst().orElseThrow();
            List<Pattern> what = new ArrayList<>();
            entry.get(verdict.text()).forEach(kind -> what.add(pattern(kind.asText())));
            return new Judgement(verdict, pattern(entry.path("where").asText("*")), what, entry.get("because").asText());
        }

        private static Pattern pattern(String glob) {
            return Pattern.compile(Stream.of(glob.split("\\*", -1)).map(Pattern::quote).collect(Collectors.joining(".*")));
        }

        boolean fits(Mutation mutation) {
            return where.matcher(mutation.where()).matches() && what.stream().anyMatch(kind -> kind.matcher(mutation.what()).matches());
        }
    }

    /** What became of a mutation: the findings that the sample itself does not have. */
    private record Judged(Mutation mutation, Optional<Judgement> judgement, List<Finding> found) {
        private boolean is(Verdict verdict) {
            return judgement.filter(judged -> judged.verdict() == verdict).isPresent();
        }

        private boolean stops() {
            return found.stream().anyMatch(finding -> finding.kind() != Finding.Kind.CAUTION);
        }

        private String text() {
            return mutation.where() + ": " + mutation.what() + " (" + judgement.map(Judgement::because).orElse("not judged") + ") "
                + found.stream().map(finding -> finding.kind().text() + " " + finding.rule()).distinct().toList();
        }
    }

    @BeforeAll
    static void changeTheSamplesInEveryWay() throws Exception {
        try (InputStream in = HarmTest.class.getResourceAsStream("harm.yaml")) {
            SampleJob.YAML.readTree(in).forEach(entry -> JUDGEMENTS.add(Judgement.of(entry)));
        }
        for (String name : List.of("harbour-clinic", "mesa-library")) {
            SampleJob sample = SampleJob.of(name);
            Job job = sample.read(RealPack.PACK);
            Set<String> before = new TreeSet<>();
            RealPack.ENGINE.check(job).findings().forEach(finding -> before.add(finding.key() + finding.says()));
            ALL.addAll(Mutation.all(name, job, RealPack.ENGINE).parallelStream().map(mutation -> {
                List<Finding> found = new ArrayList<>(found(sample, mutation));
                found.removeIf(finding -> before.contains(finding.key() + finding.says()));
                return new Judged(mutation, JUDGEMENTS.stream().filter(one -> one.fits(mutation)).findFirst(), found);
            }).toList());
        }
        Files.createDirectories(Path.of("target"));
        System.out.println(table());
        Files.writeString(Path.of("target", "confusion.txt"), table() + list("harmful and not found", missed())
            + list("harmless and stopped", falseAlarms())
            + list("not decided by what is known here", of(Verdict.OPEN).stream().map(Judged::text).toList()));
    }

    private static List<Finding> found(SampleJob sample, Mutation mutation) {
        try {
            return RealPack.ENGINE.check(sample.with(mutation.name(), mutation.value()).read(RealPack.PACK)).findings();
        } catch (UnusableInput e) {
            throw new IllegalStateException(mutation + " makes no job", e);
        }
    }

    private static List<Judged> of(Verdict verdict) {
        return ALL.stream().filter(one -> one.is(verdict)).toList();
    }

    private static List<String> missed() {
        return of(Verdict.HARMFUL).stream().filter(one -> one.found().isEmpty()).map(Judged::text).toList();
    }

    private static List<String> falseAlarms() {
        return of(Verdict.HARMLESS).stream().filter(Judged::stops).map(Judged::text).toList();
    }

    private static String table() {
        StringBuilder table = new StringBuilder(String.format(Locale.ROOT, "%-10s%10s%10s%10s%10s\n", "", "conflict", "gap", "caution",
            "quiet"));
        for (Verdict verdict : Verdict.values()) {
            List<Judged> all = of(verdict);
            table.append(String.format(Locale.ROOT, "%-10s%10d%10d%10d%10d\n", verdict.text(), count(all, Finding.Kind.CONFLICT),
                count(all, Finding.Kind.GAP), count(all, Finding.Kind.CAUTION), count(all, null)));
        }
        return table.append("Each change counts once, at the gravest thing found.\n").toString();
    }

    private static String list(String title, List<String> texts) {
        return "\n" + title + ":\n" + texts.stream().map(text -> "  " + text + "\n").collect(Collectors.joining());
    }

    /** Changes whose gravest finding is of a kind; null: that have none. */
    private static long count(List<Judged> all, Finding.Kind gravest) {
        return all.stream().map(one -> one.found().stream().map(Finding::kind).min(Finding.Kind::compareTo).orElse(null))
            .filter(kind -> kind == gravest).count();
    }

    @Test
    void everyKindOfChangeIsJudgedAndFewAreLeftOpen() {
        assertEquals(List.of(), ALL.stream().filter(one -> one.judgement().isEmpty()).map(Judged::text).toList());
        assertTrue(of(Verdict.OPEN).size() * 20 <= ALL.size(), of(Verdict.OPEN).size() + " of " + ALL.size() + " changes are left open");
        assertTrue(ALL.size() > 1000, "only " + ALL.size() + " changes");
    }

    @Test
    void everyJudgementJudgesSomething() {
        Set<Judgement> used = ALL.stream().flatMap(one -> one.judgement().stream()).collect(Collectors.toSet());
        assertEquals(List.of(), JUDGEMENTS.stream().filter(one -> !used.contains(one)).toList());
    }

    @Test
    void whatIsHarmfulIsFound() {
        long harmful = of(Verdict.HARMFUL).size();
        assertTrue(missed().size() * 20 <= harmful,
            () -> missed().size() + " of " + harmful + " are not found:\n" + String.join("\n", missed()));
    }

    @Test
    void whatIsHarmlessIsLeftAlone() {
        assertEquals("", String.join("\n", falseAlarms()));
    }

    /** For every harmful change that is found: what is told of it can be cleared without another finding, or why not is said. */
    @Test
    void whatIsHarmfulHasARemedyThatAddsNothingOrAReasonWhyThereIsNone() {
        List<String> without = of(Verdict.HARMFUL).parallelStream().filter(one -> !one.found().isEmpty()).map(HarmTest::unmended)
            .flatMap(Optional::stream).toList();
        long found = of(Verdict.HARMFUL).stream().filter(one -> !one.found().isEmpty()).count();
        System.out.println(without.size() + " of " + found
            + " harmful changes have no remedy: the world's facts, or too many things at once");
        assertTrue(without.size() < found / 8, without.size() + " of " + found + ": " + without);
    }

    /** The reason why the first finding has no remedy; empty when it has one, which is tried. */
    private static Optional<String> unmended(Judged one) {
        try {
            String name = one.mutation().where().startsWith("mesa-library") ? "mesa-library" : "harbour-clinic";
            Check check = RealPack.ENGINE.open(SampleJob.of(name).with(one.mutation().name(), one.mutation().value()).read(RealPack.PACK));
            Finding finding = check.checked().findings().stream().filter(stands -> stands.key().equals(one.found().get(0).key()))
                .findFirst()
                .orElseThrow();
            Remedies remedies = check.remedies(finding);
            if (remedies.all().isEmpty()) {
                assertTrue(!remedies.none().isEmpty(), one.text());
                return Optional.of(one.text() + ": " + remedies.none());
            }
            Set<String> before = check.checked().findings().stream().map(Finding::key).collect(Collectors.toSet());
            for (Remedy remedy : remedies.all()) {
                Set<String> after = check.after(remedy.changes()).checked().findings().stream().map(Finding::key)
                    .collect(Collectors.toSet());
                assertTrue(!after.contains(finding.key()) && before.containsAll(after), one.text() + " by " + remedy.text());
            }
            return Optional.empty();
        } catch (UnusableInput | java.io.IOException e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }
}
