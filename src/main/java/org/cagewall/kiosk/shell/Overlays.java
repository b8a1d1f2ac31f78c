package org.cagewall.kiosk.shell;

import java.util.List;
import javax.swing.JComponent;
import org.cagewall.text.Message;

/**
 * ChoiceSheets over the screen, in the one frame: a question, something told, something to pick. Only one is open; a next one
 * takes its place. Used on the event thread.
 */
public interface Overlays extends Asking {

    /** A sheet with a part of the screen's own, such as a month or a note; answers as in a question, or none. */
    void sheet(Message title, JComponent content, List<AnswerButton> answers);

    /** Whether the sheet with this part is open. */
    boolean shows(JComponent content);

    /** Takes the sheet away. */
    void close();
}
