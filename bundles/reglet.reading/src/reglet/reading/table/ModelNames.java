package reglet.reading.table;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.model.Component;
import reglet.reading.page.Cell;
import reglet.reading.page.Layout;
import reglet.reading.page.Layout.Line;
import reglet.reading.page.Rows;
import reglet.reading.value.Models;
import reglet.reading.words.Naming;

/** Finds what the models of a sheet are called, in columns such as "Item" beside "Catalog no.", whatever the sheet is about. */
public final class ModelNames {
    private static final double NEAR = 4;
    /** A longer line between rows is a note below them. */
    private static final int LONGEST = 45;
    /** A number to order rows by, or the letter of a drawing. */
    private static final Pattern ORDER = Pattern.compile("\\d{1,2}\\.?|\\p{L}");
    /** A heading such as "Type" may stand for a name or for a property: beside a code it is no second name. */
    private static final Pattern NAME = Pattern.compile("item|product|model|name|product name|part|designation|version");

    /** "SHS-16 Wide crown staple": a designation, and words for what it is. */
    private static final Pattern PART = Pattern.compile("((?=\\S*\\d)\\p{Lu}{2,}[\\p{Lu}\\d]*-?[\\p{Lu}\\d]+)[,:]?\\s+"
        + "(\\p{L}[\\p{L}-]*(?: \\p{L}[\\p{L}-]*){0,4})");
    /** "3.2 Oxbow QM-16:", a section of a report about one of the products. */
    private static final Pattern SECTION = Pattern.compile("(\\d+(?:\\.\\d+)*)\\.\\d+\\.?\\s+(?!.*\\b(?:ASTM|ANSI|IBC|IRC|ICC|Table"
        + "|Section)\\b)"
        + "((?:\\p{Lu}\\S*\\s+){0,3}(?=\\S*\\d)(?=\\S*\\p{Lu})[\\p{Lu}\\d][\\p{L}\\d./-]*)(?:\\s+\\p{L}[\\p{L}-]*){0,3}:?");
    /** "Oxbow CC": a name, and a mark behind it. */
    private static final Pattern MARKED = Pattern.compile("\\p{Lu}\\p{L}{2,}(?: \\p{Lu}\\p{L}*)? [\\p{Lu}\\d][\\p{Lu}\\d-]*");
    /** Beside it, "Oxbow Duo". */
    private static final Pattern NAMED = Pattern.compile("\\p{Lu}\\p{L}{2,}(?: \\p{Lu}\\p{L}*)? [\\p{Lu}\\d][\\p{L}\\d-]*");
    /** "Stock no.", "order code". */
    private static final Pattern CODE = Pattern.compile("(?:.* )?(?:no|number|code|sku)");

    private ModelNames() {
    }

    public static Models of(List<Layout> layouts, Naming naming) {
        Models models = new Models();
        List<String> cells = layouts.stream().flatMap(layout -> layout.lines().stream()).flatMap(line -> line.cells().stream()).map(cell ->
            cell.text().replaceAll("\\s+", " ").strip()).toList();
        List<ModelLists> lists = new ArrayList<>();
        for (Layout layout : layouts) {
            List<Line> rows = Rows.of(layout);
            lists.addAll(ModelLists.of(rows));
            for (int i = 0; i < rows.size(); i++) {
                Line heading = rows.get(i);
                models.family(family(heading));
                List<Cell> heads = heading.cells().size() < 2 ? List.of() : heading.cells().stream().filter(cell -> HeadWords.MODEL
                    .matcher(HeadWords.plain(cell)).matches()).toList();
                if (!heads.isEmpty() && heads.size() < 3) {
                    named(models, heads, rows.subList(i + 1, rows.size()), heading, cells);
                }
            }
        }
        models.parts(parts(layouts, naming));
        models.parts(sections(layouts));
        lists.stream().filter(list -> lists.stream().anyMatch(list::isLike)).forEach(list -> models.heads(list.heading()));
        return models;
    }

    /** What stands beside a heading of labels and methods, when all are marks behind one name: "Property | Test | Oxbow CC | Oxbow SB". */
    private static List<String> family(Line heading) {
        List<String> names = heading.cells().stream().skip(1).filter(cell -> !HeadWords.METHOD.matcher(HeadWords.plain(cell)).matches()
            && !HeadWords.METHOD_BESIDE_LABEL.matcher(HeadWords.plain(cell)).matches()).map(cell -> cell.text().replaceAll("\\s+", " ")
                .strip()).toList();
        boolean family = names.size() > 1 && HeadWords.areLabels(heading.cells().get(0)) && areDistinct(names)
            && names.stream().map(NAMED::matcher).allMatch(Matcher::matches) && names.stream().map(MARKED::matcher).anyMatch(
                Matcher::matches) && names.stream().map(name -> name.substring(0, name
                .lastIndexOf(' '))).distinct().count() == 1;
        return family ? names : List.of();
    }

