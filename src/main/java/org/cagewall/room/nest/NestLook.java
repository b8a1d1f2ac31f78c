package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/** What a look into the nest box showed. Immutable; any thread. */
public record NestLook(
        LocalDate day,
        Optional<Integer> chicks,
        Optional<Crops> crops,
        Optional<Feet> feet,
        Optional<Boolean> damp,
        Optional<Boolean> plucked) {}
