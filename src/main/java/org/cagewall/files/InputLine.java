package org.cagewall.files;

import org.cagewall.text.Message;

/** A line of a record that is read and is not blank, with its number counted from 1. Immutable; any thread. */
public sealed interface InputLine {

    long number();

    /** A line of text. */
    record Text(long number, String text) implements InputLine {}

    /** Bytes that are no line of text, and why. */
    record NoText(long number, Message why) implements InputLine {}
}
