package rindward.controller.lot;

import static rindward.controller.journal.Wrong.text;
import static rindward.controller.journal.Wrong.whole;
import static rindward.controller.journal.Wrong.wrong;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rindward.controller.journal.CutFruit;
import rindward.controller.journal.KitchenTasted;
import rindward.controller.journal.SampleCooked;
import rindward.controller.journal.Scored;
import rindward.controller.journal.Served;
import rindward.controller.journal.SessionClosed;
import rindward.controller.journal.SessionPlanned;
import rindward.controller.journal.TakenBack;
import rindward.controller.journal.Tasting;
import rindward.controller.journal.TastingVisitor;
import rindward.controller.journal.UsesTicked;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Score;
import rindward.controller.tasting.Sheet;

/** Why something cannot be said of a tasting session as it stands; nothing when it can. */
final class TastingRefusal implements TastingVisitor<Optional<String>> {
  private static final int MOST_FRUITS = 3;
  private static final int WHOLE_MILLI_PCT = 100_000;
  private static final int MOST_FLESH_MM = 300;
  private static final int MOST_MINUTES = 1_440;
  private static final int MOST_GRAMS = 1_000_000;

  private final Sessions sessions;

  TastingRefusal(Sessions sessions) {
    this.sessions = sessions;
  }

  /** Returns why a bite in the kitchen cannot be taken, its lot apart. */
  static Optional<String> kitchen(KitchenTasted entry) {
    boolean saysNothing =
        entry.liking() == null
            && entry.moistness() == null
            && entry.goodFor().isEmpty()
            && entry.word().isBlank()
            && entry.cut().equals(CutFruit.of(null));
    return saysNothing
        ? Optional.of("the taste was empty but it must say something: liking, seeds, or a word")
        : answer(Attribute.LIKING, entry.liking())
            .or(() -> answer(Attribute.MOISTNESS, entry.moistness()))
            .or(() -> inside(entry.cut()));
  }

  @Override
  public Optional<String> planned(SessionPlanned entry) {
    if (sessions.find(entry.session()).isPresent()) {
      return wrong("session", entry.session(), "a session of that name is planned already");
    }
    return text("session", entry.session(), "it must have a name")
        .or(
            () ->
                entry.samples().stream()
                    .map(TastingRefusal::fruits)
                    .flatMap(Optional::stream)
                    .findFirst())
        .or(
            () ->
                Optional.of(entry.request().problems())
                    .filter(problems -> !problems.isEmpty())
                    .map(problems -> String.join("; ", problems)));
  }

  @Override
  public Optional<String> cooked(SampleCooked entry) {
    return closedOrUnknown(entry)
        .or(() -> servedFruit(entry))
        .or(() -> inside(entry.cut()))
        .or(() -> atMost("weight in grams", entry.weightGrams(), 1, MOST_GRAMS))
        .or(() -> atMost("minutes", entry.minutes(), 0, MOST_MINUTES));
  }

  @Override
  public Optional<String> scored(Scored entry) {
    return closedOrUnknown(entry)
        .or(() -> cup(entry, entry.panelist(), entry.code()))
        .or(
            () ->
                sessions
                    .find(entry.session())
                    .orElseThrow()
                    .plan()
                    .refusal(new Score(entry.code(), entry.attribute(), entry.value())));
  }

  @Override
  public Optional<String> usesTicked(UsesTicked entry) {
    return closedOrUnknown(entry).or(() -> cup(entry, entry.panelist(), entry.code()));
  }

  @Override
  public Optional<String> takenBack(TakenBack entry) {
    return wrong("entry", entry.entry(), "what takes back another entry cannot be corrected");
  }

  @Override
  public Optional<String> closed(SessionClosed entry) {
    return closedOrUnknown(entry)
        .or(
            () ->
                sessions.find(entry.session()).orElseThrow().scored().isEmpty()
                    ? wrong("session", entry.session(), "nobody has scored anything yet")
                    : Optional.empty());
  }

  private Optional<String> closedOrUnknown(Tasting entry) {
    Optional<Session> session = sessions.find(entry.session());
    if (session.isEmpty()) {
      return wrong("session", entry.session(), "no session of that name is planned");
    }
    return session
        .get()
        .closed()
        .flatMap(end -> wrong("session", entry.session(), "it was closed at " + end.at()));
  }

  private Optional<String> cup(Tasting entry, String panelist, String code) {
    Session session = sessions.find(entry.session()).orElseThrow();
    Optional<Sheet> sheet =
        session.plan().sheets().stream().filter(s -> s.panelist().equals(panelist)).findFirst();
    if (sheet.isEmpty()) {
      return wrong("panelist", panelist, "it must be one of " + session.planned().panelists());
    }
    return sheet.get().codes().contains(code)
        ? Optional.empty()
        : wrong(
            "code",
            code,
            "it must be one of the cups of "
                + panelist
                + ": "
                + String.join(", ", sheet.get().codes()));
  }

  private Optional<String> servedFruit(SampleCooked entry) {
    Session session = sessions.find(entry.session()).orElseThrow();
    Optional<Served> sample = session.sample(entry.sample());
    if (sample.isEmpty()) {
      return wrong(
          "sample",
          entry.sample(),
          "it must be one of " + session.planned().samples().stream().map(Served::name).toList());
    }
    if (!sample.get().lot().equals(entry.lot())) {
      return wrong("lot", entry.lot(), "the sample comes from " + sample.get().lot());
    }
    return sample.get().fruits().contains(entry.fruit())
        ? Optional.empty()
        : wrong("fruit", entry.fruit(), "it must be one of " + sample.get().fruits());
  }

  private static Optional<String> fruits(Served sample) {
    int fruits = sample.fruits().size();
    return fruits >= 1 && fruits <= MOST_FRUITS
        ? Optional.empty()
        : wrong("fruits of " + sample.name(), sample.fruits(), "they must be one to three");
  }

  private static Optional<String> inside(CutFruit cut) {
    return atMost("flesh in mm", cut.fleshMm(), 0, MOST_FLESH_MM)
        .or(() -> percent("dry matter", cut.dryMatterMilliPct()))
        .or(() -> percent("soluble solids", cut.solubleSolidsMilliPct()));
  }

  private static Optional<String> percent(String field, @Nullable Integer milliPct) {
    return milliPct == null || 0 <= milliPct && milliPct <= WHOLE_MILLI_PCT
        ? Optional.empty()
        : wrong(field, milliPct / 1000.0, "it must be 0 to 100 percent");
  }

  private static Optional<String> answer(Attribute attribute, @Nullable Integer value) {
    return value == null ? Optional.empty() : attribute.refusal(value);
  }

  private static Optional<String> atMost(String field, @Nullable Integer value, int low, int high) {
    return value == null ? Optional.empty() : whole(field, value, low, high);
  }
}
