package reglet.cli;

import java.util.List;


/** The words nearest to one that nobody knows. */
final class Nearest {

    private Nearest() {
    }

    static String hint(String word, List<String> known) {
        List<String> near = near(word, known);
        return near.isEmpty() ? "expected one of " + known.size() + " names; see the pack's files"
            : "did you mean " + String.join(" or ", near) + "?";
    }

    private static List<String> near(String word, List<String> known) {
        String stem = word.contains(".") ? word.substring(0, word.indexOf('.')) : word;
        return known.stream().filter(name -> name.contains(word) || word.contains(name) || name.startsWith(stem + ".")).limit(5).toList();
    }
}
