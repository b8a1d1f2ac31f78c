package org.cagewall.kiosk.scan;

/**
 * The switch of the small view that stays on beside the wall, the day's list and the pages of the cages. Used on the event
 * thread.
 */
public interface Small {

    boolean isOn();

    void on();

    void off();
}
