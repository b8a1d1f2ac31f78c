package org.cagewall.deed;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.room.Person;

/** Judges a deed by all the rules there are for it. Pure; any thread. */
public final class Rules {

    private Rules() {}

    public static Ruling judge(Line line, Scene scene) {
        List<Rule> rules = new ArrayList<>(CommonRules.of(line));
        rules.addAll(line.deed().judgedBy());
        return Rule.judgeAll(rules, scene);
    }

    /** Who is named as having recorded it: the person told, or the first owner, who adds himself. */
    public static String recorder(Deed deed, Scene scene) {
        return scene.person()
                .map(Person::name)
                .or(() -> deed instanceof RoomDeed.PersonAdded added
                        ? java.util.Optional.of(added.person())
                        : java.util.Optional.empty())
                .orElse("-");
    }
}
