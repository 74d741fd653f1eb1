package rindward.controller.crop;

/** What air that is too dry or too damp does to a cure. */
public enum HumidityRole {
  /** The cure needs the air inside: outside it earns less, or nothing. */
  GATE,
  /** It costs weight only; the cure goes on as if nothing were wrong. */
  COST,
  /** It earns nothing and rot threatens. */
  HAZARD
}
