package reglet.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.Found;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Box;
import reglet.model.Comparison.Row;
import reglet.model.ProductData;
import reglet.model.SheetValue;

/**
 * What is marked on the sheets of a package: each value that the comparison cites, with a number that its rows repeat, and the
 * chosen model and colour where their words are found. Numbers run through the package, down each page.
 */
final class Markings {
    private static final int MOST_OF_ONE_WORD = 12;

    /**
     * A marked place.
     *
     * @param number "" for a model or colour
     */
    record Mark(String sheet, int page, Box box, String number) {
    }

    private final List<Mark> all = new ArrayList<>();
    private final Map<String, Mark> values = new LinkedHashMap<>();

    private Markings() {
    }

    static Markings of(Contents contents, List<ProductData> products) {
        Markings markings = new Markings();
        for (Sheet sheet : contents.sheets()) {
            if (sheet.pages() > 0) {
                List<ProductData> here = products.stream().filter(product -> product.sheet().equals(sheet.id())).toList();
                markings.values(contents, sheet, here);
                markings.words(contents, sheet, here);
            }
        }
        return markings;
    }

    /** The words that have to be looked for on a product's sheet. */
    static List<String> wanted(ProductData product, Map<String, String> colours) {
        List<String> words = new ArrayList<>(chosen(product, colours));
        product.values().stream().filter(value -> value.box().isEmpty()).map(SheetValue::text).filter(text -> !text.isBlank())
            .forEach(words::add);
        return words;
    }

    private static List<String> chosen(ProductData product, Map<String, String> colours) {
        List<String> words = new ArrayList<>();
        words.add(product.model());
        words.add(colours.getOrDefault(product.id(), ""));
        words.removeIf(String::isBlank);
        return words;
    }

    private void values(Contents contents, Sheet sheet, List<ProductData> products) {
        record Cited(String key, int page, Box box) {
        }
        Map<String, Cited> cited = new LinkedHashMap<>();
        for (Row row : contents.comparison().rows()) {
            if (row.submitted().isPresent() && products.stream().anyMatch(product -> product.id().equals(row.product()))) {
                SheetValue value = row.submitted().get();
                box(contents, sheet, value).filter(box -> value.page() <= sheet.pages())
                    .ifPresent(box -> cited.putIfAbsent(key(row), new Cited(key(row), value.page(), box)));
            }
        }
        List<Cited> down = new ArrayList<>(cited.values());
        down.sort(Comparator.comparingInt(Cited::page).thenComparingDouble(one -> one.box().y()).thenComparingDouble(one -> one.box().x()));
        for (Cited one : down) {
            // two products may be shown by one value of a sheet
            Mark same = all.stream().filter(mark -> mark.sheet().equals(sheet.id()) && mark.page() == one.page()
                && mark.box().equals(one.box())).findFirst().orElse(null);
            Mark mark = same != null ? same : new Mark(sheet.id(), one.page(), one.box(), String.valueOf(numbered() + 1));
            if (same == null) {
                all.add(mark);
            }
            values.put(one.key(), mark);
        }
    }

    private long numbered() {
        return all.stream().filter(mark -> !mark.number().isEmpty()).count();
    }

    private static Optional<Box> box(Contents contents, Sheet sheet, SheetValue value) {
        return value.box().or(() -> contents.found().stream().filter(found -> found.sheet().equals(sheet.id())
            && found.page() == value.page() && found.words().equals(value.text())).map(Found::box).findFirst());
    }

    private void words(Contents contents, Sheet sheet, List<ProductData> products) {
        for (ProductData product : products) {
            for (String word : chosen(product, contents.submittal().encloses().colours())) {
                contents.found().stream().filter(found -> found.sheet().equals(sheet.id()) && found.words().equals(word)
                    && found.page() <= sheet.pages()).limit(MOST_OF_ONE_WORD)
                    .map(found -> new Mark(sheet.id(), found.page(), found.box(), "")).filter(mark -> !all.contains(mark))
                    .forEach(all::add);
            }
        }
    }

    private static String key(Row row) {
        return row.product() + "\n" + row.requirement().path();
    }

    /** The mark of the value that a row cites. */
    Optional<Mark> of(Row row) {
        return row.submitted().isEmpty() ? Optional.empty() : Optional.ofNullable(values.get(key(row)));
    }

    List<Mark> on(String sheet) {
        return all.stream().filter(mark -> mark.sheet().equals(sheet)).toList();
    }
}
