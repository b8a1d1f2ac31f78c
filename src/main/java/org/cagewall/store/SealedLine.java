package org.cagewall.store;

/** An entry as it leaves the record: number, instant, digest, and the line as it was written. Immutable; any thread. */
public record SealedLine(long entry, String recorded, String digest, String line) {}
