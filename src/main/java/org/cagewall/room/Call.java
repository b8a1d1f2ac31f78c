package org.cagewall.room;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * A call by phone. Immutable; any thread.
 *
 * @param entry the entry that records it
 * @param cage the cage it was about; empty where it was about the room
 * @param matter what it was about: a {@link CallMatter} by its name, or somebody's own words
 * @param agreed what was agreed: an {@link Agreement} by its name, or somebody's own words
 * @param lastDay the last day on which that holds
 */
public record Call(
        long entry,
        Optional<Long> cage,
        String who,
        String matter,
        Reached reached,
        Optional<String> agreed,
        Optional<LocalDate> lastDay,
        String person,
        LocalDate day,
        Optional<LocalTime> time,
        Optional<String> note) {

    /** Whether anybody was spoken to. */
    public boolean reachedSomebody() {
        return reached != Reached.NO_ANSWER;
    }

    /** Whether what was agreed in it holds on that day, unless a later call has put something else in its place. */
    boolean holdsOn(LocalDate date) {
        return agreed.isPresent()
                && !day.isAfter(date)
                && lastDay.filter(last -> !last.isBefore(date)).isPresent();
    }

    /** Whether a later call has put what it agreed in the place of what was agreed in this one. */
    boolean isReplacedBy(Call other) {
        return other.entry > entry
                && other.agreed.isPresent()
                && other.cage.equals(cage)
                && other.matter.equals(matter);
    }

    /** "Agreed with Ines: leave it in peace, until 3 May". */
    public Message agreement() {
        return Message.of(
                "word.agreed-until",
                who,
                agreed.map(Agreement::told).orElse(Message.of("word.agreement.as-said", "-")),
                lastDay.orElse(day));
    }
}
