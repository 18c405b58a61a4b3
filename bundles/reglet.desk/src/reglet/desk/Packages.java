package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import reglet.drafting.SubmittalPages;
import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.Pages;
import reglet.drafting.SubmittalPages.Part;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.model.Calculated;
import reglet.model.Drawing;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.reading.Child;
import reglet.reading.Measure;
import reglet.reading.PackagePlan;

/** Puts submittal packages together: our own pages around the sheets, which only the reading process opens. */
final class Packages {

    private Packages() {
    }

    static byte[] of(OpenJob job, Submittal submittal) throws UnusableInput, IOException {
        List<RegisterItem> items = job.register(submittal.section()).stream()
            .filter(item -> submittal.items().contains(item.id())).toList();
        List<Sheet> sheets = sheets(job, submittal);
        Pages pages = SubmittalPages.of(new Contents(job.assembly(), submittal, items, job.compare(submittal), sheets,
            submittal.with().contains("worksheets") ? worksheets(job, submittal) : List.of(),
            submittal.with().contains("details") ? details(job) : List.of()));
        return Child.usual().assemble(plan(job, submittal, pages));
    }

    /** The worksheets that show the submittal's products to be enough. */
    private static List<Calculated> worksheets(OpenJob job, Submittal submittal) {
        Set<String> components = job.job().products().stream().filter(product -> submittal.products().contains(product.id()))
            .map(ProductData::component).collect(Collectors.toSet());
        return job.calculated().stream().filter(calculated -> components.contains(calculated.worksheet().component())).toList();
    }

    private static List<Drawing> details(OpenJob job) throws UnusableInput {
        List<Drawing> all = new ArrayList<>();
        for (WallType wall : job.job().walls()) {
            all.addAll(job.details(wall.id()));
        }
        return all;
    }

    /** The sheets that a submittal's products name, each once. */
    private static List<Sheet> sheets(OpenJob job, Submittal submittal) throws IOException {
        Map<String, String> titles = new LinkedHashMap<>();
        for (String id : submittal.products()) {
            for (ProductData product : job.job().products()) {
                if (product.id().equals(id) && !product.sheet().isEmpty()) {
                    titles.putIfAbsent(product.sheet(), product.name() + (product.maker().isEmpty() ? "" : ", " + product.maker()));
                }
            }
        }
        List<Path> files = titles.keySet().stream().map(job.folder()::resolve).toList();
        List<Measure> measures = Child.usual().measure(files);
        List<Sheet> sheets = new ArrayList<>();
        int number = 0;
        for (Map.Entry<String, String> title : titles.entrySet()) {
            Measure measure = measures.get(number++);
            sheets.add(new Sheet(title.getKey(), title.getValue(), measure.pages(), measure.problem()));
        }
        return sheets;
    }

    private static PackagePlan plan(OpenJob job, Submittal submittal, Pages pages) {
        Map<String, Part> byId = new LinkedHashMap<>();
        pages.parts().forEach(part -> byId.put(part.id(), part));
        List<PackagePlan.Part> parts = new ArrayList<>();
        int sheets = 0;
        for (Part part : pages.parts()) {
            Optional<Path> sheet = part.firstPage() > 0 ? Optional.empty() : Optional.of(job.folder().resolve(part.id()));
            String mark = sheet.isEmpty() ? "" : "Sheet " + ++sheets + ", page {page} of " + part.pages() + " · Submittal "
                + submittal.id() + " · Package page {package page} of " + pages.total();
            parts.add(new PackagePlan.Part(part.title(), part.level(), part.firstPage(), part.pages(), sheet, mark));
        }
        List<PackagePlan.Link> links = pages.links().stream().map(link -> new PackagePlan.Link(link.page(), link.box(),
            byId.get(link.target()).packagePage() + link.targetPage() - 1)).toList();
        return new PackagePlan(job.job().title() + ", submittal " + submittal.id(), pages.pdf(), parts, links);
    }
}
