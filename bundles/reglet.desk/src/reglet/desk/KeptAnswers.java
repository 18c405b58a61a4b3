package reglet.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;

import reglet.desk.Confirming.Answer;
import reglet.desk.Confirming.Proposal;
import reglet.model.Box;
import reglet.model.Pack;
import reglet.model.SheetReading.Found;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;

/**
 * A person's answers about a sheet that are not written yet, as one text, so that they can be kept and given again when the sheet is
 * opened later. Answers that fit no longer, such as those about a value that is read no more, are left out.
 *
 * @param component what the sheet was taken to be of
 * @param model     the model that was chosen; ""
 * @param product   id of the product data
 */
public record KeptAnswers(String component, String model, String product, List<JsonObject> answers) {
    private static final int NAME = 24;

    public KeptAnswers {
        answers = List.copyOf(answers);
    }

    /** What a sheet is kept by: its content, wherever it lies. */
    public static String name(Path sheet) throws IOException {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(sheet));
            return HexFormat.of().formatHex(digest).substring(0, NAME);
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException(absent);
        }
    }

    /** The answers as a text; "" when all that was answered is in the job. */
    public static String text(Confirming confirming) {
        JsonArray answers = new JsonArray();
        confirming.proposals().stream().filter(one -> one.goes() && !one.isHeld() || one.answer() == Answer.LEFT_OUT)
            .forEach(proposal -> answers.add(answer(proposal)));
        if (answers.isEmpty()) {
            return "";
        }
        JsonObject all = new JsonObject();
        all.addProperty("component", confirming.reading().component());
        all.addProperty("model", confirming.model());
        all.addProperty("product", confirming.product());
        all.add("answers", answers);
        return all.toString();
    }

    private static JsonObject answer(Proposal proposal) {
        SheetValue value = proposal.value();
        JsonObject one = new JsonObject();
        one.addProperty("property", proposal.property());
        one.addProperty("answer", proposal.answer() == Answer.LEFT_OUT ? "left out" : proposal.found().label().isEmpty() ? "added"
            : proposal.answer() == Answer.TAKEN ? "taken" : "corrected");
        one.addProperty("read", read(proposal.found()));
        one.addProperty("value", value.value().text());
        one.addProperty("method", value.method());
        one.addProperty("page", value.page());
        value.box().ifPresent(box -> {
            JsonArray place = new JsonArray();
            List.of(box.x(), box.y(), box.width(), box.height()).forEach(place::add);
            one.add("box", place);
        });
        return one;
    }

    /** What tells the values apart that a sheet states of one property. */
    private static String read(Found found) {
        return found.value().page() + " " + found.label() + " " + found.value().value().text() + " " + found.value().method();
    }

    /** The answers of a kept text; empty when it holds none. */
    public static Optional<KeptAnswers> of(String text) {
        try {
            JsonObject all = JsonParser.parseString(text).getAsJsonObject();
            return Optional.of(new KeptAnswers(all.get("component").getAsString(), all.get("model").getAsString(),
                all.get("product").getAsString(), all.getAsJsonArray("answers").asList().stream().map(JsonElement::getAsJsonObject)
                    .toList()));
        } catch (JsonParseException | IllegalStateException | NullPointerException | ClassCastException | UnsupportedOperationException
            spoilt) {
            return Optional.empty();
        }
    }

    /** Whether they are answers about what somebody goes through now: the same component and model. */
    public boolean isAbout(Confirming confirming) {
        return component.equals(confirming.reading().component()) && model.equals(confirming.model());
    }

    /** The answers given again. */
    public Confirming again(OpenJob job, Confirming fresh) {
        Confirming now = (product.isEmpty() ? fresh : fresh.named(product)).beside(job);
        for (JsonObject answer : answers) {
            try {
                now = again(job.pack(), now, answer);
            } catch (UnusableInput | NullPointerException | ClassCastException | NumberFormatException fitsNoLonger) {
                // the value is open again, as one that was never answered
            }
        }
        return now;
    }

    private static Confirming again(Pack pack, Confirming before, JsonObject answer) throws UnusableInput {
        String property = answer.get("property").getAsString();
        String value = answer.get("value").getAsString();
        String kind = answer.get("answer").getAsString();
        if (kind.equals("added")) {
            List<Double> box = answer.getAsJsonArray("box").asList().stream().map(JsonElement::getAsDouble).toList();
            return shown(before.add(pack, property, value, answer.get("page").getAsInt(), new Box(box.get(0), box.get(1), box.get(2),
                box.get(3))), property, answer);
        }
        String read = answer.get("read").getAsString();
        Optional<Proposal> proposal = before.proposals().stream().filter(one -> one.property().equals(property)).findFirst();
        Optional<Found> instead = proposal.stream().flatMap(one -> one.found().also().stream())
            .filter(one -> read(one).equals(read)).findFirst();
        if (proposal.isEmpty() || instead.isEmpty() && !read(proposal.get().found()).equals(read)) {
            return before;
        }
        Confirming now = instead.map(other -> before.takeInstead(property, other)).orElse(before);
        return switch (kind) {
            case "taken" -> now.take(property);
            case "left out" -> now.leaveOut(property);
            case "corrected" -> shown(now.correct(pack, property, value), property, answer);
            default -> before;
        };
    }

    /** With the standard that the value is shown by, where that was said too. */
    private static Confirming shown(Confirming now, String property, JsonObject answer) {
        String method = answer.get("method").getAsString();
        boolean same = now.proposals().stream().anyMatch(one -> one.property().equals(property) && one.value().method().equals(method));
        return same ? now : now.shownBy(property, method);
    }
}
