package org.cagewall.kiosk.kit.list;

/** What a line of the log says. Immutable; any thread, and free of Swing. */
public record LogFace(String when, String what, boolean struck) {

    String inOneSentence() {
        return when + ", " + what;
    }
}
