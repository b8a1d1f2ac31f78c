package org.cagewall.desk;

/**
 * How far the record goes. Immutable; any thread.
 *
 * @param entries the number of the last entry
 * @param digest the digest of the last entry, which covers all before it
 */
public record Head(long entries, String digest) {}
