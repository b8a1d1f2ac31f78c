package org.cagewall.room;

import java.util.Arrays;
import java.util.Optional;
import org.cagewall.text.Message;

/** Whom the owner wants to be phoned first for an ill bird. */
public enum FirstCall {
    OWNER,
    /** The other keeper, who knows the birds. */
    SECOND,
    VET;

    /** As it stands in the record. */
    public String id() {
        return Message.word(this);
    }

    public static Optional<FirstCall> of(String id) {
        return Arrays.stream(values()).filter(each -> each.id().equals(id)).findFirst();
    }
}
