package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.card.CardCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class KeystrokesTest {

    private static final String KEYS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private static final long MILLI = 1_000_000;
    private static final CardCode CARD = new CardCode("B7K", 14, "Q2");

    private final Keystrokes keystrokes = new Keystrokes();
    private final StringBuilder letThrough = new StringBuilder();
    private final List<Keystrokes.Scanned> scanned = new ArrayList<>();
    private long now = 1_000 * MILLI;

    @Test
    void aScannersKeysAreHeldBackUntilTheEnterAndThenAreACard() {
        type(CARD.text(), 5);
        assertThat(letThrough).isEmpty();
        assertThat(scanned).isEmpty();
        type("\n", 5);
        assertThat(scanned).containsExactly(new Keystrokes.Scanned(new CardCode.Valid(CARD), 0));
        assertThat(letThrough).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 8, 16, 40, 79, 80, 120, 400, 2000})
    void aCardIsKnownHoweverFastItsKeysCome(long millis) {
        type(CARD.text() + "\r", millis);
        assertThat(cards()).containsExactly(CARD);
    }

    @Test
    void whatASlowScannerTypedBeforeIsCountedSoThatItCanBeTakenBack() {
        type(CARD.text() + "\n", 200);
        assertThat(letThrough.toString()).isEqualTo(CARD.text());
        assertThat(scanned.get(0).letThrough()).isEqualTo(10);
    }

    @Test
    void aSlowEnterAfterFastKeysIsStillTheScannersEnter() {
        for (char key : CARD.text().toCharArray()) {
            take(keystrokes.typed(key, now += 5 * MILLI));
        }
        take(keystrokes.typed('\n', now += 300 * MILLI));
        assertThat(scanned).containsExactly(new Keystrokes.Scanned(new CardCode.Valid(CARD), 0));
    }

    /** The layouts as the X keyboard configuration has them; the file names its source. */
    @ParameterizedTest
    @MethodSource("layouts")
    void theLayoutOfTheComputerDoesNotMatter(String layout, String typed) {
        cardTexts().forEach(text -> {
            scanned.clear();
            type(each(KEYS, typed).apply(text) + "\n", 8);
            assertThat(cards()).as(layout).extracting(CardCode::text).containsExactly(text);
        });
        assertThat(letThrough).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("cardTexts")
    void aCapsLockDoesNotMatter(String text) {
        type(text.toLowerCase(Locale.ROOT) + "\n", 8);

        assertThat(cards()).extracting(CardCode::text).containsExactly(text);
        assertThat(letThrough).isEmpty();
    }

    @Test
    void aMarkThatTheScannerSendsBeforeTheCodeIsPassedOver() {
        type("]Q1" + CARD.text() + "\n", 5);
        assertThat(cards()).containsExactly(CARD);
    }

    @Test
    void twoCardsInARowAreTwoScans() {
        CardCode next = new CardCode("B7K", 15, "00");
        type(CARD.text() + "\n" + next.text() + "\n", 5);
        assertThat(cards()).containsExactly(CARD, next);
    }

    @Test
    void aCodeTypedByHandOpensItsCageToo() {
        type(CARD.text().toLowerCase() + "\n", 350);
        assertThat(cards()).containsExactly(CARD);
    }

    @Test
    void aPersonWhoTypesIsNoScanner() {
        type("Juniper\n", 130);
        assertThat(scanned).isEmpty();
        assertThat(letThrough.toString()).isEqualTo("Juniper\n");
    }

    @Test
    void whatAPersonTypedDoesNotWaitForTheNextKey() {
        take(keystrokes.typed('J', now));
        assertThat(letThrough).isEmpty();
        take(keystrokes.quiet(now + Keystrokes.HOLD_NANOS - 1));
        assertThat(letThrough).isEmpty();
        take(keystrokes.quiet(now + Keystrokes.HOLD_NANOS));
        assertThat(letThrough.toString()).isEqualTo("J");
        take(keystrokes.quiet(now + 2 * Keystrokes.HOLD_NANOS));
        assertThat(letThrough.toString()).isEqualTo("J");
    }

    @Test
    void ofWhatAPersonTypesNothingIsLostOrDoubled() {
        Random seeded = new Random(18004);
        String keys = "abcdefghijklmnopqrstuvwxyzABC 0123456789-.\b\n";
        StringBuilder typed = new StringBuilder();
        for (int i = 0; i < 20_000; i++) {
            char key = keys.charAt(seeded.nextInt(keys.length()));
            long gap = seeded.nextInt(4) == 0 ? 25 + seeded.nextInt(50) : 90 + seeded.nextInt(400);
            typed.append(key);
            if (seeded.nextBoolean()) {
                take(keystrokes.quiet(now + Math.min(gap * MILLI - 1, Keystrokes.HOLD_NANOS)));
            }
            take(keystrokes.typed(key, now += gap * MILLI));
        }
        take(keystrokes.quiet(now + Keystrokes.HOLD_NANOS));
        assertThat(scanned).isEmpty();
        assertThat(letThrough.toString()).isEqualTo(typed.toString());
    }

    /** Common practice, no source: a key held down repeats about thirty times a second. */
    @Test
    void aKeyThatIsHeldDownIsNoScan() {
        type("aaaaaaaaaaaaaaaa\n", 33);
        assertThat(scanned).isEmpty();
        assertThat(letThrough.toString()).isEqualTo("aaaaaaaaaaaaaaaa\n");
    }

    @Test
    void anyOtherLongFastBurstIsAForeignSymbol() {
        type("https://example.org/seed\n", 10);
        assertThat(scanned)
                .containsExactly(new Keystrokes.Scanned(new CardCode.Foreign("https://example.org/seed"), 0));
        assertThat(letThrough).isEmpty();
    }

    @Test
    void aDamagedCodeInABurstIsSaidToBeDamaged() {
        String bad = CARD.text().substring(0, 9) + (CARD.text().endsWith("0") ? '1' : '0');
        type(bad + "\n", 10);
        assertThat(scanned).containsExactly(new Keystrokes.Scanned(new CardCode.Damaged(bad), 0));
    }

    @Test
    void aDamagedCodeTypedByHandIsJustTyped() {
        String bad = CARD.text().substring(0, 9) + (CARD.text().endsWith("0") ? '1' : '0');
        type(bad + "\n", 200);
        assertThat(scanned).isEmpty();
        assertThat(letThrough.toString()).isEqualTo(bad + "\n");
    }

    @Test
    void aScanWhileAPersonTypesLeavesWhatWasTyped() {
        type("hen looks w", 130);
        now += 200 * MILLI;
        type(CARD.text() + "\n", 5);
        assertThat(letThrough.toString()).isEqualTo("hen looks w");
        assertThat(cards()).containsExactly(CARD);
    }

    @Test
    void aCodeThatWasBrokenByAnotherKeyIsNoCard() {
        type(CARD.text().substring(0, 9) + "\b" + CARD.text().substring(9) + "\n", 130);
        assertThat(scanned).isEmpty();
    }

    @Test
    void halfACodeAndAfterALongPauseTheRestIsNoCard() {
        type(CARD.text().substring(0, 5), 130);
        now += 10_000 * MILLI;
        type(CARD.text().substring(5) + "\n", 130);
        assertThat(scanned).isEmpty();
    }

    @Test
    void moreThanAnySymbolHoldsIsLetThrough() {
        type("ab".repeat(4000), 1);
        assertThat(letThrough.length()).isGreaterThan(7000);
    }

    @Test
    void anEnterAloneIsAnEnter() {
        type("\n", 5);
        assertThat(letThrough.toString()).isEqualTo("\n");
    }

    private static List<Arguments> layouts() throws IOException {
        try (InputStream in = KeystrokesTest.class.getResourceAsStream("keyboard-layouts.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" "))
                    .map(line -> Arguments.of(line[0], line[1]))
                    .toList();
        }
    }

    private static Stream<String> cardTexts() {
        Random seeded = new Random(7064);
        return Stream.generate(() -> new CardCode(
                                "" + letter(seeded) + letter(seeded) + letter(seeded),
                                1 + seeded.nextInt(1295),
                                "" + letter(seeded) + letter(seeded))
                        .text())
                .limit(200);
    }

    private static char letter(Random seeded) {
        return Character.toUpperCase(Character.forDigit(seeded.nextInt(36), 36));
    }

    private static UnaryOperator<String> each(String sent, String typed) {
        return text -> text.chars()
                .mapToObj(c -> sent.indexOf(c) < 0 ? (char) c : typed.charAt(sent.indexOf(c)))
                .map(String::valueOf)
                .collect(Collectors.joining());
    }

    /** Types as a screen feeds it: a look when no key has come for a while, then the key. */
    private void type(String keys, long millis) {
        for (char key : keys.toCharArray()) {
            if (millis * MILLI > Keystrokes.HOLD_NANOS) {
                take(keystrokes.quiet(now + Keystrokes.HOLD_NANOS));
            }
            take(keystrokes.typed(key, now += millis * MILLI));
        }
    }

    private void take(Keystrokes.Outcome outcome) {
        if (outcome instanceof Keystrokes.Typing typing) {
            letThrough.append(typing.text());
        } else if (outcome instanceof Keystrokes.Scanned scan) {
            scanned.add(scan);
        }
    }

    private List<CardCode> cards() {
        return scanned.stream().flatMap(scan -> scan.reading().code().stream()).toList();
    }
}
