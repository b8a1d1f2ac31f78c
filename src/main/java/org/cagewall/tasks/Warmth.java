package org.cagewall.tasks;

import java.math.BigDecimal;
import java.util.Optional;
import org.cagewall.room.Settings;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Message;

/**
 * How warm the room was by a reading, in C, and whether that is past the room's own limits. Immutable; any thread.
 *
 * @param warmest the highest that was read
 * @param coldest the lowest that was read
 */
public record Warmth(Optional<BigDecimal> warmest, Optional<BigDecimal> coldest) {

    private static final Warmth UNREAD = new Warmth(Optional.empty(), Optional.empty());

    /** The room at these degrees now. */
    public static Warmth of(int degrees) {
        Optional<BigDecimal> now = Optional.of(BigDecimal.valueOf(degrees));
        return new Warmth(now, now);
    }

    /** What an entry says of it, in the order in which its sentence does. */
    public static Warmth told(LogEntry entry) {
        Message what = entry.what();
        return switch (what.key()) {
            case "deed.did.room-read" -> new Warmth(Optional.of(degrees(what, 0)), Optional.empty());
            case "deed.did.room-read-low" -> new Warmth(Optional.empty(), Optional.of(degrees(what, 0)));
            case "deed.did.room-read-both" -> new Warmth(Optional.of(degrees(what, 1)), Optional.of(degrees(what, 0)));
            default -> UNREAD;
        };
    }

    /** The one number that was read, or else the highest. */
    public Optional<BigDecimal> latest() {
        return warmest.or(() -> coldest);
    }

    private static BigDecimal degrees(Message what, int at) {
        return new BigDecimal(String.valueOf(what.args().get(at)));
    }

    /** What it means for the birds: from the heat to act on, and from the cold to phone about. */
    public Optional<Danger> danger(Settings settings) {
        if (isCold(settings)) {
            return Optional.of(Danger.COLD);
        }
        return isFrom(settings.heatAct()) ? Optional.of(Danger.HEAT) : Optional.empty();
    }

    /** In heat there is something to do before it is phoned about. */
    public Urgency urgency(Settings settings) {
        return isCold(settings) || isFrom(settings.heatPhone()) ? Urgency.PHONE_NOW : Urgency.PHONE_IF_UNSURE;
    }

    private boolean isFrom(int limit) {
        return warmest.filter(degrees -> degrees.compareTo(BigDecimal.valueOf(limit)) >= 0)
                .isPresent();
    }

    private boolean isCold(Settings settings) {
        return coldest.filter(degrees -> degrees.compareTo(BigDecimal.valueOf(settings.coldPhone())) <= 0)
                .isPresent();
    }
}
