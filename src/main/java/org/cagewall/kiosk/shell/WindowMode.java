package org.cagewall.kiosk.shell;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the kiosk fills a screen or stands in a window, and where: pure sums over the screens. Any thread. */
public sealed interface WindowMode {

    /** Where the frame goes on these screens, of which there is at least one; the first is the main one. */
    Rectangle bounds(List<Display> displays);

    /** A screen: its lasting id and its place among the others. */
    record Display(String id, Rectangle bounds) {}

    /** Fills the screen of this id; the main one, if it is gone. */
    record FullScreen(Optional<String> id) implements WindowMode {

        @Override
        public Rectangle bounds(List<Display> displays) {
            return displays.stream()
                    .filter(display -> id.filter(display.id()::equals).isPresent())
                    .findFirst()
                    .orElse(displays.get(0))
                    .bounds();
        }
    }

    /** A window of this size in the middle of the main screen, no larger than that. */
    record Window(int width, int height) implements WindowMode {

        private static final Pattern SIZE = Pattern.compile("(\\d{3,5})x(\\d{3,5})");

        /** Reads {@code 1280x800}; nothing, if it is written otherwise. */
        public static Optional<Window> parse(String text) {
            Matcher size = SIZE.matcher(text.strip());
            return size.matches()
                    ? Optional.of(new Window(Integer.parseInt(size.group(1)), Integer.parseInt(size.group(2))))
                    : Optional.empty();
        }

        @Override
        public Rectangle bounds(List<Display> displays) {
            Rectangle screen = displays.get(0).bounds();
            int across = Math.min(width, screen.width);
            int down = Math.min(height, screen.height);
            return new Rectangle(
                    screen.x + (screen.width - across) / 2, screen.y + (screen.height - down) / 2, across, down);
        }
    }
}
