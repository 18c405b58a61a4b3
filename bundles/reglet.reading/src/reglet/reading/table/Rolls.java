package reglet.reading.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.value.Around;
import reglet.reading.value.Taken;
import reglet.reading.words.Label;
import reglet.reading.words.Labels;

/** Lists of rolls, each with its number somewhere in the line: "4 in. × 75 ft, No. KB-4, 12 rolls" is 4 in. wide. */
public final class Rolls {
    private static final double SURE = 0.82;
    private static final int LEAST = 2;
    private static final double BELOW = 1.7;
    private static final Pattern ROLL = Pattern.compile("\\W*("
        + "(?:[\\d½¼¾⅛⅜⅝⅞][\\d\\s./½¼¾⅛⅜⅝⅞-]*)\\s*(?:in\\b\\.?|inch(?:es)?|\"|”|mm))\\s*(?:wide\\s*)?"
        + "(?:x|×|by)\\s*[\\d½.,]+\\s*-?(?:ft|feet|foot|yd|m|')(?!\\p{L}).*", Pattern.DOTALL);
    private static final Pattern NUMBER = Pattern.compile("(?i)(?:\\b"
        + "(?:cat(?:alog(?:ue)?)?|item|part|order|stock|code|model|roll)\\.?\\s+)?(?:\\b(?:no|number"
        + "|item|part|code|model|sku)\\b\\.?:?|#)\\s*((?=[\\w-]*\\d)[\\p{Lu}\\d]+(?:[-./][\\p{Lu}\\d]+)*)");

    private final Labels labels;
    private final Taken taken;

    public Rolls(Labels labels, Taken taken) {
        this.labels = labels;
        this.taken = taken;
    }

    /** Takes down how wide each roll of a list is; nothing where fewer than two follow each other. */
    public void read(Layout layout) {
        Optional<Label> width = labels.component().property("width").filter(property -> !Labels.isOfTheWork(property)).map(Label::of);
        if (width.isEmpty()) {
            return;
        }
        Map<String, Cell> open = new LinkedHashMap<>();
        Cell last = null;
        for (Cell cell : cells(layout)) {
            Matcher roll = ROLL.matcher(cell.text());
            Matcher number = NUMBER.matcher(cell.text());
            boolean near = last != null && cell.y() > last.y() && cell.y() - last.y() < BELOW * cell.size() && Math.abs(cell.left() - last
                .left()) < 2;
            if (!near) {
                take(width.get(), open);
            }
            if (roll.matches() && number.find()) {
                open.put(number.group(1), cell.part(roll.start(1), roll.end(1)));
                last = cell;
            } else {
                take(width.get(), open);
                last = null;
            }
        }
        take(width.get(), open);
    }

    private static List<Cell> cells(Layout layout) {
        List<Cell> all = new ArrayList<>();
        layout.lines().stream().map(Line::cells).filter(cells -> cells.size() == 1).forEach(all::addAll);
        return all;
    }

    private void take(Label width, Map<String, Cell> open) {
        if (open.size() >= LEAST) {
            // a list of what is in stock may stand under "Packing"
            taken.anywhere();
            open.forEach((model, cell) -> taken.quietly(width, width.properties().get(0).label(), cell, new Around("", List.of(), model,
                Optional.empty(), SURE)));
        }
        open.clear();
    }
}
