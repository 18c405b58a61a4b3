package reglet.desk;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import reglet.model.UnitFactors;
import reglet.rules.Engine;
import reglet.store.PackBytes;
import reglet.store.SafeFile;
import reglet.store.StoredPack;
import reglet.worksheets.Worksheets;

/**
 * A pack made ready to run and kept in a file, so that a start neither parses its text files nor checks its expressions. The file
 * holds the digest of the text that it was made from; when that is not the digest of the text now, it is as good as none.
 */
final class BuiltPack {

    private BuiltPack() {
    }

    static void write(Path file, StoredPack pack, Engine engine) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeUTF(pack.digest());
            UnitFactors.write(out);
            block(out, PackBytes.write(pack.pack()));
            block(out, engine.checkedTrees());
        }
        SafeFile.write(file, bytes.toByteArray());
    }

    private static void block(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    /** The pack of this digest; empty when the file is missing, made from another text, or by another version. */
    static Optional<Engine> read(Path file, String digest) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(Files.readAllBytes(file)))) {
            if (!in.readUTF().equals(digest)) {
                return Optional.empty();
            }
            UnitFactors.read(in);
            return Optional.of(Engine.load(PackBytes.read(in.readNBytes(in.readInt())), in.readNBytes(in.readInt()),
                Worksheets::run));
        } catch (IOException | RuntimeException unusable) {
            // made anew from the text, which says what is wrong where something is
            return Optional.empty();
        }
    }
}
