package reglet.rules;

import java.io.IOException;

import reglet.model.Pack;
import reglet.model.UnusableInput;
import reglet.store.Packs;
import reglet.worksheets.Worksheets;

/** The pack of this checkout, read and compiled once for all tests that share it. */
final class RealPack {
    static final Pack PACK = read();
    static final Engine ENGINE = compile();

    private RealPack() {
    }

    private static Pack read() {
        try {
            return Packs.read(SampleJob.ROOT.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        } catch (IOException | UnusableInput e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }

    private static Engine compile() {
        try {
            return Engine.compile(PACK, Worksheets::run);
        } catch (UnusableInput e) {
            throw new IllegalStateException(e.getMessage(), e);
        }
    }
}
