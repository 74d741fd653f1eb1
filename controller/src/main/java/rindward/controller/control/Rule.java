package rindward.controller.control;

/** One rule of the house: looks at the situation and wishes outputs on or off. Holds no state. */
@FunctionalInterface
interface Rule {
  void consider(Situation situation, Wishes wishes);
}
