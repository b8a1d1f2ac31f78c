package org.cagewall.room;

/** What a person may do: the owner everything, a keeper the birds, a sitter the daily round. */
public enum Role {
    OWNER,
    KEEPER,
    SITTER
}
