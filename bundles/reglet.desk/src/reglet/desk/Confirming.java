package reglet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

import reglet.model.Box;
import reglet.model.Dates;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.ProductData;
import reglet.model.Property;
import reglet.model.PropertyType;
import reglet.model.SheetReading;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.Unit;
import reglet.model.UnusableInput;
import reglet.model.Value;
import reglet.reading.Child;
import reglet.reading.Measure;

/**
 * A person going through what a sheet was read to say: each proposal is taken, corrected or left out, and what is taken goes into the
 * product data of a job. What a person confirmed before stays as it is until it is taken anew. Immutable: every step gives another one.
 *
 * @param sheet     the file
 * @param reading   what it was read to say
 * @param model     the model that is meant; ""
 * @param product   id of the product data
 * @param proposals in the order of the sheet
 */
public record Confirming(Path sheet, SheetReading reading, String model, String product, List<Proposal> proposals) {
    /** Proposals at least so sure are taken together by {@link #takeSure()}. */
    public static final double SURE = 0.9;

    public Confirming {
        proposals = List.copyOf(proposals);
    }

    /** What a person says of a proposal. */
    public enum Answer {
        OPEN, TAKEN, CORRECTED, LEFT_OUT, HELD
    }

    /**
     * A value proposed.
     *
     * @param found  as the sheet was read, with its page, box, confidence and doubt
     * @param value  the value that would be written: as read, or as corrected
     * @param before what the product data hold of this property; empty when they hold nothing
     * @param answer held: the product data hold another value that a person confirmed, which stays unless this one is taken
     */
    public record Proposal(Found found, SheetValue value, Optional<SheetValue> before, Answer answer) {
        public String property() {
            return found.value().property();
        }

        /** Whether it is written. */
        public boolean goes() {
            return answer == Answer.TAKEN || answer == Answer.CORRECTED;
        }

        /** Whether the product data hold it as it stands, confirmed. */
        public boolean isHeld() {
            return before.filter(SheetValue::confirmed).filter(held -> same(held, value)).isPresent();
        }

        private Proposal answered(Answer next) {
            return new Proposal(found, found.value(), before, next);
        }
    }

    /**
     * Starts with nothing taken but what the product data hold already, confirmed and the same.
     *
     * @param id id of the product data; "" for one made from the product's name
     * @throws UnusableInput when the sheet tells models apart and none of them is named
     */
    public static Confirming of(OpenJob job, Path sheet, SheetReading reading, String model, String id) throws UnusableInput {
        DataSheets.Confirmed all = DataSheets.ofModel(sheet, reading, model, id);
        String product = id.isEmpty() ? DataSheets.id(reading, model, sheet) : id;
        Optional<ProductData> held = held(job, product);
        return new Confirming(sheet, reading, model, product, all.values().stream().map(found -> {
            Optional<SheetValue> before = held(held, found.value().property());
            return new Proposal(found, found.value(), before, answer(before, found.value()));
        }).toList());
    }

    private static Optional<ProductData> held(OpenJob job, String product) {
        return job.job().products().stream().filter(one -> one.id().equals(product)).findFirst();
    }

    private static Optional<SheetValue> held(Optional<ProductData> product, String property) {
        return product.flatMap(one -> one.values().stream().filter(value -> value.property().equals(property)).findFirst());
    }

    /** What is so before a person says anything. */
    private static Answer answer(Optional<SheetValue> before, SheetValue value) {
        return before.filter(SheetValue::confirmed).map(held -> same(held, value) ? Answer.TAKEN : Answer.HELD).orElse(Answer.OPEN);
    }

    private static boolean same(SheetValue one, SheetValue other) {
        return one.value().equals(other.value()) && one.compare().equals(other.compare()) && one.method().equals(other.method())
            && one.edition().equals(other.edition());
    }

    /** Takes a value as it was read. */
    public Confirming take(String property) {
        return with(property, proposal -> proposal.answered(Answer.TAKEN));
    }

