package org.cagewall.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/**
 * Which eggs could go to another nest, and to which: as many as possible; then with the least gaps together; then spread
 * evenly over the hosts. Pure; any thread.
 *
 * <p>Offered are, of the eggs that may hatch: those whose chicks come too late in a nest of which something is done in
 * time; the last ones of a nest that holds more than one hen covers; and one or two late ones that are all a nest holds
 * and all it will. A chipped egg, and one that is overdue, stays where it is. A nest that offers any takes none.
 *
 * <p>A host has its box and its pair, both birds at home and not being parted, is no sickroom, and holds nobody marked as
 * harming young; its hen is of the species of the egg. It is at the same stage: from the expected hatching of the egg to
 * the host's own range, which reaches from the first to the last hatching of its eggs that may hatch and of its chicks in
 * the box, are {@link #MOST_GAP} days or fewer. A hen with none of these, on eggs known to be clear, counts by the days on
 * which they would have hatched. An egg that nobody sits on yet is sat on from the day it is moved.
 *
 * <p>A host has room as long as what may become of it stays within the room's settings, both for what one hen covers and
 * for what one pair feeds. For the hen count the eggs that may hatch and those she has still to lay; for the pair the
 * same, since each may become a chick, and the chicks they feed, in the box and out of it. Clear and addled eggs do not
 * count: they come out when the others go in.
 */
final class Fosters {

    /** Common practice, no source; 2 to 4 days are usual advice. */
    static final int MOST_GAP = 3;

    /** So many late eggs that are all a nest holds are worth moving. Common practice, no source. */
    private static final int FEW = 2;

    private final Room room;
    private final Almanac almanac;
    private final LocalDate today;
    private final List<Offer> offers = new ArrayList<>();
    private final List<Host> hosts = new ArrayList<>();

    /** Why an egg leaves its nest. */
    private enum Leaving {
        LATE,
        FEW,
        MANY
    }

    /** An egg that could go. */
    private record Offer(Nests from, EggOutlook egg, Leaving why) {

        boolean isLate() {
            return why != Leaving.MANY;
        }
    }

    /** A nest that could take some. */
    private record Host(Nests nest, HostStage stage, int places) {

        Outlook outlook() {
            return nest.course().nest();
        }
    }

    private Fosters(Room room, Almanac almanac, LocalDate today) {
        this.room = room;
        this.almanac = almanac;
        this.today = today;
    }

    /**
     * What could be moved today.
     *
     * @param almanac of the room
     * @param nests in the order of the walk; the answer has the eggs in the order of theirs
     */
    static List<FosterMove> of(Room room, Almanac almanac, LocalDate today, List<Nests> nests) {
        Fosters fosters = new Fosters(room, almanac, today);
        nests.forEach(fosters::offer);
        Set<Long> givers =
                fosters.offers.stream().map(offer -> offer.from().cage().id()).collect(Collectors.toSet());
        nests.stream()
                .filter(nest -> !givers.contains(nest.cage().id()))
                .flatMap(nest -> fosters.host(nest).stream())
                .forEach(fosters.hosts::add);
        return fosters.moves();
    }

    private void offer(Nests nest) {
        List<EggOutlook> live = HostStage.live(nest.course().nest());
        Set<Lying> late =
                nest.late().stream().flatMap(young -> young.lying().stream()).collect(Collectors.toSet());
        boolean few = isFew(nest, live, late);
        if (!few && !nest.isPartlyInTime()) {
            late = Set.of();
        }
        Set<Lying> last = live.stream()
                .sorted(Comparator.comparing(HostStage::hatch))
                .skip(room.settings().mostEggs())
                .map(EggOutlook::lying)
                .collect(Collectors.toCollection(HashSet::new));
        for (EggOutlook egg : live) {
            if (late.contains(egg.lying()) && canGo(egg)) {
                offers.add(new Offer(nest, egg, few ? Leaving.FEW : Leaving.LATE));
            } else if (last.contains(egg.lying()) && canGo(egg)) {
                offers.add(new Offer(nest, egg, Leaving.MANY));
            }
        }
    }

    /** Whether one or two late eggs are all it holds, and all it will. */
    private boolean isFew(Nests nest, List<EggOutlook> live, Set<Lying> late) {
        return live.size() <= FEW
                && live.stream().allMatch(egg -> late.contains(egg.lying()) && canGo(egg))
                && nest.course().nest().chicksHere().isEmpty()
                && nest.course().laying().isEmpty();
    }

