package org.cagewall.tasks;

import java.time.LocalDate;
import org.cagewall.almanac.Window;
import org.cagewall.text.Message;

/** Says between which days something is expected, everywhere alike. Pure; any thread. */
public final class WindowWords {

    private WindowWords() {}

    /** "between 3 and 7 May 2026", "on 3 May 2026", or "about" these where it leans on a guess. */
    public static Message of(Window window) {
        String about = window.about() ? "about-" : "";
        LocalDate first = window.earliest();
        LocalDate last = window.latest();
        if (first.equals(last)) {
            return Message.of("tasks.window-" + about + "on", last);
        }
        boolean oneMonth = first.getMonth() == last.getMonth() && first.getYear() == last.getYear();
        return oneMonth
                ? Message.of("tasks.window-" + about + "between", first.getDayOfMonth(), last)
                : Message.of("tasks.window-" + about + "between", first, last);
    }
}
