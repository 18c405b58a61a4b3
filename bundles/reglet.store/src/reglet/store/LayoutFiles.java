package reglet.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import reglet.model.Layout;
import reglet.model.Layout.References;
import reglet.model.Pack;
import reglet.model.SectionPlan;

/** Reads how a job wants its sections laid out: {@code references} and {@code order} of its file. */
final class LayoutFiles {
    private LayoutFiles() {
    }

    static Layout read(Fields job, Pack pack) {
        Map<String, References> words = new LinkedHashMap<>();
        Stream.of(References.values()).forEach(one -> words.put(one.text(), one));
        References references = job.oneOf("references", words).orElse(References.LIST);
        Map<String, List<String>> order = new LinkedHashMap<>();
        job.find("order").ifPresent(cursor -> cursor.fields(pack.plans().stream().map(SectionPlan::number).toList()));
        job.members("order").forEach((number, cursor) -> pack.plan(number).ifPresent(plan -> order.put(number, articles(cursor, plan))));
        return new Layout(references, order);
    }

    private static List<String> articles(Cursor section, SectionPlan plan) {
        List<String> named = new ArrayList<>();
        List<String> parts = IntStream.rangeClosed(1, SectionPlan.PARTS).mapToObj(String::valueOf).toList();
        Fields fields = section.fields(parts);
        parts.forEach(part -> fields.find(part).ifPresent(cursor -> {
            List<String> here = plan.articles().stream().filter(one -> String.valueOf(one.part()).equals(part)).map(SectionPlan.Article::id)
                .toList();
            for (Cursor item : cursor.items()) {
                String id = item.text();
                Optional<SectionPlan.Article> article = plan.articles().stream().filter(one -> one.id().equals(id)).findFirst();
                if (here.contains(id)) {
                    if (named.contains(id)) {
                        item.wrong("article " + id + " stands here twice", "keep one of them");
                    }
                    named.add(id);
                } else if (article.isPresent()) {
                    item.wrong("article " + id + " stands in Part " + article.get().part() + ", not in Part " + part,
                        "an article stays in its part; write it under " + article.get().part() + ":");
                } else {
                    item.problems().unknown(item.at(), "Part " + part + " of Section " + plan.number() + " has no article", id, here);
                }
            }
        }));
        return named;
    }
}
