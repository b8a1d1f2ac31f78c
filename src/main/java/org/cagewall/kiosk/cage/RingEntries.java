package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.ChickDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.bird.RingLoss;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Lying;

/**
 * What the record tells of the ring of one chick in a nest, and how that is told anew: what was told is struck out and
 * stays readable, and the right ring is told on the day of the wrong one. Pure; any thread.
 */
final class RingEntries {

    private final Room room;
    private final Lying chick;
    private final ChickRing ring;
    private final List<LogEntry> log;

    /** The log holds everything that was told since the day the chick was ringed. */
    RingEntries(Room room, Lying chick, ChickRing ring, List<LogEntry> log) {
        this.room = room;
        this.chick = chick;
        this.ring = ring;
        this.log = log.stream().filter(entry -> !entry.isStruck()).toList();
    }

    /** The same chick with another ring, ringed and looked at on the same days. */
    List<Pen.Dated> corrected(String other, Reason why, LocalDate today) {
        List<Pen.Dated> deeds = struck(why, today);
        deeds.addAll(toldOf(other));
        return deeds;
    }

    /** Both chicks, each with the ring that was told of the other; only what is struck out is free to be told again. */
    List<Pen.Dated> swapped(RingEntries other, Reason why, LocalDate today) {
        List<Pen.Dated> deeds = struck(why, today);
        deeds.addAll(other.struck(why, today));
        deeds.addAll(toldOf(other.ring.ring()));
        deeds.addAll(other.toldOf(ring.ring()));
        return deeds;
    }

    /** The chick without a ring, and its ring written off. */
    List<Pen.Dated> lost(Reason why, LocalDate today) {
        List<Pen.Dated> deeds = struck(why, today);
        deeds.add(Pen.Dated.on(new CardDeed.RingSpoilt(ring.ring(), Optional.of(RingLoss.LOST)), today));
        return deeds;
    }

    /** What was told of the chick's own ring, told of another. */
    private List<Pen.Dated> toldOf(String other) {
        List<Pen.Dated> deeds = new ArrayList<>();
        ringed().forEach(told -> {
            ChickDeed.ChickRinged was = (ChickDeed.ChickRinged) told.deed();
            deeds.add(told.anew(new ChickDeed.ChickRinged(was.cage(), was.mark(), was.round(), other)));
        });
        checked().forEach(told -> deeds.add(told.anew(renamed((ChickDeed.RingChecked) told.deed()))));
        return deeds;
    }

    private record ToldOnce(LogEntry entry, Line line) {

        Deed deed() {
            return line.deed();
        }

        /** This told in its place, of the same day, as surely as that was known. */
        Pen.Dated anew(Deed other) {
            return new Pen.Dated(other, entry.day(), line.told().about());
        }
    }

    private List<Pen.Dated> struck(Reason why, LocalDate today) {
        List<Pen.Dated> deeds = new ArrayList<>();
        Stream.concat(checked().stream(), ringed().stream())
                .forEach(told -> deeds.add(Pen.Dated.on(
                        new CardDeed.StruckOut(Math.toIntExact(told.entry().number()), why.id()), today)));
        return deeds;
    }

    private List<ToldOnce> ringed() {
        return all().filter(told -> told.deed() instanceof ChickDeed.ChickRinged deed
                        && deed.ring().equalsIgnoreCase(ring.ring()))
                .toList();
    }

    private List<ToldOnce> checked() {
        return all().filter(told -> told.deed() instanceof ChickDeed.RingChecked deed && isIt(deed, told.entry()))
                .toList();
    }

    private Stream<ToldOnce> all() {
        return log.stream()
                .flatMap(entry -> Lines.read(entry.line(), entry.day()) instanceof Lines.Understood read
                        ? Stream.of(new ToldOnce(entry, read.line()))
                        : Stream.empty());
    }

    private boolean isIt(ChickDeed.RingChecked deed, LogEntry entry) {
        boolean there = room.cage(deed.cage())
                .filter(cage -> chick.egg().wasIn(cage.id(), entry.day()))
                .isPresent();
        boolean ofItsRound = deed.round()
                .filter(round -> !round.equals(Integer.toString(chick.round().number())))
                .isEmpty();
        return there
                && ofItsRound
                && Stream.of(Optional.of(chick.egg().mark()), chick.egg().letter(), Optional.of(ring.ring()))
                        .flatMap(Optional::stream)
                        .anyMatch(deed.mark()::equalsIgnoreCase);
    }

    private ChickDeed.RingChecked renamed(ChickDeed.RingChecked was) {
        String mark = was.mark().equalsIgnoreCase(ring.ring()) ? chick.egg().mark() : was.mark();
        return new ChickDeed.RingChecked(was.cage(), mark, was.round());
    }
}
