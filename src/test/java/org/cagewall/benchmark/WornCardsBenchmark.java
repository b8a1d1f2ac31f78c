package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.abst.fiducial.QrCodeDetector;
import boofcv.factory.fiducial.FactoryFiducial;
import boofcv.struct.image.GrayU8;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Luma;
import org.cagewall.scan.Oddity;
import org.cagewall.scan.OtherCodes;
import org.cagewall.scan.Wear;
import org.cagewall.scan.WornCards;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * How many worn cards are read, by what they suffer from, and how long a picture takes, by us and by others. The cards are
 * made with a seed by which nothing was tuned. How many of each: -Dcagewall.frames=100.
 */
@Tag("benchmark")
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class WornCardsBenchmark {

    private static final long SEED = Long.getLong("cagewall.seed", 2026);
    private static final int FRAMES = Integer.getInteger("cagewall.frames", 100);
    private static final int WARM_UPS = 60;
    private static final String ZBAR = "zbar";
    private static final Path ZBAR_PROGRAM = Path.of("/usr/bin/zbarimg");
    private static final Pattern ZBAR_SYMBOL =
            Pattern.compile("<source href='[^']*?(\\d+)\\.pgm'>.*?<data><!\\[CDATA\\[(.*?)]]>", Pattern.DOTALL);

    @TempDir
    private Path folder;

    private final Map<String, Function<Luma, Optional<String>>> readers = readers();

    /** What a reader made of some pictures. */
    private static final class Score {

        private int shown;
        private int read;
        private int wrong;
        private final List<Double> millis = new ArrayList<>();

        void add(Optional<String> said, String text) {
            shown++;
            read += said.filter(text::equals).isPresent() ? 1 : 0;
            wrong += said.filter(it -> !it.equals(text)).isPresent() ? 1 : 0;
        }

        void add(Score other) {
            shown += other.shown;
            read += other.read;
            wrong += other.wrong;
            millis.addAll(other.millis);
        }

        double percent() {
            return 100.0 * read / shown;
        }

        double median() {
            return Race.median(millis);
        }
    }

    @Test
    @Order(1)
    void wornCardsAreReadByUsAndByOthers() throws Exception {
        warmUp();
        Race.print("worn cards, % read (ours, one pass of ZXing, BoofCV, zbar); a picture's CPU ms at the median");
        Map<String, Score> singles = new LinkedHashMap<>();
        for (Wear wear : Wear.SINGLES) {
            score(wear, FRAMES).forEach((reader, score) -> singles.computeIfAbsent(reader, it -> new Score())
                    .add(score));
        }
        print("single causes", singles);
        score(Wear.MIXED, 2 * FRAMES);
        score(Wear.HARD, FRAMES / 2);
        assertThat(singles.get("ours").wrong).isZero();
        assertThat(singles.get("ours").percent())
                .isGreaterThan(singles.get("ZXing").percent());
    }

    @Test
    @Order(2)
    void aFilthyCardWithTwoSymbolsIsReadMoreOften() {
        Race.print("worn cards with one symbol of 14 dots a module, two of 12 and two of 14, % read by us");
        Map<Wear, List<Double>> read = new LinkedHashMap<>();
        for (Wear wear : List.of(
                Wear.FILTHY,
                Wear.HARD,
                Wear.MIXED,
                Wear.DIRT_OFF_FINDERS,
                Wear.GLARE,
                Wear.BLUR,
                Wear.MOTION,
                Wear.DISTANCE)) {
            List<Double> percents = Stream.of(WornCards.Layout.values())
                    .map(layout -> percent(WornCards.of(SEED, layout), wear, FRAMES))
                    .toList();
            read.put(wear, percents);
            Race.print(String.format(
                    Locale.ROOT,
                    "%-18s one %5.1f  two %5.1f  two of 14 %5.1f",
                    wear,
                    percents.get(0),
                    percents.get(1),
                    percents.get(2)));
        }
        assertThat(read.get(Wear.FILTHY).get(1))
                .isGreaterThan(read.get(Wear.FILTHY).get(0));
    }

    @Test
    @Order(3)
    void codesThatAreNoCardsAreReadByUsAndByOthers() throws Exception {
        warmUp();
        Race.print("codes that are no cards, % read (ours, one pass of ZXing, BoofCV, zbar)");
        Map<String, Score> all = new LinkedHashMap<>();
        for (Oddity oddity : Oddity.values()) {
            List<WornCards.Worn> codes = IntStream.range(0, FRAMES / 2)
                    .mapToObj(i -> OtherCodes.of(SEED).code(oddity, i))
                    .toList();
            score(oddity.toString(), codes).forEach((reader, score) -> all.computeIfAbsent(reader, it -> new Score())
                    .add(score));
        }
        print("all", all);
        assertThat(all.get("ours").wrong).isZero();
        assertThat(all.get("ours").percent()).isGreaterThan(all.get("BoofCV").percent());
    }

    /**
     * Photographs with what they say in a text file beside each, upright and turned: -Dcagewall.photographs=FOLDER. Tried
     * with those by which ZXing 3 tests itself (qrcode-1 to qrcode-7 of its black-box tests, Apache License 2.0), by which
     * no rate was tuned. Files of text differ in how their lines end.
     */
    @Test
    @Order(4)
    @EnabledIfSystemProperty(named = "cagewall.photographs", matches = ".+")
    void photographsAreReadByUsAndByOthers() throws Exception {
        warmUp();
        Race.print("photographs in four turns, % read (ours, one pass of ZXing, BoofCV, zbar)");
        List<WornCards.Worn> photographs = new ArrayList<>();
        for (Path file : pictures(Path.of(System.getProperty("cagewall.photographs")))) {
            String text = Files.readString(
                    file.resolveSibling(file.getFileName().toString().replaceAll("\\.[a-z]+$", ".txt")));
            Luma turned = Luma.of(ImageIO.read(file.toFile()));
            for (int turn = 0; turn < 4; turn++) {
                photographs.add(new WornCards.Worn(turned, text));
                turned = aQuarterOn(turned);
            }
        }
        Score ours = score("photographs", photographs, text -> text.strip().replaceAll("\\s+", " "))
                .get("ours");
        assertThat(ours.percent()).isGreaterThan(94);
    }

    private static List<Path> pictures(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().matches(".*\\.(png|jpg)"))
                    .sorted()
                    .toList();
        }
    }

    private static Luma aQuarterOn(Luma luma) {
        byte[] turned = new byte[luma.width() * luma.height()];
        for (int i = 0; i < turned.length; i++) {
            turned[i] = (byte) luma.at(i / luma.height(), luma.height() - 1 - i % luma.height());
        }
        return Luma.of(luma.height(), luma.width(), turned);
    }

    private double percent(WornCards cards, Wear wear, int frames) {
        Score score = new Score();
        for (int i = 0; i < frames; i++) {
            WornCards.Worn worn = cards.card(wear, i);
            score.add(readers.get("ours").apply(worn.picture()), worn.text());
        }
        return score.percent();
    }

    private void warmUp() {
        for (int i = 0; i < WARM_UPS; i++) {
            Luma picture = WornCards.of(SEED + 1).card(Wear.MIXED, i).picture();
            readers.values().forEach(reader -> reader.apply(picture));
        }
    }

    private Map<String, Score> score(Wear wear, int frames) throws Exception {
        return score(
                wear.toString(),
                IntStream.range(0, frames)
                        .mapToObj(i -> WornCards.of(SEED).card(wear, i))
                        .toList());
    }

    private Map<String, Score> score(String what, List<WornCards.Worn> worn) throws Exception {
        return score(what, worn, UnaryOperator.identity());
    }

    /** @param words what counts of a text */
    private Map<String, Score> score(String what, List<WornCards.Worn> worn, UnaryOperator<String> words)
            throws Exception {
        Map<String, Score> scores = new LinkedHashMap<>();
        readers.keySet().forEach(reader -> scores.put(reader, new Score()));
        scores.put(ZBAR, new Score());
        for (WornCards.Worn card : worn) {
            readers.forEach((name, reader) -> {
                long begun = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                Optional<String> said = reader.apply(card.picture());
                long ended = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                scores.get(name).add(said.map(words), words.apply(card.text()));
                scores.get(name).millis.add((ended - begun) / 1e6);
            });
        }
        Map<Integer, String> byZbar = zbar(worn);
        for (int i = 0; i < worn.size(); i++) {
            String text = words.apply(worn.get(i).text());
            scores.get(ZBAR).add(Optional.ofNullable(byZbar.get(i)).map(words), text);
        }
        print(what, scores);
        return scores;
    }

    private static void print(String what, Map<String, Score> scores) {
        Score ours = scores.get("ours");
        Score plain = scores.get("ZXing");
        Race.print(String.format(
                Locale.ROOT,
                "%-18s %s  of %4d, wrong %s  %5.1f ms against %5.1f: ratio %4.1f",
                what,
                scores.values().stream()
                        .map(score -> String.format(Locale.ROOT, "%5.1f", score.percent()))
                        .collect(Collectors.joining(" ")),
                ours.shown,
                scores.values().stream()
                        .map(score -> String.valueOf(score.wrong))
                        .collect(Collectors.joining("/")),
                ours.median(),
                plain.median(),
                ours.median() / plain.median()));
    }

    private static Map<String, Function<Luma, Optional<String>>> readers() {
        Map<String, Function<Luma, Optional<String>>> readers = new LinkedHashMap<>();
        Decoder decoder = new Decoder();
        QrCodeDetector<GrayU8> boof = FactoryFiducial.qrcode(null, GrayU8.class);
        readers.put("ours", luma -> decoder.decode(luma).text());
        readers.put("ZXing", WornCardsBenchmark::onePass);
        readers.put("BoofCV", luma -> {
            GrayU8 grey = new GrayU8(luma.width(), luma.height());
            grey.data = luma.toBytes();
            boof.process(grey);
            return boof.getDetections().stream().findFirst().map(found -> found.message);
        });
        return readers;
    }

    private static Optional<String> onePass(Luma luma) {
        int width = luma.width();
        int height = luma.height();
        try {
            return Optional.of(new QRCodeReader()
                    .decode(
                            new BinaryBitmap(new HybridBinarizer(new PlanarYUVLuminanceSource(
                                    luma.toBytes(), width, height, 0, 0, width, height, false))),
                            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE)))
                    .getText());
        } catch (ReaderException e) {
            return Optional.empty();
        }
    }

    /** What zbar's own program reads, by the number of the picture. */
    private Map<Integer, String> zbar(List<WornCards.Worn> worn) throws IOException, InterruptedException {
        if (!Files.isExecutable(ZBAR_PROGRAM)) {
            return Map.of();
        }
        List<String> command =
                new ArrayList<>(List.of(ZBAR_PROGRAM.toString(), "-q", "--xml", "-Sdisable", "-Sqrcode.enable"));
        for (int i = 0; i < worn.size(); i++) {
            Path file = folder.resolve(i + ".pgm");
            Files.write(file, pgm(worn.get(i).picture()));
            command.add(file.toString());
        }
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String xml = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        Map<Integer, String> read = new LinkedHashMap<>();
        for (String source : xml.split("(?=<source )")) {
            Matcher symbol = ZBAR_SYMBOL.matcher(source);
            if (symbol.find()) {
                read.put(Integer.valueOf(symbol.group(1)), symbol.group(2));
            }
        }
        return read;
    }

    private static byte[] pgm(Luma luma) {
        byte[] head = ("P5 " + luma.width() + " " + luma.height() + " 255\n").getBytes(StandardCharsets.US_ASCII);
        byte[] pixels = luma.toBytes();
        byte[] file = new byte[head.length + pixels.length];
        System.arraycopy(head, 0, file, 0, head.length);
        System.arraycopy(pixels, 0, file, head.length, pixels.length);
        return file;
    }
}
