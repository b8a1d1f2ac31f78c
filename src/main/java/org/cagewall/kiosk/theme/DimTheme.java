package org.cagewall.kiosk.theme;

import com.formdev.flatlaf.FlatDarkLaf;

/** The look in quiet hours; its palette is the properties file of the same name. Used on the event thread. */
public final class DimTheme extends FlatDarkLaf {

    private static final long serialVersionUID = 1L;

    @Override
    public String getName() {
        return "Cagewall in quiet hours";
    }
}
