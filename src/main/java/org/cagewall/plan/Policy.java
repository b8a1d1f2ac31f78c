package org.cagewall.plan;

/** When a nest counts as done. */
public enum Policy {
    /** Once its last chick feeds itself and can be taken away. */
    WEANED,
    /** Once the pair is parted as well and the hen has gone to the flight. */
    APART
}
