package org.cagewall.tasks;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.room.Cage;
import org.cagewall.room.NestKind;
import org.cagewall.room.Room;
import org.cagewall.room.Species;
import org.cagewall.text.Message;

/** How the nest of a cage is spoken of: a box, which is shut, or an open pan or nest by its own word. Pure; any thread. */
public record NestName(NestKind kind) {

    /** By the species of the pair there, else of the room; of one that is in no book, a box. */
    public static NestName at(Room room, Cage cage) {
        String species =
                room.pairIn(cage).map(room::speciesOf).orElse(room.settings().species());
        return new NestName(Species.of(species).map(Species::nest).orElse(NestKind.BOX));
    }

    /** The sentence of that key about a box; about an open nest the one beside it, with its word after the rest. */
    public Message say(String key, Object... args) {
        if (kind == NestKind.BOX) {
            return Message.of(key, args);
        }
        List<Object> more = new ArrayList<>(List.of(args));
        more.add(kind);
        return new Message(key + "-open", more);
    }
}