    /** Takes one of the other values that the sheet states of the same property; what was proposed stands beside it then. */
    public Confirming takeInstead(String property, Found other) {
        return with(property, proposal -> {
            List<Found> beside = new ArrayList<>();
            Found now = proposal.found;
            beside.add(new Found(now.value(), now.label(), now.model(), now.confidence(), now.doubt()));
            now.also().stream().filter(one -> one != other).forEach(beside::add);
            return now.also().stream().noneMatch(one -> one == other) ? proposal : new Proposal(new Found(other.value(), other.label(),
                other.model(), other.confidence(), other.doubt(), beside), other.value(), proposal.before, Answer.TAKEN);
        });
    }

    /** Takes all open ones that are sure and raise no doubt. */
    public Confirming takeSure() {
        return new Confirming(sheet, reading, model, product, proposals.stream().map(proposal -> proposal.answer == Answer.OPEN
            && proposal.found.confidence() >= SURE && proposal.found.doubt().isEmpty() ? proposal.answered(Answer.TAKEN) : proposal)
            .toList());
    }

    /** Takes all that are open. */
    public Confirming takeOpen() {
        return new Confirming(sheet, reading, model, product, proposals.stream().map(proposal -> proposal.answer == Answer.OPEN
            ? proposal.answered(Answer.TAKEN) : proposal).toList());
    }

    /** Leaves a value out; what the product data hold of it stays. */
    public Confirming leaveOut(String property) {
        return with(property, proposal -> proposal.answered(Answer.LEFT_OUT));
    }

    /**
     * Takes another value in place of the one read; page and box stay.
     *
     * @throws UnusableInput when the text is no value of the property
     */
    public Confirming correct(Pack pack, String property, String text) throws UnusableInput {
        Value value = typed(pack, property, text);
        return with(property, proposal -> {
            SheetValue read = proposal.found.value();
            return new Proposal(proposal.found, new SheetValue(property, value, read.compare(), proposal.value.method(), read.edition(),
                text, read.page(), read.box(), true), proposal.before, Answer.CORRECTED);
        });
    }

    private static Value typed(Pack pack, String property, String text) throws UnusableInput {
        PropertyType type = pack.property(property).map(Property::type).orElseThrow(() -> new UnusableInput(new Problem(Place.of(property),
            "the pack has no such property", "")));
        return type.read(type.written(text.strip())).orElseThrow(() -> new UnusableInput(new Problem(Place.of(property),
            "\"" + text.strip() + "\" is no value of it", expected(type, text))));
    }

    private static String expected(PropertyType type, String text) {
        if (type.kind() == PropertyType.Kind.DATE) {
            return Dates.expected(text);
        }
        return type.words().isEmpty() ? type.unit().filter(unit -> unit != Unit.ONE)
            .map(unit -> "expected " + unit.dimension().withArticle() + " with its unit, such as 1 " + unit.symbol())
            .orElse("expected a number") : "expected one of: " + String.join(", ", type.words());
    }

    /** Says by which standard the sheet shows a value, where that was read wrongly or not at all; "" for none. */
    public Confirming shownBy(String property, String standard) {
        return with(property, proposal -> {
            SheetValue now = proposal.value;
            return new Proposal(proposal.found, new SheetValue(property, now.value(), now.compare(), standard.strip(), standard.strip()
                .equals(now.method()) ? now.edition() : "", now.text(), now.page(), now.box(), true), proposal.before, Answer.CORRECTED);
        });
    }

    /**
     * Adds a value that was not read, or not as one of this property, as a person sees it on the page.
     *
     * @param page from 1
     * @param box  where it stands on the page
     * @throws UnusableInput when the text is no value of the property
     */
    public Confirming add(Pack pack, String property, String text, int page, Box box) throws UnusableInput {
        SheetValue value = new SheetValue(property, typed(pack, property, text), Optional.empty(), "", "", text.strip(), page,
            Optional.of(box), true);
        Optional<SheetValue> before = proposals.stream().filter(one -> one.property().equals(property)).findFirst()
            .flatMap(Proposal::before);
        List<Proposal> all = new ArrayList<>(proposals.stream().filter(one -> !one.property().equals(property)).toList());
        all.add(new Proposal(new Found(value, "", model, 1, ""), value, before, Answer.CORRECTED));
        return new Confirming(sheet, reading, model, product, all);
    }

