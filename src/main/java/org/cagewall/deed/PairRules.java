package org.cagewall.deed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;
import org.cagewall.room.Unfit;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Message;

/** Rules about pairs, rounds and eggs. Pure; any thread. */
final class PairRules {

    /** After such a gap an egg rather begins a round than goes on with one, in days. Common practice, no source. */
    private static final int NEW_ROUND_GAP = 10;

    /** After such a gap an egg cannot belong to the same round, in days. Common practice, no source. */
    private static final int ROUND_LONG_OVER = 60;

    /** More eggs than a clutch is likely to have: usually up to 8 (species/budgerigar.txt); 10: common practice, no source. */
    private static final int FULL_CLUTCH = 10;

    private PairRules() {}

    static Rule labelIsFree(Optional<String> label) {
        return scene -> label.flatMap(wanted -> scene.room().pairs().stream()
                        .filter(pair -> Names.same(pair.label(), wanted))
                        .findFirst())
                .map(pair -> Ruling.refuses(
                        "deed.label-taken", pair.label(), scene.room().cageName(pair.cage())))
                .orElse(Ruling.ALLOWED);
    }

    /** A bird that is to be watched or ill, or stands among those that may be, is paired up only on purpose. */
    static Rule isFit(String name) {
        return scene -> scene.bird(name)
                .map(bird -> Unfit.remarks(scene.room(), bird, scene.on()))
                .filter(remarks -> !remarks.isEmpty())
                .map(remarks -> (Ruling) new Ruling.Asks(Message.of("deed.unfit", name, remarks)))
                .orElse(Ruling.ALLOWED);
    }

    /** A bird that has not left its last pair is taken from it only on purpose. */
    static Rule isUnpaired(String name) {
        return scene -> scene.bird(name)
                .flatMap(bird -> Unfit.notParted(scene.room(), bird))
                .map(pair -> (Ruling) new Ruling.Asks(
                        Message.of("deed.paired-elsewhere", name, scene.room().cageName(pair.cage()), pair.label())))
                .orElse(Ruling.ALLOWED);
    }

    static Rule cageHasNoOtherPair(String name) {
        return scene -> scene.room()
                .cage(name)
                .flatMap(scene.room()::pairIn)
                .filter(scene.room()::together)
                .map(pair -> Ruling.refuses("deed.cage-has-pair", name, pair.label()))
                .orElse(Ruling.ALLOWED);
    }

    /** Others that would share the cage with the new pair. */
    static Rule othersShareTheCage(String name, String cock, String hen) {
        return scene -> {
            List<String> others = scene.room()
                    .cage(name)
                    .map(cage -> scene.room().birdsIn(cage).stream()
                            .filter(bird -> !bird.answersTo(cock) && !bird.answersTo(hen))
                            .map(Bird::ring)
                            .toList())
                    .orElse(List.of());
            return Ruling.asksIf(!others.isEmpty(), "deed.others-there", name, others);
        };
    }

    static Rule hasPair(String name) {
        return scene -> Ruling.refusesIf(
                scene.room().cage(name).flatMap(scene::pairAt).isEmpty(), "deed.no-pair", name, scene.on());
    }

    static Rule eggHasAPair(String name) {
        return scene -> scene.room()
                .cage(name)
                .filter(cage -> scene.pairAt(cage).isEmpty())
                .map(cage -> (Ruling) new Ruling.Asks(Message.of("deed.egg-no-pair", cage.name())))
                .orElse(Ruling.ALLOWED);
    }

    /** A hen lays no three eggs in as many days as her species leaves between two. */
    static Rule notTheThirdEggSoSoon(String cage) {
        return scene -> {
            int gap = layGap(scene, cage);
            long near = openRound(scene, cage).stream()
                    .flatMap(round -> round.eggs().stream())
                    .filter(egg -> Math.abs(ChronoUnit.DAYS.between(egg.laid(), scene.on())) < gap)
                    .count();
            return Ruling.asksIf(near >= 2, "deed.third-egg", cage, gap);
        };
    }

    /** How many days the hen of a cage usually leaves between two eggs: by the owner's own numbers or her species. */
    static int layGap(Scene scene, String cage) {
        return Math.max(
                1,
                pair(scene, cage)
                        .map(pair -> AgeRules.usual(scene, pair, Timing.LAY_GAP).expected())
                        .orElse(1));
    }

    /** No hen lays two eggs a day: a second egg of one day is perhaps yesterday's, or one counted twice. */
    static Rule notTheSecondEggThatDay(String cage) {
        return scene -> Ruling.asksIf(
                openRound(scene, cage).stream()
                        .flatMap(round -> round.eggs().stream())
                        .anyMatch(egg -> egg.laid().equals(scene.on())),
                "nest.second-egg",
                cage,
                scene.on());
    }

    /** A hen that lays off the nest may be ill; common practice, no source. */
    static Rule wasLaidInTheBox(String cage, Optional<EggPlace> place) {
        return scene -> Ruling.asksIf(
                place.filter(it -> it != EggPlace.BOX).isPresent(),
                "nest.egg-outside",
                cage,
                place.orElse(EggPlace.BOX));
    }

