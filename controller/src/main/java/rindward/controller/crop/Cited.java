package rindward.controller.crop;

import java.util.List;

/**
 * A value with where it comes from, so that every number a person is told can be checked.
 *
 * @param value the value, in the unit of whatever holds it
 * @param sources keys of {@link Sources}, at least one; where sources disagree, a safety limit is
 *     the cautious value, and a life or window spans them all
 */
public record Cited<T>(T value, List<String> sources) {
  public Cited {
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("sources were empty but a value must name at least one");
    }
  }
}
