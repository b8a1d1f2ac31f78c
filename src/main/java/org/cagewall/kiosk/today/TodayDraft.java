package org.cagewall.kiosk.today;

import java.util.Collection;
import java.util.List;
import org.cagewall.room.Sign;

/**
 * What was touched of something different before it was recorded. Immutable; any thread.
 *
 * @param page the page that was open
 * @param person who touched it
 */
public record TodayDraft(TodayState.Page page, List<Sign> signs, String note, String person) {

    public TodayDraft {
        signs = List.copyOf(signs);
    }

    static TodayDraft of(TodayState.Page page, Collection<Sign> signs, String note, String person) {
        return new TodayDraft(page, List.copyOf(signs), note, person);
    }
}
