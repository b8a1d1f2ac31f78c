package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Stage;

/**
 * One thing that comes next at a cage: something its keeper does, or something the birds do. Immutable; any thread.
 *
 * @param whom the eggs or chicks it is about; none where it is about the nest as a whole
 */
public record Coming(What what, Window window, List<Lying> whom) {

    /** So many days past its time a ring is not thought of any more. Common practice, no source. */
    public static final int RING_DAYS = 5;

    /** So many days past their time eggs were put back, or never taken up. Common practice, no source. */
    private static final int PUT_BACK_DAYS = 5;

    /** So many days past their time backs are not looked at any more: the eldest has left. Common practice, no source. */
    private static final int BACKS_DAYS = 10;

    /** So many days past their time a first egg, a hatching or a chick in its box is not waited for. Common practice. */
    private static final int BIRDS_DAYS = 30;

    private static final Comparator<Coming> BY_DAY = Comparator.comparing(
                    (Coming each) -> each.window().expected())
            .thenComparing(each -> each.window().latest());

    /** What comes. */
    public enum What {
        FIRST_EGG,
        NEXT_EGG,
        PUT_BACK,
        CANDLE,
        HATCH,
        RING,
        RING_CHECK,
        NEST_LOOK,
        BACKS,
        LEAVE_BOX,
        WEAN,
        CLEAR_EGGS,
        NEXT_ROUND,
        BOX_TURNED,
        BOX_OFF,
        COCK_OUT,
        HEN_OUT;

        /** Whether the keeper does it, so that it can be late; the rest is awaited. */
        public boolean isKeepers() {
            return switch (this) {
                case FIRST_EGG, NEXT_EGG, HATCH, LEAVE_BOX, NEXT_ROUND, CLEAR_EGGS -> false;
                default -> true;
            };
        }
    }

    public Coming {
        whom = List.copyOf(whom);
    }

    /**
     * What is still to come at a cage, the soonest first, one of each kind: that which is expected first, and the eggs or
     * chicks expected on that day. What it is too late for is left out.
     *
     * @param today the day for which it is asked
     */
    public static List<Coming> at(Outlook nest, LocalDate today) {
        Map<What, List<Coming>> kinds = each(nest, today).stream()
                .collect(Collectors.groupingBy(Coming::what, () -> new EnumMap<>(What.class), Collectors.toList()));
        return kinds.values().stream().map(Coming::soonest).sorted(BY_DAY).toList();
    }

    /**
     * Everything that is still to come at a cage: what concerns single eggs or chicks once for each, in the order of the
     * nest. What it is too late for is left out.
     *
     * @param today the day for which it is asked
     */
    public static List<Coming> each(Outlook nest, LocalDate today) {
        return gathered(nest, today).stream()
                .filter(coming -> !coming.isTooLate(today))
                .toList();
    }

    /**
     * What nobody can act on any more from that very day on.
     *
     * @param nest as it was known when the day began
     */
    public static List<Coming> lapsing(Outlook nest, LocalDate day) {
        Stream<Coming> eggGap = nest
                .nextEgg()
                .filter(egg -> egg.tooLongFrom().isPresent() && egg.givenUp().equals(day))
                .map(egg -> new Coming(What.NEXT_EGG, egg.window(), List.of()))
                .stream();
        Stream<Coming> candling = nest.firstLook().stream()
                .map(look -> new Coming(
                        What.CANDLE,
                        look.window(),
                        look.eggs().stream()
                                .filter(egg -> isOver(nest, egg, day) && !isOver(nest, egg, day.minusDays(1)))
                                .toList()))
                .filter(coming -> !coming.whom().isEmpty());
        return Stream.of(eggGap, candling, gathered(nest, day).stream().filter(coming -> coming.lapses()
                        .filter(day::equals)
                        .isPresent()))
                .flatMap(all -> all)
                .toList();
    }

