package reglet.rules;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import reglet.model.Day;
import reglet.model.Quantity;
import reglet.model.Unit;
import reglet.rules.Node.Call;
import reglet.rules.Node.Constant;
import reglet.rules.Node.Fact;
import reglet.rules.Node.Let;
import reglet.rules.Node.ListOf;
import reglet.rules.Node.Lookup;

/** Checked expressions as bytes, so that a start neither parses nor type-checks them. */
final class Trees {
    /** First bytes of the form; raised when the form changes. */
    private static final int FORM = 0x52474C32;

    private Trees() {
    }

    static byte[] write(Map<String, Node> trees) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(FORM);
            out.writeInt(trees.size());
            for (Map.Entry<String, Node> tree : trees.entrySet()) {
                out.writeUTF(tree.getKey());
                write(out, tree.getValue());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(DataOutputStream out, Node node) throws IOException {
        if (node instanceof Constant constant) {
            write(out, constant.value());
        } else if (node instanceof Fact fact) {
            out.writeByte('f');
            out.writeUTF(fact.name());
        } else if (node instanceof Let let) {
            out.writeByte('l');
            out.writeUTF(let.name());
        } else if (node instanceof Call call) {
            out.writeByte('c');
            out.writeUTF(call.operation().name());
            write(out, call.arguments());
        } else if (node instanceof Lookup lookup) {
            out.writeByte('t');
            out.writeUTF(lookup.table());
            write(out, lookup.arguments());
        } else {
            out.writeByte('i');
            write(out, ((ListOf) node).items());
        }
    }

    private static void write(DataOutputStream out, List<Node> nodes) throws IOException {
        out.writeByte(nodes.size());
        for (Node node : nodes) {
            write(out, node);
        }
    }

    private static void write(DataOutputStream out, Object value) throws IOException {
        if (value instanceof Boolean flag) {
            out.writeByte('b');
            out.writeBoolean(flag);
        } else if (value instanceof Double number) {
            out.writeByte('d');
            out.writeDouble(number);
        } else if (value instanceof Quantity quantity) {
            out.writeByte('q');
            out.writeDouble(quantity.si());
            out.writeUTF(quantity.unit().name());
            out.writeUTF(quantity.amount());
        } else if (value instanceof Day day) {
            out.writeByte('y');
            out.writeUTF(day.text());
        } else {
            out.writeByte('s');
            out.writeUTF((String) value);
        }
    }

    /** @throws UncheckedIOException when the bytes are not this form */
    static Map<String, Node> read(byte[] bytes) {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            if (in.readInt() != FORM) {
                throw new IOException("these are no checked expressions of this version");
            }
            int count = in.readInt();
            Map<String, Node> trees = new LinkedHashMap<>(count * 2);
            for (int i = 0; i < count; i++) {
                trees.put(in.readUTF(), node(in));
            }
            return trees;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Node node(DataInputStream in) throws IOException {
        int kind = in.readByte();
        return switch (kind) {
            case 'f' -> new Fact(in.readUTF());
            case 'l' -> new Let(in.readUTF());
            case 'c' -> new Call(Operation.valueOf(in.readUTF()), nodes(in));
            case 't' -> new Lookup(in.readUTF(), nodes(in));
            case 'i' -> new ListOf(nodes(in));
            case 'b' -> new Constant(in.readBoolean());
            case 'd' -> new Constant(in.readDouble());
            case 's' -> new Constant(in.readUTF());
            case 'q' -> new Constant(new Quantity(in.readDouble(), Unit.valueOf(in.readUTF()), in.readUTF()));
            case 'y' -> new Constant(Day.parse(in.readUTF()).orElseThrow(() -> new IOException("an expression's date is none")));
            default -> throw new IOException("unknown kind of expression " + kind);
        };
    }

    private static List<Node> nodes(DataInputStream in) throws IOException {
        int count = in.readByte();
        List<Node> nodes = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            nodes.add(node(in));
        }
        return nodes;
    }
}
