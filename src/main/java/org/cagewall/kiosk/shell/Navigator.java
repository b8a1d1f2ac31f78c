package org.cagewall.kiosk.shell;

/** Leads from screen to screen. Used on the event thread; presenters may hold it, it is free of Swing. */
public interface Navigator {

    void go(Destination destination);

    /**
     * To where a card leads that is scanned: where a form is half filled it is asked first, and the form stays until that
     * is answered.
     *
     * @param then what follows there
     */
    default void goByCard(Destination destination, Runnable then) {
        go(destination);
        then.run();
    }
}
