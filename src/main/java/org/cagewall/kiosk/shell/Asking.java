package org.cagewall.kiosk.shell;

import org.cagewall.text.Message;

/** What a presenter may put before the person; free of Swing. Used on the event thread. */
public interface Asking {

    void ask(Question question);

    /** Something to be read and put away. */
    void tell(Message title, Message text);
}
