package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.room.care.Headcount;
import org.cagewall.room.care.Routine;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.NestLook;

/**
 * One cage or flight as it stands. Immutable; any thread.
 *
 * @param number its number on cards, from 1 in the order of adding, never used again
 * @param joinedTo the cage it is part of while the divider is pulled
 * @param flock birds in it that are not known one by one
 * @param dummies eggs of stone or plastic that lie in its nest
 * @param looks into its nest box, oldest first: the last and the last on an earlier day, the last that told of plucking
 *     and the last such on an earlier day
 * @param lastVisit the last check made of it
 */
public record Cage(
        long id,
        int number,
        String name,
        Optional<Place> place,
        Use use,
        Optional<Keeps> keeps,
        Optional<LocalDate> retired,
        Optional<Long> joinedTo,
        Routine routine,
        int flock,
        Box box,
        int dummies,
        List<NestLook> looks,
        Optional<LocalDate> cleaned,
        Optional<Headcount> counted,
        Optional<PrintedCard> card,
        Optional<Visit> lastVisit) {

    public Cage {
        looks = List.copyOf(looks);
    }

    public boolean inUse() {
        return retired.isEmpty() && joinedTo.isEmpty();
    }

    /** The last look into its nest box. */
    public Optional<NestLook> nestLook() {
        return looks.stream().reduce((earlier, later) -> later);
    }

    /** The day on which backs and napes were last looked at in its nest box. */
    public Optional<LocalDate> backsSeen() {
        return looks.stream()
                .filter(look -> look.plucked().isPresent())
                .map(NestLook::day)
                .reduce((earlier, later) -> later);
    }

    /** The same cage, last visited so. */
    public Cage visited(Visit last) {
        return with(box, looks, Optional.of(last));
    }

    /** The same cage without what was done to its nest box on that day. */
    Cage before(LocalDate day) {
        return with(
                box.before(day),
                looks.stream().filter(look -> !look.day().equals(day)).toList(),
                lastVisit);
    }

    private Cage with(Box otherBox, List<NestLook> otherLooks, Optional<Visit> otherVisit) {
        return new Cage(
                id,
                number,
                name,
                place,
                use,
                keeps,
                retired,
                joinedTo,
                routine,
                flock,
                otherBox,
                dummies,
                otherLooks,
                cleaned,
                counted,
                card,
                otherVisit);
    }
}
