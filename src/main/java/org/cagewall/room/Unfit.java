package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.LookedOver;
import org.cagewall.room.care.Sign;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/** What speaks against pairing a bird up as it is known on a day, for the rules and for the list alike. Pure; any thread. */
public final class Unfit {

    /** What is told of a cage and not of a bird in it. */
    private static final Set<String> OF_THE_CAGE = Set.of(Sign.EGG_ON_FLOOR.id(), Sign.DISH_EMPTY.id());

    private Unfit() {}

    /** Each as a short remark, "to be watched since 3 March"; none of a bird that is fit as far as anybody knows. */
    public static List<Message> remarks(Room room, Bird bird, LocalDate day) {
        Optional<Cage> cage = bird.cageOn(day).flatMap(room::cage);
        return Stream.of(
                        bird.look().flatMap(look -> look(look, day)),
                        cage.filter(there -> there.use().isSickroom())
                                .map(there -> Message.of("word.unfit.sickroom", there.name(), there.use())),
                        cage.flatMap(there -> reported(room, there, day)))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Message> look(LookedOver look, LocalDate day) {
        return look.condition() == Condition.FIT || look.day().isAfter(day)
                ? Optional.empty()
                : Optional.of(Message.of("word.unfit." + Message.word(look.condition()), look.day()));
    }

    private static Optional<Message> reported(Room room, Cage cage, LocalDate day) {
        return room.unreadAt(cage)
                .filter(visit -> !visit.day().isAfter(day))
                .filter(visit -> visit.signs().isEmpty() || !OF_THE_CAGE.containsAll(visit.signs()))
                .map(visit -> visit.signs().isEmpty()
                        ? Message.of("word.unfit.reported", cage.name(), visit.day())
                        : Message.of("word.unfit.reported-as", cage.name(), visit.day(), Sign.told(visit.signs())));
    }

    /** The pair that a bird has not left yet. */
    public static Optional<Pair> notParted(Room room, Bird bird) {
        return room.pairs().stream()
                .filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                .filter(pair -> bird.outOf(pair).isEmpty())
                .reduce((earlier, later) -> later);
    }
}
