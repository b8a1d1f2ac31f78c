package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.junit.jupiter.api.Test;

/**
 * A whole season of an eight-cage room is recorded day by day, and what its nests ask for on each day is what was worked
 * out beside the program in {@code season.txt}.
 */
class SeasonTest extends InMemory {

    private static final String FURNITURE = """
            {"deed":"person-added","person":"Ines","role":"owner","by":"Ines"}
            {"deed":"wall-added","wall":"North","rows":3,"columns":4,"by":"Ines"}
            {"deed":"cage-added","cage":"F1","wall":"North","row":3,"column":1,"use":"flight","by":"Ines"}
            {"deed":"cage-added","cage":"F2","wall":"North","row":3,"column":2,"use":"flight","by":"Ines"}
            {"deed":"timetable-set","value":"incubation","earliest":17,"expected":18,"latest":21,"by":"Ines"}
            {"deed":"timetable-set","value":"lay-gap","earliest":1,"expected":2,"latest":4,"by":"Ines"}
            {"deed":"timetable-set","value":"ringing","earliest":5,"expected":8,"latest":10,"by":"Ines"}
            {"deed":"timetable-set","value":"out-of-box","earliest":28,"expected":32,"latest":38,"by":"Ines"}
            {"deed":"timetable-set","value":"independent","earliest":38,"expected":42,"latest":56,"by":"Ines"}
            """;

    private static final List<String> CAGES = List.of("A1", "A2", "A3", "A4", "B1", "B2", "B3", "B4");

    @Test
    void onEveryDayTheNestsAskForWhatWasWorkedOutBesideTheProgram() throws IOException {
        List<String> season = lines();
        LocalDate[] ends = season.stream()
                .filter(line -> line.startsWith("season "))
                .flatMap(line -> Stream.of(line.split(" ")).skip(1))
                .map(LocalDate::parse)
                .toArray(LocalDate[]::new);
        Map<LocalDate, List<String>> deeds = deeds(season);
        Map<LocalDate, TreeSet<String>> expected = expected(season);
        Room room = furnished(ends[0]);
        Set<Kind> done = EnumSet.noneOf(Kind.class);
        for (LocalDate day = ends[0]; !day.isAfter(ends[1]); day = day.plusDays(1)) {
            Set<String> openThatMorning = ids(store().room(day), day, Task.State.OPEN);
            for (String deed : deeds.getOrDefault(day, List.of())) {
                Recording recording = store().record(room, List.of(told(deed, day)), day, NOW);
                assertThat(recording)
                        .as("%s %s: %s", day, deed, said(recording))
                        .isInstanceOf(Recording.Done.class);
                room = ((Recording.Done) recording).room();
            }
            room = store().room(day);

            assertThat(asked(room, day))
                    .as(day.toString())
                    .isEqualTo(oneStageAtATime(expected.getOrDefault(day, new TreeSet<>())));
            assertThat(ids(room, day, Task.State.DONE))
                    .as("what was done on %s was open before, under the same name", day)
                    .filteredOn(id -> !id.endsWith("/box-turned"))
                    .isSubsetOf(openThatMorning);
            nests(room, day)
                    .filter(task -> task.state() == Task.State.DONE)
                    .map(Task::kind)
                    .forEach(done::add);
        }
        assertThat(done)
                .as("each kind shows as done at least once")
                .containsExactlyInAnyOrderElementsOf(kindsOfANest().toList());
    }

