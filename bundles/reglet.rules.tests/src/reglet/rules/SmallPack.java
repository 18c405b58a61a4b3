package reglet.rules;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;

import reglet.model.Job;
import reglet.model.UnusableInput;
import reglet.store.Jobs;
import reglet.store.Packs;
import reglet.worksheets.Worksheets;

/** A small pack and job, written as text and read as any other, that tests change as they need. */
final class SmallPack {
    private final Map<String, String> files = new LinkedHashMap<>();

    SmallPack() {
        files.put("pack/pack.yaml", "format: 1\nname: small\nversion: \"1\"\ntitle: A small pack\n");
        files.put("pack/subjects/site.yaml", """
            subject: site
            title: Site
            each: job
            properties:
              climate: {word: [dry, moist]}
            """);
        files.put("pack/subjects/wall.yaml", """
            subject: wall
            title: Wall type
            each: wall
            properties:
              height: {unit: ft, compare: exactly}
              cavity: {word: [none, drained]}
            """);
        files.put("pack/subjects/opening.yaml", """
            subject: opening
            title: Opening
            each: meeting
            properties:
              flashed: {flag: true}
              width: {unit: in, compare: exactly}
            """);
        files.put("pack/components/framing.yaml", """
            component: framing
            title: Framing
            section: 04 73 00
            order: 1
            properties:
              spacing: {unit: in, compare: at most}
            options:
              close: {title: close studs, spacing: 16 in}
              wide: {title: wide studs, spacing: 24 in}
            """);
        files.put("pack/components/mat.yaml", """
            component: mat
            title: Mat
            section: 04 73 00
            order: 2
            needed: 'wall.cavity != "none"'
            properties:
              thickness: {unit: in, compare: at least}
            options:
              thin: {title: thin mat, thickness: 1/4 in}
              thick: {title: thick mat, thickness: 3/8 in}
            """);
        files.put("pack/components/lath.yaml", """
            component: lath
            title: Lath
            section: 04 73 00
            order: 3
            properties:
              kind: {word: [expanded metal, woven wire]}
              weight: {unit: lb/yd2, compare: at least, only: 'lath.kind == "expanded metal"'}
              class: {grade: [low, middle, high]}
              uses: {set: [M, G, A]}
              gauge: {range: in}
            options:
              light: {title: light lath, kind: expanded metal, weight: 2.5 lb/yd2, class: low, uses: [M], gauge: 1/8 to 1/4 in}
              heavy: {title: heavy lath, kind: expanded metal, weight: 3.4 lb/yd2, class: high, uses: [M, G], gauge: 1/8 to 3/8 in}
              wire: {title: wire lath, kind: woven wire, class: middle, uses: [A], gauge: 1/8 in}
            """);
        files.put("pack/tables/span.yaml", """
            table: span
            title: Span of lath
            given:
              kind: {word: [expanded metal, woven wire], match: exactly}
              weight: {unit: lb/yd2, match: from}
            gives: {spacing: {unit: in}}
            rows:
              - {kind: expanded metal, weight: 3 lb/yd2, spacing: 24 in}
              - {kind: expanded metal, weight: 2 lb/yd2, spacing: 16 in}
              - {kind: woven wire, weight: any, spacing: 24 in}
            basis: [{document: test, known: read}]
            """);
        files.put("pack/sections/04-73-00.yaml", "number: 04 73 00\ntitle: Masonry\narticles:\n  - {id: lath, part: 2, title: LATH}\n");
        files.put("job/job.yaml", "format: 1\ntitle: A job\npack: small\nwalls: [W1]\nsite: {climate: dry}\n");
        files.put("job/walls/W1.yaml", """
            title: Front
            wall: {height: 20 ft, cavity: drained}
            framing: {accept: [close]}
            mat: {accept: [thick]}
            lath: {accept: [light]}
            """);
    }

    SmallPack with(String file, String text) {
        files.put(file, text);
        return this;
    }

    SmallPack replacing(String file, String old, String text) {
        files.put(file, files.get(file).replace(old, text));
        return this;
    }

    /** With one rule named "r" for each wall that holds when the expression does. */
    SmallPack rule(String when, String holds) {
        return rule("r", "each: wall", when, holds);
    }

    SmallPack rule(String id, String each, String when, String holds) {
        return with("pack/rules/" + id + ".yaml", "id: " + id + "\nkind: conflict\n" + each + "\ncomponent: lath\n"
            + (when.isEmpty() ? "" : "when: '" + when + "'\n") + "holds: '" + holds + "'\nsays: it breaks\nfix: mend it\n"
            + "basis: [{document: test, known: read}]\nexamples: {holds: [{lath.kind: woven wire}]}\n");
    }

    /** What a reader makes of the files, which stand in a folder only as long as it reads. */
    private <T> T read(Reading<T> reading) throws UnusableInput, IOException {
        Path folder = Files.createTempDirectory("small-pack");
        try {
            for (Map.Entry<String, String> file : files.entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
            return reading.of(folder);
        } finally {
            try (Stream<Path> written = Files.walk(folder)) {
                for (Path path : written.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private interface Reading<T> {
        T of(Path folder) throws UnusableInput, IOException;
    }

    Engine engine() throws UnusableInput, IOException {
        return Engine.compile(read(folder -> Packs.read(folder.resolve("pack")).pack()), Worksheets::run);
    }

    Job job() throws UnusableInput, IOException {
        return read(folder -> Jobs.read(folder.resolve("job"), Packs.read(folder.resolve("pack")).pack()));
    }
}
