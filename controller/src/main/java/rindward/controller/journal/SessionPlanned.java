package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Blinding;
import rindward.controller.tasting.Sample;
import rindward.controller.tasting.SessionRequest;

/**
 * A session was planned.
 *
 * @param check name of the sample that every flight shares
 * @param duplicate name of the sample that is served twice
 * @param warmUp what is tasted first, openly and unscored
 * @param seed from which cups, orders and codes are drawn
 */
public record SessionPlanned(
    String session,
    List<Served> samples,
    List<String> panelists,
    @Nullable String check,
    @Nullable String duplicate,
    @Nullable String warmUp,
    int cupsPerFlight,
    Blinding blinding,
    Preparation preparation,
    long seed,
    Instant at)
    implements Tasting {
  public SessionPlanned {
    samples = List.copyOf(samples);
    panelists = List.copyOf(panelists);
  }

  /** Returns what is to be drawn; each sample must have one to three fruits. */
  public SessionRequest request() {
    return new SessionRequest(
        samples.stream().map(s -> new Sample(s.name(), s.fruits())).toList(),
        panelists,
        Optional.ofNullable(check),
        Optional.ofNullable(duplicate),
        Optional.ofNullable(warmUp),
        cupsPerFlight,
        blinding);
  }

  @Override
  public <R> R accept(TastingVisitor<R> visitor) {
    return visitor.planned(this);
  }
}
