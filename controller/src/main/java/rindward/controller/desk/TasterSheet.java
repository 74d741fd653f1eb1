package rindward.controller.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rindward.controller.desk.TasterLinks.Opened;
import rindward.controller.journal.Entry;
import rindward.controller.journal.Scored;
import rindward.controller.journal.UsesTicked;
import rindward.controller.lot.Session;
import rindward.controller.tasting.Attribute;
import rindward.controller.tasting.Use;
import rindward.controller.tasting.design.Caution;
import rindward.controller.tasting.design.Cup;
import rindward.controller.tasting.design.Sheet;
import rindward.dashboard.tastings.CupRequest;
import rindward.dashboard.tastings.SheetView;
import rindward.dashboard.tastings.SheetView.AskedView;
import rindward.dashboard.tastings.SheetView.CupView;
import rindward.dashboard.tastings.SheetView.UseView;
import rindward.dashboard.tastings.TastingRefused;
import rindward.dashboard.tastings.TastingRefused.Why;

/** What one taster sees and says: codes and questions, and never what is in a cup. */
final class TasterSheet {
  private final Session session;
  private final Sheet sheet;
  private final Set<String> stopped;

  /**
   * @param stopped names of the samples that nobody tastes any more
   */
  TasterSheet(Opened opened, Set<String> stopped) {
    this.stopped = Set.copyOf(stopped);
    this.session = opened.session();
    this.sheet = opened.sheet();
  }

  SheetView view() {
    return new SheetView(
        session.name(),
        sheet.panelist(),
        session.closed().isEmpty(),
        Stream.of(Caution.values()).map(Caution::sentence).toList(),
        session.planned().warmUp(),
        Stream.of(Attribute.values()).map(TasterSheet::asked).toList(),
        Stream.of(Use.values()).map(use -> new UseView(use.toString(), use.words())).toList(),
        sheet.cups().stream().map(cup -> cup(cup, stopped.contains(cup.sample()))).toList());
  }

  /** Returns what the taster says, as it is kept. */
  List<Entry> entries(CupRequest said, Instant at) throws TastingRefused {
    List<Entry> entries = new ArrayList<>();
    String taster = sheet.panelist();
    for (Map.Entry<String, Integer> answer : said.answers().entrySet()) {
      Attribute attribute =
          Attribute.of(answer.getKey())
              .orElseThrow(() -> unknown("question", answer.getKey(), questions()));
      entries.add(
          new Scored(session.name(), taster, said.code(), attribute, answer.getValue(), at));
    }
    List<String> goodFor = said.goodFor();
    if (goodFor != null) {
      List<Use> uses = new ArrayList<>();
      for (String word : goodFor) {
        uses.add(use(word).orElseThrow(() -> unknown("use", word, uses())));
      }
      entries.add(new UsesTicked(session.name(), taster, said.code(), uses, at));
    }
    if (entries.isEmpty()) {
      throw new TastingRefused(
          Why.MALFORMED, "answers was empty but it must say something of the cup.");
    }
    return entries;
  }

  private CupView cup(Cup cup, boolean stopped) {
    Map<String, Integer> answers = new LinkedHashMap<>();
    session.scored().stream()
        .filter(s -> s.code().equals(cup.code()))
        .forEach(s -> answers.put(s.attribute().key(), s.value()));
    List<String> goodFor =
        session.ticked().stream()
            .filter(t -> t.code().equals(cup.code()))
            .reduce((first, second) -> second)
            .map(t -> t.uses().stream().map(Use::toString).toList())
            .orElse(List.of());
    return new CupView(cup.code(), cup.flight() + 1, stopped, answers, goodFor);
  }

  private static AskedView asked(Attribute attribute) {
    return new AskedView(
        attribute.key(),
        attribute.question(),
        attribute.scale().lowest(),
        attribute.words(),
        attribute.stopsSample(attribute.scale().highest()));
  }

  private static Optional<Use> use(String word) {
    return Arrays.stream(Use.values())
        .filter(use -> use.toString().equals(word.toLowerCase(Locale.ROOT)))
        .findFirst();
  }

  private static List<String> questions() {
    return Arrays.stream(Attribute.values()).map(Attribute::key).toList();
  }

  private static List<String> uses() {
    return Arrays.stream(Use.values()).map(Use::toString).toList();
  }

  private static TastingRefused unknown(String what, String word, List<String> known) {
    return new TastingRefused(
        Why.MALFORMED,
        "the "
            + what
            + " was '"
            + word
            + "' but it must be one of "
            + String.join(", ", known)
            + ".");
  }
}
