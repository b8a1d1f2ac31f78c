package org.cagewall.room.nest;

import java.util.Optional;

/** An egg, or the chick it has become, with the pair and the round it comes of. Immutable; any thread. */
public record Lying(Pair pair, Round round, Egg egg) {

    /** What it is called in that cage: its letter where it was moved in, else the number on its shell. */
    public String name(long cage) {
        return egg.cage() == cage ? egg.mark() : egg.letter().orElse(egg.mark());
    }

    public Optional<Chick> chick() {
        return egg.chick();
    }

    /** Whether a keeper may mean it by these words: its letter, its chick's ring, or its mark. */
    public boolean answersTo(String name) {
        return egg.mark().equals(name)
                || egg.letter().filter(name::equalsIgnoreCase).isPresent()
                || egg.chick()
                        .flatMap(Chick::ringWorn)
                        .filter(name::equalsIgnoreCase)
                        .isPresent();
    }
}
