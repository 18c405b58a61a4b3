package reglet.desk;

import java.util.function.Supplier;

/** A value worked out once, when first asked for. */
final class Later<T> {
    private Supplier<T> how;
    private T value;

    Later(Supplier<T> how) {
        this.how = how;
    }

    synchronized T get() {
        if (value == null) {
            value = how.get();
            // what it was made from need not be kept with it
            how = null;
        }
        return value;
    }
}
