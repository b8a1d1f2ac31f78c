package org.cagewall.tasks;

import java.util.List;
import java.util.Locale;
import org.cagewall.room.DayPart;
import org.cagewall.room.FeedLine;
import org.cagewall.room.Permission;
import org.cagewall.room.Routine;
import org.cagewall.text.Message;

/** What a cage is given beside seed and water, by its routine. Pure; any thread. */
record Food(Routine routine) {

    /** Seed and amount, where the routine says how much. */
    Message fillTheSeed() {
        return routine.feed().stream()
                .filter(line -> isSeed(line) && line.when() == DayPart.MORNING)
                .filter(line -> !line.amount().isBlank())
                .findFirst()
                .map(line -> Message.of("tasks.how-seed-amount", line.amount()))
                .orElse(Message.of("tasks.how-seed"));
    }

    List<Message> given(DayPart round) {
        return routine.feed().stream()
                .filter(line -> line.when() == round && !isSeed(line) && !isWater(line))
                .map(line -> line.amount().isBlank()
                        ? Message.of("tasks.give", line.what())
                        : Message.of("tasks.give-amount", line.what(), line.amount()))
                .toList();
    }

    /** Whether soft food may be given though the routine names none. */
    boolean mayBeSoft() {
        return routine.allows(Permission.SOFT_FOOD) && routine.feed().stream().noneMatch(Food::isSoft);
    }

    /** Whether soft food may stand in the cage in the evening. */
    boolean leavesSoftFood() {
        return routine.allows(Permission.SOFT_FOOD)
                || routine.feed().stream().anyMatch(line -> isSoft(line) && line.when() == DayPart.MORNING);
    }

    private static boolean isSeed(FeedLine line) {
        return named(line).endsWith("seed") || named(line).equals("seed mix");
    }

    private static boolean isWater(FeedLine line) {
        return named(line).endsWith("water");
    }

    private static boolean isSoft(FeedLine line) {
        return named(line).contains("soft food") || named(line).contains("egg food");
    }

    private static String named(FeedLine line) {
        return line.what().strip().toLowerCase(Locale.ROOT);
    }
}
