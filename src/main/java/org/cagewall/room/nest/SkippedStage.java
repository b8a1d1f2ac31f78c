package org.cagewall.room.nest;

import java.time.LocalDate;

/** A stage of parting that was left out, and why. Immutable; any thread. */
public record SkippedStage(Stage stage, String why, LocalDate day) {}