    static Rule clutchIsNotFull(String cage) {
        return scene -> {
            int eggs = openRound(scene, cage).map(round -> round.eggs().size()).orElse(0);
            return Ruling.asksIf(eggs >= FULL_CLUTCH, "deed.many-eggs", cage, eggs + 1);
        };
    }

    static Rule gapIsNotLong(String cage) {
        return scene -> openRound(scene, cage)
                .flatMap(round -> round.eggs().stream().map(Egg::laid).max(LocalDate::compareTo))
                .map(last -> Ruling.asksIf(
                        ChronoUnit.DAYS.between(last, scene.on()) >= NEW_ROUND_GAP, "deed.long-gap", cage, last))
                .orElse(Ruling.ALLOWED);
    }

    /** An egg told late, from long before the first of the round under way, is perhaps of the round before. */
    static Rule isNotLongBefore(String cage) {
        return scene -> openRound(scene, cage)
                .flatMap(round -> round.eggs().stream().map(Egg::laid).min(LocalDate::compareTo))
                .map(first -> Ruling.asksIf(
                        ChronoUnit.DAYS.between(scene.on(), first) >= NEW_ROUND_GAP, "deed.long-before", cage, first))
                .orElse(Ruling.ALLOWED);
    }

    /** After two months no egg goes on with a round. */
    static Rule roundIsNotLongOver(String cage) {
        return scene -> openRound(scene, cage)
                .flatMap(Round::lastLaid)
                .map(last -> Ruling.refusesIf(
                        ChronoUnit.DAYS.between(last, scene.on()) >= ROUND_LONG_OVER, "nest.round-over", cage, last))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isNotBeingParted(String cage) {
        return scene -> pair(scene, cage)
                .flatMap(Pair::parting)
                .map(parting -> Ruling.refuses("nest.parting-already", cage, parting.day()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isNotSkipped(String cage, Stage stage) {
        return scene -> Ruling.refusesIf(
                pair(scene, cage).filter(pair -> pair.isSkipped(stage)).isPresent(),
                "nest.skipped-already",
                stage,
                cage);
    }

    static Rule markIsFree(String cage, Optional<String> mark) {
        return scene -> mark.flatMap(wanted -> openRound(scene, cage).flatMap(round -> round.eggs().stream()
                        .filter(egg -> egg.mark().equals(wanted))
                        .findFirst()))
                .map(egg -> Ruling.refuses("deed.mark-taken", egg.mark(), cage, egg.laid(), nextMark(scene, cage)))
                .orElse(Ruling.ALLOWED);
    }

    static Rule hasOpenRound(String cage) {
        return scene -> Ruling.refusesIf(openRound(scene, cage).isEmpty(), "deed.no-round", cage);
    }

    static Rule hasEggsToPutBack(String cage) {
        return scene -> Ruling.refusesIf(
                openRound(scene, cage).stream()
                        .flatMap(round -> round.eggs().stream())
                        .noneMatch(Egg::isLying),
                "nest.no-eggs-to-put-back",
                cage);
    }

    /** Of a species whose eggs are not usually taken up any morning is odd. */
    static Rule isTheMorningToPutThemBack(String cage) {
        return scene -> {
            Optional<LocalDate> first = openRound(scene, cage)
                    .flatMap(round -> round.eggs().stream().map(Egg::laid).min(LocalDate::compareTo));
            Optional<Integer> morning = pair(scene, cage)
                    .flatMap(pair -> Species.of(scene.room().speciesOf(pair)))
                    .flatMap(Species::putBack);
            if (first.isEmpty() || morning.isEmpty()) {
                return Ruling.asksIf(first.isPresent(), "nest.not-taken-up", cage);
            }
            LocalDate usual = first.get().plusDays(morning.get() - 1L);
            return Ruling.asksIf(scene.on().isBefore(usual), "nest.put-back-soon", cage, usual);
        };
    }

    static Rule roundIsOver(String cage) {
        return scene -> openRound(scene, cage)
                .filter(round -> round.eggs().isEmpty())
                .map(round -> Ruling.refuses("deed.round-empty", cage, round.number()))
                .orElse(Ruling.ALLOWED);
    }

    /** The round an egg of that cage and day belongs to, if one is open. */
    static Optional<Round> openRound(Scene scene, String cage) {
        return pair(scene, cage).flatMap(Pair::openRound);
    }

    static Optional<Pair> pair(Scene scene, String name) {
        Optional<Cage> cage = scene.room().cage(name);
        return cage.flatMap(scene::pairAt);
    }

    static String nextMark(Scene scene, String cage) {
        int highest = openRound(scene, cage).stream()
                .flatMap(round -> round.eggs().stream())
                .map(Egg::mark)
                .filter(mark -> mark.matches("\\d{1,4}"))
                .mapToInt(Integer::parseInt)
                .max()
                .orElse(0);
        return Integer.toString(highest + 1);
    }
}
