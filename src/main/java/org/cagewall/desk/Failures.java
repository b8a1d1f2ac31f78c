package org.cagewall.desk;

import java.security.SecureRandom;
import java.util.random.RandomGenerator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Gives each failure a short code that a person can read out and the log can be searched for. Thread-safe. */
public final class Failures {

    private static final Logger LOG = LoggerFactory.getLogger(Failures.class);

    /** Letters and digits that cannot be taken for each other. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int LENGTH = 6;

    private final RandomGenerator random;

    public Failures() {
        this(new SecureRandom());
    }

    Failures(RandomGenerator random) {
        this.random = random;
    }

    /** Writes the failure to the log and hands back its code. */
    public String keep(String where, Throwable failure) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            code.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        LOG.error("failure {} in {}", code, where, failure);
        return code.toString();
    }
}
