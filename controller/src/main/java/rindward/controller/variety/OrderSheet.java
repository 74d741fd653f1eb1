package rindward.controller.variety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rindward.controller.journal.Decision;
import rindward.controller.journal.VarietyDecided;

/**
 * What to order seed of: every variety with what was decided, or, where nothing was, what its
 * answers speak for. A verdict is provisional while its fruits are still kept; a later one says
 * what it revised.
 *
 * @param lines those to grow again first, then those to try again, to drop, and those left open
 */
public record OrderSheet(List<Line> lines) {
  public OrderSheet {
    lines = List.copyOf(lines);
  }

  /**
   * One variety.
   *
   * @param decision what was decided, or is suggested; empty if the answers speak for nothing
   * @param isDecided whether the grower decided it
   * @param reason why, and how to try again; may be empty
   * @param answers what is known, in one line
   * @param stillKept fruits that are still kept: until they are gone the verdict is provisional
   * @param revised what is known now and was not by the order date; empty if nothing is
   */
  public record Line(
      VarietyName name,
      Optional<Decision> decision,
      boolean isDecided,
      String reason,
      String answers,
      int stillKept,
      Optional<String> revised) {}

  /**
   * Makes the sheet.
   *
   * @param byDate verdicts by what had happened until the order date
   * @param now verdicts on the same varieties by what has happened since, in the same order; the
   *     same list if the order date is today or lies ahead
   */
  public static OrderSheet of(List<VarietyVerdict> byDate, List<VarietyVerdict> now) {
    return new OrderSheet(
        IntStream.range(0, byDate.size())
            .mapToObj(i -> line(byDate.get(i), now.get(i)))
            .sorted(
                Comparator.comparing(
                    line -> line.decision().map(Enum::ordinal).orElse(Decision.values().length)))
            .toList());
  }

  private static Line line(VarietyVerdict byDate, VarietyVerdict now) {
    Optional<VarietyDecided> decided = now.decided();
    Optional<Decision> decision =
        decided.map(VarietyDecided::decision).or(() -> byDate.suggestion().decision());
    return new Line(
        now.name(),
        decision,
        decided.isPresent(),
        decided.map(VarietyDecided::reason).orElseGet(() -> why(byDate)),
        answers(byDate),
        byDate.stillKeeping(),
        answers(byDate).equals(answers(now)) ? Optional.empty() : Optional.of(answers(now)));
  }

  private static String answers(VarietyVerdict verdict) {
    String keeping = verdict.keeping().sentences().get(0);
    return verdict.words() + "; " + Character.toLowerCase(keeping.charAt(0)) + keeping.substring(1);
  }

  private static String why(VarietyVerdict verdict) {
    return String.join(" ", verdict.suggestion().sentences());
  }
}
