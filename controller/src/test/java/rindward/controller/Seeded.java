package rindward.controller;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * Marks a property: a test of what must hold for whatever is drawn. It takes one {@link Any} and is
 * run once for each case. A case that fails tells what was drawn and the seed that draws it again.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@Test
@ExtendWith(SeededCases.class)
public @interface Seeded {
  /** Stands for a seed that is another one at every run. */
  long ANOTHER = 0;

  /** How many cases are drawn. */
  int cases() default 1000;

  /** The seed of the first case, to see a failure again. */
  long seed() default ANOTHER;
}
