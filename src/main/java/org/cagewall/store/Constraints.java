package org.cagewall.store;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.text.Message;

/** Gives each named constraint of the schema its sentence. Pure; any thread. */
final class Constraints {

    private static final Pattern NAME = Pattern.compile("'((?:PK|UQ|FK|CK)_[A-Z_]+)'");

    private Constraints() {}

    /** The sentence for what Derby says of a violated constraint. */
    static Message sentence(String said) {
        Matcher name = NAME.matcher(said);
        return Message.of("store." + (name.find() ? key(name.group(1)) : "constraint"));
    }

    /** Foreign and primary keys share a sentence; unique and check constraints have one each. */
    static String key(String constraint) {
        String name = constraint.toLowerCase(Locale.ROOT);
        return switch (name.substring(0, 2)) {
            case "fk" -> "leaned-on";
            case "pk" -> "twice";
            default -> name;
        };
    }
}
