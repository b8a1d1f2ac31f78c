package org.cagewall.room;

/** What a cage is for. */
public enum Use {
    BREEDING,
    STOCK,
    FLIGHT,
    NURSERY,
    QUARANTINE,
    HOSPITAL,
    SHOW;

    /** Whether birds stand there that may be ill, and no young belong. */
    public boolean isSickroom() {
        return this == QUARANTINE || this == HOSPITAL;
    }
}
