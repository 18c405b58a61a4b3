package reglet.workbench;

import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import reglet.model.Drawing;
import reglet.model.UnusableInput;
import reglet.workbench.settings.Units;

/** The section through the wall in focus beside its build-up: the rows there are its notes, and both select the same component. */
final class LayersDrawing {
    private static final String BUILD_UP = "build-up";
    private final Session session;
    private final Composite frame;
    private final Composite words;
    private final Label why;
    private final DrawingCanvas canvas;
    private final OfWall<Drawn> work;
    private Optional<Drawing> shown = Optional.empty();

    /** The drawing, or why there is none. */
    private record Drawn(Optional<Drawing> drawing, String why) {
    }

    LayersDrawing(Composite parent, Session session) {
        this.session = session;
        frame = new Composite(parent, SWT.NONE);
        frame.setLayout(new StackLayout());
        words = new Composite(frame, SWT.NONE);
        words.setLayout(new GridLayout());
        why = new Label(words, SWT.WRAP);
        why.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        canvas = new DrawingCanvas(frame, component -> session.look(session.focus().onComponent(component)), by -> { });
        Ui.named(canvas, "Section through the wall");
        work = new OfWall<>(frame, "Drawing the section through", LayersDrawing::drawn, this::draw);
    }

    private static Drawn drawn(Snapshot now, String wall) {
        try {
            return new Drawn(now.job().details(wall, Units.shown()).stream()
                .filter(drawing -> drawing.id().equals(BUILD_UP)).findFirst(), "");
        } catch (UnusableInput unusable) {
            return new Drawn(Optional.empty(), "≠ The section can't be drawn: " + unusable.getMessage());
        }
    }

    /** Draws the wall in focus as it stands. */
    void follow() {
        if (work.follow(session) == OfWall.State.SAME) {
            focus();
        }
    }

    private void draw(Drawn drawn) {
        shown = drawn.drawing();
        if (shown.isEmpty()) {
            why.setText(drawn.why().isEmpty() ? "The section through the wall grows here as its layers are chosen." : drawn.why());
            top(words);
        } else {
            focus();
            top(canvas);
        }
    }

    private void focus() {
        shown.ifPresent(drawing -> canvas.show(DrawingCanvas.Shown.of(drawing, work.asked(), work.wall(), session.focus().component(),
            false)));
    }

    private void top(Composite control) {
        StackLayout layout = (StackLayout) frame.getLayout();
        if (layout.topControl != control) {
            layout.topControl = control;
            frame.layout();
        }
    }
}
