package org.cagewall.handover;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A link that a phone opens as a text message to be sent (RFC 5724). Immutable; any thread.
 *
 * @param numbers whom it goes to: digits, with a plus sign in front where the number says its country; at least one
 * @param body what the message says; empty leaves it out
 */
public record SmsLink(List<String> numbers, String body) {

    /** A number among other words, as people write it. */
    private static final Pattern WRITTEN = Pattern.compile("\\+?\\(?[0-9][0-9 ()./-]{3,}[0-9]");

    /** The zero that is dialled only inside the country. */
    private static final String ZERO_AT_HOME = "\\(0\\)";

    private static final Pattern DIALLED = Pattern.compile("\\+?[0-9]+");

    /**
     * @throws IllegalArgumentException when there is no number, or one that holds more than digits and a plus sign
     */
    public SmsLink {
        numbers = List.copyOf(numbers);
        if (numbers.isEmpty()
                || !numbers.stream().allMatch(it -> DIALLED.matcher(it).matches())) {
            throw new IllegalArgumentException("a text message needs numbers of digits, not " + numbers);
        }
    }

    /** The number as it is dialled, without what people write between the digits; empty where the text holds none. */
    public static Optional<String> number(String written) {
        Matcher number = WRITTEN.matcher(written);
        if (!number.find()) {
            return Optional.empty();
        }
        String found = number.group();
        boolean abroad = found.startsWith("+");
        String digits = (abroad ? found.replaceFirst(ZERO_AT_HOME, "") : found).replaceAll("[^0-9]", "");
        return Optional.of(abroad ? "+" + digits : digits);
    }

    /** The link: numbers with commas between them, then the body in UTF-8, percent-encoded. ASCII only. */
    public String text() {
        String to = "sms:" + String.join(",", numbers);
        return body.isEmpty() ? to : to + "?body=" + Percent.encoded(body, "");
    }
}
