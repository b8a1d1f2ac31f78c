package org.cagewall.tasks;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * The three questions that tell somebody who never held a bird how urgent it is. They ask for what an avian vet's list of
 * emergencies names (Gibbons: not eating, bleeding, cannot perch, breathing hard, at the bottom of the cage) in words
 * for all; that there are three of them, and these, is common practice, no source.
 */
public enum Vital {
    EATING(Reply.YES, Urgency.PHONE_NOW, Sign.NOT_EATING),
    UPRIGHT(Reply.YES, Urgency.VET_FIRST, Sign.ON_FLOOR, Sign.GASPING),
    HURT(Reply.NO, Urgency.VET_FIRST, Sign.BLEEDING);

    private final Reply good;
    private final Urgency otherwise;
    private final List<Sign> bad;

    Vital(Reply good, Urgency otherwise, Sign... bad) {
        this.good = good;
        this.otherwise = otherwise;
        this.bad = List.of(bad);
    }

    /** Its name among the parts of a screen. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Message question() {
        return Message.of("tasks.ask-" + word());
    }

    /** What the answer says, as it is kept beside the signs. */
    Message told(Reply reply) {
        return Message.of("tasks.told-" + word() + "-" + reply.name().toLowerCase(Locale.ROOT));
    }

    Urgency urgency(Reply reply) {
        return reply == good ? Urgency.PHONE_IF_UNSURE : otherwise;
    }

    /** The answer that a sign has given already. */
    Optional<Reply> known(Collection<Sign> signs) {
        return signs.stream().anyMatch(bad::contains)
                ? Optional.of(good == Reply.YES ? Reply.NO : Reply.YES)
                : Optional.empty();
    }
}
