package org.cagewall.deed;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.cagewall.room.FoodKind;
import org.cagewall.room.Keeps;
import org.cagewall.room.Reached;
import org.cagewall.room.Role;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.RingLoss;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Way;
import org.cagewall.room.bird.Whither;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Permission;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.ChickTrait;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.Feet;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.Stage;
import org.cagewall.room.nest.WhyRemoved;

/**
 * What holds because a deed was recorded. Each kind has a table of the same name whose columns are the components, next
 * to the entry's number and day; what is added is known for ever by the number of the entry that added it. Immutable;
 * any thread.
 */
public sealed interface Fact {

    /** What this tells something about, when it belongs to the entry of that number. */
    Subject subject(long entry);

    /** A fact about the whole birdroom. */
    sealed interface OfRoom extends Fact {
        @Override
        default Subject subject(long entry) {
            return Subject.ROOM;
        }
    }

    /** A fact about one cage. */
    sealed interface OfCage extends Fact {
        long cage();

        @Override
        default Subject subject(long entry) {
            return Subject.cage(cage());
        }
    }

    /** A fact about one bird. */
    sealed interface OfBird extends Fact {
        long bird();

        @Override
        default Subject subject(long entry) {
            return Subject.bird(bird());
        }
    }

    /** A fact about one pair. */
    sealed interface OfPair extends Fact {
        long pair();

        @Override
        default Subject subject(long entry) {
            return Subject.pair(pair());
        }
    }

    /** A fact about one egg or its chick, which is known by its round and the mark on its shell. */
    sealed interface OfEgg extends OfPair {
        long round();

        String mark();
    }

    record Setting(String name, String words) implements OfRoom {}

    record Wall(String name, int height, int width) implements OfRoom {}

    record Person(String name) implements OfRoom {}

    record Duty(long person, Role role, Optional<String> phone) implements OfRoom {}

    record Climate(
            Optional<BigDecimal> high,
            Optional<BigDecimal> low,
            Optional<Integer> humidity,
            Optional<BigDecimal> lights)
            implements OfRoom {}

    record Cage(int number, String name) implements Fact {
        @Override
        public Subject subject(long entry) {
            return Subject.cage(entry);
        }
    }

    record Placement(long cage, long wall, int line, int slot) implements OfCage {}

    record Purpose(long cage, Use purpose, Optional<Keeps> keeps) implements OfCage {}

    record Retirement(long cage) implements OfCage {}

    record Joint(long cage, long partner, boolean together) implements OfCage {}

    record Feed(long cage, int line, String what, String amount, DayPart part, Optional<FoodKind> kind)
            implements OfCage {}

    record Routine(long cage, Optional<Permission> permission) implements OfCage {}

    record Cleaning(long cage) implements OfCage {}

    record Headcount(long cage, int birds) implements OfCage {}

    record Flock(long cage, int change) implements OfCage {}

    record Box(long cage, BoxStep step, boolean about) implements OfCage {}

    record Card(long cage, int revision, String face, String digest) implements OfCage {}

    record Visit(
            long cage,
            String person,
            Answer answer,
            How how,
            Optional<DayPart> part,
            Optional<String> signs,
            Optional<LocalTime> clock,
            Optional<String> note)
            implements OfCage {}

    record Plan(long cage, long cock, long hen, Optional<String> label) implements OfRoom {}

    record Bird(
            String ring,
            Optional<String> species,
            Optional<String> hatched,
            Optional<String> colour,
            Optional<Long> home,
            Optional<String> origin,
            Optional<Integer> ringYear)
            implements Fact {
        @Override
        public Subject subject(long entry) {
            return Subject.bird(entry);
        }
    }

    record Ring(long bird, String ring, Optional<Integer> ringYear) implements OfBird {}

    /** A second ring that opens, or none any more. */
    record SplitRing(long bird, Optional<String> ring) implements OfBird {}

    record Naming(long bird, String name) implements OfBird {}

    record Sexing(long bird, Sex sex) implements OfBird {}

