package org.cagewall.almanac;

import java.time.LocalDate;

/**
 * How long an egg keeps that nobody sits on. Immutable; any thread.
 *
 * @param warnFrom the day from which it is getting old
 * @param staleFrom the day from which it is not worth sitting on
 */
public record Unsat(LocalDate warnFrom, LocalDate staleFrom) {

    /** Days after laying; common practice between a breeder's article (Gouldians, 7 days) and a study of parrotlets (3). */
    static final int WARN_DAYS = 5;

    /** Days after laying; a breeder's article (Gouldians, 7 days), poultry pages (7 to 10). */
    static final int STALE_DAYS = 7;

    static Unsat laid(LocalDate day) {
        return new Unsat(day.plusDays(WARN_DAYS), day.plusDays(STALE_DAYS));
    }
}
