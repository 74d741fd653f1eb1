package rindward.dashboard.lots;

import java.util.List;

/**
 * What a page sends to take something back.
 *
 * @param entries numbers of the entries
 */
record WithdrawalRequest(List<Long> entries) {
  private static final int MOST = 400;

  WithdrawalRequest {
    if (entries == null
        || entries.isEmpty()
        || entries.size() > MOST
        || entries.stream().anyMatch(id -> id == null)) {
      throw new IllegalArgumentException(
          "entries was missing or too long but it must name 1 to " + MOST + " entries.");
    }
    entries = List.copyOf(entries);
  }
}
