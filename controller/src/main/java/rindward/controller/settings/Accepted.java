package rindward.controller.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The settings by which the shed was last run: what is really wired, whatever has become of the
 * settings file since. They are kept at a place that follows from that file's path alone, so that
 * they are found with a file that no longer reads, or is gone.
 *
 * @param text the whole settings file, as it was
 * @param at since when the shed is run by it
 * @param by whose start of the program it was
 */
public record Accepted(String text, Instant at, String by) {
  private static final String ENDING = ".accepted";
  private static final Path ETC = Path.of("/etc");
  private static final Path STATE = Path.of("/var/lib");
  private static final Pattern FIRST_LINE =
      Pattern.compile("# Last accepted (\\S+) by (.*); kept by the program, do not edit\\.\\n");

  /**
   * Returns where that which was accepted of a settings file stands: beside it, and for one under
   * {@code /etc}, where a service may not write, at the same path under {@code /var/lib}, in
   * control's own folder: {@code /var/lib/rindward-control} for {@code /etc/rindward}. Whoever else
   * may write the record must not write here what 'off' goes by.
   */
  public static Path placeOf(Path settingsFile) {
    Path file = settingsFile.toAbsolutePath().normalize();
    Path folder = file.getParent();
    if (folder != null && folder.startsWith(ETC) && !folder.equals(ETC)) {
      folder = STATE.resolve(ETC.relativize(folder) + "-control");
    } else if (ETC.equals(folder)) {
      folder = STATE;
    }
    String name = file.getFileName() + ENDING;
    return folder == null ? Path.of(name) : folder.resolve(name);
  }

  /**
   * Returns what was last accepted of a settings file, which need not exist; empty if nothing was.
   *
   * @throws IOException in one sentence, when it is there and cannot be used
   */
  public static Optional<Accepted> read(Path settingsFile) throws IOException {
    Path place = placeOf(settingsFile);
    String kept;
    try {
      kept = Files.readString(place, StandardCharsets.UTF_8);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new IOException("what was last accepted, " + place + ", cannot be read: " + e, e);
    }
    Matcher line = FIRST_LINE.matcher(kept);
    try {
      if (line.lookingAt()) {
        return Optional.of(
            new Accepted(kept.substring(line.end()), Instant.parse(line.group(1)), line.group(2)));
      }
    } catch (DateTimeException e) {
      // Not as it was written; said below.
    }
    throw new IOException("what was last accepted, " + place + ", is not as the program wrote it");
  }

  /**
   * Keeps this as what was last accepted of a settings file.
   *
   * @throws IOException in one sentence, when it cannot be kept; what was there before still is
   */
  public void keep(Path settingsFile) throws IOException {
    Path place = placeOf(settingsFile);
    try {
      OwnFile.write(
          place,
          "# Last accepted " + at + " by " + by + "; kept by the program, do not edit.\n" + text);
    } catch (IOException e) {
      throw new IOException(
          "the settings could not be kept as accepted, so that with a broken file 'off' and the"
              + " next start would know the ones before: "
              + place
              + " cannot be written, "
              + e,
          e);
    }
  }
}
