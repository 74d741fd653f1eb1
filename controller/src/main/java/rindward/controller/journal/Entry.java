package rindward.controller.journal;

import java.time.Instant;

/**
 * One thing that was said, once, and is never changed: what follows from it may be changed by a
 * later {@link Corrected} or {@link Withdrawn}. Whatever a person says, from a page, a command, an
 * import or a message, is one of these. Weights are in grams.
 */
public sealed interface Entry
    permits OfLot,
        AccuracyStated,
        Corrected,
        Tasting,
        VarietyDecided,
        OutputTried,
        ProofTried,
        RoomAsked,
        SwitchedByHand,
        LetRun,
        AlarmAnswered,
        WorkAnnounced,
        ProbeCalibrated,
        NewerEntry {
  /**
   * What the entry is about, such as a lot's code or a room's name. Two people who speak of the
   * same subject at the same time must not overwrite each other.
   */
  String subject();

  /** Returns when it happened, which may be long before it was said. */
  Instant at();
}
