package reglet.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.store.SafeFile;

/**
 * Texts that a person has typed and not taken over yet, kept outside the job so that nothing typed is lost when the program ends
 * before its time. One file for each job; a line of it that can't be read is passed over. Safe for use by several threads.
 */
public final class Drafts {
    private static final int NAME = 16;
    private final Path folder;

    /** @param folder where they are kept; made when needed */
    public Drafts(Path folder) {
        this.folder = folder;
    }

    /**
     * A text.
     *
     * @param place where it was typed, in the window's words for itself
     * @param kept  when it was kept last
     */
    public record Draft(String place, String text, Instant kept) {
    }

    /** Those of a job, in the order first typed. */
    public synchronized List<Draft> of(Path job) {
        return List.copyOf(read(job).values());
    }

    /** Keeps the newest text of a place. */
    public synchronized void keep(Path job, Draft draft) throws IOException {
        Map<String, Draft> all = read(job);
        all.put(draft.place(), draft);
        write(job, all);
    }

    /** Forgets the text of a place: it was taken over or thrown away. */
    public synchronized void drop(Path job, String place) throws IOException {
        Map<String, Draft> all = read(job);
        if (all.remove(place) != null) {
            write(job, all);
        }
    }

    private Map<String, Draft> read(Path job) {
        Map<String, Draft> all = new LinkedHashMap<>();
        Path file = file(job);
        if (Files.exists(file)) {
            try {
                Files.readString(file, StandardCharsets.UTF_8).lines().forEach(line -> draft(line)
                    .ifPresent(draft -> all.put(draft.place(), draft)));
            } catch (IOException unreadable) {
                // then there is nothing to offer, and what is typed next is kept anew
            }
        }
        return all;
    }

    private static Optional<Draft> draft(String line) {
        String[] cells = line.split("\t", -1);
        try {
            return cells.length == 3 ? Optional.of(new Draft(plain(cells[1]), plain(cells[2]), Instant.parse(cells[0]))) : Optional.empty();
        } catch (DateTimeParseException spoilt) {
            return Optional.empty();
        }
    }

    private void write(Path job, Map<String, Draft> all) throws IOException {
        List<String> lines = new ArrayList<>();
        all.values().forEach(draft -> lines.add(draft.kept() + "\t" + oneCell(draft.place()) + "\t" + oneCell(draft.text()) + "\n"));
        SafeFile.write(file(job), String.join("", lines).getBytes(StandardCharsets.UTF_8));
    }

    private Path file(Path job) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(job.toAbsolutePath().normalize().toString()
                .getBytes(StandardCharsets.UTF_8));
            return folder.resolve(HexFormat.of().formatHex(digest).substring(0, NAME) + ".tsv");
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException(absent);
        }
    }

    private static String oneCell(String text) {
        return text.replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n").replace("\r", "\\r");
    }

    private static String plain(String cell) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cell.length(); i++) {
            char sign = cell.charAt(i);
            if (sign == '\\' && i + 1 < cell.length()) {
                i++;
                char escaped = cell.charAt(i);
                text.append(escaped == 't' ? '\t' : escaped == 'n' ? '\n' : escaped == 'r' ? '\r' : escaped);
            } else {
                text.append(sign);
            }
        }
        return text.toString();
    }
}
