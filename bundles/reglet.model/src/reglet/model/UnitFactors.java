package reglet.model;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;

/**
 * What the units library says of every unit, to be kept in a file: the library takes a quarter of a second to start, and says the same
 * each time.
 */
public final class UnitFactors {

    private UnitFactors() {
    }

    public static void write(DataOutput out) throws IOException {
        out.writeInt(Unit.values().length);
        for (Unit unit : Unit.values()) {
            out.writeUTF(unit.name());
            out.writeUTF(unit.ucum() + " " + unit.dimension().si());
            out.writeDouble(Ucum.factor(unit));
            out.writeDouble(Ucum.offset(unit));
        }
    }

    /**
     * Takes kept factors over.
     *
     * @throws IOException when they were kept of other units
     */
    public static void read(DataInput in) throws IOException {
        int units = in.readInt();
        for (int i = 0; i < units; i++) {
            String name = in.readUTF();
            String code = in.readUTF();
            double factor = in.readDouble();
            double offset = in.readDouble();
            Unit unit;
            try {
                unit = Unit.valueOf(name);
            } catch (IllegalArgumentException unknown) {
                throw new IOException("there is no unit " + name, unknown);
            }
            if (!code.equals(unit.ucum() + " " + unit.dimension().si())) {
                throw new IOException(name + " was " + code);
            }
            Ucum.known(unit, factor, offset);
        }
    }
}
