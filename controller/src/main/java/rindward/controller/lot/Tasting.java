package rindward.controller.lot;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Blinding;
import rindward.controller.tasting.Sample;
import rindward.controller.tasting.SessionRequest;
import rindward.controller.tasting.Use;

/**
 * Something said of a tasting session. Who gets which cup under which code is never written down:
 * it is drawn again from the session's seed.
 */
public sealed interface Tasting extends Entry {
  /** Returns the session's name. */
  String session();

  /** Hands the entry to the method of the visitor that stands for its kind. */
  <R> R accept(TastingVisitor<R> visitor);

  @Override
  default String subject() {
    return "session " + session();
  }

  @Override
  default <R> R accept(EntryVisitor<R> visitor) {
    return visitor.tasting(this);
  }

  /**
   * One sample of a session.
   *
   * @param name what the cook calls it
   * @param lot code of the lot it comes from
   * @param fruits the one to three fruits that are cut for it
   */
  record Served(String name, String lot, List<String> fruits) {
    public Served {
      fruits = List.copyOf(fruits);
    }
  }

  /**
   * How all samples of a session are made ready: alike. Texts may be empty.
   *
   * @param method such as baked or steamed
   * @param temperatureC of oven or pan, degrees C
   * @param cut size and shape of the pieces
   * @param doneWhen how it is seen that a sample is done
   * @param servedAtC temperature at the table, degrees C
   * @param part of the fruit it is cut from
   */
  record Preparation(
      String method,
      @Nullable Integer temperatureC,
      String cut,
      String doneWhen,
      @Nullable Integer servedAtC,
      String part) {}

  /**
   * A session was planned.
   *
   * @param check name of the sample that every flight shares
   * @param duplicate name of the sample that is served twice
   * @param warmUp what is tasted first, openly and unscored
   * @param seed from which cups, orders and codes are drawn
   */
  record SessionPlanned(
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

  /**
   * A fruit was cut and cooked for a sample.
   *
   * @param sample its name in the session
   * @param lot code of the lot it came from
   * @param fruit which one
   * @param weightGrams of the whole fruit; null if not weighed
   * @param minutes until it was done; null if nobody looked
   * @param doneness how it came out; may be empty
   */
  record SampleCooked(
      String session,
      String sample,
      String lot,
      String fruit,
      @Nullable Integer weightGrams,
      CutFruit cut,
      @Nullable Integer minutes,
      String doneness,
      Instant at)
      implements Tasting {
    @Override
    public <R> R accept(TastingVisitor<R> visitor) {
      return visitor.cooked(this);
    }
  }

  /** A panelist answered one question about one cup; said again, the later answer counts. */
  record Scored(
      String session, String panelist, String code, Attribute attribute, int value, Instant at)
      implements Tasting {
    @Override
    public <R> R accept(TastingVisitor<R> visitor) {
      return visitor.scored(this);
    }
  }

  /** The session is over: the codes are opened, and nothing more is scored. */
  record SessionClosed(String session, Instant at) implements Tasting {
    @Override
    public <R> R accept(TastingVisitor<R> visitor) {
      return visitor.closed(this);
    }
  }

  /** A panelist said what the fruit in one cup is good for; said again, the later answer counts. */
  record UsesTicked(String session, String panelist, String code, List<Use> uses, Instant at)
      implements Tasting {
    public UsesTicked {
      uses = List.copyOf(uses);
    }

    @Override
    public <R> R accept(TastingVisitor<R> visitor) {
      return visitor.usesTicked(this);
    }
  }

  /** The entry of this id should never have been said of the session; it stays in the journal. */
  record TakenBack(String session, long entry, Instant at) implements Tasting {
    @Override
    public <R> R accept(TastingVisitor<R> visitor) {
      return visitor.takenBack(this);
    }
  }
}
