package org.cagewall.kiosk.today;

import java.util.List;
import java.util.Map;
import org.cagewall.room.care.Sign;
import org.cagewall.tasks.Reply;
import org.cagewall.tasks.Vital;

/**
 * What was touched of something different before it was recorded. Immutable; any thread.
 *
 * @param page the page that was open
 * @param replies the questions about it that were answered
 * @param person who touched it
 */
public record TodayDraft(
        TodayState.Page page, List<Sign> signs, String note, Map<Vital, Reply> replies, String person) {

    public TodayDraft {
        signs = List.copyOf(signs);
        replies = Map.copyOf(replies);
    }
}
