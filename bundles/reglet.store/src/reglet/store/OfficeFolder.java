package reglet.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import reglet.model.Office;
import reglet.model.Place;
import reglet.model.UnusableInput;

/** Reads an office's folder: {@code office.yaml}, templates, and the letterhead and fonts that it names. Nothing outside is reached. */
public final class OfficeFolder {
    public static final String FILE = "office.yaml";
    static final int FORMAT = 1;
    private static final long LARGEST_PICTURE = 4 << 20;
    private static final long LARGEST_FONT = 16 << 20;
    /** Points of a picture's side; more is a mistake or an attack. */
    private static final int LARGEST_SIDE = 6000;
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final String TEMPLATE = ".ftl";

    private final Folder folder;
    private final Problems problems;

    private OfficeFolder(Path root, Problems problems) {
        this.problems = problems;
        this.folder = new Folder(root, problems);
    }

    /**
     * @param name what the folder is called in messages
     * @throws UnusableInput with places below the folder
     */
    public static Office read(Path root, String name) throws UnusableInput, IOException {
        Problems problems = new Problems();
        try {
            Office office = new OfficeFolder(root, problems).read(name);
            problems.throwIfAny();
            return office;
        } catch (UnusableInput unusable) {
            throw unusable.below(name);
        }
    }

    private Office read(String name) throws IOException {
        Optional<Cursor> yaml = folder.text(FILE).flatMap(text -> Cursor.parse(FILE, text, 0, problems));
        if (yaml.isEmpty()) {
            if (problems.isEmpty()) {
                problems.add(Place.of(FILE), "is empty", "expected \"format: 1\" and the office's name");
            }
            return Office.none();
        }
        Fields fields = yaml.get().fields("format", "name", "address", "letterhead", "paper", "fonts");
        Formats.check(fields, FORMAT, "office");
        return new Office(name, fields.text("name"), fields.texts("address"), letterhead(fields),
            fields.oneOf("paper", Words.PAPERS).orElse(Office.Paper.LETTER), fonts(fields), templates());
    }

    private Optional<Office.Picture> letterhead(Fields fields) throws IOException {
        Optional<Cursor> name = fields.find("letterhead");
        Optional<byte[]> bytes = name.isEmpty() ? Optional.empty() : bytes(name.get(), LARGEST_PICTURE);
        if (bytes.isEmpty()) {
            return Optional.empty();
        }
        Binary picture = new Binary(bytes.get());
        if (!picture.starts(PNG) || picture.size() < 24) {
            name.get().wrong("\"" + name.get().text() + "\" is no PNG picture", "expected a file in the PNG format");
            return Optional.empty();
        }
        long width = picture.four(16);
        long height = picture.four(20);
        if (width < 1 || height < 1 || width > LARGEST_SIDE || height > LARGEST_SIDE) {
            name.get().wrong("the picture is " + width + " by " + height + " points", "expected at most " + LARGEST_SIDE + " on a side");
            return Optional.empty();
        }
        return Optional.of(new Office.Picture(name.get().text(), bytes.get()));
    }

    private Map<Office.Face, Office.Font> fonts(Fields fields) throws IOException {
        Map<Office.Face, Office.Font> fonts = new EnumMap<>(Office.Face.class);
        Optional<Fields> named = fields.find("fonts").map(found -> found.fields(Words.FACES.keySet()));
        if (named.isEmpty()) {
            return fonts;
        }
        if (named.get().find("regular").isEmpty()) {
            problems.add(named.get().at(), "\"regular\" is missing", "expected the font of plain text; bold and italic may be left out");
        }
        for (Map.Entry<String, Office.Face> face : Words.FACES.entrySet()) {
            Optional<Cursor> name = named.get().find(face.getKey());
            Optional<byte[]> bytes = name.isEmpty() ? Optional.empty() : bytes(name.get(), LARGEST_FONT);
            bytes.flatMap(file -> FontFile.read(file, name.get()))
                .ifPresent(family -> fonts.put(face.getValue(), new Office.Font(name.get().text(), family, bytes.get())));
        }
        return fonts;
    }

    private Optional<byte[]> bytes(Cursor name, long largest) throws IOException {
        if (!folder.holds(name.text())) {
            name.wrong("\"" + name.text() + "\" leads out of the office's folder", "expected a file in it");
            return Optional.empty();
        }
        return folder.bytes(name.text(), largest, "expected a smaller file");
    }

    private Map<String, String> templates() throws IOException {
        Map<String, String> templates = new LinkedHashMap<>();
        for (String file : folder.files("", TEMPLATE)) {
            if (Office.TEMPLATES.contains(file)) {
                folder.text(file).ifPresent(text -> templates.put(file, text));
            } else {
                problems.unknown(Place.of(file), "there is no use for a template", file.toLowerCase(Locale.ROOT),
                    Office.TEMPLATES);
            }
        }
        return templates;
    }
}
