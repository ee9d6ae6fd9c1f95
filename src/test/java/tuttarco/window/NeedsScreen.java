package tuttarco.window;

import java.awt.GraphicsEnvironment;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Tests of windows: run in the execution that may have a screen, and skipped with the reason where there is none. */
@Tag("window")
@Inherited
@ExtendWith(NeedsScreen.Condition.class)
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface NeedsScreen {
    /** Looks for a screen. */
    final class Condition implements ExecutionCondition {
        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            return GraphicsEnvironment.isHeadless()
                    ? ConditionEvaluationResult.disabled(
                            "the window's tests need a screen, and there is none here; run them under xvfb-run")
                    : ConditionEvaluationResult.enabled("there is a screen");
        }
    }
}
