package org.cagewall.kiosk.shell;

import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.text.Message;

/**
 * One answer to a question: a large button. Immutable; any thread, and free of Swing.
 *
 * @param name what tests find it by
 * @param kind how it looks
 * @param text what it says
 * @param then what follows, on the event thread, after the question is gone
 */
public record AnswerButton(String name, ButtonKind kind, Message text, Runnable then) {

    public static AnswerButton main(String name, Message text, Runnable then) {
        return new AnswerButton(name, ButtonKind.MAIN, text, then);
    }

    public static AnswerButton plain(String name, Message text, Runnable then) {
        return new AnswerButton(name, ButtonKind.OUTLINED, text, then);
    }

    /** An answer after which nothing happens. */
    public static AnswerButton leave(String name, Message text) {
        return new AnswerButton(name, ButtonKind.OUTLINED, text, () -> {});
    }
}
