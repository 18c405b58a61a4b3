package reglet.desk;

import java.util.Arrays;

/**
 * A file made for a person, not yet written.
 *
 * @param name  path below the job's {@code out} folder, with "/" between names
 * @param bytes its content
 */
public record Output(String name, byte[] bytes) {

    @Override
    public boolean equals(Object other) {
        return other instanceof Output output && name.equals(output.name) && Arrays.equals(bytes, output.bytes);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Arrays.hashCode(bytes);
    }

    @Override
    public String toString() {
        return name + ", " + bytes.length + " bytes";
    }
}
