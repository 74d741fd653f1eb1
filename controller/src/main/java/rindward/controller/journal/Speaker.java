package rindward.controller.journal;

/** Who may say a kind of entry; each may say what those before may. */
public enum Speaker {
  /** Whoever holds the sheet of a tasting. */
  PANELIST,
  HELPER,
  OWNER
}
