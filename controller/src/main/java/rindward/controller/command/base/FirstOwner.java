package rindward.controller.command.base;

import java.io.PrintWriter;

/** Shows, while the farm has no owner, the code by which one is made. */
public final class FirstOwner {
  private FirstOwner() {}

  public static void announce(PrintWriter out, String code) {
    out.printf(
        "Nobody may change anything yet. The owner signs in first, with this code: %s%n", code);
    out.flush();
  }
}
