package org.cagewall.deed;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Agreement;
import org.cagewall.room.Cage;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Dishes;
import org.cagewall.room.Noticed;
import org.cagewall.room.Reached;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Message;

/** Deeds of the daily round: checks, tasks, notes, calls. */
public sealed interface VisitDeed extends Deed {

    /** A cage looked at: all well, or something different. */
    record Check(String cage, Answer answer, How how, Optional<DayPart> when, Optional<List<String>> signs)
            implements VisitDeed, AtCage {

        /** Something different seen in a cage. */
        public static Check different(String cage, How how, Optional<DayPart> when, List<Sign> seen) {
            Optional<List<String>> signs =
                    Optional.of(seen.stream().map(Sign::id).toList()).filter(all -> !all.isEmpty());
            return new Check(cage, Answer.DIFFERENT, how, when, signs);
        }

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), scene -> signsAreKnown(), this::saysWhatIsDifferent);
        }

        /** "Something different" alone tells nobody whether to come. */
        private Ruling saysWhatIsDifferent(Scene scene) {
            boolean silent = signs.filter(seen -> !seen.isEmpty()).isEmpty()
                    && scene.told().note().isEmpty();
            return Ruling.refusesIf(answer == Answer.DIFFERENT && silent, "deed.different-how");
        }

        private Ruling signsAreKnown() {
            List<String> known = Arrays.stream(Sign.values()).map(Sign::id).toList();
            return signs.stream()
                    .flatMap(List::stream)
                    .filter(each -> !known.contains(each))
                    .findFirst()
                    .map(stranger -> Ruling.refuses("deed.no-sign", stranger, known))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(visit(
                    scene,
                    scene.theCage(cage),
                    answer,
                    how,
                    when,
                    signs.filter(seen -> !seen.isEmpty())
                            .map(seen -> seen.stream().distinct().collect(Collectors.joining("\n")))));
        }

        @Override
        public Message words() {
            return signs.filter(seen -> !seen.isEmpty())
                    .map(seen -> Message.of("deed.did.check-signs", answer, Sign.told(seen)))
                    .orElse(Message.of("deed.did.check", answer));
        }
    }

    /** A whole row of a wall walked by, all well. */
    record RowChecked(
            String wall, @Bounds(least = 1, most = 40) int row, Optional<DayPart> when) implements VisitDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.wallIsKnown(wall), this::rowHasCages);
        }

        private Ruling rowHasCages(Scene scene) {
            return Ruling.refusesIf(cages(scene.room()).findAny().isEmpty(), "deed.row-empty", wall, row);
        }

        private Stream<Cage> cages(Room room) {
            return room.walk().filter(cage -> cage.place()
                    .filter(place -> place.row() == row
                            && room.wall(wall)
                                    .filter(it -> it.id() == place.wall())
                                    .isPresent())
                    .isPresent());
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return cages(scene.room())
                    .<Fact>map(cage -> visit(scene, cage, Answer.WELL, How.HAND, when, Optional.empty()))
                    .toList();
        }

        @Override
        public Message words() {
            return Message.of("deed.did.row-checked", wall, row);
        }
    }

    record TaskDone(@Prose String task, Optional<How> how) implements VisitDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(isTask(task));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Outcome(
                    task, true, Optional.empty(), by(scene), scene.told().at(), Optional.empty()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.task-done", kind(task));
        }

        @Override
        public List<String> mentionsCages() {
            return cageOf(task);
        }
    }

    /** A task left undone: why, and of a feeding whether there is food and water all the same. */
    record TaskNotDone(@Prose String task, @Prose Optional<String> why, Optional<Dishes> dishes) implements VisitDeed {

        public TaskNotDone(String task, Optional<String> why) {
            this(task, why, Optional.empty());
        }

        @Override
        public List<Rule> judgedBy() {
            return List.of(isTask(task));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Outcome(
                    task, false, why, by(scene), scene.told().at(), scene.told().note()));
        }

        @Override
        public Message words() {
            Message reason = why.map(Reason::told).orElse(Message.of("word.as-said", "-"));
            return dishes.map(it -> Message.of("deed.did.task-not-done-dishes", kind(task), reason, it))
                    .orElse(Message.of("deed.did.task-not-done", kind(task), reason));
        }

        @Override
        public List<String> mentionsCages() {
            return cageOf(task);
        }
    }

    /** A note, for a cage or a bird or the room: something that is often noticed, or what the note itself says. */
    record Noted(Optional<String> cage, Optional<String> bird, Optional<Noticed> noticed) implements VisitDeed {

        /** What the note itself says. */
        public Noted(Optional<String> cage, Optional<String> bird) {
            this(cage, bird, Optional.empty());
        }

        public static Noted at(String cage, Noticed noticed) {
            return new Noted(Optional.of(cage), Optional.empty(), Optional.of(noticed));
        }

        @Override
        public List<Rule> judgedBy() {
            return Stream.of(
                            cage.map(CageRules::known).stream(),
                            bird.map(BirdRules::known).stream(),
                            Stream.<Rule>of(scene -> Ruling.refusesIf(
                                    noticed.isEmpty() && scene.told().note().isEmpty(), "deed.empty-note")))
                    .flatMap(rules -> rules)
                    .toList();
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of();
        }

        @Override
        public Message words() {
            return noticed.map(it -> Message.of("deed.did.noticed", it)).orElse(Message.of("deed.did.noted"));
        }

        @Override
        public List<String> mentionsCages() {
            return cage.stream().toList();
        }

        @Override
        public List<String> mentionsBirds() {
            return bird.stream().toList();
        }
    }

    /**
     * A call.
     *
     * @param who with whom
     * @param about what about: a {@link CallMatter} by its name, or own words
     * @param agreed what was agreed: an {@link Agreement} by its name, or own words
     * @param reached whether anybody answered, or the other one phoned; left out, somebody was phoned and spoken to
     * @param until the last day on which that holds
     */
    record Phoned(
            Optional<String> cage,
            String who,
            @Prose String about,
            @Prose Optional<String> agreed,
            Optional<Reached> reached,
            Optional<LocalDate> until)
            implements VisitDeed {

        @Override
        public List<Rule> judgedBy() {
            return Stream.concat(cage.map(CageRules::known).stream(), Stream.<Rule>of(this::endsAfterItBegan))
                    .toList();
        }

        private Ruling endsAfterItBegan(Scene scene) {
            return until.filter(last -> last.isBefore(scene.on()))
                    .map(last -> Ruling.refuses("deed.agreed-past", last, scene.on()))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.PhoneCall(
                    cage.map(name -> scene.theCage(name).id()),
                    who,
                    about,
                    reached.orElse(Reached.SPOKE),
                    agreed,
                    until,
                    by(scene),
                    scene.told().at(),
                    scene.told().note()));
        }

        @Override
        public Message words() {
            Message matter = CallMatter.told(about);
            String how = reached.filter(it -> it != Reached.SPOKE)
                    .map(it -> "-" + it.word())
                    .orElse("");
            return agreed.map(it -> Message.of("deed.did.phoned-agreed" + how, who, matter, Agreement.told(it)))
                    .orElse(Message.of("deed.did.phoned" + how, who, matter));
        }

        @Override
        public List<String> mentionsCages() {
            return cage.stream().toList();
        }
    }

    /**
     * What was agreed in a call is over from this day on.
     *
     * @param entry the entry of that call
     */
    record AgreementEnded(
            @Bounds(least = 1, most = Integer.MAX_VALUE) int entry) implements VisitDeed, NamesEntry {

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::isThere);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.AgreementEnd(entry));
        }

        @Override
        public Deed naming(int other) {
            return new AgreementEnded(other);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.agreement-ended", entry);
        }
    }

    /**
     * Something that goes wrong in the room, or with a bird nobody knows the cage of.
     *
     * @param cage where, if that is known
     */
    record AlarmRaised(Optional<String> cage, CallMatter alarm) implements VisitDeed {

        @Override
        public List<Rule> judgedBy() {
            return cage.map(CageRules::known).stream().toList();
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of();
        }

        @Override
        public Message words() {
            return Message.of("deed.did.alarm-raised", alarm);
        }

        @Override
        public List<String> mentionsCages() {
            return cage.stream().toList();
        }
    }

    private static Fact visit(
            Scene scene, Cage cage, Answer answer, How how, Optional<DayPart> when, Optional<String> signs) {
        return new Fact.Visit(
                cage.id(),
                by(scene),
                answer,
                how,
                when,
                signs,
                scene.told().at(),
                scene.told().note());
    }

    private static String by(Scene scene) {
        return scene.person().map(org.cagewall.room.Person::name).orElse("-");
    }

    /** DATE/CAGE/KIND or DATE/CAGE/KIND/n, of a cage that there is. */
    private static Rule isTask(String task) {
        return scene -> {
            String[] parts = task.split("/", -1);
            try {
                LocalDate.parse(parts[0]);
            } catch (DateTimeParseException e) {
                return Ruling.refuses("deed.no-task", task);
            }
            if (parts.length < 3 || parts.length > 4 || parts[2].isBlank()) {
                return Ruling.refuses("deed.no-task", task);
            }
            return CageRules.known(parts[1]).judge(scene);
        };
    }

    private static List<String> cageOf(String task) {
        String[] parts = task.split("/", -1);
        return parts.length > 1 ? List.of(parts[1]) : List.of();
    }

    /** The kind of a task, as it is read: evening food. */
    private static String kind(String task) {
        String[] parts = task.split("/", -1);
        return parts.length > 2 ? parts[2].replace('-', ' ') : task;
    }
}
