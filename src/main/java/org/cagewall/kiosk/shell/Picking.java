package org.cagewall.kiosk.shell;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.cagewall.room.Cage;
import org.cagewall.text.Message;

/** What a presenter may have the person choose or write on a sheet; free of Swing. Used on the event thread. */
public interface Picking extends Asking {

    /** One of several, each a row to touch. */
    <T> void pick(Message title, List<Option<T>> options, Consumer<T> then);

    /** One of several cages, by touch or by the card of any cage. */
    void cage(Message title, List<Option<Cage>> options, Consumer<Cage> then);

    /** A number. */
    void count(Message title, int most, IntConsumer then);

    /** A few words. */
    void note(Message title, Consumer<String> then);
}
