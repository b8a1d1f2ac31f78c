package org.cagewall.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The digest chain of the record: each entry's digest covers its line and all lines before it. Pure; any thread. */
final class Chain {

    /** The digest before the first entry. */
    static final String START = "0".repeat(64);

    private Chain() {}

    /** SHA-256 (FIPS 180-4) of the previous digest followed by the line, in UTF-8, as hexadecimal. */
    static String next(String previous, String line) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update(previous.getBytes(StandardCharsets.UTF_8));
            sha.update(line.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sha.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
