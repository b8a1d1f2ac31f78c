package org.cagewall.kiosk.theme;

import com.formdev.flatlaf.FlatLightLaf;

/** The look by day; its palette is the properties file of the same name. Used on the event thread. */
public final class LightTheme extends FlatLightLaf {

    private static final long serialVersionUID = 1L;

    @Override
    public String getName() {
        return "Cagewall by day";
    }
}
