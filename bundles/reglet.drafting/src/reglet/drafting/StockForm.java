package reglet.drafting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import reglet.drafting.Form.Grid;
import reglet.model.Assembly;
import reglet.model.Choice;
import reglet.model.Component;
import reglet.model.ExtraStock;
import reglet.model.Numbers;
import reglet.model.Numbers.Side;
import reglet.model.Option;
import reglet.model.Property;
import reglet.model.Quantity;
import reglet.model.RegisterFile;
import reglet.model.Unit;
import reglet.model.Value;
import reglet.model.WallType;
import reglet.model.Worksheet;
import reglet.model.Worksheet.Amount;

/** What is left with the owner: a share of what is ordered, in whole packages, with all that it is made from. */
final class StockForm {
    private static final int FIGURES = 4;
    private static final int COLUMNS = 9;
    /** Two empty lines, so that there is room to write. */
    private static final String ROOM = "\u00A0\n\u00A0";
    /** Lines to fill in by hand where no quantity is known. */
    private static final int BLANK_ROWS = 3;
    /** So that a share that fills packages exactly takes no package more because of binary fractions. */
    private static final double HAIR = 1e-9;

    private StockForm() {
    }

    /** Empty where the pack leaves nothing with the owner. */
    static Optional<Form> of(Assembly assembly, List<Worksheet> quantities) {
        List<List<String>> rows = new ArrayList<>();
        List<String> texts = new ArrayList<>(List.of("The share is taken of what is ordered, waste included, and rounded up to whole "
            + "packages. Different kinds, shapes and colours are left apart; what is ordered in several colours is shared out by hand."));
        for (ExtraStock stock : assembly.pack().stock()) {
            rows(assembly, stock, quantities, rows);
        }
        List<String> without = assembly.job().walls().stream().map(WallType::id)
            .filter(wall -> quantities.stream().noneMatch(worksheet -> worksheet.wall().equals(wall))).toList();
        if (!without.isEmpty()) {
            texts.add("■ Without quantities, and not counted here: " + String.join(", ", without) + ".");
        }
        assembly.pack().stock().stream().filter(stock -> !assembly.job().register().packages().containsKey(stock.name()))
            .forEach(stock -> texts.add("A package of " + stock.pack().text() + " is usual and was not set for this job ("
                + stock.basis().stream().map(basis -> basis.at() + ", " + basis.known().text()).collect(Collectors.joining("; "))
                + "); ask the maker, and write it into " + RegisterFile.NAME + " as \"packages: {" + stock.name() + ": …}\"."));
        if (assembly.pack().stock().isEmpty()) {
            return Optional.empty();
        }
        if (rows.isEmpty()) {
            rows.addAll(Collections.nCopies(BLANK_ROWS, Collections.nCopies(COLUMNS, ROOM)));
        }
        return Optional.of(new Form("extra-stock", "Extra stock", texts,
            List.of(new Grid(List.of("Material", "Kind", "Ordered", "Share", "To be left", "A package", "Packages", "Handed over, date",
                "Received by"), List.of(80, 130, 130, 60, 72, 60, 50, 70, 70), rows)), List.of("Contractor", "Owner")));
    }

    private static void rows(Assembly assembly, ExtraStock stock, List<Worksheet> quantities, List<List<String>> rows) {
        Optional<Quantity> share = share(assembly, stock.share());
        Map<List<String>, List<Worksheet>> kinds = new LinkedHashMap<>();
        for (Worksheet worksheet : quantities) {
            Optional<Choice> choice = assembly.job().wall(worksheet.wall()).flatMap(wall -> wall.choice(stock.component()));
            Amount amount = worksheet.results().get(stock.name());
            if (choice.isPresent() && amount != null && amount.si() > 0 && amount.unit().dimension() == stock.pack().dimension()) {
                List<Worksheet> same = kinds.computeIfAbsent(choice.get().accept(), accept -> new ArrayList<>());
                // a wall with alternatives has a worksheet for each; the most that one of them orders counts
                Optional<Worksheet> other = same.stream().filter(found -> found.wall().equals(worksheet.wall())).findFirst();
                if (other.isEmpty()) {
                    same.add(worksheet);
                } else if (other.get().results().get(stock.name()).si() < amount.si()) {
                    same.set(same.indexOf(other.get()), worksheet);
                }
            }
        }
        Quantity pack = assembly.job().register().packages().getOrDefault(stock.name(), stock.pack());
        kinds.forEach((accept, worksheets) -> share.ifPresent(part -> {
            List<Amount> amounts = worksheets.stream().map(worksheet -> worksheet.results().get(stock.name())).toList();
            Unit unit = amounts.get(0).unit();
            double ordered = amounts.stream().mapToDouble(Amount::si).sum();
            double left = ordered * part.si();
            String sum = worksheets.stream()
                .map(worksheet -> worksheet.wall() + " " + text(worksheet.results().get(stock.name()).si(), unit))
                .collect(Collectors.joining(" + "));
            rows.add(List.of(amounts.get(0).label(), kind(assembly, stock.component(), accept),
                worksheets.size() == 1 ? sum : sum + " = " + text(ordered, unit), part.text(), text(left, unit), pack.text(),
                String.valueOf(packages(left, pack.si())), "", ""));
        }));
    }

    /** Whole packages for an amount. */
    static long packages(double amount, double pack) {
        return (long) Math.ceil(amount / pack - HAIR);
    }

    private static Optional<Quantity> share(Assembly assembly, String path) {
        int dot = path.indexOf('.');
        Optional<Value> set = assembly.job().fact(path.substring(0, dot), path.substring(dot + 1));
        return set.or(() -> assembly.pack().property(path).flatMap(Property::usual)).filter(Quantity.class::isInstance)
            .map(Quantity.class::cast);
    }

    private static String text(double si, Unit unit) {
        return new Quantity(si, unit, Numbers.significant(unit.fromSi(si), FIGURES, Side.UP)).text();
    }

    private static String kind(Assembly assembly, String component, List<String> accept) {
        Component found = assembly.pack().component(component).orElseThrow();
        return Phrases.list(accept.stream().map(option -> found.option(option).map(Option::title).orElse(option)).toList(), "or");
    }
}
