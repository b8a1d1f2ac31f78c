package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Fact;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.RandomDeeds;
import org.cagewall.deed.Standing;
import org.cagewall.deed.Subject;
import org.cagewall.room.Room;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds after any run of deeds and strikes, whatever they are and in whatever order they come. */
class AnyDeedsTest extends InMemory {

    private static final int DEEDS = 80;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void theRefreshedRoomIsTheRoomReadAnew(long seed) {
        furnish();
        runOfDeeds(seed, line -> assertThat(room()).as(Lines.write(line)).isEqualTo(roomReadAnew()));
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void whatEachDeedLeavesStandsThroughout(long seed) {
        furnish();
        runOfDeeds(
                seed,
                line -> useDatabase(
                        session -> assertThat(Standing.problems(room(), new PastRegister(session), everything(room())))
                                .as(Lines.write(line))
                                .isEmpty()));
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void aStrikeBringsBackWhatWasBefore(long seed) {
        furnish();
        RandomDeeds deeds = new RandomDeeds(seed, TODAY);
        for (int taken = 0; taken < DEEDS; ) {
            Room before = room();
            Line line = deeds.next(before.head());
            if (!(recorded(line) instanceof Recording.Done)) {
                continue;
            }
            taken++;
            if (line.deed() instanceof CardDeed.StruckOut) {
                continue;
            }
            Room after = room();
            Recording strike = recorded(new Line(
                    new CardDeed.StruckOut((int) after.head(), "to see what comes back"),
                    Circumstances.on(TODAY, "Ines")));
            assertThat(strike).as("%s: %s", Lines.write(line), said(strike)).isInstanceOf(Recording.Done.class);
            assertThat(room())
                    .as(Lines.write(line))
                    .usingRecursiveComparison()
                    .ignoringFields("head")
                    .isEqualTo(before);
            if (taken % 2 == 0) {
                recorded(line);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11})
    void aRecordRestoredIsTheSameInEveryTable(long seed) {
        furnish();
        runOfDeeds(seed, line -> {});
        List<SealedLine> lines = new ArrayList<>();
        store().<Optional<Void>>read(reading -> {
            reading.lines(lines::add);
            return Optional.empty();
        });
        String other = newRecord();
        try (Store restored = Store.at(other)) {
            restored.restore(lines, TODAY.plusYears(1), entries -> {});

            assertThat(restored.room(TODAY)).isEqualTo(room());
            assertThat(origin(restored)).isEqualTo(origin(store()));
            assertThat(restored.<Optional<Long>>read(Store.Reading::firstBroken))
                    .isEmpty();
            assertThat(facts(other)).isEqualTo(facts(url()));
        }
        drop(other);
    }

    @ParameterizedTest
    @ValueSource(longs = {12, 13})
    void anExportRecordedIntoAnEmptyRoomIsTheSameRoom(long seed) {
        furnish();
        runOfDeeds(seed, line -> {});
        List<Line> lines = new ArrayList<>();
        store().<Optional<Void>>read(reading -> {
            reading.lines(kept -> lines.add(
                    line(Lines.export(kept.line(), new Lines.Seal(kept.entry(), kept.recorded(), kept.digest())))));
            return Optional.empty();
        });
        String other = newRecord();
        try (Store empty = Store.at(other)) {
            Recording recording = empty.record(empty.room(TODAY), lines, TODAY, NOW);

            assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
            assertThat(((Recording.Done) recording).room()).isEqualTo(room());
            assertThat(origin(empty)).isEqualTo(origin(store()));
        }
        drop(other);
    }

    @ParameterizedTest
    @ValueSource(longs = {14, 15})
    void twoWhoRecordInTurnEachJudgeByWhatTheOtherDid(long seed) {
        furnish();
        RandomDeeds deeds = new RandomDeeds(seed, TODAY);
        Store second = Store.at(url());
        Room known = second.room(TODAY);
        for (int taken = 0; taken < DEEDS / 2; ) {
            if (recorded(deeds.next(room().head())) instanceof Recording.Done) {
                taken++;
            }
            Recording theirs = second.record(known, List.of(deeds.next(room().head())), TODAY, NOW);
            if (theirs instanceof Recording.Done done) {
                known = done.room();
                assertThat(known).isEqualTo(roomReadAnew());
            }
        }
        assertThat(store().<Optional<Long>>read(Store.Reading::firstBroken)).isEmpty();
    }

    private void runOfDeeds(long seed, Consumer<Line> afterEach) {
        RandomDeeds deeds = new RandomDeeds(seed, TODAY);
        for (int taken = 0; taken < DEEDS; ) {
            Line line = deeds.next(room().head());
            if (recorded(line) instanceof Recording.Done) {
                taken++;
                afterEach.accept(line);
            }
        }
    }

    private static Set<Subject> everything(Room room) {
        Set<Subject> all = new LinkedHashSet<>(Set.of(Subject.ROOM));
        room.cages().forEach(cage -> all.add(new Subject(Subject.Kind.CAGE, cage.id())));
        room.birds().forEach(bird -> all.add(new Subject(Subject.Kind.BIRD, bird.id())));
        room.pairs().forEach(pair -> all.add(new Subject(Subject.Kind.PAIR, pair.id())));
        return all;
    }

    private static Store.Origin origin(Store store) {
        return store.read(Store.Reading::origin);
    }

    private static List<Row<? extends Fact>> facts(String url) {
        List<Row<? extends Fact>> all = new ArrayList<>();
        Session.use(url, session -> FactTables.KINDS.forEach(kind -> all.addAll(FactTables.all(session, kind))));
        return all;
    }
}
