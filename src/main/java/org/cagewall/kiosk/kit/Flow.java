package org.cagewall.kiosk.kit;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.LineMetrics;
import java.util.ArrayList;
import java.util.List;

/**
 * A text broken into lines of a width, so that every part wraps alike: a number stays with its noun, a comma is the
 * better place to break, and what has no room ends in an ellipsis that tests can find. Immutable; event thread.
 */
record Flow(List<String> lines, Font font, int width, boolean whole) {

    private static final FontRenderContext FRACTIONAL = new FontRenderContext(null, true, true);
    private static final String ELLIPSIS = "\u2026";
    private static final char BOUND = '\u00A0';

    /** Breaks the text at this font; {@code mostLines} of 0 means as many as it needs. */
    static Flow of(String text, Font font, int width, int mostLines) {
        List<String> all = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            all.addAll(broken(bound(paragraph.strip(), font, width), font, width));
        }
        boolean fits = all.stream().allMatch(line -> length(line, font) <= width);
        if (mostLines > 0 && all.size() > mostLines) {
            List<String> kept = new ArrayList<>(all.subList(0, mostLines));
            kept.set(mostLines - 1, shortened(kept.get(mostLines - 1) + " " + all.get(mostLines), font, width));
            return new Flow(List.copyOf(kept), font, width, false);
        }
        if (mostLines == 2 && all.size() == 2) {
            all = new ArrayList<>(atComma(text, font, width, all));
        }
        return new Flow(List.copyOf(all), font, width, fits);
    }

    /** The first of these fonts at which the text is whole, or the last one. */
    static Flow fitting(String text, List<Font> fonts, int width, int mostLines) {
        Flow flow = of(text, fonts.get(0), width, mostLines);
        for (Font font : fonts) {
            flow = of(text, font, width, mostLines);
            if (flow.whole) {
                return flow;
            }
        }
        return flow;
    }

    static float length(String text, Font font) {
        return text.isEmpty()
                ? 0
                : (float) font.getStringBounds(text, FRACTIONAL).getWidth();
    }

    /** From one line to the next: tight for large words, open for lines to read. */
    static int pitch(Font font) {
        float size = font.getSize2D();
        return Math.round(isLarge(font) ? size * 1.1f : size * 1.35f);
    }

    private static boolean isLarge(Font font) {
        return font.getSize2D() / org.cagewall.kiosk.theme.Measure.px(1f) >= 26;
    }

    int height() {
        return lines.size() * pitch(font);
    }

    int longest() {
        return (int) Math.ceil(lines.stream()
                .map(line -> length(line, font))
                .max(Float::compare)
                .orElse(0f));
    }

    /** Paints the lines from this corner downwards in the brush's colour. */
    void paint(Graphics2D brush, float x, float y) {
        brush.setFont(font);
        float baseline = y + firstBaseline();
        for (String line : lines) {
            brush.drawString(line, x, baseline);
            baseline += pitch(font);
        }
    }

    /** Paints each line in the middle of this width. */
    void paintCentred(Graphics2D brush, float x, float y, float across) {
        brush.setFont(font);
        float baseline = y + firstBaseline();
        for (String line : lines) {
            brush.drawString(line, x + (across - length(line, font)) / 2, baseline);
            baseline += pitch(font);
        }
    }

    /** From the top of the first line's box down to what its letters stand on. */
    float firstBaseline() {
        LineMetrics metrics = font.getLineMetrics("Ag", FRACTIONAL);
        return (pitch(font) - metrics.getAscent() - metrics.getDescent()) / 2 + metrics.getAscent();
    }

    /** How high this font's capitals are. */
    static float capitals(Font font) {
        return (float) font.createGlyphVector(FRACTIONAL, "H").getVisualBounds().getHeight();
    }

    private static List<String> broken(String paragraph, Font font, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (length(longer, font) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line.setLength(0);
            line.append(cutUp(word, font, width, lines));
        }
        lines.add(line.toString());
        return lines;
    }

    private static String cutUp(String word, Font font, int width, List<String> lines) {
        String rest = word;
        while (length(rest, font) > width && rest.length() > 1) {
            int most = 1;
            while (most < rest.length() - 1 && length(rest.substring(0, most + 1), font) <= width) {
                most++;
            }
            lines.add(rest.substring(0, most));
            rest = rest.substring(most);
        }
        return rest;
    }

    private static String bound(String paragraph, Font font, int width) {
        List<String> words = new ArrayList<>(List.of(paragraph.split(" +")));
        for (int i = 0; i < words.size() - 1; i++) {
            boolean last = i == words.size() - 2;
            boolean number = isNumber(words.get(i)) || last && isNumber(words.get(i + 1));
            String pair = words.get(i) + BOUND + words.get(i + 1);
            if (number && length(pair, font) <= width) {
                words.set(i, pair);
                words.remove(i + 1);
            }
        }
        return String.join(" ", words);
    }

    private static boolean isNumber(String word) {
        return !word.isEmpty() && word.chars().allMatch(Character::isDigit);
    }

    private static List<String> atComma(String text, Font font, int width, List<String> otherwise) {
        for (int comma = text.indexOf(", "); comma > 0; comma = text.indexOf(", ", comma + 1)) {
            String first = text.substring(0, comma + 1);
            String second = text.substring(comma + 2);
            if (length(first, font) <= width && length(second, font) <= width) {
                return List.of(first, second);
            }
        }
        return otherwise;
    }

    private static String shortened(String line, Font font, int width) {
        String kept = line;
        while (!kept.isEmpty() && length(kept + ELLIPSIS, font) > width) {
            kept = kept.substring(0, kept.length() - 1);
        }
        return kept.stripTrailing() + ELLIPSIS;
    }
}
