package org.cagewall.kiosk.kit;

/** What is wrong with what was filled in, and with which part of it. Immutable; any thread. */
public record Problem(String part, String words) {}
