package rindward.controller.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rindward.controller.exchange.LotFile;
import rindward.controller.journal.EntryKinds;
import rindward.controller.journal.NewerEntry;
import rindward.controller.journal.OutputTried;
import rindward.controller.journal.Recorded;
import rindward.controller.lot.Lots;
import rindward.controller.settings.ProofState;
import rindward.controller.store.Schema;
import rindward.controller.store.copies.Copies;
import rindward.dashboard.shed.RecordDesk;
import rindward.dashboard.shed.RecordView;
import rindward.dashboard.shed.RecordView.ProofView;
import rindward.dashboard.shed.RecordView.TriedView;

/** What is on record and can be taken away: the journal as a file of lots, the newest copy. */
public final class KeptRecord implements RecordDesk {
  private final Supplier<List<Recorded>> journal;
  private final Copies copies;
  private final Function<List<Recorded>, List<ProofState>> protection;

  /**
   * @param journal everything said so far
   * @param protection what must be shown of the shed's protection, by what still stands
   */
  public KeptRecord(
      Supplier<List<Recorded>> journal,
      Copies copies,
      Function<List<Recorded>, List<ProofState>> protection) {
    this.journal = journal;
    this.copies = copies;
    this.protection = protection;
  }

  @Override
  public RecordView record() {
    Optional<Map.Entry<Instant, Path>> newest = newest();
    return new RecordView(
        newest.map(Map.Entry::getKey).orElse(null),
        newest.map(copy -> copy.getValue().toFile().length()).orElse(null),
        Schema.newest(),
        EntryKinds.newestVersion(),
        (int) journal.get().stream().filter(r -> r.entry() instanceof NewerEntry).count(),
        tried(),
        protection.apply(Lots.standing(journal.get())).stream().map(KeptRecord::proof).toList());
  }

  @Override
  public String lots() {
    return LotFile.write(Lots.standing(journal.get()));
  }

  @Override
  public Optional<InputStream> copy() throws IOException {
    Optional<Map.Entry<Instant, Path>> newest = newest();
    return newest.isEmpty()
        ? Optional.empty()
        : Optional.of(Files.newInputStream(newest.get().getValue()));
  }

  private Optional<Map.Entry<Instant, Path>> newest() {
    try {
      return Optional.ofNullable(copies.all().firstEntry());
    } catch (IOException cannotBeLookedAt) {
      return Optional.empty();
    }
  }

  private static ProofView proof(ProofState state) {
    return new ProofView(
        state.room().isEmpty() ? null : state.room(),
        state.proof().sentence(),
        state.results(),
        state.warning().orElse(null));
  }

  private List<TriedView> tried() {
    Map<String, TriedView> last = new LinkedHashMap<>();
    for (Recorded recorded : journal.get()) {
      if (recorded.entry() instanceof OutputTried tried) {
        last.put(
            tried.room() + "/" + tried.output(),
            new TriedView(tried.room(), tried.output(), tried.at(), recorded.by()));
      }
    }
    return List.copyOf(last.values());
  }
}
