package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NestCandling;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Window;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Stage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What holds of the windows when a season is told to a real record: two pairs with eggs, fosters and chicks by chance,
 * each season from a seed of its own. There are fewer than ten dates of a kind, so that the timetable stays as it is. Who
 * extends it names the seeds.
 */
abstract class RecordedWindows {

    private static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    private static final List<String> FURNITURE = List.of(
            "{'deed':'person-added','person':'Ines','role':'owner'}",
            "{'deed':'wall-added','wall':'North wall','rows':1,'columns':3,'by':'Ines'}",
            "{'deed':'cage-added','cage':'A1','wall':'North wall','row':1,'column':1,'use':'breeding','by':'Ines'}",
            "{'deed':'cage-added','cage':'A2','wall':'North wall','row':1,'column':2,'use':'breeding','by':'Ines'}",
            "{'deed':'cage-added','cage':'B1','wall':'North wall','row':1,'column':3,'use':'flight','by':'Ines'}",
            "{'deed':'bird-added','bird':'HB 24-011','sex':'cock','cage':'B1','by':'Ines'}",
            "{'deed':'bird-added','bird':'HB 24-012','sex':'hen','cage':'B1','by':'Ines'}",
            "{'deed':'bird-added','bird':'HB 24-013','sex':'cock','cage':'B1','by':'Ines'}",
            "{'deed':'bird-added','bird':'HB 24-014','sex':'hen','cage':'B1','by':'Ines'}");

