package org.cagewall.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/** Judges a deed by all the rules there are for it. Pure; any thread. */
public final class Rules {

    private Rules() {}

    public static Ruling judge(Line line, Scene scene) {
        List<Rule> rules = new ArrayList<>(CommonRules.of(line));
        rules.addAll(line.deed().judgedBy());
        return Rule.judgeAll(rules, scene);
    }

    /** That there is no such cage, with the one that is spelled most like it. */
    public static Message unknownCage(Room room, String name) {
        Stream<String> names =
                room.cages().stream().filter(cage -> cage.retired().isEmpty()).map(Cage::name);
        return Names.nearest(name, names)
                .map(near -> Message.of("deed.cage-unknown", name, near))
                .orElse(Message.of("deed.no-cage", name));
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
