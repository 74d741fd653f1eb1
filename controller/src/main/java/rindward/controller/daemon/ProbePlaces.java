package rindward.controller.daemon;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rindward.controller.daemon.ControlLoop.Watched;
import rindward.controller.room.ProbePlace;
import rindward.controller.settings.Settings;
import rindward.controller.settings.Settings.ProbeSetting;
import rindward.hardware.Board;
import rindward.hardware.Probe;

/** Which probe hangs where, as the settings say, in the shapes that reading and deciding want. */
final class ProbePlaces {
  private ProbePlaces() {}

  /** Returns the place of each probe. */
  static Map<String, ProbePlace> ofProbes(Settings settings) {
    return settings.probes().stream()
        .collect(Collectors.toMap(ProbeSetting::name, ProbeSetting::place));
  }

  /**
   * Returns the opened probes of each bus, in the order of the file.
   *
   * @throws IOException when the board does not have one
   */
  static Map<String, List<Probe>> byBus(Settings settings, Board board) throws IOException {
    Map<String, List<Probe>> probes = new LinkedHashMap<>();
    for (ProbeSetting probe : settings.probes()) {
      probes
          .computeIfAbsent(probe.driver().bus(), bus -> new ArrayList<>())
          .add(board.probe(probe.name()));
    }
    return probes;
  }

  /** Returns each room with the names of its probes. */
  static List<Watched> byRoom(Settings settings) {
    return settings.rooms().stream()
        .map(
            room ->
                new Watched(
                    room,
                    settings.probes().stream()
                        .filter(p -> p.room().equals(room.name()))
                        .map(ProbeSetting::name)
                        .toList()))
        .toList();
  }

  /** Returns the names of the outdoor probes. */
  static List<String> outdoors(Settings settings) {
    return settings.probes().stream()
        .filter(p -> p.place() == ProbePlace.OUTDOOR)
        .map(ProbeSetting::name)
        .toList();
  }
}
