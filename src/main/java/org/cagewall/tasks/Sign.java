package org.cagewall.tasks;

import java.util.Locale;
import org.cagewall.text.Message;

/** What somebody who never held a bird can see and say was different, the most pressing first. */
public enum Sign {
    ON_FLOOR(Urgency.VET_FIRST),
    PUFFED_UP(Urgency.PHONE_NOW),
    NOT_EATING(Urgency.PHONE_NOW),
    GASPING(Urgency.VET_FIRST),
    BLEEDING(Urgency.VET_FIRST),
    DEAD(Urgency.PHONE_NOW),
    MISSING(Urgency.PHONE_NOW),
    LOOSE(Urgency.PHONE_NOW),
    STUCK(Urgency.PHONE_NOW),
    FIGHTING(Urgency.PHONE_IF_UNSURE),
    EGG_ON_FLOOR(Urgency.PHONE_IF_UNSURE),
    DISH_EMPTY(Urgency.PHONE_IF_UNSURE),
    OTHER(Urgency.PHONE_IF_UNSURE);

    private final Urgency urgency;

    Sign(Urgency urgency) {
        this.urgency = urgency;
    }

    /**
     * How soon somebody has to know: what one of the stop-and-phone rules speaks of, now; and what an avian vet counts
     * among the emergencies (Gibbons: bleeding, open-mouth breathing, at the bottom of the cage), the vet first.
     */
    public Urgency urgency() {
        return urgency;
    }

    /** Its name among the parts of a screen: {@code on-floor}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Message words() {
        return Message.of("tasks.sign-" + word());
    }
}
