package rindward.controller.variety;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rindward.controller.journal.Decision;
import rindward.controller.variety.Prospect.Says;

/**
 * What the three answers together speak for, against what the grower needs. They never make up for
 * each other: a variety that rots by December is not one to grow again, however it eats.
 *
 * @param decision empty if nobody can say yet
 * @param facts the two or three that decide, a sentence each
 * @param change what would change it, or settle it; one sentence
 * @param how to try it again, one sentence; empty unless that is suggested
 */
public record Suggestion(
    Optional<Decision> decision, List<String> facts, String change, String how) {
  private static final int LIKELY_PER_MILLE = 600;

  public Suggestion {
    facts = List.copyOf(facts);
  }

  /** Returns the suggestion as the heading of a sentence. */
  public String words() {
    return decision.map(Decision::words).orElse("nobody can say yet");
  }

  /** Returns everything that is said beside the heading, a sentence each. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>(facts);
    Stream.of(change, how).filter(each -> !each.isEmpty()).forEach(sentences::add);
    return sentences;
  }

  /**
   * Weighs a variety.
   *
   * @param seasons in how many it was grown
   * @param settling what would settle how it eats; empty if it is settled
   */
  static Suggestion of(Chances chances, boolean isHarmful, int seasons, Optional<String> settling) {
    Prospect ripens = chances.ripens();
    Prospect eats = chances.eats();
    Prospect keeps = chances.keeps();
    if (isHarmful) {
      return new Suggestion(
          Optional.of(Decision.TRY_AGAIN),
          List.of("Something that makes people ill was found in it."),
          "The owner may lift it, with a reason.",
          "Try it again from other seed, if at all.");
    }
    boolean isOnce = seasons < 2;
    if (ripens.says() == Says.NO) {
      return new Suggestion(
          Optional.of(isOnce ? Decision.TRY_AGAIN : Decision.DROP),
          facts(ripens, eats),
          "A season in which most of it ripens would change it.",
          isOnce ? again("sown or planted three weeks earlier") : "");
    }
    if (eats.says() == Says.NO) {
      return new Suggestion(
          Optional.of(Decision.DROP),
          facts(eats, keeps),
          "A second year in which it is liked would change it.",
          "");
    }
    if (keeps.says() == Says.NO) {
      return new Suggestion(
          Optional.of(isOnce ? Decision.TRY_AGAIN : Decision.DROP),
          facts(keeps, eats),
          "A lot that keeps, from another year or plot, would change it.",
          isOnce ? again("picked fully ripe and cured to the end") : "");
    }
    boolean isAll = isLikely(ripens) && isMet(eats) && isLikely(keeps);
    if (isAll) {
      return new Suggestion(
          Optional.of(Decision.GROW_AGAIN),
          facts(ripens, eats, keeps),
          "A year in which it fails one of these would change it.",
          "");
    }
    if (isMet(eats) && ripens.isUnlikely()) {
      return new Suggestion(
          Optional.of(Decision.TRY_AGAIN),
          facts(ripens, eats),
          "A season that shows how much of it ripens would settle it.",
          again("sown or planted three weeks earlier"));
    }
    return new Suggestion(
        Optional.empty(),
        facts(open(ripens, eats, keeps)),
        change(ripens, eats, keeps, settling),
        "");
  }

  private static String again(String otherwise) {
    return "Try it again with six plants or more beside the check, "
        + otherwise
        + ", and taste two fruits a session, in two sessions, once it has cured.";
  }

  private static String change(
      Prospect ripens, Prospect eats, Prospect keeps, Optional<String> settling) {
    if (eats.says() == Says.OPEN) {
      return settling.orElse("Cook it beside another of its type, in two sessions.");
    }
    if (ripens.says() == Says.OPEN) {
      return "Cut three fruits of each lot, not chosen by their looks, and note the seeds.";
    }
    return keeps.says() == Says.OPEN
        ? "Note what rots, and count what is left when its day has come; a second lot says most."
        : "";
  }

  private static boolean isMet(Prospect prospect) {
    return prospect.says() == Says.YES || prospect.says() == Says.NOT_NEEDED;
  }

  /** Two good lots of a few fruits are likely, never sure: that is enough beside a sure liking. */
  private static boolean isLikely(Prospect prospect) {
    return prospect.chancePerMille() >= LIKELY_PER_MILLE;
  }

  private static Prospect[] open(Prospect... all) {
    List<Prospect> ordered = new ArrayList<>();
    for (Prospect each : all) {
      if (each.says() == Says.OPEN) {
        ordered.add(each);
      }
    }
    for (Prospect each : all) {
      if (each.says() == Says.YES) {
        ordered.add(each);
      }
    }
    return ordered.toArray(new Prospect[0]);
  }

  private static List<String> facts(Prospect... deciding) {
    List<String> facts = new ArrayList<>();
    for (Prospect prospect : deciding) {
      if (prospect.says() != Says.NOT_NEEDED) {
        facts.add(prospect.sentence());
      }
    }
    return facts;
  }
}
