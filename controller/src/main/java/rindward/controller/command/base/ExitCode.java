package rindward.controller.command.base;

/** With what every command ends, so that scripts and service managers can tell. */
public final class ExitCode {
  /** All is fine. */
  public static final int FINE = 0;

  /** The question was answered, and the answer is that something is not well. */
  public static final int NOT_WELL = 1;

  /** Wrong usage or settings: nothing was done. */
  public static final int WRONG_USAGE = 2;

  private ExitCode() {}
}
