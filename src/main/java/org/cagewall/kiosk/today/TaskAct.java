package org.cagewall.kiosk.today;

import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.text.Message;

/** What can be answered to a task, or where it leads. */
public enum TaskAct {
    ALL_WELL(ButtonKind.MAIN),
    ROW_WELL(ButtonKind.MAIN),
    DONE(ButtonKind.MAIN),
    READ(ButtonKind.MAIN),
    DIFFERENT(ButtonKind.OUTLINED),
    PENCILLED(ButtonKind.MAIN),
    OPEN_CAGE(ButtonKind.OUTLINED),
    OPEN_CARDS(ButtonKind.OUTLINED),
    OPEN_HANDOVER(ButtonKind.MAIN),
    CLOSE_THE_DAY(ButtonKind.MAIN),
    EVENING(ButtonKind.MAIN),
    MORNING(ButtonKind.MAIN),
    PHONE(ButtonKind.MAIN),
    /** Ticked off without having been recorded otherwise. */
    TICK(ButtonKind.OUTLINED),
    NOT_DONE(ButtonKind.QUIET);

    private final ButtonKind kind;

    TaskAct(ButtonKind kind) {
        this.kind = kind;
    }

    ButtonKind kind() {
        return kind;
    }

    /** Its name among the parts of the screen, and the last part of its sentence's key. */
    String word() {
        return Message.word(this);
    }
}
