package rindward.dashboard.lots;

import java.util.List;

/**
 * What became of something said of lots.
 *
 * @param entries numbers of what was kept, by which it is taken back
 * @param lots the lots concerned as they stand now; one that was taken back altogether is missing
 * @param warnings what is told all the same, one sentence each
 */
public record SaidView(List<Long> entries, List<LotLine> lots, List<String> warnings) {
  public SaidView {
    entries = List.copyOf(entries);
    lots = List.copyOf(lots);
    warnings = List.copyOf(warnings);
  }
}