    /** Of the stages of parting that were worked out for a cage, the list asks for the first alone. */
    private static TreeSet<String> oneStageAtATime(TreeSet<String> workedOut) {
        List<String> stages = List.of("box-turned", "box-off", "cock-out", "hen-out");
        return workedOut.stream()
                .filter(line -> {
                    String[] words = line.split(" ");
                    int stage = stages.indexOf(words[1]);
                    return stage < 0
                            || workedOut.stream()
                                    .map(other -> other.split(" "))
                                    .noneMatch(other -> other[0].equals(words[0])
                                            && stages.indexOf(other[1]) >= 0
                                            && stages.indexOf(other[1]) < stage);
                })
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<Task> nests(Room room, LocalDate day) {
        return DailyList.of(room, day, Audience.OWNER).stream()
                .filter(task -> task.kind().isOfANest());
    }

    private static Set<String> ids(Room room, LocalDate day, Task.State state) {
        return nests(room, day)
                .filter(task -> task.state() == state)
                .map(Task::id)
                .collect(Collectors.toSet());
    }

    @Test
    void theSeasonHoldsEachKindOfTaskThatANestMayAskFor() throws IOException {
        Set<String> kinds = lines().stream()
                .filter(line -> line.startsWith("expects "))
                .map(line -> line.split(" ")[2].split("/")[0])
                .collect(Collectors.toSet());

        assertThat(kinds).isEqualTo(kindsOfANest().map(Kind::word).collect(Collectors.toSet()));
    }

    /**
     * All but the one for a chick that grew too old for its ring, for none is missed in this season, and the one for a
     * canary's eggs that were taken up: these are budgerigars.
     */
    private static Stream<Kind> kindsOfANest() {
        return Stream.of(Kind.values())
                .filter(kind -> kind.isOfANest() && kind != Kind.RING_MISSED && kind != Kind.PUT_BACK);
    }

    private static TreeSet<String> asked(Room room, LocalDate day) {
        TreeSet<String> asked = new TreeSet<>();
        nests(room, day).filter(Task::isOpen).forEach(task -> {
            String id = task.id();
            String kind = id.substring(id.indexOf('/', id.indexOf('/') + 1) + 1);
            assertThat(id).startsWith(task.due() + "/" + task.cage().orElseThrow() + "/");
            asked.add(task.cage().orElseThrow() + " " + kind + " " + task.due() + " " + stands(task));
        });
        return asked;
    }

    private static String stands(Task task) {
        if (task.late()) {
            return "late";
        }
        return task.why().key().equals("tasks.why-soon") ? "soon" : "due";
    }

    private static Map<LocalDate, List<String>> deeds(List<String> season) {
        Map<LocalDate, List<String>> deeds = new TreeMap<>();
        season.stream()
                .filter(line -> line.startsWith("does "))
                .map(line -> line.split(" ", 3))
                .forEach(parts -> deeds.computeIfAbsent(LocalDate.parse(parts[1]), day -> new ArrayList<>())
                        .add(parts[2]));
        return deeds;
    }

    private static Map<LocalDate, TreeSet<String>> expected(List<String> season) {
        Map<LocalDate, TreeSet<String>> expected = new TreeMap<>();
        season.stream()
                .filter(line -> line.startsWith("expects "))
                .map(line -> line.split(" "))
                .forEach(parts -> {
                    LocalDate last = LocalDate.parse(parts[6]);
                    for (LocalDate day = LocalDate.parse(parts[5]); !day.isAfter(last); day = day.plusDays(1)) {
                        expected.computeIfAbsent(day, any -> new TreeSet<>())
                                .add(String.join(" ", parts[1], parts[2], parts[3], parts[4]));
                    }
                });
        return expected;
    }

    private Room furnished(LocalDate day) {
        List<Line> lines = new ArrayList<>();
        FURNITURE.lines().forEach(line -> lines.add(told(line, day)));
        for (int i = 0; i < CAGES.size(); i++) {
            String cage = CAGES.get(i);
            lines.add(told(
                    "{\"deed\":\"cage-added\",\"cage\":\"%s\",\"wall\":\"North\",\"row\":%d,\"column\":%d,\"use\":\"breeding\"}"
                            .formatted(cage, 1 + i / 4, 1 + i % 4),
                    day));
            for (String sex : List.of("cock", "hen")) {
                lines.add(told(
                        "{\"deed\":\"bird-added\",\"bird\":\"K%d-%s\",\"sex\":\"%s\",\"cage\":\"%s\"}"
                                .formatted(
                                        i + 1, sex.equals("cock") ? "C" : "H", sex, sex.equals("cock") ? "F1" : "F2"),
                        day));
            }
        }
        Recording recording = store().record(store().room(day), lines, day, NOW);
        assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
        return ((Recording.Done) recording).room();
    }

    private static Line told(String deed, LocalDate day) {
        String by = deed.contains("\"by\"") ? deed : deed.substring(0, deed.length() - 1) + ",\"by\":\"Ines\"}";
        Lines.Read read = Lines.read(by, day);
        assertThat(read).as(by).isInstanceOf(Lines.Understood.class);
        return ((Lines.Understood) read).line().beingSure();
    }

    private static List<String> lines() throws IOException {
        try (InputStream in = SeasonTest.class.getResourceAsStream("/org/cagewall/tasks/season.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }
}
