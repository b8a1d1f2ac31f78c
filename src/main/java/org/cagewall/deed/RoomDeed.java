package org.cagewall.deed;

import java.math.BigDecimal;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.FirstCall;
import org.cagewall.room.Keeps;
import org.cagewall.room.Person;
import org.cagewall.room.Quiet;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingsOf;
import org.cagewall.room.Role;
import org.cagewall.room.Settings;
import org.cagewall.room.Timing;
import org.cagewall.room.Use;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.text.Message;

/** Deeds about the room itself: walls, cages, people, routines, the air in it. */
public sealed interface RoomDeed extends Deed {

    /** Sets what holds for the whole room; what is left out stays as it is. */
    record RoomSet(
            Optional<String> name,
            Optional<ZoneId> zone,
            Optional<String> species,
            Optional<MonthDay> ringsIssued,
            Optional<NewValue<Quiet>> quiet,
            @Prose Optional<NewValue<String>> rules,
            @Bounds(least = 15, most = 45) Optional<Integer> heatAct,
            @Bounds(least = 15, most = 45) Optional<Integer> heatPhone,
            @Bounds(least = -20, most = 20) Optional<Integer> coldPhone,
            Optional<FirstCall> illFirst,
            @Bounds(least = 1, most = 12) Optional<Integer> mostEggs,
            @Bounds(least = 1, most = 12) Optional<Integer> mostChicks,
            @Bounds(least = 1, most = 6) Optional<Integer> mostRounds,
            @Bounds(least = 0, most = 12) Optional<Integer> restMonths,
            @Bounds(least = 0, most = 1_000_000) Optional<Integer> leastSpace)
            implements RoomDeed, SettingUp {

        /** What a room is called and how one behaves in it; its numbers stay as they are. */
        public static RoomSet described(
                Optional<String> name, Optional<NewValue<Quiet>> quiet, Optional<NewValue<String>> rules) {
            return new RoomSet(
                    name,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    quiet,
                    rules,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }

        /** Whether it sets nothing at all. */
        public boolean isNothing() {
            return equals(described(Optional.empty(), Optional.empty(), Optional.empty()));
        }

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::zoneIsStillOpen, this::actBeforePhone, this::coldBelowHeat);
        }

        /** Days are dates in the room's zone, so it stays once there is a cage to have days. */
        private Ruling zoneIsStillOpen(Scene scene) {
            Settings now = scene.room().settings();
            boolean changes = zone.filter(it -> !it.equals(now.zone())).isPresent();
            return Ruling.refusesIf(
                    changes && !scene.room().cages().isEmpty(),
                    "deed.zone-fixed",
                    now.zone().getId());
        }

        private Ruling actBeforePhone(Scene scene) {
            Settings now = scene.room().settings();
            int act = heatAct.orElse(now.heatAct());
            int phone = heatPhone.orElse(now.heatPhone());
            return Ruling.refusesIf(act > phone, "deed.heat-order", act, phone);
        }

