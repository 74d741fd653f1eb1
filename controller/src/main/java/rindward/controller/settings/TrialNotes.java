package rindward.controller.settings;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.journal.OutputTried;
import rindward.controller.settings.Settings.OutputSetting;

/**
 * Which outputs ran with somebody beside them, as control itself has noted it: what the journal
 * says of it counts only together with this, for whoever may write the record could say of any
 * output that it was tried. It stands beside what was last accepted, where nobody else may write.
 */
public final class TrialNotes {
  private static final String ENDING = ".tried";
  private static final String HEAD = "# Outputs that ran; kept by the program, do not edit.\n";

  private final Path file;

  private TrialNotes(Path file) {
    this.file = file;
  }

  /**
   * Returns the notes of a shed.
   *
   * @param settingsFile its settings file, which need not exist
   */
  public static TrialNotes of(Path settingsFile) {
    Path accepted = Accepted.placeOf(settingsFile);
    String name = accepted.getFileName().toString();
    return new TrialNotes(
        accepted.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ENDING));
  }

  /** Tells whether any were ever kept; before that, what the journal says was said by control. */
  public boolean areThere() {
    return Files.exists(file);
  }

  /**
   * Returns whether an output ran as it is wired now.
   *
   * @throws IOException in one sentence, when the notes cannot be read
   */
  public boolean has(OutputSetting output) throws IOException {
    return read().contains(line(output.room(), output.name(), output.driver().place()));
  }

  /**
   * Adds trials.
   *
   * @throws IOException in one sentence, when they cannot be kept
   */
  public void add(Collection<OutputTried> trials) throws IOException {
    Set<String> lines = new LinkedHashSet<>(read());
    lines.removeIf(line -> line.startsWith("#") || line.isBlank());
    trials.forEach(tried -> lines.add(line(tried.room(), tried.output(), tried.place())));
    try {
      OwnFile.write(file, lines.stream().collect(Collectors.joining("\n", HEAD, "\n")));
    } catch (IOException e) {
      throw new IOException("that an output ran cannot be noted in " + file + ": " + e, e);
    }
  }

  private Set<String> read() throws IOException {
    try {
      return Set.copyOf(Files.readAllLines(file, StandardCharsets.UTF_8));
    } catch (NoSuchFileException nothingNoted) {
      return Set.of();
    } catch (IOException e) {
      throw new IOException("which outputs ran, " + file + ", cannot be read: " + e, e);
    }
  }

  private static String line(String room, String output, String place) {
    return room + "\t" + output + "\t" + place;
  }
}
