package org.cagewall.tasks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Message;

/**
 * The three questions that tell somebody who never held a bird how urgent it is. They ask for what an avian vet's list of
 * emergencies names (Gibbons: not eating, bleeding, cannot perch, breathing hard, at the bottom of the cage) in words
 * for all; that there are three of them, and these, is common practice, no source.
 */
public enum Vital {
    EATING(Sign.EATING, Sign.NOT_EATING, Reply.YES, Sign.NOT_EATING),
    UPRIGHT(Sign.UPRIGHT, Sign.NOT_UPRIGHT, Reply.YES, Sign.GASPING, Sign.TAIL_BOBS),
    HURT(Sign.HURT, Sign.NOT_HURT, Reply.NO, Sign.BLEEDING);

    private final Sign yes;
    private final Sign no;
    private final Reply good;
    private final List<Sign> answered;

    Vital(Sign yes, Sign no, Reply good, Sign... answered) {
        this.yes = yes;
        this.no = no;
        this.good = good;
        this.answered = List.of(answered);
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

    /** Whether one of the signs has answered it already. */
    boolean isAnswered(Collection<Sign> signs) {
        return signs.stream().anyMatch(answered::contains);
    }

    /** The answer that says that this bird is well so far. */
    Reply good() {
        return good;
    }
}