        private Ruling coldBelowHeat(Scene scene) {
            Settings now = scene.room().settings();
            int cold = coldPhone.orElse(now.coldPhone());
            int heat = heatAct.orElse(now.heatAct());
            return Ruling.refusesIf(cold >= heat, "deed.cold-order", cold, heat);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            List<Fact> facts = new ArrayList<>();
            name.ifPresent(it -> facts.add(new Fact.Setting("name", it)));
            zone.ifPresent(it -> facts.add(new Fact.Setting("zone", it.getId())));
            species.ifPresent(it -> facts.add(new Fact.Setting("species", it)));
            ringsIssued.ifPresent(it -> facts.add(new Fact.Setting("rings-issued", it.toString())));
            quiet.ifPresent(it -> facts.add(new Fact.Setting(
                    "quiet",
                    it.value().map(hours -> hours.from() + "-" + hours.to()).orElse(""))));
            rules.ifPresent(it -> facts.add(new Fact.Setting("rules", it.value().orElse(""))));
            heatAct.ifPresent(it -> facts.add(new Fact.Setting("heat-act", it.toString())));
            heatPhone.ifPresent(it -> facts.add(new Fact.Setting("heat-phone", it.toString())));
            coldPhone.ifPresent(it -> facts.add(new Fact.Setting("cold-phone", it.toString())));
            illFirst.ifPresent(it -> facts.add(new Fact.Setting("ill-first", it.id())));
            mostEggs.ifPresent(it -> facts.add(new Fact.Setting("most-eggs", it.toString())));
            mostChicks.ifPresent(it -> facts.add(new Fact.Setting("most-chicks", it.toString())));
            mostRounds.ifPresent(it -> facts.add(new Fact.Setting("most-rounds", it.toString())));
            restMonths.ifPresent(it -> facts.add(new Fact.Setting("rest-months", it.toString())));
            leastSpace.ifPresent(it -> facts.add(new Fact.Setting("least-space", it.toString())));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.room-set");
        }
    }

    /** Whose rings are bought, and of which year they are when they are issued; what is left out stays. */
    record RingsSet(Optional<RingsOf> issuedFor, Optional<RingBody> body) implements RoomDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(scene -> Ruling.refusesIf(issuedFor.isEmpty() && body.isEmpty(), "deed.rings-nothing"));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            List<Fact> facts = new ArrayList<>();
            issuedFor.ifPresent(it -> facts.add(new Fact.Setting("rings-of", Message.word(it))));
            body.ifPresent(it -> facts.add(new Fact.Setting("ring-body", Message.word(it))));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.rings-set");
        }
    }

    /** What holds in this room in place of a species' timetable; with no days the timetable holds again. */
    record TimetableSet(
            Optional<String> species,
            Timing value,
            @Bounds(least = 0, most = 400) Optional<Integer> earliest,
            @Bounds(least = 0, most = 400) Optional<Integer> expected,
            @Bounds(least = 0, most = 400) Optional<Integer> latest)
            implements RoomDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::allOrNone, this::inOrder);
        }

        private Ruling allOrNone(Scene scene) {
            boolean all = earliest.isPresent() && expected.isPresent() && latest.isPresent();
            boolean none = earliest.isEmpty() && expected.isEmpty() && latest.isEmpty();
            return Ruling.refusesIf(!all && !none, "nest.timetable-parts");
        }

        private Ruling inOrder(Scene scene) {
            return Ruling.refusesIf(
                    earliest.orElse(0) > expected.orElse(0) || expected.orElse(0) > latest.orElse(0),
                    "nest.timetable-order");
        }

        @Override
        public List<Fact> facts(Scene scene) {
            String kind = species.orElse(scene.room().settings().species());
            return List.of(new Fact.Setting(
                    Settings.TIMETABLE + Settings.timingName(kind, value),
                    expected.map(it -> earliest.orElseThrow() + " " + it + " " + latest.orElseThrow())
                            .orElse("")));
        }

        @Override
        public Message words() {
            return expected.map(
                            it -> Message.of("nest.did.timetable-set", value, earliest.orElse(it), latest.orElse(it)))
                    .orElse(Message.of("nest.did.timetable-reset", value));
        }
    }

    record WallAdded(
            String wall,
            @Bounds(least = 1, most = 40) int rows,
            @Bounds(least = 1, most = 40) int columns) implements RoomDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.wallNameIsFree(wall));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Wall(wall, rows, columns));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.wall-added", wall, rows, columns);
        }
    }

    record CageAdded(
            String cage,
            String wall,
            @Bounds(least = 1, most = 40) int row,
            @Bounds(least = 1, most = 40) int column,
            Use use,
            Optional<Keeps> keeps)
            implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.nameFitsATask(cage),
                    CageRules.nameIsFree(cage),
                    CageRules.wallIsKnown(wall),
                    CageRules.placeIsFree(cage, wall, row, column),
                    CageRules.cardNumbersAreLeft());
        }

        @Override
        public List<Fact> facts(Scene scene) {
            int number = scene.register().highestCageNumber() + 1;
            return List.of(
                    new Fact.Cage(number, cage),
                    new Fact.Placement(scene.entry(), scene.theWall(wall), row, column),
                    new Fact.Purpose(scene.entry(), use, keeps));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cage-added", cage);
        }
    }

    record CagePlaced(
            String cage,
            String wall,
            @Bounds(least = 1, most = 40) int row,
            @Bounds(least = 1, most = 40) int column) implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage), CageRules.wallIsKnown(wall), CageRules.placeIsFree(cage, wall, row, column));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Placement(scene.theCage(cage).id(), scene.theWall(wall), row, column));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cage-placed", cage, wall, row, column);
        }
    }

    record CageUseChanged(String cage, Use use, Optional<Keeps> keeps) implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Purpose(scene.theCage(cage).id(), use, keeps));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cage-use-changed", cage, use);
        }
    }

    record CageRetired(String cage) implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), CageRules.isEmpty(cage), CageRules.standsAlone(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Retirement(scene.theCage(cage).id()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cage-retired", cage);
        }
    }

    /** The divider is pulled: the second cage becomes part of the first, its birds with it. */
    record CagesJoined(String cage, String with) implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage),
                    CageRules.inUse(with),
                    CageRules.twoCages(cage, with),
                    CageRules.holdsNoPair(with));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Cage main = scene.theCage(cage);
            Cage partner = scene.theCage(with);
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.Joint(partner.id(), main.id(), true));
            scene.room().birdsOf(partner).forEach(bird -> facts.add(new Fact.Move(bird.id(), main.id())));
            if (partner.flock() > 0) {
                facts.add(new Fact.Flock(partner.id(), -partner.flock()));
                facts.add(new Fact.Flock(main.id(), partner.flock()));
            }
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cages-joined", cage, with);
        }

        @Override
        public List<String> mentionsCages() {
            return List.of(cage, with);
        }
    }

    record CagesSplit(String cage, String with) implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), CageRules.known(with), CageRules.areJoined(cage, with));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(
                    new Fact.Joint(scene.theCage(with).id(), scene.theCage(cage).id(), false));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cages-split", cage, with);
        }

        @Override
        public List<String> mentionsCages() {
            return List.of(cage, with);
        }
    }

    record PersonAdded(String person, Role role, Optional<String> phone) implements RoomDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>(List.of(PeopleRules.nameIsFree(person)));
            phone.map(PeopleRules::canBeDialled).ifPresent(rules::add);
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Person(person), new Fact.Duty(scene.entry(), role, phone));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.person-added", person, role);
        }
    }

    /** A person's new role or phone; what is left out stays. */
    record PersonChanged(String person, Optional<Role> role, Optional<NewValue<String>> phone)
            implements RoomDeed, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules =
                    new ArrayList<>(List.of(PeopleRules.known(person), PeopleRules.anOwnerRemains(person, role)));
            phone.flatMap(NewValue::value).map(PeopleRules::canBeDialled).ifPresent(rules::add);
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Person now = scene.room().person(person).orElseThrow();
            return List.of(new Fact.Duty(now.id(), role.orElse(now.role()), NewValue.after(now.phone(), phone)));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.person-changed", person);
        }
    }

    /** What a cage is given, and what the sitter may do there; replaces what was set before. */
    record RoutineSet(String cage, List<FeedLine> feed, Optional<List<Permission>> allowed)
            implements RoomDeed, AtCage, SettingUp {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage),
                    scene -> Ruling.refusesIf(feed.size() > 12, "deed.long-routine"),
                    scene -> medicineIsNotFood());
        }

        private Ruling medicineIsNotFood() {
            return feed.stream()
                    .filter(FeedLine::isMedicine)
                    .findFirst()
                    .map(line -> Ruling.refuses("deed.medicine-in-food", line.what(), line.amount()))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            long id = scene.theCage(cage).id();
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.Routine(id, Optional.empty()));
            for (int i = 0; i < feed.size(); i++) {
                FeedLine line = feed.get(i);
                facts.add(new Fact.Feed(id, i + 1, line.what(), line.amount(), line.when(), line.kind()));
            }
            allowed.orElse(List.of()).stream()
                    .distinct()
                    .forEach(each -> facts.add(new Fact.Routine(id, Optional.of(each))));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.routine-set", cage);
        }
    }

    /** The room's thermometer, hygrometer and lights as they were read; temperatures in C, light in hours. */
    record RoomRead(
            @Bounds(least = RoomRead.COLDEST, most = 60) Optional<BigDecimal> high,
            @Bounds(least = RoomRead.COLDEST, most = 60) Optional<BigDecimal> low,
            @Bounds(least = 0, most = 100) Optional<Integer> humidity,
            @Bounds(least = 0, most = 24) Optional<BigDecimal> lights)
            implements RoomDeed {

        /** What no birdroom falls below, in C. */
        public static final int COLDEST = -30;

        @Override
        public List<Rule> judgedBy() {
            return List.of(this::saysSomething, this::lowIsBelowHigh);
        }

        private Ruling saysSomething(Scene scene) {
            return Ruling.refusesIf(
                    high.isEmpty() && low.isEmpty() && humidity.isEmpty() && lights.isEmpty(), "deed.empty-reading");
        }

        private Ruling lowIsBelowHigh(Scene scene) {
            boolean crossed = high.isPresent() && low.isPresent() && low.get().compareTo(high.get()) > 0;
            return Ruling.refusesIf(crossed, "deed.low-above-high");
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Climate(high, low, humidity, lights));
        }

        @Override
        public Message words() {
            if (high.isPresent() && low.isPresent()) {
                return Message.of(
                        "deed.did.room-read-both",
                        low.get().toPlainString(),
                        high.get().toPlainString());
            }
            return high.map(degrees -> Message.of("deed.did.room-read", degrees.toPlainString()))
                    .or(() -> low.map(degrees -> Message.of("deed.did.room-read-low", degrees.toPlainString())))
                    .orElse(Message.of("deed.did.room-read-other"));
        }
    }

    record CageCleaned(String cage) implements RoomDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Cleaning(scene.theCage(cage).id()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.cage-cleaned");
        }
    }

    /** The birds of a cage counted; without a number they were as many as the room holds them to be. */
    record Counted(
            String cage, @Bounds(least = 0, most = 999) Optional<Integer> birds) implements RoomDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public Deed resolved(Scene scene) {
            return birds.isPresent()
                    ? this
                    : new Counted(cage, Optional.of(scene.room().headsIn(scene.theCage(cage))));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Headcount(scene.theCage(cage).id(), birds.orElseThrow()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.counted", birds.orElse(0));
        }
    }
}
