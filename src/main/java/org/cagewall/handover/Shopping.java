package org.cagewall.handover;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.FeedLine;
import org.cagewall.text.Message;

/**
 * What the birds are given on the days away, summed where it can be: amounts are what the keeper wrote, a number and a
 * word after it; those that begin with no number, and whatever reads like a medicine, are listed as they stand, and none
 * is ever made up. Immutable; any thread.
 *
 * @param days how many days are reckoned with
 * @param sums what could be added up
 * @param rest what could not, a line each
 */
public record Shopping(int days, List<Sum> sums, List<Rest> rest) {

    /** A number (2, 1.5, 1/2, 1 1/2 or one of the three signs for a fraction), then what is counted. */
    private static final Pattern AMOUNT = Pattern.compile(
            "(?:(\\d{1,6}) +)?(\\d{1,6})/([248])(?!\\d) *(.*)|(\\d{1,6}(?:[.,]\\d{1,2})?) ?([\u00bc\u00bd\u00be]?) *(.*)"
                    + "|([\u00bc\u00bd\u00be]) *(.*)");

    private static final Map<String, BigDecimal> SIGNS = Map.of(
            "", BigDecimal.ZERO,
            "\u00bc", new BigDecimal("0.25"),
            "\u00bd", new BigDecimal("0.5"),
            "\u00be", new BigDecimal("0.75"));

    /** Units of the SI brochure (9th edition) that are counted together: weights, and litres by themselves. */
    private static final Map<String, Unit> KNOWN = Map.of(
            "g", new Unit("g", BigDecimal.ONE),
            "gram", new Unit("g", BigDecimal.ONE),
            "kg", new Unit("g", BigDecimal.valueOf(1000)),
            "kilo", new Unit("g", BigDecimal.valueOf(1000)),
            "l", new Unit("l", BigDecimal.ONE),
            "litre", new Unit("l", BigDecimal.ONE));

    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    private record Unit(String name, BigDecimal size) {}

    /**
     * So much of one food.
     *
     * @param unit what is counted, as it was written; empty where nothing stands after the number
     * @param counted whether the unit is written as one piece, so that the sum is n of it
     */
    public record Sum(String what, BigDecimal amount, String unit, Counted counted) {}

    /** How an amount is written. */
    public enum Counted {
        /** 24 scoops, 1.2 kg, 9. */
        MEASURED,
        /** 9 times one pinch: the word for several was never written. */
        TIMES_ONE
    }

    /** What cannot be added up. The amount is empty where none is set. */
    public record Rest(String what, Optional<String> amount, List<String> cages) {

        public Rest {
            cages = List.copyOf(cages);
        }
    }

    public Shopping {
        sums = List.copyOf(sums);
        rest = List.copyOf(rest);
    }

    /** For all days away, both counted. Cages without birds need nothing. */
    public static Shopping of(Room room, Absence absence) {
        int days = (int) ChronoUnit.DAYS.between(absence.from(), absence.to()) + 1;
        Map<String, Counting> counted = new LinkedHashMap<>();
        Map<String, Rest> rest = new LinkedHashMap<>();
        Map<String, String> names = new HashMap<>();
        room.walk().filter(cage -> room.isLivedIn(cage)).forEach(cage -> cage.routine().feed().stream()
                .filter(line -> !isWater(line))
                .forEach(line -> take(cage, line, names, counted, rest)));
        return new Shopping(
                days, counted.values().stream().map(each -> each.forDays(days)).toList(), List.copyOf(rest.values()));
    }

    /** A food is called by the name by which it is met first. */
    private static void take(
            Cage cage,
            FeedLine line,
            Map<String, String> names,
            Map<String, Counting> counted,
            Map<String, Rest> rest) {
        String key = line.what().strip().toLowerCase(Locale.ROOT);
        String food = names.computeIfAbsent(key, any -> line.what().strip());
        Optional<Amount> amount = line.isMedicine() ? Optional.empty() : Amount.of(line.amount());
        if (amount.isPresent()) {
            counted.computeIfAbsent(key + "/" + amount.get().unit(), any -> new Counting(food))
                    .add(amount.get());
            return;
        }
        Optional<String> written = Optional.of(line.amount().strip()).filter(text -> !text.isEmpty());
        rest.merge(
                key + "/" + written.orElse(""),
                new Rest(food, written, List.of(cage.name())),
                (one, other) -> new Rest(one.what(), one.amount(), joined(one.cages(), other.cages())));
    }

    private static List<String> joined(List<String> one, List<String> other) {
        List<String> all = new ArrayList<>(one);
        other.stream().filter(name -> !one.contains(name)).forEach(all::add);
        return all;
    }

