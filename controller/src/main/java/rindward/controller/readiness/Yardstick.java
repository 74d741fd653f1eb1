package rindward.controller.readiness;

import java.util.ArrayList;
import java.util.List;
import rindward.controller.crop.Cited;
import rindward.controller.crop.Days;
import rindward.controller.crop.EatingPhase;

/**
 * Which figures a lot was judged by, the guide's and the grower's own beside each other.
 *
 * @param life days of life that were used
 * @param sentences both figures, and which of them counts
 */
public record Yardstick(Days life, List<String> sentences) {
  public Yardstick {
    sentences = List.copyOf(sentences);
  }

  static Yardstick of(LotCase lot) {
    List<String> sentences = new ArrayList<>();
    String guide = "It keeps " + lot.guideLife().words() + " days by the guide";
    sentences.add(lot.own().life().map(own -> guide + "; " + words(own)).orElse(guide) + ".");
    lot.own()
        .window()
        .ifPresent(
            window -> {
              sentences.add(guidePhases(lot));
              sentences.add(
                  window.sentence() + (window.isEnough() ? " This counts, not the guide." : ""));
            });
    return new Yardstick(lot.life(), sentences);
  }

  private static String words(OwnLife own) {
    return own.days()
            .map(
                days ->
                    (own.isOpen() ? "at least " + days.high() : days.words())
                        + " by what you saw, which counts")
            .orElse("too little was seen to set against it")
        + " ("
        + own.seen()
        + ")";
  }

  private static String guidePhases(LotCase lot) {
    List<EatingPhase> phases = lot.crop().phases().stream().map(Cited::value).toList();
    if (phases.isEmpty()) {
      return "The guide knows no best time for " + lot.crop().name() + ".";
    }
    return "By the guide: "
        + String.join(
            "; ",
            phases.stream()
                .map(
                    phase ->
                        phase.name()
                            + " from day "
                            + phase.begins().words()
                            + " until day "
                            + phase.ends().words()
                            + (phase.since() == EatingPhase.Since.CURE
                                ? " after its cure"
                                : " after harvest"))
                .toList())
        + ".";
  }
}
