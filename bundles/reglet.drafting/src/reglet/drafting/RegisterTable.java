package reglet.drafting;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Timing;

/** The columns of a register, and the register for a spreadsheet. */
public final class RegisterTable {
    private static final List<Column> COLUMNS = List.of(
        text("section", 11, RegisterItem::section), text("paragraph", 11, RegisterItem::paragraph), text("item", 26, RegisterItem::item),
        text("kind", 14, item -> item.kind().text()), text("sort", 22, item -> item.sort().text()), text("code", 8, RegisterItem::code),
        text("sends", 24, RegisterItem::sends), text("sender", 24, RegisterItem::sender), text("status", 34, RegisterItem::status),
        text("alternate", 24, item -> item.under().map(RegisterItem.Under::text).orElse("")),
        date("submit by", Timing::submitBy), date("on site", Timing::onSite), number("lead", Timing::lead),
        number("review", Timing::review),
        text("days", 10, item -> item.timing().map(timing -> timing.days().text()).orElse("")), text("note", 44, RegisterItem::note),
        text("id", 30, RegisterItem::id));
    static final List<String> TITLES = COLUMNS.stream().map(Column::title).toList();
    private static final int DATE_WIDTH = 12;
    private static final int NUMBER_WIDTH = 8;
    private static final int CHARACTER = 256;
    private static final float LINE = 15;
    private static final double FILLED = 1.0;

    private RegisterTable() {
    }

    /** A column; what it holds of an item is a text, a date or a whole number; empty for nothing. */
    private record Column(String title, int width, Function<RegisterItem, Optional<Object>> of) {
    }

    private static Column text(String title, int width, Function<RegisterItem, String> of) {
        return new Column(title, width, item -> Optional.<Object>of(of.apply(item)).filter(text -> !text.equals("")));
    }

    private static Column date(String title, Function<Timing, LocalDate> of) {
        return new Column(title, DATE_WIDTH, item -> item.timing().map(of));
    }

    private static Column number(String title, Function<Timing, Integer> of) {
        return new Column(title, NUMBER_WIDTH, item -> item.timing().map(of));
    }

    static List<String> texts(RegisterItem item) {
        return COLUMNS.stream().map(column -> column.of().apply(item).map(Object::toString).orElse("")).toList();
    }

    /** One sheet: the head stays in sight, columns can be filtered, dates are dates, texts wrap. The same bytes for the same items. */
    public static byte[] xlsx(List<RegisterItem> items) {
        try (XSSFWorkbook book = new XSSFWorkbook(); ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            Sheet sheet = book.createSheet("Register");
            CellStyle strong = style(book, "");
            Font font = book.createFont();
            font.setBold(true);
            strong.setFont(font);
            CellStyle plain = style(book, "");
            CellStyle dated = style(book, "yyyy-mm-dd");
            Row head = sheet.createRow(0);
            for (int i = 0; i < COLUMNS.size(); i++) {
                sheet.setColumnWidth(i, COLUMNS.get(i).width() * CHARACTER);
                cell(head, i, TITLES.get(i), strong);
            }
            for (RegisterItem item : items) {
                Row row = sheet.createRow(sheet.getLastRowNum() + 1);
                for (int i = 0; i < COLUMNS.size(); i++) {
                    Object value = COLUMNS.get(i).of().apply(item).orElse("");
                    cell(row, i, value, value instanceof LocalDate ? dated : plain);
                }
                row.setHeightInPoints(LINE * lines(item));
            }
            sheet.createFreezePane(0, 1);
            sheet.setAutoFilter(new CellRangeAddress(0, items.size(), 0, COLUMNS.size() - 1));
            sheet.getPrintSetup().setPaperSize(PrintSetup.TABLOID_PAPERSIZE);
            sheet.getPrintSetup().setLandscape(true);
            sheet.setFitToPage(true);
            sheet.getPrintSetup().setFitHeight((short) 0);
            sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
            book.getProperties().getCoreProperties().setCreator("Reglet");
            SameBytes.dated(book.getProperties().getCoreProperties());
            book.write(out);
            return SameBytes.archive(out.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Lines that the longest cell of a row takes; not every program works that out when it opens the file. */
    private static int lines(RegisterItem item) {
        List<String> texts = texts(item);
        int most = 1;
        for (int i = 0; i < texts.size(); i++) {
            // words break before the edge
            most = Math.max(most, (int) Math.ceil(texts.get(i).length() / (COLUMNS.get(i).width() * FILLED)));
        }
        return most;
    }

    private static CellStyle style(XSSFWorkbook book, String format) {
        CellStyle style = book.createCellStyle();
        style.setWrapText(true);
        style.setVerticalAlignment(VerticalAlignment.TOP);
        if (!format.isEmpty()) {
            style.setDataFormat(book.createDataFormat().getFormat(format));
        }
        return style;
    }

    private static void cell(Row row, int at, Object value, CellStyle style) {
        Cell cell = row.createCell(at);
        cell.setCellStyle(style);
        if (value instanceof LocalDate date) {
            cell.setCellValue(date);
        } else if (value instanceof Integer number) {
            cell.setCellValue(number);
        } else {
            cell.setCellValue((String) value);
        }
    }
}
