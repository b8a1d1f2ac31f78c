package org.cagewall.kiosk.kit;

/** One of several things to choose from: its name in tests, its word, its value. Immutable; any thread. */
public record Choice<T>(String name, String word, T value) {}
