package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import org.junit.jupiter.api.Test;

class DisplayConditionTest {

    @Test
    void aWindowTestRunsWhereThereIsADisplay() {
        assertThat(DisplayCondition.judge(false, true).isDisabled()).isFalse();
        assertThat(DisplayCondition.judge(false, false).isDisabled()).isFalse();
    }

    @Test
    void aWindowTestIsSkippedWithItsReasonWhereThereIsNone() {
        assertThat(DisplayCondition.judge(true, false)).satisfies(verdict -> {
            assertThat(verdict.isDisabled()).isTrue();
            assertThat(verdict.getReason())
                    .hasValueSatisfying(reason -> assertThat(reason).contains("no display"));
        });
    }

    @Test
    void aWindowTestFailsWhereABuildInsistsOnADisplayAndThereIsNone() {
        assertThatIllegalStateException()
                .isThrownBy(() -> DisplayCondition.judge(true, true))
                .withMessageContaining("no display");
    }
}
