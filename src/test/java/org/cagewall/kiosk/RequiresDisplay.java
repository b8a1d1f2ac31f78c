package org.cagewall.kiosk;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a test that opens a real window: it is skipped, with the reason, on a machine without a display, and fails
 * there when the build insists on one with {@code -Dcagewall.requireDisplay=true}.
 */
@Inherited
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.TYPE, ElementType.METHOD})
@Tag("display")
@ExtendWith(DisplayCondition.class)
public @interface RequiresDisplay {}
