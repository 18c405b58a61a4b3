package reglet.workbench.help;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.osgi.framework.FrameworkUtil;

/** The help pages in the bundle's help folder, in the order in which they are read. */
final class HelpPages {
    static final String FIRST = "start";
    private static final List<String> ORDER = List.of(FIRST, "wall", "alternates", "findings", "section", "details", "worksheets", "sheets",
        "comparison", "submittals", "issues", "files", "keys", "words");
    /** Views whose page has another name than the view. */
    private static final Map<String, String> OF_VIEW = Map.of("job", FIRST, "why", "findings", "walls", "wall");

    private HelpPages() {
    }

    /**
     * A page.
     *
     * @param name of its file, without ".md"
     * @param text its Markdown: headings, items, paragraphs, **strong** words and [links](to other pages)
     */
    record Page(String name, String text) {
        String title() {
            return text.lines().findFirst().orElse(name).replaceFirst("^#\\s*", "");
        }
    }

    static List<Page> all() {
        List<Page> pages = new ArrayList<>();
        for (String name : ORDER) {
            read(name).ifPresent(text -> pages.add(new Page(name, text)));
        }
        return List.copyOf(pages);
    }

    private static Optional<String> read(String name) {
        URL entry = FrameworkUtil.getBundle(HelpPages.class).getEntry("help/" + name + ".md");
        if (entry == null) {
            return Optional.empty();
        }
        try (InputStream content = entry.openStream()) {
            return Optional.of(new String(content.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            return Optional.of("# " + name + "\n\nThis page can't be read: " + unreadable.getMessage());
        }
    }

    /** Name of the page about a view: "reglet.workbench.wall" has the page "wall"; the first page for a view without one. */
    static String of(String view) {
        String last = view.substring(view.lastIndexOf('.') + 1);
        return ORDER.contains(last) ? last : OF_VIEW.getOrDefault(last, FIRST);
    }
}
