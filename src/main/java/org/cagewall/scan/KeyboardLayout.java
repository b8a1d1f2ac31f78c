package org.cagewall.scan;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * How a computer's keyboard layout garbles what a scanner types, since a scanner presses keys by their place on a US
 * keyboard: turns the garbled text back. Immutable; any thread.
 */
enum KeyboardLayout {
    /** Keys mean what the scanner thinks; only a caps lock can interfere. */
    AS_SENT("", ""),

    /** The French layout and, for 6 and 8, the Belgian one: symbols fr and be of xkb-data; with a caps lock as well. */
    AZERTY("&\u00E9\"'(\u00A7-\u00E8!_\u00E7\u00E0\u00C9\u00C8\u00C7\u00C0AQWZ?,", "12345667889027" + "90QAZWMM"),

    /** The German layout and its relatives: symbols de and at of xkb-data. */
    QWERTZ("YZ", "ZY");

    private final Map<Character, Character> meant = new HashMap<>();

    KeyboardLayout(String typed, String sent) {
        for (int i = 0; i < typed.length(); i++) {
            meant.put(typed.charAt(i), sent.charAt(i));
            meant.put(Character.toLowerCase(typed.charAt(i)), sent.charAt(i));
        }
    }

    /** What the scanner sent, in capitals, when the computer understood this. */
    String sent(String typed) {
        return typed.chars()
                .mapToObj(c -> String.valueOf(meant.getOrDefault((char) c, (char) c)))
                .collect(Collectors.joining())
                .toUpperCase(Locale.ROOT);
    }
}