    /** The same answers beside what another state of the job holds, such as after writing, or after that was taken back. */
    public Confirming beside(OpenJob job) {
        Optional<ProductData> held = held(job, product);
        return new Confirming(sheet, reading, model, product, proposals.stream().map(proposal -> {
            Optional<SheetValue> before = held(held, proposal.property());
            boolean asked = proposal.answer == Answer.OPEN || proposal.answer == Answer.HELD;
            return new Proposal(proposal.found, proposal.value, before, asked ? answer(before, proposal.value) : proposal.answer);
        }).toList());
    }

    /** The same answers for product data of another id. */
    public Confirming named(String id) {
        return new Confirming(sheet, reading, model, id, proposals);
    }

    private Confirming with(String property, UnaryOperator<Proposal> change) {
        return new Confirming(sheet, reading, model, product, proposals.stream().map(proposal -> proposal.property().equals(property)
            ? change.apply(proposal) : proposal).toList());
    }

    /** What is written when the person is done. */
    public List<Proposal> going() {
        return proposals.stream().filter(Proposal::goes).toList();
    }

    /**
     * Writes what is taken, and the conditions of use of a report, into the job.
     *
     * @return the job as it is read afterwards
     * @throws UnusableInput when nothing is taken, or another product or sheet of that name is in the way
     */
    public OpenJob write(OpenJob job) throws UnusableInput, IOException {
        return DataSheets.confirm(job, sheet, reading, new DataSheets.Confirmed(product, model, going().stream()
            .map(proposal -> proposal.found.with(proposal.value)).toList()));
    }

    /**
     * A page of a sheet as it looks.
     *
     * @param page from 1
     * @param dpi  dots per inch; very large pages come more coarsely
     * @return a PNG
     * @throws UnusableInput when the sheet can't be opened or has no such page
     */
    public static byte[] picture(Path sheet, int page, int dpi) throws UnusableInput, IOException {
        return Child.usual().picture(sheet, page, dpi);
    }

    /**
     * How many pages a sheet has.
     *
     * @throws UnusableInput when it can't be opened
     */
    public static int pages(Path sheet) throws UnusableInput, IOException {
        Measure measure = Child.usual().measure(List.of(sheet)).get(0);
        if (!measure.usable()) {
            throw new UnusableInput(new Problem(Place.of(sheet.toString()), measure.problem(), "expected a PDF that can be opened"));
        }
        return measure.pages();
    }

    /** Lines for a terminal: what is taken, how sure it is, and what stays. */
    public String table() {
        StringBuilder table = new StringBuilder();
        for (Proposal proposal : proposals) {
            SheetValue value = proposal.value;
            table.append(String.format(Locale.ROOT, "%-9s %-34s %-26s %-24s page %d  %3d%%", word(proposal.answer), value.property(),
                value.compare().map(sense -> sense.text() + " ").orElse("") + value.value().text(), value.method(), value.page(),
                Math.round(proposal.found.confidence() * 100)));
            proposal.before.filter(held -> !same(held, value)).ifPresent(held -> table.append("  held: ").append(held.value().text()));
            table.append(proposal.found.doubt().isEmpty() ? "" : "  " + proposal.found.doubt()).append('\n');
            proposal.found.also().forEach(one -> table.append(String.format(Locale.ROOT, "%-9s %-34s %-26s %-24s page %d%n", "also", "",
                one.value().compare().map(sense -> sense.text() + " ").orElse("") + one.value().value().text(), one.value().method(),
                one.value().page()).replace("\r", "")));
        }
        return table.toString().replaceAll("(?m) +$", "");
    }

    private static String word(Answer answer) {
        return switch (answer) {
            case TAKEN -> "takes";
            case CORRECTED -> "corrected";
            case HELD -> "keeps";
            default -> "leaves";
        };
    }
}
