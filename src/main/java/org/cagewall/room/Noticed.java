package org.cagewall.room;

/** What a keeper notices at a nest and keeps as a note, named so that the record holds no language. */
public enum Noticed {
    HEN_OFF_EGGS,
    PAIR_NOT_AGREEING
}
