package rindward.controller.journal;

import java.time.Instant;

/**
 * An earlier entry was wrong; this is what it should have said. The earlier one stays in the
 * journal.
 *
 * @param entry id of the entry that was wrong
 * @param instead of the same kind and subject
 */
public record Corrected(long entry, Entry instead) implements Entry {
  /** What it is called, its fields, and who may say it. */
  public static final EntryKind<Corrected> KIND =
      EntryKind.of(
              "corrected",
              Corrected.class,
              Field.number("entry").notInRow(),
              Field.of("instead", new EntryForm()).notInRow())
          .dropping("at");

  @Override
  public String subject() {
    return instead.subject();
  }

  @Override
  public Instant at() {
    return instead.at();
  }
}
