package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Species;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;

/**
 * All that is expected of one cage, worked out from what was recorded and never from today. Immutable; any thread.
 *
 * @param timetable by which it is reckoned: of the hen's species, else the room's
 * @param pair the pair of the cage, as long as one of the two stands there
 * @param firstEgg of the pair with this box; happened once its round has begun
 * @param rounds all of the pair, oldest first
 * @param eggs all of the pair and all that lie here, oldest first, hatched, taken out and moved away ones too
 * @param chicks the same of chicks: here, weaned, lost, moved away
 * @param firstLook at the eggs against the light; empty when there is none to do
 * @param secondLook the same again, later
 * @param nestLook the day of the next look into the box; every second day while chicks are in it
 * @param backs from when backs and napes are looked at
 * @param clearEggs what may be taken out, a clutch each
 * @param parting empty where there is no pair
 */
public record Outlook(
        long cage,
        Box box,
        Timetable timetable,
        Optional<Pair> pair,
        Optional<Due> firstEgg,
        List<RoundOutlook> rounds,
        List<EggOutlook> eggs,
        List<ChickOutlook> chicks,
        Optional<NestCandling> firstLook,
        Optional<NestCandling> secondLook,
        Optional<LocalDate> nestLook,
        Optional<Due> backs,
        List<ClearEggs> clearEggs,
        Optional<PartingOutlook> parting) {

    /** From one look at the chicks in their box to the next, in days; common practice, no source. */
    public static final int NEST_LOOK_DAYS = 2;

    public Outlook {
        rounds = List.copyOf(rounds);
        eggs = List.copyOf(eggs);
        chicks = List.copyOf(chicks);
        clearEggs = List.copyOf(clearEggs);
    }

    /** From when the hen sits on the round under way; it may still be foreseen. */
    public Optional<SatFrom> sittingFrom() {
        return underWay().flatMap(RoundOutlook::start);
    }

    /** The youngest round that has not ended. */
    public Optional<RoundOutlook> underWay() {
        return rounds.stream().filter(each -> each.round().isOpen()).reduce((earlier, later) -> later);
    }

    /** The next egg of the round under way. */
    public Optional<NextEgg> nextEgg() {
        return underWay().flatMap(RoundOutlook::nextEgg);
    }

    /**
     * The morning on which eggs that were taken up as they were laid are put back together; empty for a species of which
     * they are left, and once they are sat on.
     */
    public Optional<LocalDate> putBack() {
        return underWay()
                .map(RoundOutlook::round)
                .filter(round -> round.sitting().isEmpty() && !ownEggsHere().isEmpty())
                .filter(round ->
                        round.eggs().stream().allMatch(egg -> egg.chick().isEmpty()))
                .flatMap(round -> round.eggs().stream().map(Egg::laid).min(LocalDate::compareTo))
                .flatMap(first -> Species.of(timetable.species())
                        .flatMap(Species::putBack)
                        .map(morning -> first.plusDays(morning - 1L)));
    }

    /** Those of the round under way that lie here, or were taken up from here for a while. */
    List<Lying> ownEggsHere() {
        Optional<Round> round = underWay().map(RoundOutlook::round);
        return eggsHere().stream()
                .map(EggOutlook::lying)
                .filter(lying ->
                        round.filter(it -> it.id() == lying.round().id()).isPresent())
                .toList();
    }

    /** The eggs that lie here now. */
    public List<EggOutlook> eggsHere() {
        return eggs.stream()
                .filter(egg -> egg.here() && egg.lying().egg().isLying())
                .toList();
    }

    /** The chicks in the care of this cage now. */
    public List<ChickOutlook> chicksHere() {
        return chicks.stream()
                .filter(each -> each.here() && each.chick().isInCare())
                .toList();
    }

    /**
     * How far the cage is. A hen is laying until she was seen to sit, the usual clutch is there, or the next egg has not
     * come for so long that it is asked about; chicks in the box go before eggs beside them, and eggs that may hatch
     * before chicks that are out.
     *
     * @param today the day for which it is asked
     */
    public NestState state(LocalDate today) {
        if (pair.filter(it -> it.parting().isPresent()).isPresent()) {
            return NestState.PARTING;
        }
        List<Chick> young = chicksHere().stream().map(ChickOutlook::chick).toList();
        if (young.stream().anyMatch(chick -> chick.outOfBox().isEmpty())) {
            return NestState.CHICKS_IN_BOX;
        }
        List<Egg> lying = eggsHere().stream().map(egg -> egg.lying().egg()).toList();
        if (lying.stream().anyMatch(Egg::mayHatch) || young.isEmpty() && !lying.isEmpty()) {
            return isLaying(today) ? NestState.LAYING : NestState.SITTING;
        }
        if (!young.isEmpty()) {
            return NestState.CHICKS_OUT;
        }
        if (pair.isEmpty()) {
            return NestState.EMPTY;
        }
        return box.hanging().isPresent() ? NestState.BOX_ON : NestState.PAIRED;
    }

    private boolean isLaying(LocalDate today) {
        return underWay()
                .filter(each -> each.round().sitting().isEmpty())
                .flatMap(RoundOutlook::nextEgg)
                .flatMap(NextEgg::tooLongFrom)
                .filter(today::isBefore)
                .isPresent();
    }
}
