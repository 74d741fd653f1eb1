package rindward.controller.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.settings.Settings.BrokerSetting;
import rindward.controller.settings.Settings.OutputSetting;
import rindward.hardware.wired.Simulated;

/**
 * What "everything off" means: every real output that was last accepted, as it was accepted, and
 * then those that only the settings file names.
 *
 * @param parts in the order in which they are switched off
 * @param doubts what a person must look at, each in one sentence
 */
public record OffList(List<Part> parts, List<String> doubts) {

  /**
   * One output and how it is reached.
   *
   * @param broker null where it needs none, or none is known
   */
  public record Part(OutputSetting output, @Nullable BrokerSetting broker) {}

  public OffList {
    parts = List.copyOf(parts);
    doubts = List.copyOf(doubts);
  }

  /** Puts the list together. */
  public static OffList of(Wiring accepted, Wiring file) {
    List<Part> parts = new ArrayList<>(real(accepted, accepted.broker()));
    List<String> doubts = new ArrayList<>(accepted.unread());
    doubts.addAll(file.unread());
    for (Part part : real(file, file.broker() == null ? accepted.broker() : file.broker())) {
      Optional<OutputSetting> same = samePart(parts, part.output());
      if (same.isEmpty()) {
        parts.add(part);
      } else if (!same.get().driver().equals(part.output().driver())) {
        doubts.add(doubt(part.output(), same.get()));
      }
    }
    return new OffList(parts, doubts);
  }

  /** Returns what was accepted and is named no longer; nobody else would switch it off. */
  public static OffList leftBehind(Wiring accepted, List<OutputSetting> named) {
    return new OffList(
        real(accepted, accepted.broker()).stream()
            .filter(part -> named.stream().noneMatch(o -> Wiring.isSamePart(o, part.output())))
            .toList(),
        List.of());
  }

  private static List<Part> real(Wiring wiring, @Nullable BrokerSetting broker) {
    return wiring.outputs().stream()
        .filter(output -> !(output.driver() instanceof Simulated))
        .map(output -> new Part(output, output.driver().needsBroker() ? broker : null))
        .toList();
  }

  private static Optional<OutputSetting> samePart(List<Part> parts, OutputSetting output) {
    return parts.stream()
        .map(Part::output)
        .filter(known -> Wiring.isSamePart(known, output))
        .findFirst();
  }

  private static String doubt(OutputSetting output, OutputSetting accepted) {
    return "Output "
        + output.name()
        + " is now said to be "
        + output.driver().place()
        + ", but it was last accepted as "
        + accepted.driver().place()
        + " and was switched off as that; if its relay was changed, it may be on: look at it.";
  }
}
