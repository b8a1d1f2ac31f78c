package org.cagewall.tasks;

/** For whom a day's list is written. */
public enum Audience {
    OWNER,
    SITTER
}
