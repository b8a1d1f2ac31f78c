package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.LineMetrics;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import org.cagewall.kiosk.theme.Sizes;

/**
 * A text broken into lines of a width, so that every part wraps alike: a number stays with its noun, a comma is the
 * better place to break, and what has no room ends in an ellipsis that tests can find. Immutable; event thread.
 */
public record Flow(List<String> lines, Font font, int width, boolean whole) {

    private static final String ELLIPSIS = "\u2026";
    private static final String DOT = " \u00b7 ";
    private static final char BOUND = '\u00A0';

    /** Breaks the text at this font; {@code mostLines} of 0 means as many as it needs. */
    public static Flow of(String text, Font font, int width, int mostLines) {
        Ruler ruler = new Ruler(font);
        List<String> all = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            broken(bound(paragraph.strip(), ruler, width), ruler, width)
                    .forEach(line -> all.add(line.replace(BOUND, ' ')));
        }
        boolean fits = all.stream().allMatch(line -> ruler.length(line) <= width);
        if (mostLines > 0 && all.size() > mostLines) {
            List<String> kept = new ArrayList<>(all.subList(0, mostLines));
            kept.set(mostLines - 1, shortened(kept.get(mostLines - 1) + " " + all.get(mostLines), ruler, width));
            return new Flow(List.copyOf(kept), font, width, false);
        }
        if (mostLines == 2 && all.size() == 2) {
            return new Flow(atComma(text, ruler, width, all), font, width, fits);
        }
        return new Flow(List.copyOf(all), font, width, fits);
    }

    /** The first of these fonts at which the text is whole and no word of it is broken, or the last one. */
    public static Flow fitting(String text, List<Font> fonts, int width, int mostLines) {
        Flow flow = of(text, fonts.get(0), width, mostLines);
        for (Font font : fonts) {
            flow = of(text, font, width, mostLines);
            if (flow.whole && longestWord(text, font) <= width) {
                return flow;
            }
        }
        return flow;
    }

    /** One line whose parts stand between middle dots: where there is no room for all, the last are left out whole. */
    public static Flow parted(String text, List<Font> fonts, int width) {
        Flow flow = fitting(text, fonts, width, 1);
        int dot = text.lastIndexOf(DOT);
        return flow.whole || dot < 0 ? flow : parted(text.substring(0, dot), fonts, width);
    }

    public static float length(String text, Font font) {
        return text.isEmpty() ? 0 : Letters.of(text, font).width();
    }

    /** The width of the longest word, which is the least at which none is broken. */
    public static int longestWord(String text, Font font) {
        int longest = 0;
        for (String word : text.split("\\s+")) {
            longest = Math.max(longest, (int) Math.ceil(length(word, font)));
        }
        return longest;
    }

    /** From one line to the next: tight for large words, open for lines to read. */
    public static int pitch(Font font) {
        float size = font.getSize2D();
        return Math.round(isLarge(font) ? size * 1.1f : size * 1.35f);
    }

    private static boolean isLarge(Font font) {
        return font.getSize2D() / Sizes.px(1f) >= 26;
    }

    /** The height of all lines; the last one has room for what hangs below it. */
    public int height() {
        return (lines.size() - 1) * pitch(font) + lineHeight(font);
    }

    /** One line from the accents of its capitals to the ends of its tails. */
    public static int lineHeight(Font font) {
        return Math.max(pitch(font), Math.round(font.getSize2D() * 1.2f));
    }

    public int longest() {
        return (int) Math.ceil(lines.stream()
                .map(line -> length(line, font))
                .max(Float::compare)
                .orElse(0f));
    }

    /** Paints the lines from this corner downwards in the brush's colour. */
    public void paint(Graphics2D brush, float x, float y) {
        float baseline = y + firstBaseline();
        for (String line : lines) {
            write(brush, line, x, baseline);
            baseline += pitch(font);
        }
    }

    /** Paints each line in the middle of this width. */
    public void paintCentred(Graphics2D brush, float x, float y, float across) {
        float baseline = y + firstBaseline();
        for (String line : lines) {
            write(brush, line, x + (across - length(line, font)) / 2, baseline);
            baseline += pitch(font);
        }
    }

    /** A line through each of the lines that {@link #paint} paints from this corner. */
    public void strike(Graphics2D brush, float x, float y) {
        brush.setStroke(new BasicStroke(Sizes.px(1.8f)));
        float middle = y + firstBaseline() - capitals(font) / 2;
        for (String line : lines) {
            brush.draw(new Line2D.Float(x, middle, x + length(line, font), middle));
            middle += pitch(font);
        }
    }

    private void write(Graphics2D brush, String line, float x, float baseline) {
        if (!line.isEmpty()) {
            Shape letters = Letters.of(line, font).outline();
            brush.translate((double) x, baseline);
            brush.fill(letters);
            brush.translate((double) -x, -baseline);
        }
    }

    /** From the top of the first line's box down to what its letters stand on. */
    public float firstBaseline() {
        LineMetrics metrics = font.getLineMetrics("Ag", Letters.FRACTIONAL);
        return (lineHeight(font) - metrics.getAscent() - metrics.getDescent()) / 2 + metrics.getAscent();
    }

    /** How high this font's capitals are. */
    static float capitals(Font font) {
        return (float) font.createGlyphVector(Letters.FRACTIONAL, "H")
                .getVisualBounds()
                .getHeight();
    }

    private static List<String> broken(String paragraph, Ruler ruler, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (ruler.length(longer) <= width) {
                line.setLength(0);
                line.append(longer);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line.setLength(0);
            line.append(cutUp(word, ruler, width, lines));
        }
        lines.add(line.toString());
        return lines;
    }

    private static String cutUp(String word, Ruler ruler, int width, List<String> lines) {
        String rest = word;
        while (ruler.length(rest) > width && rest.length() > 1) {
            int most = 1;
            while (most < rest.length() - 1 && ruler.length(rest.substring(0, most + 1)) <= width) {
                most++;
            }
            lines.add(rest.substring(0, most));
            rest = rest.substring(most);
        }
        return rest;
    }

    private static String bound(String paragraph, Ruler ruler, int width) {
        List<String> words = new ArrayList<>(List.of(paragraph.split(" +")));
        for (int i = 0; i < words.size() - 1; i++) {
            boolean last = i == words.size() - 2;
            boolean number = isNumber(words.get(i)) || last && isNumber(words.get(i + 1));
            String pair = words.get(i) + BOUND + words.get(i + 1);
            if (number && ruler.length(pair) <= width) {
                words.set(i, pair);
                words.remove(i + 1);
            }
        }
        return String.join(" ", words);
    }

    private static boolean isNumber(String word) {
        return !word.isEmpty() && word.chars().allMatch(Character::isDigit);
    }

    private static List<String> atComma(String text, Ruler ruler, int width, List<String> otherwise) {
        for (int comma = text.indexOf(", "); comma > 0; comma = text.indexOf(", ", comma + 1)) {
            String first = text.substring(0, comma + 1);
            String second = text.substring(comma + 2);
            if (ruler.length(first) <= width && ruler.length(second) <= width) {
                return List.of(first, second);
            }
        }
        return List.copyOf(otherwise);
    }

    private static String shortened(String line, Ruler ruler, int width) {
        String kept = line;
        while (!kept.isEmpty() && ruler.length(kept + ELLIPSIS) > width) {
            kept = kept.substring(0, kept.length() - 1);
        }
        return kept.stripTrailing() + ELLIPSIS;
    }

    /** Measures a line by its words, which come again and again where whole lines do not. */
    private record Ruler(Font font) {

        public float length(String line) {
            float length = 0;
            int start = 0;
            for (int i = 0; i <= line.length(); i++) {
                boolean gap = i < line.length() && (line.charAt(i) == ' ' || line.charAt(i) == BOUND);
                if (gap || i == line.length()) {
                    length += Flow.length(line.substring(start, i), font) + (gap ? Flow.length(" ", font) : 0);
                    start = i + 1;
                }
            }
            return length;
        }
    }
}
