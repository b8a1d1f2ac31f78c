package org.cagewall.kiosk;

import java.awt.GraphicsEnvironment;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Decides whether a test that needs a real window can run here, so that none is lost unseen. Runs on JUnit's thread. */
final class DisplayCondition implements ExecutionCondition {

    static final String REQUIRE_DISPLAY = "cagewall.requireDisplay";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return judge(GraphicsEnvironment.isHeadless(), Boolean.getBoolean(REQUIRE_DISPLAY));
    }

    static ConditionEvaluationResult judge(boolean headless, boolean required) {
        if (!headless) {
            return ConditionEvaluationResult.enabled("there is a display");
        }
        if (required) {
            throw new IllegalStateException(
                    REQUIRE_DISPLAY + " is set, but this machine has no display: set DISPLAY or run .ci/run");
        }
        return ConditionEvaluationResult.disabled("no display on this machine: set DISPLAY, or run .ci/run");
    }
}
