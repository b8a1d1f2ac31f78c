package org.cagewall.tasks;

import java.util.Locale;
import org.cagewall.text.Message;

/** What somebody who never held a bird can see and say was different, the most pressing first. */
public enum Sign {
    ON_FLOOR(Alarm.ILL),
    PUFFED_UP(Alarm.ILL),
    NOT_EATING(Alarm.ILL),
    GASPING(Alarm.ILL),
    BLEEDING(Alarm.ILL),
    DEAD(Alarm.GONE),
    MISSING(Alarm.GONE),
    LOOSE(Alarm.GONE),
    STUCK(Alarm.GONE),
    FIGHTING(Alarm.NONE),
    EGG_ON_FLOOR(Alarm.NONE),
    DISH_EMPTY(Alarm.NONE),
    OTHER(Alarm.NONE);

    private enum Alarm {
        ILL,
        GONE,
        NONE
    }

    private final Alarm alarm;

    Sign(Alarm alarm) {
        this.alarm = alarm;
    }

    /** Whether one of the stop-and-phone rules speaks of it. */
    public boolean meansPhone() {
        return alarm != Alarm.NONE;
    }

    /** Its name among the parts of a screen: {@code on-floor}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public Message words() {
        return Message.of("tasks.sign-" + word());
    }
}
