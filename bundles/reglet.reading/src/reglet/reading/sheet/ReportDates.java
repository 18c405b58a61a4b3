package reglet.reading.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.reading.sheet.Flow.Spot;

/**
 * The dates of a report or certificate, each with what it is the date of: the words before it, or above it in a row of headings. Words may
 * come first and their dates after them: "Issued / expires | April 1, 2025 / April 30, 2027".
 */
final class ReportDates {
    private static final String MONTH = "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?"
        + "|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\\.?";
    private static final String DAY = MONTH + "\\s+\\d{1,2}(?:st|nd|rd|th)?,?\\s+20\\d\\d|\\d{1,2}(?:st|nd|rd|th)?\\s+(?:of\\s+)?" + MONTH
        + ",?\\s+20\\d\\d|20\\d\\d-[a-z]{3}-\\d\\d?|\\d\\d?-[a-z]{3}-20\\d\\d|20\\d\\d[-/]\\d\\d?[-/]\\d\\d?"
        + "|\\d\\d?[./-]\\d\\d?[./-]20\\d\\d|" + MONTH + ",?\\s+20\\d\\d|\\d\\d?[/-]20\\d\\d";
    private static final String ENDS = "(?:is |being )?subject to (?:renewal|re-?examination|review|re-?evaluation)|due for renewal|renewal"
        + "|renew(?:ed|able)? (?:by|before|on)|expir(?:y|es|ation|ing|e)|valid(?:ity)?(?: is)? (?:until|through|thru|to|till|up to)"
        + "|good (?:through|until)|(?:in (?:force|effect)|effective|runs?|remains valid|applies) (?:until|to|through|till)"
        + "|re-?examination|re-?evaluation due|lapses|end of validity|not valid after|void after|until|valid thru";
    private static final String FIRST = "(?:originally|first|initially) (?:issued|published|approved)|original issue|first issue"
        + "|initial issue";
    private static final String BEGINS = "re-?issued?|issued?|issue|effective|valid from|in force from|approved|approval date|granted"
        + "|published"
        + "|publication|validity(?: period)?|period of validity|valid|date";
    private static final String OTHER = "revis(?:ed|ion)|amended|updated|amendment|printed|corrected|correction|dated|as of|next"
        + "|inspect(?:ed|ion)"
        + "|tested|review|version|supersed(?:es|ed)|copyright|accredit\\w*|editorially|criteria|audit";
    private static final Pattern TOKEN = Pattern.compile("(?i)(?<!\\d)(?<day>" + DAY + ")(?!\\d)|\\b(?:(?<first>" + FIRST + ")|(?<ends>"
        + ENDS
        + ")|(?<begins>" + BEGINS + ")|(?<other>" + OTHER + "))\\b|(?<=[a-z:] )(?<year>20\\d\\d)(?=\\s*(?:\\.?\\s*[\\n\\t]))");
    /** What may stand between a word and its date. */
    private static final Pattern NAMED = Pattern.compile("(?is)[^.;\\n]{0,24}\\n?[^.;\\n\\d]{0,6}");
    /** A cell may stand between headings and the first date below them. */
    private static final Pattern HEADED = Pattern.compile("[^\\n]{0,24}\\n[^\\n\\t]{0,24}\\t");
    private static final Pattern RANGE = Pattern.compile("(?i)\\s*(?:to|through|thru|until|till|up to"
        + "|and expires|–|—|-)\\s*(?:and including )?");
    private static final Pattern WHOSE = Pattern.compile("(?is).*\\b(?:report|certificate|approval|assessment|listing|validity)\\b.*");

    /** "This version replaces approval XQ-0226 issued on …" tells of another paper. */
    private static final Pattern ANOTHERS = Pattern.compile("(?i).*\\b(?:supersed|replac|withdr)\\w+\\b[^.;]*");
    private static final Pattern MONTH_BETWEEN = Pattern.compile("(20\\d\\d|\\d\\d?)-(\\p{L}{3})-(20\\d\\d|\\d\\d?)");
    private static final Pattern DOTS = Pattern.compile("(\\d\\d?)\\.(\\d\\d?)\\.(20\\d\\d)");

    private ReportDates() {
    }

    private enum Of {
        FIRST, BEGINS, ENDS, OTHER
    }

    private record Name(Of of, int from, int to) {
    }

    private record Dated(Of of, String word, int from, int to) {
    }

    /** When it was issued: the latest word for that, not the first issue's unless no other is told. */
    static Optional<Spot> issued(ReportHead head) {
        List<Dated> dated = dated(head.flow().text());
        return dated.stream().filter(one -> one.of == Of.BEGINS && one.word.startsWith("re")).findFirst().or(() -> dated.stream().filter(
            one -> one.of == Of.BEGINS).findFirst()).or(() -> dated.stream().filter(one -> one.of == Of.FIRST).findFirst())
            .map(one -> plain(head.flow(), one));
    }

