package org.cagewall.kiosk.kit;

import javax.swing.ButtonModel;
import org.cagewall.kiosk.theme.Tone;

/** How a button is painted in its present state. Immutable. */
record ButtonLook(Tone ground, Tone ink, Tone line, float lineWidth) {

    static ButtonLook of(ButtonKind kind, ButtonModel state) {
        if (!state.isEnabled()) {
            return new ButtonLook(Tone.EMPTY, Tone.OFF, Tone.LINE, 1.5f);
        }
        if (state.isSelected()) {
            return new ButtonLook(pressed(state, Tone.MAIN, Tone.MAIN_PRESSED), Tone.MAIN_INK, Tone.LIKELY_EDGE, 1.5f);
        }
        return switch (kind) {
            case MAIN ->
                new ButtonLook(pressed(state, Tone.MAIN, Tone.MAIN_PRESSED), Tone.MAIN_INK, Tone.LIKELY_EDGE, 1.5f);
            case PLAIN -> new ButtonLook(pressed(state, Tone.TILE, Tone.TILE_PRESSED), Tone.INK, edge(state), 1.5f);
            case OUTLINED -> new ButtonLook(pressed(state, Tone.TILE, Tone.TILE_PRESSED), Tone.INK, Tone.INK, 2.5f);
            case LIKELY ->
                new ButtonLook(pressed(state, Tone.LIKELY, Tone.LIKELY_PRESSED), Tone.INK, Tone.LIKELY_EDGE, 2.5f);
            case ATTENTION ->
                new ButtonLook(
                        pressed(state, Tone.ATTENTION, Tone.ATTENTION_PRESSED),
                        Tone.ATTENTION_INK,
                        Tone.ATTENTION_INK,
                        state.isPressed() ? 2.5f : 1.5f);
            case URGENT ->
                new ButtonLook(pressed(state, Tone.URGENT, Tone.URGENT_PRESSED), Tone.URGENT_INK, Tone.URGENT_INK, 0);
            case QUIET -> new ButtonLook(pressed(state, Tone.GROUND, Tone.TILE_PRESSED), Tone.INK, edge(state), 1.5f);
            case ON_SOLID ->
                new ButtonLook(pressed(state, Tone.SOLID, Tone.SOLID_PRESSED), Tone.SOLID_INK, Tone.SOLID_INK, 2f);
        };
    }

    private static Tone pressed(ButtonModel state, Tone calm, Tone pressed) {
        return state.isPressed() && state.isArmed() ? pressed : calm;
    }

    private static Tone edge(ButtonModel state) {
        return state.isPressed() && state.isArmed() ? Tone.INK : Tone.LINE;
    }
}
