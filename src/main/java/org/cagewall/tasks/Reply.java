package org.cagewall.tasks;

/** An answer to a question. */
public enum Reply {
    YES,
    NO
}
