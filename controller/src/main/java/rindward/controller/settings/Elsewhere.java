package rindward.controller.settings;

import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Where copies lie besides, so that they outlive the board: a folder of another disk or of a share,
 * or one on another machine that is reached by the system's own {@code ssh}.
 *
 * @param host {@code user@machine} as ssh takes it; null for a folder of this machine
 * @param folder absolute on this machine; on another as its shell takes it
 */
public record Elsewhere(@Nullable String host, String folder) {
  private static final Pattern REMOTE =
      Pattern.compile("([A-Za-z0-9_][A-Za-z0-9._@-]{0,250}):([^\\x00-\\x1f]+)");

  /** How it is written in a file. */
  static final Kind<String> WRITTEN =
      Kind.pattern(
          "[^\\x00-\\x1f]+",
          "be a folder of another disk, or one of another machine written as"
              + " \"user@machine:folder\"");

  /**
   * Reads it as it is written.
   *
   * @param beside the settings file, to which a folder may be relative
   */
  static Elsewhere of(String written, Path beside) {
    Matcher remote = REMOTE.matcher(written);
    return remote.matches()
        ? new Elsewhere(remote.group(1), remote.group(2))
        : new Elsewhere(null, beside.toAbsolutePath().resolveSibling(written).toString());
  }

  /** Returns it as it is written. */
  @Override
  public String toString() {
    return host == null ? folder : host + ":" + folder;
  }
}
