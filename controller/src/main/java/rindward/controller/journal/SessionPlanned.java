package rindward.controller.journal;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.design.Blinding;
import rindward.controller.tasting.design.Sample;
import rindward.controller.tasting.design.SessionPlan;
import rindward.controller.tasting.design.SessionRequest;

/**
 * A session was planned.
 *
 * @param check name of the sample that every flight shares
 * @param duplicate name of the sample that is served twice
 * @param warmUp what is tasted first, openly and unscored
 * @param seed from which cups, orders and codes are drawn if there is no key
 * @param main the question that speaks first; liking if null
 * @param key from which cups, orders and codes are drawn: 128 bits as 32 digits of base 16; null in
 *     plans of version 1, which keep what was drawn for them
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
    @Nullable Attribute main,
    @Nullable String key,
    Instant at)
    implements Tasting {
  private static final int MOST_FRUITS = 3;

  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<SessionPlanned> KIND =
      EntryKind.of(
              "session-planned",
              SessionPlanned.class,
              Field.text("session").notBlank("it must have a name"),
              Field.list("samples", Served.PARTS),
              Field.list("panelists", Forms.TEXT),
              Field.text("check").orNothing(),
              Field.text("duplicate").orNothing(),
              Field.text("warmUp").orNothing(),
              Field.whole("cupsPerFlight"),
              Field.word("blinding", Blinding.class),
              Field.of("preparation", Preparation.PARTS),
              Field.number("seed"),
              Field.word("main", Attribute.class).orNothing(),
              Field.text("key").orNothing(),
              Field.at())
          .version(2, planned -> planned.key() != null)
          .saidBy(Speaker.OWNER)
          .where(SessionPlanned::wrongFruits)
          .where(SessionPlanned::wrongRequest);

  public SessionPlanned {
    samples = List.copyOf(samples);
    panelists = List.copyOf(panelists);
  }

  /** A plan as version 1 knew it: without a key, with liking as its main question. */
  public SessionPlanned(
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
      Instant at) {
    this(
        session,
        samples,
        panelists,
        check,
        duplicate,
        warmUp,
        cupsPerFlight,
        blinding,
        preparation,
        seed,
        null,
        null,
        at);
  }

  /** Returns who gets which cup when, under which code. */
  public SessionPlan plan() {
    return key == null ? SessionPlan.draw(request(), seed) : SessionPlan.draw(request(), key);
  }

  /** Returns the question that speaks first. */
  public Attribute mainQuestion() {
    return main == null ? Attribute.LIKING : main;
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

  private Optional<String> wrongFruits() {
    return samples.stream()
        .filter(sample -> sample.fruits().isEmpty() || sample.fruits().size() > MOST_FRUITS)
        .findFirst()
        .flatMap(
            sample ->
                FieldErrors.wrong(
                    "fruits of " + sample.name(), sample.fruits(), "they must be one to three"));
  }

  private Optional<String> wrongRequest() {
    return Optional.of(request().problems())
        .filter(problems -> !problems.isEmpty())
        .map(problems -> String.join("; ", problems));
  }
}
