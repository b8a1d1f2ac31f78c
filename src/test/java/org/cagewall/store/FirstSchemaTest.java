package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.deed.Fact;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.care.Sign;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A room that the first version made opens for ever, and says the same. */
class FirstSchemaTest {

    /** The head of the packed record. */
    private static final long ENTRIES = 82;

    /** Kinds of fact that came with a later schema. */
    private static final Set<Class<? extends Fact>> SINCE = Set.of(
            Fact.Sitting.class,
            Fact.Candling.class,
            Fact.Pip.class,
            Fact.Removal.class,
            Fact.NestMove.class,
            Fact.Hatching.class,
            Fact.Ringing.class,
            Fact.RingCheck.class,
            Fact.BoxTrip.class,
            Fact.ChickMark.class,
            Fact.ChickLoss.class,
            Fact.Weaning.class,
            Fact.Parting.class,
            Fact.StageSkip.class,
            Fact.Dummies.class,
            Fact.NestLook.class,
            Fact.SplitRing.class,
            Fact.PhoneCall.class,
            Fact.AgreementEnd.class);

    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(FirstSchema.unpack(folder));
    }

    @AfterEach
    void close() {
        store.close();
    }

    @Test
    void itsChainHolds() {
        Store.Origin origin = store.read(Store.Reading::origin);

        assertThat(origin.entries()).isEqualTo(ENTRIES);
        assertThat(origin.code()).isEqualTo(FirstSchema.CODE);
        assertThat(store.<Optional<Long>>read(Store.Reading::firstBroken)).isEmpty();
    }

    @Test
    void itsRoomIsTheOneThatItsLinesTell() {
        List<SealedLine> lines = new ArrayList<>();
        store.<Optional<Void>>read(reading -> {
            reading.lines(lines::add);
            return Optional.empty();
        });
        String other = InMemory.newRecord();
        try (Store told = Store.at(other)) {
            told.restore(lines, FirstSchema.TODAY, entries -> {});

            // Calls stand in the log alone: nothing could be agreed by touch then that would hold on.
            assertThat(store.room(FirstSchema.TODAY))
                    .usingRecursiveComparison()
                    .ignoringFields("calls")
                    .isEqualTo(told.room(FirstSchema.TODAY));
        }
        InMemory.drop(other);
    }

    @Test
    void itHoldsEveryKindOfFactThatTheFirstVersionTook() {
        Session.use(Database.url(folder.resolve("room")), session -> FactTables.KINDS.stream()
                .filter(kind -> !SINCE.contains(kind))
                .forEach(kind -> assertThat(FactTables.all(session, kind))
                        .as(kind.getSimpleName())
                        .isNotEmpty()));
    }

    @Test
    void itsBirdsPairsAndReportsAreThere() {
        Room room = store.room(FirstSchema.TODAY);

        assertThat(room.settings().name()).isEqualTo("Back room");
        assertThat(room.walk()).extracting(cage -> cage.name()).containsExactly("A1", "A2", "A3", "B1", "B2");
        assertThat(room.birds()).extracting(bird -> bird.ring()).contains("HB 24-011", "HB 24-013", "HB 25-017");
        assertThat(room.bird("Ägnes"))
                .hasValueSatisfying(bird -> assertThat(bird.ring()).isEqualTo("HB 24-013"));
        assertThat(room.pairIn(room.cage("A1").orElseThrow()))
                .hasValueSatisfying(pair -> assertThat(pair.rounds()).hasSize(3));
        assertThat(room.absenceOn(FirstSchema.TODAY)).isPresent();
        assertThat(room.unread()).hasSize(1);
        List<LogEntry> log = store.read(reading -> reading.log(LogQuery.newest(200)));
        assertThat(log)
                .hasSize((int) ENTRIES)
                .filteredOn(entry -> entry.isStruck())
                .hasSize(1);
    }

    @Test
    void itsSignsStandAsTheyWereSaid() {
        assertThat(store.room(FirstSchema.TODAY).visits())
                .filteredOn(visit -> !visit.signs().isEmpty())
                .singleElement()
                .satisfies(visit -> assertThat(Sign.told(visit.signs()).stream().map(InMemory.WORDS::say))
                        .containsExactly("puffed up", "not eating"));
        assertThat(store.<List<LogEntry>>read(reading -> reading.log(LogQuery.newest(200))))
                .filteredOn(entry -> entry.line().contains("\"signs\""))
                .singleElement()
                .satisfies(entry -> assertThat(InMemory.WORDS.say(entry.what()))
                        .isEqualTo("something different: puffed up, not eating"));
    }
}
