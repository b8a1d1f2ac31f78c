package org.cagewall.deed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Sex;
import org.cagewall.text.Message;

/**
 * Deeds of the nest that the language of the record already has, with their fields, and that the birdroom does not take
 * yet: each is refused by name.
 */
public sealed interface LaterDeed extends Deed {

    /** What an egg showed against the light. */
    enum Finding {
        UNSURE,
        CLEAR,
        FULL,
        ADDLED
    }

    /** Why an egg was taken out. */
    enum WhyRemoved {
        CLEAR,
        ADDLED,
        DEAD_IN_SHELL,
        BROKEN,
        DENTED,
        MISSING,
        OTHER
    }

    /** How full the crops of a nest were. */
    enum Crops {
        FULL,
        PART,
        EMPTY
    }

    /** The feet of a nest's chicks. */
    enum Feet {
        CLEAN,
        CAKED
    }

    /** What a chick is marked for. */
    enum ChickTrait {
        FEATHER_TROUBLE,
        SPLAYED,
        GOING_LIGHT,
        SMALL
    }

    /** The stages in which a pair is parted. */
    enum Stage {
        BOX_TURNED,
        BOX_OFF,
        COCK_OUT,
        HEN_OUT
    }

    /** Why a pair is parted. */
    enum PartedFor {
        SEASON,
        ROUNDS,
        HEN_TIRED,
        DISASTER,
        QUALITY,
        FIGHTING,
        PLUCKING,
        COCK_NEEDED,
        ILLNESS,
        OTHER
    }

    @Override
    default List<Rule> judgedBy() {
        return List.of(scene -> Ruling.refuses("deed.not-yet", deed()));
    }

    @Override
    default List<Fact> facts(Scene scene) {
        return List.of();
    }

    @Override
    default Message words() {
        return Message.of("deed.not-yet", deed());
    }

    record EggsFound(
            String cage,
            @Within(least = 1, most = 20) int count,
            Optional<LocalDate> first,
            @Within(least = 0, most = 20) Optional<Integer> chicks)
            implements LaterDeed, AtCage {}

    record Sitting(String cage) implements LaterDeed, AtCage {}

    record EggCandled(String cage, String mark, Optional<String> round, Finding finding) implements LaterDeed, AtCage {}

    record EggPipped(String cage, String mark, Optional<String> round) implements LaterDeed, AtCage {}

    record EggRemoved(String cage, String mark, Optional<String> round, Optional<WhyRemoved> why)
            implements LaterDeed, AtCage {}

    record EggMoved(String cage, String mark, Optional<String> round, String to, Optional<String> letter)
            implements LaterDeed, AtCage {}

    record ChickMoved(String cage, String mark, Optional<String> round, String to, Optional<String> letter)
            implements LaterDeed, AtCage {}

    record Dummies(
            String cage, @Within(least = 0, most = 20) int count) implements LaterDeed, AtCage {}

    record ChickHatched(String cage, Optional<String> mark, Optional<String> round) implements LaterDeed, AtCage {}

    record NestLookedAt(
            String cage,
            @Within(least = 0, most = 20) Optional<Integer> chicks,
            Optional<Crops> crops,
            Optional<Feet> feet,
            Optional<Boolean> damp,
            Optional<Boolean> plucked)
            implements LaterDeed, AtCage {}

    record ChickRinged(String cage, String mark, Optional<String> round, String ring) implements LaterDeed, AtCage {}

    record RingChecked(String cage, String mark, Optional<String> round) implements LaterDeed, AtCage {}

    record ChickLeftBox(String cage, String mark, Optional<String> round) implements LaterDeed, AtCage {}

    record ChickPutBack(String cage, String mark, Optional<String> round) implements LaterDeed, AtCage {}

    record ChickMissing(
            String cage,
            String mark,
            Optional<String> round,
            @Prose Optional<String> likely) implements LaterDeed, AtCage {}

    record ChickDied(
            String cage,
            String mark,
            Optional<String> round,
            @Prose Optional<String> likely) implements LaterDeed, AtCage {}

    record ChickMarked(String cage, String mark, Optional<String> round, ChickTrait trait)
            implements LaterDeed, AtCage {}

    record ChickWeaned(String cage, String mark, Optional<String> round, String to, Optional<Sex> sex)
            implements LaterDeed, AtCage {}

    record StageSkipped(String cage, Stage stage, @Prose String why) implements LaterDeed, AtCage {}

    record PartingBegun(String cage, PartedFor reason) implements LaterDeed, AtCage {}
}
