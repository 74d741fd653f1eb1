package rindward.dashboard.request;

import io.javalin.http.Context;
import java.util.List;

/**
 * Which part of a long list a query asks for.
 *
 * @param from how many are left out at the beginning
 * @param size how many are asked for at most
 */
public record Page(int from, int size) {
  private static final int USUAL_SIZE = 200;
  private static final int MOST = 100_000;
  private static final int LONGEST = 500;

  /**
   * Reads {@code from} and {@code size}.
   *
   * @throws io.javalin.http.BadRequestResponse when one of them makes no sense
   */
  public static Page of(Context ctx) {
    return new Page(
        Numbers.in(ctx, "from", 0, 0, MOST), Numbers.in(ctx, "size", USUAL_SIZE, 1, LONGEST));
  }

  /** Returns that part of a list; empty beyond its end. */
  public <T> List<T> in(List<T> all) {
    return all.stream().skip(from).limit(size).toList();
  }
}