    /** Water comes from the tap. */
    private static boolean isWater(FeedLine line) {
        return line.what().strip().toLowerCase(Locale.ROOT).endsWith("water") && !line.isMedicine();
    }

    public boolean isEmpty() {
        return sums.isEmpty() && rest.isEmpty();
    }

    /** Each line in words, what is summed first. */
    public List<Message> words() {
        List<Message> words = new ArrayList<>();
        sums.forEach(sum -> words.add(words(sum)));
        rest.forEach(each -> words.add(each.amount()
                .map(amount -> Message.of("ready.shop-each", each.what(), amount, each.cages()))
                .orElseGet(() -> Message.of("ready.shop-unknown", each.what(), each.cages()))));
        return words;
    }

    private static Message words(Sum sum) {
        String number = sum.amount().stripTrailingZeros().toPlainString();
        if (sum.unit().isEmpty()) {
            return Message.of("ready.shop-number", sum.what(), number);
        }
        return Message.of(
                sum.counted() == Counted.MEASURED ? "ready.shop-sum" : "ready.shop-times",
                sum.what(),
                number,
                sum.unit());
    }

    /** One amount as it was written. */
    private record Amount(BigDecimal number, String unit, String written) {

        static Optional<Amount> of(String text) {
            Matcher parts = AMOUNT.matcher(text.strip());
            if (!parts.matches()) {
                return Optional.empty();
            }
            if (parts.group(2) != null) {
                BigDecimal whole = parts.group(1) == null ? BigDecimal.ZERO : new BigDecimal(parts.group(1));
                BigDecimal share = new BigDecimal(parts.group(2))
                        .divide(new BigDecimal(parts.group(3)), 3, RoundingMode.UNNECESSARY);
                return of(whole.add(share), parts.group(4));
            }
            if (parts.group(5) != null) {
                BigDecimal number = new BigDecimal(parts.group(5).replace(',', '.'));
                return of(number.add(SIGNS.get(parts.group(6))), parts.group(7));
            }
            return of(SIGNS.get(parts.group(8)), parts.group(9));
        }

        /** A second number in it, or a few words more, and it is not understood. */
        private static Optional<Amount> of(BigDecimal number, String rest) {
            String written = rest.strip();
            if (!written.matches("[\\p{L} ]{0,30}") || written.split(" ").length > 2) {
                return Optional.empty();
            }
            String one = single(written.toLowerCase(Locale.ROOT));
            Optional<Unit> known = Optional.ofNullable(KNOWN.get(one));
            return Optional.of(new Amount(
                    number.multiply(known.map(Unit::size).orElse(BigDecimal.ONE)),
                    known.map(Unit::name).orElse(one),
                    written));
        }

        /** The word for one of them. */
        private static String single(String unit) {
            return unit.length() > 3 && unit.endsWith("s") && !unit.endsWith("ss")
                    ? unit.substring(0, unit.length() - 1)
                    : unit;
        }

        boolean isKnown() {
            return KNOWN.values().stream().anyMatch(known -> known.name().equals(unit));
        }

        boolean isWrittenAsSeveral() {
            return !written.equalsIgnoreCase(unit);
        }
    }

    /** One food in one unit, a day, as the cages are gone through. */
    private static final class Counting {

        private final String what;
        private final List<Amount> amounts = new ArrayList<>();

        Counting(String what) {
            this.what = what;
        }

        void add(Amount amount) {
            amounts.add(amount);
        }

        Sum forDays(int days) {
            BigDecimal all = amounts.stream()
                    .map(Amount::number)
                    .reduce(BigDecimal.ZERO, BigDecimal::add)
                    .multiply(BigDecimal.valueOf(days));
            Amount first = amounts.get(0);
            if (first.isKnown()) {
                boolean many = first.unit().equals("g") && all.compareTo(THOUSAND) >= 0;
                return new Sum(
                        what,
                        many ? all.divide(THOUSAND, 3, RoundingMode.HALF_UP) : all,
                        many ? "kg" : first.unit(),
                        Counted.MEASURED);
            }
            Optional<String> several = amounts.stream()
                    .filter(Amount::isWrittenAsSeveral)
                    .map(Amount::written)
                    .findFirst();
            boolean asOne = several.isEmpty() && !first.unit().isEmpty() && all.compareTo(BigDecimal.ONE) != 0;
            return new Sum(
                    what,
                    all,
                    several.filter(any -> all.compareTo(BigDecimal.ONE) != 0).orElse(first.unit()),
                    asOne ? Counted.TIMES_ONE : Counted.MEASURED);
        }
    }
}
