package org.cagewall.kiosk.shell;

import java.util.List;
import org.cagewall.text.Message;

/**
 * Something to answer before going on. Immutable; any thread, and free of Swing.
 *
 * @param title the question in a few words
 * @param text what one should know to answer it; may be several sentences
 * @param answers one to four; the last is the safe one, which Escape gives too
 */
public record Question(Message title, Message text, List<AnswerButton> answers) {

    public Question {
        answers = List.copyOf(answers);
        if (answers.isEmpty() || answers.size() > 4) {
            throw new IllegalArgumentException("one to four answers, not " + answers.size());
        }
    }

    public static Question of(Message title, Message text, AnswerButton... answers) {
        return new Question(title, text, List.of(answers));
    }
}
