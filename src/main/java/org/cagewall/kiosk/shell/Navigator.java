package org.cagewall.kiosk.shell;

/** Leads from screen to screen. Used on the event thread; presenters may hold it, it is free of Swing. */
public interface Navigator {

    void go(Destination destination);
}
