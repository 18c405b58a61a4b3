package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

import reglet.desk.Confirming;
import reglet.desk.Confirming.Answer;
import reglet.desk.KeptAnswers;
import reglet.desk.OpenJob;
import reglet.model.ProductData;
import reglet.model.SheetReading;
import reglet.model.SheetValue;
import reglet.model.UnusableInput;
import reglet.workbench.Marks;

/**
 * The sheet that is gone through, as far as it has come. Immutable.
 *
 * @param file       null for none
 * @param origin     the file that was opened: the same, or the one that the job's was copied from
 * @param place      what answers about it are kept by; "" while that isn't known
 * @param reading    empty while it is being read, or when it could not be
 * @param model      the model chosen; "" for none
 * @param confirming what the person said so far; empty until a model is chosen where there are several
 * @param pages      how many it has; 0 while that isn't known
 * @param why        why it could not be read; ""
 */
record Sheet(Path file, Path origin, String place, Optional<SheetReading> reading, String model, Optional<Confirming> confirming, int pages,
        String why) {
    static final Sheet NONE = new Sheet(null, null, "", Optional.empty(), "", Optional.empty(), 0, "");

    static Sheet reading(Path file) {
        return new Sheet(file, file, "", Optional.empty(), "", Optional.empty(), 0, "");
    }

    Sheet placed(String where) {
        return new Sheet(file, origin, where, reading, model, confirming, pages, why);
    }

    Sheet refused(String reason) {
        return new Sheet(file, origin, place, Optional.empty(), "", Optional.empty(), 0, reason);
    }

    /** It was read. The model that the job's product data name is chosen again, and the only one where there is one. */
    Sheet read(OpenJob job, SheetReading read) {
        List<String> models = read.models();
        String before = product(job, file).map(ProductData::model).filter(models::contains).orElse("");
        String chosen = models.size() == 1 ? models.get(0) : before;
        return new Sheet(file, origin, place, Optional.of(read), "", Optional.empty(), 0, "").model(job, chosen);
    }

    /** The same, when it is known how many pages it has. */
    Sheet paged(int count) {
        return new Sheet(file, origin, place, reading, model, confirming, count, why);
    }

    boolean needsModel() {
        return reading.map(read -> !read.models().isEmpty()).orElse(false) && model.isEmpty();
    }

    Sheet model(OpenJob job, String name) {
        SheetReading read = reading.orElseThrow();
        if (name.isEmpty() && !read.models().isEmpty()) {
            return new Sheet(file, origin, place, reading, "", Optional.empty(), pages, "");
        }
        try {
            String id = product(job, file).filter(one -> one.component().equals(read.component()) && (name.isEmpty() || one.model()
                .isEmpty() || one.model().equals(name))).map(ProductData::id).orElse("");
            return new Sheet(file, origin, place, reading, name, Optional.of(Confirming.of(job, file, read, name, id)), pages, "");
        } catch (UnusableInput unusable) {
            return refused(unusable.getMessage());
        }
    }

    /** The answers kept of it, given again where they are about the same component and model. */
    Sheet again(OpenJob job, KeptAnswers kept) {
        Sheet chosen = needsModel() && reading.orElseThrow().models().contains(kept.model()) ? model(job, kept.model()) : this;
        return chosen.with(one -> kept.isAbout(one) ? kept.again(job, one) : one);
    }

    /** The answers under another name. */
    Sheet product(OpenJob job, String id) {
        return id.isEmpty() ? this : with(one -> one.named(id).beside(job));
    }

    /**
     * The answers beside what the job holds now. A sheet from elsewhere that was copied into the job is that copy from then on, until the
     * copy is taken back.
     */
    Sheet beside(OpenJob job) {
        Path copy = confirming.flatMap(one -> job.job().products().stream().filter(product -> product.id().equals(one.product())
            && !product.sheet().isEmpty()).findFirst()).map(product -> job.folder().resolve(product.sheet()).normalize()).orElse(origin);
        Path now = origin != null && !origin.startsWith(job.folder()) && copy.getFileName().equals(origin.getFileName()) ? copy : origin;
        return new Sheet(now, origin, place, reading, model, confirming.map(one -> new Confirming(now, one.reading(), one.model(),
            one.product(), one.proposals()).beside(job)), pages, why);
    }

    Sheet with(UnaryOperator<Confirming> change) {
        return new Sheet(file, origin, place, reading, model, confirming.map(change), pages, why);
    }

    /** The product data whose values came from a sheet. */
    static Optional<ProductData> product(OpenJob job, Path file) {
        return job.job().products().stream().filter(product -> !product.sheet().isEmpty() && job.folder().resolve(product.sheet())
            .normalize().equals(file)).findFirst();
    }

    /** A sheet in a list: its name, and what the job holds of it. */
    static String title(OpenJob job, Path file) {
        long confirmed = product(job, file).map(product -> product.values().stream().filter(SheetValue::confirmed).count()).orElse(0L);
        String where = file.startsWith(job.folder()) ? "" : ", in " + file.getParent();
        return file.getFileName() + where + product(job, file).map(product -> "  ·  " + product.name() + ", " + Marks.number(confirmed,
            "value") + " confirmed").orElse("  ·  nothing confirmed yet");
    }

    /** How it stands, in words. */
    String words() {
        if (!why.isEmpty()) {
            return "≠ " + why;
        }
        SheetReading read = reading.orElse(null);
        if (read == null) {
            return "Reading " + file.getFileName() + "…";
        }
        String name = (read.product().isEmpty() ? file.getFileName().toString() : read.product())
            + (read.maker().isEmpty() ? "" : ", " + read.maker()) + ".  ";
        if (needsModel()) {
            return name + "It shows " + read.models().size() + " models; choose the one that is meant.";
        }
        if (read.component().isEmpty()) {
            return name + "No component fits what it says; choose one.";
        }
        Confirming now = confirming.orElseThrow();
        if (now.proposals().isEmpty()) {
            boolean picture = read.unread().stream().anyMatch(one -> one.text().isEmpty());
            return name + (picture ? "It is a picture without text: it needs a person. Mark a value on its page to add it."
                : "No value was read. Mark one on its page to add it, or choose another component.");
        }
        long open = now.proposals().stream().filter(one -> one.answer() == Answer.OPEN).count();
        return name + Marks.number(now.proposals().size(), "value") + ": " + SheetButtons.held(now) + " in the job, "
            + now.going().stream().filter(one -> !one.isHeld()).count() + " to be written, " + open + " open."
            + (read.report().isPresent() ? "  An evaluation report: its conditions of use are written with the values." : "");
    }
}
