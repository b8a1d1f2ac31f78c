package org.cagewall.deed;

/** A deed about another entry, which it names by its number. */
public interface NamesEntry {

    int entry();

    /** The same about the entry of another number, as when an export is recorded anew. */
    Deed naming(int other);
}
