package org.cagewall.deed;

/** A deed about another entry, which it names by its number. */
public interface NamesEntry {

    int entry();

    /** Nothing can be said of an entry that is not there yet. */
    default Ruling isThere(Scene scene) {
        return Ruling.refusesIf(
                entry() > scene.room().head(),
                "deed.entry-unknown",
                entry(),
                scene.room().head());
    }

    /** The same about the entry of another number, as when an export is recorded anew. */
    Deed naming(int other);
}
