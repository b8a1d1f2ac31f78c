package org.cagewall.tasks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cagewall.room.Sign;
import org.cagewall.text.Message;

/**
 * The three questions that tell somebody who never held a bird how urgent it is. They ask for what an avian vet's list of
 * emergencies names (Gibbons: not eating, bleeding, cannot perch, breathing hard, at the bottom of the cage) in words
 * for all; that there are three of them, and these, is common practice, no source.
 */
public enum Vital {
    EATING(Sign.EATING, Sign.NOT_EATING, Reply.NO, Sign.NOT_EATING),
    UPRIGHT(Sign.UPRIGHT, Sign.NOT_UPRIGHT, Reply.NO, Sign.ON_FLOOR, Sign.GASPING),
    HURT(Sign.HURT, Sign.NOT_HURT, Reply.YES, Sign.BLEEDING);

    private final Sign yes;
    private final Sign no;
    private final Reply bad;
    private final List<Sign> saysBad;

    Vital(Sign yes, Sign no, Reply bad, Sign... saysBad) {
        this.yes = yes;
        this.no = no;
        this.bad = bad;
        this.saysBad = List.of(saysBad);
    }

    /** Its name among the parts of a screen. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Message question() {
        return Message.of("tasks.ask-" + word());
    }

    /** The sign as which an answer is kept. */
    Sign told(Reply reply) {
        return reply == Reply.YES ? yes : no;
    }

    /** The answer that a sign has given already. */
    Optional<Reply> known(Collection<Sign> signs) {
        return signs.stream().anyMatch(saysBad::contains) ? Optional.of(bad) : Optional.empty();
    }
}
