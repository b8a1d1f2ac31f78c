package org.cagewall.tasks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.FoodKind;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Routine;
import org.cagewall.text.Message;

/**
 * What a cage is given beside water, by its routine: each line, with its amount, stands in one sentence of its round, and
 * what goes bad is taken out on the round that follows. Pure; any thread.
 */
public record Food(Routine routine) {

    private static final String SOFT_FOOD = "soft food";

    /** How a sentence is put: whole, or in a few words. */
    public enum Form {
        WHOLE("how-"),
        BRIEF("brief-");

        private final String prefix;

        Form(String prefix) {
            this.prefix = prefix;
        }

        private Message say(String key, Object... args) {
            return Message.of("tasks." + prefix + key, args);
        }
    }

    /** What fills the seed dish in the morning; that it is filled, where no line says with what. */
    public List<Message> dish(Form form) {
        List<Message> lines = dish(DayPart.MORNING, form);
        return lines.isEmpty() ? List.of(form.say("seed")) : lines;
    }

    /** What is given on a round: into the dish in the evening, and whatever else there is. */
    public List<Message> given(DayPart round, Form form) {
        List<Message> given = new ArrayList<>(round == DayPart.EVENING ? dish(round, form) : List.of());
        lines(round)
                .filter(line -> line.knownAs() != FoodKind.DISH)
                .map(line -> said("give", line, form))
                .forEach(given::add);
        return given;
    }

    private List<Message> dish(DayPart round, Form form) {
        return lines(round)
                .filter(line -> line.knownAs() == FoodKind.DISH)
                .map(line -> said("dish", line, form))
                .toList();
    }

    private static Message said(String key, FeedLine line, Form form) {
        return line.amount().isBlank()
                ? form.say(key, line.what())
                : form.say(key + "-amount", line.what(), line.amount());
    }

    /** What goes bad and was given on the round before this one, each food once. */
    public List<Message> takenOut(DayPart round, Form form) {
        DayPart before = round == DayPart.EVENING ? DayPart.MORNING : DayPart.EVENING;
        Stream<String> named = lines(before)
                .filter(line -> line.knownAs() == FoodKind.PERISHABLE)
                .map(line -> line.what().strip());
        Stream<String> allowed = round == DayPart.EVENING && mayBeSoft() ? Stream.of(SOFT_FOOD) : Stream.empty();
        return Stream.concat(named, allowed)
                .collect(Collectors.toMap(
                        food -> food.toLowerCase(Locale.ROOT), food -> food, (one, other) -> one, LinkedHashMap::new))
                .values()
                .stream()
                .map(food -> form.say("take-out", food))
                .toList();
    }

    /** Whether soft food may be given though the routine names none. */
    boolean mayBeSoft() {
        return routine.allows(Permission.SOFT_FOOD)
                && routine.feed().stream()
                        .noneMatch(line -> line.what().toLowerCase(Locale.ROOT).matches(".*(soft|egg) ?food.*"));
    }

    private Stream<FeedLine> lines(DayPart round) {
        return routine.feed().stream().filter(line -> line.when() == round);
    }
}
