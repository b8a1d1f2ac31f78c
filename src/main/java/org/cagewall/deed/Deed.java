package org.cagewall.deed;

import java.util.List;
import org.cagewall.text.Message;

/**
 * Something that a person records. Each kind is a record of its own whose components are the fields of its line, and it
 * answers for itself: what must hold before it is recorded, what holds because it was. Immutable; any thread.
 */
public sealed interface Deed
        permits RoomDeed, BirdDeed, NestDeed, EggDeed, ChickDeed, PartingDeed, VisitDeed, AwayDeed, CardDeed {

    /** Its name in the language of the record: {@code bird-moved} for {@code BirdMoved}. */
    default String deed() {
        return Names.hyphened(getClass().getSimpleName());
    }

    /** What is asked before it is recorded, in order. */
    List<Rule> judgedBy();

    /** This deed with what was left out filled in, so that its line says all: the next mark, the next label. */
    default Deed resolved(Scene scene) {
        return this;
    }

    /** What holds once it is recorded. Asked only when the rules allow it. */
    List<Fact> facts(Scene scene);

    /** Past tense, one sentence: 'egg 3 laid'. */
    Message words();

    /** Names of the cages it is shown with. */
    default List<String> mentionsCages() {
        return this instanceof AtCage there ? List.of(there.cage()) : List.of();
    }

    /** Rings or names of the birds it is shown with. */
    default List<String> mentionsBirds() {
        return this instanceof AboutBird one ? List.of(one.bird()) : List.of();
    }
}
