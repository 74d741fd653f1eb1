package rindward.controller;

import java.lang.reflect.Method;
import java.util.SplittableRandom;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.junit.platform.commons.support.ReflectionSupport;

/**
 * Runs a {@link Seeded} test once for each case, all of them as one test: a report of a thousand
 * lines for each property would be read by nobody.
 */
final class SeededCases implements ParameterResolver, InvocationInterceptor {
  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext test) {
    return parameter.getParameter().getType() == Any.class;
  }

  /** JUnit wants an argument before it lets us run the test; each case gets its own instead. */
  @Override
  public Object resolveParameter(ParameterContext parameter, ExtensionContext test) {
    return new Any(Seeded.ANOTHER);
  }

  @Override
  public void interceptTestMethod(
      Invocation<Void> invocation,
      ReflectiveInvocationContext<Method> context,
      ExtensionContext test) {
    invocation.skip();
    Method property = context.getExecutable();
    Seeded seeded = property.getAnnotation(Seeded.class);
    long first =
        seeded.seed() == Seeded.ANOTHER ? new SplittableRandom().nextLong() : seeded.seed();
    for (int i = 0; i < seeded.cases(); i++) {
      Any any = new Any(first + i);
      try {
        ReflectionSupport.invokeMethod(property, test.getRequiredTestInstance(), any);
      } catch (Exception | AssertionError failure) {
        throw new AssertionError(
            "case %d of %d, again with @Seeded(cases = 1, seed = %dL), drew %s: %s"
                .formatted(i + 1, seeded.cases(), first + i, any, failure.getMessage()),
            failure);
      }
    }
  }
}
