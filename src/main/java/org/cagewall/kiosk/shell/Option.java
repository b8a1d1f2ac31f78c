package org.cagewall.kiosk.shell;

import org.cagewall.kiosk.kit.list.RowFace;

/** One thing to pick from a list. Immutable; any thread, and free of Swing. */
public record Option<T>(String name, RowFace face, T value) {}
