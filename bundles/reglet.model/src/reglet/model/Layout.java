package reglet.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * How a job wants its sections laid out.
 *
 * @param references how the standards stand that a section cites
 * @param order      ids of articles by section number; those of one part exchange places so that they stand in this order
 */
public record Layout(References references, Map<String, List<String>> order) {
    /** Lettered paragraphs, and the articles as the pack plans them. */
    public static final Layout USUAL = new Layout(References.LIST, Map.of());

    /** As lettered paragraphs, as a table that also says where each is cited, or not at all. */
    public enum References {
        LIST("list"), TABLE("table"), OFF("off");

        private final String text;

        References(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Layout {
        order = Ordered.copy(order);
    }

    /** A plan with its articles in the order asked for. Articles that aren't named keep their places. */
    public SectionPlan ordered(SectionPlan plan) {
        List<String> named = order.getOrDefault(plan.number(), List.of());
        List<SectionPlan.Article> articles = new ArrayList<>(plan.articles());
        for (int part = 1; part <= SectionPlan.PARTS; part++) {
            int here = part;
            List<Integer> places = new ArrayList<>();
            for (int i = 0; i < articles.size(); i++) {
                if (articles.get(i).part() == here && named.contains(articles.get(i).id())) {
                    places.add(i);
                }
            }
            List<SectionPlan.Article> moved = plan.articles().stream().filter(one -> one.part() == here && named.contains(one.id()))
                .sorted(Comparator.comparingInt(one -> named.indexOf(one.id()))).toList();
            for (int i = 0; i < moved.size(); i++) {
                articles.set(places.get(i), moved.get(i));
            }
        }
        return new SectionPlan(plan.number(), plan.title(), articles, plan.at());
    }
}
