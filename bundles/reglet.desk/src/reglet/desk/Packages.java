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
import java.util.function.Consumer;
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
import reglet.model.Office;
import reglet.model.ProductData;
import reglet.model.RegisterItem;
import reglet.model.Resubmittal;
import reglet.model.Submittal;
import reglet.model.UnusableInput;
import reglet.model.WallType;
import reglet.reading.Child;
import reglet.reading.Measure;
import reglet.reading.OpenedSheets;
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

    /**
     * A file that is larger than it should be.
     *
     * @param holds     what is in it: "page 3 of sheets/mat.pdf"
     * @param divisible whether its pages could have been divided further
     */
    record Larger(String file, long bytes, String holds, boolean divisible) {
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
     * @param office whose letterhead our own pages bear
     * @param tells  hears of files that are larger than they should be
     */
    static void bind(OpenJob job, Submittal submittal, Volumes volumes, Office office, Sink sink, Consumer<Larger> tells)
        throws UnusableInput, IOException {
        List<Named> named = named(job, submittal);
        try (OpenedSheets opened = Child.usual().open(files(job, named), named.stream().map(sheet -> wanted(job, submittal, sheet))
            .toList())) {
            bind(job, submittal, volumes, office, contents(job, submittal, sheets(named, opened.measures()), found(named, opened)), opened,
                sink).forEach(tells);
        }
    }

    private static List<Larger> bind(OpenJob job, Submittal submittal, Volumes volumes, Office office, Contents contents,
            OpenedSheets opened, Sink sink) throws UnusableInput, IOException {
        double limit = volumes.limit();
        for (int tries = 1;; tries++) {
            Pages pages = SubmittalPages.of(contents, new Volumes(volumes.byKind(), (long) limit), office);
            List<String> names = new ArrayList<>();
            List<Larger> larger = new ArrayList<>();
            double worst = 0;
            for (int volume = 1; volume <= pages.volumes(); volume++) {
                PackagePlan plan = plan(job, submittal, pages, volume);
                String name = name(submittal, volume, pages.volumes());
                long size = sink.take(name, out -> opened.assemble(plan, out));
                worst = isDivisible(pages, volume) ? Math.max(worst, size) : worst;
                names.add(name);
                if (volumes.limit() > 0 && size > volumes.limit()) {
                    larger.add(new Larger(name, size, held(pages, volume), isDivisible(pages, volume)));
                }
                if (volumes.limit() > 0 && worst > volumes.limit() && tries < TRIES) {
                    break;
                }
            }
            if (volumes.limit() == 0 || worst <= volumes.limit() || tries == TRIES) {
                return larger;
            }
            for (String name : names) {
                sink.drop(name);
            }
            limit *= CLOSER * volumes.limit() / worst;
        }
    }

    /** Whether there is anything in a file that could go into another one; a sheet's first page stays with its divider. */
    private static boolean isDivisible(Pages pages, int volume) {
        List<Part> parts = pages.volume(volume).stream().filter(part -> !part.isCover()).toList();
        return parts.stream().anyMatch(part -> part.pages() > 1) || parts.stream().filter(Part::own).count() > 1
            || parts.stream().filter(part -> !part.own()).count() > 1;
    }

    private static String held(Pages pages, int volume) {
        return pages.volume(volume).stream().filter(part -> !part.isCover()).map(part -> part.own() ? "\"" + part.title() + "\""
            : (part.pages() == 1 ? "page " + part.within() : "pages " + part.within() + " to " + (part.within() + part.pages() - 1))
            + " of " + part.id()).collect(Collectors.joining(" and "));
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

    private static Contents contents(OpenJob job, Submittal submittal, List<Sheet> sheets, List<Found> found)
        throws UnusableInput, IOException {
        List<RegisterItem> items = job.register(submittal.section()).stream()
            .filter(item -> item.isIn(submittal)).toList();
        Optional<Submittal> last = job.submittal(submittal.replaces());
        Optional<Resubmittal> since = last.isEmpty() ? Optional.empty() : Optional.of(Reviews.since(job, last.get(), submittal));
        boolean delegated = items.stream().filter(RegisterItem::isDue)
            .anyMatch(item -> item.sort() == RegisterItem.Sort.DELEGATED || item.sends().equals("calculation"));
        return new Contents(job.assembly(), submittal, items, job.compare(submittal), sheets,
            submittal.with().contains("worksheets") ? worksheets(job, submittal) : List.of(),
            submittal.with().contains("details") ? details(job) : List.of(), delegated ? job.calculated() : List.of(), last, since,
            found);
    }

    /** The worksheets that show the submittal's products to be enough. */
    private static List<Calculated> worksheets(OpenJob job, Submittal submittal) {
        Set<String> components = products(job, submittal).stream().map(ProductData::component).collect(Collectors.toSet());
        return job.calculated().stream().filter(calculated -> components.contains(calculated.worksheet().component())).toList();
    }

    private static List<ProductData> products(OpenJob job, Submittal submittal) {
        return submittal.products().stream().flatMap(id -> job.job().products().stream()
            .filter(product -> product.id().equals(id))).toList();
    }

    private static List<Drawing> details(OpenJob job) throws UnusableInput {
        List<Drawing> all = new ArrayList<>();
        for (WallType wall : job.job().walls()) {
            all.addAll(job.details(wall.id()));
        }
        return all;
    }

    /** A sheet that a submittal's products name, or one of its certificates and reports. */
    record Named(String id, String title, PackageGroup group) {
    }

    /** What a submittal binds in, each file once. */
    static List<Named> named(OpenJob job, Submittal submittal) {
        Map<String, Named> named = new LinkedHashMap<>();
        for (ProductData product : products(job, submittal)) {
            if (!product.sheet().isEmpty()) {
                named.putIfAbsent(product.sheet(), new Named(product.sheet(), product.name() + (product.maker().isEmpty() ? ""
                    : ", " + product.maker()), PackageGroup.DATA));
            }
        }
        for (Paper paper : submittal.encloses().papers()) {
            named.putIfAbsent(paper.file(), new Named(paper.file(), paper.title(), PackageGroup.REPORTS));
        }
        return List.copyOf(named.values());
    }

    static List<Path> files(OpenJob job, List<Named> named) {
        return named.stream().map(sheet -> job.folder().resolve(sheet.id())).toList();
    }

    /** @param measures one for each that is named */
    static List<Sheet> sheets(List<Named> named, List<Measure> measures) throws IOException {
        List<Sheet> sheets = new ArrayList<>();
        for (Named one : named) {
            Measure measure = measures.get(sheets.size());
            sheets.add(new Sheet(one.id(), one.title(), measure.pages(), measure.problem(), one.group(),
                measure.usable() ? Files.size(measure.sheet()) : 0));
        }
        return sheets;
    }

    /** What is looked for on a sheet: chosen models and colours, and values without a place. */
    private static List<String> wanted(OpenJob job, Submittal submittal, Named sheet) {
        return products(job, submittal).stream().filter(product -> product.sheet().equals(sheet.id()))
            .flatMap(product -> SubmittalPages.wanted(product, submittal).stream()).distinct().toList();
    }

    private static List<Found> found(List<Named> named, OpenedSheets opened) {
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < named.size(); i++) {
            for (Spotted one : opened.measures().get(i).usable() ? opened.found().get(i) : List.<Spotted>of()) {
                found.add(new Found(named.get(i).id(), one.words(), one.page(), one.box()));
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
        int page = target.packagePage() + link.targetPage() - target.within();
        boolean here = target.volume() == volume;
        return new PackagePlan.Link(link.page(), link.box(), page, here ? link.at() : Optional.empty(),
            here ? "" : name(submittal, target.volume(), pages.volumes()));
    }
}
