package org.cagewall.kiosk.handover;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.cagewall.handover.Effort;
import org.cagewall.handover.Rehearsal;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts a rehearsed day into lines. Used on the event thread, free of Swing. */
final class RehearsalWords {

    private final Words words;

    RehearsalWords(Words words) {
        this.words = words;
    }

    HandoverState.Rehearsing day(Room room, LocalDate today, Absence away, LocalDate day) {
        List<Task> tasks = Rehearsal.of(room, today, day);
        return new HandoverState.Rehearsing(
                day,
                away.from(),
                away.to(),
                words.say("handover.rehearsed", away.sitter(), words.longDay(day)),
                words.say(
                        "handover.rehearsed-text",
                        Effort.of(room, tasks).words(),
                        day.toEpochDay() - away.from().toEpochDay() + 1),
                Arrays.stream(DayPart.values())
                        .map(part -> part(part, tasks))
                        .filter(part -> !part.rows().isEmpty())
                        .toList());
    }

    private HandoverState.Part part(DayPart part, List<Task> tasks) {
        return new HandoverState.Part(
                words.say("handover.part-" + part.name().toLowerCase(java.util.Locale.ROOT)),
                tasks.stream()
                        .filter(task -> task.part().filter(part::equals).isPresent())
                        .map(this::face)
                        .toList());
    }

    private RowFace face(Task task) {
        String first = task.see()
                .filter(see -> task.kind() == Kind.MORNING)
                .map(see -> words.say("tasks.see-should", see))
                .orElseGet(() -> words.say(task.words()));
        RowFace face = RowFace.of(lead(task), first, sentences(task.brief()));
        if (task.isOpen()) {
            return face;
        }
        String state = task.state() == Task.State.DONE ? "handover.done" : "handover.not-done";
        return face.tagged(TagKind.PLAIN, words.say(state)).in(RowFace.State.DONE);
    }

    private String lead(Task task) {
        return task.row()
                .filter(row -> row.cages().size() > 1)
                .map(row -> words.say(
                        "tasks.span",
                        row.cages().get(0),
                        row.cages().get(row.cages().size() - 1)))
                .orElseGet(() -> task.cage().orElse(""));
    }

    private String sentences(List<Message> all) {
        return all.stream().map(words::say).collect(Collectors.joining(" "));
    }
}
