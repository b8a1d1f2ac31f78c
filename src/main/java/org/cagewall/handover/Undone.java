package org.cagewall.handover;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * A task that was not done. Immutable; any thread.
 *
 * @param task its id
 * @param words what it was; the entry's own sentence where the list knows no such task
 * @param why the reason that was given, where the words do not say it
 * @param said the entry that says so; empty where nobody ever answered
 * @param read whether the owner has ticked that entry, or else that day
 */
public record Undone(
        String task,
        String cage,
        LocalDate day,
        Message words,
        Optional<Message> why,
        Optional<Item> said,
        boolean read) {}
