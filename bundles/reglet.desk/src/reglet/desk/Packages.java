package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import reglet.drafting.PackageGroup;
import reglet.drafting.SubmittalPages;
import reglet.drafting.SubmittalPages.Contents;
import reglet.drafting.SubmittalPages.Found;
import reglet.drafting.SubmittalPages.LinkBox;
import reglet.drafting.SubmittalPages.Pages;
import reglet.drafting.SubmittalPages.Part;
import reglet.drafting.SubmittalPages.Sheet;
import reglet.drafting.Volumes;
import reglet.model.Calculated;
import reglet.model.Drawing;
import reglet.model.Enclosures.Paper;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.Resubmittal;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.reading.Child;
import reglet.reading.Measure;
import reglet.reading.PackagePlan;
import reglet.reading.Spotted;
import reglet.store.SafeFile;

/** Puts submittal packages together: our own pages around the sheets, which only the reading process opens. */
final class Packages {
    /** A package divided anew so often when a file comes out larger than its pages let expect. */
    private static final int TRIES = 5;
    private static final double CLOSER = 0.97;
    private static final String NAMED = "-package";

    private Packages() {
    }

    /** Takes files as they are made. */
    interface Sink {
        /** @return bytes taken */
        long take(String name, SafeFile.Content content) throws IOException;

        /** Gives up a file that was taken. */
        void drop(String name) throws IOException;
    }

    /**
     * Binds a package, in as many files as it is divided into.
     *
     * @return the names of its files
     */
    static List<String> bind(OpenJob job, Submittal submittal, Volumes volumes, Sink sink) throws UnusableInput, IOException {
        Contents contents = contents(job, submittal);
        double limit = volumes.limit();
        for (int tries = 1;; tries++) {
            Pages pages = SubmittalPages.of(contents, new Volumes(volumes.byKind(), (long) limit));
            List<String> names = new ArrayList<>();
            double worst = 0;
            for (int volume = 1; volume <= pages.volumes(); volume++) {
                PackagePlan plan = plan(job, submittal, pages, volume);
                String name = name(submittal, volume, pages.volumes());
                long size = sink.take(name, out -> Child.usual().assemble(plan, out));
                worst = isDivisible(pages, volume) ? Math.max(worst, size) : worst;
                names.add(name);
                if (volumes.limit() > 0 && worst > volumes.limit() && tries < TRIES) {
                    break;
                }
            }
            if (volumes.limit() == 0 || worst <= volumes.limit() || tries == TRIES) {
                return names;
            }
            for (String name : names) {
                sink.drop(name);
            }
            limit *= CLOSER * volumes.limit() / worst;
        }
    }

    /** Whether there is anything in a file that could go into another one. */
    private static boolean isDivisible(Pages pages, int volume) {
        return pages.volume(volume).stream().anyMatch(part -> !part.own() && part.pages() > 1)
            || pages.volume(volume).stream().filter(part -> !part.id().startsWith("volume/")).count() > 2;
    }

    private static String name(Submittal submittal, int volume, int of) {
        return submittal.id() + NAMED + (of == 1 ? "" : "-" + volume + "-of-" + of) + ".pdf";
    }

    /**
     * Parts that an earlier, other division of a package left beside its files. They may have been sent, so that they are never taken
     * away.
     */
    static List<Path> earlier(Submittal submittal, List<Path> files) throws IOException {
        Pattern ours = Pattern.compile(Pattern.quote(submittal.id() + NAMED) + "(-\\d+-of-\\d+)?\\.pdf");
        Set<String> names = files.stream().map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        try (Stream<Path> beside = Files.list(files.get(0).toAbsolutePath().getParent())) {
            return beside.filter(file -> ours.matcher(file.getFileName().toString()).matches()
                && !names.contains(file.getFileName().toString())).sorted().toList();
        }
    }

    private static Contents contents(OpenJob job, Submittal submittal) throws UnusableInput, IOException {
        List<RegisterItem> items = job.register(submittal.section()).stream()
            .filter(item -> item.isIn(submittal)).toList();
        List<Sheet> sheets = sheets(job, submittal);
        Optional<Submittal> last = job.submittal(submittal.replaces());
        Optional<Resubmittal> since = last.isEmpty() ? Optional.empty() : Optional.of(Reviews.since(job, last.get(), submittal));
        boolean delegated = items.stream().anyMatch(item -> item.sort() == RegisterItem.Sort.DELEGATED || item.sends().equals("calculation"));
        return new Contents(job.assembly(), submittal, items, job.compare(submittal), sheets,
            submittal.with().contains("worksheets") ? worksheets(job, submittal) : List.of(),
            submittal.with().contains("details") ? details(job) : List.of(), delegated ? job.calculated() : List.of(), last, since,
            found(job, submittal, sheets));
    }

    /** The worksheets that show the submittal's products to be enough. */
    private static List<Calculated> worksheets(OpenJob job, Submittal submittal) {
        Set<String> components = products(job, submittal).stream().map(ProductData::component).collect(Collectors.toSet());
        return job.calculated().stream().filter(calculated -> components.contains(calculated.worksheet().component())).toList();
    }

    private static List<ProductData> products(OpenJob job, Submittal submittal) {
        return submittal.products().stream().flatMap(id -> job.job().products().stream().filter(product -> product.id().equals(id))).toList();
    }

