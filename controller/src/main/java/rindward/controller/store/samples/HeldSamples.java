package rindward.controller.store.samples;

import java.util.List;
import rindward.controller.ledger.Run;

/**
 * What of the samples is not on the disk yet, as far as this process knows: the rest of a history
 * that the database tells. For any thread.
 */
public interface HeldSamples {
  /** Returns the runs of one room that may not be on the disk yet, in time order. */
  List<Run> held(String room);

  /** Returns how often a chunk on disk was replaced; what was read of it before is void then. */
  long rewrites();
}
