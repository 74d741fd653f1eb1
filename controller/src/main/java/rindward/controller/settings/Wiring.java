package rindward.controller.settings;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.Sections.Section;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.OutputKind;
import rindward.hardware.wired.RelayDriver;

/**
 * What can be switched off by a settings file as far as it can be read, however much is wrong with
 * the rest: each table by itself.
 *
 * @param outputs those that are wired so that they can be reached
 * @param broker how to reach the broker; null where that cannot be read, or no part speaks MQTT
 * @param store the database, absolute, beside which the lock lies; null where it cannot be read
 * @param unread what may name an output and could not be read, each in one sentence
 */
public record Wiring(
    List<OutputSetting> outputs,
    @Nullable BrokerSetting broker,
    @Nullable Path store,
    List<String> unread) {

  /** Nothing is known. */
  public static final Wiring NONE = new Wiring(List.of(), null, null, List.of());

  private static final String OUTPUTS = "outputs";

  /** Only a network relay that heats is asked how it ends by itself, and off needs no end. */
  private static final OutputKind ANY_BUT_HEAT = OutputKind.CIRCULATION;

  public Wiring {
    outputs = List.copyOf(outputs);
    unread = List.copyOf(unread);
  }

  /**
   * Reads a settings file's text.
   *
   * @param file its path, beside which the files that it names lie
   */
  public static Wiring of(Path file, String text) {
    List<Section> sections = Sections.of(text);
    List<OutputSetting> outputs = new ArrayList<>();
    List<String> unread = new ArrayList<>();
    for (Section section : sections) {
      if (section.table().isEmpty() || section.table().equals(OUTPUTS)) {
        Problems problems = new Problems();
        table(section, OUTPUTS, problems)
            .ifPresent(
                table ->
                    table.tables().values().forEach(one -> output(one).ifPresent(outputs::add)));
        if (!problems.isEmpty() && section.table().equals(OUTPUTS)) {
          unread.add(unread(file, section));
        }
      }
    }
    String siteName =
        find(sections, "site").flatMap(site -> site.find("name", Kind.TEXT)).orElse("");
    return new Wiring(outputs, broker(sections, file, siteName), store(sections, file), unread);
  }

  /** Tells whether two outputs hang on one part, however each says that it is to be switched. */
  public static boolean isSamePart(OutputSetting one, OutputSetting other) {
    return RelayDriverReader.place(one.driver()).equals(RelayDriverReader.place(other.driver()));
  }

  private static Optional<OutputSetting> output(TableReader table) {
    int before = table.problems().count();
    Optional<RelayDriver> driver =
        RelayDriverReader.read(table, ANY_BUT_HEAT, Duration.ofSeconds(1));
    String room = table.optional("room", Kind.TEXT, "");
    return table.problems().count() == before
        ? driver.map(known -> new OutputSetting(table.name(), room, known))
        : Optional.empty();
  }

  private static @Nullable BrokerSetting broker(
      List<Section> sections, Path file, String siteName) {
    return find(sections, "broker")
        .map(
            table -> {
              BrokerSetting broker = BrokerReader.read(table, file, siteName);
              return table.problems().isEmpty() ? broker : null;
            })
        .orElse(null);
  }

  private static @Nullable Path store(List<Section> sections, Path file) {
    return find(sections, "store")
        .flatMap(store -> store.find("file", Kind.TEXT))
        .map(name -> file.toAbsolutePath().resolveSibling(name))
        .orElse(null);
  }

  private static Optional<TableReader> find(List<Section> sections, String name) {
    return sections.stream()
        .filter(section -> section.table().equals(name))
        .findFirst()
        .flatMap(section -> table(section, name, new Problems()));
  }

  private static Optional<TableReader> table(Section section, String name, Problems problems) {
    return TableReader.of("", section.text(), problems).flatMap(top -> top.table(name));
  }

  private static String unread(Path file, Section section) {
    return "Lines "
        + section.firstLine()
        + " to "
        + section.lastLine()
        + " of "
        + file.getFileName()
        + " cannot be read as an output; what they mean may still be on.";
  }
}
