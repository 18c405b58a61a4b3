package reglet.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import reglet.model.Pack;

/**
 * A pack as bytes, so that a start need not parse its text files. Every record of the model is written with the names of its parts
 * the first time it comes, so that bytes written for another shape of the model are refused and never misread.
 */
public final class PackBytes {
    private static final String MODEL = Pack.class.getPackageName() + ".";

    /** What comes next. Stored by place: append only. */
    private enum Kind { TEXT, SAME_TEXT, WHOLE, TRUTH, NUMBER, WORD, NOTHING, SOMETHING, LIST, MAP, RECORD }

    private PackBytes() {
    }

    public static byte[] write(Pack pack) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            new Writer(out).write(pack);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /** @throws IOException when the bytes were not written by this version */
    public static Pack read(byte[] bytes) throws IOException {
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
            return (Pack) new Reader(in).read();
        } catch (ReflectiveOperationException | RuntimeException otherShape) {
            throw new IOException("a kept pack was written by another version", otherShape);
        }
    }

    /** The name of a record with the names of its parts. */
    private static String shape(Class<?> type) {
        StringBuilder shape = new StringBuilder(type.getName());
        for (RecordComponent part : type.getRecordComponents()) {
            shape.append(' ').append(part.getName()).append(':').append(part.getType().getName());
        }
        return shape.toString();
    }

    private static final class Writer {
        private final DataOutputStream out;
        private final Map<String, Integer> texts = new HashMap<>();
        private final Map<Class<?>, Method[]> records = new HashMap<>();
        private final Map<Class<?>, Integer> numbers = new HashMap<>();

        Writer(DataOutputStream out) {
            this.out = out;
        }

        void write(Object value) throws IOException {
            if (value instanceof String text) {
                text(text);
            } else if (value instanceof Integer whole) {
                kind(Kind.WHOLE);
                out.writeInt(whole);
            } else if (value instanceof Boolean truth) {
                kind(Kind.TRUTH);
                out.writeBoolean(truth);
            } else if (value instanceof Double number) {
                kind(Kind.NUMBER);
                out.writeDouble(number);
            } else if (value instanceof Enum<?> word) {
                kind(Kind.WORD);
                text(word.getDeclaringClass().getName());
                text(word.name());
            } else if (value instanceof Optional<?> maybe) {
                kind(maybe.isPresent() ? Kind.SOMETHING : Kind.NOTHING);
                if (maybe.isPresent()) {
                    write(maybe.get());
                }
            } else if (value instanceof List<?> list) {
                kind(Kind.LIST);
                out.writeInt(list.size());
                for (Object item : list) {
                    write(item);
                }
            } else if (value instanceof Map<?, ?> map) {
                kind(Kind.MAP);
                out.writeInt(map.size());
                for (Map.Entry<?, ?> entry : map.entrySet()) {
                    write(entry.getKey());
                    write(entry.getValue());
                }
            } else {
                record((Record) value);
            }
        }

        private void kind(Kind kind) throws IOException {
            out.writeByte(kind.ordinal());
        }

        private void text(String text) throws IOException {
            Integer known = texts.get(text);
            kind(known == null ? Kind.TEXT : Kind.SAME_TEXT);
            if (known == null) {
                texts.put(text, texts.size());
                out.writeUTF(text);
            } else {
                out.writeInt(known);
            }
        }

        private void record(Record value) throws IOException {
            Class<?> type = value.getClass();
            Method[] parts = records.computeIfAbsent(type, found -> Arrays.stream(found.getRecordComponents())
                .map(RecordComponent::getAccessor).toArray(Method[]::new));
            kind(Kind.RECORD);
            Integer number = numbers.get(type);
            out.writeByte(number == null ? numbers.size() : number);
            if (number == null) {
                numbers.put(type, numbers.size());
                text(type.getName());
                text(shape(type));
            }
            for (Method part : parts) {
                try {
                    write(part.invoke(value));
                } catch (IllegalAccessException | InvocationTargetException impossible) {
                    throw new IllegalStateException("the parts of a public record can be read", impossible);
                }
            }
        }
    }

    private static final class Reader {
        private final DataInputStream in;
        private final Kind[] kinds = Kind.values();
        private final List<String> texts = new ArrayList<>();
        private final List<Constructor<?>> records = new ArrayList<>();
        private final Map<String, Map<String, Object>> words = new HashMap<>();

        Reader(DataInputStream in) {
            this.in = in;
        }

        Object read() throws IOException, ReflectiveOperationException {
            Kind kind = kinds[in.readByte()];
            return switch (kind) {
                case TEXT, SAME_TEXT -> text(kind);
                case WHOLE -> in.readInt();
                case TRUTH -> in.readBoolean();
                case NUMBER -> in.readDouble();
                case WORD -> word((String) read(), (String) read());
                case NOTHING -> Optional.empty();
                case SOMETHING -> Optional.of(read());
                case LIST -> list();
                case MAP -> map();
                case RECORD -> record();
            };
        }

        private String text(Kind kind) throws IOException {
            if (kind == Kind.SAME_TEXT) {
                return texts.get(in.readInt());
            }
            String text = in.readUTF();
            texts.add(text);
            return text;
        }

        private Object word(String type, String name) throws ReflectiveOperationException {
            Map<String, Object> known = words.get(type);
            if (known == null) {
                known = new HashMap<>();
                for (Object word : model(type).getEnumConstants()) {
                    known.put(((Enum<?>) word).name(), word);
                }
                words.put(type, known);
            }
            Object word = known.get(name);
            if (word == null) {
                throw new ReflectiveOperationException("there is no " + name + " in " + type);
            }
            return word;
        }

        private List<Object> list() throws IOException, ReflectiveOperationException {
            int size = in.readInt();
            List<Object> list = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                list.add(read());
            }
            return list;
        }

        private Map<Object, Object> map() throws IOException, ReflectiveOperationException {
            int size = in.readInt();
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int i = 0; i < size; i++) {
                map.put(read(), read());
            }
            return map;
        }

        private Object record() throws IOException, ReflectiveOperationException {
            int number = in.readByte();
            if (number == records.size()) {
                Class<?> type = model((String) read());
                if (!shape(type).equals(read())) {
                    throw new ReflectiveOperationException(type + " has another shape");
                }
                records.add(type.getDeclaredConstructor(Arrays.stream(type.getRecordComponents()).map(RecordComponent::getType)
                    .toArray(Class<?>[]::new)));
            }
            Constructor<?> constructor = records.get(number);
            Object[] parts = new Object[constructor.getParameterCount()];
            for (int i = 0; i < parts.length; i++) {
                parts[i] = read();
            }
            return constructor.newInstance(parts);
        }

        private static Class<?> model(String name) throws ClassNotFoundException {
            if (!name.startsWith(MODEL)) {
                throw new ClassNotFoundException(name + " is no part of the model");
            }
            return Class.forName(name, true, Pack.class.getClassLoader());
        }
    }
}
