package org.cagewall.paper;

/** Asks a print that is under way to stop. Any thread: one prints, another asks. */
public final class Stop {

    private volatile boolean asked;

    public void ask() {
        asked = true;
    }

    public boolean isAsked() {
        return asked;
    }
}
