package org.cagewall.deed;

import java.util.Optional;
import java.util.regex.Pattern;
import org.cagewall.text.Message;

/** Tells what can be dialled from what cannot, so that a field says so before it is recorded. Pure; any thread. */
public final class PhoneNumbers {

    /** What people write between the digits of a number. */
    private static final Pattern DIALLED = Pattern.compile("[0-9 +()./-]*");

    /** The shortest numbers, those of emergencies, have three digits. Common practice, no source. */
    private static final int FEWEST_DIGITS = 3;

    private PhoneNumbers() {}

    /** Why this is no phone number. */
    public static Optional<Message> whyNot(String phone) {
        boolean dialled = DIALLED.matcher(phone).matches()
                && phone.chars()
                                .filter(letter -> letter >= '0' && letter <= '9')
                                .count()
                        >= FEWEST_DIGITS;
        return dialled ? Optional.empty() : Optional.of(Message.of("deed.no-phone", phone));
    }
}
