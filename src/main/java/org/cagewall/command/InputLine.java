package org.cagewall.command;

import org.cagewall.text.Message;

/** A line of what is to be recorded that is not blank, with its number counted from 1. Immutable; any thread. */
sealed interface InputLine {

    long number();

    /** A line of text. */
    record Text(long number, String text) implements InputLine {}

    /** Bytes that are no line of text, and why. */
    record NoText(long number, Message why) implements InputLine {}
}