    /** The designations of headings, two at least, that name one kind of product behind them: "SHN-11 Furring nail". */
    private static List<String> parts(List<Layout> layouts, Naming naming) {
        Map<String, Set<Component>> parts = new LinkedHashMap<>();
        layouts.stream().flatMap(layout -> layout.lines().stream()).filter(line -> line.cells().size() == 1).forEach(line -> {
            Matcher heading = PART.matcher(line.text().strip());
            Set<Component> kinds = heading.matches() ? naming.kinds(heading.group(2)).keySet() : Set.of();
            if (!kinds.isEmpty()) {
                parts.merge(heading.group(1), kinds, (one, other) -> one);
            }
        });
        boolean alike = parts.values().stream().allMatch(kinds -> parts.values().stream().allMatch(other -> !Collections.disjoint(kinds,
            other)));
        return parts.size() > 1 && alike ? List.copyOf(parts.keySet()) : List.of();
    }

    /** What tells the products of a report apart by which two of its sections at least are headed: "3.2 Oxbow QM-16:", "3.3 Oxbow
     * QM-14:". */
    private static List<String> sections(List<Layout> layouts) {
        Map<String, List<String>> chapters = new LinkedHashMap<>();
        layouts.stream().flatMap(layout -> layout.lines().stream()).filter(line -> line.cells().size() == 1).map(line -> SECTION
            .matcher(line.text().replaceAll("\\s+", " ").strip())).filter(Matcher::matches).forEach(heading -> chapters.computeIfAbsent(
                heading.group(1), chapter -> new ArrayList<>()).add(heading.group(2)));
        return chapters.values().stream().filter(names -> names.size() > 1 && areDistinct(names)).findFirst().map(ModelNames::apart)
            .orElse(List.of());
    }

    /** Names without the words that all of them begin with. */
    private static List<String> apart(List<String> names) {
        String first = names.get(0);
        String family = first.substring(0, first.indexOf(' ') + 1);
        return !family.isEmpty() && names.stream().allMatch(name -> name.startsWith(family)) ? apart(names.stream().map(name -> name
            .substring(family.length())).toList()) : names;
    }

    private static void named(Models models, List<Cell> heads, List<Line> below, Line heading, List<String> cells) {
        List<List<String>> names = new ArrayList<>();
        double last = heading.y();
        for (Line row : below) {
            if (row.y() - last > NEAR * row.size() || row.y() <= last) {
                break;
            }
            List<String> own = heads.stream().map(head -> under(row, head, heading)).flatMap(Optional::stream).toList();
            if (own.size() == heads.size() && row.cells().size() > 1) {
                names.add(own);
            } else if (row.cells().size() > 1 || row.text().length() > LONGEST) {
                break;
            }
            last = row.y();
        }
        List<String> first = names.stream().map(own -> own.get(0)).toList();
        if (heads.size() == 1) {
            first.forEach(models::name);
            return;
        }
        List<String> second = names.stream().map(own -> own.get(1)).toList();
        boolean each = first.size() > 1 && areDistinct(first) && areDistinct(second);
        boolean named = NAME.matcher(HeadWords.plain(heads.get(0))).matches() || NAME.matcher(HeadWords.plain(heads.get(1))).matches();
        if (!each || !named) {
            return;
        }
        // a stock number is another name of what other tables call by its name
        boolean coded = CODE.matcher(HeadWords.plain(heads.get(0))).matches() && !CODE.matcher(HeadWords.plain(heads.get(1))).matches();
        boolean ordered = first.stream().allMatch(name -> ORDER.matcher(name).matches()) || coded
            && first.stream().allMatch(name -> Collections
            .frequency(cells, name) == 1) && second.stream().allMatch(name -> Collections.frequency(cells, name) > 1);
        for (int i = 0; i < first.size(); i++) {
            models.alias(ordered ? first.get(i) : second.get(i), ordered ? second.get(i) : first.get(i));
        }
    }

    private static boolean areDistinct(List<String> names) {
        return new HashSet<>(names).size() == names.size();
    }

    /** What stands in a row right below a heading, nearer to it than to the others. */
    private static Optional<String> under(Line row, Cell head, Line heading) {
        return row.cells().stream().filter(cell -> heading.cells().stream().min((one, other) -> Double.compare(Columns.edges(cell, one),
            Columns.edges(cell, other))).orElseThrow() == head).map(cell -> cell.text().replaceAll("\\s+", " ").strip())
            .filter(name -> !isTick(name) && !TableStart.shortEnough(name).isEmpty()).findFirst();
    }

    /** A box to tick in front of a row. */
    private static boolean isTick(String text) {
        return text.chars().noneMatch(Character::isLetterOrDigit);
    }
}
