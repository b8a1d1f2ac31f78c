package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cagewall.cards.OutsidePrograms;
import org.cagewall.demo.DemoRoom;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.paper.Size;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.ReadingGrade;
import org.cagewall.tasks.RoomSketch;
import org.cagewall.tasks.RoomSketch.CageSketch;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the sitter is handed on paper, read back by programs that know nothing of this one. */
class PackTest {

    /** A quarter of an inch, in points: what many printers leave white. Common practice, no source. */
    private static final int UNPRINTABLE = 18;

    private static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    @Test
    void itHasAPageForTheDoorTheWallTheRoutineEachDayAndWhatMayHappen() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(drawn(small().room()))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1 + 1 + 1 + 1 + 9 + 7);
            assertThat(titles(pdf))
                    .startsWith(
                            "Read this first",
                            "North: what you should see",
                            "Not on a wall: what you should see",
                            "What each cage is given",
                            "Day 1: Monday 20 April")
                    .containsSubsequence("Day 9: Tuesday 28 April", "What not to do", "What to do if")
                    .endsWith("Say it back");
            assertThat(pdf.getPages()).allSatisfy(page -> {
                assertThat(page.getMediaBox().getWidth())
                        .isEqualTo(PDRectangle.A4.getWidth(), org.assertj.core.api.Assertions.within(0.1f));
            });
        }
    }

    private static List<String> titles(PDDocument pdf) throws IOException {
        List<String> titles = new ArrayList<>();
        for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
            PDFTextStripper reader = new PDFTextStripper();
            reader.setSortByPosition(true);
            reader.setStartPage(page);
            reader.setEndPage(page);
            String first = reader.getText(pdf).lines().findFirst().orElse("");
            titles.add(first.replace(" Tick each line. Is it not done? Write why.", "")
                    .replace(" 20 Apr to 28 Apr", ""));
        }
        return titles;
    }

    @Test
    void anotherReaderFindsThePhonesTheAmountsAndTheWordsForWhatMayHappen() throws Exception {
        String text = read(drawn(small().room()));

        assertThat(text)
                .contains("0555 0142", "0555 0177", "0555 0190", "Joan, knows the birds")
                .contains("32 \u00b0C or more")
                .contains("1 or 2 birds, box shut", "A2: just look. Put no hand in.")
                .contains("Seed dish: seed, 2 scoops.", "Give soft food: 1 spoon.")
                .contains("Page 1 of 20", "Page 20 of 20")
                .contains("not today, please")
                .doesNotContain("while Ines is away");
    }

    @Test
    void everyLineOfEveryDayIsOnItsPageInWalkingOrder() throws Exception {
        Room room = full().room();
        Pack pack = pack(room);

        assertThat(pack.days())
                .allSatisfy(day -> assertThat(Stream.concat(day.morning().stream(), day.evening().stream()))
                        .containsExactlyElementsOf(DailyList.of(room, day.date(), Audience.SITTER)));
        assertThat(pack.days()).hasSize(9);
        String text = read(PackPdf.drawn(pack, Size.A4, WORDS));
        assertThat(room.walk().map(cage -> cage.name())).hasSize(48).allSatisfy(cage -> assertThat(
                        text.lines().filter(line -> line.contains(cage)))
                .hasSizeGreaterThanOrEqualTo(9));
    }

    @Test
    void aRoomOfOrdinarySizeHasOnePageADay() throws IOException {
        RoomSketch sketch = new RoomSketch().wall("North", 3, 9).away(DAY.plusDays(6), DAY.plusDays(14));
        cages(sketch, "", 3, 9);

        try (PDDocument pdf = Loader.loadPDF(drawn(sketch.room()))) {
            assertThat(titles(pdf).stream().filter(title -> title.startsWith("Day")))
                    .hasSize(9);
        }
    }

    @Test
    void aPackMadeInTheMiddleHasPagesForTheDaysThatAreLeft() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1).away(DAY.minusDays(3), DAY.plusDays(2));
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN);

        assertThat(pack(sketch.room()).days().stream().map(Pack.Day::number)).containsExactly(4L, 5L, 6L);
    }

    @Test
    void veryLongDaysAwayHaveSixtyPagesAndSaySo() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1).away(DAY, DAY.plusDays(99));
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN);

        assertThat(pack(sketch.room()).days()).hasSize(60);
        assertThat(pack(sketch.room()).left()).isEqualTo(40);
    }

    @Test
    void aRoomWithoutCagesHasAPackAsWell() throws IOException {
        RoomSketch sketch = new RoomSketch().away(DAY.plusDays(6), DAY.plusDays(14));

        try (PDDocument pdf = Loader.loadPDF(drawn(sketch.room()))) {
            assertThat(titles(pdf)).startsWith("Read this first", "What each cage is given", "Day 1: Monday 20 April");
        }
    }

    @Test
    void theSamePackGivesTheSameBytes() {
        assertThat(drawn(small().room())).isEqualTo(drawn(small().room()));
    }

    @Test
    void longNamesAndWordsAreBrokenIntoLinesAndNeverRunIntoTheirNeighbours() throws Exception {
        RoomSketch sketch = new RoomSketch()
                .wall("The wall with the long name that goes on", 2, 8)
                .away(DAY.plusDays(6), DAY.plusDays(8));
        for (int column = 1; column <= 8; column++) {
            sketch.cage("Quarantine-cage-behind-the-door-number-" + column, 1, column, Use.QUARANTINE)
                    .bird(Sex.HEN)
                    .feed(new FeedLine(
                            "a mixture of seven seeds and a spoon of grated carrot with egg",
                            "as much as they eat in an hour, and then a little more",
                            DayPart.MORNING));
        }
        write("pack-long", drawn(sketch.room()));

        List<List<Word>> pages = wordsOfPages("pack-long.pdf");
        assertThat(pages).hasSizeGreaterThan(5).allSatisfy(words -> {
            assertThat(words).isNotEmpty().allMatch(Word::isOnA4);
            for (int i = 0; i < words.size(); i++) {
                for (Word other : words.subList(i + 1, words.size())) {
                    assertThat(words.get(i).isOver(other))
                            .as("%s is over %s", words.get(i), other)
                            .isFalse();
                }
            }
        });
        assertThat(pages.get(1).stream().map(Word::text).collect(Collectors.joining()))
                .contains("Quarantine-cage-behind-the-door-number-1");
        assertThat(pages.stream().flatMap(List::stream).map(Word::text).collect(Collectors.joining()))
                .contains("aspoonofgratedcarrotwithegg", "andthenalittlemore");
    }

    /** Where pdftotext (Poppler) finds a word, in points from the upper left corner. */
    private record Word(double left, double top, double right, double bottom, String text) {

        /** Points by which boxes may touch: letters lean over a little, and boxes reach over the letters. */
        private static final double SLACK = 1;

        private static final double LINES_MAY_TOUCH = 0.4;

        private static final Pattern SHOWN = Pattern.compile(
                "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">(.*)</word>");

        static Stream<Word> in(String line) {
            return SHOWN.matcher(line)
                    .results()
                    .map(it -> new Word(
                            Double.parseDouble(it.group(1)),
                            Double.parseDouble(it.group(2)),
                            Double.parseDouble(it.group(3)),
                            Double.parseDouble(it.group(4)),
                            it.group(5)));
        }

        boolean isOnA4() {
            return left > UNPRINTABLE
                    && top > UNPRINTABLE
                    && right < PDRectangle.A4.getWidth() - UNPRINTABLE
                    && bottom < PDRectangle.A4.getHeight() - UNPRINTABLE;
        }

        boolean isOver(Word other) {
            double wide = Math.min(right, other.right) - Math.max(left, other.left);
            double high = Math.min(bottom, other.bottom) - Math.max(top, other.top);
            return wide > SLACK && high > LINES_MAY_TOUCH * Math.min(bottom - top, other.bottom - other.top);
        }
    }

    private List<List<Word>> wordsOfPages(String file) throws Exception {
        OutsidePrograms.need("pdftotext");
        List<List<Word>> pages = new ArrayList<>();
        for (String line : OutsidePrograms.run(folder, List.of("pdftotext", "-bbox", "-enc", "UTF-8", file, "-"))) {
            if (line.contains("<page ")) {
                pages.add(new ArrayList<>());
            }
            Word.in(line).forEach(word -> pages.get(pages.size() - 1).add(word));
        }
        return pages;
    }

    @Test
    void everySentenceOfThePackIsPlainEnoughForTheSixthSchoolYear() {
        Stream.of(small(), full()).map(sketch -> pack(sketch.room())).forEach(pack -> sentences(pack)
                .flatMap(message -> ReadingGrade.sentences(WORDS.say(message)).stream())
                .distinct()
                .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                        .as("the grade of: %s", sentence)
                        .isLessThanOrEqualTo(6)));
    }

    private static Stream<Message> sentences(Pack pack) {
        return Stream.of(
                        pack.door().watch().stream()
                                .map(message -> Message.of(message.key(), "B3"))
                                .toList(),
                        pack.door().stop(),
                        pack.door().ill(),
                        pack.door().hours(),
                        pack.door().fumes(),
                        pack.never(),
                        pack.sayBack(),
                        pack.cases().stream().map(Pack.Topic::title).toList(),
                        pack.cases().stream()
                                .flatMap(topic -> topic.steps().stream())
                                .toList(),
                        pack.routine().stream()
                                .flatMap(given -> given.notes().stream())
                                .toList(),
                        List.of(
                                Message.of(
                                        "pack.door-text",
                                        "Tomas",
                                        "Ines",
                                        pack.effort().minutes()),
                                Message.of("danger.next"),
                                Danger.EMERGENCY_FIRST,
                                Message.of("pack.address"),
                                Message.of("pack.map-text"),
                                Message.of("pack.routine-text"),
                                Message.of("pack.day-hint"),
                                Message.of("pack.in-the-morning-text"),
                                Message.of("pack.in-the-evening-text"),
                                Message.of("pack.first-text"),
                                Message.of("pack.back-text", "Ines", "Tomas"),
                                Message.of("pack.watch-different", "B3"),
                                Message.of("pack.left", 60),
                                Message.of("pack.watch-chicks", "B3"),
                                Message.of("pack.watch-chicks-look-in", "B3"),
                                Message.of("pack.watch-eggs-look-in", "B3"),
                                Message.of("pack.watch-eggs", "B3"),
                                Message.of("pack.watch-young", "B3"),
                                Message.of("pack.watch-none")))
                .flatMap(List::stream);
    }

    /** ANSI/ASME Y14.1: Letter is 215.9 by 279.4 mm. */
    @Test
    void letterPaperHoldsTheSamePagesAndNothingIsNearerToItsEdgeThanAPrinterReaches() throws Exception {
        byte[] letter = PackPdf.drawn(pack(full().room()), Size.LETTER, WORDS);

        assertThat(read(letter)).isEqualTo(read(drawn(full().room())));
        try (PDDocument pdf = Loader.loadPDF(letter)) {
            PDFRenderer pages = new PDFRenderer(pdf);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                BufferedImage picture = pages.renderImage(page);
                assertThat(picture.getWidth()).isEqualTo(612);
                assertThat(picture.getHeight()).isEqualTo(792);
                assertThat(ink(picture)).as("page %d", page + 1).satisfies(ink -> {
                    assertThat(ink.x).isGreaterThan(UNPRINTABLE);
                    assertThat(ink.y).isGreaterThan(UNPRINTABLE);
                    assertThat(612 - ink.x - ink.width).isGreaterThan(UNPRINTABLE);
                    assertThat(792 - ink.y - ink.height).isGreaterThan(UNPRINTABLE);
                });
            }
        }
    }

    private static Rectangle ink(BufferedImage page) {
        Rectangle ink = new Rectangle(-1, -1);
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                if ((page.getRGB(x, y) & 0xFF) < 200) {
                    ink.add(new Rectangle(x, y, 1, 1));
                }
            }
        }
        return ink;
    }

    @Test
    void everyPageOfADemoRoomIsDrawnAsAPicture() throws Exception {
        try (Desk desk = Desk.open(DataFolder.open(folder.resolve("demo")), Lanes.inline(), TestDesk.clocks())) {
            desk.record(DemoRoom.lines(desk.today()), outcome -> {});
            Room room = desk.room();
            Pack pack =
                    Pack.of(room, desk.today(), room.absenceAfter(desk.today()).orElseThrow());
            write("pack-demo", PackPdf.drawn(pack, Size.A4, WORDS));
            write("pack-letter", PackPdf.drawn(pack, Size.LETTER, WORDS));
        }
        write("pack-full", drawn(full().room()));
        write("pack-small", drawn(small().room()));
    }

    /** Leaves the pages for somebody to look at. */
    private void write(String name, byte[] pdf) throws Exception {
        Path pictures = Files.createDirectories(Path.of("target/pictures"));
        Files.write(pictures.resolve(name + ".pdf"), pdf);
        OutsidePrograms.need("pdftoppm");
        Files.write(folder.resolve(name + ".pdf"), pdf);
        OutsidePrograms.requireSound(folder, folder.resolve(name + ".pdf"));
        OutsidePrograms.run(folder, List.of("pdftoppm", "-r", "60", "-png", name + ".pdf", name));
        try (PDDocument document = Loader.loadPDF(pdf);
                Stream<Path> all = Files.list(folder)) {
            assertThat(all.filter(file -> file.getFileName().toString().matches(name + "-[0-9]+\\.png")))
                    .hasSize(document.getNumberOfPages());
        }
    }

    private String read(byte[] pdf) throws Exception {
        OutsidePrograms.need("pdftotext");
        Files.write(folder.resolve("pack.pdf"), pdf);
        return String.join(
                "\n", OutsidePrograms.run(folder, List.of("pdftotext", "-layout", "-enc", "UTF-8", "pack.pdf", "-")));
    }

    private static byte[] drawn(Room room) {
        return PackPdf.drawn(pack(room), Size.A4, WORDS);
    }

    private static Pack pack(Room room) {
        return Pack.of(room, DAY, room.absences().get(0));
    }

    /** A small wall with a nest, a cage that is left alone, and a flight that hangs nowhere. */
    private static RoomSketch small() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 3);
        sketch.cage("A1", 1, 1, Use.BREEDING)
                .bird(Sex.COCK)
                .bird(Sex.HEN)
                .box(BoxStep.ON)
                .feed(
                        new FeedLine("seed", "2 scoops", DayPart.MORNING),
                        new FeedLine("soft food", "1 spoon", DayPart.MORNING));
        CageSketch alone = sketch.cage("A2", 1, 2, Use.STOCK).bird(Sex.HEN);
        sketch.cage("B1", 2, 1, Use.QUARANTINE).bird(Sex.HEN).allowed(Permission.SOFT_FOOD);
        sketch.cage("B3", 2, 3, Use.NURSERY).flock(4);
        sketch.cage("Garden flight", Use.FLIGHT).flock(14);
        return sketch.away(DAY.plusDays(6), DAY.plusDays(14), alone);
    }

    /** Two walls of four rows and six columns, all full. */
    private static RoomSketch full() {
        RoomSketch sketch = new RoomSketch();
        sketch.wall("North", 4, 6);
        cages(sketch, "N", 4, 6);
        sketch.wall("South", 4, 6);
        cages(sketch, "S", 4, 6);
        return sketch.away(DAY.plusDays(6), DAY.plusDays(14));
    }

    private static void cages(RoomSketch sketch, String prefix, int rows, int columns) {
        IntStream.rangeClosed(1, rows)
                .forEach(row -> IntStream.rangeClosed(1, columns).forEach(column -> {
                    CageSketch cage = sketch.cage(
                                    prefix + (char) ('A' + row - 1) + column, row, column, Use.values()[column % 4])
                            .bird(Sex.COCK)
                            .bird(Sex.HEN)
                            .feed(
                                    new FeedLine("seed", "2 scoops", DayPart.MORNING),
                                    new FeedLine("soft food", "1 spoon", DayPart.MORNING));
                    Optional.of(cage).filter(any -> column % 2 == 0).ifPresent(each -> each.box(BoxStep.ON));
                }));
    }
}