    record Parentage(long bird, Optional<Long> father, Optional<Long> mother) implements OfBird {}

    record Trait(long bird, String trait) implements OfBird {}

    record Move(long bird, long cage) implements OfBird {}

    record Finding(long bird, Condition condition, Optional<BigDecimal> weight) implements OfBird {}

    record Treatment(
            long bird,
            String product,
            String reason,
            Optional<String> strength,
            Optional<String> batch,
            Optional<LocalDate> expiry)
            implements OfBird {}

    record Outing(long bird, Optional<Whither> whither, Optional<String> place) implements OfBird {}

    record Loose(long bird, boolean loose) implements OfBird {}

    record Departure(long bird, Way way, Optional<String> place, Optional<String> likely) implements OfBird {}

    record Pairing(long cage, long cock, long hen, String label, boolean about) implements Fact {
        @Override
        public Subject subject(long entry) {
            return Subject.pair(entry);
        }
    }

    record Round(long pair, int number) implements OfPair {}

    record RoundEnd(long pair, long round) implements OfPair {}

    record Egg(long pair, long round, String mark, EggPlace place, long cage, boolean about, Optional<LocalDate> laid)
            implements OfPair {}

    record Sitting(long pair, long round, boolean about) implements OfPair {}

    record Candling(long pair, long round, String mark, EggFinding finding) implements OfEgg {}

    record Pip(long pair, long round, String mark) implements OfEgg {}

    record Removal(long pair, long round, String mark, WhyRemoved why) implements OfEgg {}

    record NestMove(long pair, long round, String mark, long cage, String letter) implements OfEgg {}

    record Hatching(long pair, long round, String mark, boolean about, Optional<LocalDate> hatched) implements OfEgg {}

    record Ringing(long pair, long round, String mark, String ring, boolean about) implements OfEgg {}

    record RingCheck(long pair, long round, String mark) implements OfEgg {}

    record BoxTrip(long pair, long round, String mark, boolean outside, boolean about) implements OfEgg {}

    record ChickMark(long pair, long round, String mark, ChickTrait trait) implements OfEgg {}

    record ChickLoss(long pair, long round, String mark, boolean dead, Optional<String> likely) implements OfEgg {}

    record Weaning(long pair, long round, String mark, boolean about) implements OfEgg {}

    record Parting(long pair, PartedFor reason) implements OfPair {}

    record StageSkip(long pair, Stage stage, String why) implements OfPair {}

    record Dummies(long cage, int laid) implements OfCage {}

    record NestLook(
            long cage,
            Optional<Integer> chicks,
            Optional<Crops> crops,
            Optional<Feet> feet,
            Optional<Boolean> damp,
            Optional<Boolean> plucked)
            implements OfCage {}

    record Outcome(
            String task,
            boolean done,
            Optional<String> why,
            String person,
            Optional<LocalTime> clock,
            Optional<String> note)
            implements OfRoom {}

    record PhoneCall(
            Optional<Long> cage,
            String who,
            String matter,
            Reached reached,
            Optional<String> agreed,
            Optional<LocalDate> lastDay,
            String person,
            Optional<LocalTime> clock,
            Optional<String> note)
            implements OfRoom {}

    /**
     * What was agreed in a call is over.
     *
     * @param callEntry the entry of that call
     */
    record AgreementEnd(long callEntry) implements OfRoom {}

    record Absence() implements OfRoom {}

    record AbsencePlan(
            long absence,
            LocalDate firstDay,
            LocalDate lastDay,
            String sitter,
            Optional<String> keeper,
            Optional<String> vet,
            Optional<String> feeder)
            implements OfRoom {}

    record LeaveAlone(long absence, long cage) implements OfRoom {}

    record AbsenceEnd(long absence) implements OfRoom {}

    record Seen(long seen) implements OfRoom {}

    record RingStock(int season, String size, int lowest, int highest, Optional<String> form) implements OfRoom {}

    record RingSpoilt(String ring, Optional<RingLoss> why) implements OfRoom {}
}