    /** The numbers of entries, and which egg of a round was told of first, are of the record and not of the birds. */
    @ParameterizedTest
    @MethodSource("seeds")
    void theSameFactsInAnyOrderGiveTheSameWindows(long seed) {
        List<Fact> season = new Season(seed).facts();
        try (Book inOrder = new Book();
                Book anyhow = new Book()) {
            season.forEach(inOrder::tell);
            anyhow.tellAnyhow(season, new Random(seed));

            assertThat(anyhow.outlooks())
                    .usingRecursiveComparison(BUT_FOR_NUMBERS)
                    .isEqualTo(inOrder.outlooks());
            assertThat(anyhow.windows()).isNotEmpty().isEqualTo(inOrder.windows());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aStrikeRestoresExactlyTheWindowsOfBefore(long seed) {
        try (Book book = new Book()) {
            for (Fact fact : new Season(seed).facts()) {
                List<Outlook> before = book.outlooks();
                book.tell(fact);
                assertThat(book.strikes(book.head())).as(fact.line()).isTrue();
                assertThat(book.outlooks()).as(fact.line()).isEqualTo(before);
                book.tell(fact);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anEntryStruckLaterIsAsIfItHadNeverBeenMade(long seed) {
        List<Fact> season = new Season(seed).facts();
        List<Integer> places = new ArrayList<>(
                Stream.iterate(0, i -> i < season.size(), i -> i + 1).toList());
        Collections.shuffle(places, new Random(seed));
        try (Book book = new Book()) {
            Map<Fact, Long> entries = new LinkedHashMap<>();
            season.forEach(fact -> {
                book.tell(fact);
                entries.put(fact, book.head());
            });
            List<Fact> left = new ArrayList<>(season);
            places.stream()
                    .map(season::get)
                    .filter(fact -> book.strikes(entries.get(fact)))
                    .limit(6)
                    .forEach(left::remove);

            assertThat(left).hasSizeLessThan(season.size());
            try (Book other = new Book()) {
                left.forEach(other::tell);
                assertThat(book.windows()).isEqualTo(other.windows());
                assertThat(book.outlooks())
                        .usingRecursiveComparison(BUT_FOR_NUMBERS)
                        .isEqualTo(other.outlooks());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aRecordedFactReplacesOnlyItsOwnWindow(long seed) {
        try (Book book = new Book()) {
            for (Fact fact : new Season(seed).facts()) {
                Map<String, Window> before = book.windows();
                book.tell(fact);
                Map<String, Window> after = book.windows();

                fact.window().ifPresent(own -> assertThat(days(after.get(own)))
                        .as("%s: %s", fact.line(), own)
                        .containsOnly(fact.on()));
                assertThat(changed(before, after)).as(fact.line()).allSatisfy(name -> assertThat(name)
                        .matches(fact.mayChange()));
            }
        }
    }

    /**
     * There and back changes no hatch date where the egg was sat before it left, where it came back on the day it left, or
     * where it came back unsat before its own hen began. Else an egg that came to a sitting hen counts from there, and one
     * that came home late from its coming home.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void thereAndBackChangesNoHatchingUnlessTheEggWasSatElsewhereOrMissedItsOwnHen(long seed) {
        Random chance = new Random(seed);
        int begun = 12 + chance.nextInt(6);
        int hostBegun = 12 + chance.nextInt(10);
        int gone = 10 + chance.nextInt(12);
        int back = gone + chance.nextInt(8);
        try (Book book = new Book()) {
            pairs().forEach(book::tell);
            book.tell(laid("A1", 1, 10, false));
            book.tell(laid("A2", 1, 9, false));
            book.tell(sitting("A1", begun));
            book.tell(sitting("A2", hostBegun));
            Window before = book.windows().get("egg A1/1 hatch");
            book.tell(moved("A1", "1", "A2", gone));
            book.tell(moved("A2", "Q", "A1", back));
            Window after = book.windows().get("egg A1/1 hatch");

            boolean elsewhere = gone <= begun && Math.max(gone, hostBegun) < back;
            int sat = begun < gone || gone == back
                    ? begun
                    : elsewhere ? Math.max(gone, hostBegun) : Math.max(begun, back);
            String as = "begun %d, host %d, gone %d, back %d".formatted(begun, hostBegun, gone, back);
            assertThat(after.expected()).as(as).isEqualTo(day(sat + 18));
            if (begun < gone || gone == back || !elsewhere && back <= begun) {
                assertThat(after).as(as).isEqualTo(before);
            }
        }
    }

    private static final RecursiveComparisonConfiguration BUT_FOR_NUMBERS = RecursiveComparisonConfiguration.builder()
            .withIgnoredFieldsMatchingRegexes(".*\\.(id|entry|bird|cock|hen)", ".*rounds?(\\[\\d+\\])?\\.begun")
            .build();

    private static Set<String> changed(Map<String, Window> before, Map<String, Window> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        names.removeIf(name -> Optional.ofNullable(before.get(name)).equals(Optional.ofNullable(after.get(name))));
        return names;
    }

    private static List<LocalDate> days(Window window) {
        return List.of(window.earliest(), window.expected(), window.latest());
    }

    private static LocalDate day(int number) {
        return LocalDate.of(2026, 3, 1).plusDays(number);
    }

    /**
     * One line of a season.
     *
     * @param window the one that it replaces by its day
     * @param mayChange which windows may change with it
     */
    private record Fact(String line, LocalDate on, Optional<String> window, String mayChange) {}

    private static Fact fact(String fields, int on, Optional<String> window, String mayChange) {
        String line = "{%s,'on':'%s','sure':true,'by':'Ines'}".formatted(fields, day(on));
        return new Fact(line, day(on), window, mayChange);
    }

    private static Fact sitting(String cage, int on) {
        return fact(
                "'deed':'sitting','cage':'%s'".formatted(cage),
                on,
                Optional.of("nest " + cage + " sitting"),
                "egg .*|nest .*");
    }

    /** Told of a nest as a whole; which of its windows may change is named without the cage. */
    private static Fact ofNest(String deed, String cage, int on, String mayChange) {
        return fact(
                "'deed':'%s','cage':'%s'".formatted(deed, cage),
                on,
                Optional.empty(),
                "nest " + cage + " (" + mayChange + ")");
    }

    private static List<Fact> pairs() {
        return List.of(
                fact("'deed':'paired-up','cage':'A1','cock':'HB 24-011','hen':'HB 24-012'", 0, Optional.empty(), ".*"),
                fact("'deed':'paired-up','cage':'A2','cock':'HB 24-013','hen':'HB 24-014'", 0, Optional.empty(), ".*"),
                ofNest("box-on", "A1", 2, "first egg|next round|stage .*"),
                ofNest("box-on", "A2", 3, "first egg|next round|stage .*"));
    }

    private static Fact laid(String cage, int mark, int on, boolean about) {
        return fact(
                "'deed':'egg-laid','cage':'%s','mark':'%d','about':%s".formatted(cage, mark, about),
                on,
                Optional.empty(),
                mark > 2 ? "egg " + cage + "/" + mark + " .*|nest " + cage + " .*" : "(egg|nest) .*");
    }

    private static Fact moved(String cage, String mark, String to, int on) {
        return fact(
                "'deed':'egg-moved','cage':'%s','mark':'%s','to':'%s','letter':'Q'".formatted(cage, mark, to),
                on,
                Optional.empty(),
                "egg .*|nest .*");
    }

    /** What two pairs may bring about in a spring, in the order of its days. */
    private static final class Season {

        private final Random chance;
        private final List<Fact> facts = new ArrayList<>(pairs());

        Season(long seed) {
            chance = new Random(seed);
            clutch("A1", "A2", 10 + chance.nextInt(4));
            clutch("A2", "A1", 11 + chance.nextInt(4));
            facts.sort((one, other) -> one.on().compareTo(other.on()));
        }

        List<Fact> facts() {
            return facts;
        }

        private void clutch(String cage, String other, int first) {
            List<Integer> laid = new ArrayList<>();
            int eggs = 3 + chance.nextInt(2);
            for (int mark = 1; mark <= eggs; mark++) {
                laid.add(laid.isEmpty() ? first : laid.get(mark - 2) + 1 + chance.nextInt(3));
                facts.add(laid(cage, mark, laid.get(mark - 1), chance.nextInt(6) == 0));
            }
            boolean seen = chance.nextInt(3) == 0;
            int begun = laid.get(1) + (seen ? chance.nextInt(3) : 0);
            if (seen) {
                facts.add(sitting(cage, begun));
            }
            int mover = chance.nextInt(3) == 0 ? eggs : 0;
            for (int mark = 1; mark <= eggs; mark++) {
                int sat = Math.max(begun, laid.get(mark - 1));
                if (mark == mover) {
                    facts.add(ofEgg(
                            "egg-moved",
                            cage,
                            mark,
                            "'to':'%s','letter':'%s'".formatted(other, cage.equals("A1") ? "G" : "H"),
                            sat + 4,
                            "",
                            "egg " + cage + "/" + mark + " .*|nest .*"));
                } else {
                    befall(cage, mark, sat);
                }
            }
            facts.add(ofNest("nest-looked-at", cage, begun + 22, "look|backs"));
            facts.add(ofNest("nest-looked-at", cage, begun + 45, "look|backs"));
            if (chance.nextBoolean()) {
                facts.add(fact(
                        "'deed':'parting-begun','cage':'%s','reason':'season'".formatted(cage),
                        70,
                        Optional.empty(),
                        "nest " + cage + " .*"));
                facts.add(ofNest("box-turned", cage, 72, "first egg|next round|stage .*"));
                facts.add(ofNest("box-off", cage, 74, "first egg|next round|stage .*"));
            }
        }

        private void befall(String cage, int mark, int sat) {
            switch (chance.nextInt(4)) {
                case 0 ->
                    facts.add(
                            ofEgg(
                                    "egg-candled",
                                    cage,
                                    mark,
                                    "'finding':'clear'",
                                    sat + 7,
                                    "",
                                    "egg first look|egg second look|egg pip|egg hatch|nest first look|nest second look|nest clear eggs|nest stage .*"));
                case 1 ->
                    facts.add(ofEgg(
                            "egg-candled",
                            cage,
                            mark,
                            "'finding':'full'",
                            sat + 7,
                            "",
                            "egg first look|egg second look|nest first look|nest second look"));
                case 2 -> {
                    facts.add(ofEgg(
                            "egg-pipped",
                            cage,
                            mark,
                            "",
                            sat + 17,
                            "pip",
                            "egg pip|egg first look|egg second look|nest first look|nest second look"));
                    chick(cage, mark, sat + 18);
                }
                default -> chick(cage, mark, sat + 17 + chance.nextInt(3));
            }
        }

        private void chick(String cage, int mark, int hatched) {
            facts.add(ofEgg("chick-hatched", cage, mark, "", hatched, "hatch", "egg .*|nest .*"));
            if (chance.nextInt(5) == 0) {
                facts.add(ofEgg(
                        "chick-died",
                        cage,
                        mark,
                        "",
                        hatched + 4,
                        "",
                        "egg (eyes|ringing|out of box|independent)|nest (look|backs|stage .*)"));
                return;
            }
            String ring = "HB 26-%s%d".formatted(cage.equals("A1") ? "10" : "20", mark);
            facts.add(ofEgg(
                    "chick-ringed",
                    cage,
                    mark,
                    "'ring':'%s'".formatted(ring),
                    hatched + 6 + chance.nextInt(3),
                    "ringing",
                    "egg ringing|egg ring check"));
            facts.add(ofEgg("ring-checked", cage, mark, "", hatched + 9, "ring check", "egg ring check"));
            facts.add(ofEgg(
                    "chick-left-box",
                    cage,
                    mark,
                    "",
                    hatched + 29 + chance.nextInt(5),
                    "out of box",
                    "egg out of box|nest (look|backs|stage .*)"));
            facts.add(ofEgg(
                    "chick-weaned",
                    cage,
                    mark,
                    "'to':'B1'",
                    hatched + 39 + chance.nextInt(5),
                    "independent",
                    "egg (eyes|independent)|nest (look|backs|stage .*)"));
        }

        /** The window and what may change are named without the egg and the cage. */
        private static Fact ofEgg(
                String deed, String cage, int mark, String fields, int on, String window, String mayChange) {
            String egg = "egg " + cage + "/" + mark + " ";
            return fact(
                    "'deed':'%s','cage':'%s','mark':'%d'".formatted(deed, cage, mark)
                            + (fields.isEmpty() ? "" : "," + fields),
                    on,
                    window.isEmpty() ? Optional.empty() : Optional.of(egg + window),
                    mayChange.startsWith("egg " + cage)
                            ? mayChange
                            : mayChange.replace("egg ", egg).replace("nest ", "nest " + cage + " "));
        }
    }

    /** A record in memory and the room after its last line. */
    private static final class Book implements AutoCloseable {

        private final String url = InMemory.newRecord();
        private final Store store = Store.at(url);
        private Room room = store.room(TODAY);

        Book() {
            FURNITURE.forEach(line -> assertThat(recorded(line)).isInstanceOf(Recording.Done.class));
        }

        long head() {
            return room.head();
        }

        void tell(Fact fact) {
            Recording recording = recorded(fact.line());
            assertThat(recording)
                    .as("%s: %s", fact.line(), InMemory.said(recording))
                    .isInstanceOf(Recording.Done.class);
        }

        /**
         * The pairs first, since an egg told of in a cage without one is kept as nobody's; then each at a place of its own
         * choice; what is refused is told again after another.
         */
        void tellAnyhow(List<Fact> facts, Random order) {
            pairs().forEach(this::tell);
            List<Fact> left = new ArrayList<>(facts);
            left.removeAll(pairs());
            Collections.shuffle(left, order);
            while (!left.isEmpty()) {
                Optional<Fact> taken = left.stream()
                        .filter(fact -> recorded(fact.line()) instanceof Recording.Done)
                        .findFirst();
                assertThat(taken).as("refused in the end: %s", left).isPresent();
                left.remove(taken.get());
            }
        }

        boolean strikes(long entry) {
            return recorded("{'deed':'struck-out','entry':%d,'why':'to see','by':'Ines'}".formatted(entry))
                    instanceof Recording.Done;
        }

        private Recording recorded(String line) {
            Recording recording = store.record(
                    room,
                    List.of(((Lines.Understood) Lines.read(line.replace('\'', '"'), TODAY)).line()),
                    TODAY,
                    InMemory.NOW);
            if (recording instanceof Recording.Done done) {
                room = done.room();
            }
            return recording;
        }

        List<Outlook> outlooks() {
            Almanac almanac = Almanac.of(room);
            return room.walk().map(almanac::nest).toList();
        }

        Map<String, Window> windows() {
            Map<String, Window> windows = new TreeMap<>();
            outlooks().forEach(nest -> tell(windows, room.cageName(nest.cage()), nest));
            return windows;
        }

        private void tell(Map<String, Window> windows, String cage, Outlook nest) {
            nest.eggs().forEach(egg -> tell(windows, name(egg.lying()), egg));
            nest.chicks().forEach(chick -> {
                String name = name(chick.lying());
                put(windows, name + "eyes", chick.eyes());
                due(windows, name + "ringing", chick.ringing());
                due(windows, name + "ring check", chick.ringCheck());
                due(windows, name + "out of box", chick.outOfBox());
                due(windows, name + "independent", chick.independent());
            });
            String name = "nest " + cage + " ";
            nest.rounds().forEach(round -> {
                due(windows, name + "sitting", round.sitting());
                due(windows, name + "next round", round.nextRound());
                put(windows, name + "next egg", round.nextEgg().map(next -> next.window()));
            });
            due(windows, name + "first egg", nest.firstEgg());
            put(windows, name + "first look", nest.firstLook().map(NestCandling::window));
            put(windows, name + "second look", nest.secondLook().map(NestCandling::window));
            put(windows, name + "look", nest.nestLook().map(day -> new Window(day, day, day, false)));
            due(windows, name + "backs", nest.backs());
            nest.clearEggs()
                    .forEach(clear -> put(
                            windows,
                            name + "clear eggs",
                            Optional.of(new Window(clear.from(), clear.from(), clear.from(), false))));
            nest.parting().ifPresent(parting -> Stream.of(Stage.values())
                    .forEach(stage -> due(
                            windows,
                            name + "stage " + stage,
                            parting.stage(stage).due())));
        }

        private static void tell(Map<String, Window> windows, String name, EggOutlook egg) {
            due(windows, name + "first look", egg.firstLook());
            due(windows, name + "second look", egg.secondLook());
            due(windows, name + "pip", egg.pip());
            due(windows, name + "hatch", egg.hatch());
        }

        private static void due(Map<String, Window> windows, String name, Optional<Due> due) {
            put(windows, name, due.map(Due::window));
        }

        private static void put(Map<String, Window> windows, String name, Optional<Window> window) {
            window.ifPresent(it -> windows.put(name, it));
        }

        private String name(Lying lying) {
            return "egg " + room.cageName(lying.pair().cage()) + "/"
                    + lying.egg().mark() + " ";
        }

        @Override
        public void close() {
            store.close();
            InMemory.drop(url);
        }
    }
}
