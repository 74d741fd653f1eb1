package rindward.hardware;

/** What a switched output does to the air of its room. A room has any subset. */
public enum OutputKind {
  HEATER,
  /** Moves the room's own air. */
  CIRCULATION,
  /** Takes room air out and lets outdoor air in. */
  EXHAUST,
  HUMIDIFIER,
  DEHUMIDIFIER,
  COOLER;

  /** Returns the word used in settings, files and sentences. */
  public String word() {
    return switch (this) {
      case HEATER -> "heater";
      case CIRCULATION -> "circulation";
      case EXHAUST -> "exhaust";
      case HUMIDIFIER -> "humidifier";
      case DEHUMIDIFIER -> "dehumidifier";
      case COOLER -> "cooler";
    };
  }
}
