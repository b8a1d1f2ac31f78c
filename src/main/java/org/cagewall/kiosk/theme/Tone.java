package org.cagewall.kiosk.theme;

import java.awt.Color;
import javax.swing.UIManager;

/**
 * A colour by what it means, so that no screen names a colour and the look can change at run time: read it when
 * painting, never keep it. Used on the event thread.
 */
public enum Tone {
    GROUND("ground"),
    INK("ink"),
    SOFT("soft"),
    TILE("tile"),
    TILE_PRESSED("tile.pressed"),
    TILE_PRESSED_SOFT("tile.pressed.soft"),
    LINE("line"),
    EMPTY("empty"),
    EMPTY_SOFT("empty.soft"),
    OFF("off"),
    MAIN("main"),
    MAIN_PRESSED("main.pressed"),
    MAIN_INK("main.ink"),
    LIKELY("likely"),
    LIKELY_PRESSED("likely.pressed"),
    LIKELY_EDGE("likely.edge"),
    ATTENTION("attention"),
    ATTENTION_PRESSED("attention.pressed"),
    ATTENTION_INK("attention.ink"),
    URGENT("urgent"),
    URGENT_PRESSED("urgent.pressed"),
    URGENT_INK("urgent.ink"),
    SOLID("solid"),
    SOLID_PRESSED("solid.pressed"),
    SOLID_INK("solid.ink"),
    EGG_SHELL("egg.shell"),
    EGG_VEIN("egg.vein"),
    EGG_DUMMY("egg.dummy"),
    VEIL("veil"),
    SYMBOL("symbol"),
    SYMBOL_GROUND("symbol.ground");

    private final String key;

    Tone(String meaning) {
        this.key = "Kiosk." + meaning;
    }

    /** The colour in the look that is on now. */
    public Color color() {
        return UIManager.getColor(key);
    }
}
