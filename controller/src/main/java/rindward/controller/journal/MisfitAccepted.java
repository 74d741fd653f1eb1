package rindward.controller.journal;

import java.time.Instant;

/** The lot does not suit the place, and is meant to be there all the same. */
public record MisfitAccepted(String lot, String place, Instant at) implements OfLot {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<MisfitAccepted> KIND =
      EntryKind.of(
          "misfit-accepted", MisfitAccepted.class, Field.lot(), Field.text("place"), Field.at());
}
