package org.cagewall.kiosk.theme;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import java.util.function.Supplier;

/**
 * How bright the kiosk is, and the one place where a look is put on, so that the order of its parts is right: system
 * properties, fonts, our defaults, look and feel. Used on the event thread.
 */
public enum Light {
    DAY(LightTheme::new),
    QUIET(DimTheme::new);

    private static final String MEANINGS = "org.cagewall.kiosk.theme";

    private final Supplier<FlatLaf> look;

    Light(Supplier<FlatLaf> look) {
        this.look = look;
    }

    /** Puts this look on before the first part is built. */
    public void start(TextSize size) {
        System.setProperty("flatlaf.uiScale", String.valueOf(size.factor()));
        System.setProperty("flatlaf.animation", "false");
        FlatInterFont.installLazy();
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.registerCustomDefaultsSource(MEANINGS);
        FlatLaf.setup(look.get());
    }

    /** Changes the look of what is already on the screen. */
    public void shine() {
        FlatLaf.setup(look.get());
        FlatLaf.updateUI();
    }
}
