package org.cagewall.tasks;

import org.cagewall.room.Sign;

/** How soon somebody has to know of what was different, the most pressing first. */
public enum Urgency {
    VET_FIRST,
    PHONE_NOW,
    PHONE_IF_UNSURE;

    /**
     * How soon somebody has to know of a sign: what an avian vet counts among the emergencies (Gibbons: bleeding,
     * open-mouth breathing, cannot perch, at the bottom of the cage), the vet first; what else one of the stop-and-phone
     * rules speaks of, now.
     */
    static Urgency of(Sign sign) {
        return switch (sign) {
            case ON_FLOOR, GASPING, BLEEDING, NOT_UPRIGHT, HURT -> VET_FIRST;
            case PUFFED_UP, NOT_EATING, DEAD, MISSING, LOOSE, STUCK -> PHONE_NOW;
            case FIGHTING, EGG_ON_FLOOR, DISH_EMPTY, OTHER, EATING, UPRIGHT, NOT_HURT -> PHONE_IF_UNSURE;
        };
    }
}
