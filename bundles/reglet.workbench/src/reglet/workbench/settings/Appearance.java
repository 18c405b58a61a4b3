package reglet.workbench.settings;

import java.util.List;

import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/**
 * Gives the window the theme and the size of text that the person set, now and whenever they set others. Every control gets its
 * font scaled once when it appears, dialogs and wizards included; the font that it had is kept, so that it can be had again.
 */
public final class Appearance {
    public static final String LIGHT = "reglet.workbench.theme";
    public static final String DARK = "reglet.workbench.theme.dark";
    private static final String LIGHT_AGAIN = "reglet.workbench.theme.again";
    private static final List<String> KEYS = List.of(Settings.UNITS, Settings.THEME, Settings.TEXT);
    private static final int LATER_MILLISECONDS = 100;
    private static final int MOST_TRIES = 20;
    /** Of the brightness of white. */
    private static final float HALF = 0.5f;
    private static final String OWN_FONT = "reglet.own font";
    private final Display display;
    private final LocalResourceManager fonts;
    private int percent = 100;

    public Appearance(Display display) {
        this.display = display;
        this.fonts = new LocalResourceManager(JFaceResources.getResources(display));
        display.addListener(SWT.Skin, event -> {
            if (event.widget instanceof Control control) {
                scale(control);
            }
        });
        percent = percent();
    }

    /** The theme to start with. */
    public static String theme(String word) {
        return word.equals("dark") || word.equals("system") && Display.isSystemDarkTheme() ? DARK : LIGHT;
    }

    /**
     * Follows the settings from now on.
     *
     * @param engine  the platform's themes
     * @param changed told after something has changed
     */
    public void follow(IThemeEngine engine, Runnable changed) {
        Settings.store().addPropertyChangeListener(event -> {
            // other things stand in the same store, and are put there beside the window's thread
            if (KEYS.contains(event.getProperty()) && !display.isDisposed()) {
                display.asyncExec(() -> apply(event.getProperty(), engine, changed));
            }
        });
    }

    private void apply(String key, IThemeEngine engine, Runnable changed) {
        if (key.equals(Settings.THEME)) {
            String theme = theme(Settings.store().getString(Settings.THEME));
            engine.setTheme(theme, true);
            if (theme.equals(LIGHT)) {
                lightAgain(engine, MOST_TRIES);
            }
        }
        if (key.equals(Settings.TEXT)) {
            percent = percent();
            for (Shell shell : display.getShells()) {
                shell.reskin(SWT.ALL);
            }
        }
        // after the controls have their fonts and colours
        display.timerExec(2 * LATER_MILLISECONDS, changed);
    }

    /** The system's own light colours come back some time after the theme is set: then the style sheet has to be read once more. */
    private void lightAgain(IThemeEngine engine, int tries) {
        display.timerExec(LATER_MILLISECONDS, () -> {
            if (!theme(Settings.store().getString(Settings.THEME)).equals(LIGHT)) {
                return;
            }
            if (display.getSystemColor(SWT.COLOR_WIDGET_BACKGROUND).getRGB().getHSB()[2] < HALF && tries > 0) {
                lightAgain(engine, tries - 1);
            } else {
                engine.setTheme(LIGHT_AGAIN, false);
            }
        });
    }

    private static int percent() {
        try {
            return Math.min(200, Math.max(100, Integer.parseInt(Settings.store().getString(Settings.TEXT))));
        } catch (NumberFormatException spoilt) {
            return 100;
        }
    }

    private void scale(Control control) {
        FontData[] own = (FontData[]) control.getData(OWN_FONT);
        if (percent == 100 && own == null) {
            return;
        }
        if (own == null) {
            // some controls take their parent's font, which may be scaled already
            Control parent = control.getParent();
            boolean inherited = parent != null && parent.getData(OWN_FONT) != null && parent.getFont().equals(control.getFont());
            own = inherited ? (FontData[]) parent.getData(OWN_FONT) : control.getFont().getFontData();
            control.setData(OWN_FONT, own);
        }
        FontDescriptor scaled = FontDescriptor.createFrom(own).setHeight(Math.round(own[0].getHeight() * percent / 100f));
        control.setFont(fonts.create(scaled));
        control.requestLayout();
    }
}
