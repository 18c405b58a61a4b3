package reglet.workbench.sheets;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import reglet.desk.Confirming;
import reglet.desk.OpenJob;
import reglet.model.Component;
import reglet.model.Pack;
import reglet.model.SheetReading;
import reglet.workbench.Ui;

/** Which sheet is gone through, what the product is, which model is meant, and under which name its values stand in the job. */
final class SheetHead {
    private final Combo sheets;
    private final Combo component;
    private final Label modelWords;
    private final Combo model;
    private final Text product;
    private List<String> sheetKeys = List.of();
    private List<String> componentIds = List.of();
    private boolean filling;

    /** What the person chooses. */
    interface Choices {
        /** @param key of the sheet: its path */
        void sheet(String key);

        void openAFile();

        void component(String id);

        void model(String name);

        void product(String id);
    }

    SheetHead(Composite page, Choices choices) {
        Composite first = line(page, 3);
        label(first, "Data &sheet");
        sheets = combo(first, "Data sheet");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(sheets);
        sheets.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choices.sheet(sheetKeys
            .get(sheets.getSelectionIndex()))));
        Button open = Ui.named(new Button(first, SWT.PUSH), "Open a data sheet from a file");
        open.setText("Open a &file…");
        open.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choices.openAFile()));

        Composite second = line(page, 6);
        label(second, "&Component");
        component = combo(second, "Component of the sheet");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(component);
        component.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choices.component(componentIds
            .get(component.getSelectionIndex()))));
        modelWords = label(second, "&Model");
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(modelWords);
        model = combo(second, "Model of the sheet");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(model);
        model.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> choices.model(model.getText())));
        label(second, "&Name in products");
        product = Ui.named(new Text(second, SWT.SINGLE | SWT.BORDER), "Name in products");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(product);
        product.addModifyListener(event -> {
            if (!filling) {
                choices.product(product.getText().strip());
            }
        });
    }

    private static Composite line(Composite page, int columns) {
        Composite line = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(columns).applyTo(line);
        return line;
    }

    private static Label label(Composite line, String words) {
        Label label = new Label(line, SWT.NONE);
        label.setText(words);
        return label;
    }

    private static Combo combo(Composite line, String name) {
        return Ui.named(new Combo(line, SWT.READ_ONLY), name);
    }

    /** Shows the sheets that may be opened, and what is chosen of the one that is gone through. */
    void show(OpenJob job, List<Path> known, Sheet sheet) {
        List<Path> all = new ArrayList<>(known);
        if (sheet.file() != null && !all.contains(sheet.file())) {
            all.add(sheet.file());
        }
        sheets(all.stream().map(Path::toString).toList(), all.stream().map(file -> Sheet.title(job, file)).toList(),
            sheet.file() == null ? "" : sheet.file().toString());
        Pack pack = job.pack();
        List<String> ids = sheet.reading().map(read -> Stream.concat(read.components().stream(), pack.components().stream()
            .map(Component::id)).distinct().toList()).orElse(List.of());
        components(ids, ids.stream().map(id -> pack.component(id).map(Component::title).orElse(id)).toList(),
            sheet.reading().map(SheetReading::component).orElse(""));
        models(sheet.reading().map(SheetReading::models).orElse(List.of()), sheet.model());
        product(sheet.confirming().map(Confirming::product).orElse(""), sheet.confirming().isPresent());
    }

    /** What may be opened, by keys, with words for each; one is shown as chosen where its key is given. */
    private void sheets(List<String> keys, List<String> words, String chosen) {
        if (!keys.equals(sheetKeys) || !words.equals(List.of(sheets.getItems()))) {
            sheetKeys = List.copyOf(keys);
            sheets.setItems(words.toArray(String[]::new));
        }
        choose(sheets, sheetKeys.indexOf(chosen));
    }

    private void components(List<String> ids, List<String> titles, String chosen) {
        if (!ids.equals(componentIds)) {
            componentIds = List.copyOf(ids);
            component.setItems(titles.toArray(String[]::new));
        }
        choose(component, componentIds.indexOf(chosen));
        component.setEnabled(!ids.isEmpty());
    }

    private void models(List<String> names, String chosen) {
        if (!names.equals(List.of(model.getItems()))) {
            model.setItems(names.toArray(String[]::new));
        }
        choose(model, names.indexOf(chosen));
        // most sheets are of one model: what there is no choice of takes no room from the component
        boolean asked = !names.isEmpty();
        if (((GridData) model.getLayoutData()).exclude == asked) {
            for (Control control : List.of(modelWords, model)) {
                ((GridData) control.getLayoutData()).exclude = !asked;
                control.setVisible(asked);
            }
            model.getParent().layout();
        }
    }

    private static void choose(Combo combo, int index) {
        if (index < 0) {
            combo.deselectAll();
        } else if (combo.getSelectionIndex() != index) {
            combo.select(index);
        }
    }

    private void product(String id, boolean asked) {
        filling = true;
        if (!product.getText().strip().equals(id)) {
            product.setText(id);
        }
        product.setEnabled(asked);
        filling = false;
    }

    /** Where the keyboard goes when there is no sheet yet. */
    void focus() {
        sheets.setFocus();
    }

    void focusModel() {
        model.setFocus();
    }
}
