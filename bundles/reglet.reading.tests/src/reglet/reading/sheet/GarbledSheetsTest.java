package reglet.reading.sheet;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.SheetReading;
import reglet.reading.page.SheetPage;
import reglet.reading.page.SheetPage.Piece;
import reglet.reading.page.SheetPage.Rule;
import reglet.reading.sheet.SheetFixtures.Fixture;
import reglet.reading.value.Taken;

/**
 * Whatever words stand on a page, and wherever they stand, it is read or not, but reading never fails: words, figures and places of real
 * pages are mixed anew, each time in the same way.
 */
class GarbledSheetsTest {
    private static final int ROUNDS = 8;
    private static final int WORDS = 260;

    @TempDir
    Path folder;

    private List<SheetPage> pages() throws Exception {
        List<SheetPage> pages = new ArrayList<>();
        for (Fixture fixture : SheetFixtures.set("second").subList(0, 8)) {
            Path sheet = folder.resolve(fixture.name() + ".pdf");
            Files.write(sheet, fixture.pdf());
            pages.addAll(SheetFixtures.pages(sheet));
        }
        return pages.stream().filter(page -> !page.pieces().isEmpty()).toList();
    }

    private static Piece piece(Piece like, String text, double x, double y, double size) {
        return new Piece(text, x, y, text.length() * size * 0.48, size, like.turn(), like.spaced(), like.bold(), like.hidden());
    }

    private void read(SheetPage page) throws Exception {
        SheetReading reading = SheetReader.read(List.of(page), SheetFixtures.pack(), "");
        assertTrue(reading.values().stream().allMatch(found -> found.confidence() >= Taken.LEAST_CONFIDENCE
            && found.value().page() == page.number() && !found.value().text().isBlank()), () -> reading.values().toString());
    }

    @Test
    void aPageWhoseWordsChangedPlacesIsReadWithoutFailing() throws Exception {
        List<SheetPage> pages = pages();
        assertFalse(pages.isEmpty());
        Random random = new Random(20260401);
        for (int round = 0; round < ROUNDS; round++) {
            SheetPage places = pages.get(random.nextInt(pages.size()));
            SheetPage words = pages.get(random.nextInt(pages.size()));
            List<Piece> pieces = new ArrayList<>();
            for (Piece at : places.pieces()) {
                Piece other = words.pieces().get(random.nextInt(words.pieces().size()));
                // a third stays where it is, so that labels still stand beside something
                pieces.add(random.nextInt(3) == 0 ? at : piece(at, other.text(), at.x(), at.y(), at.size()));
            }
            read(new SheetPage(1, places.width(), places.height(), false, pieces, places.rules()));
        }
    }

    @Test
    void textSetFromRandomWordsIsReadWithoutFailing() throws Exception {
        List<SheetPage> pages = pages();
        Random random = new Random(20260402);
        String[] odd = {"(", ")", "-", "/", "½", "\"", "″", "per", "to", "and", "between", "than", "no", "not", ".", ";", "×", "1,000",
            "0", "3/", "/4", "1-", "°F", "%", "ASTM", "E", "min.", "≥", "≤", "•", "…", ":", "up", "or", "more"};
        for (int round = 0; round < ROUNDS; round++) {
            List<Piece> pieces = new ArrayList<>();
            double x = 54;
            double y = 60;
            double size = 9;
            for (int i = 0; i < WORDS; i++) {
                SheetPage from = pages.get(random.nextInt(pages.size()));
                Piece like = from.pieces().get(random.nextInt(from.pieces().size()));
                String text = random.nextInt(4) == 0 ? odd[random.nextInt(odd.length)] : like.text();
                Piece piece = new Piece(text, x, y, Math.max(2, text.length() * size * 0.48), size, 0, true, random.nextInt(9) == 0, false);
                pieces.add(piece);
                x = piece.x() + piece.width() + (random.nextInt(15) == 0 ? 30 : 2.5);
                if (x > 500) {
                    x = 54 + 20 * random.nextInt(2);
                    y += size * (random.nextInt(6) == 0 ? 2.4 : 1.2);
                    size = random.nextInt(10) == 0 ? 16 : 9;
                }
            }
            List<Rule> rules = new ArrayList<>();
            for (int i = 0; i < 12; i++) {
                double at = 40 + random.nextInt(500);
                rules.add(random.nextBoolean() ? new Rule(40, at, 560, at) : new Rule(at, 50, at, 600));
            }
            read(new SheetPage(1, 612, 792, false, pieces, rules));
        }
    }
}
