package org.cagewall.room;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One cage or flight as it stands. Immutable; any thread.
 *
 * @param number its number on cards, from 1 in the order of adding, never used again
 * @param joinedTo the cage it is part of while the divider is pulled
 * @param flock birds in it that are not known one by one
 * @param dummies eggs of stone or plastic that lie in its nest
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
        Optional<NestLook> nestLook,
        Optional<LocalDate> cleaned,
        Optional<Headcount> counted,
        Optional<PrintedCard> card,
        Optional<Visit> lastVisit) {

    public boolean inUse() {
        return retired.isEmpty() && joinedTo.isEmpty();
    }

    /** The same cage, last visited so. */
    public Cage visited(Visit last) {
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
                box,
                dummies,
                nestLook,
                cleaned,
                counted,
                card,
                Optional.of(last));
    }
}
