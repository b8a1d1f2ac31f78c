package org.cagewall.kiosk.shell;

/** Leads from screen to screen. Used on the event thread; presenters may hold it, it is free of Swing. */
public interface Navigator {

    void go(Destination destination);

    /** To where one was before; to the first screen, if there is nothing before. */
    void back();
}