    private static List<Coming> gathered(Outlook nest, LocalDate today) {
        List<Coming> all = new ArrayList<>();
        add(all, What.FIRST_EGG, nest.firstEgg(), List.of());
        nest.nextEgg().ifPresent(egg -> all.add(new Coming(What.NEXT_EGG, egg.window(), List.of())));
        nest.putBack().ifPresent(day -> all.add(new Coming(What.PUT_BACK, Window.on(day), nest.ownEggsHere())));
        candling(nest, today).ifPresent(all::add);
        nest.eggsHere().forEach(egg -> add(all, What.HATCH, egg.hatch(), List.of(egg.lying())));
        nest.chicksHere().forEach(chick -> {
            List<Lying> whom = List.of(chick.lying());
            add(all, What.RING, chick.ringing(), whom);
            add(all, What.RING_CHECK, chick.ringCheck(), whom);
            add(all, What.LEAVE_BOX, chick.outOfBox(), whom);
            add(all, What.WEAN, chick.independent(), whom);
        });
        nest.nestLook().ifPresent(day -> all.add(new Coming(What.NEST_LOOK, Window.on(day), List.of())));
        add(all, What.BACKS, nest.backs(), List.of());
        nest.clearEggs().forEach(clear -> all.add(new Coming(What.CLEAR_EGGS, Window.on(clear.from()), clear.eggs())));
        nest.rounds().stream()
                .flatMap(round -> round.nextRound().stream())
                .filter(Due::isOpen)
                .findFirst()
                .ifPresent(due -> all.add(new Coming(What.NEXT_ROUND, due.window(), List.of())));
        nest.parting()
                .filter(parting -> parting.begun().isPresent())
                .map(parting -> parting.on(today))
                .ifPresent(parting -> stages(all, parting));
        return all;
    }

    /**
     * The look against the light that comes next. An egg whose time is over shows nothing by it, and one that is known to be
     * full is not disturbed again for a second look that was missed.
     */
    private static Optional<Coming> candling(Outlook nest, LocalDate today) {
        boolean again = nest.firstLook().isEmpty();
        return nest.firstLook().or(nest::secondLook).flatMap(look -> {
            boolean missed = again && look.window().isPast(today);
            List<Lying> eggs = look.eggs().stream()
                    .filter(egg -> !isOver(nest, egg, today))
                    .filter(egg -> !(missed && egg.egg().state() == EggState.FULL))
                    .toList();
            return eggs.isEmpty() ? Optional.empty() : Optional.of(new Coming(What.CANDLE, look.window(), eggs));
        });
    }

    private static boolean isOver(Outlook nest, Lying egg, LocalDate today) {
        return nest.eggs().stream()
                .filter(each -> each.lying().equals(egg))
                .flatMap(each -> each.hatch().stream())
                .anyMatch(hatch -> hatch.window().isPast(today));
    }

    private static void add(List<Coming> all, What what, Optional<Due> due, List<Lying> whom) {
        due.filter(Due::isOpen).ifPresent(it -> all.add(new Coming(what, it.window(), whom)));
    }

    private static void stages(List<Coming> all, PartingOutlook parting) {
        Stream.of(Stage.values()).filter(stage -> parting.stage(stage).isOpen()).forEach(stage -> parting.stage(stage)
                .due()
                .map(Due::window)
                .map(window -> stage == Stage.HEN_OUT ? parting.henOutFor(window) : window)
                .ifPresent(window -> all.add(new Coming(What.valueOf(stage.name()), window, List.of()))));
    }

    private boolean isTooLate(LocalDate today) {
        return lapses().filter(day -> !today.isBefore(day)).isPresent();
    }

    /**
     * The day from which nobody can act on it any more: a foot has outgrown its ring, and a ring that would have come off
     * has; the eldest has left before its back was looked at; what the birds did not do for so long they did unseen, or will
     * not.
     */
    private Optional<LocalDate> lapses() {
        return switch (what) {
            case RING, RING_CHECK -> Optional.of(pastBy(RING_DAYS));
            case PUT_BACK -> Optional.of(pastBy(PUT_BACK_DAYS));
            case BACKS -> Optional.of(pastBy(BACKS_DAYS));
            case FIRST_EGG, HATCH, LEAVE_BOX -> Optional.of(pastBy(BIRDS_DAYS));
            default -> Optional.empty();
        };
    }

    private LocalDate pastBy(int days) {
        return window.latest().plusDays(days + 1L);
    }

    private static Coming soonest(List<Coming> ofAKind) {
        Coming first = ofAKind.stream().min(BY_DAY).orElseThrow();
        LocalDate until = first.window().expected();
        List<Lying> whom = ofAKind.stream()
                .filter(each -> !each.window().expected().isAfter(until))
                .flatMap(each -> each.whom().stream())
                .toList();
        return new Coming(first.what(), first.window(), whom);
    }

    /** Whether it is a stage of parting the pair. */
    public boolean isStage() {
        return Stream.of(Stage.values()).anyMatch(stage -> stage.name().equals(what.name()));
    }

    public boolean isLate(LocalDate today) {
        return what.isKeepers() && window.isPast(today);
    }

    /** Whether its days have begun. */
    public boolean isDue(LocalDate today) {
        return !today.isBefore(window.earliest());
    }
}
