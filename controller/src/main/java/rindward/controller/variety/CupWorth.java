package rindward.controller.variety;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rindward.controller.crop.RateCurve;
import rindward.controller.readiness.RipeShare;
import rindward.controller.readiness.Ripeness;
import rindward.controller.readiness.Ripeness.Level;

/**
 * What the cups of a lot can say of its variety, told while a tasting is planned and before the lot
 * is chosen.
 *
 * @param says how much
 * @param words why, one sentence
 */
public record CupWorth(Says says, String words) {
  /** How much cups can say; those that can speak come first. */
  public enum Says {
    /** Whatever is tasted counts for the variety. */
    MUCH,
    /** It counts if the fruit is ripe, which nobody knows yet. */
    UNSURE,
    /** Nothing: the lot is set apart. */
    NOTHING
  }

  /** Judges a lot as it is now. */
  public static CupWorth of(Grown grown) {
    List<SetApart> apart = SetApart.of(grown);
    if (apart.contains(SetApart.HARMFUL)) {
      return new CupWorth(Says.NOTHING, "Not to be eaten.");
    }
    if (!apart.isEmpty()) {
      String why =
          apart.stream().map(reason -> words(reason, grown)).collect(Collectors.joining(", "));
      return new CupWorth(
          Says.NOTHING, upper(why) + ": its taste will say nothing of the variety.");
    }
    Ripeness ripeness = Ripeness.of(grown.lot(), grown.crop());
    Optional<RipeShare> unripe = ripeness.share().filter(RipeShare::hasUnripe);
    if (unripe.isPresent()) {
      return new CupWorth(
          ripeness.level() == Level.RIPE ? Says.MUCH : Says.UNSURE,
          unripe.get().sentence() + " Only ripe fruits count.");
    }
    boolean isUnknown =
        grown.crop().maturity().isPresent()
            && ripeness.share().isEmpty()
            && (ripeness.level() != Level.RIPE
                || grown.lot().grade() == null && grown.lot().ripeness().isEmpty());
    return isUnknown
        ? new CupWorth(Says.UNSURE, "Never cut: ripeness unknown.")
        : new CupWorth(Says.MUCH, tasted(grown));
  }

  /** That it may be judged, by what is known of its cure. */
  private static String tasted(Grown grown) {
    return switch (grown.lived().cureEnd().orElseThrow().how()) {
      case MEASURED -> "Cured, as measured.";
      case TOLD -> "Cured, as told.";
      case NOT_NEEDED -> "It needs no cure.";
      case MOVED_ON -> "It does well without a whole cure.";
      case WAITED_LONG -> "Taken as cured: no whole cure was measured.";
    };
  }

  private static String words(SetApart reason, Grown grown) {
    return reason == SetApart.UNCURED
        ? grown.lived().account().cureProgress().measured() / (RateCurve.WHOLE / 100) + " % cured"
        : reason.words();
  }

  private static String upper(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
