package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.sheet.Flow.Spot;

/**
 * The codes that a report names with their editions: "2021 and 2018 International Building Code (IBC) and International Residential Code",
 * "IBC and IRC, 2018 and 2021 editions". Years stand before the names that they are of, or behind them, the same way in a whole row.
 */
final class ReportCodes {
    private static final String FULL = "(?:International\\s+)?(?:(?:Existing\\s+)?Building|Resi-?\\s?den-?\\s?tial"
        + "|Energy\\s+Conservation|Fire)\\s+Code";
    /** A year that ends a date is no edition: "04/30/2026", "June 30, 2027", "June 2027". */
    private static final String NO_DATE = "(?<!(?:^|[^\\d])\\d{1,2}[/.-])(?<![^\\d]\\d{1,2}, )(?<!(?i:January|February|March|April|May"
        + "|June|July"
        + "|August|September|October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)\\.?,? )";
    private static final Pattern TOKEN = Pattern.compile(NO_DATE
        + "\\b((?:19|20)\\d\\d)(?:s|\\b)(?!-\\d|-[A-Z]{3}-)|\\b(I[BREF]C|IECC|IEBC|CBC|CRC|FBC|NBC|NCC)\\b"
        + "|\\b((?:(?:California|Florida|National|State|[A-Z][a-z]+\\s+State)\\s+)?" + FULL + "(?:\\s+of\\s+Canada)?)\\b");
    /** What may stand between years and names of one row. */
    private static final Pattern BETWEEN = Pattern.compile("[\\s,:()&/®™–—•■▪●*+-]*(?:(?i:and|or|the|of|editions?|code|versions?)\\b"
        + "[\\s,:()&/®™–—•■▪●*+-]*)*");
    private static final Pattern NOT = Pattern.compile("(?i)\\b(?:not|outside|withdrawn|earlier|former|except|excluded|pending"
        + "|under review)\\b");
    private static final int BEFORE = 60;

    private ReportCodes() {
    }

    /** A code's edition and where its year stands. */
    record Edition(String code, String year, int from, int to) {
        String name() {
            return code + " " + year;
        }
    }

    private record Part(String word, boolean year, int from, int to) {
    }

    static List<Edition> in(Flow flow) {
        List<Edition> editions = new ArrayList<>();
        List<Part> row = new ArrayList<>();
        String text = flow.text();
        Matcher token = TOKEN.matcher(text);
        while (token.find()) {
            boolean goesOn = !row.isEmpty() && BETWEEN.matcher(text.substring(row.get(row.size() - 1).to, token.start())).matches();
            if (!goesOn) {
                end(row, editions, text);
            }
            String word = token.group(1) != null ? token.group(1) : token.group(2) != null ? token.group(2) : shortly(token.group(3));
            row.add(new Part(word, token.group(1) != null, token.start(), token.end()));
        }
        end(row, editions, text);
        return editions;
    }

    /** The years of the code that is named first, and where they stand; empty when none is one of the international ones. */
    static Set<String> years(List<Edition> editions) {
        Set<String> years = new LinkedHashSet<>();
        String code = editions.stream().map(Edition::code).filter(name -> name.equals("IBC")).findFirst().orElse("IRC");
        editions.stream().filter(edition -> edition.code.equals(code)).forEach(edition -> years.add(edition.year));
        return years;
    }

    /** Where the years of the first row stand. */
    static Spot spot(Flow flow, List<Edition> editions) {
        String code = editions.stream().map(Edition::code).filter(name -> name.equals("IBC")).findFirst().orElse("IRC");
        List<Edition> own = editions.stream().filter(edition -> edition.code.equals(code)).toList();
        int to = own.get(0).to;
        for (Edition edition : own) {
            to = edition.from >= to && edition.from - to < 8 ? edition.to : to;
        }
        return flow.at(own.get(0).from, to);
    }

    private static void end(List<Part> row, List<Edition> editions, String text) {
        if (row.isEmpty()) {
            return;
        }
        int from = row.get(0).from;
        String before = text.substring(Math.max(0, from - BEFORE), from);
        int stop = Math.max(before.lastIndexOf(". "), before.lastIndexOf('\t'));
        int last = row.get(row.size() - 1).to;
        int ends = text.indexOf('.', last);
        String after = text.substring(last, Math.min(ends < 0 ? text.length() : ends, last + BEFORE));
        if (!NOT.matcher(before.substring(stop + 1)).find() && !NOT.matcher(after.lines().findFirst().orElse("")).find()) {
            boolean yearsFirst = row.get(0).year;
            List<Part> years = new ArrayList<>();
            List<Part> names = new ArrayList<>();
            for (Part part : row) {
                // a new pair begins where the first kind comes again
                if (part.year == yearsFirst && !(yearsFirst ? names : years).isEmpty()) {
                    pair(years, names, editions);
                }
                (part.year ? years : names).add(part);
            }
            pair(years, names, editions);
        }
        row.clear();
    }

    private static void pair(List<Part> years, List<Part> names, List<Edition> editions) {
        for (Part name : names) {
            for (Part year : years) {
                Edition edition = new Edition(name.word, year.word, year.from, year.to);
                if (editions.stream().noneMatch(other -> other.name().equals(edition.name()))) {
                    editions.add(edition);
                }
            }
        }
        years.clear();
        names.clear();
    }

    /** "International Building Code" and "IBC" are one. */
    private static String shortly(String name) {
        String plain = name.replaceAll("-?\\s+", " ").replace("Resi den", "Residen").replace("Residen tial", "Residential");
        String of = plain.toLowerCase(Locale.ROOT);
        String first = of.startsWith("california") ? "C" : of.startsWith("florida") ? "F" : of.startsWith("international")
            || of.startsWith("energy") ? "I" : "";
        String kind = of.contains("existing") ? "EBC" : of.contains("building code") ? "BC" : of.contains("residential") ? "RC"
            : of.contains("energy") ? "ECC" : "FC";
        return of.endsWith("of canada") ? "NBC" : first.isEmpty() ? plain : first + kind;
    }
}
