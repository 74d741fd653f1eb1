package rindward.controller.settings;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rindward.controller.alarm.AlarmKind;
import rindward.controller.alarm.Finding;

/**
 * What a start of the shed goes by: the settings file, or, where that is broken, what was last
 * accepted of it. A typo in January must not leave the rooms without heat, and must not switch
 * anything that may be wired in another way by now.
 *
 * @param settings the settings to go by
 * @param basis where they come from
 * @param problems what is wrong with the settings file
 */
public record StartingPoint(Settings settings, Basis basis, List<Problem> problems) {

  /** Where the settings of a start come from. */
  public enum Basis {
    /** The file reads. */
    FILE,
    /** The file does not read, but what it says of the wiring is what was accepted. */
    ACCEPTED,
    /** The wiring may be another by now: everything stays off, and rooms are observed. */
    ONLY_OBSERVED
  }

  public StartingPoint {
    problems = List.copyOf(problems);
  }

  /**
   * Finds what to go by; empty when the file is broken and nothing that can be used was accepted.
   *
   * @param problems takes everything that is wrong
   */
  public static Optional<StartingPoint> of(Path file, Problems problems) {
    Optional<Settings> written = SettingsReader.read(file, problems);
    return written.isPresent()
        ? written.map(settings -> new StartingPoint(settings, Basis.FILE, List.of()))
        : accepted(file, problems);
  }

  /**
   * Returns what people are called about, naming the first line to look at; empty if all is well.
   */
  public Optional<Finding> finding() {
    return problems.stream()
        .findFirst()
        .map(problem -> new Finding(alarm(), problem.file() + ":" + problem.line()));
  }

  /** Returns what such a start means, in one sentence; empty if all is well. */
  public String saying() {
    return switch (basis) {
      case FILE -> "";
      case ACCEPTED ->
          "The settings file is broken, so the shed is run by what was last accepted; its outputs,"
              + " probes and safety are the same in both.";
      case ONLY_OBSERVED ->
          "The settings file is broken, and what it says of outputs, probes or safety is not what"
              + " was last accepted, or that is refused by now: everything stays off, and the rooms"
              + " are only observed.";
    };
  }

  private AlarmKind alarm() {
    return basis == Basis.ACCEPTED ? AlarmKind.SETTINGS_PASSED_OVER : AlarmKind.SETTINGS_BROKEN;
  }

  private static Optional<StartingPoint> accepted(Path file, Problems problems) {
    List<Problem> ofFile = problems.list();
    String name = Accepted.placeOf(file).getFileName().toString();
    try {
      Optional<Accepted> accepted = Accepted.read(file);
      if (accepted.isEmpty()) {
        return Optional.empty();
      }
      String text = accepted.get().text();
      Problems within = new Problems();
      Optional<Settings> settings = SettingsReader.read(file, name, text, within);
      within.list().forEach(problems::add);
      if (settings.isEmpty()) {
        return withoutRefused(file, name, text)
            .map(rest -> new StartingPoint(rest, Basis.ONLY_OBSERVED, ofFile));
      }
      Basis basis = hasSameWiring(file, text) ? Basis.ACCEPTED : Basis.ONLY_OBSERVED;
      return settings.map(known -> new StartingPoint(known, basis, ofFile));
    } catch (IOException e) {
      problems.add(new Problem(name, 1, 1, String.valueOf(e.getMessage())));
      return Optional.empty();
    }
  }

  /**
   * What was accepted once may be refused by a newer program. That costs the tables in which the
   * refused lines stand, and those that need them; the others are still there to be observed.
   */
  private static Optional<Settings> withoutRefused(Path file, String name, String text) {
    String rest = text;
    while (true) {
      Problems within = new Problems();
      Optional<Settings> settings = SettingsReader.read(file, name, rest, within);
      if (settings.isPresent()) {
        return settings;
      }
      Set<Integer> refused =
          within.list().stream().map(Problem::line).collect(Collectors.toUnmodifiableSet());
      String fewer =
          Sections.of(rest).stream()
              .filter(
                  section ->
                      refused.stream()
                          .noneMatch(
                              line -> section.firstLine() <= line && line <= section.lastLine()))
              .map(Sections.Section::text)
              .collect(Collectors.joining());
      if (fewer.length() >= rest.length()) {
        return Optional.empty();
      }
      rest = fewer;
    }
  }

  private static boolean hasSameWiring(Path file, String accepted) {
    try {
      return Sections.haveSameWiring(Files.readString(file), accepted);
    } catch (IOException e) {
      return false;
    }
  }
}
