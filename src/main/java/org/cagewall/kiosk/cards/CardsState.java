package org.cagewall.kiosk.cards;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cagewall.cards.CardToPrint;

/**
 * What the page of cards shows. Immutable; any thread, and free of Swing.
 *
 * @param may what the person who records may do here
 * @param step whether cards are being chosen, or laid out on paper
 * @param cages every cage in use: those whose card is missing or old first, each group in walking order
 * @param chosen the cages whose cards are to be printed
 * @param looked the cage whose card is looked at
 * @param news where the last cards that were printed are
 * @param saved the cards that went into a file last, of which nobody has said yet whether they hang
 */
public record CardsState(
        String subtitle,
        May may,
        Step step,
        List<CageCard> cages,
        Set<String> chosen,
        Optional<String> looked,
        Optional<String> news,
        List<CardToPrint> saved) {

    /** Who records: one who prints, or one who may only read. */
    public enum May {
        PRINT,
        READ
    }

    /** What is being done with cards. */
    public enum Step {
        CHOOSING,
        PRINTING
    }

    /** How a cage's card stands. */
    public enum Standing {
        NEVER_PRINTED,
        CHANGED,
        UP_TO_DATE
    }

    /**
     * A cage and its card.
     *
     * @param first how the card stands, in words
     * @param second the first thing that has changed, or since when it hangs
     * @param changes all that has changed, a sentence each
     * @param face the card as it would be printed now
     */
    public record CageCard(
            String cage, Standing standing, String first, String second, List<String> changes, Face face) {

        public CageCard {
            changes = List.copyOf(changes);
        }
    }

    /** The words of a card, and its code. */
    public record Face(String name, String pair, String since, List<String> lines, String code) {

        public Face {
            lines = List.copyOf(lines);
        }
    }

    public CardsState {
        cages = List.copyOf(cages);
        chosen = Set.copyOf(chosen);
        saved = List.copyOf(saved);
    }

    Optional<CageCard> theLooked() {
        return cages.stream()
                .filter(each -> looked.equals(Optional.of(each.cage())))
                .findFirst();
    }

    /** Those whose card is missing or old. */
    Set<String> changed() {
        return cages.stream()
                .filter(each -> each.standing() != Standing.UP_TO_DATE)
                .map(CageCard::cage)
                .collect(Collectors.toSet());
    }

    CardsState choosing(Set<String> others) {
        return new CardsState(subtitle, may, step, cages, others, looked, Optional.empty(), saved);
    }

    CardsState lookingAt(String cage) {
        return new CardsState(subtitle, may, step, cages, chosen, Optional.of(cage), news, saved);
    }

    CardsState at(Step next) {
        return new CardsState(subtitle, may, next, cages, chosen, looked, Optional.empty(), List.of());
    }

    CardsState telling(String what) {
        return new CardsState(subtitle, may, Step.CHOOSING, cages, chosen, looked, Optional.of(what), List.of());
    }

    /** These are in a file; whether they hang is asked. */
    CardsState asking(String where, List<CardToPrint> cards) {
        return new CardsState(subtitle, may, Step.CHOOSING, cages, chosen, looked, Optional.of(where), cards);
    }

    /** The question whether they hang is answered. */
    CardsState answered() {
        return new CardsState(subtitle, may, step, cages, chosen, looked, Optional.empty(), List.of());
    }
}