    /** A date where it stands; one that only some countries write so as all understand it: "31.12.2026", "2027-JAN-16". */
    private static Spot plain(Flow flow, Dated one) {
        Spot spot = flow.at(one.from, one.to);
        Matcher month = MONTH_BETWEEN.matcher(spot.text());
        Matcher dots = DOTS.matcher(spot.text());
        String written = month.matches() ? month.group(1).length() == 4 ? month.group(3) + " " + month.group(2) + " " + month.group(1)
            : month.group(1) + " " + month.group(2) + " " + month.group(3)
            : dots.matches() ? dots.group(3) + "-" + dots.group(2) + "-" + dots.group(1) : spot.text();
        return new Spot(spot.layout(), spot.cell().named(written));
    }

    /** When it ends or is to be renewed: as its head says, else as a sentence of it says of the report. */
    static Optional<Spot> ends(ReportHead head) {
        Optional<Spot> ends = dated(head.flow().text()).stream().filter(one -> one.of == Of.ENDS).findFirst().map(one -> plain(head
            .flow(), one));
        return ends.or(() -> dated(head.whole().text()).stream().filter(one -> one.of == Of.ENDS
            && WHOSE.matcher(before(head.whole().text(),
            one)).matches()).findFirst().map(one -> plain(head.whole(), one)));
    }

    private static String before(String text, Dated one) {
        String before = text.substring(Math.max(0, one.from - 80), one.from);
        return before.substring(Math.max(before.lastIndexOf(". "), before.lastIndexOf("\n\n")) + 1);
    }

    private static List<Dated> dated(String text) {
        List<Dated> all = new ArrayList<>();
        List<Name> names = new ArrayList<>();
        List<int[]> days = new ArrayList<>();
        Matcher token = TOKEN.matcher(text);
        while (token.find()) {
            boolean day = token.group("day") != null || token.group("year") != null;
            if (!day && !days.isEmpty()) {
                pair(names, days, text, all);
            }
            if (day) {
                days.add(new int[] {token.start(), token.end()});
            } else {
                names.add(new Name(token.group("ends") != null ? Of.ENDS : token.group("first") != null ? Of.FIRST
                    : token.group("begins") != null ? Of.BEGINS : Of.OTHER, token.start(), token.end()));
            }
        }
        pair(names, days, text, all);
        return all;
    }

    /** Names that follow each other, then as many dates, belong together in turn; else a date is of the name right before it. */
    private static void pair(List<Name> all, List<int[]> days, String text, List<Dated> dated) {
        List<Name> names = named(all, text);
        if (!days.isEmpty() && !names.isEmpty()) {
            Name last = names.get(names.size() - 1);
            String between = text.substring(last.to, days.get(0)[0]);
            boolean named = NAMED.matcher(between).matches() || names.size() >= days.size() && days.size() > 1 && HEADED.matcher(between)
                .matches();
            boolean range = days.size() > 1 && RANGE.matcher(text.substring(days.get(0)[1], days.get(1)[0])).matches();
            for (int i = 0; i < days.size() && named; i++) {
                boolean turn = !range && names.size() >= days.size() && days.size() > 1;
                Name name = turn ? names.get(names.size() - days.size() + i) : last;
                boolean another = ANOTHERS.matcher(text.substring(text.lastIndexOf('\n', name.from) + 1, name.from)).matches();
                Of of = another ? Of.OTHER : i == 0 || turn ? name.of : i == 1 && range && name.of == Of.BEGINS ? Of.ENDS : Of.OTHER;
                dated.add(new Dated(of, text.substring(name.from, name.to).toLowerCase(Locale.ROOT), days.get(i)[0],
                    days.get(i)[1]));
            }
        }
        all.clear();
        days.clear();
    }

    /** "Renewal due date" is one name, "issue date" too: a second word right behind a first says nothing new. */
    private static List<Name> named(List<Name> names, String text) {
        List<Name> own = new ArrayList<>();
        for (Name name : names) {
            Name last = own.isEmpty() ? null : own.get(own.size() - 1);
            boolean same = last != null && text.substring(last.to, name.from).matches("\\s?(?:due |of )?");
            if (same && text.substring(name.from, name.to).equalsIgnoreCase("date")) {
                own.set(own.size() - 1, new Name(last.of, last.from, name.to));
            } else if (same && text.substring(last.from, last.to).equalsIgnoreCase("date")) {
                own.set(own.size() - 1, new Name(name.of, last.from, name.to));
            } else {
                own.add(name);
            }
        }
        return own;
    }
}
