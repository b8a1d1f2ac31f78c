package org.cagewall.handover;

import java.nio.charset.StandardCharsets;

/** Writes text into a link as RFC 3986 has it: UTF-8, and a percent sign with two hex digits for what may not stand there. Pure; any thread. */
final class Percent {

    /** RFC 3986, section 2.3: what may stand anywhere in a link as it is. */
    private static final String UNRESERVED = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-._~";

    private Percent() {}

    /** The text with all encoded but unreserved characters and these, which are of ASCII. */
    static String encoded(String text, String alsoPlain) {
        StringBuilder out = new StringBuilder();
        for (byte each : text.getBytes(StandardCharsets.UTF_8)) {
            boolean plain = each > 0 && (UNRESERVED.indexOf(each) >= 0 || alsoPlain.indexOf(each) >= 0);
            out.append(plain ? String.valueOf((char) each) : "%%%02X".formatted(each & 0xFF));
        }
        return out.toString();
    }
}
