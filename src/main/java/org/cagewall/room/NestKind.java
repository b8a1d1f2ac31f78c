package org.cagewall.room;

/** What a species' nest is called. */
public enum NestKind {
    BOX,
    PAN,
    NEST
}
