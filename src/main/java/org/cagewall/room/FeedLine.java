package org.cagewall.room;

/** One line of a cage's routine: what is given, how much, and on which round. Immutable; any thread. */
public record FeedLine(String what, String amount, DayPart when) {}
