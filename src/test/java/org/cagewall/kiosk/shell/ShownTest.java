package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import javax.swing.SwingUtilities;
import org.cagewall.text.Message;
import org.junit.jupiter.api.Test;

class ShownTest {

    @Test
    void aViewIsToldTheFirstStateAndThenOnlyWhatIsDifferent() {
        List<Integer> told = new ArrayList<>();
        Shown<Integer> shown = new Shown<>(1, told::add);
        shown.change(state -> state + 1);
        shown.change(state -> state);
        assertThat(told).containsExactly(1, 2);
        assertThat(shown.now()).isEqualTo(2);
    }

    @Test
    void aQuestionHasOneToFourAnswers() {
        assertThatThrownBy(() -> Question.of(Message.of("shell.leave"), Message.of("shell.leave-text")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatIsOnTheEventThreadAlreadyIsDoneAtOnce() {
        List<String> order = new ArrayList<>();
        EventThread events = new EventThread();
        events.finish(() -> {
            events.execute(() -> order.add("first"));
            order.add("second");
        });
        assertThat(order).containsExactly("first", "second");
    }

    @Test
    void whatFailsOnTheEventThreadFailsForWhoeverWaits() {
        EventThread events = new EventThread();
        assertThatThrownBy(() -> events.finish(() -> {
                    assertThat(SwingUtilities.isEventDispatchThread()).isTrue();
                    throw new IllegalStateException("no such cage");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("no such cage");
    }
}
