package rindward.controller.control;

/** One rule of the house: looks at the situation and wishes outputs on or off. Holds no state. */
@FunctionalInterface
public interface Rule {
  void consider(Situation situation, OutputRequests wishes);
}
