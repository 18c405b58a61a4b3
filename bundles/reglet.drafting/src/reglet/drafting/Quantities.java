package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import reglet.model.Numbers;
import reglet.model.Unit;
import reglet.model.Worksheet;

/** Quantities of the walls as tables for a spreadsheet. Numbers stay numbers, each with its unit beside it. */
public final class Quantities {
    private static final List<String> TITLES = List.of("Wall", "Item", "Amount", "Unit");
    private static final List<String> INPUT_TITLES = List.of("Wall", "Input", "Value", "From");
    private static final List<String> BESIDE_TITLES = List.of("Alternate", "Wall", "Item", "Without", "With", "Difference", "Unit");
    private static final int FIGURES = 7;

    private Quantities() {
    }

    /** The results of worksheets as CSV (RFC 4180, lines end CR LF). */
    public static String csv(List<Worksheet> worksheets) {
        StringBuilder csv = new StringBuilder(Csv.line(TITLES));
        for (Worksheet worksheet : worksheets) {
            worksheet.results().values().forEach(amount -> csv.append(Csv.line(List.of(worksheet.wall(), amount.label(),
                Numbers.significant(number(amount), FIGURES, Numbers.Side.NEAREST), unit(amount)))));
        }
        return csv.toString();
    }

    /** What the walls would take with an alternate: its name, and the worksheets as they are then. */
    public record Beside(String alternate, List<Worksheet> worksheets) {
        public Beside {
            worksheets = List.copyOf(worksheets);
        }
    }

    /** The results beside what they would be with each alternate, and the difference, as CSV; 0 for what isn't there. */
    public static String csv(List<Worksheet> worksheets, List<Beside> alternates) {
        StringBuilder csv = new StringBuilder(Csv.line(BESIDE_TITLES));
        Map<List<String>, Worksheet.Amount> base = amounts(worksheets);
        for (Beside beside : alternates) {
            Map<List<String>, Worksheet.Amount> with = amounts(beside.worksheets());
            Set<List<String>> all = new LinkedHashSet<>(base.keySet());
            all.addAll(with.keySet());
            for (List<String> name : all) {
                double before = base.containsKey(name) ? number(base.get(name)) : 0;
                double after = with.containsKey(name) ? number(with.get(name)) : 0;
                csv.append(Csv.line(List.of(beside.alternate(), name.get(0), name.get(1), figures(before), figures(after),
                    figures(after - before), name.get(2))));
            }
        }
        return csv.toString();
    }

    /** By wall, item and unit; of worksheets for several accepted options the first. */
    private static Map<List<String>, Worksheet.Amount> amounts(List<Worksheet> worksheets) {
        Map<List<String>, Worksheet.Amount> amounts = new LinkedHashMap<>();
        worksheets.forEach(worksheet -> worksheet.results().values()
            .forEach(amount -> amounts.putIfAbsent(List.of(worksheet.wall(), amount.label(), unit(amount)), amount)));
        return amounts;
    }

    private static String figures(double number) {
        return Numbers.significant(number, FIGURES, Numbers.Side.NEAREST);
    }

    private static double number(Worksheet.Amount amount) {
        return amount.unit().fromSi(amount.si());
    }

    private static String unit(Worksheet.Amount amount) {
        return amount.unit() == Unit.ONE ? "each" : amount.unit().symbol();
    }

    /** The results as a workbook: a sheet of quantities and one of what they were made from. */
    public static byte[] xlsx(List<Worksheet> worksheets) {
        try (XSSFWorkbook book = new XSSFWorkbook(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            CellStyle strong = book.createCellStyle();
            Font font = book.createFont();
            font.setBold(true);
            strong.setFont(font);
            Sheet quantities = sheet(book, "Quantities", TITLES, strong);
            Sheet inputs = sheet(book, "Made from", INPUT_TITLES, strong);
            for (Worksheet worksheet : worksheets) {
                worksheet.results().values().forEach(amount -> {
                    Row row = quantities.createRow(quantities.getLastRowNum() + 1);
                    row.createCell(0).setCellValue(worksheet.wall());
                    row.createCell(1).setCellValue(amount.label());
                    row.createCell(2).setCellValue(Double.parseDouble(
                        Numbers.significant(number(amount), FIGURES, Numbers.Side.NEAREST)));
                    row.createCell(3).setCellValue(unit(amount));
                });
                worksheet.inputs().values().forEach(input -> texts(inputs, List.of(worksheet.wall(), input.label(), input.value().text(),
                    input.from())));
            }
            List<String> assumed = new ArrayList<>();
            worksheets.forEach(worksheet -> worksheet.assumed().stream().filter(sentence -> !assumed.contains(sentence))
                .forEach(assumed::add));
            assumed.forEach(sentence -> texts(inputs, List.of("", sentence)));
            book.getProperties().getCoreProperties().setCreator("Reglet");
            SameBytes.dated(book.getProperties().getCoreProperties());
            book.write(out);
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Sheet sheet(XSSFWorkbook book, String name, List<String> titles, CellStyle strong) {
        Sheet sheet = book.createSheet(name);
        Row head = sheet.createRow(0);
        for (int i = 0; i < titles.size(); i++) {
            head.createCell(i).setCellValue(titles.get(i));
            head.getCell(i).setCellStyle(strong);
        }
        sheet.createFreezePane(0, 1);
        sheet.setColumnWidth(0, 10 * 256);
        sheet.setColumnWidth(1, 55 * 256);
        sheet.setColumnWidth(2, 18 * 256);
        sheet.setColumnWidth(3, 30 * 256);
        return sheet;
    }

    private static void texts(Sheet sheet, List<String> texts) {
        Row row = sheet.createRow(sheet.getLastRowNum() + 1);
        for (int i = 0; i < texts.size(); i++) {
            row.createCell(i).setCellValue(texts.get(i));
        }
    }
}
