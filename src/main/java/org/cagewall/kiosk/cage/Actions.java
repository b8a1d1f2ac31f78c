package org.cagewall.kiosk.cage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.Pair;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;

/** What can be recorded at a cage as it stands, the likeliest first. Pure; any thread. */
final class Actions {

    /** More than so many large buttons cannot be taken in at a glance. */
    static final int MOST = 6;

    private Actions() {}

    /** Names of what can be recorded, at most six. */
    static List<String> at(Room room, Cage cage, Role role) {
        List<String> names = new ArrayList<>(role == Role.SITTER ? ofSitter() : ofKeeper(room, cage));
        return List.copyOf(names.subList(0, Math.min(MOST, names.size())));
    }

    private static List<String> ofSitter() {
        return List.of("count", "note", "floor-egg", "loose");
    }

    private static List<String> ofKeeper(Room room, Cage cage) {
        Optional<Pair> pair = room.pairIn(cage);
        if (pair.isPresent()) {
            return ofPair(room, cage, pair.get());
        }
        if (room.headsIn(cage) == 0) {
            return cage.use() == Use.BREEDING
                    ? List.of("pair-up", "put-in", "cleaned", "note")
                    : List.of("put-in", "cleaned", "note");
        }
        return cage.use() == Use.BREEDING
                ? List.of("count", "take-out", "put-in", "look-over", "pair-up", "cleaned")
                : List.of("count", "take-out", "put-in", "look-over", "cleaned", "note");
    }

    private static List<String> ofPair(Room room, Cage cage, Pair pair) {
        if (!room.together(pair)) {
            return room.henOut(pair).isPresent()
                    ? List.of("take-out", "look-over", "cleaned", "note")
                    : pair.eggs() > 0
                            ? List.of("egg", "floor-egg", "round-over", "take-out", "look-over", "box-turned")
                            : List.of("take-out", "look-over", "box-off", "cleaned", "box-cleaned", "note");
        }
        if (cage.box().isTurned()) {
            return List.of("box-off", "take-out", "look-over", "floor-egg", "box-on", "note");
        }
        if (cage.box().isOn()) {
            return pair.eggs() > 0
                    ? List.of("egg", "floor-egg", "round-over", "box-turned", "take-out", "note")
                    : List.of("egg", "floor-egg", "box-off", "box-turned", "take-out", "look-over");
        }
        return pair.eggs() > 0
                ? List.of("egg", "box-on", "floor-egg", "round-over", "take-out", "look-over")
                : List.of("box-on", "look-over", "take-out", "floor-egg", "box-cleaned", "note");
    }
}
