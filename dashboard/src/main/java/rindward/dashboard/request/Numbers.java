package rindward.dashboard.request;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;

/** Whole numbers after the question mark. */
public final class Numbers {
  private Numbers() {}

  /**
   * Returns a number of the query.
   *
   * @throws BadRequestResponse when it is none, or outside {@code low..high}
   */
  public static int in(Context ctx, String name, int otherwise, int low, int high) {
    String text = ctx.queryParam(name);
    try {
      int number = text == null ? otherwise : Integer.parseInt(text);
      if (low <= number && number <= high) {
        return number;
      }
    } catch (NumberFormatException notANumber) {
      // Said below.
    }
    throw new BadRequestResponse(
        name + " was '" + text + "' but it must be a number from " + low + " to " + high + ".");
  }
}
