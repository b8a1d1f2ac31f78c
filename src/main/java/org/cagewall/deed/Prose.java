package org.cagewall.deed;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A text of up to 2,000 characters in which lines may break, where a plain text field is a name of up to 40. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
@interface Prose {

    int MOST = 2_000;
}
