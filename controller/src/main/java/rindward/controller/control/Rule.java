package rindward.controller.control;

/** One rule of the house: looks at the input and requests outputs on or off. Holds no state. */
@FunctionalInterface
public interface Rule {
  void consider(ControlInput input, OutputRequests requests);
}
