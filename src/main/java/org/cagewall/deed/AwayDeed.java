package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Absence;
import org.cagewall.text.Message;

/** Deeds about the owner's days away, and what the owner has read of them. */
public sealed interface AwayDeed extends Deed {

    record AwayPlanned(
            LocalDate from,
            LocalDate to,
            String sitter,
            Optional<String> second,
            @Prose Optional<String> vet,
            Optional<List<String>> leaveAlone,
            Optional<String> feeder)
            implements AwayDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>(planRules(from, to, sitter, second, leaveAlone, feeder));
            rules.add(overlapsNone(from, to, Optional.empty()));
            rules.add(liesAhead(to));
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.Absence());
            facts.addAll(plan(scene, scene.entry(), from, to, sitter, second, vet, leaveAlone, feeder));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.away-planned", from, to, sitter);
        }
    }

    /** The running absence, or else the next, or else the last not ended, planned anew; what is left out stays. */
    record AwayChanged(
            Optional<LocalDate> from,
            Optional<LocalDate> to,
            Optional<String> sitter,
            Optional<NewValue<String>> second,
            @Prose Optional<NewValue<String>> vet,
            Optional<List<String>> leaveAlone,
            Optional<NewValue<String>> feeder)
            implements AwayDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(AwayDeed::oneIsPlanned, this::fits);
        }

        private Ruling fits(Scene scene) {
            Absence now = current(scene).orElseThrow();
            LocalDate first = from.orElse(now.from());
            LocalDate last = to.orElse(now.to());
            List<Rule> rules = new ArrayList<>(planRules(
                    first,
                    last,
                    sitter.orElse(now.sitter()),
                    second.flatMap(NewValue::value),
                    leaveAlone,
                    feeder.flatMap(NewValue::value)));
            rules.add(overlapsNone(first, last, Optional.of(now.id())));
            if (to.isPresent() || now.to().isBefore(scene.on())) {
                rules.add(liesAhead(last));
            }
            return Rule.judgeAll(rules, scene);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Absence now = current(scene).orElseThrow();
            List<String> alone = leaveAlone.orElseGet(
                    () -> now.leaveAlone().stream().map(scene.room()::cageName).toList());
            return plan(
                    scene,
                    now.id(),
                    from.orElse(now.from()),
                    to.orElse(now.to()),
                    sitter.orElse(now.sitter()),
                    NewValue.after(now.second(), second),
                    NewValue.after(now.vet(), vet),
                    Optional.of(alone),
                    NewValue.after(now.feeder(), feeder));
        }

        @Override
        public Message words() {
            List<Message> changes = new ArrayList<>();
            from.map(day -> Message.of("deed.away-from", day)).ifPresent(changes::add);
            to.map(day -> Message.of("deed.away-to", day)).ifPresent(changes::add);
            sitter.map(name -> Message.of("deed.away-sitter", name)).ifPresent(changes::add);
            second.map(name -> anew("second", name)).ifPresent(changes::add);
            vet.map(how -> anew("vet", how)).ifPresent(changes::add);
            leaveAlone
                    .map(cages ->
                            cages.isEmpty() ? Message.of("deed.away-no-alone") : Message.of("deed.away-alone", cages))
                    .ifPresent(changes::add);
            feeder.map(name -> anew("feeder", name)).ifPresent(changes::add);
            return changes.isEmpty()
                    ? Message.of("deed.did.away-changed")
                    : Message.of("deed.did.away-changed-so", changes);
        }

        private static Message anew(String what, NewValue<String> change) {
            return change.value()
                    .map(value -> Message.of("deed.away-" + what, value))
                    .orElseGet(() -> Message.of("deed.away-no-" + what));
        }
    }

    /** The owner is back: from this day on nothing waits for the sitter. */
    record AwayEnded() implements AwayDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(scene -> Ruling.refusesIf(ending(scene).isEmpty(), "deed.no-absence-runs", scene.on()));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.AbsenceEnd(ending(scene).orElseThrow().id()));
        }

        private static Optional<Absence> ending(Scene scene) {
            return scene.room().absences().stream()
                    .filter(absence ->
                            absence.ended().isEmpty() && !absence.from().isAfter(scene.on()))
                    .reduce((earlier, later) -> later);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.away-ended");
        }
    }

    record EntrySeen(
            @Bounds(least = 1, most = Integer.MAX_VALUE) int entry) implements AwayDeed, SettingUp, NamesEntry {

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::isThere);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Seen(entry));
        }

        @Override
        public Deed naming(int other) {
            return new EntrySeen(other);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.entry-seen", entry);
        }
    }

    private static Ruling oneIsPlanned(Scene scene) {
        return Ruling.refusesIf(current(scene).isEmpty(), "deed.no-absence");
    }

    private static Optional<Absence> current(Scene scene) {
        return scene.room()
                .absenceOn(scene.on())
                .or(() -> scene.room().absenceAfter(scene.on()))
                .or(() -> scene.room().absenceBefore(scene.on()).filter(last -> last.ended()
                        .isEmpty()));
    }

    private static List<Rule> planRules(
            LocalDate from,
            LocalDate to,
            String sitter,
            Optional<String> second,
            Optional<List<String>> leaveAlone,
            Optional<String> feeder) {
        List<Rule> rules = new ArrayList<>();
        rules.add(scene -> Ruling.refusesIf(to.isBefore(from), "deed.ends-before", from, to));
        rules.add(scene -> Ruling.refusesIf(to.isAfter(scene.today().plusYears(3)), "deed.far-away", to));
        rules.add(scene -> Ruling.refusesIf(from.isBefore(CommonRules.EARLIEST), "deed.long-ago", from));
        rules.add(PeopleRules.known(sitter));
        second.ifPresent(it -> rules.add(PeopleRules.known(it)));
        feeder.ifPresent(it -> rules.add(PeopleRules.known(it)));
        leaveAlone.ifPresent(cages -> cages.forEach(cage -> rules.add(CageRules.known(cage))));
        return rules;
    }

    /** Days away may be set down when they are over, so that what happened can be read; but it may be a slip. */
    private static Rule liesAhead(LocalDate to) {
        return scene -> Ruling.asksIf(to.isBefore(scene.on()), "deed.away-over", to);
    }

    private static Rule overlapsNone(LocalDate from, LocalDate to, Optional<Long> itself) {
        return scene -> scene.room().absences().stream()
                .filter(absence -> itself.filter(id -> id == absence.id()).isEmpty())
                .filter(absence ->
                        !absence.last().isBefore(from) && !absence.from().isAfter(to))
                .findFirst()
                .map(other -> Ruling.refuses("deed.absences-overlap", other.from(), other.last()))
                .orElse(Ruling.ALLOWED);
    }

    private static List<Fact> plan(
            Scene scene,
            long absence,
            LocalDate from,
            LocalDate to,
            String sitter,
            Optional<String> second,
            Optional<String> vet,
            Optional<List<String>> leaveAlone,
            Optional<String> feeder) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact.AbsencePlan(absence, from, to, sitter, second, vet, feeder));
        leaveAlone.orElse(List.of()).stream()
                .map(name -> scene.theCage(name).id())
                .distinct()
                .forEach(cage -> facts.add(new Fact.LeaveAlone(absence, cage)));
        return facts;
    }
}
