package org.cagewall.tasks;

/** How soon somebody has to know of what was different, the most pressing first. */
public enum Urgency {
    VET_FIRST,
    PHONE_NOW,
    PHONE_IF_UNSURE
}
