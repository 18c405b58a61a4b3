package reglet.reading;

import java.awt.image.BufferedImage;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType1Font;
import org.apache.pdfbox.pdmodel.font.Standard14Fonts.FontName;
import org.apache.pdfbox.pdmodel.graphics.image.JPEGFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * Makes 300 sheets of 2,000 pages and about a gigabyte, and binds them as a package does: measured, a word of each page found and
 * marked, a divider before each, links, bookmarks. Stands in the reading bundle's package so that it can watch the process's heap.
 */
public final class PackageSpeed {
    private static final int SHEETS = 300;
    private static final int MEMORY = 256;
    private static final String PEAK = "heap-peak";
    private static final int EVERY_MILLISECONDS = 50;

    private PackageSpeed() {
    }

    /** "make FOLDER", or "bind FOLDER PACKAGE". */
    public static void main(String[] words) throws Exception {
        if (words[0].equals("make")) {
            make(Path.of(words[1]));
        } else {
            bind(Path.of(words[1]), Path.of(words[2]));
        }
    }

    private static void make(Path folder) throws IOException {
        Files.createDirectories(folder);
        Random random = new Random(7);
        for (int i = 0; i < SHEETS; i++) {
            byte[] picture = picture(random);
            try (PDDocument document = new PDDocument()) {
                for (int page = 1; page <= (i % 3 == 0 ? 6 : 7); page++) {
                    page(document, picture, "V" + i + "X" + page + "Q");
                    document.getPage(page - 1).setRotation(i % 10 == 4 ? 90 : 0);
                }
                document.save(folder.resolve(String.format(Locale.ROOT, "%03d.pdf", i)).toFile());
            }
        }
    }

    /** A photograph's worth of noise, about half a megabyte. */
    private static byte[] picture(Random random) throws IOException {
        BufferedImage image = new BufferedImage(1060, 860, BufferedImage.TYPE_BYTE_GRAY);
        byte[] noise = new byte[1060 * 860];
        random.nextBytes(noise);
        image.getRaster().setDataElements(0, 0, 1060, 860, noise);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "jpg", out);
        return out.toByteArray();
    }

    private static void page(PDDocument document, byte[] picture, String word) throws IOException {
        PDPage page = new PDPage(PDRectangle.LETTER);
        document.addPage(page);
        PDImageXObject image = JPEGFactory.createFromByteArray(document, picture);
        try (PDPageContentStream out = new PDPageContentStream(document, page)) {
            out.drawImage(image, 72, 72, 440, 360);
            for (int line = 0; line < 20; line++) {
                out.beginText();
                out.setFont(new PDType1Font(FontName.HELVETICA), 9);
                out.newLineAtOffset(72, 700 - 12 * line);
                out.showText("Property " + line + "   " + (line == 3 ? word : "value") + "   as tested, invented sheet");
                out.endText();
            }
        }
    }

    private static void bind(Path folder, Path target) throws IOException {
        List<Path> files;
        try (Stream<Path> found = Files.list(folder)) {
            files = found.sorted().toList();
        }
        Child child = Child.of(Watched.class, new Child.Limits(MEMORY, Duration.ofSeconds(60), Duration.ofMinutes(10), 4L << 30));
        long start = System.nanoTime();
        List<List<String>> words = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            words.add(List.of("V" + i + "X1Q"));
        }
        int pages;
        long seen;
        try (OpenedSheets opened = child.open(files, words)) {
            seen = System.nanoTime();
            PackagePlan plan = plan(files, opened.measures(), opened.found());
            pages = plan.total();
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(target), 1 << 16)) {
                opened.assemble(plan, out);
            }
        }
        long end = System.nanoTime();
        System.out.printf(Locale.ROOT, "pages %d%nlook %d%nbind %d%ntotal %d%nheap %d%n", pages, (seen - start) / 1_000_000,
            (end - seen) / 1_000_000, (end - start) / 1_000_000, peak() >> 20);
    }

    /** The most heap that any of the processes had in use, from the notes that they left. */
    private static long peak() throws IOException {
        long most = 0;
        try (Stream<Path> notes = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            for (Path note : notes.filter(path -> path.getFileName().toString().startsWith(PEAK)).toList()) {
                most = Math.max(most, Long.parseLong(Files.readString(note)));
                Files.delete(note);
            }
        }
        return most;
    }

    private static PackagePlan plan(List<Path> files, List<Measure> measures, List<List<Spotted>> found) throws IOException {
        List<PackagePlan.Part> parts = new ArrayList<>(List.of(PackagePlan.Part.own("Contents", 1, 1, 1)));
        List<PackagePlan.Link> links = new ArrayList<>();
        int page = 2;
        for (int i = 0; i < files.size(); i++) {
            parts.add(PackagePlan.Part.own("Divider " + i, 1, i + 2, 1));
            page++;
            List<PackagePlan.Spot> spots = new ArrayList<>();
            for (Spotted one : found.get(i)) {
                spots.add(new PackagePlan.Spot(one.page(), one.box(), Integer.toString(i + 1)));
                links.add(new PackagePlan.Link(1, one.box(), page + one.page() - 1, Optional.of(one.box()), ""));
            }
            int pages = measures.get(i).pages();
            parts.add(new PackagePlan.Part("Sheet " + i, 2, 1, pages, Optional.of(new PackagePlan.Sheet(files.get(i), pages)),
                "Sheet " + i + ", page {page} of " + pages + " · page {package page}", spots));
            page += pages;
        }
        ByteArrayOutputStream own = new ByteArrayOutputStream();
        try (PDDocument document = new PDDocument()) {
            for (int i = 0; i <= files.size(); i++) {
                document.addPage(new PDPage(PDRectangle.LETTER));
            }
            document.save(own);
        }
        return new PackagePlan("Package", own.toByteArray(), parts, links);
    }

    /** The reading process itself, which leaves a note of the most heap that it had in use. */
    public static final class Watched {
        private Watched() {
        }

        public static void main(String[] none) throws IOException {
            // it is killed as soon as its answer is heard, so that the note is kept up to date all the time
            Thread watch = new Thread(Watched::watch);
            watch.setDaemon(true);
            watch.start();
            ChildMain.main(none);
        }

        private static void watch() {
            Path note = Path.of(PEAK + "-" + ProcessHandle.current().pid());
            Path fresh = Path.of("fresh-" + note);
            try {
                while (true) {
                    long most = ManagementFactory.getMemoryPoolMXBeans().stream().filter(pool -> pool.getType() == MemoryType.HEAP)
                        .mapToLong(pool -> pool.getPeakUsage().getUsed()).sum();
                    Files.writeString(fresh, Long.toString(most));
                    Files.move(fresh, note, StandardCopyOption.ATOMIC_MOVE);
                    Thread.sleep(EVERY_MILLISECONDS);
                }
            } catch (IOException | InterruptedException unseen) {
                System.err.println(unseen);
            }
        }
    }
}
