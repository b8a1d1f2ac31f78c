package org.cagewall.room;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.card.CardFace;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.text.Message;

/** What the card of each cage says today. Pure; any thread. */
public final class CardFaces {

    /** A cage with more birds than this has their number pencilled on, not their rings printed. */
    private static final int RINGS_ON_CARD = 4;

    private CardFaces() {}

    public static CardFace of(Room room, Cage cage) {
        CardFace face = CardFace.of(cage.name(), Message.word(cage.use()));
        return room.pairIn(cage).map(pair -> ofPair(room, face, pair)).orElseGet(() -> ofOthers(room, face, cage));
    }

    /** Whether a card was printed or pencilled for the cage and says something else than it should. */
    public static boolean isOutOfDate(Room room, Cage cage) {
        return cage.card().filter(card -> !card.face().equals(of(room, cage))).isPresent();
    }

    /** How a scanned card stands to what the card of its cage should say. */
    public enum Age {
        /** It says what it should, in print or by pencil. */
        UP_TO_DATE,
        /** It is the one that was printed last, and something has changed since. */
        CHANGED,
        /** It says something else, and is not the one that was printed last. */
        REPLACED
    }

    /** A card that says what it should is up to date, whether its printing was recorded or not. */
    public static Age age(Room room, Cage cage, CardCode scanned) {
        if (cage.card().filter(card -> card.digest().equals(scanned.digest())).isPresent()) {
            return isOutOfDate(room, cage) ? Age.CHANGED : Age.UP_TO_DATE;
        }
        return of(room, cage).digest().equals(scanned.digest()) ? Age.UP_TO_DATE : Age.REPLACED;
    }

    /** What is different on the card that hangs there from what it should say; a sentence each. */
    public static List<Message> changes(Room room, Cage cage) {
        return cage.card().map(card -> card.face().differences(of(room, cage))).orElse(List.of());
    }

    public static CardCode code(Room room, Cage cage) {
        return CardCode.of(room.code(), cage.number(), of(room, cage));
    }

    private static CardFace ofPair(Room room, CardFace face, Pair pair) {
        CardFace paired = face.withPair(pair.label()).withSince(pair.since());
        if (room.cockOut(pair).isEmpty()) {
            paired = paired.withCock(room.ring(pair.cock()));
        }
        if (room.henOut(pair).isEmpty()) {
            paired = paired.withHen(room.ring(pair.hen()));
        }
        Optional<Round> last = pair.rounds().stream().reduce((earlier, later) -> later);
        return last.isPresent() ? paired.withRound(last.get().number()) : paired;
    }

    private static CardFace ofOthers(Room room, CardFace face, Cage cage) {
        Stream<String> keeps = cage.keeps().stream().map(kept -> kept.name().toLowerCase(Locale.ROOT));
        Stream<String> rings = cage.flock() == 0 && room.birdsIn(cage).size() <= RINGS_ON_CARD
                ? room.birdsIn(cage).stream().map(Bird::ring)
                : Stream.empty();
        return face.withLines(Stream.concat(keeps, rings).toList());
    }
}
