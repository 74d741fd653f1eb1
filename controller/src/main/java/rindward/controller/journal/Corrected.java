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
  @Override
  public String subject() {
    return instead.subject();
  }

  @Override
  public Instant at() {
    return instead.at();
  }

  @Override
  public <R> R accept(EntryVisitor<R> visitor) {
    return visitor.corrected(this);
  }
}
