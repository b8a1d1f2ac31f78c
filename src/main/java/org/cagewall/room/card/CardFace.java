package org.cagewall.room.card;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.cagewall.text.Message;

/**
 * The facts that a cage card shows and that stay true for weeks, so that a card can be told from what the cage holds
 * today. Immutable; any thread.
 *
 * @param cage the cage's name
 * @param use what the cage is for, as deeds name it: breeding, stock, flight, nursery, quarantine, hospital, show
 * @param pair the pair's label
 * @param cock the cock as a keeper names him: ring or name
 * @param hen the hen as a keeper names her: ring or name
 * @param since the day from which the pair, or whoever else is on the card, is in this cage
 * @param round the number of the round, from 1
 * @param lines what else the card says, a line each: the birds of a flight, whom a nursery keeps
 */
public record CardFace(
        String cage,
        String use,
        Optional<String> pair,
        Optional<String> cock,
        Optional<String> hen,
        Optional<LocalDate> since,
        Optional<Integer> round,
        List<String> lines) {

    private static final char SEPARATOR = '|';
    private static final char ESCAPE = '\\';

    public CardFace {
        Objects.requireNonNull(pair, "pair");
        Objects.requireNonNull(cock, "cock");
        Objects.requireNonNull(hen, "hen");
        Objects.requireNonNull(since, "since");
        Objects.requireNonNull(round, "round");
        lines = List.copyOf(lines);
        if (cage.isBlank()) {
            throw new IllegalArgumentException("a card needs the name of its cage");
        }
        if (use.isBlank()) {
            throw new IllegalArgumentException("a card needs the use of its cage");
        }
    }

    /** A card that names only the cage and its use; the rest is added with the {@code with} methods. */
    public static CardFace of(String cage, String use) {
        return new CardFace(
                cage,
                use,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    public CardFace withPair(String label) {
        return new CardFace(cage, use, Optional.of(label), cock, hen, since, round, lines);
    }

    public CardFace withCock(String ringOrName) {
        return new CardFace(cage, use, pair, Optional.of(ringOrName), hen, since, round, lines);
    }

    public CardFace withHen(String ringOrName) {
        return new CardFace(cage, use, pair, cock, Optional.of(ringOrName), since, round, lines);
    }

    public CardFace withSince(LocalDate day) {
        return new CardFace(cage, use, pair, cock, hen, Optional.of(day), round, lines);
    }

    public CardFace withRound(int number) {
        return new CardFace(cage, use, pair, cock, hen, since, Optional.of(number), lines);
    }

    public CardFace withLines(List<String> more) {
        return new CardFace(cage, use, pair, cock, hen, since, round, more);
    }

    /**
     * Two characters of 0-9 and A-Z that change, but for one case in 1296, when the face does: the first eight bytes of
     * SHA-256 (FIPS 180-4) over {@link #canonical()} in UTF-8, as an unsigned number, modulo 36 squared.
     */
    public String digest() {
        long head = 0;
        byte[] hash = sha256(canonical().getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < Long.BYTES; i++) {
            head = head << Byte.SIZE | hash[i] & 0xFF;
        }
        return CardCode.twoCharacters((int) Long.remainderUnsigned(head, (long) CardCode.RADIX * CardCode.RADIX));
    }

    /**
     * The face as one line of text that {@link #parse} reads back. What a card does not show is left out, so that a
     * kind of fact added later leaves the digest of a card without it as it was.
     */
    public String canonical() {
        List<String> fields = new ArrayList<>();
        BiConsumer<String, Object> field = (name, value) -> fields.add(name + "=" + escape(value.toString()));
        field.accept("cage", cage);
        field.accept("use", use);
        pair.ifPresent(value -> field.accept("pair", value));
        cock.ifPresent(value -> field.accept("cock", value));
        hen.ifPresent(value -> field.accept("hen", value));
        since.ifPresent(value -> field.accept("since", value));
        round.ifPresent(value -> field.accept("round", value));
        lines.forEach(value -> field.accept("line", value));
        return String.join(String.valueOf(SEPARATOR), fields);
    }

    /**
     * The face that {@link #canonical()} wrote.
     *
     * @throws IllegalArgumentException when the text is no such face
     */
    public static CardFace parse(String canonical) {
        CardFace face = null;
        String cage = null;
        List<String> lines = new ArrayList<>();
        for (String field : split(canonical)) {
            int equals = field.indexOf('=');
            String name = equals < 0 ? field : field.substring(0, equals);
            String value = field.substring(equals + 1);
            if (name.equals("cage") && cage == null) {
                cage = value;
            } else if (name.equals("use") && cage != null && face == null) {
                face = of(cage, value);
            } else if (name.equals("line") && face != null) {
                lines.add(value);
            } else if (face != null) {
                face = face.with(name, value);
            } else {
                throw notAFace(name);
            }
        }
        if (face == null) {
            throw notAFace(canonical);
        }
        return face.withLines(lines);
    }

    /** What has changed from this face, which was printed, to the other, which holds now; a sentence each. */
    public List<Message> differences(CardFace now) {
        List<Message> changes = new ArrayList<>();
        addChange(changes, "cage", Optional.of(cage), Optional.of(now.cage));
        addChange(changes, "use", Optional.of(useWord(use)), Optional.of(useWord(now.use)));
        addChange(changes, "pair", pair, now.pair);
        addChange(changes, "cock", cock, now.cock);
        addChange(changes, "hen", hen, now.hen);
        addChange(changes, "since", since, now.since);
        addChange(changes, "round", round, now.round);
        lines.stream()
                .filter(line -> !now.lines.contains(line))
                .forEach(line -> changes.add(Message.of("cards.changed.line-gone", line)));
        now.lines.stream()
                .filter(line -> !lines.contains(line))
                .forEach(line -> changes.add(Message.of("cards.changed.line-new", line)));
        if (changes.isEmpty() && !lines.equals(now.lines)) {
            changes.add(Message.of("cards.changed.lines-order"));
        }
        return List.copyOf(changes);
    }

    /** The word for a use on cards and in their sentences. */
    public static Message useWord(String use) {
        return Message.of("cards.use." + use);
    }

    private static <T> void addChange(List<Message> changes, String what, Optional<T> was, Optional<T> now) {
        if (was.equals(now)) {
            return;
        }
        String key = "cards.changed." + what;
        if (was.isEmpty()) {
            changes.add(Message.of(key + "-new", now.orElseThrow()));
        } else if (now.isEmpty()) {
            changes.add(Message.of(key + "-gone", was.orElseThrow()));
        } else {
            changes.add(Message.of(key, was.orElseThrow(), now.orElseThrow()));
        }
    }

    private CardFace with(String name, String value) {
        try {
            return switch (name) {
                case "pair" -> withPair(value);
                case "cock" -> withCock(value);
                case "hen" -> withHen(value);
                case "since" -> withSince(LocalDate.parse(value));
                case "round" -> withRound(Integer.parseInt(value));
                default -> throw notAFace(name);
            };
        } catch (DateTimeException e) {
            throw new IllegalArgumentException("not a date on a card face: " + value, e);
        }
    }

    private static IllegalArgumentException notAFace(String text) {
        return new IllegalArgumentException("not a card face: " + text);
    }

    private static String escape(String value) {
        return value.replace("\\", "\\\\").replace("|", "\\|").replace("\n", "\\n");
    }

    private static List<String> split(String canonical) {
        List<String> fields = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean escaped = false;
        for (char c : canonical.toCharArray()) {
            if (escaped) {
                field.append(c == 'n' ? '\n' : c);
                escaped = false;
            } else if (c == ESCAPE) {
                escaped = true;
            } else if (c == SEPARATOR) {
                fields.add(field.toString());
                field.setLength(0);
            } else {
                field.append(c);
            }
        }
        fields.add(field.toString());
        return fields;
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
