package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import reglet.drafting.Volumes;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.Submittal;
import reglet.model.UnusableInput;

/**
 * How a package is divided into files, as a person asks for it.
 *
 * @param byKind whether each kind of paper has a file of its own
 * @param limit  bytes that a file may have; 0 for any size
 */
public record PackageDivision(boolean byKind, long limit) {
    public static final PackageDivision NONE = new PackageDivision(false, 0);

    private static final Pattern SIZE = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*(kB|MB|GB)", Pattern.CASE_INSENSITIVE);

    /**
     * Reads "20MB" and "kind"; "" for neither. A megabyte is a million bytes, so that a file fits either way of counting.
     *
     * @throws UnusableInput when one of them is something else
     */
    public static PackageDivision read(String limit, String split) throws UnusableInput {
        if (!split.isEmpty() && !split.equals("kind")) {
            throw new UnusableInput(new Problem(Place.of("--split"), "a package isn't divided by \"" + split + "\"", "expected: kind"));
        }
        return new PackageDivision(!split.isEmpty(), limit.isEmpty() ? 0 : size(limit));
    }

    private static long size(String text) throws UnusableInput {
        Matcher size = SIZE.matcher(text.strip());
        long bytes = size.matches() ? Math.round(Double.parseDouble(size.group(1)) * switch (size.group(2).toLowerCase(Locale.ROOT)) {
            case "kb" -> 1e3;
            case "mb" -> 1e6;
            default -> 1e9;
        }) : 0;
        if (bytes <= 0) {
            throw new UnusableInput(new Problem(Place.of("--limit"), "\"" + text + "\" is no size", "expected a size such as 20MB"));
        }
        return bytes;
    }

    /**
     * Files of an earlier division of a submittal's package, beside those that were written now.
     *
     * @param files what was written; one at least
     */
    public static List<Path> earlier(Submittal submittal, List<Path> files) throws IOException {
        return Packages.earlier(submittal, files);
    }

    /** Why a file is larger than the limit. */
    String says(Packages.Larger larger) {
        return larger.file() + ": " + larger.bytes() / 1000 + " kB are more than the limit of " + limit / 1000 + " kB; it holds "
            + larger.holds() + (larger.divisible() ? ", and did not come out smaller after several tries: ask for a smaller limit"
            : ", besides the fonts and contents that every part needs, and can't be divided further");
    }

    Volumes volumes() {
        return new Volumes(byKind, limit);
    }
}
