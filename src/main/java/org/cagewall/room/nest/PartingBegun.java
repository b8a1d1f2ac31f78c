package org.cagewall.room.nest;

import java.time.LocalDate;

/** That a pair is being parted, since when and why. Immutable; any thread. */
public record PartingBegun(PartedFor reason, LocalDate day) {}
