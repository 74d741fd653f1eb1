package rindward.hardware.shed;

/** Outdoor air as a function of time; the same moment always gives the same answer. */
@FunctionalInterface
public interface Weather {
  /** Returns the outdoor air at {@code epochSeconds} in UTC. */
  OutdoorAir at(long epochSeconds);
}
