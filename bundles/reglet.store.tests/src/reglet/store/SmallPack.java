package reglet.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** A small pack and job on disk that tests change as they need. */
final class SmallPack {
    private final Map<String, String> files = new TreeMap<>();

    SmallPack() {
        files.put("pack/pack.yaml", "format: 1\nname: small\nversion: \"1\"\ntitle: A small pack\n");
        files.put("pack/subjects/wall.yaml", """
            subject: wall
            title: Wall type
            each: wall
            properties:
              height: {unit: ft, compare: exactly}
            """);
        files.put("pack/subjects/opening.yaml", """
            subject: opening
            title: Opening
            each: meeting
            properties:
              kind: {word: [window, door]}
            """);
        files.put("pack/components/lath.yaml", """
            component: lath
            title: Lath
            section: 04 73 00
            order: 10
            properties:
              kind: {word: [expanded metal, woven wire]}
              weight: {unit: lb/yd2, compare: at least, method: ASTM C847}
            options:
              metal: {title: metal lath, kind: expanded metal, weight: 2.5 lb/yd2}
            """);
        files.put("pack/sections/04-73-00.yaml", """
            number: 04 73 00
            title: Masonry
            articles:
              - {id: lath, part: 2, title: LATH}
            """);
        files.put("pack/standards.yaml", "ASTM C847: {title: Metal lath, editions: {IBC 2021: \"2018\"}}\n");
        files.put("pack/clauses/04-73-00/lath.metal.md", """
            ---
            id: lath.metal
            section: 04 73 00
            article: lath
            each: wall
            ---
            Lath: ${lath}.
            """);
        files.put("pack/rules/lath.light.yaml", """
            id: lath.light
            kind: conflict
            each: wall
            component: lath
            holds: 'lath.weight >= q("2 lb/yd2")'
            says: too light
            basis: [{document: none, known: common practice}]
            examples:
              holds: [{lath.weight: 2.5 lb/yd2}]
            """);
        files.put("job/job.yaml", """
            format: 1
            title: A job
            pack: small
            walls: [W1]
            sections: [04 73 00]
            """);
        files.put("job/walls/W1.yaml", """
            title: Front
            wall: {height: 20 ft}
            meets:
              window-1: {as: opening, kind: window}
            lath: {accept: [metal], by: specifier}   # a remark
            """);
    }

    SmallPack with(String file, String text) {
        files.put(file, text);
        return this;
    }

    SmallPack replacing(String file, String old, String text) {
        String before = files.get(file);
        if (!before.contains(old)) {
            throw new IllegalArgumentException(file + " holds no " + old);
        }
        files.put(file, before.replace(old, text));
        return this;
    }

    Path write(Path folder) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.writeString(path, file.getValue());
        }
        return folder;
    }
}
