package rindward.controller.tasting.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * What a session is to compare, and who tastes.
 *
 * @param samples what is compared, the check among them
 * @param panelists who tastes
 * @param check name of the sample that every flight shares; needed for more than one flight
 * @param duplicate name of the sample that is served twice, to learn how steady each panelist is
 * @param warmUp what is tasted first, openly and unscored, to settle the mouth
 * @param cupsPerFlight most cups in one go, the duplicate counted; six to eight are usual
 * @param blinding how much the tasters may know
 */
public record SessionRequest(
    List<Sample> samples,
    List<String> panelists,
    Optional<String> check,
    Optional<String> duplicate,
    Optional<String> warmUp,
    int cupsPerFlight,
    Blinding blinding) {
  private static final int FEWEST_CUPS = 3;
  private static final int MOST_CUPS = 8;

  public SessionRequest {
    samples = List.copyOf(samples);
    panelists = List.copyOf(panelists);
  }

  /** Returns all that must be put right before the session can be drawn, one sentence each. */
  public List<String> problems() {
    List<String> problems = new ArrayList<>();
    List<String> names = sampleNames();
    if (names.size() < 2) {
      problems.add("samples were '" + names + "' but there must be at least two to compare");
    }
    if (panelists.isEmpty()) {
      problems.add("panelists were empty but somebody must taste");
    }
    repeated("samples", names, problems);
    repeated("panelists", panelists, problems);
    missing("check", check, problems);
    missing("duplicate", duplicate, problems);
    if (cupsPerFlight < FEWEST_CUPS || cupsPerFlight > MOST_CUPS) {
      problems.add(
          "cupsPerFlight was '"
              + cupsPerFlight
              + "' but it must be "
              + FEWEST_CUPS
              + " to "
              + MOST_CUPS
              + ", as a tired tongue tells nothing");
    }
    if (problems.isEmpty()) {
      tooMuch(problems);
    }
    return problems;
  }

  List<String> sampleNames() {
    return samples.stream().map(Sample::name).toList();
  }

  /** Returns how many flights it takes. */
  int flightCount() {
    int room = cupsPerFlight - (duplicate.isPresent() ? 1 : 0);
    if (samples.size() <= room) {
      return 1;
    }
    // The check takes a cup in each flight.
    int others = samples.size() - 1;
    return (others + room - 2) / (room - 1);
  }

  private void tooMuch(List<String> problems) {
    if (flightCount() > 1 && check.isEmpty()) {
      problems.add(
          "check was empty but "
              + samples.size()
              + " samples take "
              + flightCount()
              + " flights, which must share one");
      return;
    }
    int cups = Flight.of(this).stream().mapToInt(f -> f.cups().size()).sum() * panelists.size();
    if (cups > BlindCodes.available()) {
      problems.add(
          "the session has "
              + cups
              + " cups but there are only "
              + BlindCodes.available()
              + " codes; split it in two");
    }
  }

  private void missing(String field, Optional<String> name, List<String> problems) {
    name.filter(n -> !sampleNames().contains(n))
        .ifPresent(
            n ->
                problems.add(
                    field + " was '" + n + "' but it must be one of the samples " + sampleNames()));
  }

  private static void repeated(String field, List<String> names, List<String> problems) {
    HashSet<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        problems.add(field + " named '" + name + "' twice but each must have its own name");
      }
    }
  }
}
