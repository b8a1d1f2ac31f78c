package org.cagewall.room;

import java.time.LocalDate;

/** That a pair is being parted, since when and why. Immutable; any thread. */
public record PartingBegun(PartedFor reason, LocalDate day) {}
