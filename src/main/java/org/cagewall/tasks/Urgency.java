package org.cagewall.tasks;

/** How soon somebody has to know of what was different, the most pressing first. */
public enum Urgency {
    PHONE_NOW,
    PHONE_IF_UNSURE
}
