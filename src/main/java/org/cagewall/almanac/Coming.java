package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.room.Lying;
import org.cagewall.room.Stage;

/**
 * One thing that comes next at a cage: something its keeper does, or something the birds do. Immutable; any thread.
 *
 * @param whom the eggs or chicks it is about; none where it is about the nest as a whole
 */
public record Coming(What what, Window window, List<Lying> whom) {

    /** So many days past its time a ring is not thought of any more. Common practice, no source. */
    private static final int RING_DAYS = 5;

    /** What comes. */
    public enum What {
        FIRST_EGG,
        NEXT_EGG,
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
     * Everything that is still to come at a cage, the soonest first, one of each kind. What it is too late for is left out.
     *
     * @param today the day for which it is asked
     */
    public static List<Coming> at(Outlook nest, LocalDate today) {
        List<Coming> all = new ArrayList<>();
        of(all, What.FIRST_EGG, nest.firstEgg());
        nest.nextEgg().ifPresent(egg -> all.add(new Coming(What.NEXT_EGG, egg.window(), List.of())));
        nest.firstLook()
                .or(nest::secondLook)
                .ifPresent(look -> all.add(new Coming(What.CANDLE, look.window(), look.eggs())));
        eggs(all, nest);
        chicks(all, nest);
        of(all, What.BACKS, nest.backs());
        nest.nestLook().ifPresent(day -> all.add(new Coming(What.NEST_LOOK, Window.on(day), List.of())));
        nest.clearEggs().stream()
                .min(Comparator.comparing(ClearEggs::from))
                .ifPresent(clear -> all.add(new Coming(What.CLEAR_EGGS, Window.on(clear.from()), clear.eggs())));
        nest.rounds().stream()
                .flatMap(round -> round.nextRound().stream())
                .filter(Due::isOpen)
                .findFirst()
                .ifPresent(due -> all.add(new Coming(What.NEXT_ROUND, due.window(), List.of())));
        nest.parting().filter(parting -> parting.begun().isPresent()).ifPresent(parting -> stages(all, parting));
        all.removeIf(coming -> coming.isTooLate(today));
        all.sort(Comparator.comparing((Coming each) -> each.window().expected())
                .thenComparing(each -> each.window().latest()));
        return List.copyOf(all);
    }

    /** A foot has outgrown its ring, and a ring that would have come off has. */
    private boolean isTooLate(LocalDate today) {
        return (what == What.RING || what == What.RING_CHECK)
                && today.isAfter(window.latest().plusDays(RING_DAYS));
    }

    private static void of(List<Coming> all, What what, Optional<Due> due) {
        due.filter(Due::isOpen).ifPresent(it -> all.add(new Coming(what, it.window(), List.of())));
    }

    private static void eggs(List<Coming> all, Outlook nest) {
        soonest(all, What.HATCH, nest.eggsHere(), EggOutlook::hatch, EggOutlook::lying);
    }

    private static void chicks(List<Coming> all, Outlook nest) {
        List<ChickOutlook> here = nest.chicksHere();
        soonest(all, What.RING, here, ChickOutlook::ringing, ChickOutlook::lying);
        soonest(all, What.RING_CHECK, here, ChickOutlook::ringCheck, ChickOutlook::lying);
        soonest(all, What.LEAVE_BOX, here, ChickOutlook::outOfBox, ChickOutlook::lying);
        soonest(all, What.WEAN, here, ChickOutlook::independent, ChickOutlook::lying);
    }

    private static <T> void soonest(
            List<Coming> all, What what, List<T> each, Function<T, Optional<Due>> due, Function<T, Lying> lying) {
        List<T> open = each.stream()
                .filter(one -> due.apply(one).filter(Due::isOpen).isPresent())
                .sorted(Comparator.comparing(
                        (T one) -> due.apply(one).orElseThrow().window().expected()))
                .toList();
        if (open.isEmpty()) {
            return;
        }
        Window first = due.apply(open.get(0)).orElseThrow().window();
        LocalDate until = first.expected();
        all.add(new Coming(
                what,
                first,
                open.stream()
                        .filter(one -> !due.apply(one)
                                .orElseThrow()
                                .window()
                                .expected()
                                .isAfter(until))
                        .map(lying)
                        .toList()));
    }

    private static void stages(List<Coming> all, PartingOutlook parting) {
        Stream.of(Stage.values()).filter(stage -> parting.stage(stage).isOpen()).forEach(stage -> parting.stage(stage)
                .due()
                .ifPresent(due -> all.add(new Coming(What.valueOf(stage.name()), due.window(), List.of()))));
    }

    public boolean isLate(LocalDate today) {
        return what.isKeepers() && window.isPast(today);
    }

    /** Whether its days have begun. */
    public boolean isDue(LocalDate today) {
        return !today.isBefore(window.earliest());
    }
}