    private boolean canGo(EggOutlook egg) {
        return egg.lying().egg().pipped().isEmpty()
                && egg.hatch().filter(due -> !due.window().isPast(today)).isPresent();
    }

    private Optional<Host> host(Nests nest) {
        int places = places(nest);
        return HostStage.of(nest.course().nest())
                .filter(stage -> isFit(nest.cage()) && places > 0)
                .map(stage -> new Host(nest, stage, places));
    }

    private boolean isFit(Cage cage) {
        return cage.box().hanging().isPresent()
                && !cage.use().isSickroom()
                && room.harmingYoungIn(cage).isEmpty()
                && room.pairIn(cage)
                        .filter(pair -> !pair.isBeingParted() && isAtHome(cage, pair))
                        .isPresent();
    }

    private boolean isAtHome(Cage cage, Pair pair) {
        Set<Long> there = room.birdsIn(cage).stream().map(Bird::id).collect(Collectors.toSet());
        return there.contains(pair.cock()) && there.contains(pair.hen());
    }

    private int places(Nests nest) {
        Outlook outlook = nest.course().nest();
        int eggs = HostStage.live(outlook).size() + toCome(nest.course());
        int chicks = outlook.chicksHere().size();
        return Math.min(room.settings().mostEggs() - eggs, room.settings().mostChicks() - eggs - chicks);
    }

    /** How many she has still to lay of a usual clutch that she has begun. */
    private static int toCome(Course course) {
        return course.laying()
                .map(round -> round.laid().size())
                .filter(laid -> laid > 0)
                .map(laid -> Math.max(0, WorkingBack.usual(course.nest().timetable(), Timing.CLUTCH) - laid))
                .orElse(0);
    }

    private List<FosterMove> moves() {
        if (offers.isEmpty()) {
            return List.of();
        }
        FosterFlow flow = new FosterFlow(
                offers.size(), hosts.stream().mapToInt(Host::places).toArray());
        for (int i = 0; i < offers.size(); i++) {
            for (int j = 0; j < hosts.size(); j++) {
                int gap = Math.abs(gap(offers.get(i), hosts.get(j)));
                if (gap <= MOST_GAP && areOfOneKind(offers.get(i), hosts.get(j))) {
                    flow.fits(i, j, gap);
                }
            }
        }
        List<OptionalInt> found = flow.shareOut();
        List<FosterMove> moves = new ArrayList<>();
        for (int i = 0; i < offers.size(); i++) {
            if (found.get(i).isPresent()) {
                moves.add(move(offers.get(i), hosts.get(found.get(i).getAsInt())));
            }
        }
        return moves;
    }

    private boolean areOfOneKind(Offer offer, Host host) {
        String ofTheEgg = almanac.timetable(offer.egg().lying().pair()).species();
        return host.outlook().timetable().species().equals(ofTheEgg);
    }

    private int gap(Offer offer, Host host) {
        return host.stage().gap(offer.egg(), today);
    }

    private FosterMove move(Offer offer, Host host) {
        int gap = gap(offer, host);
        return new FosterMove(
                offer.egg().lying(),
                offer.from().cage(),
                host.nest().cage(),
                Math.abs(gap),
                offer.isLate() && host.nest().isInTime()
                        ? Message.of(
                                "plan.foster-why-then-late",
                                leaving(offer),
                                stage(host, gap),
                                host.nest().cage().name(),
                                host.nest().question().clearBy())
                        : Message.of("plan.foster-why", leaving(offer), stage(host, gap)));
    }

    private Message leaving(Offer offer) {
        String cage = offer.from().cage().name();
        return switch (offer.why()) {
            case LATE -> Message.of("plan.foster-late");
            case FEW -> Message.of("plan.foster-few", cage);
            case MANY -> Message.of("plan.foster-many", cage, room.settings().mostEggs());
        };
    }

    private static Message stage(Host host, int gap) {
        String cage = host.nest().cage().name();
        if (host.stage().on() == HostStage.On.CLEAR_EGGS) {
            return gap == 0
                    ? Message.of("plan.foster-clear-same", cage)
                    : Message.of("plan.foster-clear-gap", cage, Math.abs(gap));
        }
        if (gap == 0) {
            return Message.of("plan.foster-same", cage);
        }
        return gap < 0 ? Message.of("plan.foster-before", cage, -gap) : Message.of("plan.foster-after", cage, gap);
    }
}
