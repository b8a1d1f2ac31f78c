package org.cagewall.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/**
 * Puts messages into the reader's language, at the border only: kiosk, command line, printed pages. Each area of the
 * program has its own file of sentences, named by the first part of the key. Thread-safe.
 */
public final class Words {

    private final Locale locale;
    private final Map<String, Properties> areas = new ConcurrentHashMap<>();

    private Words(Locale locale) {
        this.locale = locale;
    }

    public static Words english() {
        return new Words(Locale.UK);
    }

    /** The sentence for this message. A key that has no sentence is shown in brackets, so that it stands out. */
    public String say(Message message) {
        return pattern(message.key())
                .map(pattern -> new MessageFormat(withPlainNumbers(pattern, message.args()), locale)
                        .format(message.args().stream().map(this::spoken).toArray()))
                .orElse("[" + message.key() + "]");
    }

    public String say(String key, Object... args) {
        return say(Message.of(key, args));
    }

    /** The same where it stands alone: a sentence that begins with a word of its own begins with a capital. */
    public String sentence(Message message) {
        String said = say(message);
        boolean ownWord = pattern(message.key())
                .filter(pattern -> Character.isLowerCase(pattern.codePointAt(0)))
                .isPresent();
        return ownWord ? said.substring(0, 1).toUpperCase(locale) + said.substring(1) : said;
    }

    /** The word for a constant where it stands alone, with a capital. */
    public String heading(Enum<?> constant) {
        return sentence(Message.of(key(constant)));
    }

    public boolean knows(String key) {
        return pattern(key).isPresent();
    }

    /** A date in a sentence: 14 April 2026. */
    public String date(LocalDate date) {
        return format("d MMMM uuuu", date);
    }

    /** A date on a tile: 14 Apr. */
    public String shortDay(LocalDate date) {
        return format("d MMM", date);
    }

    /** Two days of a season, the month once where it is the same: 3 and 7 May, 28 Apr and 3 May. */
    public String days(LocalDate from, LocalDate to) {
        boolean oneMonth = from.getMonth() == to.getMonth() && from.getYear() == to.getYear();
        return say("word.and", oneMonth ? String.valueOf(from.getDayOfMonth()) : shortDay(from), shortDay(to));
    }

    /** A date as a heading: Tuesday 14 April. */
    public String longDay(LocalDate date) {
        return format("EEEE d MMMM", date);
    }

    /** A time of the room's clock: 7:40. */
    public String time(LocalTime time) {
        return DateTimeFormatter.ofPattern("H:mm", locale).format(time);
    }

    private String format(String pattern, LocalDate date) {
        return DateTimeFormatter.ofPattern(pattern, locale).format(date);
    }

    /** Whole numbers are written without commas: an entry's number is copied, not read as a quantity. */
    private static String withPlainNumbers(String pattern, List<Object> args) {
        String plain = pattern;
        for (int i = 0; i < args.size(); i++) {
            if (args.get(i) instanceof Integer || args.get(i) instanceof Long) {
                plain = plain.replace("{" + i + "}", "{" + i + ",number,0}");
            }
        }
        return plain;
    }

    private Object spoken(Object arg) {
        if (arg instanceof Message nested) {
            return say(nested);
        }
        if (arg instanceof LocalDate date) {
            return date(date);
        }
        if (arg instanceof LocalTime time) {
            return time(time);
        }
        if (arg instanceof Enum<?> constant) {
            return say(key(constant));
        }
        if (arg instanceof Collection<?> several) {
            return several.stream().map(each -> String.valueOf(spoken(each))).collect(Collectors.joining(", "));
        }
        return arg;
    }

    private static String key(Enum<?> constant) {
        return "word." + constant.getDeclaringClass().getSimpleName().toLowerCase(Locale.ROOT) + "."
                + Message.word(constant);
    }

    private Optional<String> pattern(String key) {
        int dot = key.indexOf('.');
        if (dot < 1) {
            return Optional.empty();
        }
        Properties area = areas.computeIfAbsent(key.substring(0, dot), this::load);
        return Optional.ofNullable(area.getProperty(key.substring(dot + 1)));
    }

    private Properties load(String area) {
        Properties sentences = new Properties();
        try (InputStream in = Words.class.getResourceAsStream(locale.getLanguage() + "/" + area + ".properties")) {
            if (in != null) {
                sentences.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the sentences of " + area, e);
        }
        return sentences;
    }
}
