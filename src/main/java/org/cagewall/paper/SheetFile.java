package org.cagewall.paper;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.text.Message;

/**
 * Reads the text of one sheet file and answers with a sentence that names file and line when cards cannot lie as it
 * says, so that a keeper with a ruler can write one. One thread.
 */
final class SheetFile {

    private static final List<String> KEYS = List.of("title", "paper", "cards", "card", "first", "pitch", "shift");
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,4}(\\.\\d{1,6})?");
    private static final Pattern PAIR = Pattern.compile("(\\S+)\\s*[xX\u00D7]\\s*(\\S+)");

    /** Common practice, no source: sheet measures are rounded to hundredths of a millimetre, printers to more. */
    private static final double TOLERANCE = 0.02;

    private static final int MOST_CARDS_A_SIDE = 40;

    private final String file;
    private final Map<String, Entry> entries = new HashMap<>();
    private int lastLine;

    private SheetFile(String file) {
        this.file = file;
    }

    /**
     * @param name the sheet's name
     * @param file the file's name, for the sentence
     * @param text what it holds
     * @param demand what is asked of a card's size
     */
    static Sheets.Found read(String name, String file, String text, Demand demand) {
        try {
            SheetFile reading = new SheetFile(file);
            reading.readLines(text);
            return new Sheets.Usable(reading.sheet(name, demand));
        } catch (Refusal e) {
            return new Sheets.Refused(e.reason);
        }
    }

    private void readLines(String text) {
        for (String raw : text.split("\\R", -1)) {
            lastLine++;
            String line =
                    raw.replaceFirst("^\uFEFF", "").replaceFirst("#.*", "").strip();
            if (!line.isEmpty()) {
                readLine(line);
            }
        }
    }

    private void readLine(String line) {
        int equals = line.indexOf('=');
        if (equals < 0) {
            throw refusal(lastLine, "no-equals", line);
        }
        String key = line.substring(0, equals).strip();
        if (!KEYS.contains(key)) {
            throw refusal(lastLine, "unknown-key", key, String.join(", ", KEYS));
        }
        if (entries.putIfAbsent(
                        key, new Entry(lastLine, line.substring(equals + 1).strip()))
                != null) {
            throw refusal(lastLine, "twice", key);
        }
    }

    private Sheet sheet(String name, Demand demand) {
        Size paper = lengths("paper");
        Size card = lengths("card");
        Size count = pair("cards");
        Size first = pair("first");
        Size shift = entries.containsKey("shift") ? pair("shift") : new Size(0, 0);
        Size pitch = entries.containsKey("pitch") ? lengths("pitch") : card;
        String title =
                Optional.ofNullable(entries.get("title")).map(Entry::value).orElse(name);
        Sheet sheet = new Sheet(
                name,
                title,
                paper,
                whole(count.width()),
                whole(count.height()),
                card,
                first.width() + shift.width(),
                first.height() + shift.height(),
                pitch,
                shift);
        requireApart(sheet);
        requireOnPaper(sheet, shift);
        demand.against(card).ifPresent(why -> {
            throw refused(line("card"), why);
        });
        return sheet;
    }

    private void requireApart(Sheet sheet) {
        double across =
                sheet.columns() == 1 ? 0 : sheet.card().width() - sheet.pitch().width();
        double down =
                sheet.rows() == 1 ? 0 : sheet.card().height() - sheet.pitch().height();
        if (Math.max(across, down) > TOLERANCE) {
            throw refusal(
                    line(entries.containsKey("pitch") ? "pitch" : "card"), "overlap", rounded(Math.max(across, down)));
        }
    }

    /** Cards that only the shift has moved over the edge are the shift's fault. */
    private void requireOnPaper(Sheet sheet, Size shift) {
        double beyond = beyond(sheet, sheet.left(), sheet.top());
        if (beyond <= TOLERANCE) {
            return;
        }
        boolean fitsUnmoved = beyond(sheet, sheet.left() - shift.width(), sheet.top() - shift.height()) <= TOLERANCE;
        throw fitsUnmoved
                ? refusal(line("shift"), "shifted-off", rounded(beyond))
                : refusal(line("first"), "off-paper", rounded(beyond));
    }

    private static double beyond(Sheet sheet, double left, double top) {
        double width =
                (sheet.columns() - 1) * sheet.pitch().width() + sheet.card().width();
        double height =
                (sheet.rows() - 1) * sheet.pitch().height() + sheet.card().height();
        return Math.max(
                Math.max(-left, -top),
                Math.max(
                        left + width - sheet.paper().width(),
                        top + height - sheet.paper().height()));
    }

    private int whole(double count) {
        if (count < 1 || count > MOST_CARDS_A_SIDE || count != Math.rint(count)) {
            throw refusal(line("cards"), "not-a-count", MOST_CARDS_A_SIDE);
        }
        return (int) count;
    }

    private Size lengths(String key) {
        Size lengths = pair(key);
        if (lengths.width() <= 0 || lengths.height() <= 0) {
            throw refusal(line(key), "not-positive", key);
        }
        return lengths;
    }

    private Size pair(String key) {
        Entry entry = entries.get(key);
        if (entry == null) {
            throw refusal(lastLine, "missing", key);
        }
        Matcher pair = PAIR.matcher(entry.value());
        if (!pair.matches() || !isNumber(pair.group(1)) || !isNumber(pair.group(2))) {
            throw refusal(entry.line(), "not-two-numbers", key, entry.value());
        }
        return new Size(Double.parseDouble(pair.group(1)), Double.parseDouble(pair.group(2)));
    }

    private int line(String key) {
        return entries.get(key).line();
    }

    private Refusal refusal(int line, String why, Object... args) {
        return refused(line, Message.of("paper.sheet." + why, args));
    }

    private Refusal refused(int line, Message why) {
        return new Refusal(Message.of("paper.sheet.in-line", file, line, why));
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    private static double rounded(double mm) {
        return Math.round(mm * 100) / 100.0;
    }

    private record Entry(int line, String value) {}

    private static final class Refusal extends RuntimeException {

        private final transient Message reason;

        Refusal(Message reason) {
            super(reason.key());
            this.reason = reason;
        }
    }
}