    private static List<Drawing> details(OpenJob job) throws UnusableInput {
        List<Drawing> all = new ArrayList<>();
        for (WallType wall : job.job().walls()) {
            all.addAll(job.details(wall.id()));
        }
        return all;
    }

    /** The sheets that a submittal's products name, and its certificates and reports, each once. */
    static List<Sheet> sheets(OpenJob job, Submittal submittal) throws IOException {
        Map<String, String> titles = new LinkedHashMap<>();
        for (ProductData product : products(job, submittal)) {
            if (!product.sheet().isEmpty()) {
                titles.putIfAbsent(product.sheet(), product.name() + (product.maker().isEmpty() ? "" : ", " + product.maker()));
            }
        }
        int data = titles.size();
        for (Paper paper : submittal.encloses().papers()) {
            titles.putIfAbsent(paper.file(), paper.title());
        }
        List<Measure> measures = Child.usual().measure(titles.keySet().stream().map(job.folder()::resolve).toList());
        List<Sheet> sheets = new ArrayList<>();
        for (Map.Entry<String, String> title : titles.entrySet()) {
            Measure measure = measures.get(sheets.size());
            sheets.add(new Sheet(title.getKey(), title.getValue(), measure.pages(), measure.problem(),
                sheets.size() < data ? PackageGroup.DATA : PackageGroup.REPORTS,
                measure.usable() ? Files.size(measure.sheet()) : 0));
        }
        return sheets;
    }

    /** Where chosen models and colours, and values without a place, stand on the sheets. */
    private static List<Found> found(OpenJob job, Submittal submittal, List<Sheet> sheets) throws IOException {
        Map<String, List<String>> wanted = new LinkedHashMap<>();
        for (ProductData product : products(job, submittal)) {
            List<String> words = SubmittalPages.wanted(product, submittal);
            if (!words.isEmpty() && sheets.stream().anyMatch(sheet -> sheet.id().equals(product.sheet()) && sheet.pages() > 0)) {
                wanted.computeIfAbsent(product.sheet(), sheet -> new ArrayList<>()).addAll(words);
            }
        }
        List<String> ids = List.copyOf(wanted.keySet());
        List<List<Spotted>> spotted = Child.usual().find(ids.stream().map(job.folder()::resolve).toList(),
            wanted.values().stream().map(words -> words.stream().distinct().toList()).toList());
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < ids.size(); i++) {
            for (Spotted one : spotted.get(i)) {
                found.add(new Found(ids.get(i), one.words(), one.page(), one.box()));
            }
        }
        return found;
    }

    private static PackagePlan plan(OpenJob job, Submittal submittal, Pages pages, int volume) {
        List<PackagePlan.Part> parts = new ArrayList<>();
        List<String> order = pages.parts().stream().filter(part -> !part.own()).map(Part::id).distinct().toList();
        Map<String, Integer> whole = pages.parts().stream().filter(part -> !part.own())
            .collect(Collectors.groupingBy(Part::id, Collectors.summingInt(Part::pages)));
        for (Part part : pages.volume(volume)) {
            if (part.own()) {
                parts.add(PackagePlan.Part.own(part.title(), part.level(), part.firstPage(), part.pages()));
                continue;
            }
            String where = pages.volumes() == 1 ? "Package page {package page} of " + pages.total(volume)
                : "Package part " + volume + " of " + pages.volumes() + ", page {package page} of " + pages.total(volume);
            parts.add(new PackagePlan.Part(part.title(), part.level(), part.firstPage(), part.pages(),
                Optional.of(new PackagePlan.Sheet(job.folder().resolve(part.id()), whole.get(part.id()))),
                "Sheet " + (order.indexOf(part.id()) + 1) + ", page {page} of " + whole.get(part.id()) + " · Submittal " + submittal.id()
                + " · " + where, spots(pages, part)));
        }
        List<PackagePlan.Link> links = pages.links().stream().filter(link -> pages.volume(volume).stream().anyMatch(part -> part.own()
            && link.page() >= part.firstPage() && link.page() < part.firstPage() + part.pages()))
            .map(link -> link(submittal, pages, link, volume)).toList();
        return new PackagePlan(job.job().title() + ", submittal " + submittal.id() + (pages.volumes() == 1 ? ""
            : ", part " + volume + " of " + pages.volumes()), pages.pdf(), parts, links);
    }

    private static List<PackagePlan.Spot> spots(Pages pages, Part part) {
        return pages.spots().stream().filter(spot -> spot.sheet().equals(part.id()) && spot.page() >= part.firstPage()
            && spot.page() < part.firstPage() + part.pages())
            .map(spot -> new PackagePlan.Spot(spot.page(), spot.box(), spot.number())).toList();
    }

    private static PackagePlan.Link link(Submittal submittal, Pages pages, LinkBox link, int volume) {
        Part target = pages.holding(link.target(), link.targetPage());
        int page = target.packagePage() + link.targetPage() - (target.own() ? 1 : target.firstPage());
        boolean here = target.volume() == volume;
        return new PackagePlan.Link(link.page(), link.box(), page, here ? link.at() : Optional.empty(),
            here ? "" : name(submittal, target.volume(), pages.volumes()));
    }
}
